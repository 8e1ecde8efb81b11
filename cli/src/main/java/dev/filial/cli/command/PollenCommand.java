package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PollenKept;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial pollen}. */
public final class PollenCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<PollenKept.Step> step;
  private final Supplier<Optional<PartialDate>> of;
  private final DateOption date;
  private final Supplier<Optional<String>> from;
  private final Supplier<Optional<String>> place;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public PollenCommand(Words words) {
    plant = words.argument("PLANT", "Whose pollen it is.", Reading.THING);
    step =
        words.argument(
            "STEP",
            "What was done: gathered, dried, frozen, thawed, used-up or discarded.",
            Reading.oneOf(PollenKept.Step.class));
    of =
        words.option(
            "--of",
            "DAY",
            "The day it was gathered, where there is pollen of that plant of several days.",
            Reading.PARTIAL_DATE);
    date = new DateOption(words, "that was done");
    from =
        words.option(
            "--from", "NAME", "Who sent it, where it came from elsewhere.", RecordReadings.LINE);
    place = words.option("--place", "PLACE", "Where it is kept.", RecordReadings.LINE);
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Pollen that one plant gave on one day is one paper: write both on it. What is done"
                + " with it later names the plant, and the day where there are several papers. A"
                + " plant that never stood here is entered with: filial plant --elsewhere.")
        .example("filial pollen 22-001 gathered --place \"silica gel\"")
        .example("filial pollen 22-003 used-up");
  }

  @Override
  public Answer run(Bench bench) {
    boolean gathering = step.get() == PollenKept.Step.GATHERED;
    if (gathering && of.get().isPresent()) {
      throw Trouble.usage(
          "--of names pollen that was gathered before",
          "Say when this was gathered with --date, or name another step.");
    }
    if (!gathering && from.get().isPresent()) {
      throw Trouble.usage(
          "--from says who sent pollen, when it comes",
          "Enter that it came with: filial pollen PLANT gathered --from NAME");
    }
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    Code code = writing.find(plant.get()).code();
    Accepted accepted =
        writing.append(
            new PollenKept(
                code,
                step.get(),
                of.get().orElse(null),
                date.orToday(bench),
                from.get().orElse(null),
                place.get().orElse(null),
                remark.get().orElse(null)));
    return Recorded.of(writing, accepted, code, "what pollen there is: filial pollenbox");
  }
}
