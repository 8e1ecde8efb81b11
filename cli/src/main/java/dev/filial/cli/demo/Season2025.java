package dev.filial.cli.demo;

import static dev.filial.cli.demo.DemoBook.FRIEND;
import static dev.filial.cli.demo.DemoBook.alive;
import static dev.filial.cli.demo.DemoBook.code;
import static dev.filial.cli.demo.DemoBook.up;
import static dev.filial.cli.demo.DemoBook.weighted;

import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.Named;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.TagLost;
import java.util.List;

/** A mixed packet, a lost tag, pots that never got numbers, and the pick of the backcross. */
final class Season2025 {

  private Season2025() {}

  static void write(DemoBook book) {
    book.on("2025-01-18").write(mixture(book)).on("2025-02-08").write(found(book));
    book.on("2025-02-15").packet("25-003", "Echeveria agavoides", "XM 034", FRIEND, "30");
    numbers(book);
    book.on("2025-03-01")
        .cross("25-004", "22-010-1", "22-010-2", 5)
        .write(
            book.crossing(
                "25-005",
                "22-006",
                new Pollen.Mix(List.of(weighted("22-001", 2), weighted("22-004", 1))),
                4))
        .on("2025-03-08")
        .cross("25-006", "22-009-2", "22-003", 4)
        .on("2025-03-15")
        .sow("25-001", "40")
        .sow("25-003", List.of("bottom heat, 22 degrees"), "15", "15")
        .on("2025-04-05")
        .count(up("25-001 P1", "31"), up("25-003 P1", "11"), up("25-003 P2", "13"))
        .on("2025-05-17")
        .harvest("25-004 H1", "100", 4)
        .harvest("25-005 H1", "~60", 3)
        .harvest("25-006 H1", "75", 4)
        .on("2025-05-24")
        .sow("25-004", "25", "25")
        .sow("25-005", "~30")
        .sow("25-006", "30")
        .on("2025-06-14")
        .count(
            up("25-004 P1", "20"),
            up("25-004 P2", "17"),
            up("25-005 P1", "~20"),
            up("25-006 P1", "24"))
        .on("2025-09-13")
        .count(
            alive("25-001 P1", "22"),
            alive("25-003 P1", "9"),
            alive("25-003 P2", "12"),
            alive("25-004 P1", "16"),
            alive("25-004 P2", "14"),
            alive("25-005 P1", "~15"),
            alive("25-006 P1", "19"))
        .tips("25-006 P1", 19, 0);
    autumn(book);
  }

  private static void numbers(DemoBook book) {
    book.on("2025-02-22")
        .tips("24-001 P1", 15, 5)
        .tips("24-007 P1", 14, 13)
        .number("24-001 P1", 1, 3)
        .number("24-001 P2", 4, 4)
        .number("24-002 P1", 1, 2)
        .number("24-006 P1", 1, 2)
        .number("24-007 P1", 1, 2)
        .write(new Numbered(code("24-007 P1"), 3, 4, book.today(), "tips", "bench B", null))
        .number("24-008 P1", 1, 3)
        .number("24-009 P1", 1, 2)
        .number("24-010 P1", 1, 2)
        .number("24-011 P1", 1, 2)
        .saw("24-001-1", "tips", "red")
        .saw("24-001-2", "tips", "plain")
        .saw("24-001-3", "tips", "red")
        .saw("24-001-4", "tips", "red");
  }

  private static void autumn(DemoBook book) {
    book.on("2025-10-04")
        .saw("24-007-1", "tips", "red")
        .saw("24-007-1", "farina", "4")
        .saw("24-007-1", "width", "92")
        .saw("24-007-2", "farina", "3")
        .saw("24-007-3", "farina", "5")
        .saw("24-007-4", "farina", "1")
        .write(new Named(code("24-007-1"), "Morgenrot", null))
        .write(fate(book, "24-007-1", Fate.KEPT))
        .write(fate(book, "24-007-4", Fate.DISCARDED));
  }

  private static FateRecorded fate(DemoBook book, String plant, Fate fate) {
    return new FateRecorded(List.of(code(plant)), fate, book.today(), null, null, null, null);
  }

  private static LotsMerged mixture(DemoBook book) {
    return new LotsMerged(
        code("25-001"),
        List.of(
            new LotsMerged.Part(code("24-007 H1"), Count.of(60), Fraction.of(6, 11)),
            new LotsMerged.Part(code("24-008 H1"), Count.of(50), Fraction.of(5, 11))),
        book.today(),
        "seed tin",
        null);
  }

  private static TagLost found(DemoBook book) {
    return new TagLost(
        code("25-002"),
        List.of(weighted("22-009-5", 1), weighted("22-009-6", 1)),
        Fraction.ZERO,
        book.today(),
        "bench B",
        "behind the bench, after the storm");
  }
}
