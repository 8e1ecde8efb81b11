package dev.filial.core.heredity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The genotypes and gametes that are possible at each linkage group of a genome, numbered from 0,
 * and with what chance each genotype hands on each gamete: the tables of which odds over a whole
 * pedigree are made.
 *
 * <p>Tables are made when first asked for and kept. Not to be shared between threads.
 */
public final class GenomeStates {

  /** More genotypes at one group are not written out. */
  private static final int MOST = 6000;

  private final Genome genome;
  private final List<Map<Form, long[]>> states = new ArrayList<>();
  private final List<Map<Form, Map<Long, Integer>>> numbers = new ArrayList<>();
  private final Map<Handing, double[][]> handed = new HashMap<>();

  /**
   * How many chromosome sets a plant or a gamete has, and whether they are of two subgenomes that
   * do not pair with each other.
   *
   * @param sets 1 to 4
   * @param apart whether half of them are one subgenome and half the other
   */
  public record Form(int sets, boolean apart) {
    /**
     * Checks the sets.
     *
     * @throws IllegalArgumentException if they are not 1 to 4, or two subgenomes cannot be made of
     *     them
     */
    public Form {
      if (sets < 1 || sets > Homologs.MOST) {
        throw new IllegalArgumentException(
            sets + " chromosome sets; odds are reckoned for plants of 2, 3 and 4");
      }
      if (apart && sets % 2 != 0) {
        throw new IllegalArgumentException(
            sets + " chromosome sets cannot be of two subgenomes alike");
      }
    }

    /** Sets that all pair with each other. */
    public static Form of(int sets) {
      return new Form(sets, false);
    }
  }

  private record Handing(int group, Form plant, Meiosis meiosis, boolean pollen) {}

  private GenomeStates(Genome genome) {
    this.genome = genome;
    for (int group = 0; group < genome.groups().size(); group++) {
      states.add(new HashMap<>());
      numbers.add(new HashMap<>());
    }
  }

  /** Of that genome; an S locus in it refuses no pollen here. */
  public static GenomeStates of(Genome genome) {
    return new GenomeStates(genome);
  }

  /** The genome. */
  public Genome genome() {
    return genome;
  }

  /** Whether the group is the cytoplasm, of which a plant has one allele, from its seed parent. */
  public boolean isCytoplasm(int group) {
    return genome.groups().get(group).loci().get(0).isCytoplasmic();
  }

  /**
   * How many different ones there are.
   *
   * @throws IllegalArgumentException if there are too many to be gone through
   */
  public int count(int group, Form form) {
    return of(group, form).length;
  }

  private long[] of(int group, Form form) {
    Form kept = isCytoplasm(group) ? Form.of(1) : form;
    long[] found = states.get(group).get(kept);
    if (found == null) {
      found = made(group, kept);
      states.get(group).put(kept, found);
      Map<Long, Integer> numbered = new HashMap<>();
      for (int i = 0; i < found.length; i++) {
        numbered.put(found[i], i);
      }
      numbers.get(group).put(kept, numbered);
    }
    return found;
  }

  private int number(int group, Form form, long homologs) {
    of(group, form);
    Form kept = isCytoplasm(group) ? Form.of(1) : form;
    Integer found = numbers.get(group).getOrDefault(kept, Map.of()).get(homologs);
    if (found == null) {
      throw new IllegalArgumentException(
          Genotype.text(genome.groups().get(group), homologs) + " is no genotype of such a plant");
    }
    return found;
  }

  private long[] made(int group, Form form) {
    int haplotypes = genome.groups().get(group).haplotypes();
    List<int[]> all = new ArrayList<>();
    if (!form.apart()) {
      multisets(haplotypes, new int[form.sets()], 0, 0, all, group);
    } else {
      List<int[]> halves = new ArrayList<>();
      multisets(haplotypes, new int[form.sets() / 2], 0, 0, halves, group);
      for (int[] one : halves) {
        for (int[] other : halves) {
          int[] both = new int[form.sets()];
          System.arraycopy(one, 0, both, 0, one.length);
          System.arraycopy(other, 0, both, one.length, other.length);
          all.add(both);
          requireFew(all.size(), group);
        }
      }
    }
    long[] packed = new long[all.size()];
    for (int i = 0; i < packed.length; i++) {
      packed[i] = form.apart() ? Homologs.apart(all.get(i)) : Homologs.of(all.get(i));
    }
    return packed;
  }

