package dev.filial.core.register;

import dev.filial.core.heredity.Distortion;
import dev.filial.core.heredity.Distortion.Side;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.SelfIncompatibility;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A locus with its alleles, and what is known of how it is handed on. Where it lies is said by a
 * chromosome and a place on it, or by a neighbour and the recombination with that, or not at all.
 *
 * @param locus its name
 * @param alleles the symbols of its alleles, the most dominant first
 * @param cytoplasmic whether it sits in the cytoplasm, which the seed parent alone hands on
 * @param chromosome the chromosome it lies on, or null
 * @param centimorgans its distance from the end of that chromosome, or null
 * @param linkedTo the locus beside which it lies, or null
 * @param recombination the share of gametes recombined between the two, 0 to ½, or null
 * @param incompatibility whether a style refuses pollen that carries an allele of its own here
 * @param leak how often such a grain comes through all the same, 0 to 1, or null for the usual
 * @param selfFertile alleles that no style refuses
 * @param eggs how much an egg with each allele counts, where that is not 1
 * @param pollen how much a pollen grain with each allele counts, where that is not 1
 * @param remark anything else, or null
 */
public record LocusDeclared(
    String locus,
    List<String> alleles,
    boolean cytoplasmic,
    @Nullable String chromosome,
    @Nullable BigDecimal centimorgans,
    @Nullable String linkedTo,
    @Nullable Fraction recombination,
    boolean incompatibility,
    @Nullable Fraction leak,
    List<String> selfFertile,
    Map<String, Fraction> eggs,
    Map<String, Fraction> pollen,
    @Nullable String remark)
    implements Statement {

  /** What parts names from each other and from their values wherever several are written. */
  private static final Pattern PARTS_NAMES = Pattern.compile("[,;=:]|\\p{Cntrl}");

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if it has no name, its alleles are no alleles, a share or a
   *     weight cannot be, or it lies in two places at once; the message says what to do
   */
  public LocusDeclared {
    Require.text("locus", locus);
    alleles = List.copyOf(alleles);
    selfFertile = List.copyOf(selfFertile);
    eggs = Collections.unmodifiableMap(new LinkedHashMap<>(eggs));
    pollen = Collections.unmodifiableMap(new LinkedHashMap<>(pollen));
    if (PARTS_NAMES.matcher(locus).find()) {
      throw new IllegalArgumentException(
          "\"" + locus + "\" cannot be the name of a gene; leave out , ; = and :");
    }
    Locus built = locus(locus, alleles, cytoplasmic);
    distortions(built, eggs, pollen);
    requirePlace(locus, cytoplasmic, chromosome, centimorgans, linkedTo, recombination);
    if (incompatibility) {
      incompatibility(built, leak, selfFertile);
    } else if (leak != null || !selfFertile.isEmpty()) {
      throw new IllegalArgumentException(
          "the gene "
              + locus
              + " has a leak or self-fertile alleles but refuses no pollen; say that it is"
              + " self-incompatible, or leave them out");
    }
  }

  /** A locus on some chromosome, of which nothing else is known. */
  public static LocusDeclared of(String locus, List<String> alleles) {
    return plain(locus, alleles, false);
  }

  /** A locus in the cytoplasm. */
  public static LocusDeclared ofCytoplasm(String locus, List<String> alleles) {
    return plain(locus, alleles, true);
  }

  private static LocusDeclared plain(String locus, List<String> alleles, boolean cytoplasmic) {
    return new LocusDeclared(
        locus,
        alleles,
        cytoplasmic,
        null,
        null,
        null,
        null,
        false,
        null,
        List.of(),
        Map.of(),
        Map.of(),
        null);
  }

  /** The same beside another locus. */
  public LocusDeclared beside(String neighbour, Fraction recombining) {
    return new LocusDeclared(
        locus,
        alleles,
        cytoplasmic,
        chromosome,
        centimorgans,
        neighbour,
        recombining,
        incompatibility,
        leak,
        selfFertile,
        eggs,
        pollen,
        remark);
  }

  /** The same so far from the end of a chromosome. */
  public LocusDeclared at(String onChromosome, BigDecimal fromItsEnd) {
    return new LocusDeclared(
        locus,
        alleles,
        cytoplasmic,
        onChromosome,
        fromItsEnd,
        linkedTo,
        recombination,
        incompatibility,
        leak,
        selfFertile,
        eggs,
        pollen,
        remark);
  }

  /**
   * The same, refusing pollen.
   *
   * @param leaking how often such pollen comes through, or null for the usual
   * @param neverRefused alleles that no style refuses
   */
  public LocusDeclared refusing(@Nullable Fraction leaking, List<String> neverRefused) {
    return new LocusDeclared(
        locus,
        alleles,
        cytoplasmic,
        chromosome,
        centimorgans,
        linkedTo,
        recombination,
        true,
        leaking,
        neverRefused,
        eggs,
        pollen,
        remark);
  }

  /** The same with gametes that do not count alike. */
  public LocusDeclared weighing(
      Map<String, Fraction> eggsCount, Map<String, Fraction> pollenCounts) {
    return new LocusDeclared(
        locus,
        alleles,
        cytoplasmic,
        chromosome,
        centimorgans,
        linkedTo,
        recombination,
        incompatibility,
        leak,
        selfFertile,
        eggsCount,
        pollenCounts,
        remark);
  }

  private static void requirePlace(
      String locus,
      boolean cytoplasmic,
      @Nullable String chromosome,
      @Nullable BigDecimal centimorgans,
      @Nullable String linkedTo,
      @Nullable Fraction recombination) {
    Require.measure("place of the gene " + locus, centimorgans);
    if (cytoplasmic && (chromosome != null || centimorgans != null || linkedTo != null)) {
      throw new IllegalArgumentException(
          "the gene "
              + locus
              + " sits in the cytoplasm, and so on no chromosome and beside no other gene; leave"
              + " one of the two out");
    }
    if ((chromosome == null) != (centimorgans == null)) {
      throw new IllegalArgumentException(
          chromosome == null
              ? "the gene "
                  + locus
                  + " lies at "
                  + centimorgans
                  + " cM, but on no chromosome; name it"
              : "the gene "
                  + locus
                  + " lies on chromosome "
                  + chromosome
                  + "; say where, in centimorgans from its end");
    }
    if ((linkedTo == null) != (recombination == null)) {
      throw new IllegalArgumentException(
          linkedTo == null
              ? "the gene "
                  + locus
                  + " recombines in "
                  + recombination
                  + " of the gametes, but with no other gene; name it"
              : "the gene "
                  + locus
                  + " lies beside "
                  + linkedTo
                  + "; say in which share of the gametes the two recombine, 0 to 1/2");
    }
    if (chromosome != null) {
      Require.text("chromosome", chromosome);
    }
    if (centimorgans != null && centimorgans.signum() < 0) {
      throw new IllegalArgumentException(
          "the gene "
              + locus
              + " lies at "
              + centimorgans
              + " cM; places are counted from the end of the chromosome, from 0 upwards");
    }
    if (linkedTo == null || recombination == null) {
      return;
    }
    Require.text("linkedTo", linkedTo);
    if (chromosome != null) {
      throw new IllegalArgumentException(
          "the gene "
              + locus
              + " lies on chromosome "
              + chromosome
              + " and also beside "
              + linkedTo
              + "; say where it lies in one of the two ways");
    }
    if (linkedTo.strip().equals(locus.strip())) {
      throw new IllegalArgumentException(
          "the gene " + locus + " cannot lie beside itself; name another");
    }
    if (recombination.signum() < 0 || recombination.compareTo(Fraction.HALF) > 0) {
      throw new IllegalArgumentException(
          "a recombination of "
              + recombination
              + " between "
              + locus
              + " and "
              + linkedTo
              + "; it lies between 0 and 1/2, which is no linkage");
    }
  }

  private static Locus locus(String name, List<String> alleles, boolean cytoplasmic) {
    return new Locus(
        name.strip(), alleles, cytoplasmic ? Locus.Seat.CYTOPLASM : Locus.Seat.NUCLEUS);
  }

  private static List<Distortion> distortions(
      Locus locus, Map<String, Fraction> eggs, Map<String, Fraction> pollen) {
    List<Distortion> distortions = new ArrayList<>();
    if (!eggs.isEmpty()) {
      distortions.add(new Distortion(locus, Side.EGGS, eggs));
    }
    if (!pollen.isEmpty()) {
      distortions.add(new Distortion(locus, Side.POLLEN, pollen));
    }
    return List.copyOf(distortions);
  }

  private static SelfIncompatibility incompatibility(
      Locus locus, @Nullable Fraction leak, List<String> selfFertile) {
    return new SelfIncompatibility(
        locus, leak == null ? SelfIncompatibility.USUAL_LEAK : leak, selfFertile);
  }

  /** The locus itself, its name without outer spaces. */
  public Locus toLocus() {
    return locus(locus, alleles, cytoplasmic);
  }

  /** What favours some of its gametes; empty where all count alike. */
  public List<Distortion> distortions() {
    return distortions(toLocus(), eggs, pollen);
  }

  /** What refuses pollen here; empty where nothing does. */
  public Optional<SelfIncompatibility> selfIncompatibility() {
    return incompatibility
        ? Optional.of(incompatibility(toLocus(), leak, selfFertile))
        : Optional.empty();
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.locus(locus));
  }

  @Override
  public Set<Subject> mentions() {
    return linkedTo == null ? Set.of() : Set.of(Subject.locus(linkedTo));
  }
}
