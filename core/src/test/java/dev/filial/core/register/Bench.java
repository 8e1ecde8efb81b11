package dev.filial.core.register;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A register to tell stories with: an invented balcony, its tables growing entry by entry. */
final class Bench {

  static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");

  final RegisterTables book = new RegisterTables();

  Bench() {
    say(new RegisterOpened("KB", "Klara", null));
  }

  static Code code(String text) {
    return Code.parse(text);
  }

  static @Nullable PartialDate on(@Nullable String date) {
    return date == null ? null : PartialDate.parse(date);
  }

  /** Says it; gives the number of the entry. */
  long say(Statement statement) {
    return accept(statement).entry().number();
  }

  Accepted accept(Statement statement) {
    Clerk.Outcome outcome = Clerk.of(book).accept(statement, "Klara", NOON);
    book.apply(outcome.delta());
    return outcome.accepted();
  }

  List<String> warnings(Statement statement) {
    return accept(statement).warnings();
  }

  /** The refusal of {@code statement}; fails when it is taken. */
  RegisterRefusal refusal(Statement statement) {
    return catchThrowableOfType(RegisterRefusal.class, () -> accept(statement));
  }

  Item item(String code) {
    return book.item(code(code)).orElseThrow();
  }

  long plant(String code, String taxon) {
    return plant(code, taxon, "2024");
  }

  long plant(String code, String taxon, @Nullable String date) {
    return say(acquired(code, taxon, date));
  }

  static PlantAcquired acquired(String code, String taxon, @Nullable String date) {
    return new PlantAcquired(
        code(code),
        Determination.of(taxon),
        Provenance.UNKNOWN,
        on(date),
        List.of(),
        false,
        null,
        null);
  }

  /** A taxon with that many chromosome sets. */
  static TaxonDeclared taxon(String name, @Nullable Integer ploidy) {
    return new TaxonDeclared(name, List.of(), null, ploidy, null, false, Map.of(), false, null);
  }

  static TaxonDeclared selfIncompatible(String name) {
    return new TaxonDeclared(name, List.of(), null, null, null, false, Map.of(), true, null);
  }

  /** A gene of which nothing is known but its alleles. */
  static LocusDeclared gene(String name, String... alleles) {
    return LocusDeclared.of(name, List.of(alleles));
  }

  /** A gene in the cytoplasm. */
  static LocusDeclared cytoplasmic(String name, String... alleles) {
    return LocusDeclared.ofCytoplasm(name, List.of(alleles));
  }

  /** A gene beside another. */
  static LocusDeclared beside(String other, Fraction recombination, LocusDeclared gene) {
    return LocusDeclared.of(gene.locus(), gene.alleles()).beside(other, recombination);
  }

  /** A gene that lies on a chromosome so many centimorgans from its end. */
  static LocusDeclared at(String chromosome, String centimorgans, LocusDeclared gene) {
    return gene.at(chromosome, new BigDecimal(centimorgans));
  }

  /** A table whose rows are written GENES=STATE, of one gene called as the trait is. */
  static ModelDeclared model(String trait, List<String> genes, String... rows) {
    return new ModelDeclared(
        trait,
        genes,
        java.util.Arrays.stream(rows)
            .map(row -> row.split("=", -1))
            .map(row -> ModelDeclared.Row.of(row[0], row[1]))
            .toList(),
        null);
  }

  static ProfileStated profile(String taxon, String gene, Map<String, Fraction> alleles) {
    return new ProfileStated(taxon, Map.of(gene, alleles), null, null, null);
  }

  static GenotypeStated genotype(String code, String genotype, String... genes) {
    return new GenotypeStated(code(code), List.of(genes), genotype, null, null);
  }

  /** A protected cross of two plants. */
  static Pollinated cross(String code, String seed, String pollen, @Nullable String date) {
    return cross(code, seed, new Pollen.OnePlant(code(pollen)), date);
  }

  static Pollinated cross(String code, String seed, Pollen pollen, @Nullable String date) {
    return cross(code, seed, pollen, date, null, null, false);
  }

  static Pollinated cross(
      String code,
      String seed,
      Pollen pollen,
      @Nullable String date,
      @Nullable Integer seedSets,
      @Nullable Integer pollenSets,
      boolean stored) {
    return new Pollinated(
        code(code),
        code(seed),
        pollen,
        on(date),
        null,
        List.of(Protection.BAGGED),
        Fraction.ZERO,
        Fraction.ZERO,
        Fraction.ZERO,
        seedSets,
        pollenSets,
        stored,
        null,
        null);
  }

  static Pollen pollen(String plant) {
    return new Pollen.OnePlant(code(plant));
  }

  static Harvested harvest(String lot, @Nullable String date, String seeds) {
    return new Harvested(
        code(lot), on(date), null, false, Count.parse(seeds), null, null, null, null);
  }

  static Sown sowing(String sowing, String lot, @Nullable String date, String seeds) {
    return new Sown(
        code(sowing),
        code(lot),
        on(date),
        Count.parse(seeds),
        null,
        null,
        false,
        null,
        false,
        null,
        null,
        List.of(),
        List.of(),
        null,
        null);
  }

  static Counted germinated(String where, @Nullable String date, String count) {
    return new Counted(
        on(date), List.of(new Counted.Reading(code(where), Count.parse(count), null)), null);
  }

  static Counted alive(String where, @Nullable String date, String count) {
    return new Counted(
        on(date), List.of(new Counted.Reading(code(where), null, Count.parse(count))), null);
  }

  static Potted potted(String group, String from, @Nullable String date, String count) {
    return new Potted(code(group), code(from), on(date), Count.parse(count), null, null);
  }

  static Numbered numbered(String from, int first, int last, @Nullable String date) {
    return new Numbered(code(from), first, last, on(date), null, null, null);
  }

  static Propagated ramet(String code, String of, @Nullable String date) {
    return new Propagated(
        code(code), code(of), "offset", on(date), false, List.of(), List.of(), null, null);
  }

  static TagLost found(String code, @Nullable String date, String... candidates) {
    return new TagLost(
        code(code),
        java.util.Arrays.stream(candidates)
            .map(candidate -> new Weighted(code(candidate), Fraction.ONE))
            .toList(),
        Fraction.ZERO,
        on(date),
        null,
        null);
  }

  static FateRecorded fate(String code, Fate fate, @Nullable String date) {
    return new FateRecorded(List.of(code(code)), fate, on(date), null, null, null, null);
  }

  static FateRecorded fate(String code, Fate fate, @Nullable String date, String count) {
    return new FateRecorded(
        List.of(code(code)), fate, on(date), Count.parse(count), null, null, null);
  }

  static Joined joined(String keep, String other) {
    return new Joined(code(keep), code(other), "one stem, two tags");
  }

  static Parted parted(String code, String into, Long... entries) {
    return new Parted(
        code(code),
        code(into),
        List.of(entries),
        Determination.UNKNOWN,
        null,
        "two rosettes in one pot");
  }

  static TraitDeclared edge() {
    return new TraitDeclared("edge", List.of("red", "green"), null, null, null, null);
  }

  static Observed observed(String code, String trait, String value) {
    return new Observed(code(code), trait, value, null, null, null);
  }

  static Amended amended(long entry, @Nullable Statement replacement) {
    return new Amended(entry, replacement, "misread the tag");
  }

  static Amended struck(long entry) {
    return new Amended(entry, null, "never so");
  }
}
