package dev.filial.core.heredity;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which genotypes a table says nothing of. Locus by locus, genotypes that leave the same rows open
 * are taken together, so that the number of loci does not multiply the work.
 */
final class Coverage {

  private Coverage() {}

  /** Examples of genotypes that no row fits, at most so many; empty if all are covered. */
  static List<String> missed(TraitModel model, int ploidy, int most) {
    List<TraitModel.Row> rows = model.rows();
    Map<BigInteger, List<String>> open = new LinkedHashMap<>();
    open.put(BigInteger.ONE.shiftLeft(rows.size()).subtract(BigInteger.ONE), List.of(""));
    for (Locus locus : model.loci()) {
      Map<BigInteger, List<String>> here = ofLocus(rows, locus, ploidy, most);
      Map<BigInteger, List<String>> next = new LinkedHashMap<>();
      open.forEach(
          (left, examples) ->
              here.forEach(
                  (mask, genotypes) -> {
                    List<String> all =
                        next.computeIfAbsent(left.and(mask), any -> new ArrayList<>());
                    for (String example : examples) {
                      for (String genotype : genotypes) {
                        if (all.size() < most) {
                          all.add(example.isEmpty() ? genotype : example + " " + genotype);
                        }
                      }
                    }
                  }));
      open = next;
    }
    return open.getOrDefault(BigInteger.ZERO, List.of());
  }

  /** The rows that hold for no plant, because rows above them hold for all that fit them. */
  static List<TraitModel.Row> dead(TraitModel model, int... ploidies) {
    List<TraitModel.Row> rows = model.rows();
    Set<Integer> holding = new HashSet<>();
    for (int ploidy : ploidies) {
      Set<BigInteger> open = new HashSet<>();
      open.add(BigInteger.ONE.shiftLeft(rows.size()).subtract(BigInteger.ONE));
      for (Locus locus : model.loci()) {
        Set<BigInteger> next = new HashSet<>();
        for (BigInteger here : ofLocus(model.rows(), locus, ploidy, 1).keySet()) {
          open.forEach(left -> next.add(left.and(here)));
        }
        open = next;
      }
      open.forEach(left -> holding.add(left.getLowestSetBit()));
    }
    List<TraitModel.Row> dead = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      if (!holding.contains(row)) {
        dead.add(rows.get(row));
      }
    }
    return dead;
  }

  private static Map<BigInteger, List<String>> ofLocus(
      List<TraitModel.Row> rows, Locus locus, int ploidy, int most) {
    Map<BigInteger, List<String>> found = new LinkedHashMap<>();
    int copies = locus.isCytoplasmic() ? 1 : ploidy;
    int[] alleles = new int[copies];
    do {
      BigInteger mask = BigInteger.ZERO;
      for (int row = 0; row < rows.size(); row++) {
        if (fits(rows.get(row), locus, alleles)) {
          mask = mask.setBit(row);
        }
      }
      List<String> examples = found.computeIfAbsent(mask, any -> new ArrayList<>());
      if (examples.size() < most) {
        examples.add(Genotype.text(LinkageGroup.of(locus), Homologs.of(alleles)));
      }
    } while (next(alleles, locus.alleles().size()));
    return found;
  }

  static boolean fits(TraitModel.Row row, Locus locus, int[] alleles) {
    for (Pattern pattern : row.patterns()) {
      if (pattern.locus().equals(locus)) {
        return pattern.matches(alleles);
      }
    }
    return true;
  }

  /** The next combination with repetition, in rising order within it. */
  private static boolean next(int[] alleles, int number) {
    for (int i = alleles.length - 1; i >= 0; i--) {
      if (alleles[i] < number - 1) {
        Arrays.fill(alleles, i, alleles.length, alleles[i] + 1);
        return true;
      }
    }
    return false;
  }
}
