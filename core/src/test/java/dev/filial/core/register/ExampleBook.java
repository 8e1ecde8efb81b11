package dev.filial.core.register;

import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.on;

import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A short book with one entry of each kind: the examples of the handbook. All of it is invented.
 */
final class ExampleBook {

  private ExampleBook() {}

  private static <V> Map<String, V> ordered(String a, V x, String b, V y) {
    Map<String, V> map = new LinkedHashMap<>();
    map.put(a, x);
    map.put(b, y);
    return map;
  }

  /** The statements, in an order that a register accepts. */
  static List<Statement> statements() {
    Fraction none = Fraction.ZERO;
    return List.of(
        new RegisterOpened("KB", "Klara Beispiel", "the balcony, both shelves"),
        new TaxonDeclared(
            "Echeveria ×balconis",
            List.of("Echeveria 'Balcony'"),
            null,
            2,
            "balconis",
            true,
            ordered("Echeveria laui", Fraction.HALF, "Echeveria agavoides", Fraction.of(1, 4)),
            true,
            "named from one plant"),
        new TaxonRenamed("Echeveria hortensis", "Echeveria laui", "a garden name"),
        new PlantAcquired(
            code("24-001"),
            Determination.of("Echeveria laui"),
            new Provenance("Otto Muster", "L-7", "OM 112", "slope above the mill"),
            on("2024-05"),
            List.of("Old Blue"),
            false,
            "shelf 1",
            "two offsets"),
        Bench.acquired("24-002", "Echeveria agavoides", "2024-05-20"),
        new SeedAcquired(
            code("24-003"),
            new Determination(
                "Echeveria ×balconis",
                "Balcony",
                ordered("Echeveria laui", Fraction.HALF, "Echeveria agavoides", Fraction.HALF),
                "F2",
                2),
            new Provenance("Otto Muster", null, null, null),
            on("2024"),
            Count.about(50),
            "seed box",
            "swapped"),
        new Pollinated(
            code("25-001"),
            code("24-001"),
            new Pollen.OnePlant(code("24-002")),
            on("2025-03-04"),
            Count.of(6),
            List.of(Protection.EMASCULATED, Protection.BAGGED),
            Fraction.of(1, 50),
            none,
            none,
            1,
            1,
            true,
            "shelf 1",
            "morning"),
        new FruitRecorded(
            code("25-001"),
            on("2025-04-02"),
            Count.of(4),
            Count.of(2),
            Count.of(1),
            Count.of(1),
            "dried up",
            "hot week"),
        new Harvested(
            code("25-001 H1"),
            on("2025-06-01"),
            Count.of(4),
            true,
            Count.unknown(),
            new BigDecimal("12.5"),
            BigDecimal.valueOf(16000),
            "seed box",
            "brown capsules"),
        new LotSplit(
            code("25-001 H2"),
            code("25-001 H1"),
            on("2025-06-03"),
            Count.of(40),
            "letter",
            "for a swap"),
        new LotsMerged(
            code("25-002"),
            List.of(
                new LotsMerged.Part(code("25-001 H2"), Count.of(20), Fraction.of(2, 3)),
                new LotsMerged.Part(code("24-003 H1"), Count.about(10), Fraction.of(1, 3))),
            on("2025-06-04"),
            "seed box",
            "fell into one bag"),
        new Sown(
            code("25-001 S1"),
            code("25-001 H1"),
            on("2025-06-10"),
            Count.of(80),
            "pumice",
            "glass",
            false,
            "tray",
            true,
            new BigDecimal("24"),
            new BigDecimal("12"),
            List.of("soaked one night"),
            List.of(
                new Sown.Filled(code("25-001 P1"), Count.of(40), "window"),
                new Sown.Filled(code("25-001 P2"), Count.of(40), null)),
            "bench",
            "warm"),
        new Counted(
            on("2025-07-01"),
            List.of(
                new Counted.Reading(code("25-001 P1"), Count.of(31), Count.of(30)),
                new Counted.Reading(code("25-001 P2"), Count.about(25), null)),
            "damping off in P1"),
        new Potted(
            code("25-001 P3"),
            code("25-001 P1"),
            on("2025-09-15"),
            Count.of(10),
            "shelf 2",
            "the strongest"),
        new TraitDeclared(
            "edge", List.of("red", "green"), null, null, null, "of the leaf, in full sun"),
        new Numbered(code("25-001 P3"), 1, 4, on("2026-04-01"), "edge", "shelf 2", "the red ones"),
        new Propagated(
            code("26-001"),
            code("24-001"),
            "offset",
            on("2026-04-02"),
            false,
            List.of("edge"),
            List.of("Old Blue two"),
            "shelf 1",
            "rooted in water"),
        new FateRecorded(
            List.of(code("25-001 P1")),
            Fate.GIVEN,
            on("2026-05-01"),
            Count.of(3),
            "Otto Muster",
            "swap",
            "by post"),
        new Moved(
            List.of(code("24-001"), code("25-001-1")), "cold frame", on("2026-05-02"), "for rest"),
        new Named(code("25-001-1"), "Little Ember", "working name"),
        new Observed(
            code("25-001-1"),
            "edge",
            "red",
            on("2026-06-01"),
            new Photograph("pictures/ember.jpg", "0123456789abcdef".repeat(4)),
            "after a dry month"),
        new Tallied(
            code("25-001 P1"),
            "edge",
            ordered("red", 11L, "green", 5L),
            on("2026-06-01"),
            "by daylight"),
        new TagLost(
            code("26-002"),
            List.of(
                new Weighted(code("24-002"), Fraction.of(2)),
                new Weighted(code("25-001 P2"), Fraction.ONE)),
            Fraction.of(1, 10),
            on("2026-06-02"),
            "under the bench",
            "fell in a storm"),
        new Joined(code("24-002"), code("26-002"), "the scar on the stem is the same"),
        new Parted(
            code("24-001"),
            code("26-003"),
            List.of(19L),
            Determination.of("Echeveria laui"),
            on("2026-06-03"),
            "two rosettes that never touched"),
        new Doubted(4, "Klara Beispiel", "half the label was gone"),
        new Noted(code("24-001"), "first flower stalk", on("2026-06-04")),
        new Amended(
            27,
            new Noted(code("24-001"), "second flower stalk", on("2026-06-04")),
            "the first was last year"),
        new LocusDeclared(
            "S",
            List.of("S1", "S2", "Sf"),
            false,
            "4",
            new BigDecimal("12.5"),
            null,
            null,
            true,
            Fraction.of(1, 50),
            List.of("Sf"),
            Map.of("S2", Fraction.of(9, 10)),
            Map.of("Sf", Fraction.of(1, 2)),
            "from crosses of sisters"),
        LocusDeclared.ofCytoplasm("stripes", List.of("green", "white")),
        Bench.gene("edge", "R", "r"),
        LocusDeclared.of("wax", List.of("W", "w")).beside("edge", Fraction.of(1, 10)),
        new ModelDeclared(
            "edge",
            List.of("edge"),
            List.of(
                new ModelDeclared.Row(
                    "R_", ordered("red", Fraction.of(9, 10), "green", Fraction.of(1, 10)), none),
                new ModelDeclared.Row("rr", Map.of("green", Fraction.ONE), Fraction.of(1, 5))),
            "pale in shade"),
        new ProfileStated(
            "Echeveria agavoides",
            Map.of("edge", ordered("R", Fraction.of(3, 4), "r", Fraction.of(1, 4))),
            ProfileStated.Pairing.TETRASOMIC,
            Fraction.of(1, 7),
            List.of(new BigDecimal("120"), new BigDecimal("100"), new BigDecimal("87.5")),
            "seen in twelve plants"),
        new GenotypeStated(
            code("24-002"),
            List.of("edge"),
            "Rr",
            on("2026-06-05"),
            "half of its seedlings are green"),
        new PopulationDeclared(List.of("OM 112", "JB 7"), "the same slope, a year later"),
        new Sown(
            code("24-003 S1"),
            code("24-003 H1"),
            on("2026-06-06"),
            Count.of(12),
            null,
            null,
            true,
            null,
            false,
            null,
            null,
            List.of(),
            List.of(),
            null,
            null),
        new Flowered(
            List.of(code("24-001"), code("25-001-2")), Bloom.OPEN, on("2026-06-06"), "two stalks"),
        new PollenKept(
            code("24-001"),
            PollenKept.Step.GATHERED,
            null,
            on("2026-06-06"),
            "Otto Muster",
            "letter box",
            "a pinch"),
        new PollenKept(
            code("24-001"),
            PollenKept.Step.FROZEN,
            on("2026-06-06"),
            on("2026-06-07"),
            null,
            "freezer",
            null),
        new SeedKept(
            List.of(code("25-001 H1")),
            true,
            Count.of(60),
            new BigDecimal("3.75"),
            BigDecimal.valueOf(16000),
            "paper, over silica gel",
            "seed box",
            on("2026-06-08"),
            "chaff blown off"),
        new Promised(
            List.of(code("25-001 H1")), Count.of(20), "Otto Muster", on("2026-06-08"), "by autumn"),
        new Treated(
            List.of(code("25-001 P1"), code("25-001 P2")),
            Treatment.FUNGICIDE,
            "the blue bottle",
            "1 in 500",
            14,
            on("2026-06-09"),
            "by spray"),
        new Tended(
            List.of(code("25-001 P3")),
            Tended.Care.POTTED_ON,
            "pumice and loam",
            "7 cm pot",
            on("2026-06-10"),
            "roots at the rim"),
        new PlaceDeclared("shelf 2", "balcony", on("2026-06-10"), "the lower one"),
        new IntervalStated(Interval.RIPENING, 50, "Echeveria", "a warm balcony"),
        new Photographed(
            List.of(code("25-001 P3")),
            new Photograph("pictures/p3.jpg", "0123456789abcdef".repeat(4)),
            on("2026-06-10"),
            "before the rain"),
        new Joined(
            code("24-001"), code("26-003"), "one root", Fate.DEAD, PartialDate.parse("2026-08")));
  }
}
