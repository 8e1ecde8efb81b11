package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Observed;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Potted;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.Protection;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.TagLost;
import dev.filial.core.register.TaxonDeclared;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.register.Weighted;
import dev.filial.core.store.MemoryStore;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The register of an invented grower, in memory, to tell stories on. */
final class InventedBench {

  static final String LAUI = "Echeveria laui";
  static final String AGAVOIDES = "Echeveria agavoides";
  static final String COLORATA = "Echeveria colorata";
  static final String ELEGANS = "Echeveria elegans";

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");

  final MemoryStore store = MemoryStore.empty();

  InventedBench() {
    say(new RegisterOpened("KB", "Klara Beispiel", null));
  }

  /** Writes an entry and gives its number. */
  long say(Statement statement) {
    Accepted accepted = store.append(statement, "Klara Beispiel", NOON);
    return accepted.entry().number();
  }

  Code plant(String taxon) {
    return plant(Determination.of(taxon));
  }

  Code plant(Determination determination) {
    return plant(determination, null);
  }

  Code plant(Determination determination, @Nullable String fieldNumber, String... names) {
    Code code = NextCode.in(store).ofYear(2024);
    say(
        new PlantAcquired(
            code,
            determination,
            new Provenance(null, null, fieldNumber, null),
            PartialDate.parse("2024"),
            List.of(names),
            false,
            null,
            null));
    return code;
  }

  /** A determination of these shares, the generation stated or not. */
  static Determination hybrid(@Nullable String generation, Object... taxaAndShares) {
    Map<String, Fraction> makeup = new LinkedHashMap<>();
    for (int i = 0; i < taxaAndShares.length; i += 2) {
      makeup.put((String) taxaAndShares[i], Fraction.parse((String) taxaAndShares[i + 1]));
    }
    return new Determination(null, null, makeup, generation, null);
  }

  void taxon(String name, @Nullable String within, @Nullable Integer ploidy, String... synonyms) {
    say(
        new TaxonDeclared(
            name, List.of(synonyms), within, ploidy, null, false, Map.of(), false, null));
  }

  /** A gene on no chromosome in particular, its alleles the most dominant first. */
  void gene(String name, String... alleles) {
    say(LocusDeclared.of(name, List.of(alleles)));
  }

  /** A gene that recombines with another so often. */
  void geneBeside(String other, String recombination, String name, String... alleles) {
    say(LocusDeclared.of(name, List.of(alleles)).beside(other, Fraction.parse(recombination)));
  }

  /** A gene at which a style refuses pollen with its own allele, and none leaks. */
  void refusingGene(String name, String... alleles) {
    say(LocusDeclared.of(name, List.of(alleles)).refusing(Fraction.ZERO, List.of()));
  }

  /** A trait of states, and its table in rows GENES=STATE; STATE "dies" for a lethal row. */
  void trait(String trait, String states, String genes, String... rows) {
    say(new TraitDeclared(trait, List.of(states.split(",", -1)), null, null, null, null));
    List<ModelDeclared.Row> table = new ArrayList<>();
    for (String row : rows) {
      String[] parts = row.split("=", -1);
      table.add(
          parts[1].equals("dies")
              ? ModelDeclared.Row.lethal(parts[0])
              : ModelDeclared.Row.of(parts[0], parts[1]));
    }
    say(new ModelDeclared(trait, List.of(genes.split(",", -1)), table, null));
  }

  /** How often each allele of a gene is found in a taxon: {@code R:0.9,r:0.1}, or R alone. */
  void profile(String taxon, String gene, String alleles) {
    Map<String, Fraction> frequencies = new LinkedHashMap<>();
    for (String one : alleles.split(",", -1)) {
      String[] parts = one.split(":", -1);
      frequencies.put(parts[0], parts.length == 1 ? Fraction.ONE : Fraction.parse(parts[1]));
    }
    say(new ProfileStated(taxon, Map.of(gene, frequencies), null, null, null));
  }

  /** What a plant carries. */
  void genotype(Code plant, String genotype, String... genes) {
    say(new GenotypeStated(plant, List.of(genes), genotype, null, null));
  }

  /** What a plant showed. */
  void showed(Code plant, String trait, String state) {
    say(new Observed(plant, trait, state, null, null, null));
  }

  Code cross(Code seed, Code pollen) {
    return pollination(seed, new Pollen.OnePlant(pollen)).made();
  }

  Code selfed(Code plant) {
    return pollination(plant, new Pollen.Itself()).made();
  }

  Pollination pollination(Code seed, Pollen pollen) {
    return new Pollination(seed, pollen);
  }

