package dev.filial.core.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reads names of taxa, alone or one after the other in a hybrid formula: one pass over the words,
 * left to right.
 */
final class TaxonNameReader {

  private final String text;
  private final List<NameToken> tokens;
  private final List<TaxonName> before;
  private int next;

  // What has been read of the name in hand.
  private boolean hybridGenus;
  private String genus = "";
  private String genusAuthor = "";
  private List<TaxonName.Epithet> epithets = new ArrayList<>();
  private Optional<String> undetermined = Optional.empty();
  private Optional<String> cultivar = Optional.empty();
  private Optional<TaxonName.Doubt> doubt = Optional.empty();

  /**
   * A reader of {@code text}.
   *
   * @param before names that stand before it, whose genera may be abbreviated
   */
  TaxonNameReader(String text, List<TaxonName> before) {
    this.text = text;
    this.tokens = NameToken.of(text);
    this.before = new ArrayList<>(before);
  }

  /** The whole text as one name. */
  TaxonName readAlone() {
    TaxonName name = read();
    if (has()) {
      NameToken rest = tokens.get(next);
      throw switch (rest.kind()) {
        case CROSS ->
            error(
                rest,
                "this × joins two names to a hybrid formula, and one name is wanted here. Say its"
                    + " parents as its make-up, each by genus and epithet, or give the hybrid's own"
                    + " name.");
        case SEED, POLLEN ->
            error(rest, "a sex sign belongs in a hybrid formula, and one name is wanted here.");
        default -> error(rest, "nothing is expected here after the name.");
      };
    }
    return name;
  }

  boolean has() {
    return next < tokens.size();
  }

  NameToken peek() {
    return tokens.get(next);
  }

  void skip() {
    next++;
  }

  /** The next name; what follows it is left. */
  TaxonName read() {
    hybridGenus = false;
    genusAuthor = "";
    epithets = new ArrayList<>();
    undetermined = Optional.empty();
    cultivar = Optional.empty();
    doubt = Optional.empty();
    readGenus();
    readAfterGenus();
    if (has() && peek().kind() == NameToken.Kind.CULTIVAR) {
      readCultivar();
    }
    TaxonName name =
        new TaxonName(hybridGenus, genus, genusAuthor, epithets, undetermined, cultivar, doubt);
    before.add(name);
    return name;
  }

  private void readGenus() {
    if (has() && peek().kind() == NameToken.Kind.CROSS) {
      hybridGenus = true;
      skip();
    }
    if (!has()) {
      throw new NameException(
          text,
          NameToken.column(text, text.length()),
          "a name is missing here, as Echeveria agavoides.");
    }
    NameToken token = peek();
    String word = token.text();
    if (token.kind() == NameToken.Kind.CULTIVAR) {
      throw error(token, "a genus belongs before the cultivar, as Echeveria '" + word + "'.");
    }
    if (token.kind() != NameToken.Kind.WORD) {
      throw error(token, "a name belongs here, as Echeveria agavoides.");
    }
    if (TaxonName.isGenus(word)) {
      genus = word;
    } else if (word.matches("\\p{Lu}\\p{Ll}{0,2}\\.")) {
      genus = abbreviatedGenus(token);
    } else {
      throw noGenus(token);
    }
    skip();
  }

  private String abbreviatedGenus(NameToken token) {
    String initials = token.text().substring(0, token.text().length() - 1);
    List<String> meant =
        before.stream()
            .filter(name -> name.hybridGenus() == hybridGenus)
            .map(TaxonName::genus)
            .filter(full -> full.startsWith(initials))
            .distinct()
            .toList();
    if (meant.size() == 1) {
      return meant.get(0);
    }
    throw error(
        token,
        meant.isEmpty()
            ? "no genus before this begins with " + initials + ". Write the genus in full."
            : token.text()
                + " may stand for "
                + String.join(" or ", meant)
                + ". Write the genus in full.");
  }

