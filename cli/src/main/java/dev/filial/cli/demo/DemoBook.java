package dev.filial.cli.demo;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Determination;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Observed;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.Protection;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.Weighted;
import dev.filial.core.store.RegisterStore;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Klara's book as she writes it: a day is opened, things are written down, and all of that day goes
 * into the register at once, in the evening. Codes are given as on a tag.
 */
final class DemoBook {

  static final String GROWER = "Klara Beispiel";

  /** A friend of hers, invented like everybody here. */
  static final String FRIEND = "Jonas Muster";

  /** The club whose swaps she goes to. */
  static final String CLUB = "Kakteenrunde Musterstadt";

  /** What she sows on, and in. */
  static final String MEDIUM = "pumice and peat, 2 : 1";

  private static final String TRAY = "tray";

  private final RegisterStore store;
  private final List<Statement> page = new ArrayList<>();
  private LocalDate day = LocalDate.of(2022, 1, 8);

  DemoBook(RegisterStore store) {
    this.store = store;
  }

  /** The time at which the entries of that day are written. */
  static Instant evening(LocalDate day) {
    return day.atTime(LocalTime.of(18, 0)).toInstant(ZoneOffset.UTC);
  }

  /** Closes the page and opens that of the given day. */
  DemoBook on(String isoDay) {
    close();
    day = LocalDate.parse(isoDay);
    return this;
  }

  /** Writes the page into the register. */
  void close() {
    if (!page.isEmpty()) {
      store.write(
          GROWER,
          evening(day),
          book -> {
            page.forEach(book::append);
            return page.size();
          });
      page.clear();
    }
  }

  /** The number that the next entry will have. */
  long next() {
    return store.size() + page.size() + 1;
  }

  PartialDate today() {
    return PartialDate.of(day);
  }

  DemoBook write(Statement statement) {
    page.add(statement);
    return this;
  }

  static Code code(String text) {
    return Code.parse(text);
  }

  DemoBook plant(
      String code, String taxon, String fieldNumber, String donor, String place, String... names) {
    return plant(code, Determination.of(taxon), fieldNumber, donor, place, names);
  }

  DemoBook plant(
      String code,
      Determination determination,
      @Nullable String fieldNumber,
      String donor,
      String place,
      String... names) {
    return write(
        new PlantAcquired(
            code(code),
            determination,
            provenance(fieldNumber, donor),
            today(),
            List.of(names),
            false,
            place,
            null));
  }

  /** A packet of seed. */
  DemoBook packet(
      String code, String taxon, @Nullable String fieldNumber, String donor, String count) {
    return write(
        new SeedAcquired(
            code(code),
            Determination.of(taxon),
            provenance(fieldNumber, donor),
            today(),
            Count.parse(count),
            "seed tin",
            null));
  }

  private static Provenance provenance(@Nullable String fieldNumber, String donor) {
    return new Provenance(
        donor,
        null,
        fieldNumber,
        fieldNumber == null ? null : "an invented locality, number " + fieldNumber.substring(3));
  }

  DemoBook offset(String code, String of) {
    return write(
        new Propagated(
            code(code), code(of), "offset", today(), false, List.of(), List.of(), "bench A", null));
  }

  /** A cross by hand, the flowers emasculated and bagged. */
  DemoBook cross(String code, String seed, String pollen, int flowers) {
    return write(crossing(code, seed, new Pollen.OnePlant(code(pollen)), flowers));
  }

  DemoBook selfing(String code, String seed, int flowers) {
    return write(
        pollinated(
            code,
            seed,
            new Pollen.Itself(),
            Count.of(flowers),
            List.of(Protection.BAGGED),
            Fraction.ZERO,
            Fraction.ZERO,
            false));
  }

  Pollinated crossing(String code, String seed, Pollen pollen, int flowers) {
    return pollinated(
        code,
        seed,
        pollen,
        Count.of(flowers),
        List.of(Protection.EMASCULATED, Protection.BAGGED),
        Fraction.ZERO,
        Fraction.ZERO,
        false);
  }

