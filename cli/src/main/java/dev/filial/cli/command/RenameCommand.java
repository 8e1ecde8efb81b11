package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TaxonRenamed;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial rename}. */
public final class RenameCommand implements BenchCommand {

  private final Supplier<String> old;
  private final Supplier<String> now;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public RenameCommand(Words words) {
    old = words.argument("OLD", "The name as it stands on the tags.");
    now = words.argument("NEW", "The name it is to be read as.");
    remark = words.option("--remark", "TEXT", "By whom, or why.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Lets one taxon name be read as another from now on: both are one taxon in every"
                + " answer. What was written under the old name stays as it was written.")
        .example("filial rename \"Echeveria yuccoides\" \"Echeveria agavoides\"");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, this::record);
  }

  private Answer record(Writing writing) {
    Subject before = Subject.taxon(old.get());
    if (writing.view().entriesMentioning(before).isEmpty()
        && writing.view().entriesOn(before).isEmpty()) {
      writing.note("nothing here bears the name " + old.get().strip() + "; see how it is spelt");
    }
    Accepted accepted =
        writing.append(
            new TaxonRenamed(
                RecordReadings.line(old.get()),
                RecordReadings.line(now.get()),
                remark.get().orElse(null)));
    return Recorded.of(
        writing, accepted, null, "tags still bear the old name; it is found by both");
  }
}
