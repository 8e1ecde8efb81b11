package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Gamete;
import dev.filial.core.pedigree.Origin;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Ramet;
import dev.filial.core.pedigree.Route;
import dev.filial.core.pedigree.Seedling;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The pedigree behind some plants of a register.
 *
 * <p>A plant goes by its code. A cross, seed lot, sowing or group goes by its own code too and
 * stands for one seedling of it. Plants that the register does not number get a name that says what
 * they are: one out of a pot that was used as a parent, the plant of an unknown identity.
 */
public final class RegisterPedigree {

  private final Pedigree pedigree;
  private final Map<Code, Item> items;
  private final Map<String, Code> coded;
  private final Map<String, Code> families;
  private final List<String> asked;
  private final List<String> notes;

  private RegisterPedigree(
      Pedigree pedigree,
      Map<Code, Item> items,
      Builder builder,
      List<String> asked,
      List<String> notes) {
    this.pedigree = pedigree;
    this.items = items;
    this.coded = builder.coded;
    this.families = builder.families;
    this.asked = List.copyOf(asked);
    this.notes = List.copyOf(notes);
  }

  /**
   * The pedigree behind {@code roots}. Cost in proportion to the ancestors, each looked up once.
   *
   * @param countingIntoSpecies whether a subspecies or variety counts as its species
   * @throws dev.filial.core.pedigree.PedigreeException if it cannot be computed with: a parent of
   *     odd ploidy whose gamete is not stated
   */
  public static RegisterPedigree of(
      RegisterView view, Collection<Code> roots, boolean countingIntoSpecies) {
    Map<Code, Item> lineage = view.lineage(roots);
    Builder builder = new Builder(view, lineage, new Founders(view, countingIntoSpecies));
    List<String> asked = new ArrayList<>();
    Set<Code> before = new HashSet<>();
    for (Code root : roots) {
      asked.add(before.add(root) ? builder.need(root) : builder.again(root));
    }
    return new RegisterPedigree(
        Pedigree.of(builder.build()),
        lineage,
        builder,
        asked,
        LineageNotes.of(view, lineage.values(), roots));
  }

  /** The plants asked for and all behind them. */
  public Pedigree pedigree() {
    return pedigree;
  }

  /**
   * What the plants asked for are called in the pedigree, in the order given. A family that is
   * asked for again is another seedling of it, under a name of its own.
   */
  List<String> asked() {
    return asked;
  }

  /** What the register says of each of them that it numbers, and of the families they are of. */
  public Collection<Item> items() {
    return Collections.unmodifiableCollection(items.values());
  }

  /** Doubts that anything computed from the pedigree leans on, one sentence each. */
  public List<String> notes() {
    return notes;
  }

  /** What the register says of a plant of the pedigree; empty for those it does not number. */
  public Optional<Item> item(String name) {
    return Optional.ofNullable(coded.get(name)).map(items::get);
  }

  /**
   * The cross, packet or mixture that a plant of the pedigree is a seedling of, numbered or not;
   * empty for one that was acquired, found or taken from another.
   */
  public Optional<Item> family(String name) {
    return Optional.ofNullable(families.get(name)).map(items::get);
  }

  /** Turns items into plant records, each once. */
  private static final class Builder {
    private final RegisterView view;
    private final Map<Code, Item> lineage;
    private final Founders founders;
    private final Map<String, PlantRecord> records = new LinkedHashMap<>();
    private final Map<String, Code> coded = new HashMap<>();
    private final Map<String, Code> families = new HashMap<>();
    private final Set<String> others = new HashSet<>();
    private final Deque<Wanted> open = new ArrayDeque<>();

    /**
     * A plant whose origin is still to be looked up.
     *
     * @param name what it is called in the pedigree
     * @param code what the register has it under
     * @param unnumbered whether it is a seedling of {@code code} without a number of its own
     */
    private record Wanted(String name, Code code, boolean unnumbered) {}

    Builder(RegisterView view, Map<Code, Item> lineage, Founders founders) {
      this.view = view;
      this.lineage = lineage;
      this.founders = founders;
    }

    List<PlantRecord> build() {
      while (!open.isEmpty()) {
        Wanted next = open.remove();
        if (!records.containsKey(next.name())) {
          records.put(next.name(), new PlantRecord(next.name(), origin(next)));
        }
      }
      return List.copyOf(records.values());
    }

    String need(Code code) {
      String name = code.text();
      if (coded.putIfAbsent(name, code) == null) {
        open.add(new Wanted(name, code, false));
      }
      return name;
    }

