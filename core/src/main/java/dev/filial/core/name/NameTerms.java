package dev.filial.core.name;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The small words of botanical names: terms of rank, qualifiers, and what stands within authors.
 */
final class NameTerms {

  private static final Map<String, Rank> RANKS =
      Map.ofEntries(
          Map.entry("subsp.", Rank.SUBSPECIES),
          Map.entry("subsp", Rank.SUBSPECIES),
          Map.entry("ssp.", Rank.SUBSPECIES),
          Map.entry("ssp", Rank.SUBSPECIES),
          Map.entry("subspecies", Rank.SUBSPECIES),
          Map.entry("var.", Rank.VARIETY),
          Map.entry("var", Rank.VARIETY),
          Map.entry("v.", Rank.VARIETY),
          Map.entry("varietas", Rank.VARIETY),
          Map.entry("variety", Rank.VARIETY),
          Map.entry("subvar.", Rank.SUBVARIETY),
          Map.entry("subvar", Rank.SUBVARIETY),
          Map.entry("subvarietas", Rank.SUBVARIETY),
          Map.entry("f.", Rank.FORM),
          Map.entry("f", Rank.FORM),
          Map.entry("fo.", Rank.FORM),
          Map.entry("forma", Rank.FORM),
          Map.entry("form", Rank.FORM),
          Map.entry("form.", Rank.FORM),
          Map.entry("subf.", Rank.SUBFORM),
          Map.entry("subf", Rank.SUBFORM),
          Map.entry("subforma", Rank.SUBFORM));

  /** Small words that stand within authors. */
  private static final Set<String> PARTICLES =
      Set.of(
          "ex", "in", "et", "and", "non", "nec", "apud", "emend", "sensu", "auct", "hort", "de",
          "del", "della", "der", "den", "des", "di", "da", "do", "dos", "du", "la", "le", "van",
          "von", "vom", "y", "zu", "zur", "ten", "ter", "fil");

  private static final Map<String, Qualifier> QUALIFIERS =
      Map.of(
          "cf.", Qualifier.CF,
          "cf", Qualifier.CF,
          "cfr.", Qualifier.CF,
          "aff.", Qualifier.AFF,
          "aff", Qualifier.AFF);

  private NameTerms() {}

  static boolean isQualifier(String word) {
    return QUALIFIERS.containsKey(word);
  }

  /** The qualifier that {@code word} is. */
  static Qualifier qualifier(String word) {
    return Optional.ofNullable(QUALIFIERS.get(word)).orElseThrow();
  }

  static boolean isParticle(String word) {
    return PARTICLES.contains(word);
  }

  /** The rank that the term {@code word} is of. */
  static Rank rank(String word) {
    return rankOf(word).or(() -> rankOf(unhybrid(word))).orElseThrow();
  }

  /** Whether a term of rank is a hybrid's: nothosubsp. and the like. */
  static boolean isHybridRank(String word) {
    return rankOf(word).isEmpty() && rankOf(unhybrid(word)).isPresent();
  }

  /** Whether a rank stands at {@code i}; f. is one only before an epithet, else it is filius. */
  static boolean isRank(List<NameToken> tokens, int i) {
    NameToken token = tokens.get(i);
    if (!token.isLower()) {
      return false;
    }
    Optional<Rank> rank = rankOf(token.text()).or(() -> rankOf(unhybrid(token.text())));
    if (rank.isEmpty()) {
      return false;
    }
    if (!token.text().equals("f.") && !token.text().equals("f")) {
      return true;
    }
    if (i + 1 == tokens.size() || !tokens.get(i + 1).isLower()) {
      return false;
    }
    String following = tokens.get(i + 1).text();
    return !PARTICLES.contains(following)
        && (TaxonName.isEpithet(following) || QUALIFIERS.containsKey(following))
        && rankOf(following).isEmpty();
  }

  private static Optional<Rank> rankOf(String word) {
    return Optional.ofNullable(RANKS.get(word));
  }

  /** A term of a hybrid's rank without what makes it one: nothosubsp., nsubsp., notho-subsp. */
  private static String unhybrid(String word) {
    // Without patterns: every short epithet, as that of Echeveria laui, is asked this.
    if (!word.startsWith("n")) {
      return word;
    }
    String rest = word.substring(word.startsWith("notho") ? 5 : 1);
    return rest.startsWith("-") ? rest.substring(1) : rest;
  }
}
