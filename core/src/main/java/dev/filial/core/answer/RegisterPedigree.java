package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Gamete;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Origin;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Ramet;
import dev.filial.core.pedigree.Route;
import dev.filial.core.pedigree.Seedling;
import dev.filial.core.pedigree.Standing;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The pedigree behind some plants of a register.
 *
 * <p>A plant goes by its code. A cross, seed lot, sowing or group goes by its own code too and
 * stands for one seedling of it. Plants that the register does not number get a name that says what
 * they are: one out of a pot that was used as a parent, the plant of an unknown identity.
 *
 * @param pedigree the plants asked for and all behind them
 * @param items what the register says of each code in it, by the code's text
 * @param notes doubts that anything computed from it leans on, one sentence each
 */
public record RegisterPedigree(Pedigree pedigree, Map<String, Item> items, List<String> notes) {

  /** Copies the collections. */
  public RegisterPedigree {
    items = Map.copyOf(items);
    notes = List.copyOf(notes);
  }

  /**
   * The pedigree behind {@code roots}.
   *
   * @param countingIntoSpecies whether a subspecies or variety counts as its species
   * @throws dev.filial.core.pedigree.PedigreeException if it cannot be computed with: a parent of
   *     odd ploidy whose gamete is not stated
   */
  public static RegisterPedigree of(
      RegisterView view, Collection<Code> roots, boolean countingIntoSpecies) {
    Map<Code, Item> lineage = view.lineage(roots);
    Builder builder = new Builder(lineage, new Founders(view, countingIntoSpecies));
    roots.forEach(builder::need);
    Map<String, Item> items = new LinkedHashMap<>();
    lineage.forEach((code, item) -> items.put(code.text(), item));
    return new RegisterPedigree(
        Pedigree.of(builder.build()), items, LineageNotes.of(lineage.values()));
  }

  /** What the register says of a plant of the pedigree; empty for those it does not number. */
  public Optional<Item> item(String name) {
    return Optional.ofNullable(items.get(name));
  }

  /** Turns items into plant records, each once. */
  private static final class Builder {
    private final Map<Code, Item> lineage;
    private final Founders founders;
    private final Map<String, PlantRecord> records = new LinkedHashMap<>();
    private final Deque<Code> open = new ArrayDeque<>();

    Builder(Map<Code, Item> lineage, Founders founders) {
      this.lineage = lineage;
      this.founders = founders;
    }

    List<PlantRecord> build() {
      while (!open.isEmpty()) {
        Code code = open.remove();
        if (!records.containsKey(code.text())) {
          Item item = item(code);
          // A joined record stays in the pedigree as the same genotype as what it was joined with.
          put(
              code.text(),
              item.sameAs() == null ? origin(code) : new Ramet(need(item.sameAs()), false));
        }
      }
      return List.copyOf(records.values());
    }

    String need(Code code) {
      if (!records.containsKey(code.text())) {
        open.add(code);
      }
      return code.text();
    }

    private Item item(Code code) {
      Item item = lineage.get(code);
      if (item == null) {
        throw new IllegalStateException("the register has no " + code.text());
      }
      return item;
    }

    private void put(String name, Origin origin) {
      records.putIfAbsent(name, new PlantRecord(name, origin));
    }

    private Origin origin(Code code) {
      Item item = item(code);
      if (item.kind() == Item.Kind.PLANT) {
        return item.descent().isEmpty()
            ? founders.of(item.determination(), item.fieldNumber())
            : known(item, code.text());
      }
      return seedlingOf(code.whole(), code.text());
    }

    /** A seedling of the family under {@code whole}. */
    private Origin seedlingOf(Code whole, String name) {
      Item family = item(whole);
      return family.descent().isEmpty()
          ? founders.of(family.determination(), family.fieldNumber())
          : known(family, name);
    }

    private Origin known(Item item, String name) {
      List<Case> cases = new ArrayList<>();
      Fraction rest = Fraction.ONE;
      for (Descent descent : item.descent()) {
        if (item.kind() == Item.Kind.PLANT
            && item.descent().size() == 1
            && descent.share().isOne()
            && descent.form() != Descent.Form.SIBLING) {
          return new Ramet(need(descent.seed()), descent.form() == Descent.Form.DOUBLED);
        }
        rest = rest.minus(descent.share());
        cases.add(oneCase(descent, item.code()));
      }
      if (rest.signum() > 0) {
        String unknown = "unknown plant of " + name;
        put(
            unknown,
            new Founder(Makeup.unknown(), 2, Standing.UNKNOWN, Optional.empty(), null, null));
        cases.add(new Case.Copy(rest, Route.IDENTITY, unknown));
      }
      return new Seedling(cases);
    }

    private Case oneCase(Descent descent, Code cross) {
      return switch (descent.form()) {
        case COPY, DOUBLED ->
            new Case.Copy(
                descent.share(), descent.route(), parent(descent.seed(), "seed parent", cross));
        case SIBLING ->
            new Case.Copy(
                descent.share(), descent.route(), oneOf(descent.seed(), "seedling", cross));
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

    private String parent(Code code, String role, Code cross) {
      return code.isGroup() ? oneOf(code, role, cross) : need(code);
    }

    /** A plant without a number out of a pot, lot or family, met in one cross only. */
    private String oneOf(Code code, String role, Code cross) {
      String name = "one of " + code.text() + " (" + role + " of " + cross.text() + ")";
      if (!records.containsKey(name)) {
        put(name, seedlingOf(code.whole(), name));
      }
      return name;
    }
  }
}
