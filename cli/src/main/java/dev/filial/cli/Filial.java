package dev.filial.cli;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Failure;
import dev.filial.cli.frame.PartialDate;
import dev.filial.cli.frame.Status;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.screen.Json;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Wrap;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;

/**
 * The command line: the first argument names a verb, that verb alone is made and run, and its
 * answer is printed.
 *
 * <p>Results go to standard output, everything else to standard error. Under {@code --json} a
 * result is one JSON object on standard output; a failure leaves that empty and is one JSON object
 * on standard error. The exit status is that of {@link Status}.
 */
public final class Filial {

  private final List<Verb> verbs;

  Filial(List<Verb> verbs) {
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
    String verb = "";
    try {
      if (!words.isEmpty() && !words.get(0).startsWith("-")) {
        verb = words.get(0);
      }
      return print(ask(words, bench), json, bench);
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError cause) {
      return explain(cause, verb, json, bench);
    } finally {
      bench.terminal().out().flush();
      bench.terminal().err().flush();
    }
  }

  private Answer ask(List<String> words, Bench bench) {
    if (words.isEmpty()) {
      return new Overview(verbs);
    }
    String first = words.get(0);
    switch (first) {
      case "-h", "--help" -> {
        return new Overview(verbs);
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
    Verb verb = CommandLines.find(verbs, first);
    CommandLine line = CommandLines.of(verb);
    registerDates(line, bench);
    ParseResult parsed = line.parseArgs(words.subList(1, words.size()).toArray(new String[0]));
    while (parsed.hasSubcommand()) {
      parsed = parsed.subcommand();
    }
    CommandLine chosen = parsed.commandSpec().commandLine();
    if (chosen.isUsageHelpRequested()) {
      return VerbHelp.of(verb, chosen);
    }
    return ((BenchCommand) chosen.getCommand()).run(bench);
  }

  // Classes, not lambdas: a lambda of picocli's old interface would keep that, and the thirty
  // converters that implement it, out of the launcher's archive of classes.
  private static void registerDates(CommandLine line, Bench bench) {
    line.registerConverter(LocalDate.class, new DayConverter(bench));
    line.registerConverter(PartialDate.class, new PartialDateConverter(bench));
  }

  private record DayConverter(Bench bench) implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
      try {
        return bench.dates().day(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  private record PartialDateConverter(Bench bench) implements ITypeConverter<PartialDate> {
    @Override
    public PartialDate convert(String text) {
      try {
        return bench.dates().partial(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
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

  private int explain(Throwable cause, String verb, boolean json, Bench bench) {
    String hint = "How it is used: filial help" + (verb.isEmpty() ? "" : " " + verb);
    Failure failure = Failure.of(cause, hint);
    PrintWriter err = bench.terminal().err();
    if (json) {
      err.print(Json.write(FailureReport.of(failure)));
    } else {
      boolean known = verbs.stream().anyMatch(candidate -> candidate.name().equals(verb));
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
    return message.endsWith(".") || message.endsWith("?") ? message : message + ".";
  }

  private static void complain(String text, Bench bench) {
    Wrap.lines(text, bench.terminal().proseWidth())
        .forEach(line -> bench.terminal().err().print(line + "\n"));
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
