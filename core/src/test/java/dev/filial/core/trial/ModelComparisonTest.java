package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.trial.Linkage.Phase;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Published families are compared in {@link PublishedFamiliesTest}. */
class ModelComparisonTest {

  private static final SegregationModel ANY = SegregationModel.saturated();

  private static SegregationModel linked(Phase phase) {
    return SegregationModel.oneParameter("linked", 0, 0.5, r -> Linkage.sharesInF2(phase, r));
  }

  /** Three to one of four: 4 · 0.75³ · 0.25 = 27/64, by hand. */
  @Test
  void theLogLikelihoodHasItsCoefficient() {
    FittedModel model =
        ModelComparison.of(List.of(SegregationModel.fixed(Ratio.of(3, 1))), 3, 1).models().get(0);

    assertThat(model.logLikelihood()).isCloseTo(Math.log(27 / 64.0), within(1e-12));
    assertThat(model.aic()).isCloseTo(-2 * Math.log(27 / 64.0), within(1e-12));
    assertThat(model.weight()).isEqualTo(1);
  }

  @Test
  void aModelThatForbidsWhatWasSeenIsImpossible() {
    ModelComparison models =
        ModelComparison.of(
            List.of(
                SegregationModel.fixed("all red", 1, 0),
                SegregationModel.fixed(Ratio.of(3, 1)),
                SegregationModel.oneParameter("none", 0, 1, any -> new double[] {1, 0})),
            30,
            2);

    assertThat(models.best().orElseThrow().name()).isEqualTo("3:1");
    FittedModel allRed = models.models().get(1);
    assertThat(allRed.impossible()).hasValue("class 2 has the chance 0, and 2 were seen");
    assertThat(allRed.logLikelihood()).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(allRed.aic()).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(allRed.weight()).isZero();
    assertThat(allRed.fit()).isEmpty();
    FittedModel none = models.models().get(2);
    assertThat(none.impossible())
        .hasValue("whatever the parameter, a class that was seen has the chance 0");
    assertThat(none.parameter()).isEmpty();
    assertThat(none.logLikelihood()).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void whereAllAreImpossibleNoneIsBest() {
    ModelComparison models =
        ModelComparison.of(List.of(SegregationModel.fixed("all red", 1, 0)), 1, 1);

    assertThat(models.best()).isEmpty();
    assertThat(models.models().get(0).weight()).isZero();
  }

  @Test
  void allOfOneStateFitsAModelThatExpectsNoOther() {
    FittedModel model =
        ModelComparison.of(List.of(SegregationModel.fixed("all red", 1, 0)), 12, 0).models().get(0);

    assertThat(model.logLikelihood()).isZero();
    assertThat(model.fit()).isEmpty();
    assertThat(model.impossible()).isEmpty();
  }

  /** Four seedlings cannot carry three free numbers. */
  @Test
  void tooFewSeedlingsForTheParametersAreWeighedAgainstThem() {
    ModelComparison models =
        ModelComparison.of(List.of(ANY, SegregationModel.fixed(Ratio.of(9, 3, 3, 1))), 1, 1, 1, 1);

    assertThat(models.best().orElseThrow().name()).isEqualTo("9:3:3:1");
    assertThat(models.models().get(1).aicc()).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(models.models().get(1).aic()).isFinite();
    assertThat(models.models().get(1).weight()).isZero();
  }

  @Test
  void theLikeliestMayLieAtEitherEnd() {
    FittedModel none =
        ModelComparison.of(List.of(linked(Phase.COUPLING)), 75, 0, 0, 25).models().get(0);
    assertThat(none.parameter()).hasValue(0);
    assertThat(none.logLikelihood()).isFinite();

    FittedModel free =
        ModelComparison.of(List.of(linked(Phase.COUPLING)), 80, 40, 40, 3).models().get(0);
    assertThat(free.parameter()).hasValue(0.5);

    FittedModel repulsion =
        ModelComparison.of(List.of(linked(Phase.REPULSION)), 50, 25, 25, 0).models().get(0);
    assertThat(repulsion.parameter()).hasValue(0);
  }

  /** A million gametes with one recombined: far narrower than the first look across. */
  @Test
  void aNarrowPeakNearTheEndIsFound() {
    SegregationModel backcross =
        SegregationModel.oneParameter("linked", 0, 0.5, r -> new double[] {1 - r, r});

    assertThat(
            ModelComparison.of(List.of(backcross), 999_999, 1)
                .models()
                .get(0)
                .parameter()
                .orElseThrow())
        .isCloseTo(1e-6, within(1e-9));
  }

  /** Fisher and Balmukand's root and a search for the top are two ways to one estimate. */
  @Property(tries = 300)
  void linkageIsWhereASearchFindsTheTop(
      @ForAll Phase phase,
      @ForAll @IntRange(max = 300) int both,
      @ForAll @IntRange(max = 100) int first,
      @ForAll @IntRange(max = 100) int second,
      @ForAll @IntRange(min = 1, max = 100) int neither) {
    Linkage linkage = Linkage.inF2(phase, both, first, second, neither);
    FittedModel model =
        ModelComparison.of(List.of(linked(phase)), both, first, second, neither).models().get(0);

    assertThat(model.parameter().orElseThrow()).isCloseTo(linkage.recombination(), within(1e-5));
    FittedModel there =
        ModelComparison.of(
                List.of(
                    SegregationModel.fixed(
                        "there", Linkage.sharesInF2(phase, linkage.recombination()))),
                both,
                first,
                second,
                neither)
            .models()
            .get(0);
    assertThat(model.logLikelihood()).isCloseTo(there.logLikelihood(), within(1e-8));
    assertThat((model.logLikelihood() - unlinked(both, first, second, neither)) / Math.log(10))
        .isCloseTo(linkage.lod(), within(1e-8));
  }

  private static double unlinked(long... counts) {
    return ModelComparison.of(List.of(SegregationModel.fixed(Ratio.of(9, 3, 3, 1))), counts)
        .models()
        .get(0)
        .logLikelihood();
  }

  @Property(tries = 200)
  void theOrderOfTheClassesMakesNoDifference(
      @ForAll @Size(4) List<@IntRange(max = 60) Integer> seen,
      @ForAll @Size(4) List<@IntRange(min = 1, max = 20) Integer> terms,
      @ForAll long seed) {
    List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3));
    Collections.shuffle(order, new Random(seed));
    int[] from = order.stream().mapToInt(Integer::intValue).toArray();
    long[] counts = longs(seen);
    counts[0]++;

