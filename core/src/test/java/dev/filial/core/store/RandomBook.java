package dev.filial.core.store;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Bloom;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Item;
import dev.filial.core.register.Joined;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.Moved;
import dev.filial.core.register.Named;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Observed;
import dev.filial.core.register.Parted;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlaceDeclared;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.PollenKept;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.PopulationDeclared;
import dev.filial.core.register.Potted;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.Promised;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.SeedKept;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TagLost;
import dev.filial.core.register.TaxonDeclared;
import dev.filial.core.register.TaxonRenamed;
import dev.filial.core.register.Tended;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.register.Treated;
import dev.filial.core.register.Treatment;
import dev.filial.core.register.Weighted;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Statements by chance about a small collection; many are refused, which is as well. */
final class RandomBook {

  private static final List<String> TAXA =
      List.of("Echeveria prima", "Echeveria altera", "Echeveria tertia", "Echeveria quarta");

  /** One is also the name of a taxon, one of a trait; some begin alike, outside the alphabet. */
  private static final List<String> NAMES =
      List.of("Rosa", "rosa", "Rosa 🌵", "Rosa'); --", "echeveria prima", "EDGE", "Ä%_\"\\", "薔薇");

  /** These differ by case, or begin with a character that the two sort otherwise. */
  private static final List<String> GENES = List.of("wax", "Wax", "\ufffdx", "🌵", "W/x");

  private final RegisterView view;
  private final Random random;

  RandomBook(RegisterView view, long seed) {
    this.view = view;
    this.random = new Random(seed);
  }

  /** Something that can be said at all; whether of this register is another matter. */
  Statement next() {
    Optional<Statement> thrown = Optional.empty();
    while (thrown.isEmpty()) {
      try {
        thrown = Optional.of(thrown());
      } catch (IllegalArgumentException e) {
        // What cannot be said at all is thrown again.
        thrown = Optional.empty();
      }
    }
    return thrown.get();
  }

  private Statement thrown() {
    return switch (random.nextInt(37)) {
      case 0, 1, 2 -> plant();
      case 3, 4, 5, 6 -> cross(fresh());
      case 7 ->
          new SeedAcquired(
              fresh(),
              Determination.of(one(TAXA)),
              Provenance.UNKNOWN,
              date(),
              count(),
              null,
              null);
      case 8 ->
          new Harvested(
              any(Item.Kind.CROSS).whole().lot(suffix()),
              date(),
              null,
              false,
              count(),
              null,
              null,
              null,
              null);
      case 9 -> {
        Code whole = any(Item.Kind.LOT).whole();
        yield new Sown(
            whole.sowing(suffix()),
            whole.lot(1),
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
            List.of(new Sown.Filled(whole.group(suffix()), Count.unknown(), "sill")),
            null,
            null);
      }
      case 10 -> {
        Code from = any(Item.Kind.SOWING, Item.Kind.GROUP, Item.Kind.CROSS);
        yield new Potted(from.whole().group(suffix() + 4), from, date(), count(), null, null);
      }
      case 11, 12, 13 -> {
        int first = suffix();
        yield new Numbered(
            any(Item.Kind.CROSS, Item.Kind.SEED, Item.Kind.MIXTURE, Item.Kind.GROUP),
            first,
            first + random.nextInt(3),
            date(),
            null,
            null,
            null);
      }
      case 14 ->
          new Propagated(
              fresh(),
              parent(),
              null,
              date(),
              random.nextInt(4) == 0,
              List.of(),
              List.of(one(NAMES)),
              null,
              null);
      case 15 ->
          new FateRecorded(
              List.of(any(Item.Kind.PLANT, Item.Kind.SEEDLING, Item.Kind.GROUP)),
              one(List.of(Fate.DEAD, Fate.GIVEN, Fate.KEPT)),
              date(),
              null,
              null,
              null,
              null);
      case 29 -> new Flowered(List.of(parent()), one(List.of(Bloom.values())), date(), null);
      case 30, 31 ->
          new PollenKept(
              parent(),
              random.nextBoolean()
                  ? PollenKept.Step.GATHERED
                  : one(List.of(PollenKept.Step.FROZEN, PollenKept.Step.USED_UP)),
              null,
              date(),
              null,
              null,
              null);
      case 32 ->
          new SeedKept(
              List.of(any(Item.Kind.LOT)), true, count(), null, null, null, null, date(), null);
      case 33 -> new Promised(List.of(any(Item.Kind.LOT)), count(), "Otto", date(), null);
      case 34 ->
          new Treated(
              List.of(any(Item.Kind.LOT, Item.Kind.SOWING, Item.Kind.GROUP)),
              Treatment.SOAK,
              null,
              null,
              null,
              date(),
              null);
      case 35 ->
          new Tended(
              List.of(any(Item.Kind.SOWING, Item.Kind.GROUP)),
              one(List.of(Tended.Care.OPENED, Tended.Care.HARDENED_OFF)),
              null,
              null,
              date(),
              null);
      case 36 -> new PlaceDeclared("shelf " + suffix(), "house " + suffix(), date(), null);
      case 16 -> new Moved(List.of(parent()), "shelf " + suffix(), date(), null);
      case 17 -> new Named(parent(), one(NAMES), null);
      case 18 -> {
        Code keep = parent();
        Code other = parent();
        Code second = keep.equals(other) ? fresh() : other;
        yield one(List.of(true, false))
            ? new Joined(keep, second, "one stem", Fate.DEAD, date())
            : new Joined(keep, second, "one stem");
      }
      case 19 -> parting();
      case 20 -> new Doubted(entry(), "Klara", null);
      case 21 ->
          new TagLost(
              fresh(),
              List.of(new Weighted(parent(), Fraction.ONE)),
              Fraction.HALF,
              date(),
              null,
              null);
      case 22 -> taxon();
      case 25 ->
          random.nextBoolean()
              ? new ProfileStated(
                  one(TAXA),
                  Map.of(one(GENES), Map.of("W", Fraction.HALF, "w", Fraction.HALF)),
                  null,
                  null,
                  null)
              : new GenotypeStated(parent(), List.of(one(GENES)), "Ww", date(), null);
      case 26 -> {
        String name = one(GENES);
        String other = one(GENES);
        boolean alone = name.equals(other) || random.nextBoolean();
        LocusDeclared locus =
            LocusDeclared.of(name, List.of("W", "w", "wx"))
                .weighing(Map.of("w", Fraction.ZERO), Map.of());
        yield alone ? locus : locus.beside(other, Fraction.of(1, 10));
      }
      case 23 ->
          random.nextBoolean()
              ? new TraitDeclared(
                  one(List.of("edge", "Echeveria prima")),
                  List.of("red", "green"),
                  null,
                  null,
                  null,
                  null)
              : new Observed(parent(), "edge", "red", date(), null, null);
      case 24 -> {
        List<Item> lots = view.items(EnumSet.of(Item.Kind.LOT));
        yield lots.size() < 2
            ? cross(fresh())
            : new LotsMerged(
                fresh(),
                List.of(
                    new LotsMerged.Part(lots.get(0).code(), Count.unknown(), Fraction.HALF),
                    new LotsMerged.Part(lots.get(1).code(), Count.unknown(), Fraction.HALF)),
                date(),
                null,
                null);
      }
      case 28 ->
          new PopulationDeclared(
              List.of("XY 12/3", one(List.of("XY 12", "XY 13")), one(List.of("XY 14", "XY 15"))),
              null);
      default -> {
        long entry = entry();
        Statement now = view.effective(entry).orElse(null);
        yield now instanceof Pollinated made && random.nextBoolean()
            ? new Amended(entry, cross(made.code()), "misread")
            : new Amended(entry, null, "not so");
      }
    };
  }

