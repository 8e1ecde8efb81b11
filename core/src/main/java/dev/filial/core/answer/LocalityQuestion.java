package dev.filial.core.answer;

import dev.filial.core.ancestry.LocalityTruth;
import dev.filial.core.ancestry.LocalityVerdict;
import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Which plants are true to a collector's field number, and of those that are not any more, since
 * when and through which cross or bee.
 *
 * <p>As {@link LocalityTruth} has it; a hand cross on unprotected flowers for which no share of
 * strays is stated counts as one to which a bee may have come. A cross, a seed lot, a sowing or a
 * pot stands for any one seedling of it.
 */
public final class LocalityQuestion {

  private final RegisterView view;
  private final boolean gone;

  private LocalityQuestion(RegisterView view, boolean gone) {
    this.view = view;
    this.gone = gone;
  }

  /** Asks {@code view} about what is here. */
  public static LocalityQuestion of(RegisterView view) {
    return new LocalityQuestion(view, false);
  }

  /** The same, with what has died, left or was used up, and what never stood here. */
  public LocalityQuestion withGone(boolean also) {
    return new LocalityQuestion(view, also);
  }

  /**
   * Where a line was lost.
   *
   * @param plant the plant at which it was
   * @param made the cross, packet or mixture that plant came of, or the plant itself where it came
   *     of none; null where the register has neither
   * @param parents what that is: its parents
   * @param since the day it was made, or null when not known
   * @param how the way in which another came in or may have come in, as {@code open pollination}
   * @param why what came in or may have come in, a sentence each without a full stop
   */
  public record Lost(
      String plant,
      @Nullable Code made,
      @Nullable String parents,
      @Nullable PartialDate since,
      String how,
      List<String> why) {}

  /**
   * A plant, pot or lot that comes of a field number.
   *
   * @param code its code
   * @param kind what it is, in a grower's words
   * @param what its taxon or parents
   * @param verdict whether it is true to the number
   * @param lost where its line was first lost; null if it is true
   * @param elsewhere whether it was lost in other crosses too
   */
  public record Thing(
      Code code,
      String kind,
      String what,
      LocalityVerdict verdict,
      @Nullable Lost lost,
      boolean elsewhere) {}

  /**
   * What there is of a field number.
   *
   * @param fieldNumber the number asked for
   * @param population all numbers of its population, itself included
   * @param declared the entries by which these are one population
   * @param things every plant, pot and seed lot that comes of it, in order of entry
   * @param notes doubts the answer leans on, one sentence each
   */
  public record Report(
      String fieldNumber,
      List<String> population,
      List<Said> declared,
      List<Thing> things,
      List<String> notes) {
    /** How many of the things have that verdict. */
    public long count(LocalityVerdict verdict) {
      return things.stream().filter(thing -> thing.verdict() == verdict).count();
    }
  }

  /**
   * Whether a plant is true to one of the numbers behind it.
   *
   * @param fieldNumbers the numbers of one population that founders behind it bear
   * @param population all numbers of that population
   * @param verdict whether the plant is true to it
   * @param lost every place where a line that leads to it was lost, the founders' side first
   */
  public record Standing(
      List<String> fieldNumbers,
      List<String> population,
      LocalityVerdict verdict,
      List<Lost> lost) {}

  /**
   * Whether a plant is true to a field number.
   *
   * @param code the plant, or the family one seedling of which is meant
   * @param kind what the code stands for, in a grower's words
   * @param what its taxon or parents
   * @param trueTo the numbers of the population it is true to; empty when it is true to none
   * @param standings each population that founders behind it are of, by its first number; empty
   *     when none of them has a field number
   * @param notes doubts the answer leans on, one sentence each
   */
  public record Origin(
      Code code,
      String kind,
      String what,
      List<String> trueTo,
      List<Standing> standings,
      List<String> notes) {}

  /**
   * One population, counted.
   *
   * @param fieldNumbers its numbers that plants or packets came under
   * @param isTrue how many plants, pots and lots are true to it
   * @param notCertain of how many that is not certain
   * @param notTrue how many come of it and are not true to it
   */
  public record Line(List<String> fieldNumbers, long isTrue, long notCertain, long notTrue) {}