  static List<Weighted> weighted(Object... plantsAndWeights) {
    return IntStream.range(0, plantsAndWeights.length / 2)
        .mapToObj(
            i ->
                new Weighted(
                    (Code) plantsAndWeights[2 * i],
                    Fraction.of((Integer) plantsAndWeights[2 * i + 1])))
        .toList();
  }

  /** What a pollination says beyond its parents. */
  final class Pollination {
    private final Code seed;
    private final Pollen pollen;
    private Fraction selfs = Fraction.ZERO;
    private Fraction strays = Fraction.ZERO;
    private Fraction apomixis = Fraction.ZERO;
    private List<Protection> protection = List.of();
    private @Nullable Integer seedSets;
    private @Nullable Integer pollenSets;

    Pollination(Code seed, Pollen pollen) {
      this.seed = seed;
      this.pollen = pollen;
    }

    Pollination shares(String selfed, String strayed, String apomictic) {
      selfs = Fraction.parse(selfed);
      strays = Fraction.parse(strayed);
      apomixis = Fraction.parse(apomictic);
      return this;
    }

    Pollination sets(@Nullable Integer egg, @Nullable Integer grain) {
      seedSets = egg;
      pollenSets = grain;
      return this;
    }

    Pollination unprotected() {
      protection = List.of(Protection.NONE);
      return this;
    }

    Code made() {
      Code code = NextCode.in(store).ofYear(2025);
      say(
          new Pollinated(
              code,
              seed,
              pollen,
              PartialDate.parse("2025"),
              Count.of(3),
              protection,
              selfs,
              strays,
              apomixis,
              seedSets,
              pollenSets,
              false,
              null,
              null));
      return code;
    }
  }

  /** A numbered seedling of a cross or a packet. */
  Code seedling(Code family) {
    Code seedling = NextCode.in(store).seedling(family);
    int number = seedling.part().number();
    say(new Numbered(family, number, number, PartialDate.parse("2025-09-01"), null, null, null));
    return seedling;
  }

  /** A pot of unnumbered seedlings of a cross or a packet. */
  Code pot(Code family) {
    Code pot = NextCode.in(store).group(family);
    say(new Potted(pot, family, PartialDate.parse("2025-08"), Count.about(30), "shelf 2", null));
    return pot;
  }

  Code offset(Code of, boolean doubled) {
    Code code = NextCode.in(store).ofYear(2024);
    say(new Propagated(code, of, null, null, doubled, List.of(), List.of(), null, null));
    return code;
  }

  Code packet(String taxon) {
    Code code = NextCode.in(store).ofYear(2024);
    say(
        new SeedAcquired(
            code,
            Determination.of(taxon),
            Provenance.UNKNOWN,
            PartialDate.parse("2024"),
            Count.about(50),
            null,
            null));
    return code;
  }

  Code harvest(Code cross) {
    Code lot = NextCode.in(store).lot(cross);
    say(
        new Harvested(
            lot,
            PartialDate.parse("2025-07-01"),
            null,
            false,
            Count.of(200),
            null,
            null,
            null,
            null));
    return lot;
  }

  /** A sowing of 50 seeds into so many pots. */
  Code sowing(Code lot, String date, int pots) {
    Code sowing = NextCode.in(store).sowing(lot);
    Code first = NextCode.in(store).group(lot);
    say(
        new Sown(
            sowing,
            lot,
            PartialDate.parse(date),
            Count.of(50),
            null,
            null,
            false,
            null,
            false,
            null,
            null,
            List.of(),
            IntStream.range(0, pots)
                .mapToObj(i -> lot.whole().group(first.part().number() + i))
                .map(pot -> new Sown.Filled(pot, Count.of(25), null))
                .toList(),
            null,
            null));
    return sowing;
  }

  Code found(String unknown, Object... candidatesAndWeights) {
    Code code = NextCode.in(store).ofYear(2026);
    say(
        new TagLost(
            code,
            weighted(candidatesAndWeights),
            Fraction.parse(unknown),
            PartialDate.parse("2025-01-05"),
            null,
            null));
    return code;
  }

  /** Who is in it, as {@code 1/2 Echeveria laui, 1/2 unknown}. */
  String shares(Code code) {
    return shares(AncestryQuestion.of(store).ask(code));
  }

  static String shares(AncestryQuestion.Ancestry ancestry) {
    StringBuilder text = new StringBuilder();
    ancestry
        .taxa()
        .forEach(one -> text.append(one.share()).append(' ').append(one.taxon()).append(", "));
    text.append(ancestry.unknown()).append(" unknown");
    return text.toString().replace(", 0 unknown", "");
  }

  String generation(Code code) {
    return AncestryQuestion.of(store).ask(code).generation();
  }

  String generationInWords(Code code) {
    return AncestryQuestion.of(store).ask(code).generationInWords();
  }
}
