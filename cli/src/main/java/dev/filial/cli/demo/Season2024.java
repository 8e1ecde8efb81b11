package dev.filial.cli.demo;

import static dev.filial.cli.demo.DemoBook.CLUB;
import static dev.filial.cli.demo.DemoBook.FRIEND;
import static dev.filial.cli.demo.DemoBook.GROWER;
import static dev.filial.cli.demo.DemoBook.alive;
import static dev.filial.cli.demo.DemoBook.code;
import static dev.filial.cli.demo.DemoBook.up;
import static dev.filial.cli.demo.DemoBook.weighted;

import dev.filial.core.number.Fraction;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Protection;
import dev.filial.core.register.TaxonRenamed;
import java.util.List;

/** The first hybrids flower: F2, backcrosses, a three-way and a double cross, 4x × 2x. */
final class Season2024 {

  private Season2024() {}

  static void write(DemoBook book) {
    book.on("2024-02-03")
        .number("23-004 P1", 1, 2)
        .number("23-005 P1", 1, 2)
        .number("23-006 P1", 1, 2)
        .saw("22-009-1", "tips", "red")
        .saw("22-009-1", "farina", "3")
        .saw("22-009-1", "width", "85")
        .saw("22-009-2", "tips", "red")
        .saw("22-009-2", "farina", "2")
        .on("2024-02-10")
        .selfing("24-001", "22-009-1", 6)
        .cross("24-002", "22-009-1", "22-009-2", 3)
        .on("2024-02-17")
        .plant("24-003", Determination.of("Echeveria cf. agavoides"), null, CLUB, "bench A")
        .packet("24-004", "Echeveria elegans", "XM 053", CLUB, "~60")
        .on("2024-02-24")
        .write(unprotected(book));
    crosses(book);
    corrections(book);
    summer(book);
  }

  private static void crosses(DemoBook book) {
    book.on("2024-03-02");
    long guess = book.next();
    book.open("24-006", "22-009-3", Fraction.of(1, 4), weighted("22-003", 2), weighted("22-004", 1))
        .write(new Doubted(guess, GROWER, "nobody watched who came"))
        .on("2024-03-03")
        .cross("24-007", "22-009-1", "22-001", 6)
        .cross("24-008", "22-009-1", "22-002", 4)
        .on("2024-03-10")
        .cross("24-010", "22-009-4", "22-010-1", 4)
        .on("2024-03-16")
        .cross("24-011", "23-001", "22-001", 5);
  }

  /** The pollen parent of 24-009 was misread, and 22-005 is no species of its own. */
  private static void corrections(DemoBook book) {
    book.on("2024-03-17");
    long mistake = book.next();
    Pollinated meant = book.crossing("24-009", "22-009-2", new Pollen.OnePlant(code("22-006")), 4);
    book.cross("24-009", "22-009-2", "22-007", 4)
        .on("2024-03-18")
        .write(new Amended(mistake, meant, "misread the tag: it was Lilo"))
        .on("2024-04-13")
        .write(
            new TaxonRenamed(
                "Echeveria albicans", "Echeveria elegans", "Jonas has it from the club"));
  }

  private static void summer(DemoBook book) {
    book.on("2024-04-14")
        .fruit("24-007", 5, 1)
        .fruit("24-011", 1, 4)
        .on("2024-05-18")
        .harvest("24-001 H1", "150", 6)
        .harvest("24-002 H1", "60", 2)
        .harvest("24-005 H1", "~80", 4)
        .harvest("24-006 H1", "70", 3)
        .harvest("24-007 H1", "120", 5)
        .harvest("24-008 H1", "90", 4)
        .harvest("24-009 H1", "40", 3)
        .harvest("24-010 H1", "55", 3)
        .harvest("24-011 H1", "9", 1)
        .on("2024-05-25")
        .sow("24-001", "30", "30")
        .sow("24-002", "30")
        .sow("24-004", "~20", "~20")
        .sow("24-005", "30")
        .sow("24-006", "30")
        .sow("24-007", "60")
        .sow("24-008", "40")
        .sow("24-009", "20")
        .sow("24-010", "30")
        .sow("24-011", "9")
        .on("2024-06-01")
        .write(
            new FateRecorded(
                List.of(code("22-010-3")), Fate.GIVEN, book.today(), null, FRIEND, null, null))
        .on("2024-06-15")
        .count(
            up("24-001 P1", "24"),
            up("24-001 P2", "26"),
            up("24-002 P1", "17"),
            up("24-004 P1", "14"),
            up("24-004 P2", "11"),
            up("24-005 P1", "22"),
            up("24-006 P1", "18"),
            up("24-007 P1", "41"),
            up("24-008 P1", "29"),
            up("24-009 P1", "12"),
            up("24-010 P1", "16"),
            up("24-011 P1", "3"))
        .on("2024-07-06")
        .write(
            new FateRecorded(
                List.of(code("22-007")),
                Fate.DEAD,
                book.today(),
                null,
                null,
                "rot after a wet June",
                null))
        .on("2024-09-21")
        .count(
            alive("24-001 P1", "20"),
            alive("24-001 P2", "21"),
            alive("24-002 P1", "14"),
            alive("24-004 P1", "12"),
            alive("24-004 P2", "9"),
            alive("24-005 P1", "~15"),
            alive("24-006 P1", "12"),
            alive("24-007 P1", "27"),
            alive("24-008 P1", "22"),
            alive("24-009 P1", "9"),
            alive("24-010 P1", "11"),
            alive("24-011 P1", "2"));
  }

  /** In a hurry, and on open flowers. */
  private static Pollinated unprotected(DemoBook book) {
    return book.pollinated(
        "24-005",
        "22-001",
        new Pollen.OnePlant(code("22-006")),
        Count.of(4),
        List.of(Protection.NONE),
        Fraction.of(1, 10),
        Fraction.of(1, 20),
        false);
  }
}
