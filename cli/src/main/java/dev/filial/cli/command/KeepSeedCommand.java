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
import dev.filial.core.answer.Holdings;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Count;
import dev.filial.core.register.SeedKept;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial clean} and {@code filial store}. */
public final class KeepSeedCommand implements BenchCommand {

  private final boolean cleaned;
  private final Supplier<List<String>> lots;
  private final Supplier<Optional<Count>> left;
  private final SeedWeight weight;
  private final Supplier<Optional<String>> keeping;
  private final Supplier<Optional<String>> place;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  private KeepSeedCommand(Words words, boolean cleaned, String event) {
    this.cleaned = cleaned;
    lots =
        words.arguments(
            "LOT",
            "Seed lots, as \"26-013 H1\"; the cross or packet will do while it has only one.",
            true,
            Reading.THING);
    left =
        words.option(
            "--left",
            "COUNT",
            "How many seeds there are now: 80, ~80, few, many or ?.",
            Reading.COUNT);
    weight = new SeedWeight(words);
    keeping =
        words.option(
            "--in", "TEXT", "How it is kept: paper, silica gel, 5 °C.", RecordReadings.LINE);
    place = words.option("--place", "PLACE", "Where it is kept.", RecordReadings.LINE);
    date = new DateOption(words, event);
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
  }

  /** {@code filial clean}. */
  public static BenchCommand clean(Words words) {
    words
        .describe(
            "Records that seed was cleaned, and what it came to: a count holds from then on; a"
                + " weight with seeds per gram is worked out to a guess, which does not take the"
                + " place of a count.")
        .example("filial clean 26-007 --mg 40 --per-gram 9000")
        .example("filial clean 26-012 --left 112 --in paper");
    return new KeepSeedCommand(words, true, "it was cleaned");
  }

  /** {@code filial store}. */
  public static BenchCommand store(Words words) {
    words
        .describe(
            "Records where and how seed is kept, or that it was counted or weighed again. A lot of"
                + " which a new count finds none is used up.")
        .example("filial store 26-012 26-004 --place \"seed tin\" --in \"paper, silica gel\"")
        .example("filial store \"26-013 H1\" --left 55");
    return new KeepSeedCommand(words, false, "that was done");
  }

  @Override
  public Answer run(Bench bench) {
    boolean measured = left.get().isPresent() || weight.isSaid();
    if (!cleaned && !measured && keeping.get().isEmpty() && place.get().isEmpty()) {
      throw Trouble.usage(
          "where is it kept, or how much is left?", "Add --place, --in, --left or --mg.");
    }
    if (lots.get().size() > 1 && (left.get().isPresent() || weight.isWeighed())) {
      throw Trouble.usage(
          "a count or a weight is that of one seed lot", "Write it down for each lot by itself.");
    }
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    Holdings holdings = Holdings.in(writing.view());
    List<Code> codes =
        lots.get().stream().map(lot -> holdings.lot(writing.find(lot)).code()).distinct().toList();
    Accepted accepted =
        writing.append(
            new SeedKept(
                codes,
                cleaned,
                left.get().orElse(null),
                weight.milligrams(),
                weight.perGram(),
                keeping.get().orElse(null),
                place.get().orElse(null),
                date.orToday(bench),
                remark.get().orElse(null)));
    return Recorded.of(writing, accepted, Several.only(codes), "what there is of seed: filial tin");
  }
}
