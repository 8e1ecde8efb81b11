package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.FormulaStyle;
import dev.filial.core.name.HybridFormula;
import dev.filial.core.name.Notation;
import dev.filial.core.name.TaxonName;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.NotationOf;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.Standing;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayDeque;
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
    /** By their own name, else by taxon and field number. */
    NAMES,
    /** By short names of taxa. */
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
    Notation notation =
        NotationOf.of(behind.pedigree(), item.code().text(), names(behind, sources));
    return new Written(item.code(), notation.text(style), behind.notes());
  }

  private NotationOf.Names names(RegisterPedigree behind, Sources sources) {
    return new NotationOf.Names() {
      @Override
      public String founder(String code, Founder founder) {
        if (sources == Sources.CODES) {
          return code;
        }
        List<String> own = behind.item(code).map(Item::names).orElse(List.of());
        if (sources == Sources.NAMES && !own.isEmpty()) {
          return own.get(0);
        }
        if (founder.standing() == Standing.UNKNOWN || founder.makeup().shares().size() != 1) {
          return code;
        }
        String taxon = founder.makeup().shares().firstKey();
        String shortName = Describing.shortName(view, taxon);
        return sources == Sources.NAMES && founder.fieldNumber() != null
            ? shortName + " " + founder.fieldNumber()
            : shortName;
      }

      @Override
      public String mixture(String code, List<Case> cases) {
        return code;
      }

      @Override
      public String unknownParent(String offspring) {
        return "unknown";
      }
    };
  }

  /**
   * A hybrid formula.
   *
   * @param code the plant
   * @param formula the taxa it comes of, joined by ×; a single taxon when it is no hybrid
   * @param seedParentFirst whether the seed parent's taxon stands first, and not the alphabet
   * @param complete whether every founder behind it is of a known taxon
   */
  public record Formula(Code code, String formula, boolean seedParentFirst, boolean complete) {}

  /**
   * The hybrid formula of one plant: each taxon behind it once, those of the seed parent first.
   *
   * @throws RegisterRefusal if the register has no such code, or nothing is known of its taxa
   */
  public Formula formula(Code code, FormulaStyle style) {
    Item item = Things.required(view, code);
    Pedigree pedigree = RegisterPedigree.of(view, List.of(item.code()), false).pedigree();
    Set<String> taxa = new LinkedHashSet<>();
    boolean complete = true;
    Set<Integer> seen = new HashSet<>();
    Deque<Integer> open = new ArrayDeque<>();
    open.push(pedigree.indexOf(item.code().text()));
    while (!open.isEmpty()) {
      int plant = open.pop();
      if (plant == Pedigree.UNKNOWN) {
        complete = false;
      } else if (seen.add(plant)) {
        Founder founder = pedigree.founder(plant);
        if (founder != null) {
          complete &= founder.makeup().unknownShare().isZero();
          taxa.addAll(founder.makeup().shares().keySet());
        } else {
          int[] parents = pedigree.parents(plant);
          for (int i = parents.length - 1; i >= 0; i--) {
            open.push(parents[i]);
          }
        }
      }
    }
    if (taxa.isEmpty()) {
      throw new RegisterRefusal(
          "nothing is known of the taxa in " + item.code().text() + ", so it has no formula");
    }
    List<TaxonName> names = taxa.stream().map(TaxonName::parse).toList();
    String formula =
        names.size() == 1
            ? style.ascii() ? names.get(0).asciiText() : names.get(0).text()
            : HybridFormula.of(names).text(style);
    return new Formula(item.code(), formula, !style.alphabetical(), complete);
  }
}
