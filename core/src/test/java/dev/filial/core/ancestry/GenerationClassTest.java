package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.ancestry.GenerationClass.Backcross;
import dev.filial.core.ancestry.GenerationClass.Complex;
import dev.filial.core.ancestry.GenerationClass.Filial;
import dev.filial.core.ancestry.GenerationClass.Mixture;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Route;
import dev.filial.core.pedigree.StatedGeneration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which generation a seedling is, by the rules of the trade. */
class GenerationClassTest {

  /** Two plants each of agavoides and laui, two other species, two full-sib F1s and their like. */
  private static final List<PlantRecord> BENCH =
      List.of(
          PlantRecord.pure("A1", "E. agavoides"),
          PlantRecord.pure("A2", "E. agavoides"),
          PlantRecord.pure("L1", "E. laui"),
          PlantRecord.pure("L2", "E. laui"),
          PlantRecord.pure("E1", "E. elegans"),
          PlantRecord.pure("S1", "E. setosa"),
          PlantRecord.cross("F1a", "A1", "L1"),
          PlantRecord.cross("F1b", "A1", "L1"),
          PlantRecord.cross("F1r", "L1", "A1"),
          PlantRecord.cross("F1other", "A2", "L2"),
          PlantRecord.selfing("F2a", "F1a"),
          PlantRecord.selfing("F2b", "F1a"),
          PlantRecord.cross("BC1", "F1a", "A1"),
          PlantRecord.cross("BC1b", "F1a", "A1"));

  private static GenerationClass classOf(String code, PlantRecord... more) {
    return classifier(more).classOf(code);
  }

  private static GenerationClassifier classifier(PlantRecord... more) {
    List<PlantRecord> records = new ArrayList<>(BENCH);
    records.addAll(List.of(more));
    return GenerationClassifier.of(Pedigree.of(records));
  }

  private static String text(PlantRecord last, PlantRecord... before) {
    List<PlantRecord> more = new ArrayList<>(List.of(before));
    more.add(last);
    return classOf(last.code(), more.toArray(new PlantRecord[0])).text();
  }

  @Test
  void plantsOfOneTaxonAreAndStayPure() {
    assertThat(classOf("A1").text()).isEqualTo("pure E. agavoides");
    assertThat(text(PlantRecord.cross("X", "A1", "A2")))
        .isEqualTo("pure E. agavoides, raised from seed");
  }

  @Test
  void twoPureParentsOfDifferentTaxaGiveAnF1() {
    assertThat(classOf("F1a").text()).isEqualTo("F1 of E. agavoides × E. laui");
    assertThat(classOf("F1r").text()).isEqualTo("F1 of E. laui × E. agavoides");
  }

  @Test
  void anF2SaysHowItWasRaised() {
    assertThat(classOf("F2a").text()).isEqualTo("F2 of E. agavoides × E. laui, by selfing");
    assertThat(text(PlantRecord.cross("X", "F1a", "F1b")))
        .isEqualTo("F2 of E. agavoides × E. laui, by sib cross");
    assertThat(text(PlantRecord.cross("X", "F1a", "F1r"))).endsWith("by sib cross");
    assertThat(text(PlantRecord.cross("X", "F1a", "F1other")))
        .isEqualTo("F2 of E. agavoides × E. laui, between plants of different parents");
  }

  @Test
  void aRametOfTheSeedParentAsPollenParentIsASelfing() {
    assertThat(text(PlantRecord.cross("X", "F1a", "offset"), PlantRecord.ramet("offset", "F1a")))
        .isEqualTo("F2 of E. agavoides × E. laui, by selfing");
  }

  @Test
  void anF3OfSibsRemembersThatTheF2WasSelfed() {
    Filial f3 = (Filial) classOf("X", PlantRecord.cross("X", "F2a", "F2b"));
    assertThat(f3.last()).isEqualTo(Breeding.SIB_CROSS);
    assertThat(f3.steps()).containsExactly(Breeding.SELFING, Breeding.SIB_CROSS);
    assertThat(f3.text())
        .isEqualTo("F3 of E. agavoides × E. laui, by sib cross (earlier also by selfing)");
    assertThat(text(PlantRecord.selfing("X", "F2a")))
        .isEqualTo("F3 of E. agavoides × E. laui, by selfing");
  }

