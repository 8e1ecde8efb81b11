package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The gametes of a parent at one linkage group, packed as {@link Homologs}, and their chances.
 *
 * <p>Cost for a diploid of n linked loci: the number of different gametes times n, at most 2ⁿ·n.
 */
final class Gametes {

  private static final BigInteger TWO = BigInteger.TWO;

  /** Of a plant nobody knows all pairs of haplotypes are gone through if gametes are favoured. */
  private static final int MOST_PAIRED = 100;

  /** Ten linked loci of a selfed multiple heterozygote: 1024 times 1024. */
  private static final int MOST_PAIRS = 1 << 18;

  private final Genome genome;
  private final int group;
  private final LinkageGroup linked;
  private final boolean pollen;

  private Gametes(Genome genome, int group, boolean pollen) {
    this.genome = genome;
    this.group = group;
    this.linked = genome.groups().get(group);
    this.pollen = pollen;
  }

  /**
   * Those of a parent before any style refuses them.
   *
   * @param pollen whether it is the pollen parent
   * @throws IllegalArgumentException if the plant cannot form gametes in that way, or what they are
   *     is not computed
   */
  static Masses<Long> of(Genome genome, int group, Parent parent, boolean pollen) {
    Gametes gametes = new Gametes(genome, group, pollen);
    if (gametes.linked.loci().get(0).isCytoplasmic()) {
      return gametes.ofCytoplasm(parent);
    }
    if (parent instanceof Parent.Plant plant) {
      return gametes.favoured(
          gametes.ofPlant(
              plant.genotype().homologs(group), plant.genotype().ploidy(), plant.meiosis()));
    }
    return gametes.ofTaxon((Parent.OfTaxon) parent);
  }

  /**
   * What a plant throws at one linkage group when it is selfed.
   *
   * @throws IllegalArgumentException if it refuses all of its own pollen
   */
  static Masses<Long> selfed(Genome genome, int group, long homologs, int ploidy, Meiosis meiosis) {
    if (genome.groups().get(group).loci().get(0).isCytoplasmic()) {
      return Masses.certain(homologs);
    }
    Masses<Long> eggs = selfing(genome, group, homologs, ploidy, meiosis, false);
    Masses<Long> grains = selfing(genome, group, homologs, ploidy, meiosis, true);
    if (ploidy == 2 && isAllRefused(genome, group, grains, homologs)) {
      throw new IllegalArgumentException(
          "nothing comes of a seedling that is selfed: by its S alleles it refuses all of its own"
              + " pollen, and none leaks");
    }
    return joined(eggs, styled(genome, group, grains, homologs, ploidy));
  }

  static Masses<Long> selfing(
      Genome genome, int group, long homologs, int ploidy, Meiosis meiosis, boolean pollen) {
    Gametes gametes = new Gametes(genome, group, pollen);
    return gametes.favoured(gametes.ofPlant(homologs, ploidy, meiosis));
  }

  /** Pollen through the style of a known plant, where the S locus lies in this group. */
  static Masses<Long> styled(
      Genome genome, int group, Masses<Long> pollen, long style, int ploidy) {
    if (!genome.hasSLocusIn(group)) {
      return pollen;
    }
    SelfIncompatibility refusing = genome.selfIncompatibility().orElseThrow();
    boolean diploid = ploidy == 2;
    for (long grain : pollen.masses().keySet()) {
      diploid &= Homologs.count(grain) == 1;
    }
    if (!diploid) {
      throw new IllegalArgumentException(
          "the S locus "
              + refusing.locus().name()
              + " is reckoned with between diploids, whose pollen has one set; leave it out");
    }
    return through(genome, group, pollen, style, refusing);
  }

  /**
   * What comes of eggs and grains.
   *
   * @throws IllegalArgumentException if there are too many pairs to go through
   */
  static Masses<Long> joined(Masses<Long> eggs, Masses<Long> grains) {
    if ((long) eggs.size() * grains.size() > MOST_PAIRS) {
      throw new IllegalArgumentException(
          "the parents have "
              + eggs.size()
              + " and "
              + grains.size()
              + " kinds of gametes at one linkage group; at most "
              + MOST_PAIRS
              + " pairs of them are gone through. Ask for fewer linked genes at once");
    }
    Masses<Long> seedlings = new Masses<>();
    eggs.masses()
        .forEach(
            (egg, eggMass) ->
                grains
                    .masses()
                    .forEach(
                        (grain, mass) ->
                            seedlings.add(Homologs.join(egg, grain), eggMass.multiply(mass))));
    return seedlings.reduced();
  }

