package dev.filial.cli.demo;

import static dev.filial.cli.demo.DemoBook.CLUB;
import static dev.filial.cli.demo.DemoBook.FRIEND;
import static dev.filial.cli.demo.DemoBook.alive;
import static dev.filial.cli.demo.DemoBook.code;
import static dev.filial.cli.demo.DemoBook.up;
import static dev.filial.cli.demo.DemoBook.weighted;

import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.Noted;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Protection;
import dev.filial.core.register.TraitDeclared;
import java.util.List;

/** Third generations and second backcrosses; sown in April, and 26-013 pricked out in June. */
final class Season2026 {

  private Season2026() {}

  static void write(DemoBook book) {
    book.on("2026-01-10")
        .plant("26-001", "Echeveria laui", "XM 015", FRIEND, "bench A")
        .on("2026-01-17")
        .packet("26-002", "Echeveria colorata", "XM 041", CLUB, "30")
        .on("2026-01-24")
        .number("25-001 P1", 1, 2)
        .offset("26-003", "24-007-1")
        .on("2026-02-01")
        .selfing("26-004", "24-001-1", 4)
        .cross("26-005", "24-001-1", "24-001-2", 4)
        .on("2026-02-02")
        .cross("26-006", "24-008-1", "22-002", 5)
        .open("26-007", "24-009-1", Fraction.of(1, 2), weighted("22-001", 1), weighted("22-006", 1))
        .on("2026-02-03")
        .cross("26-008", "24-010-1", "22-001", 3)
        .write(pollenByPost(book))
        .on("2026-02-04")
        .cross("26-010", "22-008", "22-001", 4)
        .cross("26-011", "22-001", "22-010 P1", 4)
        .on("2026-02-05")
        .cross("26-012", "22-006", "22-001", 5)
        .on("2026-02-07")
        .cross("26-013", "24-007-1", "22-001", 8);
    spring(book);
    secondBackcross(book);
    book.on("2026-05-23")
        .cross("26-014", "24-007-2", "22-003", 3)
        .on("2026-05-30")
        .write(
            new Noted(code("24-007-3"), "the whitest of all; flower it next year", book.today()));
    genes(book);
    pricking(book);
    lookedAt(book);
    Diary2026.write(book);
  }

  /**
   * What Klara saw one evening: who the bee of 24-006 was, what 24-001-1 carries, and that
   * something is wrong with 25-004.
   */
  private static void lookedAt(DemoBook book) {
    book.on("2026-06-10")
        .fixed("Echeveria colorata", "tips", "t")
        .tips("24-006 P1", 4, 5)
        .saw("24-006-1", "tips", "plain")
        .saw("24-006-2", "tips", "red")
        .tips("26-005 P1", 10, 9)
        .write(new TraitDeclared("down", List.of("smooth", "downy"), null, null, null, null))
        .gene("down", "D", "d")
        .write(
            new ModelDeclared(
                "down",
                List.of("down"),
                List.of(ModelDeclared.Row.of("D_", "smooth"), ModelDeclared.Row.of("dd", "downy")),
                null))
        .fixed("Echeveria colorata", "down", "d")
        .fixed("Echeveria elegans", "down", "d")
        .saw("22-010-1", "down", "downy")
        .saw("22-010-2", "down", "downy")
        .tally("25-004 P1", "down", "smooth", 7, "downy", 8)
        .tally("25-004 P2", "down", "smooth", 6, "downy", 7);
  }

  /** What Klara makes of her tallies, and two genes of which she only heard. */
  private static void genes(DemoBook book) {
    book.on("2026-06-01")
        .gene("tips", "T", "t")
        .write(
            new ModelDeclared(
                "tips",
                List.of("tips"),
                List.of(ModelDeclared.Row.of("T_", "red"), ModelDeclared.Row.of("tt", "plain")),
                "15 : 5 in 24-001W P1, 14 : 13 in 24-007E P1"))
        .fixed("Echeveria laui", "tips", "t")
        .fixed("Echeveria agavoides", "tips", "T")
        .carries("22-009-1", "tips", "Tt")
        .write(new TraitDeclared("flowers", List.of("pink", "orange"), null, null, null, null))
        .write(LocusDeclared.of("flower", List.of("P", "p")).beside("tips", Fraction.of(1, 5)))
        .write(LocusDeclared.of("S", List.of("S1", "S2", "S3", "S4")).refusing(null, List.of()))
        .carries("22-005", "S", "S1/S2")
        .carries("22-006", "S", "S1/S3")
        .carries("22-004", "S", "S3/S4");
  }

  private static void spring(DemoBook book) {
    book.on("2026-03-28")
        .harvest("26-004 H1", "80", 3)
        .harvest("26-005 H1", "70", 3)
        .harvest("26-006 H1", "110", 4)
        .harvest("26-007 H1", "many", 2)
        .harvest("26-008 H1", "25", 2)
        .harvest("26-009 H1", "60", 3)
        .harvest("26-010 H1", "~40", 2)
        .harvest("26-011 H1", "65", 3)
        .harvest("26-012 H1", "120", 5)
        .harvest("26-013 H1", "120", 4)
        .on("2026-04-03")
        .harvest("26-013 H2", "80", 3)
        .on("2026-04-04")
        .sow("26-004", "30")
        .sow("26-005", "30")
        .sow("26-006", "30")
        .sow("26-007", "~40")
        .sow("26-008", "25")
        .sow("26-009", "30")
        .sow("26-010", "~20")
        .sow("26-011", "30")
        .sow(
            "26-013", List.of("soaked in 3 % hydrogen peroxide for ten minutes"), "20", "20", "20");
  }

  private static void secondBackcross(DemoBook book) {
    book.on("2026-04-11")
        .write(
            new LotSplit(
                code("26-013 H3"), code("26-013 H2"), book.today(), Count.of(20), "seed tin", null))
        .write(
            new FateRecorded(
                List.of(code("26-013 H3")), Fate.GIVEN, book.today(), null, FRIEND, null, null))
        .on("2026-04-25")
        .count(
            up("26-004 P1", "22"),
            up("26-005 P1", "19"),
            up("26-006 P1", "25"),
            up("26-007 P1", "~30"),
            up("26-008 P1", "8"),
            up("26-009 P1", "24"),
            up("26-010 P1", "few"),
            up("26-011 P1", "21"))
        .count(up("26-013 P1", "18"), up("26-013 P2", "15"), up("26-013 P3", "16"))
        .on("2026-05-16")
        .count(alive("26-013 P1", "17"), alive("26-013 P2", "14"), alive("26-013 P3", "12"));
  }

  private static void pricking(DemoBook book) {
    book.on("2026-06-06")
        .tips("26-013 P1", 9, 8)
        .number("26-013 P1", 1, 4)
        .number("26-013 P2", 5, 6)
        .number("26-013 P3", 7, 7)
        .saw("26-013-7", "tips", "red");
  }

  private static Pollinated pollenByPost(DemoBook book) {
    return book.pollinated(
        "26-009",
        "22-001",
        new Pollen.OnePlant(code("23-002")),
        Count.of(4),
        List.of(Protection.EMASCULATED, Protection.BAGGED),
        Fraction.ZERO,
        Fraction.ZERO,
        true);
  }
}
