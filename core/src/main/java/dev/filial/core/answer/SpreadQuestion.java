package dev.filial.core.answer;

import dev.filial.core.ancestry.ClassicPlace;
import dev.filial.core.ancestry.GenerationClass;
import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.ancestry.GenomeDrop;
import dev.filial.core.ancestry.GenomeSpread;
import dev.filial.core.ancestry.ShareSample;
import dev.filial.core.answer.LikelyShares.Likely;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * How far the shares of a plant may lie from the expected ones. Asked as part of {@link
 * AncestryQuestion}.
 *
 * <p>Standard deviations are exact. The likely range is that of genomes dropped down the pedigree
 * if a number of them is asked for, or if the pedigree is small; behind more than {@value #FEW}
 * plants it is that of a normal distribution with the exact standard deviation, to which the share,
 * a sum of many stretches, is then close.
 */
public final class SpreadQuestion {

  /** With no more plants than this behind one, genomes are dropped without being asked for. */
  public static final int FEW = 64;

  /** How many genomes are then dropped. */
  public static final int GENOMES = 2_000;

  /** How many of such plants the likely range holds. */
  public static final double CHANCE = 0.9;

  /** The normal distribution holds {@link #CHANCE} within so many standard deviations. */
  private static final double DEVIATIONS = 1.6448536269514722;

  private static final int STEPS = 20;

  private final Optional<GeneticMap> map;
  private final OptionalInt genomes;
  private final long dice;
  private final @Nullable Double lessThan;

  private SpreadQuestion(
      Optional<GeneticMap> map, OptionalInt genomes, long dice, @Nullable Double lessThan) {
    this.map = map;
    this.genomes = genomes;
    this.dice = dice;
    this.lessThan = lessThan;
  }

  /** By the map that is stated for the taxa, genomes dropped where the pedigree is small. */
  public static SpreadQuestion usual() {
    return new SpreadQuestion(Optional.empty(), OptionalInt.empty(), 1, null);
  }

  /** The same by a map given here. */
  public SpreadQuestion withMap(GeneticMap given) {
    return new SpreadQuestion(Optional.of(given), genomes, dice, lessThan);
  }

  /** The same with a number of genomes dropped, however large the pedigree. */
  public SpreadQuestion withGenomes(int number) {
    return new SpreadQuestion(map, OptionalInt.of(number), dice, lessThan);
  }

  /** The same with other genomes. */
  public SpreadQuestion withDice(long start) {
    return new SpreadQuestion(map, genomes, start, lessThan);
  }

  /**
   * The same, asking for the chance of less than a share too; genomes are dropped for it.
   *
   * @param share 0 to 1
   */
  public SpreadQuestion withLessThan(double share) {
    return new SpreadQuestion(map, genomes, dice, share).withDropping();
  }

  /**
   * The same with genomes dropped in any case, {@value GenomeDrop#GENOMES} if nothing else is said.
   */
  public SpreadQuestion withDropping() {
    return new SpreadQuestion(
        map, genomes.isPresent() ? genomes : OptionalInt.of(GenomeDrop.GENOMES), dice, lessThan);
  }

  /**
   * The answer.
   *
   * @param taxa the taxa in the order of the lines
   * @param generation its generation by its pedigree
   * @param notes what the answer leans on is added here
   * @throws dev.filial.core.ancestry.NoSpreadException if there is no spread to tell
   */
  LikelyShares ask(
      RegisterView view,
      Pedigree pedigree,
      String name,
      List<String> taxa,
      GenerationClass generation,
      List<String> notes) {
    MapInUse found =
        map.map(given -> new MapInUse(given, null, List.of()))
            .orElseGet(() -> MapInUse.of(view, taxa));
    if (!found.isAssumed()) {
      notes.addAll(found.notes());
    }
    GenomeSpread.Spread exact = GenomeSpread.of(pedigree).withMap(found.map()).of(name);
    exact
        .takenAsSelfed()
        .forEach(
            code ->
                notes.add(
                    "How "
                        + code
                        + " was raised after its F2 or its backcross is not known; for the spread it"
                        + " is taken as selfed."));
    boolean drops = genomes.isPresent() || pedigree.size() <= FEW;
    int number = drops ? genomes.orElse(GENOMES) : 0;
    GenomeDrop.Dropped dropped =
        drops
            ? GenomeDrop.of(pedigree)
                .withMap(found.map())
                .withGenomes(number)
                .withSeed(dice)
                .of(name)
            : null;
    List<Likely> lines = new ArrayList<>();
    for (String taxon : taxa) {
      GenomeSpread.OfTaxon its =
          Objects.requireNonNull(exact.of(taxon), "what has a share has a spread");
      lines.add(line(its, dropped == null ? null : dropped.of(taxon)));
    }
    Likely unknown =
        exact.unknown() == null
            ? null
            : line(exact.unknown(), dropped == null ? null : dropped.unknown());
    return new LikelyShares(
        found.map().text(),
        found.statedFor(),
        map.isEmpty() && found.isAssumed(),
        CHANCE,
        number,
        dice,
        lessThan,
        lines,
        unknown,
        exact.different(),
        likeClass(exact, generation));
  }

  private Likely line(GenomeSpread.OfTaxon its, @Nullable ShareSample sample) {
    double deviation = its.standardDeviation();
    if (sample == null) {
      return new Likely(
          its.taxon(),
          Math.max(0, its.mean() - DEVIATIONS * deviation),
          Math.min(1, its.mean() + DEVIATIONS * deviation),
          deviation,
          its.absentAtLocus(),
          null,
          null,
          List.of());
    }
    ShareSample.Range range = sample.central(CHANCE);
    List<Integer> histogram = new ArrayList<>();
    for (int count : sample.histogram(STEPS)) {
      histogram.add(count);
    }
    return new Likely(
        its.taxon(),
        range.low(),
        range.high(),
        deviation,
        its.absentAtLocus(),
        sample.none(),
        lessThan == null ? null : (Double) sample.below(lessThan),
        histogram);
  }

  /**
   * What it is like. A plant that has the share and the difference of a classic generation is as
   * one whatever it is called; one that lies near them and is an F6 by its pedigree is not told
   * that it is nearly an F4.
   */
  private static @Nullable String likeClass(GenomeSpread.Spread exact, GenerationClass generation) {
    if (exact.taxa().size() != 2 || exact.unknown() != null) {
      return null;
    }
    double share = exact.taxa().get(0).mean();
    List<String> words = new ArrayList<>();
    boolean at = false;
    for (ClassicPlace place : ClassicPlace.nearest(share, exact.different())) {
      at |= place.isAt(share, exact.different());
      words.add(place.text());
    }
    boolean known =
        generation instanceof GenerationClass.Filial
            || generation instanceof GenerationClass.Backcross;
    return known && !at ? null : (at ? "as in " : "nearest to ") + String.join(" or ", words);
  }
}