  private Masses<Long> ofCytoplasm(Parent parent) {
    if (pollen) {
      return Masses.certain(0L);
    }
    if (parent instanceof Parent.Plant plant) {
      return Masses.certain(plant.genotype().homologs(group));
    }
    return haplotypes((Parent.OfTaxon) parent);
  }

  private Masses<Long> ofPlant(long homologs, int ploidy, Meiosis meiosis) {
    int[] all = Homologs.all(homologs);
    if (meiosis instanceof Meiosis.Reduced) {
      if (ploidy == 2) {
        return ofDiploid(all[0], all[1]);
      }
      if (ploidy == 4 && Homologs.areApart(homologs)) {
        requireOneSegregating(all);
        return ofSubgenomes(all);
      }
      throw new IllegalArgumentException(
          ploidy == 3
              ? "a triploid forms gametes of one set or of two; say which"
              : "a tetraploid's gametes depend on how its chromosomes pair; say whether any two"
                  + " of the four (tetrasomic), or only those of one subgenome (disomic)");
    }
    requireOneSegregating(all);
    if (meiosis instanceof Meiosis.Tetrasomic tetrasomic) {
      requirePloidy(4, ploidy, "tetrasomic inheritance");
      if (Homologs.areApart(homologs)) {
        throw new IllegalArgumentException(
            Genotype.text(linked, homologs)
                + " is written with two subgenomes that do not pair with each other; leave out the |"
                + " where any two of the four chromosomes pair");
      }
      return ofTetraploid(all, tetrasomic.doubleReduction());
    }
    if (meiosis instanceof Meiosis.Unreduced unreduced) {
      requirePloidy(2, ploidy, "an unreduced gamete");
      return unreduced(all, unreduced.kept());
    }
    requirePloidy(3, ploidy, "a triploid's gamete");
    return ofTriploid(all, ((Meiosis.OfTriploid) meiosis).sets());
  }

  private static void requirePloidy(int wanted, int ploidy, String what) {
    if (ploidy != wanted) {
      throw new IllegalArgumentException(
          what
              + " is reckoned for plants of "
              + wanted
              + " chromosome sets, and this one has "
              + ploidy);
    }
  }

  /** Linkage is computed through reduced gametes of diploids alone. */
  private void requireOneSegregating(int[] haplotypes) {
    int segregating = 0;
    for (int place = 0; place < linked.loci().size(); place++) {
      int first = linked.allele(haplotypes[0], place);
      for (int haplotype : haplotypes) {
        if (linked.allele(haplotype, place) != first) {
          segregating++;
          break;
        }
      }
    }
    if (segregating > 1) {
      throw new IllegalArgumentException(
          "the genes "
              + String.join(", ", linked.loci().stream().map(Locus::name).toList())
              + " are linked and more than one of them segregates; linkage is computed through"
              + " reduced gametes of diploids, not through polyploids or unreduced gametes. Ask for"
              + " one of them");
    }
  }

  /** No interference: the strand changes between neighbours by their recombination alone. */
  private Masses<Long> ofDiploid(int one, int other) {
    if (one == other) {
      return Masses.certain(Homologs.of(one));
    }
    int[] strands = {one, other};
    Masses<Long> states = new Masses<>();
    states.add((long) linked.allele(one, 0) << 1, BigInteger.ONE);
    states.add((long) linked.allele(other, 0) << 1 | 1, BigInteger.ONE);
    for (int place = 1; place < linked.loci().size(); place++) {
      Fraction recombination = linked.recombination().get(place - 1);
      BigInteger changing = recombination.numerator();
      BigInteger staying = recombination.denominator().subtract(changing);
      int alleles = linked.loci().get(place).alleles().size();
      Masses<Long> next = new Masses<>();
      for (Map.Entry<Long, BigInteger> state : states.masses().entrySet()) {
        for (int strand = 0; strand < 2; strand++) {
          boolean stays = (state.getKey() & 1) == strand;
          long code = (state.getKey() >> 1) * alleles + linked.allele(strands[strand], place);
          next.add(code << 1 | strand, state.getValue().multiply(stays ? staying : changing));
        }
      }
      states = next;
    }
    Masses<Long> gametes = new Masses<>();
    states.masses().forEach((state, mass) -> gametes.add(Homologs.of((int) (state >> 1)), mass));
    return gametes.reduced();
  }

