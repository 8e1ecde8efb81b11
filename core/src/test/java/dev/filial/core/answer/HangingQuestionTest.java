package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.answer.HangingQuestion.Hanging;
import dev.filial.core.answer.HangingQuestion.Touched;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Count;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.Joined;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.Moved;
import dev.filial.core.register.Observed;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.TaxonRenamed;
import dev.filial.core.register.TraitDeclared;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class HangingQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);
  private final Code agavoides = bench.plant(AGAVOIDES);
  private final Code cross = bench.cross(laui, agavoides);

  private Hanging on(Code code) {
    return HangingQuestion.of(bench.store).onCode(code);
  }

  private Hanging on(long entry) {
    return HangingQuestion.of(bench.store).onEntry(entry);
  }

  private static List<Code> codes(Hanging hanging) {
    return hanging.things().stream().map(Touched::code).toList();
  }

  private long give(Code code, Count count) {
    return bench.say(
        new FateRecorded(
            List.of(code),
            Fate.GIVEN,
            PartialDate.parse("2026-01-02"),
            count,
            "Anton",
            null,
            null));
  }

  @Test
  void onAPlantHangItsOffspringAndTheirsAndWhatWasGivenAway() {
    Code seedling = bench.seedling(cross);
    Code next = bench.selfed(seedling);
    Code offset = bench.offset(laui, false);
    long gift = give(seedling, null);

    Hanging hanging = on(laui);

    assertThat(codes(hanging)).containsExactly(laui, offset, cross, seedling, next);
    assertThat(hanging.things()).extracting(Touched::steps).containsExactly(0, 1, 1, 2, 3);
    assertThat(hanging.plants()).isEqualTo(3);
    assertThat(hanging.gifts()).extracting(Said::entry).containsExactly(gift);
    assertThat(hanging.entries()).contains(gift).doesNotContain(hanging.entry().entry());
    assertThat(codes(on(agavoides))).doesNotContain(laui, offset);
  }

  @Test
  void onAGeneHangTheTablesAndTheGenotypesThatNameItAndOnAProfileThePlantsOfItsTaxon() {
    long gene = bench.say(LocusDeclared.of("edge", List.of("R", "r")));
    long trait =
        bench.say(new TraitDeclared("edge", List.of("red", "green"), null, null, null, null));
    long table =
        bench.say(
            new ModelDeclared(
                "edge",
                List.of("edge"),
                List.of(ModelDeclared.Row.of("R_", "red"), ModelDeclared.Row.of("*", "green")),
                null));
    long genotype = bench.say(new GenotypeStated(laui, List.of("edge"), "Rr", null, null));
    long profile =
        bench.say(
            new ProfileStated(
                AGAVOIDES, Map.of("edge", Map.of("r", Fraction.ONE)), null, null, null));

    assertThat(codes(on(gene))).containsExactly(laui);
    assertThat(on(gene).entries()).contains(table, genotype, profile);
    assertThat(on(trait).entries()).containsExactly(table);
    assertThat(codes(on(genotype))).containsExactly(laui);
    assertThat(codes(on(profile))).containsExactly(agavoides);
  }

  @Test
  void onTheMapOfAGenusHangAllThatCameOfItsSpecies() {
    Code other = bench.plant("Graptopetalum paraguayense");
    Code hybrid = bench.plant(InventedBench.hybrid(null, AGAVOIDES, "1/2"));
    long genus = bench.say(ProfileStated.ofMap("Echeveria", GeneticMap.parse("27x100")));
    long species = bench.say(ProfileStated.ofMap(AGAVOIDES, GeneticMap.parse("27x90")));

    assertThat(codes(on(genus))).contains(laui, agavoides, hybrid).doesNotContain(other, cross);
    assertThat(codes(on(species))).containsExactlyInAnyOrder(agavoides, hybrid);
  }

  @Test
  void onAPotHangsWhatWasTakenFromItAndNotThePotBesideIt() {
    Code lot = bench.harvest(cross);
    Code sowing = bench.sowing(lot, "2025-08-01", 2);
    Code seedling = cross.seedling(1);
    bench.say(new dev.filial.core.register.Numbered(cross.group(1), 1, 1, null, null, null, null));

    assertThat(codes(HangingQuestion.of(bench.store).onCode(lot)))
        .containsExactlyInAnyOrder(lot, sowing, cross.group(1), cross.group(2), seedling);
    assertThat(Offspring.next(bench.store, cross.group(1))).containsExactly(seedling);
    assertThat(Offspring.next(bench.store, cross.group(2))).isEmpty();
    assertThat(Offspring.next(bench.store, seedling)).isEmpty();
  }

  @Test
  void onALotHangsThePacketItWasMixedInto() {
    Code lot = bench.harvest(cross);
    Code other = bench.harvest(bench.cross(agavoides, laui));
    Code mixture = NextCode.in(bench.store).ofYear(2025);
    bench.say(
        new LotsMerged(
            mixture,
            List.of(
                new LotsMerged.Part(lot, Count.of(5), Fraction.HALF),
                new LotsMerged.Part(other, Count.of(5), Fraction.HALF)),
            null,
            null,
            null));

    assertThat(codes(on(lot))).contains(mixture, mixture.lot(1)).doesNotContain(other);
    assertThat(CardQuestion.of(bench.store).ask(lot).parentOf()).containsExactly(mixture);
  }

  @Test
  void whereAPlantStandsBearsOnNothingElse() {
    long moved = bench.say(new Moved(List.of(laui), "shelf 2", null, null));
    bench.say(new TraitDeclared("tips", List.of("red", "plain"), null, null, null, null));
    long seen = bench.say(new Observed(laui, "tips", "red", null, null, null));

    assertThat(codes(on(moved))).containsExactly(laui);
    assertThat(codes(on(seen))).containsExactly(laui);
  }

  @Test
  void onATraitHangsWhatWasObservedForIt() {
    long trait =
        bench.say(new TraitDeclared("tips", List.of("red", "plain"), null, null, null, null));
    bench.say(new Observed(laui, "tips", "red", null, null, null));

    assertThat(codes(on(trait))).containsExactly(laui);
  }

  @Test
  void onARenamingHangWhatWasRecordedUnderTheOldNameAndItsOffspring() {
    Code older = bench.plant("Echeveria lindsayana");
    Code newer = bench.plant(COLORATA);
    Code next = bench.cross(older, laui);
    long renamed = bench.say(new TaxonRenamed("Echeveria lindsayana", COLORATA, null));

    assertThat(codes(on(renamed))).containsExactly(older, next).doesNotContain(newer);
  }

  @Test
  void onAJoinHangsWhatIsReadAsTheOtherPlantNow() {
    Code again = bench.plant("Echeveria sp.");
    Code child = bench.cross(again, laui);
    long joined = bench.say(new Joined(agavoides, again, "one label"));

    assertThat(codes(on(joined))).containsExactly(again, child);
    assertThat(codes(on(agavoides))).contains(again, child, cross);
  }

  @Test
  void onAGuessOrAnAmendmentHangsWhatHangsOnTheEntryItNames() {
    long entry = bench.store.item(laui).orElseThrow().entry();
    long guess = bench.say(new Doubted(entry, "Klara", null));

    assertThat(codes(on(guess))).isEqualTo(codes(on(entry))).contains(cross);

    long crossed = bench.store.item(cross).orElseThrow().entry();
    long amended =
        bench.say(
            new Amended(crossed, bench.store.effective(crossed).orElseThrow(), "written again"));
    assertThat(codes(on(amended))).containsExactly(cross);
  }

  @Test
  void onAStruckEntryNothingHangs() {
    long entry = bench.store.item(cross).orElseThrow().entry();
    bench.say(new Amended(entry, null, "never made"));

    assertThat(on(entry).entry().struck()).isTrue();
    assertThat(on(entry).things()).isEmpty();
  }

  @Test
  void anEntryThatIsNotThereIsRefused() {
    assertThatThrownBy(() -> on(99))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("there is no entry 99; the last one is 4");
  }
}