  private PlantAcquired plant() {
    Integer ploidy = random.nextInt(6) == 0 ? Integer.valueOf(4) : null;
    return new PlantAcquired(
        fresh(),
        random.nextBoolean()
            ? new Determination(one(TAXA), "Kleine Rote", Map.of(), null, ploidy)
            : new Determination(
                null,
                null,
                Map.of(TAXA.get(0), Fraction.HALF, TAXA.get(1), Fraction.of(1, 3)),
                null,
                ploidy),
        new Provenance("a friend", "F-7", "XY 12/3", "at the rock"),
        date(),
        List.of(one(NAMES), "number " + random.nextInt(9)),
        random.nextBoolean(),
        "sill",
        null);
  }

  private Pollinated cross(Code code) {
    Code other = parent();
    Code third = parent();
    Pollen pollen =
        switch (random.nextInt(4)) {
          case 0 -> new Pollen.Itself();
          case 1 -> new Pollen.Open(List.of(new Weighted(other, Fraction.ONE)), Fraction.HALF);
          case 2 ->
              other.equals(third)
                  ? new Pollen.OnePlant(other)
                  : new Pollen.Mix(
                      List.of(
                          new Weighted(other, Fraction.of(2)), new Weighted(third, Fraction.ONE)));
          default -> new Pollen.OnePlant(other);
        };
    return new Pollinated(
        code,
        parent(),
        pollen,
        date(),
        null,
        List.of(),
        random.nextInt(4) == 0 ? Fraction.of(1, 20) : Fraction.ZERO,
        Fraction.ZERO,
        Fraction.ZERO,
        random.nextInt(8) == 0 ? Integer.valueOf(2) : null,
        null,
        false,
        null,
        null);
  }

  private Statement taxon() {
    String name = one(TAXA);
    String other = one(TAXA);
    if (random.nextBoolean() && !name.equals(other)) {
      return new TaxonRenamed(name, other, null);
    }
    return new TaxonDeclared(
        name,
        List.of("Echeveria nova" + "abc".charAt(random.nextInt(3))),
        null,
        random.nextInt(3) == 0 ? Integer.valueOf(4) : null,
        "E. n.",
        false,
        Map.of(),
        random.nextBoolean(),
        null);
  }

  private Statement parting() {
    Code code = parent();
    List<Long> entries = view.entriesMentioning(Subject.of(code)).stream().limit(2).toList();
    // Never given out, so that no entry can speak of both.
    Code into =
        code.isWhole()
            ? Code.of(26, view.lastNumber(26) + 1)
            : code.whole().seedling(90 + (int) view.lastSuffix(code.whole(), Item.Kind.SEEDLING));
    return new Parted(code, into, entries, Determination.UNKNOWN, null, "two after all");
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private PartialDate date() {
    return one(
        List.of(
            PartialDate.parse("2024"),
            PartialDate.parse("2025-06-01"),
            PartialDate.parse("2026-02"),
            PartialDate.parse("2026-07-09")));
  }

  private Count count() {
    return Count.parse(one(List.of("3", "8", "~40", "few", "?")));
  }

  private Code fresh() {
    return Code.of(24 + random.nextInt(2), 1 + random.nextInt(14));
  }

  private int suffix() {
    return 1 + random.nextInt(4);
  }

  private Code parent() {
    return any(Item.Kind.PLANT, Item.Kind.PLANT, Item.Kind.SEEDLING);
  }

  private Code any(Item.Kind first, Item.Kind... others) {
    List<Item> items = view.items(EnumSet.of(first, others));
    return items.isEmpty() ? fresh() : one(items).code();
  }

  private long entry() {
    return 1L + random.nextInt(Math.toIntExact(view.size()));
  }
}