  private static Masses<Long> ofSubgenomes(int[] all) {
    Masses<Long> gametes = new Masses<>();
    for (int i = 0; i < 2; i++) {
      for (int j = 2; j < 4; j++) {
        gametes.add(Homologs.apart(all[i], all[j]), BigInteger.ONE);
      }
    }
    return gametes.reduced();
  }

  private static Masses<Long> ofTetraploid(int[] all, Fraction doubleReduction) {
    BigInteger twice = doubleReduction.numerator();
    BigInteger once = doubleReduction.denominator().subtract(twice);
    Masses<Long> gametes = new Masses<>();
    for (int i = 0; i < 4; i++) {
      // Of twelve parts each of the six pairs takes two, and each of the four doubles three.
      gametes.add(Homologs.of(all[i], all[i]), twice.multiply(BigInteger.valueOf(3)));
      for (int j = i + 1; j < 4; j++) {
        gametes.add(Homologs.of(all[i], all[j]), once.multiply(TWO));
      }
    }
    return gametes.reduced();
  }

  private static Masses<Long> unreduced(int[] all, Fraction kept) {
    BigInteger lost = kept.denominator().subtract(kept.numerator());
    Masses<Long> gametes = new Masses<>();
    gametes.add(Homologs.of(all), kept.numerator().multiply(TWO));
    gametes.add(Homologs.of(all[0], all[0]), lost);
    gametes.add(Homologs.of(all[1], all[1]), lost);
    return gametes.reduced();
  }

  private static Masses<Long> ofTriploid(int[] all, int sets) {
    Masses<Long> gametes = new Masses<>();
    for (int i = 0; i < 3; i++) {
      gametes.add(
          sets == 1 ? Homologs.of(all[i]) : Homologs.of(all[i], all[(i + 1) % 3]), BigInteger.ONE);
    }
    return gametes.reduced();
  }

  private Masses<Long> ofTaxon(Parent.OfTaxon taxon) {
    Masses<Long> haplotypes = haplotypes(taxon);
    if (genome.distortions().stream().noneMatch(this::concerns)) {
      return haplotypes;
    }
    if (haplotypes.size() > MOST_PAIRED) {
      throw new IllegalArgumentException(
          "an unknown plant of a taxon can have too many kinds of gametes here to reckon with"
              + " distorted segregation; name its genotype");
    }
    // What is favoured is favoured within each plant that has both, not in the taxon.
    Map<Long, Fraction> shares = new LinkedHashMap<>();
    for (Long one : haplotypes.masses().keySet()) {
      for (Long other : haplotypes.masses().keySet()) {
        Fraction plant = haplotypes.share(one).times(haplotypes.share(other));
        Masses<Long> its = favoured(ofDiploid(Homologs.at(one, 0), Homologs.at(other, 0)));
        for (Long gamete : its.masses().keySet()) {
          shares.merge(gamete, plant.times(its.share(gamete)), Fraction::plus);
        }
      }
    }
    return Masses.ofShares(shares);
  }

  /** Linkage equilibrium: the frequency of a haplotype is the product of those of its alleles. */
  private Masses<Long> haplotypes(Parent.OfTaxon taxon) {
    Map<Long, Fraction> shares = new LinkedHashMap<>();
    shares.put(0L, Fraction.ONE);
    for (Locus locus : linked.loci()) {
      Map<String, Fraction> frequencies = taxon.frequencies().get(locus.name());
      if (frequencies == null) {
        throw new IllegalArgumentException(
            "nothing is said of how often each allele of the gene " + locus.name() + " is found");
      }
      frequencies.keySet().forEach(locus::index);
      Map<Long, Fraction> next = new LinkedHashMap<>();
      shares.forEach(
          (code, share) ->
              frequencies.forEach(
                  (allele, frequency) -> {
                    if (!frequency.isZero()) {
                      next.put(
                          code * locus.alleles().size() + locus.index(allele),
                          share.times(frequency));
                    }
                  }));
      shares = next;
    }
    Map<Long, Fraction> packed = new LinkedHashMap<>();
    shares.forEach((code, share) -> packed.put(Homologs.of(code.intValue()), share));
    return Masses.ofShares(packed);
  }

