package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Gamete;
import dev.filial.core.pedigree.Origin;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Ramet;
import dev.filial.core.pedigree.RandomPedigree;
import dev.filial.core.pedigree.Seedling;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jspecify.annotations.Nullable;

/** What holds of every pedigree. */
class AncestryLawsTest {

  @Provide
  Arbitrary<List<PlantRecord>> records() {
    return RandomPedigree.records();
  }

  private static Shares shares(Pedigree pedigree, String code) {
    return ExpectedAncestry.of(pedigree, code).shares();
  }

  @Property(tries = 300)
  void fractionsSumToOne(@ForAll("records") List<PlantRecord> records) {
    Pedigree pedigree = Pedigree.of(records);
    for (PlantRecord plant : records) {
      Shares shares = shares(pedigree, plant.code());
      Fraction sum = shares.taxa().values().stream().reduce(shares.unknown(), Fraction::plus);
      assertThat(sum).isEqualTo(Fraction.ONE);
    }
  }

  @Property(tries = 300)
  void theCasesOfAPlantAverageToItsShares(@ForAll("records") List<PlantRecord> records) {
    Pedigree pedigree = Pedigree.of(records);
    for (PlantRecord plant : records) {
      ExpectedAncestry answer = ExpectedAncestry.of(pedigree, plant.code());
      Fraction unknown = Fraction.ZERO;
      Fraction laui = Fraction.ZERO;
      for (ExpectedAncestry.CaseShares one : answer.cases()) {
        unknown = unknown.plus(one.share().times(one.shares().unknown()));
        laui = laui.plus(one.share().times(one.shares().of("E. laui")));
      }
      if (!answer.cases().isEmpty()) {
        assertThat(unknown).isEqualTo(answer.shares().unknown());
        assertThat(laui).isEqualTo(answer.shares().of("E. laui"));
      }
    }
  }

  @Property(tries = 300)
  void bulkEqualsExact(@ForAll("records") List<PlantRecord> records) {
    Pedigree pedigree = Pedigree.of(records);
    ExpectedShares bulk = ExpectedShares.of(pedigree);
    for (int i = 0; i < pedigree.size(); i++) {
      Shares exact = shares(pedigree, pedigree.code(i));
      double[] row = bulk.row(i);
      for (int k = 0; k < bulk.taxa().size(); k++) {
        String taxon = bulk.taxa().get(k);
        assertThat(row[k]).isCloseTo(exact.of(taxon).toDouble(), within(1e-12));
        assertThat(bulk.share(i, taxon)).isEqualTo(row[k]);
      }
      assertThat(bulk.unknown(i)).isCloseTo(exact.unknown().toDouble(), within(1e-12));
      assertThat(row[bulk.taxa().size()]).isEqualTo(bulk.unknown(i));
    }
  }

  @Property(tries = 200)
  void swappingSeedAndPollenParentChangesNoNuclearShare(
      @ForAll("records") List<PlantRecord> records) {
    Pedigree one = Pedigree.of(records);
    Pedigree other = Pedigree.of(map(records, UnaryOperator.identity(), true));
    for (PlantRecord plant : records) {
      assertThat(shares(other, plant.code())).isEqualTo(shares(one, plant.code()));
    }
  }

  @Property(tries = 200)
  void addingAnUnrelatedPlantChangesNothing(@ForAll("records") List<PlantRecord> records) {
    List<PlantRecord> more = new ArrayList<>(records);
    more.add(0, PlantRecord.pure("stranger", "A. strange"));
    assertSameAnswers(Pedigree.of(records), Pedigree.of(more), records, UnaryOperator.identity());
  }

  @Property(tries = 200)
  void theOrderOfTheRecordsChangesNothing(
      @ForAll("records") List<PlantRecord> records, @ForAll long seed) {
    List<PlantRecord> shuffled = new ArrayList<>(records);
    Collections.shuffle(shuffled, new Random(seed));
    assertSameAnswers(
        Pedigree.of(records), Pedigree.of(shuffled), records, UnaryOperator.identity());
  }

  @Property(tries = 200)
  void otherCodesChangeNothing(@ForAll("records") List<PlantRecord> records) {
    UnaryOperator<String> renamed = code -> "26-" + Integer.parseInt(code.substring(1)) * 7 % 31;
    assertSameAnswers(
        Pedigree.of(records), Pedigree.of(map(records, renamed, false)), records, renamed);
  }

