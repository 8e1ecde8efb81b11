package dev.filial.core.heredity;

import dev.filial.core.heredity.Symbols.Allele;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the genotype of a plant at all loci of a genome. */
final class GenotypeReader {

  /** Nobody writes more, and what is longer was not meant. */
  private static final int LONGEST = 2000;

  private final Genome genome;
  private final String text;

  /** The haplotypes of each group that were written as such. */
  private final Map<Integer, long[]> whole = new LinkedHashMap<>();

  /** The alleles of each locus that were written by themselves. */
  private final Map<Locus, int[]> alone = new LinkedHashMap<>();

  private GenotypeReader(Genome genome, String text) {
    this.genome = genome;
    this.text = text;
  }

  static Genotype read(Genome genome, String text) {
    if (text.length() > LONGEST) {
      throw new IllegalArgumentException(
          "a genotype of "
              + text.length()
              + " characters; write only the genes that are asked about");
    }
    GenotypeReader reader = new GenotypeReader(genome, text);
    for (String token : text.strip().split("[\\s;,]+", -1)) {
      if (!token.isEmpty()) {
        reader.token(token);
      }
    }
    return reader.genotype();
  }

  private void token(String token) {
    if (token.indexOf('|') >= 0) {
      subgenomes(token);
    } else if (token.indexOf('/') >= 0) {
      haplotypes(token, token.split("/", -1), false);
    } else {
      Map<Locus, List<Integer>> copies = new LinkedHashMap<>();
      for (Allele allele : genome.symbols().read(token, false, text)) {
        copies.computeIfAbsent(allele.locus(), any -> new ArrayList<>()).add(allele.index());
      }
      copies.forEach(this::alone);
    }
  }

  private void alone(Locus locus, List<Integer> copies) {
    int[] alleles = copies.stream().mapToInt(Integer::intValue).sorted().toArray();
    if (whole.containsKey(genome.place(locus).group()) || alone.put(locus, alleles) != null) {
      throw twice(locus);
    }
  }

  private IllegalArgumentException twice(Locus locus) {
    return new IllegalArgumentException(
        "the gene " + locus.name() + " is written twice in \"" + text + "\"; write it once");
  }

  private void subgenomes(String token) {
    String[] halves = token.split("\\|", -1);
    List<String> parts = new ArrayList<>();
    boolean twoEach = halves.length == 2;
    for (String half : halves) {
      int before = parts.size();
      if (half.indexOf('/') >= 0) {
        parts.addAll(List.of(half.split("/", -1)));
      } else {
        for (Allele allele : genome.symbols().read(half, false, text)) {
          parts.add(allele.locus().alleles().get(allele.index()));
        }
      }
      twoEach &= parts.size() == before + 2;
    }
    if (!twoEach) {
      throw new IllegalArgumentException(
          "\""
              + token
              + "\" in \""
              + text
              + "\" is not two subgenomes of two alleles each; write AA|aa");
    }
    haplotypes(token, parts.toArray(String[]::new), true);
  }

  private void haplotypes(String token, String[] parts, boolean apart) {
    int group = -1;
    int[] codes = new int[parts.length];
    for (int i = 0; i < parts.length; i++) {
      if (parts[i].isEmpty()) {
        throw new IllegalArgumentException(
            "\"" + token + "\" in \"" + text + "\" has nothing on one side of a stroke; write A/a");
      }
      List<Allele> alleles = genome.symbols().read(parts[i], true, text);
      for (Allele allele : alleles) {
        int its = genome.place(allele.locus()).group();
        if (group >= 0 && its != group) {
          throw new IllegalArgumentException(
              "\""
                  + token
                  + "\" in \""
                  + text
                  + "\" has genes on different chromosomes; part these by a space");
        }
        group = its;
      }
      codes[i] = haplotype(genome.groups().get(group), alleles, parts[i]);
    }
    long packed = apart ? Homologs.apart(codes) : Homologs.of(codes);
    for (Locus locus : genome.groups().get(group).loci()) {
      if (alone.containsKey(locus)) {
        throw twice(locus);
      }
    }
    if (whole.put(group, new long[] {packed}) != null) {
      throw twice(genome.groups().get(group).loci().get(0));
    }
  }

