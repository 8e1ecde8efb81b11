package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Joined;
import java.util.function.Supplier;

/** {@code filial join}. */
public final class JoinCommand implements BenchCommand {

  private final Supplier<String> keep;
  private final Supplier<String> other;
  private final WhyOption why;
  private final OpenRegister register;

  /** Declares its words. */
  public JoinCommand(Words words) {
    keep =
        words.argument("KEEP", "The record that holds: where the plant came from stays its own.");
    other = words.argument("OTHER", "The record that is read as the first from now on.");
    why = new WhyOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe("Joins two records that turned out to be one plant. Either code finds it.")
        .example("filial join 22-001 22-002 --why \"one rosette under two tags\"");
  }

  @Override
  public Answer run(Bench bench) {
    String reason = why.in(bench);
    return register.write(bench, writing -> record(writing, reason));
  }

  private Answer record(Writing writing, String reason) {
    Code kept = writing.find(keep.get()).code();
    Code joined = writing.find(other.get()).code();
    Accepted accepted = writing.append(new Joined(kept, joined, reason));
    return Recorded.of(writing, accepted, kept, "").withTag(writing, kept);
  }
}
