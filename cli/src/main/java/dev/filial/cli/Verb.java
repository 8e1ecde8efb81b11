package dev.filial.cli;

import dev.filial.cli.frame.BenchCommand;
import java.util.function.Supplier;

/**
 * A verb of the bench, as the table of verbs has it. The command itself is made only when it is
 * needed, since making all of them would take longer than answering.
 *
 * @param name what is typed
 * @param heading the group under which help lists it
 * @param summary what it does, in one line without a full stop
 * @param command makes the command, an object with picocli's annotations
 */
record Verb(
    String name, Heading heading, String summary, Supplier<? extends BenchCommand> command) {}