  private void multisets(int kinds, int[] soFar, int place, int least, List<int[]> all, int group) {
    if (place == soFar.length) {
      all.add(soFar.clone());
      requireFew(all.size(), group);
      return;
    }
    for (int kind = least; kind < kinds; kind++) {
      soFar[place] = kind;
      multisets(kinds, soFar, place + 1, kind, all, group);
    }
  }

  private void requireFew(int number, int group) {
    if (number > MOST) {
      throw new IllegalArgumentException(
          "plants can have more than "
              + MOST
              + " genotypes at the linked genes "
              + String.join(
                  ", ", genome.groups().get(group).loci().stream().map(Locus::name).toList())
              + ", which is past what is gone through; ask for fewer linked genes or alleles at"
              + " once");
    }
  }

  /**
   * What gametes a plant of that form makes.
   *
   * @throws IllegalArgumentException if it cannot make gametes in that way
   */
  public static Form gameteOf(Form plant, Meiosis meiosis) {
    if (meiosis instanceof Meiosis.Unreduced) {
      return plant;
    }
    if (meiosis instanceof Meiosis.OfTriploid some) {
      return Form.of(some.sets());
    }
    if (plant.sets() % 2 != 0) {
      throw new IllegalArgumentException(
          "a plant of "
              + plant.sets()
              + " chromosome sets makes gametes of no set number of them; say of how many");
    }
    return new Form(plant.sets() / 2, plant.apart());
  }

  /**
   * With what chance each genotype hands on each gamete, distorted segregation counted in.
   *
   * @param pollen whether pollen or eggs
   * @return by genotype, then by gamete of {@link #gameteOf}; rows sum to 1. Pollen hands on no
   *     cytoplasm: of it there is one gamete.
   * @throws IllegalArgumentException if it is not computed: linkage outside reduced gametes of
   *     diploids
   */
  public double[][] gametes(int group, Form plant, Meiosis meiosis, boolean pollen) {
    return handed.computeIfAbsent(new Handing(group, plant, meiosis, pollen), this::table);
  }

  private double[][] table(Handing handing) {
    int group = handing.group();
    long[] plants = of(group, handing.plant());
    double[][] rows = new double[plants.length][];
    if (isCytoplasm(group)) {
      for (int i = 0; i < rows.length; i++) {
        rows[i] = new double[handing.pollen() ? 1 : plants.length];
        rows[i][handing.pollen() ? 0 : i] = 1;
      }
      return rows;
    }
    Form gamete = gameteOf(handing.plant(), handing.meiosis());
    int kinds = count(group, gamete);
    for (int i = 0; i < rows.length; i++) {
      Masses<Long> gametes =
          Gametes.selfing(
              genome,
              group,
              plants[i],
              handing.plant().sets(),
              handing.meiosis(),
              handing.pollen());
      rows[i] = new double[kinds];
      for (long homologs : gametes.masses().keySet()) {
        rows[i][number(group, gamete, homologs)] = gametes.share(homologs).toDouble();
      }
    }
    return rows;
  }

  /** How many gametes of that form pollen or eggs can be told apart into. */
  public int gametes(int group, Form gamete, boolean pollen) {
    return isCytoplasm(group) && pollen ? 1 : count(group, gamete);
  }

  /** What an egg and a pollen grain give together. */
  public static Form joined(Form egg, Form grain) {
    boolean apart = egg.apart() && grain.apart();
    return new Form(egg.sets() + grain.sets(), apart);
  }

