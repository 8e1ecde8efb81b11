package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.filial.core.exchange.Accession;
import dev.filial.core.name.Code;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Joined;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.store.MemoryStore;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What leaves the house carries the grower's mark and all that is doubtful. */
class AccessionsQuestionTest {

  private final InventedBench bench = new InventedBench();

  private List<Accession> told(Chosen chosen) throws IOException {
    List<Accession> told = new ArrayList<>();
    AccessionsQuestion.of(bench.store, chosen).each(told::add);
    return told;
  }

  private AccessionsQuestion.Told counted(Chosen chosen) throws IOException {
    return AccessionsQuestion.of(bench.store, chosen).each(accession -> {});
  }

  private String outside(Code code) {
    return OutwardCodes.of(bench.store).of(code);
  }

  @Test
  void aSeedlingNamesItsParentsByTheirCodesOutside() throws IOException {
    Code seed = bench.plant(LAUI);
    Code pollen = bench.plant(AGAVOIDES);
    Code seedling = bench.seedling(bench.cross(seed, pollen));

    Accession told = told(Chosen.here().withOnly(List.of(seedling))).get(0);

    assertThat(told.code()).isEqualTo(outside(seedling)).endsWith(" " + seedling.text());
    assertThat(told.behind().seedParents()).containsExactly(outside(seed));
    assertThat(told.behind().pollenParents()).containsExactly(outside(pollen));
    assertThat(told.behind().generation()).isEqualTo("F1");
    assertThat(told.named().formula()).isEqualTo("Echeveria laui × E. agavoides");
    assertThat(told.doubts()).isEmpty();
  }

  @Test
  void theFormulaHasTheSeedParentFirstThoughItCameLater() throws IOException {
    Code pollen = bench.plant(AGAVOIDES);
    Code seed = bench.plant(LAUI);
    Code cross = bench.seedling(bench.cross(seed, pollen));

    assertThat(told(Chosen.here().withOnly(List.of(cross))).get(0).named().formula())
        .isEqualTo("Echeveria laui × E. agavoides");
  }

  @Test
  void aDoubtfulNameIsToldOnceAndItsOffspringSayThereIsDoubtBehindThem() throws IOException {
    Code doubtful = bench.plant("Echeveria cf. laui");
    Code seedling = bench.seedling(bench.cross(doubtful, bench.plant(AGAVOIDES)));

    List<Accession> told = told(Chosen.here().withOnly(List.of(doubtful, seedling)));

    assertThat(told.get(0).doubts()).hasSize(1).first().asString().contains("cf. ");
    assertThat(told.get(1).doubts()).containsExactly("doubts further back in its pedigree");
  }

  @Test
  void aRecordThatWasJoinedIsAnotherCodeOfTheOneThatIsKept() throws IOException {
    Code kept = bench.plant(LAUI);
    Code other = bench.plant(LAUI);
    bench.say(new Joined(kept, other, "one stem, two tags"));

    for (Chosen chosen : List.of(Chosen.here(), Chosen.here().withOnly(List.of(kept)))) {
      assertThat(told(chosen))
          .singleElement()
          .satisfies(one -> assertThat(one.otherCodes()).containsExactly(outside(other)));
    }
  }

  @Test
  void anOffsetIsTheSamePlantAndBearsItsFieldNumber() throws IOException {
    Code wild = bench.plant(Determination.of(LAUI), "FO 12");
    Code offset = bench.offset(wild, false);

    Accession told = told(Chosen.here().withOnly(List.of(offset))).get(0);

    assertThat(told.kind()).isEqualTo(Accession.Kind.OFFSET);
    assertThat(told.behind().sameAs()).containsExactly(outside(wild));
    assertThat(told.arrival().fieldNumber()).isEqualTo("FO 12");
  }

  @Test
  void whatDiedIsLeftOutAndCountedUnlessItIsAskedFor() throws IOException {
    Code dead = bench.plant(LAUI);
    bench.plant(AGAVOIDES);
    bench.say(
        new FateRecorded(
            List.of(dead), Fate.DEAD, PartialDate.parse("2026-03-04"), null, null, null, null));

    assertThat(counted(Chosen.here())).isEqualTo(new AccessionsQuestion.Told(1, 1, 0));
    assertThat(counted(Chosen.here().withGone(true)).rows()).isEqualTo(2);
    assertThat(counted(Chosen.here().withOnly(List.of(dead))).rows()).isEqualTo(1);
  }

  @Test
  void ofAnotherYearThereIsNothing() throws IOException {
    Code plant = bench.plant(LAUI);

    assertThat(counted(Chosen.here().withYear(2000 + plant.year())).rows()).isEqualTo(1);
    assertThat(counted(Chosen.here().withYear(plant.year())).rows()).isEqualTo(1);
    assertThat(counted(Chosen.here().withYear(1999)))
        .isEqualTo(new AccessionsQuestion.Told(0, 0, 0));
  }

  @Test
  void withoutAGrowersMarkNothingLeavesTheHouse() {
    assertThatExceptionOfType(RegisterRefusal.class)
        .isThrownBy(() -> AccessionsQuestion.of(MemoryStore.empty(), Chosen.here()).each(one -> {}))
        .withMessageContaining("grower's mark");
  }
}
