package dev.filial.cli.demo;

import static dev.filial.cli.demo.DemoBook.CLUB;
import static dev.filial.cli.demo.DemoBook.FRIEND;
import static dev.filial.cli.demo.DemoBook.alive;
import static dev.filial.cli.demo.DemoBook.code;
import static dev.filial.cli.demo.DemoBook.up;

import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Provenance;
import java.util.List;
import java.util.Map;

/** A tetraploid, pollen by post, a selfing, the bees, and a cross that failed. */
final class Season2023 {

  private Season2023() {}

  static void write(DemoBook book) {
    book.on("2023-01-14").plant("23-001", tetraploid(), null, CLUB, "bench A").on("2023-01-21");
    book.write(friendsPlant(book))
        .on("2023-02-04")
        .offset("23-003", "22-001")
        .on("2023-02-11")
        .tips("22-009 P1", 21, 0)
        .number("22-009 P1", 1, 4)
        .number("22-009 P2", 5, 6)
        .number("22-010 P1", 1, 3)
        .number("22-011 P1", 1, 2)
        .on("2023-03-05")
        .open("23-004", "22-003", Fraction.ONE)
        .on("2023-03-11")
        .selfing("23-005", "22-004", 4)
        .on("2023-03-18")
        .cross("23-006", "22-002", "22-006", 5)
        .on("2023-03-19")
        .cross("23-007", "22-006", "22-007", 6)
        .on("2023-04-16")
        .write(
            new FruitRecorded(
                code("23-007"),
                book.today(),
                Count.of(0),
                Count.of(6),
                null,
                null,
                "all dropped within a week",
                null))
        .on("2023-05-13")
        .harvest("23-004 H1", "many", 2)
        .harvest("23-005 H1", "70", 2)
        .harvest("23-006 H1", "110", 4)
        .on("2023-05-20")
        .sow("23-004", "~50")
        .sow("23-005", "30")
        .sow("23-006", "40")
        .on("2023-06-10")
        .count(up("23-004 P1", "~30"), up("23-005 P1", "19"), up("23-006 P1", "33"))
        .on("2023-09-09")
        .count(alive("23-004 P1", "12"), alive("23-005 P1", "11"), alive("23-006 P1", "24"));
  }

  private static Determination tetraploid() {
    return new Determination("Echeveria lilacina", null, Map.of(), null, 4);
  }

  private static PlantAcquired friendsPlant(DemoBook book) {
    return new PlantAcquired(
        code("23-002"),
        Determination.of("Echeveria colorata"),
        new Provenance(FRIEND, "JM 19", "XM 044", null),
        book.today(),
        List.of(),
        true,
        null,
        "his plant; its pollen comes by post");
  }
}
