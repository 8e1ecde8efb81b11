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
import dev.filial.cli.screen.Asker;
import dev.filial.core.answer.CloseCross;
import dev.filial.core.answer.FloweringQuestion;
import dev.filial.core.answer.RecentCross;
import dev.filial.core.answer.RegisterPedigree;
import dev.filial.core.answer.TagQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Count;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.UnstatedGameteRefusal;
import dev.filial.core.register.Weighted;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial cross}. */
public final class CrossCommand implements BenchCommand {

  private final Supplier<Optional<String>> seedParent;
  private final Supplier<Optional<String>> pollenParent;
  private final PollenOptions pollen;
  private final Supplier<Optional<Count>> flowers;
  private final ProtectionFlags protection;
  private final Supplier<Optional<Fraction>> selfs;
  private final Supplier<Optional<Fraction>> strays;
  private final Supplier<Optional<Fraction>> apomixis;
  private final Supplier<Optional<Integer>> eggSets;
  private final Supplier<Optional<Integer>> pollenSets;
  private final BooleanSupplier storedPollen;
  private final DateOption date;
  private final CodeOption code;
  private final PlaceAndRemark rest;
  private final OpenRegister register;

  /** Declares its words. */
  public CrossCommand(Words words) {
    seedParent =
        words.optionalArgument(
            "SEED_PARENT",
            "The plant that bears the fruit, by code or name; a pot stands for one seedling out of"
                + " it.");
    pollenParent = words.optionalArgument("POLLEN_PARENT", "The plant whose pollen was put on it.");
    pollen = new PollenOptions(words);
    flowers =
        words.option("--flowers", "COUNT", "How many flowers were pollinated.", Reading.COUNT);
    protection = new ProtectionFlags(words);
    selfs =
        words.option(
            "--selfs",
            "SHARE",
            "How much of the seed may have come of the seed parent's own pollen, as 5%.",
            RecordReadings.SHARE);
    strays =
        words.option(
            "--strays",
            "SHARE",
            "How much may have come of pollen of plants nobody knows, as 5%.",
            RecordReadings.SHARE);
    apomixis =
        words.option(
            "--apomixis",
            "SHARE",
            "How much of the seed forms without fertilisation, as 5%.",
            RecordReadings.SHARE);
    eggSets =
        words.option(
            "--egg-sets",
            "SETS",
            "Chromosome sets in the egg, if not half of the seed parent's.",
            Reading.SETS);
    pollenSets =
        words.option(
            "--pollen-sets",
            "SETS",
            "Chromosome sets in the pollen, if not half of the pollen parent's.",
            Reading.SETS);
    storedPollen = words.flag("--stored-pollen", "The pollen was dried or frozen and kept.");
    date = new DateOption(words, "it was pollinated");
    code = new CodeOption(words);
    rest = new PlaceAndRemark(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records one pollination. The same pair on another day is another cross. At a terminal"
                + " the parents can be left out: you are asked, and Enter takes those of the cross"
                + " before.")
        .example("filial cross Rosa Lilo --flowers 3 --bagged")
        .example("filial cross Lilo --open --perhaps Rosa=2 --perhaps 22-004 --unknown 1/4");
  }

  /**
   * The parents as they were typed.
   *
   * @param pollen the pollen parent; empty where the pollen is said by options
   */
  private record Parents(String seed, Optional<String> pollen) {}

  @Override
  public Answer run(Bench bench) {
    pollen.check(pollenParent.get().isPresent(), storedPollen.getAsBoolean());
    Parents parents = parents(bench);
    return register.write(bench, writing -> record(writing, parents, bench));
  }

  private Parents parents(Bench bench) {
    boolean pollenSaid = pollen.isSaid() || pollenParent.get().isPresent();
    if (seedParent.get().isPresent() && pollenSaid) {
      return new Parents(seedParent.get().get(), pollenParent.get());
    }
    Asker asker = bench.asker();
    // Asked before anything is written: nobody else waits for the register while someone thinks.
    Optional<Pollinated> before =
        asker.canAsk() ? register.read(bench, RecentCross::in) : Optional.empty();
    String seed =
        seedParent
            .get()
            .or(() -> asker.ask("Seed parent", seedOf(before)))
            .orElseThrow(
                () ->
                    Trouble.usage(
                        pollenSaid
                            ? "SEED_PARENT is missing"
                            : "SEED_PARENT and POLLEN_PARENT are missing",
                        "Name the plant that bears the fruit, then the one that gave the pollen."));
    if (pollenSaid) {
      return new Parents(seed, pollenParent.get());
    }
    String from =
        asker
            .ask("Pollen parent", pollenOf(before))
            .orElseThrow(
                () ->
                    Trouble.usage(
                        "POLLEN_PARENT is missing",
                        "Name it, or say --selfed, --open, or --mix PLANT=WEIGHT for each plant of"
                            + " a mix."));
    return new Parents(seed, Optional.of(from));
  }