    /** A code once more: the same plant, or another seedling of the same family. */
    String again(Code code) {
      Item item = item(code);
      if (item.kind().isPlant() || item.sameAs() != null) {
        return code.text();
      }
      String name = "another of " + code.text();
      for (int k = 2; !others.add(name); k++) {
        name = "another of " + code.text() + " (" + k + ")";
      }
      open.add(new Wanted(name, code, true));
      return name;
    }

    private Item item(Code code) {
      Item item = lineage.get(code);
      if (item == null) {
        throw new IllegalStateException("the register has no " + code.text());
      }
      return item;
    }

    private Origin origin(Wanted plant) {
      if (plant.unnumbered()) {
        return seedlingOf(plant.code().whole(), plant.name());
      }
      Item item = item(plant.code());
      if (item.sameAs() != null) {
        // A joined record stays in the pedigree as the same genotype as what it was joined with.
        return new Ramet(need(item.sameAs()), false);
      }
      return item.kind() == Item.Kind.PLANT
          ? ofPlant(item)
          : seedlingOf(plant.code().whole(), plant.name());
    }

    private Origin ofPlant(Item plant) {
      if (plant.descent().isEmpty()) {
        return founders.plant(plant.determination(), plant.fieldNumber());
      }
      Descent first = plant.descent().get(0);
      if (first.share().isOne() && first.form() != Descent.Form.SIBLING) {
        return new Ramet(need(first.seed()), first.form() == Descent.Form.DOUBLED);
      }
      return known(plant, plant.code().text());
    }

    /** A seedling of the family under {@code whole}. */
    private Origin seedlingOf(Code whole, String name) {
      Item family = item(whole);
      families.put(name, whole);
      return family.descent().isEmpty()
          ? founders.seedling(family.determination(), family.fieldNumber())
          : known(family, name);
    }

    private Origin known(Item item, String name) {
      if (item.descent().size() == 1 && item.descent().get(0).share().isOne()) {
        return new Seedling(List.of(oneCase(item.descent().get(0), item.code(), name)));
      }
      List<Case> cases = new ArrayList<>();
      Fraction rest = Fraction.ONE;
      for (Descent descent : item.descent()) {
        rest = rest.minus(descent.share());
        cases.add(oneCase(descent, item.code(), name));
      }
      if (rest.signum() > 0) {
        String unknown = "unknown plant of " + name;
        records.put(unknown, new PlantRecord(unknown, founders.unknown(ploidyOfCandidates(item))));
        cases.add(new Case.Copy(rest, Route.IDENTITY, unknown));
      }
      return new Seedling(cases);
    }

    /** The chromosome sets that all candidates have; 2 when they differ among themselves. */
    private int ploidyOfCandidates(Item found) {
      if (view.isAllDiploid()) {
        return 2;
      }
      List<Code> candidates = found.descent().stream().map(Descent::seed).toList();
      Pedigree behind = RegisterPedigree.of(view, candidates, false).pedigree();
      int[] sets =
          candidates.stream()
              .mapToInt(code -> behind.ploidy(behind.indexOf(code.text())))
              .distinct()
              .toArray();
      return sets.length == 1 && sets[0] > 0 ? sets[0] : 2;
    }

    private Case oneCase(Descent descent, Code cross, String name) {
      return switch (descent.form()) {
        case COPY, DOUBLED ->
            new Case.Copy(
                descent.share(), descent.route(), parent(descent.seed(), "seed parent", cross));
        case SIBLING ->
            // Each plant is a seedling of its own, so its name goes with the other's.
            new Case.Copy(descent.share(), descent.route(), oneOf(descent.seed(), "as " + name));
        case SEXUAL -> {
          String seed = parent(descent.seed(), "seed parent", cross);
          // Its own pollen comes from the same plant of a pot, a sib's from another one.
          String pollen =
              descent.route() == Route.SELFING
                  ? seed
                  : descent.pollen() == null
                      ? null
                      : parent(descent.pollen(), "pollen parent", cross);
          yield new Case.Sexual(
              descent.share(),
              descent.route(),
              gamete(seed, descent.seedSets()),
              gamete(pollen, descent.pollenSets()));
        }
      };
    }

    private static Gamete gamete(@Nullable String parent, int sets) {
      return new Gamete(parent, sets);
    }

    /** A parent; out of a pot it is one plant without a number, the same for the whole cross. */
    private String parent(Code code, String role, Code cross) {
      return code.isGroup() ? oneOf(code, role + " of " + cross.text()) : need(code);
    }

    private String oneOf(Code code, String which) {
      String name = "one of " + code.text() + " (" + which + ")";
      open.add(new Wanted(name, code, true));
      return name;
    }
  }
}
