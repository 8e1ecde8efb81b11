package dev.filial.cli.demo;

import static dev.filial.cli.demo.DemoBook.FRIEND;
import static dev.filial.cli.demo.DemoBook.code;

import dev.filial.core.name.Code;
import dev.filial.core.register.Bloom;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.Observed;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlaceDeclared;
import dev.filial.core.register.PollenKept;
import dev.filial.core.register.Promised;
import dev.filial.core.register.SeedKept;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Tended;
import dev.filial.core.register.Treated;
import dev.filial.core.register.Treatment;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The pencilled sheets of the spring of 2026, which Klara typed in on one evening in June. */
final class Diary2026 {

  private final DemoBook book;

  private Diary2026(DemoBook book) {
    this.book = book;
  }

  static void write(DemoBook book) {
    Diary2026 diary = new Diary2026(book.on("2026-06-11"));
    diary.places();
    diary.flowers();
    diary.fruit();
    diary.tin();
    diary.sowings();
    diary.widths();
  }

  private static @Nullable PartialDate day(String text) {
    return PartialDate.parse(text);
  }

  private static List<Code> codes(String... texts) {
    return Arrays.stream(texts).map(DemoBook::code).toList();
  }

  private void places() {
    book.write(new PlaceDeclared("bench A", "balcony", null, null))
        .write(new PlaceDeclared("bench B", "balcony", null, null))
        .write(new PlaceDeclared("shelf", "kitchen", null, "under the lamps"))
        .write(new PlaceDeclared("bag 1", "shelf", null, null));
  }

  private void flowers() {
    book.write(new Flowered(codes("22-003"), Bloom.OPEN, day("2026-04-28"), null))
        .write(new Flowered(codes("22-003"), Bloom.OVER, day("2026-05-16"), null))
        .write(new Flowered(codes("22-006"), Bloom.OPEN, day("2026-05-12"), null))
        .write(new Flowered(codes("22-006"), Bloom.OVER, day("2026-06-07"), null))
        .write(new Flowered(codes("24-007-2"), Bloom.OPEN, day("2026-05-22"), "its first"))
        .write(new Flowered(codes("22-004", "22-001"), Bloom.OPEN, day("2026-06-05"), null))
        .write(pollen("23-002", PollenKept.Step.GATHERED, null, "2026-01-30", FRIEND, null))
        .write(pollen("23-002", PollenKept.Step.USED_UP, null, "2026-02-03", null, null))
        .write(pollen("22-003", PollenKept.Step.GATHERED, null, "2026-05-10", null, "silica gel"))
        .write(pollen("22-003", PollenKept.Step.FROZEN, null, "2026-05-12", null, "freezer"));
  }

  private static PollenKept pollen(
      String plant,
      PollenKept.Step step,
      @Nullable String gathered,
      String day,
      @Nullable String from,
      @Nullable String place) {
    return new PollenKept(
        code(plant), step, gathered == null ? null : day(gathered), day(day), from, place, null);
  }

  private void fruit() {
    book.write(fruit("26-006", 4, 1, null, null))
        .write(fruit("26-008", 2, 1, null, null))
        .write(fruit("26-010", 2, 1, null, 1))
        .write(fruit("26-011", 4, 0, 1, null))
        .write(fruit("26-012", 5, 0, null, null));
  }

  private static FruitRecorded fruit(
      String cross, int set, int failed, @Nullable Integer dropped, @Nullable Integer eaten) {
    return new FruitRecorded(
        code(cross),
        day("2026-02-20"),
        Count.of(set),
        Count.of(failed),
        dropped == null ? null : Count.of(dropped),
        eaten == null ? null : Count.of(eaten),
        null,
        null);
  }