  /**
   * Which field number the thing of this code is true to, or why it is not. Cost in proportion to
   * its ancestors, for each number behind it.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  public Origin ask(Code code) {
    Item item = Things.required(view, code);
    RegisterPedigree behind = RegisterPedigree.of(view, List.of(item.code()), false);
    Pedigree pedigree = behind.pedigree();
    BitSet doubtful = doubtful(behind);
    LocalityTelling telling = new LocalityTelling(view, behind);
    FieldNumbers numbers = FieldNumbers.in(view);
    List<String> trueTo = List.of();
    List<Standing> standings = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    String name = item.code().text();
    for (Population population : populations(founderNumbers(pedigree))) {
      LocalityTruth truth = LocalityTruth.of(pedigree, population.all(), doubtful::get);
      LocalityVerdict verdict = truth.verdict(name);
      List<Lost> lost = truth.losses(name).stream().map(telling::of).toList();
      standings.add(
          new Standing(
              List.copyOf(population.borne()), List.copyOf(population.all()), verdict, lost));
      if (verdict == LocalityVerdict.TRUE) {
        trueTo = List.copyOf(population.borne());
      }
      notes.addAll(taxa(pedigree, population));
      notes.addAll(LineageNotes.guessed(view, numbers.declarations(population.all())));
    }
    notes.addAll(LineageNotes.guesses(view, behind.items()));
    return new Origin(
        item.code(),
        item.kind().word(),
        Describing.of(view, item),
        trueTo,
        List.copyOf(standings),
        List.copyOf(notes));
  }

  /**
   * What there is of a field number and its population. One pass over the pedigree of all that is
   * here.
   *
   * @param fieldNumber the number, spelt as it is or with other capitals
   * @throws dev.filial.core.register.RegisterRefusal if nothing came under it
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  public Report ofNumber(String fieldNumber) {
    FieldNumbers numbers = FieldNumbers.in(view);
    String number = numbers.required(fieldNumber);
    NavigableSet<String> all = view.population(number);
    List<Said> declared = numbers.declarations(all);
    List<Item> asked = things();
    RegisterPedigree behind = behind(asked);
    Pedigree pedigree = behind.pedigree();
    LocalityTruth truth = LocalityTruth.of(pedigree, all, doubtful(behind)::get);
    LocalityTelling telling = new LocalityTelling(view, behind);
    List<Thing> things = new ArrayList<>();
    BitSet found = new BitSet(pedigree.size());
    BitSet elsewhere = lostElsewhere(truth, behind);
    for (Item item : asked) {
      int plant = pedigree.indexOf(item.code().text());
      if (truth.isDescended(plant)) {
        found.set(plant);
        int loss = truth.firstLoss(plant);
        things.add(
            new Thing(
                item.code(),
                item.kind().word(),
                Describing.of(view, item),
                truth.verdict(plant),
                loss == Pedigree.UNKNOWN ? null : telling.of(truth.lossAt(loss)),
                elsewhere.get(plant)));
      }
    }
    List<String> notes = new ArrayList<>(taxa(pedigree, new Population(new TreeSet<>(), all)));
    notes.addAll(LineageNotes.guessed(view, declared));
    notes.addAll(LineageNotes.guesses(view, itemsBehind(behind, found)));
    return new Report(number, List.copyOf(all), declared, List.copyOf(things), List.copyOf(notes));
  }

  /**
   * Every population that plants or packets came of, by its first number. One pass over the
   * pedigree of all that is here for each.
   */
  public List<Line> ask() {
    List<Item> asked = things();
    RegisterPedigree behind = behind(asked);
    Pedigree pedigree = behind.pedigree();
    BitSet doubtful = doubtful(behind);
    List<Line> lines = new ArrayList<>();
    for (Population population : populations(FieldNumbers.in(view).borne())) {
      LocalityTruth truth = LocalityTruth.of(pedigree, population.all(), doubtful::get);
      long[] counts = new long[LocalityVerdict.values().length];
      for (Item item : asked) {
        int plant = pedigree.indexOf(item.code().text());
        if (truth.isDescended(plant)) {
          switch (truth.verdict(plant)) {
            case TRUE -> counts[0]++;
            case NOT_CERTAIN -> counts[1]++;
            case NOT_TRUE -> counts[2]++;
          }
        }
      }
      lines.add(new Line(List.copyOf(population.borne()), counts[0], counts[1], counts[2]));
    }
    return List.copyOf(lines);
  }

  /**
   * A population.
   *
   * @param borne its numbers that founders bear
   * @param all all its numbers
   */
  private record Population(NavigableSet<String> borne, NavigableSet<String> all) {}