  /** Left to the bees, perhaps with plants thought to have been in flower. */
  DemoBook open(String code, String seed, Fraction unknown, Weighted... candidates) {
    return write(
        pollinated(
            code,
            seed,
            new Pollen.Open(List.of(candidates), unknown),
            null,
            List.of(),
            Fraction.ZERO,
            Fraction.ZERO,
            false));
  }

  Pollinated pollinated(
      String code,
      String seed,
      Pollen pollen,
      @Nullable Count flowers,
      List<Protection> protection,
      Fraction selfs,
      Fraction strays,
      boolean stored) {
    return new Pollinated(
        code(code),
        code(seed),
        pollen,
        today(),
        flowers,
        protection,
        selfs,
        strays,
        Fraction.ZERO,
        null,
        null,
        stored,
        "bench A",
        null);
  }

  static Weighted weighted(String plant, int weight) {
    return new Weighted(code(plant), Fraction.of(weight));
  }

  DemoBook fruit(String cross, int set, int failed) {
    return write(
        new FruitRecorded(
            code(cross), today(), Count.of(set), Count.of(failed), null, null, null, null));
  }

  DemoBook harvest(String lot, String count, int fruits) {
    return write(
        new Harvested(
            code(lot),
            today(),
            Count.of(fruits),
            false,
            Count.parse(count),
            null,
            null,
            "seed tin",
            null));
  }

  /** Sows seed of lot H1 as sowing S1, so many in each of the pots P1, P2 … */
  DemoBook sow(String whole, String... pots) {
    return sow(whole, List.of(), pots);
  }

  DemoBook sow(String whole, List<String> treatments, String... pots) {
    List<Sown.Filled> filled = new ArrayList<>();
    Count seeds = Count.of(0);
    for (String pot : pots) {
      Count each = Count.parse(pot);
      seeds = seeds.plus(each);
      filled.add(new Sown.Filled(code(whole).group(filled.size() + 1), each, null));
    }
    return write(
        new Sown(
            code(whole).sowing(1),
            code(whole).lot(1),
            today(),
            seeds,
            MEDIUM,
            null,
            false,
            TRAY,
            false,
            null,
            null,
            treatments,
            filled,
            "shelf",
            null));
  }

  /** How many came up in a pot, and no more said. */
  static Counted.Reading up(String pot, String count) {
    return new Counted.Reading(code(pot), Count.parse(count), null);
  }

  /** How many are alive in a pot. */
  static Counted.Reading alive(String pot, String count) {
    return new Counted.Reading(code(pot), null, Count.parse(count));
  }

  DemoBook count(Counted.Reading... readings) {
    return write(new Counted(today(), List.of(readings), null));
  }

  DemoBook number(String pot, int first, int last) {
    return write(new Numbered(code(pot), first, last, today(), null, "bench B", null));
  }

  DemoBook tips(String pot, long red, long plain) {
    return tally(pot, "tips", "red", red, "plain", plain);
  }

  DemoBook tally(String pot, String trait, String one, long ones, String other, long others) {
    Map<String, Long> counts = new LinkedHashMap<>();
    counts.put(one, ones);
    counts.put(other, others);
    return write(new Tallied(code(pot), trait, counts, today(), null));
  }

  DemoBook saw(String plant, String trait, String value) {
    return write(new Observed(code(plant), trait, value, today(), null, null));
  }

  DemoBook gene(String name, String... alleles) {
    return write(LocusDeclared.of(name, List.of(alleles)));
  }

  /** All plants of a taxon have that allele and no other. */
  DemoBook fixed(String taxon, String gene, String allele) {
    return write(
        new ProfileStated(taxon, Map.of(gene, Map.of(allele, Fraction.ONE)), null, null, null));
  }

  DemoBook carries(String plant, String gene, String genotype) {
    return write(new GenotypeStated(code(plant), List.of(gene), genotype, today(), null));
  }
}
