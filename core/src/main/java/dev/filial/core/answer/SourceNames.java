package dev.filial.core.answer;

import dev.filial.core.name.TaxonName;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.NotationOf;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the sources of a notation are called. A repeated name is one source, so two that are not the
 * same never get one name.
 */
final class SourceNames implements NotationOf.Names {

  private final RegisterPedigree behind;
  private final NotationQuestion.Sources by;
  private final Map<String, String> shortOfTaxon = new HashMap<>();
  private final Set<String> ownNamesOfSeveral = new HashSet<>();
  private final Map<String, String> unknownParents = new HashMap<>();

  private SourceNames(RegisterView view, RegisterPedigree behind, NotationQuestion.Sources by) {
    this.behind = behind;
    this.by = by;
    shortenTaxa(view);
    Set<String> names = new HashSet<>(shortOfTaxon.values());
    for (Item item : behind.items()) {
      if (!item.names().isEmpty() && !names.add(item.names().get(0))) {
        ownNamesOfSeveral.add(item.names().get(0));
      }
    }
  }

  static SourceNames of(RegisterView view, RegisterPedigree behind, NotationQuestion.Sources by) {
    return new SourceNames(view, behind, by);
  }

  /** The short names, in full for taxa that would be shortened alike. */
  private void shortenTaxa(RegisterView view) {
    Map<String, String> firstSoShortened = new HashMap<>();
    for (String taxon : behind.pedigree().taxa()) {
      String shortName = Describing.shortName(view, taxon);
      String other = firstSoShortened.putIfAbsent(shortName, taxon);
      if (other == null) {
        shortOfTaxon.put(taxon, shortName);
      } else {
        shortOfTaxon.put(taxon, taxon);
        shortOfTaxon.put(other, other);
      }
    }
  }

  @Override
  public String founder(String code, Founder founder) {
    if (by == NotationQuestion.Sources.CODES) {
      return code;
    }
    String own = ownName(code);
    if (by == NotationQuestion.Sources.NAMES && !own.equals(code)) {
      return own;
    }
    boolean ofOneTaxon =
        founder.makeup().shares().size() == 1 && founder.makeup().unknownShare().isZero();
    if (!ofOneTaxon) {
      return own;
    }
    String taxon = founder.makeup().shares().firstKey();
    String name = shortOfTaxon.getOrDefault(taxon, taxon);
    if (by == NotationQuestion.Sources.TAXA) {
      return name;
    }
    String cultivar = founder.cultivar() == null ? "" : " '" + founder.cultivar() + "'";
    boolean isSaid = TaxonName.parse(taxon).cultivar().isPresent();
    return name
        + (isSaid ? "" : cultivar)
        + (founder.fieldNumber() == null ? "" : " " + founder.fieldNumber());
  }

  @Override
  public String mixture(String code, List<Case> cases) {
    return by == NotationQuestion.Sources.CODES ? code : ownName(code);
  }

  /** A plant's own name, or its code where it has none or shares it with another. */
  private String ownName(String code) {
    return behind
        .item(code)
        .filter(item -> !item.names().isEmpty())
        .map(item -> item.names().get(0).strip())
        .filter(name -> !ownNamesOfSeveral.contains(name))
        .orElse(code);
  }

  /** Two unknown parents are two sources, so they are numbered. */
  @Override
  public String unknownParent(String offspring) {
    int next = unknownParents.size() + 1;
    return unknownParents.computeIfAbsent(
        offspring, any -> next == 1 ? "unknown" : "unknown " + next);
  }
}
