package dev.filial.core.answer;

import dev.filial.core.name.TaxonName;
import dev.filial.core.register.Interval;
import dev.filial.core.register.IntervalStated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How long things usually take on this bench. What was stated of the taxon goes before what was
 * stated of its species, that before its genus, that before what was stated of all, and that before
 * common practice. Of several statements about the same the later entry holds; names are read as
 * they are accepted now.
 *
 * <p>The entries on an interval are read once, when it is first asked for.
 */
public final class Intervals {

  /** Where a length comes from, the most particular first. */
  public enum Whence {
    /** Stated for the taxon, or for the species it belongs to. */
    TAXON,
    /** Stated for its genus. */
    GENUS,
    /** Stated for all. */
    ALL,
    /** Nothing was stated: {@link Interval#usualDays()}, common practice, no source. */
    COMMON_PRACTICE
  }

  /**
   * How long something usually takes.
   *
   * @param days how long, 1 to 36,500 days
   * @param whence where that comes from
   */
  public record Length(int days, Whence whence) {}

  /** What stands for all taxa, beside the keys of names. */
  private static final String ALL = "";

  private final RegisterView view;
  private final Map<Interval, Map<String, Integer>> stated = new EnumMap<>(Interval.class);

  private Intervals(RegisterView view) {
    this.view = view;
  }

  /** Reads what {@code view} states. */
  public static Intervals in(RegisterView view) {
    return new Intervals(view);
  }

  /**
   * How long {@code interval} usually is.
   *
   * @param taxon of which taxon, a genus too; null where none is known, for what holds of all
   */
  public Length days(Interval interval, @Nullable TaxonName taxon) {
    Map<String, Integer> said = stated.computeIfAbsent(interval, this::read);
    if (taxon != null && said.size() > (said.containsKey(ALL) ? 1 : 0)) {
      Length particular = ofTaxon(said, accepted(taxon));
      if (particular != null) {
        return particular;
      }
    }
    Integer all = said.get(ALL);
    return all == null
        ? new Length(interval.usualDays(), Whence.COMMON_PRACTICE)
        : new Length(all, Whence.ALL);
  }

  private static @Nullable Length ofTaxon(Map<String, Integer> said, TaxonName taxon) {
    Integer own = said.get(taxon.key());
    if (own == null) {
      own = taxon.species().map(species -> said.get(species.unqualified().key())).orElse(null);
    }
    // A genus that is asked for is itself the taxon.
    if (own != null) {
      return new Length(own, Whence.TAXON);
    }
    Integer genus = said.get(TaxonName.ofGenus(taxon.genus()).key());
    return genus == null ? null : new Length(genus, Whence.GENUS);
  }

  private Map<String, Integer> read(Interval interval) {
    Map<String, Integer> said = new HashMap<>();
    for (long entry : view.entriesOn(Subject.of(interval))) {
      if (view.effective(entry).orElse(null) instanceof IntervalStated statement) {
        String taxon = statement.taxon();
        said.put(taxon == null ? ALL : accepted(TaxonName.parse(taxon)).key(), statement.days());
      }
    }
    return said;
  }

  private TaxonName accepted(TaxonName name) {
    return TaxonName.parse(view.accepted(name.unqualified().text()).name()).unqualified();
  }
}
