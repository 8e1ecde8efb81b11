package dev.filial.cli.page;

import static dev.filial.cli.page.Bookshelf.plant;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.FruitRecorded;
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
import dev.filial.core.register.Protection;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** An invented cross, in memory, of which everything was recorded that its page tells. */
final class FamilyShelf {

  private FamilyShelf() {}

  static Code code(String text) {
    return Code.parse(text);
  }

  /** A trait that goes by one gene with a dominant allele, the gene being called as the trait. */
  static List<Statement> trait(String name, String dominant, String recessive, String allele) {
    String other = allele.toLowerCase(Locale.ROOT);
    return List.of(
        LocusDeclared.of(name, List.of(allele, other)),
        new TraitDeclared(name, List.of(dominant, recessive), null, null, null, null),
        new ModelDeclared(
            name,
            List.of(name),
            List.of(
                ModelDeclared.Row.of(allele + "_", dominant),
                ModelDeclared.Row.of(other + other, recessive)),
            null));
  }

  static Statement genotype(String plant, String genes, String... loci) {
    return new GenotypeStated(code(plant), List.of(loci), genes, null, null);
  }

  static Statement selfed(String cross, String plant) {
    return pollinated(cross, plant, new Pollen.Itself(), Fraction.ZERO);
  }

  static Statement pollinated(String cross, String seed, Pollen pollen, Fraction strays) {
    return new Pollinated(
        code(cross),
        code(seed),
        pollen,
        PartialDate.parse("20" + cross.substring(0, 2) + "-03-01"),
        Count.of(6),
        List.of(Protection.BAGGED),
        Fraction.ZERO,
        strays,
        Fraction.ZERO,
        null,
        null,
        false,
        null,
        null);
  }

  static Statement sown(String sowing, String lot, String seeds) {
    return new Sown(
        code(sowing),
        code(lot),
        PartialDate.parse("2024-06-01"),
        Count.parse(seeds),
        "pumice",
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

  static Statement counted(String sowing, String day, String up) {
    return new Counted(
        PartialDate.parse(day),
        List.of(new Counted.Reading(code(sowing), Count.parse(up), null)),
        null);
  }

  static Statement tallied(String pot, String trait, Object... statesAndCounts) {
    Map<String, Long> counts = new LinkedHashMap<>();
    for (int i = 0; i < statesAndCounts.length; i += 2) {
      counts.put((String) statesAndCounts[i], ((Integer) statesAndCounts[i + 1]).longValue());
    }
    return new Tallied(code(pot), trait, counts, PartialDate.parse("2024-12-01"), null);
  }

  static Statement harvested(String lot, int seeds) {
    return new Harvested(
        code(lot),
        PartialDate.parse("2024-05-01"),
        Count.of(4),
        false,
        Count.of(seeds),
        null,
        null,
        null,
        null);
  }

  /** Edges and wax by one gene each, a third trait without a model, and a plant of known genes. */
  static List<Statement> genes(String name) {
    List<Statement> all = new ArrayList<>();
    all.addAll(trait("edge", "red", "green", "E"));
    all.addAll(trait("wax", "waxy", "bare", "W"));
    all.add(new TraitDeclared("bloom", List.of("pink", "coral"), null, null, null, null));
    all.add(plant("24-001", "Echeveria laui", name));
    all.add(genotype("24-001", "Ee Ww", "edge", "wax"));
    return all;
  }

  /** That plant selfed, sown three times, counted and tallied. */
  static List<Statement> everything() {
    List<Statement> all = new ArrayList<>(genes("Rosa"));
    all.add(selfed("24-010", "24-001"));
    all.add(
        new FruitRecorded(
            code("24-010"), null, Count.of(4), Count.of(1), null, Count.of(1), null, null));
    all.add(harvested("24-010 H1", 700));
    all.add(sown("24-010 S1", "24-010 H1", "40"));
    all.add(sown("24-010 S2", "24-010 H1", "60"));
    all.add(sown("24-010 S3", "24-010 H1", "~90"));
    all.add(counted("24-010 S1", "2024-06-08", "4"));
    all.add(counted("24-010 S1", "2024-06-20", "30"));
    all.add(counted("24-010 S2", "2024-06-08", "20"));
    all.add(counted("24-010 S2", "2024-06-20", "50"));
    all.add(counted("24-010 S3", "2024-06-20", "60"));
    all.add(tallied("24-010 S1", "edge", "red", 21, "green", 7));
    all.add(tallied("24-010 S1", "bloom", "pink", 3, "coral", 2));
    all.add(new Numbered(code("24-010 S2"), 1, 2, null, null, null, null));
    all.add(new Observed(code("24-010-1"), "edge", "red", null, null, null));
    all.add(new FateRecorded(List.of(code("24-010-1")), Fate.KEPT, null, null, null, null, null));
    all.add(
        new FateRecorded(List.of(code("24-010-2")), Fate.DISCARDED, null, null, null, null, null));
    all.add(selfed("25-001", "24-010-1"));
    return all;
  }

  /** A tetraploid of two alleles each, selfed, of which nobody said how its chromosomes pair. */
  static List<Statement> tetraploid() {
    List<Statement> register = new ArrayList<>(trait("edge", "red", "green", "E"));
    register.add(
        new PlantAcquired(
            code("24-001"),
            new Determination("Echeveria lilacina", null, Map.of(), null, 4),
            Provenance.UNKNOWN,
            null,
            List.of(),
            false,
            null,
            null));
    register.add(genotype("24-001", "EEee", "edge"));
    register.add(selfed("24-010", "24-001"));
    return register;
  }
}
