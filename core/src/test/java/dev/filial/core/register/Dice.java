package dev.filial.core.register;

import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.on;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A grower who writes whatever comes to mind about the few plants there are: much of it is refused,
 * and much of it is amended afterwards.
 */
final class Dice {

  private static final List<String> TAXA =
      List.of("Echeveria prima", "Echeveria altera", "Echeveria tertia", "Echeveria quarta");
  private static final List<String> GENES = List.of("wax", "scent", "tips", "lip");
  private static final List<String> DATES =
      Arrays.asList(
          null, null, "2024", "2025-02", "2025-06-01", "2025-06-02", "2026-01", "2026-07-09");
  private static final List<String> COUNTS = List.of("0", "2", "3", "5", "8", "~4", "few", "?");

  private final RegisterView book;
  private final Random random;

  /** Dice for a register; the seed decides all throws. */
  Dice(RegisterView book, long seed) {
    this.book = book;
    this.random = new Random(seed);
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private String taxon() {
    return one(TAXA);
  }

  private @Nullable PartialDate date() {
    return on(one(DATES));
  }

  private Count count() {
    return Count.parse(one(COUNTS));
  }

  private Code fresh() {
    return Code.of(24 + random.nextInt(2), 1 + random.nextInt(9));
  }

  private Code any(Item.Kind first, Item.Kind... others) {
    Set<Item.Kind> kinds = EnumSet.of(first, others);
    List<Item> items = book.items(kinds);
    return items.isEmpty() || random.nextInt(20) == 0 ? fresh() : one(items).code();
  }

  private Code parent() {
    return any(Item.Kind.PLANT, Item.Kind.SEEDLING, Item.Kind.SEEDLING, Item.Kind.GROUP);
  }

  private Code single() {
    return any(Item.Kind.PLANT, Item.Kind.SEEDLING);
  }

  private Code family() {
    return any(Item.Kind.CROSS, Item.Kind.SEED, Item.Kind.MIXTURE).whole();
  }

  private int suffix() {
    return 1 + random.nextInt(4);
  }

  private @Nullable Integer sets() {
    return random.nextInt(4) == 0 ? Integer.valueOf(1 + random.nextInt(3)) : null;
  }

  private long entry() {
    // Late entries oftener: those are undone.
    long back = Math.min(random.nextInt(12), random.nextInt(12));
    return Math.max(1, book.size() - back);
  }

  /** Something to say. */
  Statement statement() {
    int roll = random.nextInt(10);
    if (roll < 3) {
      boolean strike = random.nextInt(3) > 0;
      long entry = entry();
      return new Amended(entry, strike ? null : replacement(entry), "thought again");
    }
    return plain();
  }

  /** Mostly of the same kind as what is replaced, about the same code. */
  private Statement replacement(long entry) {
    Statement now = book.effective(entry).orElse(null);
    for (int i = 0; i < 200; i++) {
      Statement next = plain();
      if (now == null
          || random.nextInt(40) == 0
          || (next.getClass() == now.getClass() && alike(next, now))) {
        return next;
      }
    }
    return plain();
  }

  private boolean alike(Statement next, Statement now) {
    List<Code> given = Introduction.codes(now);
    return given.isEmpty()
        || random.nextInt(20) == 0
        || Introduction.codes(next).contains(given.get(0));
  }

  private Statement plain() {
    return switch (random.nextInt(32)) {
      case 0, 1 -> Bench.acquired(fresh().text(), taxon(), text(date()));
      case 2, 3, 4 -> cross();
      case 5 ->
          new SeedAcquired(
              fresh(), Determination.of(taxon()), Provenance.UNKNOWN, date(), count(), null, null);
      case 6 ->
          Bench.harvest(
              any(Item.Kind.CROSS).whole().lot(suffix()).text(), text(date()), count().toString());
      case 7 -> {
        Code from = any(Item.Kind.LOT);
        yield new Sown(
            from.whole().sowing(suffix()),
            from.isLot() ? from : from.lot(1),
            date(),
            count(),
            null,
            null,
            false,
            null,
            false,
            null,
            null,
            List.of(),
            random.nextBoolean()
                ? List.of()
                : List.of(new Sown.Filled(from.whole().group(suffix()), Count.unknown(), null)),
            null,
            null);
      }
      case 8 -> {
        Code from = any(Item.Kind.SOWING, Item.Kind.GROUP, Item.Kind.CROSS);
        yield new Potted(from.whole().group(suffix() + 4), from, date(), count(), "shelf", null);
      }
      case 9, 10 -> {
        Code from = any(Item.Kind.CROSS, Item.Kind.GROUP, Item.Kind.SOWING, Item.Kind.SEED);
        int first = 1 + random.nextInt(6);
        String picked = random.nextInt(4) == 0 ? "edge" : null;
        yield new Numbered(from, first, first + random.nextInt(3), date(), picked, null, null);
      }
      case 11, 12 ->
          new Propagated(
              fresh(),
              single(),
              null,
              date(),
              random.nextInt(6) == 0,
              List.of(),
              random.nextBoolean() ? List.of("Kleine Rote") : List.of(),
              null,
              null);
      case 13 -> {
        Code code = any(Item.Kind.GROUP, Item.Kind.LOT, Item.Kind.PLANT, Item.Kind.SEEDLING);
        boolean some = (code.isGroup() || code.isLot()) && random.nextBoolean();
        yield new FateRecorded(
            List.of(code),
            one(List.of(Fate.DEAD, Fate.GIVEN, Fate.DISCARDED)),
            date(),
            some ? count() : null,
            null,
            null,
            null);
      }
      case 14, 15 -> {
        Code code = any(Item.Kind.GROUP, Item.Kind.SOWING);
        Code where = code.isWhole() ? code.group(1) : code;
        yield random.nextBoolean()
            ? Bench.alive(where.text(), text(date()), count().toString())
            : Bench.germinated(where.text(), text(date()), count().toString());
      }
      case 16, 17 -> {
        Code keep = single();
        Code other = single();
        Code second = keep.equals(other) ? fresh() : other;
        yield one(List.of(true, false))
            ? new Joined(keep, second, "one stem", Fate.DEAD, date())
            : new Joined(keep, second, "one stem");
      }
      case 18 -> parting();
      case 19 -> new Doubted(entry(), "Klara", null);
      case 20 -> {
        Code one = parent();
        Code other = parent();
        yield one.equals(other)
            ? Bench.found(fresh().text(), text(date()), one.text())
            : Bench.found(fresh().text(), text(date()), one.text(), other.text());
      }
      case 21 -> {
        String name = taxon();
        String other = taxon();
        yield new TaxonDeclared(
            name,
            random.nextBoolean() || other.equals(name) ? List.of() : List.of(other),
            random.nextInt(3) > 0 || other.equals(name) ? null : other,
            random.nextBoolean() ? null : Integer.valueOf(2 + random.nextInt(3)),
            null,
            false,
            Map.of(),
            random.nextBoolean(),
            null);
      }
      case 22 -> {
        String from = taxon();
        String to = taxon();
        yield from.equals(to) ? new Noted(single(), "dry", null) : new TaxonRenamed(from, to, null);
      }
      case 23 ->
          random.nextBoolean()
              ? new TraitDeclared(
                  "edge",
                  List.of("red", random.nextBoolean() ? "green" : "white"),
                  null,
                  null,
                  null,
                  null)
              : new TraitDeclared("width", List.of(), BigDecimal.ONE, null, "mm", null);
      case 24 -> new Observed(single(), "edge", one(List.of("red", "green")), date(), null, null);
      case 25 -> new Named(single(), one(List.of("Kleine Rote", "kleine rote", "Blasse")), null);
      case 26, 27 -> gene();
      case 28 -> {
        String name = one(GENES);
        String other = one(GENES);
        List<String> genes = name.equals(other) ? List.of(name) : List.of(name, other);
        String rows =
            String.join("_ ", genes.stream().map(gene -> gene.substring(0, 1)).toList()) + "_";
        yield new ModelDeclared(
            "edge",
            genes,
            List.of(
                ModelDeclared.Row.of(rows.toUpperCase(Locale.ROOT), "red"),
                ModelDeclared.Row.of("*", random.nextBoolean() ? "green" : "white")),
            null);
      }
      case 29 -> Bench.profile(taxon(), one(GENES), Map.of("W", Fraction.ONE));
      case 30 -> {
        Code code = single();
        yield switch (random.nextInt(4)) {
          case 0 -> Bench.genotype(code.text(), "Ww", "wax");
          case 1 -> Bench.genotype(code.text(), "WWww", "wax");
          case 2 -> Bench.genotype(code.text(), "WS/ws", "wax", "scent");
          default -> Bench.genotype(code.text(), "Ww Ss", "wax", "scent");
        };
      }
      default -> mixture();
    };
  }

  private LocusDeclared gene() {
    String name = one(GENES);
    String letter = name.substring(0, 1);
    LocusDeclared plain =
        random.nextInt(5) == 0
            ? Bench.cytoplasmic(name, letter.toUpperCase(Locale.ROOT), letter)
            : Bench.gene(name, letter.toUpperCase(Locale.ROOT), letter);
    String other = one(GENES);
    return switch (random.nextInt(4)) {
      case 0 -> Bench.at(one(List.of("1", "2")), "" + random.nextInt(30), plain);
      case 1, 2 ->
          other.equals(name) ? plain : Bench.beside(other, Fraction.of(1, 2 + suffix()), plain);
      default -> plain;
    };
  }

  private static @Nullable String text(@Nullable PartialDate date) {
    return date == null ? null : date.toString();
  }

  private Statement cross() {
    Code one = parent();
    Code other = parent();
    Pollen pollen =
        switch (random.nextInt(5)) {
          case 0 -> new Pollen.Itself();
          case 1 -> new Pollen.Open(List.of(new Weighted(one, Fraction.ONE)), Fraction.HALF);
          case 2 ->
              one.equals(other)
                  ? new Pollen.Itself()
                  : new Pollen.Mix(
                      List.of(
                          new Weighted(one, Fraction.ONE), new Weighted(other, Fraction.of(3))));
          default -> new Pollen.OnePlant(one);
        };
    return Bench.cross(
        fresh().text(), parent().text(), pollen, text(date()), sets(), sets(), false);
  }

  private Statement mixture() {
    Code one = any(Item.Kind.LOT);
    Code other = any(Item.Kind.LOT);
    if (!one.isLot() || !other.isLot() || one.equals(other)) {
      return new Moved(List.of(family()), "sill", date(), null);
    }
    return new LotsMerged(
        fresh(),
        List.of(
            new LotsMerged.Part(one, count(), Fraction.HALF),
            new LotsMerged.Part(other, count(), Fraction.HALF)),
        date(),
        null,
        null);
  }

  private Statement parting() {
    Code code = single();
    Map<Long, Boolean> entries = new TreeMap<>();
    book.entriesOn(Subject.of(code)).forEach(n -> entries.put(n, random.nextBoolean()));
    book.entriesMentioning(Subject.of(code)).forEach(n -> entries.put(n, random.nextBoolean()));
    List<Long> taken = new ArrayList<>();
    entries.forEach(
        (n, yes) -> {
          if (yes) {
            taken.add(n);
          }
        });
    Code into = code.isSeedling() ? code.whole().seedling(7 + suffix()) : fresh();
    return new Parted(
        code, into.equals(code) ? code("25-099") : into, taken, Determination.UNKNOWN, null, "two");
  }
}
