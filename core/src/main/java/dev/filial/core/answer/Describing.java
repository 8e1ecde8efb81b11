package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.TaxonName;
import dev.filial.core.pedigree.Route;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Fate;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Taxon;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

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
    return of(view, item, Code::text);
  }

  /**
   * The same, parents being called as {@code parentName} has it.
   *
   * @return as {@code laui × agavoides}
   */
  static String of(RegisterView view, Item item, Function<Code, String> parentName) {
    Item said = origin(view, item);
    if (said.descent().isEmpty()) {
      return acquired(view, determination(item, said));
    }
    if (said.kind() == Item.Kind.CROSS) {
      return parents(said, parentName);
    }
    Descent first = said.descent().get(0);
    boolean certain = said.descent().size() == 1 && first.share().isOne();
    if (certain && first.form() != Descent.Form.SIBLING) {
      String source = parentName.apply(first.seed());
      return (first.form() == Descent.Form.DOUBLED ? "doubled offset of " : "offset of ") + source;
    }
    String several =
        said.descent().stream()
            .map(descent -> parentName.apply(descent.seed()))
            .collect(Collectors.joining(", "));
    if (said.kind() == Item.Kind.MIXTURE) {
      return "mixture of " + several;
    }
    boolean orElse =
        !said.descent().stream()
            .map(Descent::share)
            .reduce(first.share().minus(first.share()), (sum, share) -> sum.plus(share))
            .isOne();
    return "one of " + several + (orElse ? ", or something else" : "");
  }

  /**
   * What {@code item} was said to be, as its {@code origin} says it. A seedling out of a packet has
   * no cultivar name, whatever was written on the packet.
   */
  static Determination determination(Item item, Item origin) {
    Determination said = origin.determination();
    boolean isRaised =
        origin.kind() == Item.Kind.SEED && !item.code().isWhole() && !item.code().isLot();
    return isRaised
        ? new Determination(said.taxon(), null, said.makeup(), said.generation(), said.ploidy())
        : said;
  }

  /** The thing itself, or for what stands under a whole code, what that code stands for. */
  static Item origin(RegisterView view, Item item) {
    return item.kind() == Item.Kind.PLANT || item.code().isWhole()
        ? item
        : view.item(item.code().whole()).orElse(item);
  }

  private static String parents(Item cross, Function<Code, String> parentName) {
    Descent first = cross.descent().get(0);
    String seed = parentName.apply(first.seed());
    if (cross.descent().size() == 1 && first.route() == Route.CROSS) {
      return seed + " × " + (first.pollen() == null ? "?" : parentName.apply(first.pollen()));
    }
    List<Descent> intended =
        cross.descent().stream()
            .filter(
                descent ->
                    switch (descent.route()) {
                      case CROSS, POLLEN_MIX, OPEN_POLLINATION -> true;
                      default -> false;
                    })
            .toList();
    if (intended.isEmpty()) {
      boolean selfed =
          cross.descent().stream().anyMatch(descent -> descent.route() == Route.SELFING);
      return first.route() == Route.APOMIXIS
          ? seed + " without fertilisation"
          : seed + (selfed ? " selfed" : " × ?");
    }
    List<String> pollen =
        intended.stream()
            .map(descent -> descent.pollen() == null ? "?" : parentName.apply(descent.pollen()))
            .distinct()
            .toList();
    return switch (intended.get(0).route()) {
      case OPEN_POLLINATION ->
          seed + " open" + (pollen.equals(List.of("?")) ? "" : " (" + join(pollen) + ")");
      case POLLEN_MIX -> seed + " × mix of " + join(pollen);
      default -> seed + " × " + join(pollen);
    };
  }

  private static String join(List<String> words) {
    return String.join(", ", words);
  }

  /** What was acquired, under the accepted name of its taxon. */
  static String acquired(RegisterView view, Determination said) {
    if (said.taxon() == null) {
      return determination(said);
    }
    String doubt =
        TaxonName.parse(said.taxon()).qualifier().map(q -> " (" + q.text() + ")").orElse("");
    return determination(
            new Determination(
                name(view, said.taxon()).text(),
                said.cultivar(),
                said.makeup(),
                said.generation(),
                said.ploidy()))
        + doubt;
  }

  /** The accepted name of the taxon written so, without authors and without doubts. */
  static TaxonName name(RegisterView view, String written) {
    return TaxonName.parse(view.accepted(written).name()).unqualified().withoutAuthors();
  }

  /**
   * The shortest name of the taxon written so that a tag can bear: as declared, else the cultivar
   * or the epithet; cf. or aff. before it where it was written with that.
   */
  static String shortName(RegisterView view, String written) {
    Taxon taxon = view.accepted(written);
    String name =
        taxon.declared() != null && taxon.declared().shortName() != null
            ? taxon.declared().shortName()
            : shortName(TaxonName.parse(taxon.name()).unqualified());
    return TaxonName.parse(written).qualifier().map(doubt -> doubt.text() + " ").orElse("") + name;
  }

  /** Of a species not determined the bare "sp." tells nothing, so its genus stands before it. */
  private static String shortName(TaxonName name) {
    return isBareSpecies(name) ? name.withoutAuthors().text() : name.shortName();
  }

  private static boolean isBareSpecies(TaxonName name) {
    return name.cultivar().isEmpty() && name.undetermined().filter(String::isBlank).isPresent();
  }

  /** Whether it is said to be a species of its genus, and no more. */
  static boolean isBareSpecies(RegisterView view, Determination said) {
    if (said.taxon() == null || said.cultivar() != null) {
      return false;
    }
    Taxon taxon = view.accepted(said.taxon());
    return (taxon.declared() == null || taxon.declared().shortName() == null)
        && isBareSpecies(TaxonName.parse(taxon.name()));
  }

  /** What an acquired plant is in as few words as a tag can bear; null when it is of no name. */
  static @Nullable String shortest(RegisterView view, Determination said) {
    if (said.cultivar() != null) {
      return "'" + said.cultivar() + "'";
    }
    if (said.taxon() != null) {
      return shortName(view, said.taxon());
    }
    return said.makeup().isEmpty()
        ? null
        : said.makeup().keySet().stream()
            .map(name -> shortName(view, name))
            .collect(Collectors.joining(" + "));
  }

  /** What became of a thing; nothing for a cross and its like, of which nothing becomes. */
  static String fate(Item item) {
    if (item.neverHeld()) {
      return "never held here";
    }
    if (item.kind().isFamily()) {
      return "";
    }
    if (item.fate() == Fate.ALIVE && item.kind() == Item.Kind.LOT) {
      return "in store";
    }
    return switch (item.fate()) {
      case ALIVE -> "alive";
      case KEPT -> "kept";
      case DISCARDED -> "discarded";
      case DEAD -> "dead";
      case GIVEN -> "given away";
      case USED_UP -> "used up";
    };
  }
}
