package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.trial.Linkage.Phase;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Families that were counted and published. All statistics are what R 4.2.2 prints for {@code
 * core/src/test/reference/published_families.R}.
 */
class PublishedFamiliesTest {

  private static final double TENTH = 1e-9;
  private static final SegregationModel ANY = SegregationModel.saturated();

  private static FittedModel model(ModelComparison comparison, String name) {
    return comparison.models().stream()
        .filter(model -> model.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Yellow by yellow: Castle and Little 1910, On a modified Mendelian ratio among yellow mice,
   * Science 32:868-870; 1,235 young, counts from memory. Two yellow to one other, because the
   * yellow that would breed true are never born.
   */
  @Test
  void yellowMiceAreTwoToOneAndNotThreeToOne() {
    ModelComparison mice =
        ModelComparison.of(
            List.of(
                SegregationModel.fixed(Ratio.of(3, 1)),
                ANY,
                SegregationModel.fixed(Ratio.of(2, 1))),
            800,
            435);

    assertThat(mice.models().stream().map(FittedModel::name))
        .containsExactly("2:1", "any shares", "3:1");
    FittedModel lethal = model(mice, "2:1");
    assertThat(lethal.fit().orElseThrow().statistic()).isCloseTo(1.9838056680, within(TENTH));
    assertThat(lethal.fit().orElseThrow().p()).isCloseTo(0.1589900610, within(TENTH));
    assertThat(lethal.logLikelihood()).isCloseTo(-4.7226526726, within(TENTH));
    assertThat(lethal.aicc()).isCloseTo(9.4453053452, within(TENTH));
    assertThat(lethal.weight()).isCloseTo(0.5046753479, within(TENTH));

    FittedModel plain = model(mice, "3:1");
    assertThat(plain.fit().orElseThrow().statistic()).isCloseTo(68.8326585695, within(TENTH));
    assertThat(plain.logLikelihood()).isCloseTo(-35.6379256640, within(TENTH));

    FittedModel any = model(mice, "any shares");
    assertThat(any.aic()).isCloseTo(9.4794650984, within(TENTH));
    assertThat(any.aicc()).isCloseTo(9.4827092184, within(TENTH));
    assertThat(any.weight()).isCloseTo(0.4953246521, within(TENTH));
  }

  /**
   * Purple and white sweet peas from two whites: Bateson, Saunders and Punnett, Reports to the
   * Evolution Committee of the Royal Society; 651 plants as tabulated in genetics textbooks, counts
   * from memory. Two genes are needed for colour, so 9:7.
   */
  @Test
  void twoWhiteSweetPeasGiveNineColouredToSevenWhite() {
    ModelComparison peas =
        ModelComparison.of(
            List.of(
                SegregationModel.fixed(Ratio.of(3, 1)),
                SegregationModel.fixed(Ratio.of(9, 7)),
                ANY),
            382,
            269);

    FittedModel best = peas.best().orElseThrow();
    assertThat(best.name()).isEqualTo("9:7");
    assertThat(best.fit().orElseThrow().statistic()).isCloseTo(1.5607002658, within(TENTH));
    assertThat(best.fit().orElseThrow().p()).isCloseTo(0.2115627174, within(TENTH));
    assertThat(best.logLikelihood()).isCloseTo(-4.2340456999, within(TENTH));
    assertThat(best.weight()).isCloseTo(0.5545780703, within(TENTH));
    assertThat(model(peas, "3:1").aicc()).isCloseTo(89.7522819558, within(TENTH));
    assertThat(model(peas, "any shares").aicc()).isCloseTo(8.9064626027, within(TENTH));
  }

  /**
   * Form and colour of peas, told apart by their offspring into nine genotypes: Mendel 1866,
   * Versuche über Pflanzenhybriden, 529 plants; counts from memory, their sum agrees.
   */
  @Test
  void mendelsPeasFallIntoNineGenotypes() {
    Fit fit =
        GoodnessOfFit.of(Ratio.of(1, 1, 1, 1, 2, 2, 2, 2, 4))
            .test(38, 35, 28, 30, 65, 68, 60, 67, 138);

    assertThat(fit.statistic()).isCloseTo(2.8109640832, within(TENTH));
    assertThat(fit.degreesOfFreedom()).isEqualTo(8);
    assertThat(fit.p()).isCloseTo(0.9456545653, within(TENTH));
  }

  /**
   * The same peas crossed back, as seed parent and as pollen parent, to what is recessive in both:
   * Mendel 1866, counts from memory.
   */
  @Test
  void mendelsTestCrossesAgreeWhicheverParentWasTheHybrid() {
    Families crosses =
        Families.test(
            Ratio.of(1, 1, 1, 1),
            List.of(new long[] {31, 26, 27, 26}, new long[] {24, 25, 22, 27}));

    assertThat(crosses.families().get(0).p()).isCloseTo(0.8922577377, within(TENTH));
    assertThat(crosses.families().get(1).p()).isCloseTo(0.9121163632, within(TENTH));
    assertThat(crosses.pooled().p()).isCloseTo(0.9434019358, within(TENTH));
    assertThat(crosses.heterogeneity()).isCloseTo(0.7641786785, within(TENTH));
    assertThat(crosses.heterogeneityP()).isCloseTo(0.8580144088, within(TENTH));
  }

  /**
   * Maize seedlings, green, golden, green-striped, golden-green-striped: Lindstrom 1918, Cornell
   * Agricultural Experiment Station Memoir 13, as in Snedecor, Statistical Methods; counts from
   * memory. The 9.25 printed there comes of expected numbers rounded to one decimal.
   */
  @Test
  void lindstromsMaizeLacksTheWeakestSeedlings() {
    Fit fit = GoodnessOfFit.of(Ratio.of(9, 3, 3, 1)).test(773, 231, 238, 59);

    assertThat(fit.statistic()).isCloseTo(9.2714151507, within(TENTH));
    assertThat(fit.p()).isCloseTo(0.0258916779, within(TENTH));

    ModelComparison models =
        ModelComparison.of(
            List.of(SegregationModel.fixed(Ratio.of(9, 3, 3, 1)), ANY), 773, 231, 238, 59);
    assertThat(models.best().orElseThrow().name()).isEqualTo("any shares");
    assertThat(models.best().orElseThrow().aicc()).isCloseTo(26.0080859532, within(TENTH));
    assertThat(models.models().get(1).aicc()).isCloseTo(29.8847429843, within(TENTH));
  }

  /**
   * White eyes of the fruit fly, F2, females red and white, males red and white: Morgan 1910,
   * Sex-limited inheritance in Drosophila, Science 32:120-122; counts from memory. A class of
   * chance 0 of which none was seen speaks against nothing; that white males live less does.
   */
  @Test
  void noWhiteEyedFemaleIsPossibleAndNoneWasSeen() {
    ModelComparison flies =
        ModelComparison.of(
            List.of(SegregationModel.fixed("on the X chromosome", 0.5, 0, 0.25, 0.25), ANY),
            2459,
            0,
            1011,
            782);

    FittedModel linked = model(flies, "on the X chromosome");
    assertThat(linked.impossible()).isEmpty();
    assertThat(linked.logLikelihood()).isCloseTo(-75.3922796179, within(TENTH));
    assertThat(linked.fit().orElseThrow().statistic()).isCloseTo(128.9835371590, within(TENTH));
    assertThat(linked.fit().orElseThrow().degreesOfFreedom()).isEqualTo(2);
    FittedModel any = model(flies, "any shares");
    assertThat(any.logLikelihood()).isCloseTo(-8.3545379791, within(TENTH));
    assertThat(any.freeParameters()).isEqualTo(3);
    assertThat(any.weight()).isCloseTo(1, within(TENTH));
  }

  /**
   * The white-eyed male crossed back to his red daughters: Morgan 1910, counts from memory. Were
   * white eyes impossible in a female, this could not have been counted.
   */
  @Test
  void whiteEyedFemalesComeOfTheBackcross() {
    Fit fit = GoodnessOfFit.of(Ratio.of(1, 1, 1, 1)).test(129, 132, 88, 86);
    assertThat(fit.statistic()).isCloseTo(17.4597701149, within(TENTH));
    assertThat(fit.p()).isCloseTo(0.0005683820, within(TENTH));

    ModelComparison models =
        ModelComparison.of(
            List.of(SegregationModel.fixed("males only", 0.5, 0.25, 0, 0.25), ANY),
            129,
            132,
            88,
            86);
    assertThat(models.models().get(1).impossible())
        .hasValue("class 3 has the chance 0, and 88 were seen");
  }

  /**
   * 197 animals of an intercross: Rao, Linear Statistical Inference, as in Dempster, Laird and
   * Rubin 1977, Journal of the Royal Statistical Society B 39:1-38, where the estimate is 0.6268;
   * counts from memory, and they give that estimate.
   */
  @Test
  void raosAnimalsAreEstimatedAsByTheEmAlgorithm() {
    Linkage linkage = Linkage.inF2(Phase.COUPLING, 125, 18, 20, 34);
    assertThat(linkage.theta()).isCloseTo(0.6268214979, within(TENTH));
    assertThat(linkage.thetaStandardError()).isCloseTo(0.0526120054, within(TENTH));

    SegregationModel free =
        SegregationModel.oneParameter(
            "linked", 0, 1, t -> new double[] {(2 + t) / 4, (1 - t) / 4, (1 - t) / 4, t / 4});
    ModelComparison models =
        ModelComparison.of(
            List.of(ANY, SegregationModel.fixed(Ratio.of(9, 3, 3, 1)), free), 125, 18, 20, 34);
    FittedModel linked = models.best().orElseThrow();
    assertThat(linked.name()).isEqualTo("linked");
    assertThat(linked.parameter().orElseThrow()).isCloseTo(0.6268214979, within(1e-7));
    assertThat(linked.logLikelihood()).isCloseTo(-7.5486575163, within(TENTH));
    assertThat(linked.aic()).isCloseTo(17.0973150327, within(TENTH));
    assertThat(linked.aicc()).isCloseTo(17.1178278532, within(TENTH));
    assertThat(linked.weight()).isCloseTo(0.8519975921, within(TENTH));
    assertThat(model(models, "9:3:3:1").aicc()).isCloseTo(63.2648192305, within(TENTH));
    assertThat(model(models, "any shares").aicc()).isCloseTo(20.6185381693, within(TENTH));
  }

  /**
   * Purple long, purple round, red long and red round sweet peas, the series in which linkage was
   * first seen: Bateson, Saunders and Punnett, as tabulated in genetics textbooks, counts from
   * memory.
   */
  @Test
  void theFirstLinkedSweetPeas() {
    SegregationModel linked =
        SegregationModel.oneParameter("linked", 0, 0.5, r -> Linkage.sharesInF2(Phase.COUPLING, r));
    ModelComparison peas =
        ModelComparison.of(
            List.of(SegregationModel.fixed(Ratio.of(9, 3, 3, 1)), linked, ANY), 284, 21, 21, 55);

    assertThat(Linkage.inF2(Phase.COUPLING, 284, 21, 21, 55).theta())
        .isCloseTo(0.7603095077, within(TENTH));
    FittedModel fitted = model(peas, "linked");
    assertThat(fitted.parameter().orElseThrow()).isCloseTo(0.1280427145, within(1e-7));
    assertThat(fitted.logLikelihood()).isCloseTo(-10.9285177607, within(TENTH));
    // Linked they are, but they also lack reds: any shares do better still.
    assertThat(fitted.weight()).isCloseTo(0.2254215471, within(TENTH));
    assertThat(model(peas, "any shares").weight()).isCloseTo(0.7745784529, within(TENTH));
    assertThat(model(peas, "9:3:3:1").fit().orElseThrow().statistic())
        .isCloseTo(134.7282006416, within(TENTH));
  }

  /**
   * Purple eyes and vestigial wings, test crosses in coupling and in repulsion: Morgan, as in An
   * Introduction to Genetic Analysis by Griffiths and others, where the first is 10.7 map units;
   * counts from memory.
   */
  @Test
  void purpleAndVestigialRecombineAlikeInBothPhases() {
    Linkage coupling = Linkage.inBackcross(1339 + 1195, 151 + 154);
    assertThat(coupling.recombination()).isCloseTo(0.1074321944, within(TENTH));
    assertThat(coupling.standardError()).isCloseTo(0.0058117261, within(TENTH));
    assertThat(coupling.lod()).isCloseTo(434.0450104371, within(1e-8));

    Linkage repulsion = Linkage.inBackcross(965 + 1067, 157 + 146);
    assertThat(repulsion.recombination()).isCloseTo(0.1297644540, within(TENTH));
    assertThat(repulsion.standardError()).isCloseTo(0.0069542907, within(TENTH));
    assertThat(repulsion.lod()).isCloseTo(311.5332458045, within(1e-8));
  }

  /**
   * Barley, rows of the ear and green or chlorina seedlings: Robertson 1937, Genetics 22:443-451,
   * as in Steel and Torrie, Principles and Procedures of Statistics; counts from memory. The 54.36
   * printed there comes of expected numbers rounded to one decimal.
   */
  @Test
  void robertsonsBarleyIsLinked() {
    assertThat(GoodnessOfFit.of(Ratio.of(9, 3, 3, 1)).test(1178, 291, 273, 156).statistic())
        .isCloseTo(54.3128439293, within(TENTH));

    Linkage linkage = Linkage.inF2(Phase.COUPLING, 1178, 291, 273, 156);
    assertThat(linkage.theta()).isCloseTo(0.3784787713, within(TENTH));
    assertThat(linkage.recombination()).isCloseTo(0.3847937165, within(TENTH));
    assertThat(linkage.thetaStandardError()).isCloseTo(0.0183182780, within(TENTH));
    assertThat(linkage.standardError()).isCloseTo(0.0148879153, within(TENTH));
  }
}