  @Test
  void anF2ByAnF3IsWrittenSoAndItsOffspringAreComplex() {
    PlantRecord f3 = PlantRecord.selfing("F3", "F2a");
    PlantRecord mixed = PlantRecord.cross("X", "F2b", "F3");
    assertThat(text(mixed, f3)).isEqualTo("F2 × F3 of E. agavoides × E. laui");
    assertThat(text(PlantRecord.selfing("Y", "X"), f3, mixed))
        .isEqualTo(
            "complex: (F2 × F3 of E. agavoides × E. laui) × (F2 × F3 of E. agavoides × E. laui);"
                + " 2 kinds in it, 4 to 5 generations back to a pure plant");
  }

  @Test
  void aBackcrossCountsWhicheverBoreTheSeed() {
    assertThat(classOf("BC1").text())
        .isEqualTo(
            "BC1 to E. agavoides, the other being E. laui; the plant of the first cross again");
    assertThat(classOf("X", PlantRecord.cross("X", "A1", "F1a")).label()).isEqualTo("BC1");
    assertThat(classOf("X", PlantRecord.cross("X", "A1", "BC1")).label()).isEqualTo("BC2");
  }

  @Test
  void aBackcrossToAnotherPlantOfTheTaxonIsToldApart() {
    Backcross other = (Backcross) classOf("X", PlantRecord.cross("X", "F1a", "A2"));
    assertThat(other.plant()).isEqualTo(Recurrent.OTHER_PLANTS);
    Backcross later = (Backcross) classOf("X", PlantRecord.cross("X", "BC1", "A2"));
    assertThat(later.plant()).isEqualTo(Recurrent.OTHER_PLANTS);
    Backcross offset =
        (Backcross)
            classOf(
                "X",
                PlantRecord.ramet("A1 offset", "A1"),
                PlantRecord.cross("X", "F1a", "A1 offset"));
    assertThat(offset.plant()).isEqualTo(Recurrent.SAME_PLANT);
    Backcross toSeed = (Backcross) classOf("X", PlantRecord.cross("X", "L1", "F1a"));
    assertThat(toSeed.recurrent()).isEqualTo("E. laui");
    assertThat(toSeed.plant()).isEqualTo(Recurrent.SAME_PLANT);
  }

  @Test
  void aBackcrossSelfedIsABc1f2() {
    PlantRecord bc1f2 = PlantRecord.selfing("X", "BC1");
    assertThat(text(bc1f2))
        .isEqualTo(
            "BC1F2 to E. agavoides, the other being E. laui; the same plant each time, by selfing");
    assertThat(text(PlantRecord.selfing("Y", "X"), bc1f2)).startsWith("BC1F3 to E. agavoides");
    Backcross sib = (Backcross) classOf("X", PlantRecord.cross("X", "BC1", "BC1b"));
    assertThat(sib.last()).isEqualTo(Breeding.SIB_CROSS);
    assertThat(sib.label()).isEqualTo("BC1F2");
  }

  @Test
  void backcrossesToDifferentPlantsSibCrossedWereNotToOnePlant() {
    Backcross mixed =
        (Backcross)
            classOf(
                "X",
                PlantRecord.cross("BC1 to A2", "F1other", "A2"),
                PlantRecord.cross("X", "BC1", "BC1 to A2"));
    assertThat(mixed.plant()).isEqualTo(Recurrent.OTHER_PLANTS);
    assertThat(mixed.last()).isEqualTo(Breeding.BETWEEN_FAMILIES);
  }

  @Test
  void threeWayAndDoubleCross() {
    assertThat(text(PlantRecord.cross("X", "E1", "F1a")))
        .isEqualTo("three-way cross of F1 (E. agavoides × E. laui) with E. elegans");
    assertThat(text(PlantRecord.cross("X", "F1a", "Y"), PlantRecord.cross("Y", "E1", "S1")))
        .isEqualTo("double cross of F1 (E. agavoides × E. laui) with F1 (E. elegans × E. setosa)");
  }

