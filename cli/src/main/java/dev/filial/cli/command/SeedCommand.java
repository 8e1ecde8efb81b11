package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.LeftOut;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.DeterminationReading;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Count;
import dev.filial.core.register.Entry;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.SeedKept;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial seed}. */
public final class SeedCommand implements BenchCommand {

  private final Supplier<Optional<String>> taxon;
  private final Supplier<Optional<Count>> count;
  private final SeedWeight weight;
  private final LabelOptions label;
  private final DateOption date;
  private final CodeOption code;
  private final PlaceAndRemark rest;
  private final OpenRegister register;

  /** Declares its words. */
  public SeedCommand(Words words) {
    taxon =
        words.optionalArgument("TAXON", "The name on the packet, in quotes; ? if nobody knows.");
    count =
        words.optionalArgument(
            "COUNT",
            "How many seeds: 80, ~80, few, many or ?; may be left out with --mg.",
            Reading.COUNT);
    weight = new SeedWeight(words);
    label = new LabelOptions(words);
    date = new DateOption(words, "it came");
    code = new CodeOption(words);
    rest = new PlaceAndRemark(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records a packet of seed that was bought, swapped or collected. What you harvest"
                + " yourself is recorded with: filial harvest. With --mg and --per-gram and no count the"
                + " number is worked out, and kept as a guess; the weight gets an entry of its own.")
        .example("filial seed \"Echeveria laui\" --mg 15 --per-gram 8000 --from \"Lena Muster\"")
        .example("filial seed \"Echeveria laui\" ~40 --from \"Lena Muster\"");
  }

  @Override
  public Answer run(Bench bench) {
    // A packet of which the make-up is said needs no name: what stands alone is how many there are.
    Optional<Count> alone = countAlone(bench);
    String written =
        LabelOptions.typed(
            LeftOut.orAsk(
                alone.isPresent() ? Optional.of("?") : taxon.get(),
                "TAXON",
                "Taxon on the packet, ? if unknown",
                "?",
                Reading.TEXT,
                bench));
    Count seeds =
        weight.isWeighed() && count.get().isEmpty()
            ? Count.unknown()
            : LeftOut.orAsk(
                alone.or(count),
                "COUNT",
                "How many seeds (80, ~80, few, many or ?)",
                "?",
                Reading.COUNT,
                bench);
    return register.write(bench, writing -> record(writing, written, seeds, bench));
  }

  private Optional<Count> countAlone(Bench bench) {
    if (!label.hasMakeup() || count.get().isPresent() || taxon.get().isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Reading.COUNT.read(taxon.get().get(), bench));
    } catch (IllegalArgumentException e) {
      return Optional.empty(); // a name
    }
  }

  private Answer record(Writing writing, String written, Count seeds, Bench bench) {
    @Nullable PartialDate day = date.orToday(bench);
    Code given = code.in(writing.view(), day, bench);
    DeterminationReading.Reading read = label.determination(writing.view(), written);
    read.notes().forEach(writing::note);
    Accepted accepted =
        writing.append(
            new SeedAcquired(
                given,
                read.determination(),
                label.provenance(),
                day,
                seeds,
                rest.place(),
                rest.remark()));
    if (weight.isSaid()) {
      Entry weight = weighed(writing, given.lot(1), day).entry();
      writing.note("what it weighs is entry " + weight.number());
    }
    return Recorded.of(writing, accepted, given, "when you sow it: filial sow " + given.text())
        .withTag(writing, given);
  }

  /** What a packet weighs is said of its lot. */
  private Accepted weighed(Writing writing, Code lot, @Nullable PartialDate day) {
    return writing.append(
        new SeedKept(
            List.of(lot),
            false,
            null,
            weight.milligrams(),
            weight.perGram(),
            null,
            null,
            day,
            null));
  }
}