  private NameException noGenus(NameToken token) {
    String word = token.text();
    if (NameTerms.isQualifier(word.toLowerCase(Locale.ROOT))) {
      return error(
          token, word + " stands before the epithet that is in doubt: Echeveria cf. agavoides.");
    }
    if (token.isLower() && !before.isEmpty()) {
      String genusBefore = before.get(before.size() - 1).initial();
      return error(
          token,
          "in a formula each name has its genus, or its initial (ICN Art. H.2). Write "
              + genusBefore
              + " "
              + word
              + ".");
    }
    if (token.isLower() && TaxonName.isEpithet(word) && tokens.size() == 1) {
      return error(
          token,
          "a name begins with its genus, as Echeveria agavoides. Write the genus before "
              + word
              + ", or "
              + word.substring(0, 1).toUpperCase(Locale.ROOT)
              + word.substring(1)
              + " if that is the genus.");
    }
    if (word.startsWith("(")) {
      return error(
          token,
          "a name begins with its genus. Parents that are crosses themselves go into pedigree"
              + " notation, as A/B//C.");
    }
    String small = word.toLowerCase(Locale.ROOT);
    String capital =
        small.isEmpty()
            ? small
            : small.substring(0, 1).toUpperCase(Locale.ROOT) + small.substring(1);
    return error(
        token,
        "a name begins with its genus, one word of which the first letter is a capital"
            + (TaxonName.isGenus(capital) ? ". Write " + capital + "." : ", as Echeveria."));
  }

  private void readAfterGenus() {
    if (!has()) {
      return;
    }
    NameToken token = peek();
    String word = token.text();
    if (token.kind() == NameToken.Kind.CROSS) {
      // A sign after a bare genus belongs to the epithet behind it; before a capital it joins
      // names.
      if (next + 1 < tokens.size() && tokens.get(next + 1).isLower()) {
        skip();
        readSpecies(true);
      }
      return;
    }
    if (token.kind() != NameToken.Kind.WORD) {
      return;
    }
    if (word.equals("sp.") || word.equals("sp")) {
      skip();
      if (has() && NameTerms.isQualifier(peek().text())) {
        readAfterGenus();
      } else {
        undetermined = Optional.of(words(false));
      }
      return;
    }
    refuseBeforeEpithet(token);
    if (takeQualifier()) {
      if (has() && peek().kind() == NameToken.Kind.CULTIVAR) {
        return;
      }
      boolean hybrid = has() && peek().kind() == NameToken.Kind.CROSS;
      if (hybrid) {
        skip();
      }
      readSpecies(hybrid);
    } else if (token.isLower()) {
      readSpecies(false);
    } else {
      readGenusAuthor();
    }
  }

  private void refuseBeforeEpithet(NameToken token) {
    String word = token.text();
    if (word.equals("spp.") || word.equals("spp")) {
      throw error(token, "spp. means several species. Write sp. for one that is not determined.");
    }
    if (word.equals("cv.") || word.equals("cv")) {
      throw error(token, "leave cv. out and put the cultivar in single quotes: 'Name'.");
    }
    if (Set.of("hybrid", "hybr.", "hyb.", "hybride").contains(word)) {
      throw error(
          token,
          "a hybrid without a name of its own is written as its genus alone, and its parents, where"
              + " they are known, are said as its make-up.");
    }
    if (NameTerms.isRank(tokens, next)) {
      throw error(token, "an epithet of the species belongs before " + word + ".");
    }
  }

  private void readSpecies(boolean hybrid) {
    String epithet = epithet("species");
    epithets.add(new TaxonName.Epithet(Rank.SPECIES, hybrid, epithet, words(true)));
    doubtIsAbout(Rank.SPECIES);
    readBelowSpecies();
  }

  private void readBelowSpecies() {
    while (has() && peek().kind() == NameToken.Kind.WORD) {
      boolean doubted = takeQualifier();
      if (doubted && has() && peek().kind() == NameToken.Kind.CULTIVAR) {
        return;
      }
      if (!has() || !NameTerms.isRank(tokens, next)) {
        throw has()
            ? error(peek(), "a rank belongs here: subsp., var., subvar., f. or subf.")
            : endOf("after " + tokens.get(next - 1).text() + " an epithet is missing.");
      }
      NameToken term = peek();
      skip();
      takeQualifier();
      Rank rank = NameTerms.rank(term.text());
      Rank above = epithets.get(epithets.size() - 1).rank();
      if (rank.compareTo(above) <= 0) {
        throw error(
            term,
            term.text()
                + " does not stand below "
                + (above == Rank.SPECIES ? "the species" : above.term())
                + ". The order is subsp., var., subvar., f., subf.");
      }
      boolean hybrid = NameTerms.isHybridRank(term.text());
      String epithet = epithet(term.text());
      epithets.add(new TaxonName.Epithet(rank, hybrid, epithet, words(true)));
      doubtIsAbout(rank);
    }
  }