  @Test
  void twoF1sThatShareATaxonAreNoDoubleCross() {
    Complex shared =
        (Complex)
            classOf("X", PlantRecord.cross("Y", "A1", "E1"), PlantRecord.cross("X", "F1a", "Y"));
    assertThat(shared.words())
        .isEqualTo("F1 (E. agavoides × E. laui) × F1 (E. agavoides × E. elegans)");
    assertThat(shared.sources()).containsExactly("E. agavoides", "E. elegans", "E. laui");
    assertThat(shared.leastGenerations()).isEqualTo(2);
    assertThat(shared.mostGenerations()).isEqualTo(2);
  }

  @Test
  void everythingElseIsComplexAndDescribed() {
    assertThat(text(PlantRecord.cross("X", "F1a", "BC1")))
        .isEqualTo(
            "complex: F1 (E. agavoides × E. laui) × BC1 to E. agavoides (donor E. laui);"
                + " 2 kinds in it, 2 to 3 generations back to a pure plant");
    assertThat(text(PlantRecord.cross("X", "BC1", "L2")))
        .isEqualTo(
            "complex: BC1 to E. agavoides (donor E. laui) × E. laui, the other taxon;"
                + " 2 kinds in it, 1 to 3 generations back to a pure plant");
    assertThat(text(PlantRecord.cross("X", "F2a", "A1")))
        .isEqualTo(
            "complex: F2 (E. agavoides × E. laui) × E. agavoides;"
                + " 2 kinds in it, 1 to 3 generations back to a pure plant");
    assertThat(text(PlantRecord.cross("X", "F1a", "F2a"))).startsWith("F1 × F2 of E. agavoides");
  }

  @Test
  void theF2OfABackcrossCrossedBackIsComplex() {
    assertThat(
            classOf("Y", PlantRecord.selfing("X", "BC1"), PlantRecord.cross("Y", "X", "A1"))
                .label())
        .isEqualTo("complex");
  }

  @Test
  void aHybridOfStatedFractionsHasNoClassNorHaveItsOffspring() {
    PlantRecord hybrid =
        PlantRecord.hybrid(
            "H", Makeup.of(Map.of("E. laui", Fraction.HALF, "E. agavoides", Fraction.HALF)));
    String reason = "no generation class: H is a hybrid whose generation was not stated";
    assertThat(text(hybrid)).isEqualTo(reason);
    assertThat(text(PlantRecord.cross("X", "H", "A1"), hybrid)).isEqualTo(reason);
  }

  @Test
  void aStatedGenerationIsTakenUp() {
    PlantRecord f1 =
        new PlantRecord(
            "H",
            Founder.hybrid(Makeup.unknown())
                .withStated(StatedGeneration.f1("E. agavoides", "E. laui")));
    assertThat(text(f1)).isEqualTo("F1 of E. agavoides × E. laui");
    Backcross bc1 = (Backcross) classOf("X", f1, PlantRecord.cross("X", "H", "A1"));
    assertThat(bc1.plant()).isEqualTo(Recurrent.NOT_KNOWN);
    Filial f2 = (Filial) classOf("X", f1, PlantRecord.cross("X", "H", "F1a"));
    assertThat(f2.last()).isEqualTo(Breeding.NOT_KNOWN);
    assertThat(classOf("X", f1, PlantRecord.selfing("X", "H")).text()).endsWith(", by selfing");
    PlantRecord bc =
        new PlantRecord(
            "B",
            Founder.hybrid(Makeup.unknown())
                .withStated(StatedGeneration.backcross(2, "E. laui", "E. agavoides")));
    assertThat(text(PlantRecord.cross("X", "L1", "B"), bc))
        .isEqualTo(
            "BC3 to E. laui, the other being E. agavoides; whether to the same plant is not known");
    // Both are plants of E. laui, but two of them: whatever BC2 was made with, one differs.
    assertThat(text(PlantRecord.cross("Y", "X", "L2"), bc, PlantRecord.cross("X", "L1", "B")))
        .endsWith("not the same plant each time");
  }

