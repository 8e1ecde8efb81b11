package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Every kind of statement, with everything in it that it may hold. */
final class StatementArbitraries {

  private StatementArbitraries() {}

  static Arbitrary<Code> whole() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 99), Arbitraries.longs().between(1, 20_000))
        .as(Code::of);
  }

  private static Arbitrary<Integer> part() {
    return Arbitraries.integers().between(2, 500);
  }

  static Arbitrary<Code> seedling() {
    return Combinators.combine(whole(), part()).as(Code::seedling);
  }

  static Arbitrary<Code> group() {
    return Combinators.combine(whole(), part()).as(Code::group);
  }

  static Arbitrary<Code> lot() {
    return Combinators.combine(whole(), part()).as(Code::lot);
  }

  static Arbitrary<Code> anyCode() {
    return Arbitraries.oneOf(whole(), seedling(), group(), lot());
  }

  static Arbitrary<Code> plant() {
    return Arbitraries.oneOf(whole(), seedling(), group());
  }

  /** Texts as people write them: quotes, back-slashes, new lines, other scripts, emoji. */
  static Arbitrary<String> text() {
    return Arbitraries.oneOf(
        Arbitraries.strings()
            .withChars("abcXYZ 09\"\\/{}[]:,.\n\tßéжサ♀×")
            .ofMinLength(1)
            .ofMaxLength(12)
            .map(text -> "a" + text),
        Arbitraries.of("26-013E", "window sill", "🌵 by the door", "null", "0"));
  }

  static Arbitrary<String> maybeText() {
    return text().injectNull(0.3);
  }

  static Arbitrary<String> taxon() {
    return Arbitraries.of(
        "Echeveria laui",
        "Echeveria agavoides",
        "Echeveria colorata subsp. colorata",
        "Echeveria cf. pulidonis",
        "Echeveria 'Balkonrot'",
        "×Graptoveria");
  }

  static Arbitrary<PartialDate> date() {
    Arbitrary<LocalDate> days =
        Arbitraries.longs()
            .between(LocalDate.of(1990, 1, 1).toEpochDay(), LocalDate.of(2030, 12, 31).toEpochDay())
            .map(LocalDate::ofEpochDay);
    return Combinators.combine(days, Arbitraries.integers().between(0, 2))
        .as(
            (day, known) ->
                new PartialDate(
                    day.getYear(),
                    known > 0 ? day.getMonthValue() : 0,
                    known > 1 ? day.getDayOfMonth() : 0))
        .injectNull(0.3);
  }

  static Arbitrary<Count> count() {
    return Arbitraries.oneOf(
        Arbitraries.longs().between(0, Count.MOST).map(Count::of),
        Arbitraries.longs().between(0, 1000).map(Count::about),
        Arbitraries.of(Count.few(), Count.many(), Count.unknown()));
  }

  static Arbitrary<Fraction> share(int parts) {
    return Arbitraries.integers()
        .between(0, 7)
        .map(n -> Fraction.of(n, 7).dividedBy(Fraction.of(parts)));
  }

  static Arbitrary<Fraction> weight() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 50), Arbitraries.integers().between(1, 9))
        .as(Fraction::of);
  }

  static Arbitrary<List<Weighted>> weighted(int least) {
    return plant()
        .list()
        .uniqueElements()
        .ofMinSize(least)
        .ofMaxSize(4)
        .flatMap(
            plants ->
                weight()
                    .list()
                    .ofSize(plants.size())
                    .map(
                        weights -> {
                          List<Weighted> pairs = new java.util.ArrayList<>();
                          for (int i = 0; i < plants.size(); i++) {
                            pairs.add(new Weighted(plants.get(i), weights.get(i)));
                          }
                          return List.copyOf(pairs);
                        }));
  }

  static Arbitrary<Map<String, Fraction>> makeup() {
    return Arbitraries.of(
        Map.of(),
        ordered("Echeveria laui", Fraction.of(1, 2), "Echeveria agavoides", Fraction.of(1, 3)),
        ordered("Echeveria colorata", Fraction.of(3, 4), "Echeveria laui", Fraction.of(1, 4)));
  }

  private static Map<String, Fraction> ordered(String a, Fraction x, String b, Fraction y) {
    Map<String, Fraction> map = new LinkedHashMap<>();
    map.put(a, x);
    map.put(b, y);
    return map;
  }

  static Arbitrary<Determination> determination() {
    return Combinators.combine(
            taxon().injectNull(0.2),
            maybeText(),
            makeup(),
            Arbitraries.of("F1", "F2", "BC1", "BC2F3").injectNull(0.5),
            Arbitraries.integers().between(1, 8).injectNull(0.5))
        .as(Determination::new);
  }

  static Arbitrary<Provenance> provenance() {
    return Combinators.combine(maybeText(), maybeText(), maybeText(), maybeText())
        .as(Provenance::new);
  }

  static Arbitrary<BigDecimal> decimal() {
    return Arbitraries.of("0.1", "12", "3.50", "1E+3", "0.000250").map(BigDecimal::new);
  }

  static Arbitrary<Pollen> pollen() {
    return Arbitraries.oneOf(
        plant().map(Pollen.OnePlant::new),
        Arbitraries.of(new Pollen.Itself()),
        weighted(2).map(Pollen.Mix::new),
        Combinators.combine(weighted(1), share(1)).as(Pollen.Open::new),
        Arbitraries.of(new Pollen.Open(List.of(), Fraction.ONE)));
  }

  static Arbitrary<Statement> all() {
    return Arbitraries.oneOf(List.of(plain(), amended()));
  }

  private static Arbitrary<Statement> amended() {
    return Combinators.combine(entry(), plain().injectNull(0.3), text()).as(Amended::new);
  }

  private static Arbitrary<Long> entry() {
    return Arbitraries.longs().between(1, 1_000_000_000_000L);
  }

  /** Every kind but the amendment, each about as often as the others. */
  static Arbitrary<Statement> plain() {
    return Arbitraries.frequencyOf(Tuple.of(3, ofPlantsAndSeed()), Tuple.of(1, diary()));
  }

  private static Arbitrary<Statement> ofPlantsAndSeed() {
    return Arbitraries.oneOf(
        List.of(
            Combinators.combine(Arbitraries.of("KB", "ABCD"), text(), maybeText())
                .as(RegisterOpened::new),
            taxonDeclared(),
            Combinators.combine(taxon(), maybeText())
                .as((to, remark) -> new TaxonRenamed("Echeveria lutea", to, remark)),
            plantAcquired(),
            seedAcquired(),
            pollinated(),
            Combinators.combine(
                    whole(),
                    date(),
                    count(),
                    count(),
                    count().injectNull(0.5),
                    count().injectNull(0.5),
                    maybeText(),
                    maybeText())
                .as(FruitRecorded::new),
            harvested(),
            Combinators.combine(lot(), date(), count(), maybeText(), maybeText())
                .as((from, d, n, p, r) -> new LotSplit(from.whole().lot(1), from, d, n, p, r)),
            lotsMerged(),
            sown(),
            counted(),
            Combinators.combine(group(), date(), count(), maybeText(), maybeText())
                .as((from, d, n, p, r) -> new Potted(from.whole().group(1), from, d, n, p, r)),
            Combinators.combine(
                    group(), part(), part(), date(), maybeText(), maybeText(), maybeText())
                .as((g, from, n, d, f, p, r) -> new Numbered(g, from, from + n, d, f, p, r)),
            propagated(),
            fate(),
            Combinators.combine(
                    anyCode().list().uniqueElements().ofMinSize(1).ofMaxSize(3),
                    text(),
                    date(),
                    maybeText())
                .as(Moved::new),
            Combinators.combine(anyCode(), text(), maybeText()).as(Named::new),
            Combinators.combine(seedling(), text())
                .as((code, why) -> new Joined(code, code.whole(), why)),
            Combinators.combine(seedling(), text(), Arbitraries.of(Fate.DEAD, Fate.GIVEN), date())
                .as((code, why, fate, date) -> new Joined(code, code.whole(), why, fate, date)),
            parted(),
            Combinators.combine(entry(), text(), maybeText()).as(Doubted::new),
            Combinators.combine(whole(), weighted(1), share(1), date(), maybeText(), maybeText())
                .as(TagLost::new),
            traitDeclared(),
            observed(),
            tallied(),
            locusDeclared(),
            modelDeclared(),
            profileStated(),
            population(),
            Combinators.combine(plant(), text(), date(), maybeText())
                .as((code, genes, d, r) -> new GenotypeStated(code, List.of("edge"), genes, d, r)),
            Combinators.combine(anyCode(), text(), date()).as(Noted::new)));
  }

  private static <C> Arbitrary<List<C>> some(Arbitrary<C> codes) {
    return codes.list().uniqueElements().ofMinSize(1).ofMaxSize(3);
  }

  private static Arbitrary<BigDecimal> weight3() {
    return Arbitraries.integers().between(1, 99_999).map(n -> BigDecimal.valueOf(n, 2));
  }

  /** Flowers, pollen, the seed tin, treatments, care, pictures, places and intervals. */
  private static Arbitrary<Statement> diary() {
    return Arbitraries.oneOf(
        List.of(
            Combinators.combine(some(plant()), Arbitraries.of(Bloom.values()), date(), maybeText())
                .as(Flowered::new),
            Combinators.combine(
                    plant(),
                    Arbitraries.of(PollenKept.Step.values()),
                    date(),
                    date(),
                    maybeText(),
                    maybeText(),
                    maybeText())
                .as(
                    (p, step, gathered, d, from, place, r) ->
                        step == PollenKept.Step.GATHERED
                            ? new PollenKept(p, step, null, d, from, place, r)
                            : new PollenKept(p, step, gathered, d, null, place, r)),
            Combinators.combine(
                    lot(),
                    count(),
                    weight3().injectNull(0.3),
                    weight3().injectNull(0.3),
                    maybeText(),
                    maybeText(),
                    date(),
                    maybeText())
                .as(
                    (l, n, w, g, how, p, d, r) ->
                        new SeedKept(List.of(l), w == null, n, w, g, how, p, d, r)),
            Combinators.combine(
                    some(Arbitraries.oneOf(group(), lot())),
                    count().injectNull(0.3),
                    text(),
                    date(),
                    maybeText())
                .as(Promised::new),
            Combinators.combine(
                    some(anyCode()),
                    Arbitraries.of(Treatment.values()),
                    maybeText(),
                    maybeText(),
                    Arbitraries.integers().between(1, 400).injectNull(0.5),
                    date(),
                    maybeText())
                .as(Treated::new),
            Combinators.combine(
                    some(anyCode()),
                    Arbitraries.of(Tended.Care.values()),
                    maybeText(),
                    date(),
                    maybeText())
                .as(
                    (codes, care, text, d, r) ->
                        care == Tended.Care.POTTED_ON
                            ? new Tended(codes, care, text, text, d, r)
                            : new Tended(codes, care, null, null, d, r)),
            Combinators.combine(some(anyCode()), text(), date(), maybeText())
                .as(
                    (codes, path, d, r) ->
                        new Photographed(
                            codes, new Photograph(path, "0123456789abcdef".repeat(4)), d, r)),
            Combinators.combine(text(), maybeText(), date(), maybeText())
                .as((p, w, d, r) -> new PlaceDeclared("in " + p, w, d, r)),
            Combinators.combine(
                    Arbitraries.of(Interval.values()),
                    Arbitraries.integers().between(1, 36_500),
                    taxon().injectNull(0.5),
                    maybeText())
                .as(IntervalStated::new)));
  }

  private static Arbitrary<Statement> taxonDeclared() {
    return Combinators.combine(
            taxon(),
            Arbitraries.of("Echeveria lutea", "Echeveria alba")
                .list()
                .uniqueElements()
                .ofMaxSize(2),
            Arbitraries.of("Echeveria prima").injectNull(0.5),
            Arbitraries.integers().between(1, 8).injectNull(0.3),
            maybeText(),
            Arbitraries.of(true, false),
            makeup(),
            Arbitraries.of(true, false))
        .as((n, s, w, p, t, h, m, i) -> new TaxonDeclared(n, s, w, p, t, h, m, i, null));
  }

  private static Arbitrary<Statement> plantAcquired() {
    return Combinators.combine(
            whole(),
            determination(),
            provenance(),
            date(),
            text().list().ofMaxSize(2),
            Arbitraries.of(true, false),
            maybeText(),
            maybeText())
        .as(PlantAcquired::new);
  }

  private static Arbitrary<Statement> seedAcquired() {
    return Combinators.combine(
            whole(), determination(), provenance(), date(), count(), maybeText(), maybeText())
        .as(SeedAcquired::new);
  }

  static Arbitrary<Statement> pollinated() {
    Arbitrary<List<Protection>> protection =
        Arbitraries.of(
            List.of(),
            List.of(Protection.NONE),
            List.of(Protection.EMASCULATED, Protection.BAGGED),
            List.of(Protection.ISOLATED));
    Arbitrary<Integer> sets = Arbitraries.integers().between(1, 8).injectNull(0.6);
    return Combinators.combine(
            Combinators.combine(whole(), plant(), pollen(), date())
                .as(
                    (c, s, p, d) ->
                        Bench.cross(c.text(), s.text(), p, d == null ? null : d.toString())),
            count().injectNull(0.3),
            protection,
            share(3).list().ofSize(3),
            sets.list().ofSize(2),
            Arbitraries.of(true, false),
            maybeText(),
            maybeText())
        .as(
            (c, flowers, p, shares, gametes, stored, place, remark) ->
                new Pollinated(
                    c.code(),
                    c.seedParent(),
                    c.pollen(),
                    c.date(),
                    flowers,
                    p,
                    shares.get(0),
                    shares.get(1),
                    shares.get(2),
                    gametes.get(0),
                    gametes.get(1),
                    stored,
                    place,
                    remark));
  }

  private static Arbitrary<Statement> harvested() {
    return Combinators.combine(
            lot(),
            date(),
            count().injectNull(0.4),
            Arbitraries.of(true, false),
            count(),
            decimal().injectNull(0.3),
            decimal().injectNull(0.3),
            maybeText())
        .as((l, d, f, a, n, mg, g, p) -> new Harvested(l, d, f, a, n, mg, g, p, null));
  }

  private static Arbitrary<Statement> lotsMerged() {
    return Combinators.combine(
            whole(), lot().list().uniqueElements().ofSize(2), count(), date(), maybeText())
        .as(
            (c, lots, n, d, p) ->
                new LotsMerged(
                    c,
                    List.of(
                        new LotsMerged.Part(lots.get(0), n, Fraction.of(2, 3)),
                        new LotsMerged.Part(lots.get(1), Count.few(), Fraction.of(1, 3))),
                    d,
                    p,
                    null));
  }

  private static Arbitrary<Statement> sown() {
    return Combinators.combine(
            lot(),
            date(),
            maybeText(),
            maybeText(),
            text().list().ofMaxSize(2),
            maybeText(),
            maybeText())
        .as(
            (lot, d, medium, cover, treatments, place, remark) ->
                new Sown(
                    lot.whole().sowing(1),
                    lot,
                    d,
                    Count.of(30),
                    medium,
                    cover,
                    false,
                    "tray",
                    false,
                    null,
                    null,
                    treatments,
                    List.of(
                        new Sown.Filled(lot.whole().group(1), Count.of(20), place),
                        new Sown.Filled(lot.whole().group(2), Count.few(), null)),
                    place,
                    remark));
  }

  private static Arbitrary<Statement> counted() {
    Arbitrary<Counted.Reading> reading =
        Combinators.combine(group(), count(), count().injectNull(0.5)).as(Counted.Reading::new);
    return Combinators.combine(
            date(),
            reading.list().uniqueElements(Counted.Reading::code).ofMinSize(1).ofMaxSize(3),
            maybeText())
        .as(Counted::new);
  }

  private static Arbitrary<Statement> propagated() {
    return Combinators.combine(
            whole(),
            plant(),
            maybeText(),
            date(),
            Arbitraries.of(true, false),
            text().list().ofMaxSize(2),
            text().list().ofMaxSize(2),
            maybeText())
        .as(
            (c, of, how, d, x2, sport, names, p) ->
                new Propagated(c, of, how, d, x2, sport, names, p, null));
  }

  private static Arbitrary<Statement> fate() {
    return Combinators.combine(
            group().list().uniqueElements().ofMinSize(1).ofMaxSize(3),
            Arbitraries.of(Fate.DEAD, Fate.GIVEN, Fate.DISCARDED, Fate.USED_UP),
            date(),
            count().injectNull(0.5),
            maybeText(),
            maybeText(),
            maybeText())
        .as(FateRecorded::new);
  }

  private static Arbitrary<Statement> parted() {
    return Combinators.combine(
            seedling(), entry().list().ofMaxSize(3), determination(), date(), text())
        .as((code, entries, d, on, why) -> new Parted(code, code.whole(), entries, d, on, why));
  }

  private static Arbitrary<Statement> traitDeclared() {
    return Arbitraries.oneOf(
        maybeText()
            .map(r -> new TraitDeclared("edge", List.of("red", "green"), null, null, null, r)),
        decimal()
            .map(most -> new TraitDeclared("width", List.of(), BigDecimal.ZERO, most, "mm", null)));
  }

  private static Arbitrary<Statement> locusDeclared() {
    // Nothing, none and some are three things to be told apart.
    Arbitrary<Fraction> half = share(2).injectNull(0.3);
    Arbitrary<Map<String, Fraction>> weights =
        Arbitraries.of(
            Map.of(),
            Map.of("R", Fraction.ZERO),
            ordered("r", Fraction.of(3, 4), "R", Fraction.ONE));
    return Combinators.combine(
            half,
            half,
            weights,
            weights,
            decimal().injectNull(0.3),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false),
            maybeText())
        .as(
            (r, leak, eggs, pollen, cm, refuses, cytoplasmic, remark) ->
                new LocusDeclared(
                    "leaf edge",
                    List.of("R", "r", "rx"),
                    cytoplasmic && cm == null && r == null && !refuses && isEmpty(eggs, pollen),
                    cm == null || r != null ? null : "4",
                    r != null ? null : cm,
                    r == null ? null : "tips",
                    r,
                    refuses,
                    refuses ? leak : null,
                    refuses && leak == null ? List.of("r") : List.of(),
                    eggs,
                    pollen,
                    remark));
  }

  private static boolean isEmpty(Map<String, Fraction> eggs, Map<String, Fraction> pollen) {
    return eggs.isEmpty() && pollen.isEmpty();
  }

  private static Arbitrary<Statement> modelDeclared() {
    Arbitrary<ModelDeclared.Row> row =
        Combinators.combine(Arbitraries.of("R_", "rr", "*"), share(1), share(2))
            .as(
                (genes, red, lost) ->
                    new ModelDeclared.Row(
                        genes, ordered("red", red, "green", Fraction.ONE.minus(red)), lost));
    return Combinators.combine(text(), row.list().ofMinSize(1).ofMaxSize(3), maybeText())
        .as(
            (trait, rows, remark) -> {
              List<ModelDeclared.Row> all = new java.util.ArrayList<>(rows);
              all.add(ModelDeclared.Row.lethal("RR"));
              return new ModelDeclared(trait, List.of("edge", "tips"), all, remark);
            });
  }

  private static Arbitrary<Statement> profileStated() {
    Arbitrary<Fraction> doubleReduction =
        share(1).map(share -> share.times(Fraction.of(1, 6))).injectNull(0.4);
    Arbitrary<List<BigDecimal>> chromosomes =
        Arbitraries.bigDecimals()
            .between(new BigDecimal("0.1"), new BigDecimal("400"))
            .ofScale(2)
            .list()
            .ofMaxSize(4);
    return Combinators.combine(
            taxon(),
            share(1),
            Arbitraries.of(ProfileStated.Pairing.class).injectNull(0.3),
            doubleReduction,
            chromosomes,
            maybeText())
        .as(
            (name, r, pairing, twice, lengths, remark) -> {
              Map<String, Map<String, Fraction>> frequencies = new LinkedHashMap<>();
              frequencies.put("tips", Map.of("T", Fraction.ONE));
              frequencies.put("leaf edge", ordered("R", r, "r", Fraction.ONE.minus(r)));
              return new ProfileStated(
                  name,
                  frequencies,
                  pairing,
                  pairing == ProfileStated.Pairing.TETRASOMIC ? twice : null,
                  lengths,
                  remark);
            });
  }

  private static Arbitrary<Statement> population() {
    Arbitrary<List<String>> numbers =
        Arbitraries.of("OM 112", "OM112", "JB 7", "XM \"7\"").list().uniqueElements().ofMinSize(2);
    return Combinators.combine(numbers, maybeText()).as(PopulationDeclared::new);
  }

  private static Arbitrary<Statement> observed() {
    Arbitrary<Photograph> photograph =
        text().map(path -> new Photograph(path, "0123456789abcdef".repeat(4)));
    return Combinators.combine(
            anyCode(), text(), text(), date(), photograph.injectNull(0.5), maybeText())
        .as(Observed::new);
  }

  private static Arbitrary<Statement> tallied() {
    return Combinators.combine(
            group(), text(), Arbitraries.longs().between(0, 40), date(), maybeText())
        .as(
            (g, trait, n, d, r) -> {
              Map<String, Long> counts = new LinkedHashMap<>();
              counts.put("red", n);
              counts.put("green", 0L);
              return new Tallied(g, trait, counts, d, r);
            });
  }
}
