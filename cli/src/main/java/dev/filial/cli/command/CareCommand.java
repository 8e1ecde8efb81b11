package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.Tended;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * {@code filial look}, {@code filial open}, {@code filial harden}, {@code filial poton} and {@code
 * filial retag}.
 */
public final class CareCommand implements BenchCommand {

  private static final Set<Item.Kind> SOWN = Set.of(Item.Kind.SOWING, Item.Kind.GROUP);
  private static final Set<Item.Kind> GROWING =
      Set.of(Item.Kind.SOWING, Item.Kind.GROUP, Item.Kind.PLANT, Item.Kind.SEEDLING);

  private final Tended.Care care;
  private final WhatOrPlace what;
  private final Supplier<Optional<String>> medium;
  private final Supplier<Optional<String>> container;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  private CareCommand(
      Words words, Tended.Care care, String named, Set<Item.Kind> kinds, String event) {
    this.care = care;
    what = new WhatOrPlace(words, named, kinds);
    boolean potted = care == Tended.Care.POTTED_ON;
    medium =
        potted
            ? words.option("--medium", "TEXT", "Into what.", RecordReadings.LINE)
            : Optional::empty;
    container =
        potted
            ? words.option("--container", "TEXT", "The new pot or tray.", RecordReadings.LINE)
            : Optional::empty;
    date = new DateOption(words, event);
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
  }

  /** {@code filial look}. */
  public static BenchCommand look(Words words) {
    words
        .describe(
            "Records that closed sowings were looked into. A count says so too, and needs no look"
                + " beside it.")
        .example("filial look --in \"bag 1\" --remark \"wet, no mould\"");
    return new CareCommand(
        words, Tended.Care.LOOKED_INTO, "Sowings or pots.", SOWN, "they were looked into");
  }

  /** {@code filial open}. */
  public static BenchCommand open(Words words) {
    words
        .describe("Records that the bag or the lid of sowings was taken off for good.")
        .example("filial open --in \"bag 1\"");
    return new CareCommand(words, Tended.Care.OPENED, "Sowings or pots.", SOWN, "it was taken off");
  }

  /** {@code filial harden}. */
  public static BenchCommand harden(Words words) {
    words
        .describe(
            "Records that sowings, pots or plants were hardened off: used to drier air and more"
                + " light from that day on.")
        .example("filial harden \"26-013 P1\" --date yesterday");
    return new CareCommand(
        words, Tended.Care.HARDENED_OFF, "Sowings, pots or plants.", GROWING, "it began");
  }

  /** {@code filial poton}. */
  public static BenchCommand potOn(Words words) {
    words
        .describe("Records that plants or pots were put into a bigger pot or fresh medium.")
        .example("filial poton 24-007-2 --container \"9 cm pot\" --medium \"pumice and loam\"");
    return new CareCommand(
        words, Tended.Care.POTTED_ON, "Plants or pots.", GROWING, "they were potted on");
  }

  /** {@code filial retag}. */
  public static BenchCommand retag(Words words) {
    words
        .describe("Records that tags were written anew before they faded.")
        .example("filial retag 22-001 22-002");
    return new CareCommand(
        words, Tended.Care.TAG_REWRITTEN, "Plants or pots.", GROWING, "they were written");
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
            new Tended(
                codes,
                care,
                medium.get().orElse(null),
                container.get().orElse(null),
                date.orToday(bench),
                remark.get().orElse(null))),
        Several.only(codes),
        "what else is due: filial due");
  }
}
