package dev.filial.cli.demo;

import static dev.filial.cli.demo.DemoBook.CLUB;
import static dev.filial.cli.demo.DemoBook.FRIEND;
import static dev.filial.cli.demo.DemoBook.alive;
import static dev.filial.cli.demo.DemoBook.up;

import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.TaxonDeclared;
import dev.filial.core.register.TraitDeclared;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** The first plants, and the first two crosses. */
final class Season2022 {

  private Season2022() {}

  static void write(DemoBook book) {
    taxaAndTraits(book);
    book.on("2022-01-15")
        .plant("22-001", "Echeveria laui", "XM 014", FRIEND, "bench A", "Rosa")
        .plant("22-002", "Echeveria laui", "XM 021", FRIEND, "bench A", "Nebel")
        .on("2022-01-22")
        .plant("22-003", "Echeveria agavoides", "XM 033", CLUB, "bench A", "Anna")
        .plant("22-004", "Echeveria colorata", "XM 040", CLUB, "bench A")
        .plant("22-005", "Echeveria albicans", "XM 052", CLUB, "bench A")
        .on("2022-01-29")
        .plant("22-006", "Echeveria lilacina", "XM 060", FRIEND, "bench A", "Lilo")
        .plant("22-007", "Echeveria agavoides", "XM 035", FRIEND, "bench A")
        .plant("22-008", halfColorata(), null, CLUB, "bench A", "Tombola")
        .on("2022-03-12")
        .cross("22-009", "22-001", "22-003", 6)
        .on("2022-03-19")
        .cross("22-010", "22-004", "22-005", 5)
        .packet("22-011", "Echeveria lilacina", "XM 061", FRIEND, "40")
        .on("2022-04-02")
        .sow("22-011", "40")
        .on("2022-04-24")
        .fruit("22-009", 5, 1)
        .fruit("22-010", 3, 2)
        .on("2022-05-14")
        .harvest("22-009 H1", "180", 5)
        .harvest("22-010 H1", "~90", 3)
        .on("2022-05-21")
        .sow("22-009", "30", "30")
        .sow("22-010", "~40")
        .on("2022-06-11")
        .count(
            up("22-009 P1", "26"),
            up("22-009 P2", "22"),
            up("22-010 P1", "~25"),
            up("22-011 P1", "31"))
        .on("2022-09-17")
        .count(
            alive("22-009 P1", "21"),
            alive("22-009 P2", "15"),
            alive("22-010 P1", "14"),
            alive("22-011 P1", "20"));
  }

  private static void taxaAndTraits(DemoBook book) {
    taxon(book, "Echeveria agavoides", "agavoides", false);
    taxon(book, "Echeveria colorata", "colorata", false);
    taxon(book, "Echeveria elegans", "elegans", true);
    taxon(book, "Echeveria laui", "laui", false);
    taxon(book, "Echeveria lilacina", "lilacina", false);
    book.write(new TraitDeclared("tips", List.of("red", "plain"), null, null, null, null))
        .write(
            new TraitDeclared(
                "farina", List.of(), BigDecimal.ZERO, BigDecimal.valueOf(5), null, null))
        .write(new TraitDeclared("width", List.of(), BigDecimal.ONE, null, "mm", null));
  }

  private static void taxon(
      DemoBook book, String name, String shortName, boolean selfIncompatible) {
    book.write(
        new TaxonDeclared(
            name, List.of(), null, null, shortName, false, Map.of(), selfIncompatible, null));
  }

  private static Determination halfColorata() {
    return new Determination(null, null, Map.of("Echeveria colorata", Fraction.HALF), null, null);
  }
}