  private int haplotype(LinkageGroup group, List<Allele> alleles, String part) {
    int[] indexes = new int[group.loci().size()];
    Arrays.fill(indexes, -1);
    for (Allele allele : alleles) {
      int place = genome.place(allele.locus()).place();
      if (indexes[place] >= 0) {
        throw new IllegalArgumentException(
            "\""
                + part
                + "\" in \""
                + text
                + "\" has two alleles of the gene "
                + allele.locus().name()
                + " on one chromosome; write one on each side of the stroke, as A/a");
      }
      indexes[place] = allele.index();
    }
    for (int i = 0; i < indexes.length; i++) {
      if (indexes[i] < 0) {
        throw new IllegalArgumentException(
            "\""
                + part
                + "\" in \""
                + text
                + "\" lacks the gene "
                + group.loci().get(i).name()
                + ", which lies on the same chromosome; write an allele of each on either side of"
                + " the stroke");
      }
    }
    return group.haplotype(indexes);
  }

  private Genotype genotype() {
    int groups = genome.groups().size();
    long[] homologs = new long[groups];
    int ploidy = 0;
    String first = "";
    for (int g = 0; g < groups; g++) {
      LinkageGroup group = genome.groups().get(g);
      homologs[g] = whole.containsKey(g) ? whole.get(g)[0] : ofAlone(group);
      int sets = Homologs.count(homologs[g]);
      if (group.loci().get(0).isCytoplasmic()) {
        if (sets != 1) {
          throw new IllegalArgumentException(
              "the gene "
                  + group.loci().get(0).name()
                  + " sits in the cytoplasm; write the one allele that it has there");
        }
      } else if (ploidy == 0) {
        ploidy = sets;
        first = group.loci().get(0).name();
      } else if (sets != ploidy) {
        throw new IllegalArgumentException(
            "\""
                + text
                + "\" has "
                + alleles(ploidy)
                + " of "
                + first
                + " but "
                + alleles(sets)
                + " of "
                + group.loci().get(0).name()
                + "; a plant has as many of each as it has chromosome sets");
      }
    }
    if (ploidy == 1) {
      throw new IllegalArgumentException(
          "\"" + text + "\" has one allele of each gene; a plant has two, three or four");
    }
    return new Genotype(genome, ploidy == 0 ? 2 : ploidy, homologs);
  }

  private static String alleles(int number) {
    return number == 1 ? "one allele" : number + " alleles";
  }

  private long ofAlone(LinkageGroup group) {
    List<int[]> written = new ArrayList<>();
    for (Locus locus : group.loci()) {
      int[] alleles = alone.get(locus);
      if (alleles == null) {
        throw new IllegalArgumentException(
            "\""
                + text
                + "\" says nothing of the gene "
                + locus.name()
                + " ("
                + String.join(", ", locus.alleles())
                + "); write its alleles too, as "
                + example(locus));
      }
      written.add(alleles);
    }
    int sets = written.get(0).length;
    int segregating = 0;
    for (int i = 0; i < written.size(); i++) {
      if (written.get(i).length != sets) {
        throw new IllegalArgumentException(
            "\""
                + text
                + "\" has "
                + alleles(sets)
                + " of "
                + group.loci().get(0).name()
                + " but "
                + alleles(written.get(i).length)
                + " of "
                + group.loci().get(i).name()
                + "; a plant has as many of each as it has chromosome sets");
      }
      int[] alleles = written.get(i);
      segregating += alleles[0] != alleles[sets - 1] ? 1 : 0;
    }
    int[] haplotypes = new int[sets];
    for (int copy = 0; copy < sets; copy++) {
      int[] indexes = new int[written.size()];
      for (int i = 0; i < indexes.length; i++) {
        indexes[i] = written.get(i)[copy];
      }
      haplotypes[copy] = group.haplotype(indexes);
    }
    if (segregating > 1) {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" does not say which alleles lie together on one chromosome; write "
              + Genotype.text(group, Homologs.of(haplotypes))
              + (sets == 2
                  ? " or " + Genotype.text(group, turned(group, written))
                  : " or another"));
    }
    return Homologs.of(haplotypes);
  }

  /** The other arrangement of the last locus that segregates, for the message. */
  private static long turned(LinkageGroup group, List<int[]> written) {
    int last = 0;
    for (int i = 0; i < written.size(); i++) {
      last = written.get(i)[0] != written.get(i)[1] ? i : last;
    }
    int[] haplotypes = new int[2];
    for (int copy = 0; copy < 2; copy++) {
      int[] indexes = new int[written.size()];
      for (int i = 0; i < indexes.length; i++) {
        indexes[i] = written.get(i)[i == last ? 1 - copy : copy];
      }
      haplotypes[copy] = group.haplotype(indexes);
    }
    return Homologs.of(haplotypes);
  }

  private static String example(Locus locus) {
    String one = locus.alleles().get(0);
    String other = locus.alleles().get(1);
    if (locus.isCytoplasmic()) {
      return one;
    }
    return one.length() == 1 && other.length() == 1 ? one + other : one + "/" + other;
  }
}