  private void doubtIsAbout(Rank rank) {
    // A qualifier is taken before it is known what it stands before: until then it is the
    // cultivar's.
    if (doubt.isPresent() && doubt.get().before() == Rank.CULTIVAR) {
      doubt = Optional.of(new TaxonName.Doubt(doubt.get().qualifier(), rank));
    }
  }

  private String epithet(String of) {
    if (!has()) {
      throw endOf("after " + tokens.get(next - 1).text() + " an epithet is missing.");
    }
    NameToken token = peek();
    String word = token.text();
    if (token.kind() != NameToken.Kind.WORD || !TaxonName.isEpithet(word)) {
      String small = word.toLowerCase(Locale.ROOT);
      throw error(
          token,
          "an epithet of the "
              + (!of.equals("species") ? "rank " + of : of)
              + " belongs here, in small letters and in full"
              + (TaxonName.isEpithet(small) ? ". Write " + small + "." : ", as agavoides."));
    }
    skip();
    return word;
  }

  private boolean takeQualifier() {
    if (!has() || peek().kind() != NameToken.Kind.WORD || !NameTerms.isQualifier(peek().text())) {
      return false;
    }
    if (doubt.isPresent()) {
      throw error(peek(), "one cf. or aff. in a name is as much as can be kept. Leave one out.");
    }
    doubt = Optional.of(new TaxonName.Doubt(NameTerms.qualifier(peek().text()), Rank.CULTIVAR));
    skip();
    if (!has()) {
      throw endOf("after " + tokens.get(next - 1).text() + " an epithet is missing.");
    }
    if (NameTerms.isQualifier(peek().text())) {
      throw error(peek(), "one cf. or aff. in a name is as much as can be kept. Leave one out.");
    }
    return true;
  }

  private void readGenusAuthor() {
    NameToken first = peek();
    String author = words(true);
    // A lone capitalised word is far more often a cultivar that lacks its quotes.
    boolean looksLikeAuthor =
        author.contains("&")
            || author.startsWith("(")
            || author.matches("(\\S+\\.|ex|et|in)( (\\S+\\.|ex|et|in))*");
    if (!looksLikeAuthor) {
      throw error(
          first,
          "an epithet in small letters or a cultivar in single quotes belongs here. Write '"
              + author
              + "' for a cultivar"
              + (TaxonName.isEpithet(author.toLowerCase(Locale.ROOT))
                  ? ", " + author.toLowerCase(Locale.ROOT) + " for a species"
                  : "")
              + "; leave the author of a genus out.");
    }
    genusAuthor = author;
  }

  private void readCultivar() {
    cultivar = Optional.of(peek().text());
    skip();
    if (has()
        && (peek().kind() == NameToken.Kind.WORD || peek().kind() == NameToken.Kind.CULTIVAR)) {
      throw error(
          peek(),
          "nothing stands after the cultivar. If this belongs to its name, put it inside the"
              + " quotes.");
    }
  }

  /** The words up to the next rank, qualifier, sign or quote: authors, or a designation. */
  private String words(boolean authors) {
    List<String> words = new ArrayList<>();
    while (has() && peek().kind() == NameToken.Kind.WORD) {
      NameToken token = peek();
      if (authors) {
        if (NameTerms.isRank(tokens, next) || NameTerms.isQualifier(token.text())) {
          break;
        }
        refuseInAuthors(token);
      }
      words.add(token.text());
      skip();
    }
    return words.stream().collect(Collectors.joining(" "));
  }

  private void refuseInAuthors(NameToken token) {
    String word = token.text();
    if (word.equals("cv.") || word.equals("cv")) {
      throw error(token, "leave cv. out and put the cultivar in single quotes: 'Name'.");
    }
    if (token.isLower() && !NameTerms.isParticle(word) && TaxonName.isEpithet(word)) {
      throw error(
          token,
          "an epithet below the species has its rank before it. Write subsp. "
              + word
              + ", var. "
              + word
              + " or f. "
              + word
              + ".");
    }
  }

  private NameException endOf(String message) {
    return new NameException(text, NameToken.column(text, text.length()), message);
  }

  NameException error(NameToken token, String message) {
    return new NameException(text, NameToken.column(text, token.offset()), message);
  }
}
