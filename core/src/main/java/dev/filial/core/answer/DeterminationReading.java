package dev.filial.core.answer;

import dev.filial.core.name.Rank;
import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads what an acquired plant or packet was said to be off its label. */
public final class DeterminationReading {

  private final TaxonReading names;

  private DeterminationReading(TaxonReading names) {
    this.names = names;
  }

  /** Reads labels, the names on them as {@code view} knows them. */
  public static DeterminationReading in(RegisterView view) {
    return new DeterminationReading(TaxonReading.in(view));
  }

  /**
   * What stands on a label, word by word.
   *
   * @param taxon the name, its genus abbreviated or not, a cultivar in quotes with it or not; null
   *     for none
   * @param cultivar the cultivar, with its quotes or without; null for none
   * @param makeup stated shares per taxon
   * @param generation {@code F1}, {@code BC1}, {@code BC1F2} …; null when not stated
   * @param ploidy chromosome sets; null when not stated
   */
  public record Label(
      @Nullable String taxon,
      @Nullable String cultivar,
      Map<String, Fraction> makeup,
      @Nullable String generation,
      @Nullable Integer ploidy) {}

  /**
   * What it was read as.
   *
   * @param determination for the register
   * @param notes what looks like a slip, or will not be used, one sentence each
   */
  public record Reading(Determination determination, List<String> notes) {}

  /**
   * Reads a label. A cultivar named with its species is told apart from it, so that the plant
   * counts as that species; one named with its genus alone stays a name of its own.
   *
   * @throws dev.filial.core.name.NameException if a name on it is none
   * @throws RegisterRefusal if two cultivars are named, or an abbreviated genus cannot be told
   * @throws IllegalArgumentException if the shares exceed 1, the generation is none, or the ploidy
   *     is out of range
   */
  public Reading read(Label label) {
    List<String> notes = new ArrayList<>();
    String taxon = null;
    String cultivar = label.cultivar() == null ? null : unquoted(label.cultivar());
    if (label.taxon() != null) {
      TaxonName name = name(label.taxon(), notes);
      cultivar = cultivar(name, cultivar);
      taxon = withoutCultivarOfItsSpecies(name).text();
    }
    Map<String, Fraction> makeup = new LinkedHashMap<>();
    label
        .makeup()
        .forEach(
            (written, share) -> makeup.merge(name(written, notes).text(), share, Fraction::plus));
    String generation = generation(label.generation(), makeup, notes);
    return new Reading(
        new Determination(taxon, cultivar, makeup, generation, label.ploidy()), List.copyOf(notes));
  }

  private TaxonName name(String written, List<String> notes) {
    TaxonName name = names.read(written);
    names.oneSlipFrom(name).ifPresent(like -> notes.add(slip(name, like)));
    return name;
  }

  /** What is said of a name that is one slip away from a known one. */
  public static String slip(TaxonName name, String like) {
    return name.withoutAuthors().text()
        + " is new here, and one letter away from "
        + like
        + "; if that was meant, undo this entry and write it again";
  }

  private static @Nullable String cultivar(TaxonName name, @Nullable String stated) {
    Optional<String> named = name.cultivar();
    if (named.isEmpty()) {
      return stated;
    }
    if (stated != null && !stated.equals(named.get())) {
      throw new RegisterRefusal(
          "the name has the cultivar '"
              + named.get()
              + "', and '"
              + stated
              + "' is stated beside it; leave one of them out");
    }
    return named.get();
  }

  private static TaxonName withoutCultivarOfItsSpecies(TaxonName name) {
    if (name.epithets().isEmpty() || name.cultivar().isEmpty()) {
      return name;
    }
    return new TaxonName(
        name.hybridGenus(),
        name.genus(),
        name.genusAuthor(),
        name.epithets(),
        name.undetermined(),
        Optional.empty(),
        name.doubt().filter(doubt -> doubt.before() != Rank.CULTIVAR));
  }

  private static @Nullable String generation(
      @Nullable String stated, Map<String, Fraction> makeup, List<String> notes) {
    if (stated == null) {
      return null;
    }
    String generation = stated.strip().toUpperCase(Locale.ROOT);
    if (makeup.size() != 2) {
      notes.add(
          generation
              + " is kept as it was said, but no generation is counted from it until the shares of"
              + " its two taxa are stated; a backcross is to the one it has more of, of even shares to"
              + " the first");
    }
    return generation;
  }

  private static String unquoted(String cultivar) {
    return cultivar.strip().replaceAll("^['‘’‛`´′\"“”„]+|['‘’‛`´′\"“”„]+$", "").strip();
  }
}