  private Collection<Population> populations(NavigableSet<String> numbers) {
    TreeMap<String, Population> populations = new TreeMap<>();
    for (String number : numbers) {
      NavigableSet<String> all = view.population(number);
      populations
          .computeIfAbsent(all.first(), any -> new Population(new TreeSet<>(), all))
          .borne()
          .add(number);
    }
    return populations.values();
  }

  /** Founders come first. */
  private static int founders(Pedigree pedigree) {
    return pedigree.levels() == 0 ? 0 : pedigree.levelStart(1);
  }

  private static NavigableSet<String> founderNumbers(Pedigree pedigree) {
    NavigableSet<String> numbers = new TreeSet<>();
    for (int plant = 0; plant < founders(pedigree); plant++) {
      Founder founder = pedigree.founder(plant);
      String number = founder == null ? null : founder.fieldNumber();
      if (number != null) {
        numbers.add(number);
      }
    }
    return numbers;
  }

  /** The plants, pots and lots; a sowing only where its seedlings stand in no pots. */
  private List<Item> things() {
    EnumSet<Item.Kind> kinds =
        EnumSet.of(
            Item.Kind.PLANT, Item.Kind.SEEDLING, Item.Kind.GROUP, Item.Kind.LOT, Item.Kind.SOWING);
    List<Item> things = new ArrayList<>();
    for (Item item : view.items(kinds)) {
      if (item.sameAs() == null
          && (gone || Holdings.isHere(item))
          && !Holdings.isDivided(view, item)) {
        things.add(item);
      }
    }
    return things;
  }

  private RegisterPedigree behind(List<Item> things) {
    return RegisterPedigree.of(view, things.stream().map(Item::code).toList(), false);
  }

  /**
   * The seedlings of hand crosses on flowers that were left open, nobody knows with what effect.
   */
  private static BitSet doubtful(RegisterPedigree behind) {
    Pedigree pedigree = behind.pedigree();
    BitSet doubtful = new BitSet(pedigree.size());
    for (int plant = 0; plant < pedigree.size(); plant++) {
      doubtful.set(
          plant, behind.family(pedigree.code(plant)).filter(Item::unprotected).isPresent());
    }
    return doubtful;
  }

  /**
   * The plants whose line was lost in several crosses; two seedlings of one cross that stand behind
   * a plant lost it in the same.
   */
  private static BitSet lostElsewhere(LocalityTruth truth, RegisterPedigree behind) {
    Pedigree pedigree = truth.pedigree();
    BitSet elsewhere = new BitSet(pedigree.size());
    for (int plant = 0; plant < pedigree.size(); plant++) {
      if (!truth.isLostSeveralTimes(plant)) {
        continue;
      }
      String made = made(truth.firstLoss(plant), behind);
      for (int parent : pedigree.parents(plant)) {
        boolean alike =
            truth.firstLoss(parent) != Pedigree.UNKNOWN
                && truth.verdict(parent) == truth.verdict(plant);
        if (alike
            && (elsewhere.get(parent) || !made(truth.firstLoss(parent), behind).equals(made))) {
          elsewhere.set(plant);
        }
      }
    }
    return elsewhere;
  }

  private static String made(int plant, RegisterPedigree behind) {
    String name = behind.pedigree().code(plant);
    return behind.family(name).map(family -> family.code().text()).orElse(name);
  }

  /** That several species came under one number, so that true to it is not of one species. */
  private static List<String> taxa(Pedigree pedigree, Population population) {
    Set<String> taxa = new TreeSet<>();
    for (int plant = 0; plant < founders(pedigree); plant++) {
      Founder founder = pedigree.founder(plant);
      String number = founder == null ? null : founder.fieldNumber();
      if (founder != null && number != null && population.all().contains(number)) {
        taxa.addAll(founder.makeup().shares().keySet());
      }
    }
    return taxa.size() < 2
        ? List.of()
        : List.of(
            "several species came under "
                + String.join(", ", population.all())
                + ": "
                + String.join(", ", taxa)
                + "; a cross of them is true to the number and yet a hybrid");
  }

  private static Set<Item> itemsBehind(RegisterPedigree behind, BitSet plants) {
    Pedigree pedigree = behind.pedigree();
    BitSet open = (BitSet) plants.clone();
    Set<Item> items = new LinkedHashSet<>();
    for (int plant = open.length() - 1; plant >= 0; plant = open.previousSetBit(plant - 1)) {
      for (int parent : pedigree.parents(plant)) {
        open.set(parent);
      }
      behind.item(pedigree.code(plant)).ifPresent(items::add);
      behind.family(pedigree.code(plant)).ifPresent(items::add);
    }
    return items;
  }
}
