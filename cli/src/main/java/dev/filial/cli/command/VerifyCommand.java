package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Status;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.core.store.RegisterStore;
import dev.filial.core.store.Verification;
import java.nio.file.Path;

/** {@code filial verify}. */
public final class VerifyCommand implements BenchCommand {

  private final OpenRegister register;

  /** Declares its words. */
  public VerifyCommand(Words words) {
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Reads the whole register over again: the file's own structure, the digest of every"
                + " entry, and everything derived from the entries. Nothing is changed. The exit"
                + " status is 0 when all is sound, 1 when something is not, 3 when the file cannot"
                + " be read.")
        .example("filial verify");
  }

  /**
   * What was found.
   *
   * @param register the file
   * @param verification what does not fit
   */
  record Verified(Path register, Verification verification) implements Answer {
    @Override
    public Status status() {
      return verification.isSound() ? Status.DONE : Status.REFUSED;
    }

    @Override
    public void show(Screen screen) {
      if (verification.isSound()) {
        screen.say(
            register
                + " is sound: "
                + (verification.entries() == 1 ? "1 entry" : verification.entries() + " entries")
                + ", each as it was written, and all that follows from them.");
        return;
      }
      screen.say(register + " is not sound. Do not write to it any more.");
      verification.faults().forEach(fault -> screen.indented(1, fault));
      screen
          .say(verification.entries() + " of its entries are as they were written.")
          .next(
              "take your last good copy; or save what can be read with filial salvage FILE, and"
                  + " make a new register of that with filial import FILE --register NEW");
    }
  }

  @Override
  public Answer run(Bench bench) {
    return new Verified(register.existingFile(bench), register.store(bench, RegisterStore::verify));
  }
}
