package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.name.TaxonName;
import java.util.Collection;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Something a statement can be about: a coded thing, a taxon, a trait, a locus, a field number, an
 * earlier entry, a place, an interval or a caution.
 *
 * @param kind which of these
 * @param key the code's text, the taxon's folded name, the trait's name in lower case, the locus's
 *     name or the field number as it is, the entry's number, the place's name in lower case, or the
 *     word of the interval or caution
 */
public record Subject(Kind kind, String key) {

  /** How long after it a treatment is repeated: under this those to be repeated are found. */
  public static final Subject REPEATED_TREATMENT = new Subject(Kind.INTERVAL, "treatment");

  /** What a statement can be about. */
  public enum Kind {
    /** A plant, cross, seed lot, sowing or group. */
    CODE,
    /** A taxon. */
    TAXON,
    /** A trait. */
    TRAIT,
    /** A locus. */
    LOCUS,
    /** A collector's field number. */
    FIELD_NUMBER,
    /** An earlier entry. */
    ENTRY,
    /** A place where things stand. */
    PLACE,
    /** How long something takes. */
    INTERVAL,
    /** What can hurt somebody. */
    CAUTION
  }

  // Written out, because a record's own take as long to link at their first use as the whole
  // register does to open, and every question puts some subjects into a set.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Subject subject && kind == subject.kind && key.equals(subject.key);
  }

  @Override
  public int hashCode() {
    return key.hashCode();
  }

  /** The coded thing {@code code}. */
  public static Subject of(Code code) {
    return new Subject(Kind.CODE, code.text());
  }

  /** The coded things {@code codes}. */
  public static Set<Subject> of(Collection<Code> codes) {
    return codes.stream().map(Subject::of).collect(Collectors.toUnmodifiableSet());
  }

  /** The place of that name, in either case; outer spaces do not count. */
  public static Subject place(String name) {
    return new Subject(Kind.PLACE, name.strip().toLowerCase(Locale.ROOT));
  }

  /** The interval. */
  public static Subject of(Interval interval) {
    return new Subject(Kind.INTERVAL, interval.name().toLowerCase(Locale.ROOT));
  }

  /** The caution. */
  public static Subject of(Caution caution) {
    return new Subject(Kind.CAUTION, caution.name().toLowerCase(Locale.ROOT));
  }

  /** The taxon of that name, however it is spelt. */
  public static Subject taxon(String name) {
    return new Subject(Kind.TAXON, TaxonName.keyOf(name));
  }

  /** The entry of that number. */
  public static Subject entry(long number) {
    return new Subject(Kind.ENTRY, Long.toString(number));
  }

  /** The trait of that name. */
  public static Subject trait(String name) {
    return new Subject(Kind.TRAIT, name.strip().toLowerCase(Locale.ROOT));
  }

  /** The locus of that name; unlike a trait's, its case counts, as that of its alleles does. */
  public static Subject locus(String name) {
    return new Subject(Kind.LOCUS, name.strip());
  }

  /**
   * The collector's field number; its case and the spaces within it count, for nobody knows what
   * another collector makes of them.
   */
  public static Subject fieldNumber(String number) {
    return new Subject(Kind.FIELD_NUMBER, number.strip());
  }
}
