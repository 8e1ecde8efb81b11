package dev.filial.core.name;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A hybrid formula: the names of the parents joined by ×, as in {@code Salix aurita L. × S. caprea
 * L.} (International Code of Nomenclature, Shenzhen Code 2018, Art. H.2 and Rec. H.2A).
 *
 * <p>A formula lists names; it has no brackets and does not say in which order more than two were
 * crossed. Pedigree {@link Notation} does.
 *
 * @param parents two names or more, the seed parent first
 */
public record HybridFormula(List<TaxonName> parents) {

  /**
   * Takes the names over.
   *
   * @throws IllegalArgumentException if there are fewer than two
   */
  public HybridFormula {
    parents = List.copyOf(parents);
    if (parents.size() < 2) {
      throw new IllegalArgumentException(
          "a hybrid formula joins two names or more, not " + parents.size() + ": " + parents);
    }
  }

  /**
   * The formula of these parents, the seed parent first.
   *
   * @throws IllegalArgumentException if there are fewer than two
   */
  public static HybridFormula of(List<TaxonName> parents) {
    return new HybridFormula(parents);
  }

  /**
   * Reads a formula. × may be an x between spaces; a genus may be abbreviated after its first
   * mention; ♀ and ♂ may stand before or behind a name, and if they say that the second name is the
   * seed parent's, it is put first. Without them the first is taken to be the seed parent.
   *
   * @throws NameException if the text is no formula, among others if a second epithet stands
   *     without a genus or its initial; it names the column and says what to write
   */
  public static HybridFormula parse(String text) {
    TaxonNameReader reader = new TaxonNameReader(text, List.of());
    List<TaxonName> names = new ArrayList<>();
    List<NameToken> signs = new ArrayList<>();
    int seed = 0;
    while (true) {
      int signsBefore = signs.size();
      takeSign(reader, signs);
      names.add(reader.read());
      takeSign(reader, signs);
      if (signs.size() > signsBefore + 1) {
        throw reader.error(
            signs.get(signs.size() - 1), "one sex sign for each name; this is the second of it.");
      }
      if (signs.size() > signsBefore && signs.get(signsBefore).kind() == NameToken.Kind.SEED) {
        seed = names.size() - 1;
      } else if (signs.size() > signsBefore && names.size() == 1) {
        seed = 1;
      }
      if (!reader.has()) {
        break;
      }
      if (reader.peek().kind() != NameToken.Kind.CROSS) {
        throw reader.error(reader.peek(), "a × belongs here, between two names.");
      }
      reader.skip();
    }
    if (names.size() < 2) {
      throw new NameException(
          text,
          NameToken.column(text, text.length()),
          "a formula joins two names by ×, as Salix aurita × S. caprea; here is one name only.");
    }
    checkSigns(reader, signs, names.size());
    if (seed == 1) {
      names.add(0, names.remove(1));
    }
    return new HybridFormula(names);
  }

  private static void takeSign(TaxonNameReader reader, List<NameToken> signs) {
    while (reader.has()
        && (reader.peek().kind() == NameToken.Kind.SEED
            || reader.peek().kind() == NameToken.Kind.POLLEN)) {
      signs.add(reader.peek());
      reader.skip();
    }
  }

  private static void checkSigns(TaxonNameReader reader, List<NameToken> signs, int names) {
    if (!signs.isEmpty() && names > 2) {
      throw reader.error(
          signs.get(0),
          "sex signs tell two parents apart; a formula of "
              + names
              + " names does not say who was crossed with whom. Leave them out.");
    }
    if (signs.size() == 2 && signs.get(0).kind() == signs.get(1).kind()) {
      throw reader.error(
          signs.get(1),
          "both names have the same sign. ♀ is the seed parent, ♂ the pollen parent.");
    }
  }

  /** The formula in {@link FormulaStyle#PLAIN}. */
  public String text() {
    return text(FormulaStyle.PLAIN);
  }

  /**
   * The formula written out. The genus is abbreviated after its first mention unless another genus
   * in the formula shares its initial.
   *
   * @throws IllegalArgumentException if the style asks for sex signs and there are more than two
   *     parents
   */
  public String text(FormulaStyle style) {
    if (style.sexSigns() && parents.size() > 2) {
      throw new IllegalArgumentException(
          "a formula of "
              + parents.size()
              + " names does not say which were seed and which pollen parents; leave ♀ and ♂ out");
    }
    List<Integer> order = new ArrayList<>(IntStream.range(0, parents.size()).boxed().toList());
    if (style.alphabetical()) {
      order.sort(Comparator.comparing(i -> parents.get(i).unqualified().key().replace("'", "")));
    }
    StringBuilder text = new StringBuilder();
    Set<String> mentioned = new HashSet<>();
    for (int i : order) {
      TaxonName name = parents.get(i);
      TaxonName shown = style.authors() ? name : name.withoutAuthors();
      boolean first = mentioned.add(genus(name));
      String written = first || !mayAbbreviate(name) ? shown.text() : shown.text(name.initial());
      text.append(text.isEmpty() ? "" : " × ").append(written);
      if (style.sexSigns()) {
        text.append(i == 0 ? " ♀" : " ♂");
      }
    }
    return style.ascii() ? Ascii.of(text.toString()) : text.toString();
  }

  private boolean mayAbbreviate(TaxonName name) {
    return name.rank() != Rank.GENUS
        && parents.stream()
            .filter(other -> !genus(other).equals(genus(name)))
            .noneMatch(other -> other.genus().codePointAt(0) == name.genus().codePointAt(0));
  }

  private static String genus(TaxonName name) {
    return (name.hybridGenus() ? "×" : "") + name.genus();
  }

  /** The same as {@link #text()}. */
  @Override
  public String toString() {
    return text();
  }
}
