package dev.filial.core.answer;

import dev.filial.core.name.TaxonName;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Taxon;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Names things in few words. */
public final class Describing {

  private Describing() {}

  /** What an acquired plant was said to be. */
  static String determination(Determination said) {
    List<String> parts = new ArrayList<>();
    if (said.taxon() != null) {
      parts.add(said.taxon());
    }
    if (said.cultivar() != null && (said.taxon() == null || !said.taxon().contains("'"))) {
      parts.add("'" + said.cultivar() + "'");
    }
    if (said.generation() != null) {
      parts.add(said.generation());
    }
    if (!said.makeup().isEmpty()) {
      parts.add(
          said.makeup().entrySet().stream()
              .map(share -> share.getValue() + " " + share.getKey())
              .collect(Collectors.joining(" + ")));
    }
    if (said.ploidy() != null) {
      parts.add(said.ploidy() + "x");
    }
    return parts.isEmpty() ? "unknown" : String.join(" ", parts);
  }

  /**
   * What a coded thing is: its taxon under the accepted name, or its parents.
   *
   * @return as {@code Echeveria laui} or {@code 24-001A × 24-002C}
   */
  public static String of(RegisterView view, Item item) {
    Item said =
        item.kind() == Item.Kind.PLANT || item.code().isWhole()
            ? item
            : view.item(item.code().whole()).orElse(item);
    if (said.descent().isEmpty()) {
      return acquired(view, said);
    }
    Descent first = said.descent().get(0);
    return switch (first.form()) {
      case COPY ->
          said.descent().size() == 1 && first.share().isOne()
              ? "ramet of " + first.seed().text()
              : "one of " + seeds(said);
      case DOUBLED -> "doubled ramet of " + first.seed().text();
      case SIBLING -> (said.kind() == Item.Kind.MIXTURE ? "mixture of " : "one of ") + seeds(said);
      case SEXUAL -> parents(said);
    };
  }

  private static String seeds(Item item) {
    return item.descent().stream()
        .map(descent -> descent.seed().text())
        .collect(Collectors.joining(", "));
  }

  private static String parents(Item item) {
    String seed = item.descent().get(0).seed().text();
    List<Descent> intended =
        item.descent().stream()
            .filter(
                descent ->
                    switch (descent.route()) {
                      case CROSS, POLLEN_MIX, OPEN_POLLINATION -> true;
                      default -> false;
                    })
            .toList();
    if (intended.isEmpty()) {
      return seed + " selfed";
    }
    String pollen =
        intended.stream()
            .map(descent -> descent.pollen() == null ? "?" : descent.pollen().text())
            .distinct()
            .collect(Collectors.joining("/"));
    return switch (intended.get(0).route()) {
      case OPEN_POLLINATION ->
          seed + " open" + (pollen.equals("?") ? "" : " (" + pollen.replace("/", ", ") + ")");
      case POLLEN_MIX -> seed + " × mix of " + pollen.replace("/", ", ");
      default -> seed + " × " + pollen;
    };
  }

  private static String acquired(RegisterView view, Item item) {
    Determination said = item.determination();
    if (said.taxon() == null) {
      return determination(said);
    }
    Taxon accepted = view.accepted(said.taxon());
    TaxonName name = TaxonName.parse(accepted.name()).withoutAuthors();
    String qualifier =
        TaxonName.parse(said.taxon())
            .qualifier()
            .map(doubt -> " (" + doubt.text() + ")")
            .orElse("");
    Determination rest =
        new Determination(
            name.unqualified().text(),
            said.cultivar(),
            said.makeup(),
            said.generation(),
            said.ploidy());
    return determination(rest) + qualifier;
  }

  /**
   * The shortest name of the taxon written so that a tag can bear: as declared, else the epithet.
   */
  static String shortName(RegisterView view, String written) {
    Taxon taxon = view.accepted(written);
    if (taxon.declared() != null && taxon.declared().shortName() != null) {
      return taxon.declared().shortName();
    }
    return TaxonName.parse(taxon.name()).shortName();
  }
}