  private static @Nullable String seedOf(Optional<Pollinated> before) {
    return before.map(cross -> cross.seedParent().text()).orElse(null);
  }

  private static @Nullable String pollenOf(Optional<Pollinated> before) {
    return before
        .map(Pollinated::pollen)
        .filter(Pollen.OnePlant.class::isInstance)
        .map(one -> ((Pollen.OnePlant) one).plant().text())
        .orElse(null);
  }

  private Answer record(Writing writing, Parents parents, Bench bench) {
    @Nullable PartialDate day = date.orToday(bench);
    Code given = code.in(writing.view(), day, bench);
    Pollen brought = pollen.in(writing, parents.pollen());
    Accepted accepted =
        append(
            writing,
            new Pollinated(
                given,
                writing.find(parents.seed()).code(),
                brought,
                day,
                flowers.get().orElse(null),
                protection.list(),
                selfs.get().orElse(Fraction.ZERO),
                strays.get().orElse(Fraction.ZERO),
                apomixis.get().orElse(Fraction.ZERO),
                eggSets.get().orElse(null),
                pollenSets.get().orElse(null),
                storedPollen.getAsBoolean(),
                rest.place(),
                rest.remark()));
    notInFlower(writing, brought, day);
    Recorded recorded =
        Recorded.of(
            writing,
            accepted,
            given,
            "when it has set or failed: filial fruit " + given.text() + " --set COUNT");
    return tagged(recorded, writing, given);
  }

  private static Accepted append(Writing writing, Pollinated cross) {
    try {
      return writing.append(cross);
    } catch (UnstatedGameteRefusal e) {
      throw Trouble.refused(
          String.valueOf(e.getMessage()),
          "Say it with " + (e.isEgg() ? "--egg-sets" : "--pollen-sets") + " SETS.");
    }
  }

  /** Says of which plants thought to have pollinated it is known that they were not in flower. */
  private void notInFlower(Writing writing, Pollen meant, @Nullable PartialDate day) {
    if (day == null || day.day() == 0 || !(meant instanceof Pollen.Open open)) {
      return;
    }
    List<Code> candidates = open.candidates().stream().map(Weighted::plant).toList();
    for (Code plant : FloweringQuestion.notInFlower(writing.view(), candidates, day.earliest())) {
      writing.note(
          plant.text()
              + " was seen in flower that year, and by what was seen not on "
              + day
              + "; perhaps it was another plant, or its flowers were not written down");
    }
  }

  /** With the tag, and a note where the parents are close kin: the pedigree is looked up once. */
  private static Recorded tagged(Recorded recorded, Writing writing, Code cross) {
    RegisterView view = writing.view();
    if (!writing.isTold() && isOfStrangers(view, cross)) {
      return recorded; // one of many: no tag is wanted, and there is nothing to note
    }
    RegisterPedigree behind;
    try {
      behind = RegisterPedigree.of(view, List.of(cross), false);
    } catch (PedigreeException e) {
      return recorded.withTag(
          writing, cross); // nothing can be computed; a tag is needed all the same
    }
    Recorded tagged =
        writing.isTold()
            ? recorded.withTag(TagQuestion.of(view).withPedigree(behind), cross)
            : recorded;
    return CloseCross.of(view, behind, cross)
        .map(CloseCross::text)
        .map(tagged::withWarning)
        .orElse(tagged);
  }

  private static boolean isOfStrangers(RegisterView view, Code cross) {
    List<Descent> descent = view.item(cross).map(Item::descent).orElse(List.of());
    if (descent.size() != 1) {
      return false;
    }
    Code pollen = descent.get(0).pollen();
    return pollen != null && CloseCross.isOfStrangers(view, descent.get(0).seed(), pollen);
  }
}