  @Property(tries = 200)
  void aRametEqualsItsPlant(@ForAll("records") List<PlantRecord> records) {
    List<PlantRecord> more = new ArrayList<>(records);
    for (PlantRecord plant : records) {
      more.add(PlantRecord.ramet("ramet of " + plant.code(), plant.code()));
    }
    Pedigree pedigree = Pedigree.of(more);
    GenerationClassifier classes = GenerationClassifier.of(pedigree);
    for (PlantRecord plant : records) {
      String ramet = "ramet of " + plant.code();
      assertThat(shares(pedigree, ramet)).isEqualTo(shares(pedigree, plant.code()));
      assertThat(classes.classOf(ramet)).isEqualTo(classes.classOf(plant.code()));
      assertThat(ExpectedAncestry.of(pedigree, ramet).seedLine().sources())
          .isEqualTo(ExpectedAncestry.of(pedigree, plant.code()).seedLine().sources());
      assertThat(pedigree.genet(pedigree.indexOf(ramet)))
          .isEqualTo(pedigree.genet(pedigree.indexOf(plant.code())));
    }
  }

  @Property(tries = 200)
  void theSeedLineSumsToOne(@ForAll("records") List<PlantRecord> records) {
    Pedigree pedigree = Pedigree.of(records);
    for (PlantRecord plant : records) {
      SeedLine line = SeedLine.of(pedigree, plant.code());
      Fraction sum = line.unknown();
      for (SeedLine.Source source : line.sources()) {
        sum = sum.plus(source.share());
      }
      assertThat(sum).isEqualTo(Fraction.ONE);
      assertThat(line.line()).startsWith(plant.code());
    }
  }

  @Property(tries = 200)
  void theRecordsOfAPedigreeGiveItAgain(@ForAll("records") List<PlantRecord> records) {
    Pedigree pedigree = Pedigree.of(records);
    List<PlantRecord> again = new ArrayList<>();
    for (int i = 0; i < pedigree.size(); i++) {
      again.add(pedigree.plantRecord(i));
    }
    assertThat(again).containsExactlyInAnyOrderElementsOf(records);
  }

  @Property(tries = 200)
  void sharesOfAlternativeClassesSumToOne(@ForAll("records") List<PlantRecord> records) {
    Pedigree pedigree = Pedigree.of(records);
    for (Level level : Level.values()) {
      for (GenerationClass found : GenerationClassifier.of(pedigree).by(level).all()) {
        assertThat(found.text()).isNotBlank();
        if (found instanceof GenerationClass.Mixture mixture) {
          Fraction sum = Fraction.ZERO;
          for (GenerationClass.Alternative one : mixture.alternatives()) {
            sum = sum.plus(one.share());
          }
          assertThat(sum).isEqualTo(Fraction.ONE);
        }
      }
    }
  }

  private static void assertSameAnswers(
      Pedigree one, Pedigree other, List<PlantRecord> records, UnaryOperator<String> name) {
    GenerationClassifier classes = GenerationClassifier.of(one);
    GenerationClassifier otherClasses = GenerationClassifier.of(other);
    for (PlantRecord plant : records) {
      String code = plant.code();
      assertThat(shares(other, name.apply(code))).isEqualTo(shares(one, code));
      assertThat(otherClasses.classOf(name.apply(code)).label())
          .isEqualTo(classes.classOf(code).label());
      assertThat(other.ploidy(other.indexOf(name.apply(code))))
          .isEqualTo(one.ploidy(one.indexOf(code)));
    }
  }

  private static List<PlantRecord> map(
      List<PlantRecord> records, UnaryOperator<String> name, boolean swap) {
    return records.stream()
        .map(plant -> new PlantRecord(name.apply(plant.code()), map(plant.origin(), name, swap)))
        .toList();
  }

  private static Origin map(Origin origin, UnaryOperator<String> name, boolean swap) {
    if (origin instanceof Seedling seedling) {
      return new Seedling(seedling.cases().stream().map(mapped(name, swap)).toList());
    }
    if (origin instanceof Ramet ramet) {
      return new Ramet(name.apply(ramet.of()), ramet.doubled());
    }
    return (Founder) origin;
  }

  private static Function<Case, Case> mapped(UnaryOperator<String> name, boolean swap) {
    return one -> {
      if (one instanceof Case.Copy copy) {
        return new Case.Copy(copy.share(), copy.route(), name.apply(copy.of()));
      }
      Case.Sexual cross = (Case.Sexual) one;
      Gamete seed = gamete(cross.seed(), name);
      Gamete pollen = gamete(cross.pollen(), name);
      return swap
          ? new Case.Sexual(cross.share(), cross.route(), pollen, seed)
          : new Case.Sexual(cross.share(), cross.route(), seed, pollen);
    };
  }

  private static Gamete gamete(Gamete gamete, UnaryOperator<String> name) {
    @Nullable String parent = gamete.parent();
    return new Gamete(parent == null ? null : name.apply(parent), gamete.sets());
  }
}