  private boolean concerns(Distortion distortion) {
    return distortion.touches(pollen) && genome.place(distortion.locus()).group() == group;
  }

  private Masses<Long> favoured(Masses<Long> gametes) {
    Masses<Long> weighted = gametes;
    for (Distortion distortion : genome.distortions()) {
      int place = genome.place(distortion.locus()).place();
      if (concerns(distortion) && differ(weighted, place)) {
        weighted =
            weighted(
                weighted,
                gamete -> {
                  Fraction weight = Fraction.ONE;
                  for (int haplotype : Homologs.all(gamete)) {
                    weight = weight.times(distortion.weight(linked.allele(haplotype, place)));
                  }
                  return weight;
                });
      }
    }
    return weighted;
  }

  /** Where a plant has one allele alone there is nothing to favour, though that one be weak. */
  private boolean differ(Masses<Long> gametes, int place) {
    int first = -1;
    for (long gamete : gametes.masses().keySet()) {
      for (int haplotype : Homologs.all(gamete)) {
        int allele = linked.allele(haplotype, place);
        if (first >= 0 && allele != first) {
          return true;
        }
        first = allele;
      }
    }
    return false;
  }

  /** What a gamete counts. */
  private interface Weight {
    Fraction of(long gamete);
  }

  private static Masses<Long> weighted(Masses<Long> gametes, Weight weight) {
    Map<Long, Fraction> shares = new LinkedHashMap<>();
    Fraction sum = Fraction.ZERO;
    for (Long gamete : gametes.masses().keySet()) {
      Fraction mass =
          new Fraction(gametes.masses().get(gamete), BigInteger.ONE).times(weight.of(gamete));
      shares.put(gamete, mass);
      sum = sum.plus(mass);
    }
    if (sum.isZero()) {
      throw new IllegalArgumentException(
          "no gamete is left: the plant carries none of the alleles that are handed on");
    }
    return Masses.ofShares(shares);
  }

  /**
   * Pollen as a style lets it through.
   *
   * @param style the seed parent's homologs
   */
  private static Masses<Long> through(
      Genome genome, int group, Masses<Long> pollen, long style, SelfIncompatibility refusing) {
    LinkageGroup linked = genome.groups().get(group);
    if (isAllRefused(genome, group, pollen, style)) {
      throw new IllegalArgumentException(
          "no pollen comes through: the style carries every S allele of the pollen parent, and"
              + " none leaks");
    }
    return weighted(
        pollen,
        grain ->
            isRefused(genome, linked, grain, style, refusing) ? refusing.leak() : Fraction.ONE);
  }

  /** Whether a style lets nothing of this pollen through, not even a leak. */
  private static boolean isAllRefused(Genome genome, int group, Masses<Long> pollen, long style) {
    if (!genome.hasSLocusIn(group)) {
      return false;
    }
    SelfIncompatibility refusing = genome.selfIncompatibility().orElseThrow();
    LinkageGroup linked = genome.groups().get(group);
    return refusing.leak().isZero()
        && pollen.masses().keySet().stream()
            .allMatch(grain -> isRefused(genome, linked, grain, style, refusing));
  }

  static boolean isRefused(
      Genome genome, LinkageGroup linked, long grain, long style, SelfIncompatibility refusing) {
    int place = genome.place(refusing.locus()).place();
    int allele = linked.allele(Homologs.at(grain, 0), place);
    if (refusing.isSelfFertile(allele)) {
      return false;
    }
    for (int haplotype : Homologs.all(style)) {
      if (linked.allele(haplotype, place) == allele) {
        return true;
      }
    }
    return false;
  }
}
