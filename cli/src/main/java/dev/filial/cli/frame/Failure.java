package dev.filial.cli.frame;

import dev.filial.core.answer.NotReckoned;
import dev.filial.core.answer.NotStated;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.spreadsheet.SheetException;
import dev.filial.core.store.StoreException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What is said when a command could not do its work: one place where every exception becomes an
 * exit status, a sentence and a remedy.
 *
 * @param status how the process ends
 * @param message what is wrong, naming the thing
 * @param remedy what to type or do instead, possibly empty
 */
public record Failure(Status status, String message, String remedy) {

  /**
   * Puts an exception into words.
   *
   * @param helpHint what to type for help on the verb at hand, or nothing if no verb was found
   */
  public static Failure of(Throwable cause, String helpHint) {
    if (cause instanceof Trouble trouble) {
      boolean wrongLine = trouble.status() == Status.USAGE && !helpHint.isEmpty();
      return new Failure(
          trouble.status(),
          words(trouble),
          wrongLine ? inSentences(trouble.remedy(), helpHint) : trouble.remedy());
    }
    if (cause instanceof StoreException store) {
      return new Failure(
          Status.FILE,
          words(store),
          store.reason() == StoreException.Reason.DAMAGED
              ? "What can still be read is written to a file by: filial salvage FILE"
              : "");
    }
    if (cause instanceof NotStated missing) {
      return new Failure(Status.REFUSED, words(missing), remedy(missing));
    }
    if (cause instanceof NotReckoned without) {
      return new Failure(Status.REFUSED, words(without), remedy(without));
    }
    // What the library will not take: each says what is wrong with it and what to do.
    if (cause instanceof RegisterRefusal
        || cause instanceof PedigreeException
        || cause instanceof SheetException
        || cause instanceof IllegalArgumentException) {
      return new Failure(Status.REFUSED, words(cause), "");
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

  /** A remedy may end with what is to be typed, and then has no full stop. */
  private static String inSentences(String remedy, String hint) {
    boolean ended = remedy.isEmpty() || ".?!".indexOf(remedy.charAt(remedy.length() - 1)) >= 0;
    return (remedy + (ended ? " " : ". ") + hint).strip();
  }

  private static String remedy(NotReckoned without) {
    return switch (without.reason()) {
      case CONTRADICTION ->
          "Find the entries that contradict each other: filial mistakes. Or allow for states that"
              + " were misread: --misread 1%.";
      case UNSTEADY ->
          "More draws may help, but need not: ask for fewer traits at once, or record the genotypes"
              + " of some plants.";
      case TANGLED ->
          "Ask for one trait at a time, or record the genotypes of some plants. For filial carries and"
              + " filial pollinator the odds can also be drawn: --draws 2000.";
    };
  }

  private static String remedy(NotStated missing) {
    return switch (missing.need()) {
      case GENES ->
          "If you know it, record it: filial genotype "
              + missing.plant()
              + " ALLELES. filial odds also takes it with --seed-genes or --pollen-genes. What it most likely"
              + " carries, and what the cross throws then, says filial carries.";
      case GAMETES ->
          "Say how they form with --eggs-form or --pollen-forms; filial help odds says what can"
              + " stand there.";
      case RATIO ->
          "State the ratio to be tested, as --ratio 3:1, and what else it may be, as --or-ratio 1:1;"
              + " the answer says which fits best. What "
              + missing.plant()
              + " most likely carries, by everything that was seen, says filial carries "
              + missing.plant()
              + ".";
    };
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
}
