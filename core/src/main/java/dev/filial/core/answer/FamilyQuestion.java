package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Item;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Observed;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What the register says of a family as a whole: how a cross was made or where a packet came from,
 * its seed, sowings and pots, its numbered seedlings, and what was raised from them.
 */
public final class FamilyQuestion {

  private final RegisterView view;

  private FamilyQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static FamilyQuestion of(RegisterView view) {
    return new FamilyQuestion(view);
  }

  /**
   * How a pollination was made.
   *
   * @param flowers how many flowers were tried, or null
   * @param protection how they were kept from other pollen, in words; empty when not recorded
   * @param stored whether the pollen came out of store
   * @param place where the seed parent stood, or null
   * @param remark anything else, or null
   */
  public record Pollination(
      @Nullable Count flowers,
      String protection,
      boolean stored,
      @Nullable String place,
      @Nullable String remark) {}

  /**
   * How its flowers fared, all that was written of them together.
   *
   * @param set how many set fruit, or null when nobody wrote it
   * @param failed how many failed, or null
   * @param aborted of those that set, how many dropped their fruit unripe, or null
   * @param eaten how many were eaten, or null
   */
  public record Fruit(
      @Nullable Count set,
      @Nullable Count failed,
      @Nullable Count aborted,
      @Nullable Count eaten) {}

  /**
   * A seed lot.
   *
   * @param code its code
   * @param how how it came about: harvested, put apart from another, as it came
   * @param date the day of that, or null
   * @param fruits from how many fruits, or null
   * @param seeds how many seeds it had then, or null
   * @param left how many there are now, or null
   * @param place where it is kept, or null
   * @param fate what became of it
   */
  public record Lot(
      Code code,
      String how,
      @Nullable PartialDate date,
      @Nullable Count fruits,
      @Nullable Count seeds,
      @Nullable Count left,
      @Nullable String place,
      String fate) {}

  /**
   * A sowing.
   *
   * @param code its code
   * @param lot the lot it is of
   * @param date the day, or null
   * @param seeds how many seeds
   * @param medium what they were sown on, or null
   * @param treatments what was done to them
   * @param pots the pots it was divided into
   */
  public record Sowing(
      Code code,
      Code lot,
      @Nullable PartialDate date,
      Count seeds,
      @Nullable String medium,
      List<String> treatments,
      List<Code> pots) {}

  /**
   * A pot, or a sowing that stands in one.
   *
   * @param code its code
   * @param since since when, or null
   * @param left how many stand in it, or null when nobody counted
   * @param place where it stands, or null
   * @param fate what became of it
   */
  public record Pot(
      Code code,
      @Nullable PartialDate since,
      @Nullable Count left,
      @Nullable String place,
      String fate) {}

  /**
   * A numbered seedling.
   *
   * @param code its code
   * @param names its own names
   * @param since since when it has its number, or null
   * @param pickedFor the trait it was picked for, or null
   * @param shown what it showed last of each trait that was looked at
   * @param place where it stands, or null
   * @param fate what became of it
   */
  public record Seedling(
      Code code,
      List<String> names,
      @Nullable PartialDate since,
      @Nullable String pickedFor,
      Map<String, String> shown,
      @Nullable String place,
      String fate) {}

  /**
   * A family.
   *
   * @param code its code
   * @param kind what it is: a cross, a packet of seed, a mixed packet
   * @param what its parents, or its taxon
   * @param names its own names
   * @param since the day it was made or came, or null
   * @param by who wrote that down
   * @param guess whose guess it is, or null when it is none
   * @param pollination how it was made; null for what was not crossed here
   * @param fruit how its flowers fared; null when nobody wrote it
   * @param provenance where it came from, or null
   * @param doubts what is doubtful about the pollination
   * @param lots its seed lots
   * @param sowings its sowings
   * @param pots its pots
   * @param seedlings its numbered seedlings
   * @param raised the crosses, plants and packets that came of any of these, in order
   * @param history what was said of it, its seed, sowings and pots, oldest first
   */
  public record Family(
      Code code,
      String kind,
      String what,
      List<String> names,
      @Nullable PartialDate since,
      String by,
      @Nullable String guess,
      @Nullable Pollination pollination,
      @Nullable Fruit fruit,
      @Nullable Provenance provenance,
      List<String> doubts,
      List<Lot> lots,
      List<Sowing> sowings,
      List<Pot> pots,
      List<Seedling> seedlings,
      List<Code> raised,
      List<Said> history) {

    /** It, its seed lots, its sowings and its pots, each once: what {@link #history} is of. */
    public List<Code> recorded() {
      Set<Code> all = new LinkedHashSet<>(List.of(code));
      lots.forEach(lot -> all.add(lot.code()));
      sowings.forEach(sowing -> all.add(sowing.code()));
      pots.forEach(pot -> all.add(pot.code()));
      return List.copyOf(all);
    }
  }

  /**
   * The family that a code stands for: a cross or packet itself, or the one that a seed lot, a
   * sowing or a pot is of; empty for a single plant.
   *
   * @throws RegisterRefusal if the register has no such code
   */
  public Optional<Code> family(Code code) {
    Item item = Things.required(view, code);
    return item.kind().isPlant()
        ? Optional.empty()
        : Optional.of(Describing.origin(view, item))
            .filter(origin -> origin.kind().isFamily())
            .map(Item::code);
  }