  private void tin() {
    book.write(
            new SeedKept(
                codes("26-006 H1"),
                true,
                Count.of(80),
                BigDecimal.valueOf(6),
                null,
                "paper, over silica gel",
                null,
                day("2026-04-12"),
                null))
        .write(
            new SeedKept(
                codes("26-005 H1", "26-009 H1"),
                true,
                null,
                null,
                null,
                "paper, over silica gel",
                null,
                day("2026-04-12"),
                null))
        .write(new Promised(codes("26-006 H1"), Count.of(15), FRIEND, day("2026-04-12"), null));
  }

  /** One lot in two pots of a bag, the one soaked and the other not; and one that does not come. */
  private void sowings() {
    book.write(sown("26-006 S2", "26-006 H1", "2026-05-02", "26-006 P2", true))
        .write(sown("26-006 S3", "26-006 H1", "2026-05-02", "26-006 P3", true))
        .write(
            new Treated(
                codes("26-006 S3"),
                Treatment.SOAK,
                "tap water",
                "one night",
                null,
                day("2026-05-02"),
                null))
        .write(sown("26-011 S2", "26-011 H1", "2026-05-16", "26-011 P2", false))
        .write(counts("2026-05-09", up("26-006 P2", 3, 3), up("26-006 P3", 7, 7)))
        .write(counts("2026-05-13", up("26-006 P2", 8, 8), up("26-006 P3", 13, 13)))
        .write(counts("2026-05-20", up("26-006 P2", 11, 11), up("26-006 P3", 16, 16)))
        .write(
            new Treated(
                codes("26-006 P2", "26-006 P3"),
                Treatment.FUNGICIDE,
                "the blue bottle",
                "1 in 500",
                14,
                day("2026-05-21"),
                null))
        .write(
            new FateRecorded(
                codes("26-006 P3"),
                Fate.DEAD,
                day("2026-05-24"),
                Count.of(1),
                null,
                "damping off",
                null))
        .write(counts("2026-05-30", up("26-006 P2", 12, 11), up("26-006 P3", 16, 14)))
        .write(counts("2026-06-06", up("26-011 P2", 0, 0)))
        .write(
            new Tended(
                codes("26-004 P1"), Tended.Care.HARDENED_OFF, null, null, day("2026-06-06"), null))
        .write(
            new Tended(
                codes("24-007-1"),
                Tended.Care.POTTED_ON,
                "pumice and loam",
                "9 cm pot",
                day("2026-05-01"),
                null));
  }

  private static Sown sown(String sowing, String lot, String day, String pot, boolean bag) {
    return new Sown(
        code(sowing),
        code(lot),
        day(day),
        Count.of(20),
        DemoBook.MEDIUM,
        null,
        true,
        bag ? "bag" : "tray",
        bag,
        BigDecimal.valueOf(24),
        BigDecimal.valueOf(14),
        List.of(),
        List.of(new Sown.Filled(code(pot), Count.of(20), null)),
        bag ? "bag 1" : "shelf",
        null);
  }

  private static Counted.Reading up(String pot, int up, int alive) {
    return new Counted.Reading(code(pot), Count.of(up), Count.of(alive));
  }

  private static Counted counts(String day, Counted.Reading... readings) {
    return new Counted(day(day), List.of(readings), null);
  }

  private void widths() {
    width("24-007-1", "2025-10-05", "71");
    width("24-007-2", "2025-10-05", "64");
    width("24-007-3", "2025-10-05", "68");
    width("24-007-4", "2025-10-05", "55");
    width("24-007-1", "2026-06-07", "98");
    width("24-007-2", "2026-06-07", "83");
    width("24-007-3", "2026-06-07", "90");
    width("24-007-4", "2026-06-07", "74");
    width("22-001", "2026-06-07", "110");
    width("24-008-1", "2026-06-07", "88");
    width("24-008-2", "2026-06-07", "95");
    width("24-008-3", "2026-06-07", "79");
    width("22-002", "2026-06-07", "104");
  }

  private void width(String plant, String day, String millimetres) {
    book.write(new Observed(code(plant), "width", millimetres, day(day), null, null));
  }
}