  /** Backcrossed to two plants, the one and the other, then crossed: that is known. */
  @Test
  void twoBackcrossesToDifferentPlantsWereNotToTheSame() {
    PlantRecord f1 =
        new PlantRecord(
            "H",
            Founder.hybrid(Makeup.unknown())
                .withStated(StatedGeneration.f1("E. agavoides", "E. laui")));
    assertThat(
            text(
                PlantRecord.cross("X", "a", "b"),
                f1,
                PlantRecord.cross("a", "H", "L1"),
                PlantRecord.cross("b", "H", "L2")))
        .contains("BC1F2 to E. laui", "not the same plant each time");
  }

  /** Seven plants in a mix are two thousand ways after four generations, all of one class. */
  @Test
  void whicheverPlantsOfAMixItWasTheClassIsCertain() {
    List<PlantRecord> records = new ArrayList<>(List.of(PlantRecord.pure("D", "E. laui")));
    for (int i = 1; i <= 7; i++) {
      records.add(PlantRecord.pure("T" + i, "E. agavoides"));
    }
    String before = "D";
    for (int generation = 0; generation <= 4; generation++) {
      Case[] cases = new Case[7];
      for (int i = 1; i <= 7; i++) {
        cases[i - 1] = Case.cross(Fraction.of(1, 7), Route.POLLEN_MIX, before, "T" + i);
      }
      before = "G" + generation;
      records.add(PlantRecord.seedling(before, cases));
    }
    GenerationClassifier classifier = GenerationClassifier.of(Pedigree.of(records));

    assertThat(classifier.classOf("G2").label()).isEqualTo("BC2");
    assertThat(classifier.classOf("G4").label()).isEqualTo("BC4");
    assertThat(classifier.classOf("G4").text()).contains("whether to the same plant is not known");
  }

  @Test
  void aPlantOfAHybridTaxonIsNeverPure() {
    PlantRecord hybrid = PlantRecord.hybrid("H", Makeup.pure("E. ×imbricata"));
    assertThat(text(hybrid)).startsWith("no generation class");
    assertThat(text(PlantRecord.selfing("X", "H"), hybrid)).startsWith("no generation class");
  }

  @Test
  void unknownPollenLeavesNoClass() {
    assertThat(text(PlantRecord.openPollinated("X", "A1")))
        .isEqualTo("no generation class: the pollen parent of X is unknown");
    assertThat(text(PlantRecord.unknown("X")))
        .isEqualTo("no generation class: nobody knows what X is");
  }

  @Test
  void casesThatAgreeGiveTheirClass() {
    PlantRecord mix =
        PlantRecord.seedling(
            "X",
            Case.cross(Fraction.HALF, Route.POLLEN_MIX, "A1", "L1"),
            Case.cross(Fraction.HALF, Route.POLLEN_MIX, "A1", "L2"));
    assertThat(text(mix)).isEqualTo("F1 of E. agavoides × E. laui");
  }

  @Test
  void aHandCrossThatMayBeASelfSaysBothAndHandsTheDoubtOn() {
    PlantRecord doubtful =
        PlantRecord.seedling(
            "X",
            Case.selfing(Fraction.of(1, 10), "A1"),
            Case.cross(Fraction.of(9, 10), Route.CROSS, "A1", "L1"));
    assertThat(text(doubtful))
        .isEqualTo(
            "90 % F1 of E. agavoides × E. laui; or 10 % pure E. agavoides, raised from seed");
    assertThat(text(PlantRecord.selfing("Y", "X"), doubtful))
        .isEqualTo(
            "90 % F2 of E. agavoides × E. laui, by selfing;"
                + " or 10 % pure E. agavoides, raised from seed");
    Mixture sibs =
        (Mixture)
            classOf(
                "Y",
                doubtful,
                PlantRecord.seedling(
                    "X2",
                    Case.selfing(Fraction.of(1, 10), "A1"),
                    Case.cross(Fraction.of(9, 10), Route.CROSS, "A1", "L1")),
                PlantRecord.cross("Y", "X", "X2"));
    // 9/10 squared both hybrids; 2 × 9/100 one of them: a backcross to a selfed seedling of A1.
    assertThat(sibs.alternatives())
        .extracting(GenerationClass.Alternative::share)
        .containsExactly(Fraction.of(81, 100), Fraction.of(18, 100), Fraction.of(1, 100));
    assertThat(sibs.label()).isEqualTo("F2 or BC1 or pure");
  }

