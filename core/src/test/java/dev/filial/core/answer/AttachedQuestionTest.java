package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.name.Code;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.RegisterRefusal;
import org.junit.jupiter.api.Test;

class AttachedQuestionTest {

  private static final AttachedQuestion MIDDLE = AttachedQuestion.aboutAnyGene().withGeneAt(50, 50);

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);
  private final Code agavoides = bench.plant(AGAVOIDES);
  private final Code f1 = bench.seedling(bench.cross(laui, agavoides));
  private final Code bc1 = bench.seedling(bench.cross(f1, laui));
  private final Code bc2Cross = bench.cross(laui, bc1);

  private Attached of(Code code) {
    return AttachedQuestion.aboutAnyGene().ask(bench.store, code);
  }

  /** 32 cM after six: Stam and Zeven 1981, Euphytica 30:227-238, abstract, from memory. */
  @Test
  void sixBackcrossesLeaveThirtyTwoCentimorgansAndEachIsARow() {
    Attached six = MIDDLE.ask(6);

    assertThat(six.last().mean()).isCloseTo(32, within(0.5));
    assertThat(six.pieces())
        .extracting(Attached.Piece::backcrosses)
        .containsExactly(1, 2, 3, 4, 5, 6);
    assertThat(six.last().least()).isLessThan(six.last().mean());
    assertThat(six.last().most()).isBetween(six.last().mean(), 100.0);
    assertThat(six.plant()).isNull();
    assertThat(six.goal()).isNull();
    assertThat(six.notes()).hasSize(1);
    assertThat(MIDDLE.ask(40).pieces())
        .extracting(Attached.Piece::backcrosses)
        .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 40);
  }

  @Test
  void aGoalIsCountedFromTheF1() {
    assertThat(MIDDLE.withGoal(20).ask(2).goal()).isEqualTo(new Attached.Goal(20, 10, 20));
    assertThat(MIDDLE.withGoal(20).withChance(0.5).ask(2).goal())
        .isEqualTo(new Attached.Goal(20, 10, 9));
    assertThat(MIDDLE.withGoal(0.1).ask(2).goal()).isEqualTo(new Attached.Goal(0.1, null, null));
  }

  @Test
  void aPlantsPedigreeSaysHowManyBackcrossesThereWere() {
    assertThat(of(f1).backcrosses()).isZero();
    assertThat(of(f1).last().mean()).isEqualTo(100);
    assertThat(of(bc1).backcrosses()).isEqualTo(1);
    assertThat(of(bc2Cross).backcrosses()).isEqualTo(2);
    assertThat(of(bench.seedling(bc2Cross)).generation()).startsWith("BC2 to Echeveria laui");
    assertThat(of(bench.offset(bc1, false)).backcrosses()).isEqualTo(1);
  }

  @Test
  void whereTheGeneIsNotSaidItLiesInTheMiddleByTheMapOfTheTaxa() {
    assertThat(of(bc1).left()).isEqualTo(50);
    assertThat(of(bc1).notes().get(0)).contains("in the middle of a chromosome of 100 cM");
    assertThat(of(bc1).notes().get(1)).contains("No genetic map is stated for Echeveria laui");

    bench.say(ProfileStated.ofMap("Echeveria", GeneticMap.parse("20x60,7x87")));
    assertThat(of(bc1).left()).isCloseTo(33.5, within(1e-12));
    assertThat(of(bc1).notes()).hasSize(2);
    assertThat(MIDDLE.ask(bench.store, bc1).left()).isEqualTo(50);
  }

  @Test
  void aPlantThatMayBeEitherOfTwoLikeBackcrossesIsOne() {
    Code other = bench.seedling(bench.cross(f1, bench.plant(LAUI)));

    assertThat(of(bench.found("0", bc1, 1, other, 1)).backcrosses()).isEqualTo(1);
    assertThatThrownBy(() -> of(bench.found("0", bc1, 1, f1, 1)))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining(" may be ")
        .hasMessageContaining("say through how many the gene was held instead");
  }

  @Test
  void whatIsNoBackcrossIsRefusedByItsGeneration() {
    Code f2 = bench.seedling(bench.selfed(f1));
    Code selfed = bench.seedling(bench.selfed(bc1));

    assertThatThrownBy(() -> of(f2))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage(
            f2.text()
                + " is F2, and the piece is reckoned for a plain backcross; say through how many the"
                + " gene was held instead");
    assertThatThrownBy(() -> of(selfed)).hasMessageContaining("is BC1F2, and");
    assertThatThrownBy(() -> of(laui)).hasMessageContaining("is pure, and");
    Code hybrid = bench.plant(InventedBench.hybrid(null, LAUI, "1/2", AGAVOIDES, "1/2"));
    assertThatThrownBy(() -> of(hybrid)).hasMessageContaining(" has no generation class: ");
    Code triploid = bench.pollination(f1, new Pollen.OnePlant(laui)).sets(2, 1).made();
    assertThatThrownBy(() -> of(triploid))
        .hasMessageContaining("has 3 chromosome sets, and the piece is reckoned for plants of two");
  }

  @Test
  void whatCannotBeAskedIsNamed() {
    AttachedQuestion any = AttachedQuestion.aboutAnyGene();
    for (double wrong : new double[] {-5, Double.NaN, 1e9}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> any.withGeneAt(50, wrong))
          .withMessageContaining(" cM from an end of its chromosome; state 0 to 10000");
    }
    assertThatIllegalArgumentException()
        .isThrownBy(() -> any.withGeneAt(6_000, 6_000))
        .withMessage("a chromosome of 12000 cM; at most 10000 are reckoned with");
    assertThatIllegalArgumentException().isThrownBy(() -> any.withGeneAt(0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> any.withChance(1));
    assertThatIllegalArgumentException().isThrownBy(() -> any.withGoal(0));
    assertThatIllegalArgumentException().isThrownBy(() -> any.ask(1001));
  }
}