  /**
   * What is known of a family.
   *
   * @param code a cross or packet, or a seed lot, a sowing or a pot of one
   * @throws RegisterRefusal if the register has no such code, or it is a single plant
   */
  public Family ask(Code code) {
    Code whole =
        family(code)
            .orElseThrow(
                () ->
                    new RegisterRefusal(
                        code.text()
                            + " is a single plant and no family; name a cross, a packet of seed, or"
                            + " a seed lot, a sowing or a pot of one"));
    Item item = Things.required(view, whole);
    Statement first = view.effective(item.entry()).orElseThrow();
    Set<Code> all = new LinkedHashSet<>(List.of(whole));
    TreeSet<Long> entries = new TreeSet<>(view.entriesOn(Subject.of(whole)));
    List<Lot> lots = new ArrayList<>();
    List<Sowing> sowings = new ArrayList<>();
    List<Pot> pots = new ArrayList<>();
    List<Seedling> seedlings = new ArrayList<>();
    for (Code under : view.codesUnder(whole).stream().sorted().toList()) {
      Item one = view.item(under).orElse(null);
      if (one == null || under.isWhole()) {
        continue;
      }
      all.add(under);
      if (!under.isSeedling()) {
        entries.addAll(view.entriesOn(Subject.of(under)));
      }
      switch (one.kind()) {
        case LOT -> lots.add(lot(one));
        case SOWING -> {
          sowing(one).ifPresent(sowings::add);
          if (!Holdings.isDivided(view, one)) {
            pots.add(pot(one));
          }
        }
        case GROUP -> pots.add(pot(one));
        case SEEDLING -> seedlings.add(seedling(one));
        case PLANT, CROSS, SEED, MIXTURE -> {}
      }
    }
    Said said = Said.of(view, item.entry());
    return new Family(
        whole,
        item.kind().word(),
        Describing.of(view, item),
        item.names(),
        item.since(),
        said.by(),
        said.guess(),
        first instanceof Pollinated cross ? pollination(cross) : null,
        fruit(whole),
        first instanceof SeedAcquired seed && !seed.provenance().equals(Provenance.UNKNOWN)
            ? seed.provenance()
            : null,
        PollinationDoubts.of(view, item, List.of(item)),
        List.copyOf(lots),
        List.copyOf(sowings),
        List.copyOf(pots),
        List.copyOf(seedlings),
        Offspring.of(view, all),
        entries.stream().map(entry -> Said.of(view, entry)).toList());
  }

  private static Pollination pollination(Pollinated cross) {
    return new Pollination(
        cross.flowers(),
        Telling.protection(cross),
        cross.storedPollen(),
        cross.place(),
        cross.remark());
  }

  private @Nullable Fruit fruit(Code cross) {
    Count set = null;
    Count failed = null;
    Count aborted = null;
    Count eaten = null;
    boolean any = false;
    for (long entry : view.entriesOn(Subject.of(cross))) {
      if (view.effective(entry).orElse(null) instanceof FruitRecorded fruit) {
        any = true;
        set = plus(set, fruit.set());
        failed = plus(failed, fruit.failed());
        aborted = plus(aborted, fruit.aborted());
        eaten = plus(eaten, fruit.eaten());
      }
    }
    return any ? new Fruit(set, failed, aborted, eaten) : null;
  }

  private static @Nullable Count plus(@Nullable Count sum, @Nullable Count more) {
    return sum == null ? more : more == null ? sum : sum.plus(more);
  }

  private Lot lot(Item lot) {
    Statement first = view.effective(lot.entry()).orElse(null);
    String how = "as it came";
    PartialDate date = lot.since();
    Count fruits = null;
    Count seeds = null;
    if (first instanceof Harvested harvest) {
      how = harvest.apart() ? "harvested, one fruit kept apart" : "harvested";
      fruits = harvest.fruits();
      seeds = harvest.seeds();
    } else if (first instanceof LotSplit split) {
      how = "put apart from " + split.from().text();
      seeds = split.count();
    } else if (first instanceof SeedAcquired seed) {
      seeds = seed.count();
    } else if (first instanceof LotsMerged) {
      how = "mixed";
    }
    return new Lot(
        lot.code(), how, date, fruits, seeds, lot.count(), lot.place(), Describing.fate(lot));
  }

  private Optional<Sowing> sowing(Item sowing) {
    return view.effective(sowing.entry())
        .filter(Sown.class::isInstance)
        .map(Sown.class::cast)
        .map(
            sown ->
                new Sowing(
                    sown.sowing(),
                    sown.lot(),
                    sown.date(),
                    sown.seeds(),
                    sown.medium(),
                    sown.treatments(),
                    sown.groups().stream().map(Sown.Filled::group).toList()));
  }

  private static Pot pot(Item pot) {
    return new Pot(pot.code(), pot.since(), pot.count(), pot.place(), Describing.fate(pot));
  }

  private Seedling seedling(Item seedling) {
    Set<String> traits = new LinkedHashSet<>();
    for (long entry : view.entriesOn(Subject.of(seedling.code()))) {
      if (view.effective(entry).orElse(null) instanceof Observed seen) {
        traits.add(view.requiredTrait(seen.trait()).trait());
      }
    }
    Map<String, String> shown = new LinkedHashMap<>();
    for (String trait : traits) {
      LastSeen.of(view, trait)
          .value(seedling.code())
          .ifPresent(
              value -> {
                String unit = view.requiredTrait(trait).unit();
                shown.put(trait, unit == null ? value : value + " " + unit);
              });
    }
    return new Seedling(
        seedling.code(),
        seedling.names(),
        seedling.since(),
        view.effective(seedling.entry()).orElse(null) instanceof Numbered numbered
            ? numbered.pickedFor()
            : null,
        shown,
        seedling.place(),
        Describing.fate(seedling));
  }
}
