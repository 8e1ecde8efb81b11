package dev.filial.cli;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.ClosedInput;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Terminal;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One run of a command line in a test: what is typed, where, and what came of it. The day is 15
 * June 2026 and the window 80 columns wide unless said otherwise.
 */
public final class CommandLineRun {

  /** The day on which tests happen. */
  public static final Instant NOW = Instant.parse("2026-06-15T10:00:00Z");

  /**
   * What came of a run.
   *
   * @param status the exit status
   * @param out what standard output got
   * @param err what standard error got
   */
  public record Outcome(int status, String out, String err) {}

  private final Map<String, String> env = new HashMap<>();
  private Path folder = Path.of("").toAbsolutePath();
  private String attached = "";
  private boolean closed;
  private String input = "";
  private Verbs verbs = Verbs.all();

  /** Sets an environment variable. */
  public CommandLineRun env(String name, String value) {
    env.put(name, value);
    return this;
  }

  /** Runs in this folder. */
  public CommandLineRun in(Path where) {
    folder = where;
    return this;
  }

  /** Makes all three streams terminals. */
  public CommandLineRun onTerminal() {
    attached = "012";
    return this;
  }

  /** What is typed when asked; all three streams are terminals. */
  public CommandLineRun answering(String... lines) {
    input = String.join("\n", lines) + "\n";
    return onTerminal();
  }

  /** Closes standard input. */
  public CommandLineRun withoutInput() {
    closed = true;
    return this;
  }

  /** What comes in on standard input, which is no terminal. */
  public CommandLineRun piped(String text) {
    input = text;
    return this;
  }

  CommandLineRun verbs(Verb... list) {
    verbs = new Verbs(List.of(new MadeUp(List.of(list))));
    return this;
  }

  /** Verbs made up for a test, which make their own commands. */
  private static final class MadeUp extends VerbGroup {
    private final List<Verb> verbs;

    MadeUp(List<Verb> verbs) {
      this.verbs = verbs;
    }

    @Override
    List<Verb> list() {
      return verbs;
    }

    @Override
    BenchCommand command(String name, Words words) {
      throw new AssertionError("a verb of a test makes its own command");
    }
  }

  /** Runs {@code filial} with these arguments. */
  public Outcome run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Terminal terminal =
        Terminal.of(
            new PrintWriter(out),
            new PrintWriter(err),
            new BufferedReader(closed ? new ClosedInput() : new StringReader(input)),
            attached,
            null,
            env);
    Bench bench = new Bench(terminal, env, Clock.fixed(NOW, ZoneOffset.UTC), folder);
    int status = new Filial(verbs).answer(args, bench);
    return new Outcome(status, out.toString(), err.toString());
  }
}
