package dev.filial.core.answer;

import static dev.filial.core.answer.FlowersStory.day;
import static dev.filial.core.answer.FlowersStory.on;
import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Interval;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Protection;
import dev.filial.core.register.SeedKept;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What is in the seed tin, and what a club may be offered of it. */
class TinQuestionTest {

  private static final LocalDate TODAY = on("2026-06-15");

  private final FlowersStory story = new FlowersStory();
  private final Code laui = story.plant(LAUI);
  private final Code agavoides = story.plant(AGAVOIDES);

  private List<TinQuestion.Line> tin() {
    return TinQuestion.of(story.bench.store, TODAY).ask();
  }

  private TinQuestion.Line only() {
    assertThat(tin()).hasSize(1);
    return tin().get(0);
  }

  private OfferQuestion.Line offered() {
    List<OfferQuestion.Line> lines = OfferQuestion.of(story.bench.store, TODAY).ask().lines();
    assertThat(lines).hasSize(1);
    return lines.get(0);
  }

  private void kept(Code lot, @Nullable String left, @Nullable String mg, @Nullable String grams) {
    story.bench.say(
        new SeedKept(
            List.of(lot),
            false,
            left == null ? null : Count.parse(left),
            mg == null ? null : new BigDecimal(mg),
            grams == null ? null : new BigDecimal(grams),
            "paper",
            "tin",
            day("2025-07-01"),
            null));
  }

  @Test
  void anEmptyTinIsEmpty() {
    assertThat(tin()).isEmpty();
    assertThat(OfferQuestion.of(story.bench.store, TODAY).ask().lines()).isEmpty();
  }

  @Test
  void whatIsPromisedIsNotFree() {
    Code lot = story.harvest(story.cross(laui, agavoides, null), "2025-06-01", "80");
    story.promise(lot, "15", "Jonas");
    story.promise(lot, "20", "Lena");
    assertThat(only().left()).isEqualTo(Count.of(80));
    assertThat(only().free()).isEqualTo(Count.of(45));
    assertThat(only().promises())
        .extracting(TinQuestion.Promise::to)
        .containsExactly("Jonas", "Lena");
  }

  @Test
  void aGiftKeepsThePromise() {
    Code lot = story.harvest(story.cross(laui, agavoides, null), "2025-06-01", "80");
    story.promise(lot, "15", "Jonas");
    story.give(lot, "10", "jonas");
    // 80 less 10 given is 70; of the 15 promised 5 are still to be given.
    assertThat(only().left()).isEqualTo(Count.of(70));
    assertThat(only().free()).isEqualTo(Count.of(65));
  }

  @Test
  void allOfItPromisedLeavesNothingFreeAndMoreThanAllNoLess() {
    Code lot = story.harvest(story.cross(laui, agavoides, null), "2025-06-01", "80");
    story.promise(lot, null, "Jonas");
    assertThat(only().free()).isEqualTo(Count.of(0));
    Code other = story.harvest(story.cross(agavoides, laui, null), "2025-06-01", "10");
    story.promise(other, "90", "Lena");
    assertThat(tin().get(1).free()).isEqualTo(Count.of(0));
    assertThat(OfferQuestion.of(story.bench.store, TODAY).ask().lines()).isEmpty();
  }

  @Test
  void aWeightIsToldFromAGuessAndAGuessFromACount() {
    Code cross = story.cross(laui, agavoides, null);
    Code lot = story.harvest(cross, "2025-06-01", "?");
    assertThat(only().sureness()).isEqualTo(TinQuestion.Sureness.NOT_KNOWN);
    kept(lot, null, "12", "9000");
    // 12 mg × 9000 seeds a gram / 1000 = 108.
    assertThat(only().left()).isEqualTo(Count.about(108));
    assertThat(only().sureness()).isEqualTo(TinQuestion.Sureness.WEIGHED);
    kept(lot, "~100", null, null);
    assertThat(only().sureness()).isEqualTo(TinQuestion.Sureness.GUESSED);
    kept(lot, "99", "12", "9000");
    assertThat(only().sureness()).isEqualTo(TinQuestion.Sureness.COUNTED);
    assertThat(only().keeping()).isEqualTo("paper");
    assertThat(only().place()).isEqualTo("tin");
  }

  @Test
  void threeYearsOldIsOldUnlessTheTaxonKeepsLonger() {
    story.packet(LAUI, "2023-06-16", "30");
    // 16 June 2023 to 15 June 2026 are 365 + 366 + 365 - 1 = 1095 days.
    assertThat(only().age()).isEqualTo(1095);
    assertThat(only().old()).isFalse();
    assertThat(only().harvested()).isFalse();
    assertThat(TinQuestion.of(story.bench.store, TODAY.plusDays(1)).ask().get(0).old()).isTrue();
    story.usually(Interval.SEED_AGEING, 700, LAUI);
    assertThat(only().old()).isTrue();
    assertThat(only().keeps().whence()).isEqualTo(IntervalDays.Whence.STATED);
  }