  @Test
  void anApomictCrossedWithItsSeedParentIsASelfing() {
    assertThat(
            text(PlantRecord.cross("X", "apomict", "F1a"), PlantRecord.apomict("apomict", "F1a")))
        .isEqualTo("F2 of E. agavoides × E. laui, by selfing");
  }

  @Test
  void tooManyDoubtsEndInNoClass() {
    List<PlantRecord> more = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      more.add(
          PlantRecord.seedling(
              "D" + i,
              Case.selfing(Fraction.HALF, i == 0 ? "A1" : "D" + (i - 1)),
              Case.cross(Fraction.HALF, Route.CROSS, i == 0 ? "A1" : "D" + (i - 1), "F1a")));
    }
    assertThat(classOf("D9", more.toArray(new PlantRecord[0])).text())
        .contains("may have come about in several ways");
  }

  @Test
  void chromosomeDoublingChangesNoClass() {
    assertThat(text(PlantRecord.doubled("X", "F1a"))).isEqualTo("F1 of E. agavoides × E. laui");
  }

  @Test
  void anF2WithinOneSpeciesByPlantCultivarOrFieldNumber() {
    PlantRecord one =
        new PlantRecord(
            "P", Founder.pure("E. agavoides").withCultivar("Ruby").withFieldNumber("KB 12"));
    PlantRecord other =
        new PlantRecord(
            "Q", Founder.pure("E. agavoides").withCultivar("Jade").withFieldNumber("KB 30"));
    PlantRecord f1 = PlantRecord.cross("F1", "P", "Q");
    PlantRecord f2 = PlantRecord.selfing("F2", "F1");
    GenerationClassifier classes = classifier(one, other, f1, f2);
    assertThat(classes.classOf("F2").text()).isEqualTo("pure E. agavoides, raised from seed");
    assertThat(classes.by(Level.PLANT).classOf("F2").text()).isEqualTo("F2 of P × Q, by selfing");
    assertThat(classes.by(Level.CULTIVAR).classOf("F2").text())
        .isEqualTo("F2 of E. 'Ruby' × E. 'Jade', by selfing");
    assertThat(classes.by(Level.FIELD_NUMBER).classOf("F2").text())
        .isEqualTo("F2 of E. agavoides KB 12 × E. agavoides KB 30, by selfing");
    assertThat(classes.by(Level.CULTIVAR).classOf("A1").text())
        .isEqualTo("no generation class: A1 has no cultivar name");
    assertThat(classes.by(Level.FIELD_NUMBER).classOf("A1").text())
        .isEqualTo("no generation class: A1 has no field number");
  }

  /** A cultivar's name is its own within its genus alone; a field number may cover two species. */
  @Test
  void likeNamesInTwoGeneraAreTwoSources() {
    PlantRecord one =
        new PlantRecord(
            "P", Founder.pure("Echeveria laui").withCultivar("Lola").withFieldNumber("FO 12"));
    PlantRecord other =
        new PlantRecord(
            "Q",
            Founder.pure("Graptopetalum bellum").withCultivar("Lola").withFieldNumber("FO 12"));
    GenerationClassifier classes = classifier(one, other, PlantRecord.cross("X", "P", "Q"));

    assertThat(classes.by(Level.CULTIVAR).classOf("X").text())
        .isEqualTo("F1 of Echeveria 'Lola' × Graptopetalum 'Lola'");
    assertThat(classes.by(Level.FIELD_NUMBER).classOf("X").label()).isEqualTo("F1");
  }
}
