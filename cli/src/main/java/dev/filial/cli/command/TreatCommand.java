package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.Treated;
import dev.filial.core.register.Treatment;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** {@code filial treat}. */
public final class TreatCommand implements BenchCommand {

  private final Supplier<Treatment> treatment;
  private final WhatOrPlace what;
  private final Supplier<Optional<String>> product;
  private final Supplier<Optional<String>> dilution;
  private final Supplier<Optional<Integer>> every;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public TreatCommand(Words words) {
    Reading<Treatment> kinds = Reading.oneOf(Treatment.class);
    treatment =
        words.argument("KIND", "What sort: " + String.join(", ", kinds.candidates()) + ".", kinds);
    what =
        new WhatOrPlace(
            words,
            "Seed lots, sowings, pots or plants; a whole bag or tray goes into one entry.",
            Set.of(Item.Kind.SOWING, Item.Kind.GROUP, Item.Kind.PLANT, Item.Kind.SEEDLING));
    product =
        words.option("--product", "NAME", "What was used, as its label says.", RecordReadings.LINE);
    dilution =
        words.option(
            "--dilution", "TEXT", "How strong, as \"1 in 10\" or 0.3 %.", RecordReadings.LINE);
    every =
        words.option(
            "--every",
            "DAYS",
            "To be done again after so many days, until it is entered without this.",
            Reading.WHOLE_NUMBER);
    date = new DateOption(words, "it was done");
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records that seed, sowings, pots or plants were treated: with what, how strong, and"
                + " when it is due again. The product's label and local law decide what may be"
                + " used and how.")
        .example("filial treat fungicide --in \"bag 1\" --dilution \"1 in 500\" --every 14")
        .example("filial treat soak \"26-012 H1\" --product \"tap water\"");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    List<Code> codes = what.codes(writing);
    return Recorded.of(
        writing,
        writing.append(
            new Treated(
                codes,
                treatment.get(),
                product.get().orElse(null),
                dilution.get().orElse(null),
                every.get().orElse(null),
                date.orToday(bench),
                remark.get().orElse(null))),
        Several.only(codes),
        every.get().isPresent() ? "when it is due again: filial due" : "");
  }
}
