package dev.filial.cli;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Failure;
import dev.filial.cli.frame.Status;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Json;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Wrap;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;

/**
 * The command line: the first argument names a verb, that verb alone is made and run, and its
 * answer is printed.
 *
 * <p>Results go to standard output, everything else to standard error. Under {@code --json} a
 * result is one JSON object on standard output; a failure leaves that empty and is one JSON object
 * on standard error. The exit status is that of {@link Status}.
 */
public final class Filial {

  private static final char NO_BREAK_SPACE = '\u00A0';

  private final Verbs verbs;

  Filial(Verbs verbs) {
    this.verbs = verbs;
  }

  /** Runs one command in this process and ends it. */
  public static void main(String[] args) {
    System.exit(Launch.run(args));
  }

  /**
   * Runs one command.
   *
   * @return the exit status
   */
  public static int run(String[] args, Bench bench) {
    return new Filial(Verbs.all()).answer(args, bench);
  }

  int answer(String[] args, Bench bench) {
    List<String> words = Arrays.asList(args);
    List<String> options = words.contains("--") ? words.subList(0, words.indexOf("--")) : words;
    boolean json = options.contains("--json");
    try {
      return print(ask(words, bench), json, bench);
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError cause) {
      return explain(cause, words, json, bench);
    } finally {
      bench.terminal().out().flush();
      bench.terminal().err().flush();
    }
  }

  private Answer ask(List<String> words, Bench bench) {
    if (words.isEmpty()) {
      return new Overview(verbs.list());
    }
    String first = words.get(0);
    switch (first) {
      case "-h", "--help" -> {
        return new Overview(verbs.list());
      }
      case "-V", "--version" -> {
        return ask(List.of("version"), bench);
      }
      default -> {
        if (first.startsWith("-")) {
          throw Trouble.usage(
              "the verb comes first, options after it: filial VERB " + first,
              "All verbs are listed by: filial help");
        }
      }
    }
    Verb verb = verbs.find(first);
    Words following = new Words();
    BenchCommand command = verb.command().apply(following);
    following.read(words.subList(1, words.size()), bench);
    return following.help() ? VerbHelp.of(verb, following) : command.run(bench);
  }

  private static int print(Answer answer, boolean json, Bench bench) {
    PrintWriter out = bench.terminal().out();
    if (json) {
      out.print(Json.write(answer.json()));
    } else {
      Screen screen = new Screen(bench.terminal());
      answer.show(screen);
      screen.flush();
    }
    out.flush();
    answer.warnings().forEach(warning -> complain("Note: " + warning, bench));
    return answer.status().code();
  }

  private int explain(Throwable cause, List<String> words, boolean json, Bench bench) {
    String verb = words.isEmpty() ? "" : words.get(0);
    boolean known = verbs.list().stream().anyMatch(candidate -> candidate.name().equals(verb));
    String hint = known ? "How it is used: filial help " + verb : "";
    Failure failure = Failure.of(cause, hint);
    PrintWriter err = bench.terminal().err();
    if (json) {
      err.print(Json.write(FailureReport.of(failure)));
    } else {
      complain("filial" + (known ? " " + verb : "") + ": " + sentence(failure.message()), bench);
      if (!failure.remedy().isEmpty()) {
        complain(failure.remedy(), bench);
      }
    }
    if (bench.variable("FILIAL_TRACE").isPresent()) {
      cause.printStackTrace(err);
    }
    return failure.status().code();
  }

  private static String sentence(String message) {
    // A caret points at a place in the line above it.
    return message.endsWith(".") || message.endsWith("?") || message.endsWith("^")
        ? message
        : message + ".";
  }

  private static void complain(String text, Bench bench) {
    for (String part : text.split("\n", -1)) {
      // A line that is set in shows a place by a caret under it: its spaces count.
      String kept = part.startsWith("  ") ? part.replace(' ', NO_BREAK_SPACE) : part;
      Wrap.lines(kept, bench.terminal().proseWidth())
          .forEach(line -> bench.terminal().err().print(line + "\n"));
    }
  }

  /**
   * A failure as JSON.
   *
   * @param error what went wrong
   */
  record FailureReport(Details error) {

    /**
     * The parts of it.
     *
     * @param status the exit status
     * @param kind its name
     * @param message what is wrong, naming the thing
     * @param remedy what to do instead, possibly empty
     */
    record Details(int status, Status kind, String message, String remedy) {}

    static FailureReport of(Failure failure) {
      return new FailureReport(
          new Details(
              failure.status().code(), failure.status(), failure.message(), failure.remedy()));
    }
  }
}
