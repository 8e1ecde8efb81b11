package dev.filial.cli.frame;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * What is said when a command could not do its work: one place where every exception becomes an
 * exit status, a sentence and a remedy.
 *
 * @param status how the process ends
 * @param message what is wrong, naming the thing
 * @param remedy what to type or do instead, possibly empty
 */
public record Failure(Status status, String message, String remedy) {

  /** How picocli says that a value cannot be read: option or argument, then why. */
  private static final Pattern INVALID_VALUE =
      Pattern.compile(
          "Invalid value for (?:option '([^']+)'|positional parameter at index \\S+)"
              + "(?: \\(([^)]*)\\))?: (.*)",
          Pattern.DOTALL);

  private static final Pattern NONE_OF =
      Pattern.compile("expected one of \\[(.*)] \\(case-insensitive\\) but was '(.*)'");

  /**
   * Puts an exception into words.
   *
   * @param helpHint what to type for help on the verb at hand
   */
  public static Failure of(Throwable cause, String helpHint) {
    if (cause instanceof Trouble trouble) {
      return new Failure(trouble.status(), words(trouble), trouble.remedy());
    }
    if (cause instanceof ParameterException wrongLine) {
      return ofCommandLine(wrongLine, helpHint);
    }
    if (cause instanceof UncheckedIOException unchecked) {
      return ofFile(Objects.requireNonNull(unchecked.getCause()));
    }
    if (cause instanceof IOException checked) {
      return ofFile(checked);
    }
    return new Failure(
        Status.DEFECT,
        "this is a defect in Filial: " + cause.getClass().getSimpleName() + ", " + words(cause),
        "Set FILIAL_TRACE=1 and repeat the command to see where it happened, and report that.");
  }

  private static Failure ofCommandLine(ParameterException cause, String helpHint) {
    if (cause.getCause() instanceof Trouble trouble) {
      return of(trouble, helpHint);
    }
    if (cause instanceof UnmatchedArgumentException unmatched) {
      return ofUnmatched(unmatched, helpHint);
    }
    if (cause instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      List<String> names = missing.getMissing().stream().map(Failure::nameOf).distinct().toList();
      return new Failure(
          Status.USAGE,
          String.join(" and ", names) + (names.size() == 1 ? " is" : " are") + " missing",
          helpHint);
    }
    Matcher invalid = INVALID_VALUE.matcher(words(cause));
    String message =
        invalid.matches()
            ? (invalid.group(1) != null ? invalid.group(1) : invalid.group(2))
                + ": "
                + NONE_OF.matcher(invalid.group(3)).replaceFirst(Failure::noneOf)
            : decapitalised(words(cause));
    return new Failure(Status.USAGE, message, helpHint);
  }

  private static String noneOf(MatchResult match) {
    return Matcher.quoteReplacement(
        "\"" + match.group(2) + "\" is none of " + match.group(1).toLowerCase(Locale.ROOT));
  }

  private static String nameOf(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }

  private static Failure ofUnmatched(UnmatchedArgumentException cause, String helpHint) {
    String first = cause.getUnmatched().isEmpty() ? "" : cause.getUnmatched().get(0);
    boolean option = first.startsWith("-");
    List<String> suggestions = option ? cause.getSuggestions() : List.of();
    String message =
        option ? "there is no option " + first : "\"" + first + "\" is one argument too many";
    String quoting =
        option ? "" : "A name of several words stands in quotes, as 'Echeveria laui'. ";
    String nearest = suggestions.isEmpty() ? "" : "Did you mean " + suggestions.get(0) + "? ";
    return new Failure(Status.USAGE, message, nearest + quoting + helpHint);
  }

  private static Failure ofFile(IOException cause) {
    if (cause instanceof NoSuchFileException missing) {
      return new Failure(
          Status.FILE,
          "there is no file or folder " + missing.getFile(),
          "Check the name, and that its folder exists.");
    }
    if (cause instanceof AccessDeniedException denied) {
      return new Failure(
          Status.FILE,
          denied.getFile() + " may not be read or written by you",
          "Check its permissions, or name another file.");
    }
    if (cause instanceof FileAlreadyExistsException exists) {
      return new Failure(
          Status.FILE,
          exists.getFile() + " is there already, and nothing was written",
          "Name another file, or move that one away.");
    }
    if (cause instanceof FileSystemException trouble && trouble.getFile() != null) {
      String reason = trouble.getReason();
      return new Failure(
          Status.FILE,
          trouble.getFile() + " cannot be used: " + (reason == null ? words(cause) : reason),
          "Check the disk and the file's permissions.");
    }
    return new Failure(Status.FILE, words(cause), "Check the disk and the file's permissions.");
  }

  private static String words(Throwable cause) {
    @Nullable String message = cause.getMessage();
    return message == null || message.isBlank() ? "without further words" : message;
  }

  private static String decapitalised(String message) {
    return message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1);
  }
}
