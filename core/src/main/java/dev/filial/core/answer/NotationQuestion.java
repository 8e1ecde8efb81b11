package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.FormulaStyle;
import dev.filial.core.name.HybridFormula;
import dev.filial.core.name.Notation;
import dev.filial.core.name.TaxonName;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.NotationOf;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A plant's pedigree in breeders' notation, and its hybrid formula.
 *
 * <p>Notation after Purdy, Loegering, Konzak, Peterson and Allan 1968, Crop Science 8:405-406;
 * formulas after the International Code of Nomenclature, Art. H.2.
 */
public final class NotationQuestion {

  private final RegisterView view;

  private NotationQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static NotationQuestion of(RegisterView view) {
    return new NotationQuestion(view);
  }

  /** What the sources of a notation are called. */
  public enum Sources {
    /** By their own name or cultivar, else by taxon and field number. */
    NAMES,
    /** By short names of taxa, in full where two are shortened alike. */
    TAXA,
    /** By codes. */
    CODES
  }

  /**
   * A pedigree in notation.
   *
   * @param code the plant
   * @param notation its pedigree, seed parents on the left
   * @param notes doubts in the records, one sentence each
   */
  public record Written(Code code, String notation, List<String> notes) {}

  /**
   * The pedigree of one plant in notation.
   *
   * @param style whether backcrosses are abbreviated
   * @throws RegisterRefusal if the register has no such code
   * @throws IllegalArgumentException if the notation would be too long to write
   */
  public Written notation(Code code, Sources sources, Notation.Style style) {
    Item item = Things.required(view, code);
    RegisterPedigree behind = RegisterPedigree.of(view, List.of(item.code()), false);
    String name = item.code().text();
    Notation notation =
        NotationOf.of(behind.pedigree(), name, SourceNames.of(view, behind, sources));
    List<String> notes = new ArrayList<>(behind.notes());
    int plant = behind.pedigree().genet(behind.pedigree().indexOf(name));
    if (behind.pedigree().caseCount(plant) > 1) {
      notes.add(
          behind.pedigree().code(plant)
              + " may have come about in several ways, which notation has no sign for, so it stands"
              + " as a source");
    }
    return new Written(item.code(), notation.text(style), List.copyOf(notes));
  }

  /**
   * A hybrid formula.
   *
   * @param code the plant
   * @param formula the taxa it comes of, joined by ×; a single taxon when it is no hybrid
   * @param order in which order they stand: {@code seed parent first} or {@code alphabetical}
   * @param notes what it leaves open, one sentence each
   */
  public record Formula(Code code, String formula, String order, List<String> notes) {}

  /**
   * The hybrid formula of one plant: each taxon behind it once, those of the seed parent first.
   *
   * @param style as {@link HybridFormula} writes it
   * @throws RegisterRefusal if the register has no such code, nothing is known of its taxa, or
   *     signs are asked for and one of its parents is a hybrid itself
   */
  public Formula formula(Code code, FormulaStyle style) {
    Item item = Things.required(view, code);
    RegisterPedigree behind = RegisterPedigree.of(view, List.of(item.code()), false);
    Pedigree pedigree = behind.pedigree();
    int asked = pedigree.genet(pedigree.indexOf(item.code().text()));
    Walk walk = Walk.behind(pedigree, asked);
    if (walk.taxa().isEmpty()) {
      throw new RegisterRefusal(
          "nothing is known of the taxa in " + item.code().text() + ", so it has no formula");
    }
    List<TaxonName> names = walk.taxa().stream().map(TaxonName::parse).toList();
    if (names.size() == 1) {
      String only = style.ascii() ? names.get(0).asciiText() : names.get(0).text();
      return new Formula(item.code(), only, "no hybrid", walk.notes());
    }
    if (style.sexSigns() && !isOfTwoPlantsOfOneTaxon(pedigree, asked)) {
      throw new RegisterRefusal(
          "the signs for seed and pollen parent tell two parents of one taxon each apart, and "
              + item.code().text()
              + " has others; leave them out, or ask for its notation");
    }
    return new Formula(
        item.code(),
        HybridFormula.of(names).text(style),
        style.alphabetical() ? "alphabetical" : "seed parent first",
        walk.notes());
  }

  private static boolean isOfTwoPlantsOfOneTaxon(Pedigree pedigree, int plant) {
    return pedigree.caseCount(plant) == 1
        && pedigree.descents(plant).get(0) instanceof Descent.Sexual cross
        && isOfOneTaxon(pedigree, cross.seed())
        && isOfOneTaxon(pedigree, cross.pollen());
  }

  private static boolean isOfOneTaxon(Pedigree pedigree, int plant) {
    if (plant == Pedigree.UNKNOWN) {
      return false;
    }
    Walk walk = Walk.behind(pedigree, plant);
    return walk.taxa().size() == 1 && walk.notes().isEmpty();
  }

  /**
   * What stands behind a plant.
   *
   * @param taxa each taxon once, seed parents before pollen parents
   * @param notes what is not known of it
   */
  private record Walk(Set<String> taxa, List<String> notes) {

    static Walk behind(Pedigree pedigree, int plant) {
      Set<String> taxa = new LinkedHashSet<>();
      List<String> notes = new ArrayList<>();
      boolean complete = true;
      Set<Integer> seen = new HashSet<>();
      Deque<Integer> open = new ArrayDeque<>(List.of(plant));
      while (!open.isEmpty()) {
        int here = open.pop();
        if (here == Pedigree.UNKNOWN) {
          complete = false;
        } else if (seen.add(here)) {
          Founder founder = pedigree.founder(here);
          if (founder == null) {
            List<Integer> parents = SeedFirst.parents(pedigree, here);
            // The seed parent last, so that it is the first to be taken off the pile.
            Collections.reverse(parents);
            parents.forEach(open::push);
          } else {
            complete &= founder.makeup().unknownShare().isZero();
            taxa.addAll(founder.makeup().shares().keySet());
            if (founder.makeup().shares().size() > 1) {
              notes.add(
                  pedigree.code(here)
                      + " came as a hybrid; which of its taxa bore the seed is not known");
            }
          }
        }
      }
      if (!complete) {
        notes.add("there are unknown plants or shares in it, which the formula cannot name");
      }
      return new Walk(taxa, notes);
    }
  }
}