    ModelComparison straight = models(longs(terms), new int[] {0, 1, 2, 3}, counts);
    ModelComparison turned = models(longs(terms), from, permuted(counts, from));
    for (FittedModel model : straight.models()) {
      FittedModel other =
          turned.models().stream()
              .filter(one -> one.name().equals(model.name()))
              .findFirst()
              .orElseThrow();
      assertThat(other.logLikelihood()).isCloseTo(model.logLikelihood(), within(1e-9));
      assertThat(other.weight()).isCloseTo(model.weight(), within(1e-9));
      if (model.parameter().isPresent()) {
        assertThat(other.parameter().orElseThrow())
            .isCloseTo(model.parameter().orElseThrow(), within(1e-6));
      }
    }
  }

  private static ModelComparison models(long[] terms, int[] from, long[] counts) {
    double sum = 0;
    for (long term : terms) {
      sum += term;
    }
    double[] shares = new double[terms.length];
    for (int i = 0; i < terms.length; i++) {
      shares[i] = terms[from[i]] / sum;
    }
    return ModelComparison.of(
        List.of(
            SegregationModel.fixed("fixed", shares),
            SegregationModel.oneParameter(
                "linked",
                0,
                0.5,
                r -> {
                  double[] straight = Linkage.sharesInF2(Phase.COUPLING, r);
                  double[] turned = new double[straight.length];
                  for (int i = 0; i < turned.length; i++) {
                    turned[i] = straight[from[i]];
                  }
                  return turned;
                }),
            ANY),
        counts);
  }

  private static long[] longs(List<Integer> numbers) {
    return numbers.stream().mapToLong(Integer::longValue).toArray();
  }

  private static long[] permuted(long[] counts, int[] from) {
    long[] turned = new long[counts.length];
    for (int i = 0; i < counts.length; i++) {
      turned[i] = counts[from[i]];
    }
    return turned;
  }

  @Property(tries = 200)
  void theSameFamilyOverAgainIsAsMuchMoreEvidence(
      @ForAll @Size(4) List<@IntRange(max = 60) Integer> seen,
      @ForAll @IntRange(min = 1, max = 6) int times) {
    long[] counts = longs(seen);
    counts[0]++;
    List<SegregationModel> candidates =
        List.of(SegregationModel.fixed(Ratio.of(9, 3, 3, 1)), linked(Phase.COUPLING), ANY);

    ModelComparison once = ModelComparison.of(candidates, counts);
    ModelComparison often =
        ModelComparison.ofFamilies(candidates, Collections.nCopies(times, counts));
    assertThat(often.seedlings()).isEqualTo(times * once.seedlings());
    for (FittedModel model : once.models()) {
      double sum =
          often.models().stream()
              .filter(one -> one.name().equals(model.name()))
              .findFirst()
              .orElseThrow()
              .logLikelihood();
      assertThat(sum).isCloseTo(times * model.logLikelihood(), within(1e-9 * (1 + Math.abs(sum))));
    }
  }

  @Property(tries = 200)
  void weightsSumToOneAndTheBestComesFirst(
      @ForAll @Size(4) List<@IntRange(max = 400) Integer> seen) {
    long[] counts = longs(seen);
    counts[0]++;
    List<FittedModel> models =
        ModelComparison.of(
                List.of(
                    ANY,
                    SegregationModel.fixed(Ratio.of(9, 3, 3, 1)),
                    linked(Phase.COUPLING),
                    linked(Phase.REPULSION),
                    SegregationModel.fixed("three", 0.5, 0.25, 0.25, 0)),
                counts)
            .models();

    assertThat(models.stream().mapToDouble(FittedModel::weight).sum()).isCloseTo(1, within(1e-12));
    FittedModel any =
        models.stream().filter(one -> one.freeParameters() == 3).findFirst().orElseThrow();
    for (int i = 0; i < models.size(); i++) {
      assertThat(models.get(i).logLikelihood())
          .isLessThanOrEqualTo(any.logLikelihood() + 1e-9)
          .isNotNaN();
      assertThat(i == 0 || models.get(i - 1).aicc() <= models.get(i).aicc()).isTrue();
    }
  }

  @Test
  void whatCannotBeComparedIsNamed() {
    SegregationModel threeToOne = SegregationModel.fixed(Ratio.of(3, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ModelComparison.of(List.of(), 3, 1))
        .withMessage("0 models on 1 families; give one or more of each");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ModelComparison.of(List.of(threeToOne), 3, 1, 0))
        .withMessage(
            "\"3:1\" has 2 classes, but 3 were counted; give a count for each class, 0 if none was"
                + " seen");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                ModelComparison.ofFamilies(
                    List.of(threeToOne), List.of(new long[] {3, 1}, new long[] {3})))
        .withMessageStartingWith("families with 2 and 1 classes");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ModelComparison.of(List.of(threeToOne), 3, -1))
        .withMessage("a count of -1; counts are 0 or more");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ModelComparison.of(List.of(threeToOne), 0, 0))
        .withMessage("a family of none; there is nothing to test");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SegregationModel.fixed("odd", 0.5, 0.4))
        .withMessage("the shares of \"odd\", two or more, sum to 1; these sum to 0.9");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SegregationModel.fixed("odd", 1.5, -0.5))
        .withMessage("a share of -0.5 in \"odd\"; a share is 0 or more");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SegregationModel.fixed("odd", Double.NaN, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> SegregationModel.oneParameter("odd", 1, 1, any -> new double[] {any, 1 - any}))
        .withMessage("the parameter of \"odd\" from 1.0 to 1.0 has no room");
    SegregationModel odd =
        SegregationModel.oneParameter("odd", 0, 1, any -> new double[] {any, any});
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ModelComparison.of(List.of(odd), 3, 1))
        .withMessage("the shares of \"odd\" at 0.0, two or more, sum to 1; these sum to 0.0");
  }
}