  /**
   * The genotype that an egg and a pollen grain give.
   *
   * @param egg the egg's number
   * @param grain the grain's number
   */
  public int joined(int group, Form eggForm, int egg, Form grainForm, int grain) {
    if (isCytoplasm(group)) {
      return egg;
    }
    return number(
        group,
        joined(eggForm, grainForm),
        Homologs.join(of(group, eggForm)[egg], of(group, grainForm)[grain]));
  }

  /** The genotype with each chromosome of a diploid twice, of the form {@code into}. */
  public int doubled(int group, Form plant, int number, Form into) {
    if (isCytoplasm(group)) {
      return number;
    }
    int[] all = Homologs.all(of(group, plant)[number]);
    int[] twice = new int[2 * all.length];
    for (int i = 0; i < all.length; i++) {
      twice[2 * i] = all[i];
      twice[2 * i + 1] = all[i];
    }
    return number(group, into, into.apart() ? Homologs.apart(twice) : Homologs.of(twice));
  }

  /**
   * The chance of each gamete if each of its sets is drawn from haplotypes of these frequencies.
   *
   * @param frequencies by locus of the group, then by allele
   */
  public double[] drawn(int group, Form gamete, double[][] frequencies) {
    long[] all = of(group, gamete);
    LinkageGroup linked = genome.groups().get(group);
    double[] chances = new double[all.length];
    for (int i = 0; i < all.length; i++) {
      int[] haplotypes = Homologs.all(all[i]);
      double chance = gamete.apart() || isCytoplasm(group) ? 1 : orders(haplotypes);
      for (int haplotype : haplotypes) {
        for (int place = 0; place < frequencies.length; place++) {
          chance *= frequencies[place][linked.allele(haplotype, place)];
        }
      }
      chances[i] = chance;
    }
    return chances;
  }

  /** In how many orders these can be drawn. */
  private static double orders(int[] sorted) {
    double orders = 1;
    int run = 0;
    for (int i = 0; i < sorted.length; i++) {
      run = i > 0 && sorted[i] == sorted[i - 1] ? run + 1 : 1;
      orders *= (double) (i + 1) / run;
    }
    return orders;
  }

  /** How often a genotype has the allele of that place in the order of the locus. */
  public int copies(int group, Form form, int number, int place, int allele) {
    int copies = 0;
    for (int haplotype : Homologs.all(of(group, form)[number])) {
      copies += genome.groups().get(group).allele(haplotype, place) == allele ? 1 : 0;
    }
    return copies;
  }

  /**
   * Which genotypes of a group can be those of a plant of which this was stated: of all loci of the
   * genome, or of some and of others besides; linked ones lie together as they were stated to.
   */
  public boolean[] like(int group, Form form, Genotype stated) {
    long[] all = of(group, form);
    boolean[] like = new boolean[all.length];
    boolean ofThese = stated.genome() == genome;
    StatedPhase phase = StatedPhase.of(genome.groups().get(group), stated);
    for (int i = 0; i < all.length; i++) {
      like[i] = ofThese ? isLike(all[i], stated.homologs(group)) : phase.fits(all[i]);
    }
    return like;
  }

  private static boolean isLike(long here, long wanted) {
    return here == wanted
        || (!Homologs.areApart(wanted)
            && Homologs.areApart(here)
            && Homologs.of(Homologs.all(here)) == wanted);
  }

  /** Whether a genotype fits what must be so at the loci of its group. */
  public boolean fits(int group, Form form, int number, List<Pattern> patterns) {
    for (Pattern pattern : patterns) {
      Genome.Place place = genome.place(pattern.locus());
      if (place.group() == group
          && !pattern.matches(
              Genotype.alleles(genome.groups().get(group), of(group, form)[number], place))) {
        return false;
      }
    }
    return true;
  }

  /**
   * The genotype of all groups.
   *
   * @param numbers its number at each group
   */
  public Genotype genotype(Form form, int[] numbers) {
    long[] homologs = new long[numbers.length];
    for (int group = 0; group < numbers.length; group++) {
      homologs[group] = of(group, form)[numbers[group]];
    }
    return new Genotype(genome, form.sets(), homologs);
  }

  long homologs(int group, Form form, int number) {
    return of(group, form)[number];
  }
}