  @Test
  void aPacketPutApartIsAsOldAsItsSeed() {
    Code lot = story.harvest(story.cross(laui, agavoides, null), "2025-06-01", "80");
    Code apart = NextCode.in(story.bench.store).lot(lot);
    story.bench.say(new LotSplit(apart, lot, day("2026-06-01"), Count.of(20), null, null));
    assertThat(tin()).extracting(TinQuestion.Line::since).containsOnly(day("2025-06-01"));
    assertThat(tin()).extracting(line -> line.left()).containsExactly(Count.of(60), Count.of(20));
  }

  @Test
  void aMixedPacketIsAsOldAsItsOldestPart() {
    Code one = story.harvest(story.cross(laui, agavoides, null), "2025-06-01", "80");
    Code other = story.harvest(story.cross(agavoides, laui, null), "2025-08-01", "80");
    Code mixed = NextCode.in(story.bench.store).ofYear(2025);
    story.bench.say(
        new LotsMerged(
            mixed,
            List.of(
                new LotsMerged.Part(one, Count.of(80), Fraction.of(1, 2)),
                new LotsMerged.Part(other, Count.of(80), Fraction.of(1, 2))),
            day("2025-09-01"),
            null,
            null));
    assertThat(only().lot()).isEqualTo(mixed.lot(1));
    assertThat(only().since()).isEqualTo(day("2025-06-01"));
    assertThat(offered().doubts()).contains("a mixed packet");
  }

  @Test
  void whatIsGoneIsNotInTheTin() {
    Code cross = story.cross(laui, agavoides, null);
    story.give(story.harvest(cross, "2025-06-01", "80"), null, "Jonas");
    story.give(story.harvest(cross, "2025-06-01", "20"), "20", "Jonas");
    assertThat(tin()).isEmpty();
  }

  @Test
  void aProtectedCountedCrossHasNothingDoubtful() {
    story.harvest(story.cross(laui, agavoides, null), "2025-06-01", "80");
    OfferQuestion.Line line = offered();
    assertThat(line.name()).isEqualTo("Echeveria laui × E. agavoides");
    assertThat(line.code()).startsWith("KB 25-101");
    assertThat(line.year()).isEqualTo(2025);
    assertThat(line.doubts()).isEmpty();
  }

  @Test
  void openUnprotectedAndMixedAreSaidInPlainWords() {
    Code bee =
        story.pollinated(laui, new Pollen.Open(List.of(), Fraction.ONE), null, Protection.NONE);
    Code lot = story.harvest(bee, "2025-06-01", "~80");
    assertThat(offered().doubts())
        .containsExactly("open pollinated", "partly of unknown origin", "number guessed");
    story.give(lot, null, "Jonas");
    Code left = story.pollinated(laui, new Pollen.OnePlant(agavoides), null, Protection.NONE);
    Code second = story.harvest(left, "2025-06-01", "80");
    assertThat(offered().doubts()).containsExactly("unprotected flowers");
    story.give(second, null, "Jonas");
    Code mix =
        story.pollinated(
            laui,
            new Pollen.Mix(InventedBench.weighted(agavoides, 1, story.plant(COLORATA), 1)),
            null,
            Protection.BAGGED);
    story.harvest(mix, "2025-06-01", "few");
    assertThat(offered().doubts()).containsExactly("pollen mixed", "not counted");
  }

  @Test
  void aDoubtfulParentMakesDoubtfulSeed() {
    Code like = story.plant("Echeveria cf. agavoides");
    long entry = story.bench.store.size();
    story.harvest(story.cross(laui, like, null), "2025-06-01", "80");
    assertThat(offered().doubts()).containsExactly("identity in doubt (cf. or aff.)");
    story.bench.say(new Doubted(entry, "Klara", null));
    assertThat(offered().doubts()).contains("parents or name partly a guess");
  }

  @Test
  void seedThatCameIsNamedAsItCame() {
    story.packet("Echeveria cf. laui", "2025-03", "30");
    assertThat(offered().name()).isEqualTo("Echeveria laui (cf.)");
    assertThat(offered().harvested()).isFalse();
    assertThat(offered().doubts())
        .containsExactly("name as it came", "identity in doubt (cf. or aff.)");
  }

  @Test
  void whatIsDoubtfulOfAParentsCrossIsDoubtfulOfItsSeed() {
    Code family = story.bench.cross(laui, agavoides);
    Code seedling = story.bench.seedling(family);
    story.harvest(story.cross(seedling, story.plant(COLORATA), null), "2025-12-01", "80");
    assertThat(offered().doubts())
        .containsExactly(
            "nobody wrote whether the flowers were protected, further back ("
                + family.text()
                + ")");
  }

