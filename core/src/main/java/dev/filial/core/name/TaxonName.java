package dev.filial.core.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The name of a taxon: genus, species, infraspecific ranks, cultivar, as in {@code Polypodium
 * vulgare subsp. prionodes (Asch.) Rothm.}, {@code Salix ×capreola}, {@code Echeveria agavoides
 * 'Name'}.
 *
 * <p>Names follow the International Code of Nomenclature for algae, fungi, and plants (Shenzhen
 * Code, 2018): the hybrid sign stands before the genus or the epithet, with or without a space
 * (Art. H.3). Authors are kept and never needed. Two names are the same for looking up when their
 * {@link #key} is the same.
 *
 * <p>Read one with {@link #parse}; the constructor is for those who have the parts.
 *
 * @param hybridGenus whether the genus itself is a hybrid (nothogenus), as ×Agropogon
 * @param genus the genus in full, without the sign
 * @param genusAuthor the author of the genus, mostly empty
 * @param epithets the species first, then what stands below it, each rank once; may be empty
 * @param undetermined present if the species is not determined ({@code sp.}): what was written
 *     after it to tell such plants apart, often empty
 * @param cultivar the cultivar without its quotes
 * @param doubt a qualifier and the part of the name that it stands before
 */
public record TaxonName(
    boolean hybridGenus,
    String genus,
    String genusAuthor,
    List<Epithet> epithets,
    Optional<String> undetermined,
    Optional<String> cultivar,
    Optional<Doubt> doubt) {

  private static final Pattern GENUS = Pattern.compile("\\p{Lu}\\p{Ll}+(-\\p{L}\\p{Ll}*)*");
  private static final Pattern EPITHET =
      Pattern.compile("\\p{Ll}{2,}(-\\p{Ll}+)*|\\p{Ll}-\\p{Ll}+");

  /**
   * One epithet of a name.
   *
   * @param rank species or a rank below it
   * @param hybrid whether it is a hybrid's (a nothospecies, or a nothosubspecies and so on)
   * @param text the epithet, in small letters, without the hybrid sign
   * @param author its author, or empty
   */
  public record Epithet(Rank rank, boolean hybrid, String text, String author) {
    /** Checks the spelling. */
    public Epithet {
      if (rank != Rank.SPECIES && !rank.isInfraspecific()) {
        throw new IllegalArgumentException(
            "an epithet is of a species or below it, not of a " + rank);
      }
      if (!isEpithet(text)) {
        throw new IllegalArgumentException(
            "\"" + Quote.of(text) + "\" is no epithet; one is written in small letters");
      }
    }

    private String marked() {
      if (rank == Rank.SPECIES) {
        return (hybrid ? "×" : "") + text;
      }
      return (hybrid ? "notho" : "") + rank.term() + " " + text;
    }
  }

  /**
   * A doubt, and where in the name it is written.
   *
   * @param qualifier cf. or aff.
   * @param before the rank of the part that it stands before: species, an infraspecific rank, or
   *     cultivar
   */
  public record Doubt(Qualifier qualifier, Rank before) {}

  /**
   * Checks that the parts make a name.
   *
   * @throws IllegalArgumentException if they do not
   */
  public TaxonName {
    epithets = List.copyOf(epithets);
    if (!isGenus(genus)) {
      throw new IllegalArgumentException(
          "\"" + Quote.of(genus) + "\" is no genus; one begins with a capital, as Echeveria");
    }
    Rank above = Rank.GENUS;
    for (Epithet epithet : epithets) {
      if (epithet.rank.compareTo(above) <= 0
          || (above == Rank.GENUS) == epithet.rank.isInfraspecific()) {
        throw new IllegalArgumentException(
            "the species comes first and each rank below the one before: " + epithets);
      }
      above = epithet.rank;
    }
    if (undetermined.isPresent() && !epithets.isEmpty()) {
      throw new IllegalArgumentException("a name with an epithet is not undetermined: " + epithets);
    }
    if (doubt.isPresent() && !hasPart(doubt.get().before, epithets, cultivar)) {
      throw new IllegalArgumentException(
          "the doubt is about a part that the name does not have: " + doubt.get().before);
    }
  }

  private static boolean hasPart(Rank rank, List<Epithet> epithets, Optional<String> cultivar) {
    return rank == Rank.CULTIVAR
        ? cultivar.isPresent()
        : epithets.stream().anyMatch(epithet -> epithet.rank == rank);
  }

  static boolean isGenus(String text) {
    return PlainBinomial.isGenus(text) || GENUS.matcher(text).matches();
  }

  static boolean isEpithet(String text) {
    return PlainBinomial.isEpithet(text) || EPITHET.matcher(text).matches();
  }

  /**
   * Reads a name. Quotes may be straight or typographic, the hybrid sign × or an x set off by a
   * space, ranks spelled as people do ({@code ssp.}, {@code subspecies}, {@code forma}).
   *
   * @throws NameException if the text is no name; it names the column and says what to write
   */
  public static TaxonName parse(String text) {
    @Nullable TaxonName plain = PlainBinomial.read(text);
    return plain == null ? new TaxonNameReader(text, List.of()).readAlone() : plain;
  }

  /**
   * A genus alone.
   *
   * @throws IllegalArgumentException if it is not spelled as one
   */
  public static TaxonName ofGenus(String genus) {
    return new TaxonName(
        false, genus, "", List.of(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * A species.
   *
   * @throws IllegalArgumentException if genus or epithet are not spelled as such
   */
  public static TaxonName ofSpecies(String genus, String epithet) {
    return ofGenus(genus).with(List.of(new Epithet(Rank.SPECIES, false, epithet, "")));
  }

  private TaxonName with(List<Epithet> others) {
    return new TaxonName(
        hybridGenus,
        genus,
        genusAuthor,
        others,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The lowest rank that the name has; species for an undetermined one. */
  public Rank rank() {
    if (cultivar.isPresent()) {
      return Rank.CULTIVAR;
    }
    if (!epithets.isEmpty()) {
      return epithets.get(epithets.size() - 1).rank;
    }
    return undetermined.isPresent() ? Rank.SPECIES : Rank.GENUS;
  }

  /** cf. or aff., if either is written in the name. */
  public Optional<Qualifier> qualifier() {
    return doubt.map(Doubt::qualifier);
  }

  /** Whether the species is not determined: {@code Echeveria sp.} */
  public boolean isUndetermined() {
    return undetermined.isPresent();
  }

  /** Whether the name is a hybrid's at any rank (a nothotaxon: one with a hybrid sign). */
  public boolean isHybridName() {
    boolean hybrid = hybridGenus;
    for (Epithet epithet : epithets) {
      hybrid |= epithet.hybrid;
    }
    return hybrid;
  }

  /**
   * The name of the species that this is or belongs to, with its author; empty for a genus, for an
   * undetermined species, and for a cultivar named without its species.
   */
  public Optional<TaxonName> species() {
    if (epithets.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new TaxonName(
            hybridGenus,
            genus,
            "",
            epithets.subList(0, 1),
            Optional.empty(),
            Optional.empty(),
            doubt.filter(d -> d.before == Rank.SPECIES)));
  }

  /** This name without cf. or aff. */
  public TaxonName unqualified() {
    return new TaxonName(
        hybridGenus, genus, genusAuthor, epithets, undetermined, cultivar, Optional.empty());
  }

  /** This name without its authors. */
  public TaxonName withoutAuthors() {
    List<Epithet> plain = new ArrayList<>();
    for (Epithet epithet : epithets) {
      plain.add(new Epithet(epithet.rank, epithet.hybrid, epithet.text, ""));
    }
    return new TaxonName(hybridGenus, genus, "", plain, undetermined, cultivar, doubt);
  }

  /** The name with its authors, hybrid signs without a space, the cultivar in straight quotes. */
  public String text() {
    return text((hybridGenus ? "×" : "") + genus);
  }

  /** {@link #text()} in plain ASCII, the hybrid sign as an x with a space after it. */
  public String asciiText() {
    return Ascii.of(text());
  }

  /**
   * The name without authors and with the genus shortened to its initial: {@code E. agavoides}. A
   * genus alone stays as it is.
   */
  public String abbreviated() {
    return rank() == Rank.GENUS ? withoutAuthors().text() : withoutAuthors().text(initial());
  }

  /** The genus as initial and stop, with its hybrid sign: {@code E.} */
  String initial() {
    return (hybridGenus ? "×" : "") + Character.toString(genus.codePointAt(0)) + ".";
  }

  /** The name with {@code genusText} in place of the genus. */
  String text(String genusText) {
    StringBuilder text = new StringBuilder(genusText);
    append(text, genusAuthor);
    for (Epithet epithet : epithets) {
      appendDoubt(text, epithet.rank);
      append(text, epithet.marked());
      append(text, epithet.author);
    }
    appendUndetermined(text);
    appendCultivar(text);
    return text.toString();
  }

  private static void append(StringBuilder text, String word) {
    if (!word.isEmpty()) {
      text.append(' ').append(word);
    }
  }

  private void appendUndetermined(StringBuilder text) {
    if (undetermined.isPresent()) {
      append(text, "sp.");
      append(text, undetermined.get());
    }
  }

  private void appendCultivar(StringBuilder text) {
    if (cultivar.isPresent()) {
      appendDoubt(text, Rank.CULTIVAR);
      append(text, "'" + cultivar.get() + "'");
    }
  }

  private void appendDoubt(StringBuilder text, Rank before) {
    if (doubt.isPresent() && doubt.get().before == before) {
      append(text, doubt.get().qualifier.text());
    }
  }

  /**
   * The shortest name that a grower of one genus needs on a tag: the cultivar in quotes, else the
   * last epithet (with its hybrid sign and cf. or aff.), else the genus.
   */
  public String shortName() {
    if (cultivar.isPresent()) {
      return shortDoubt(Rank.CULTIVAR) + "'" + cultivar.get() + "'";
    }
    if (!epithets.isEmpty()) {
      Epithet last = epithets.get(epithets.size() - 1);
      // A subspecies of something doubtful is as doubtful, so any qualifier is shown.
      String qualifier = doubt.map(d -> d.qualifier.text() + " ").orElse("");
      return qualifier + (last.hybrid ? "×" : "") + last.text;
    }
    if (undetermined.isPresent()) {
      return ("sp. " + undetermined.get()).strip();
    }
    return (hybridGenus ? "×" : "") + genus;
  }

  private String shortDoubt(Rank before) {
    return doubt.filter(d -> d.before == before).map(d -> d.qualifier.text() + " ").orElse("");
  }

  /**
   * The name folded for looking up: small letters without marks, no authors, no hybrid signs, and
   * below the species only the last rank. The sign does not tell names apart (ICN Art. H.3.3), and
   * neither do the ranks between species and last epithet, which are a classification and not part
   * of the name (ICN Art. 24.1); both from memory. A qualifier does: what is akin to a species is
   * not that species. A cultivar with its species is told apart from one without.
   */
  public String key() {
    StringBuilder key = new StringBuilder(genus);
    for (int i = 0; i < epithets.size(); i++) {
      Epithet epithet = epithets.get(i);
      appendDoubt(key, epithet.rank);
      if (i == 0 || i == epithets.size() - 1) {
        append(key, epithet.rank.term());
        append(key, epithet.text);
      }
    }
    appendUndetermined(key);
    appendCultivar(key);
    return Ascii.withoutMarks(key.toString()).toLowerCase(Locale.ROOT);
  }

  /**
   * The key of a written name without its doubt, as {@code parse(text).unqualified().key()}; of
   * most names without taking them apart.
   *
   * @throws NameException if the text is no name
   */
  public static String keyOf(String text) {
    return PlainBinomial.isOne(text)
        ? text.toLowerCase(Locale.ROOT)
        : parse(text).unqualified().key();
  }

  /** Whether this is the same name for looking up: their keys are equal. */
  public boolean isSameNameAs(TaxonName other) {
    return key().equals(other.key());
  }

  /** The same as {@link #text()}. */
  @Override
  public String toString() {
    return text();
  }
}
