package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Observed;
import dev.filial.core.register.Photograph;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TraitDeclared;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial observe}. */
public final class ObserveCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<String> trait;
  private final Supplier<String> value;
  private final Supplier<Optional<Path>> photo;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public ObserveCommand(Words words) {
    plant = words.argument("PLANT", "A plant, or a pot for one seedling out of it.");
    trait = words.argument("TRAIT", "A trait that was declared with: filial trait.");
    value =
        words.argument("VALUE", "The state, the score or the size it showed.", RecordReadings.LINE);
    photo =
        words.option(
            "--photo",
            "FILE",
            "A picture of it. The register keeps where it lies and its SHA-256, not the picture.",
            Reading.FILE);
    date = new DateOption(words, "it was seen");
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records what one plant showed. How many seedlings of a sowing or a pot showed what is"
                + " recorded with: filial tally.")
        .example("filial observe 26-013-1 tips red");
  }

  @Override
  public Answer run(Bench bench) {
    @Nullable Photograph picture =
        photo.get().map(file -> PictureFile.read(file, register, bench)).orElse(null);
    return register.write(bench, writing -> record(writing, picture, bench));
  }

  private Answer record(Writing writing, @Nullable Photograph picture, Bench bench) {
    Code code = writing.find(plant.get()).code();
    Optional<TraitDeclared> known = writing.view().trait(Subject.trait(trait.get()).key());
    Accepted accepted =
        writing.append(
            new Observed(
                code,
                known.map(TraitDeclared::trait).orElse(trait.get()),
                known.flatMap(this::state).orElse(value.get()),
                date.orToday(bench),
                picture,
                remark.get().orElse(null)));
    return Recorded.of(
        writing,
        accepted,
        code,
        code.isSeedling() && writing.find(code.text()).fate().isHere()
            ? "worth keeping? filial keep " + code.text() + ", or filial discard " + code.text()
            : "all that was seen: filial show " + CommandLine.quoted(code.text()));
  }

  /** The state that was typed, in the case in which it was declared. */
  private Optional<String> state(TraitDeclared declared) {
    return declared.states().stream().filter(value.get()::equalsIgnoreCase).findFirst();
  }
}