  @Test
  void aDoubtOfSeveralCrossesIsToldOnceWithTheSharesOfTheLastOnly() {
    Code family =
        story
            .bench
            .pollination(laui, new Pollen.OnePlant(agavoides))
            .shares("1/10", "1/20", "0")
            .made();
    Code seedling = story.bench.seedling(family);
    Code last =
        story.bench.pollination(seedling, new Pollen.OnePlant(laui)).shares("1/4", "0", "0").made();
    story.harvest(last, "2025-12-01", "80");
    String behind = "further back (" + family.text() + ")";
    assertThat(offered().doubts())
        .containsExactly(
            "nobody wrote whether the flowers were protected, also " + behind,
            "perhaps selfed (25 %), also " + behind,
            "perhaps of stray pollen, " + behind,
            // Nobody knows whose the stray pollen was.
            "partly of unknown origin");
  }

  @Test
  void aMixedPacketHasTheDoubtsOfItsParts() {
    Code unwritten = story.harvest(story.bench.cross(laui, agavoides), "2025-06-01", "30");
    Code bagged = story.harvest(story.cross(laui, agavoides, null), "2025-06-01", "10");
    Code mixed = NextCode.in(story.bench.store).ofYear(2026);
    story.bench.say(
        new LotsMerged(
            mixed,
            List.of(
                new LotsMerged.Part(unwritten, Count.of(30), Fraction.of(3, 4)),
                new LotsMerged.Part(bagged, Count.of(10), Fraction.of(1, 4))),
            day("2026-01-05"),
            null,
            null));
    assertThat(
            OfferQuestion.of(story.bench.store, TODAY)
                .withLots(List.of(mixed.lot(1)))
                .ask()
                .lines()
                .get(0)
                .doubts())
        .containsExactly("nobody wrote whether the flowers were protected", "a mixed packet");
  }

  @Test
  void aBackcrossIsNotOfferedAsAnF1() {
    Code family = story.cross(laui, story.plant(COLORATA), null);
    Code lot = story.harvest(family, "2025-06-01", "80");
    assertThat(offered().name()).isEqualTo("Echeveria laui × E. colorata");
    story.give(lot, null, "Jonas");
    Code seedling = story.bench.seedling(family);
    Code back = story.cross(seedling, laui, null);
    lot = story.harvest(back, "2025-06-01", "80");
    assertThat(offered().name()).isEqualTo("Echeveria laui × E. colorata, BC1");
    story.give(lot, null, "Jonas");
    story.harvest(story.cross(seedling, seedling, null), "2025-12-01", "80");
    assertThat(offered().name()).isEqualTo("Echeveria laui × E. colorata, F2");
  }

  @Test
  void theReminderOfTheBorderIsThere() {
    assertThat(OfferQuestion.of(story.bench.store, TODAY).ask().reminder()).contains("CITES");
  }

  @Property(tries = 60)
  void neverIsMoreFreeThanIsLeft(
      @ForAll @IntRange(min = 1, max = 40) int harvested,
      @ForAll List<@IntRange(min = 0, max = 50) Integer> promises,
      @ForAll boolean guessed) {
    FlowersStory own = new FlowersStory();
    Code lot =
        own.harvest(
            own.cross(own.plant(LAUI), own.plant(AGAVOIDES), null),
            "2025-06-01",
            (guessed ? "~" : "") + harvested);
    promises.forEach(count -> own.promise(lot, count == 0 ? null : "" + count, "Lena"));
    TinQuestion.Line line = TinQuestion.of(own.bench.store, TODAY).ask().get(0);
    long free = line.free().size().orElseThrow();
    assertThat(free).isBetween(0L, line.left().size().orElseThrow());
    long promised = promises.stream().mapToLong(count -> count == 0 ? 1000 : count).sum();
    assertThat(free).isEqualTo(Math.max(0, harvested - promised));
  }

  /** What is done to one lot says nothing of another, so their order in the book is all one. */
  @Property(tries = 40)
  void theOrderOfEntriesOfDifferentLotsDoesNotMatter(
      @ForAll List<@IntRange(min = 0, max = 8) Integer> drawn) {
    assertThat(after(drawn, true)).isEqualTo(after(drawn, false));
  }

  /** Each number is a deed and one of two lots; the lots by turns, or the one after the other. */
  private static List<TinQuestion.Line> after(List<Integer> drawn, boolean lotByLot) {
    FlowersStory own = new FlowersStory();
    Code cross = own.cross(own.plant(LAUI), own.plant(AGAVOIDES), null);
    List<Code> lots =
        List.of(own.harvest(cross, "2025-06-01", "500"), own.harvest(cross, "2025-06-02", "~500"));
    List<Integer> order = new ArrayList<>(drawn);
    if (lotByLot) {
      order.sort(Comparator.comparingInt(number -> number % 2));
    }
    for (int number : order) {
      Code lot = lots.get(number % 2);
      switch (number / 2) {
        case 0 -> own.promise(lot, "3", "Lena");
        case 1 -> own.give(lot, "2", "Lena");
        case 2 -> own.give(lot, "1", "Jonas");
        default -> own.promise(lot, "4", "Jonas");
      }
    }
    return TinQuestion.of(own.bench.store, TODAY).ask();
  }
}
