package dev.filial.core.heredity;

import dev.filial.core.heredity.Symbols.Allele;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What a genotype must be like at one locus.
 *
 * <p>Open, as {@code A_}: these alleles at least, whatever the others are. Closed, as {@code Aa}:
 * just these; two alleles stand for any ploidy, {@code aa} for nothing but a, {@code Aa} for both A
 * and a and nothing else, while three or four, as {@code AAAa}, stand for plants of just that many
 * chromosome sets.
 *
 * @param locus the locus
 * @param alleles the symbols of the alleles
 * @param open whether others may stand beside them
 */
public record Pattern(Locus locus, List<String> alleles, boolean open) {

  /**
   * Checks the alleles.
   *
   * @throws IllegalArgumentException if there is none, the locus lacks one, or their number fits no
   *     plant
   */
  public Pattern {
    Objects.requireNonNull(locus, "locus");
    alleles = List.copyOf(alleles);
    alleles.forEach(locus::index);
    if (alleles.isEmpty() || alleles.size() > Homologs.MOST) {
      throw new IllegalArgumentException(
          alleles.size() + " alleles of the gene " + locus.name() + "; write one to four");
    }
    if (locus.isCytoplasmic() && (open || alleles.size() > 1)) {
      throw new IllegalArgumentException(
          "the gene "
              + locus.name()
              + " sits in the cytoplasm; write the one allele that a plant has there");
    }
    if (!locus.isCytoplasmic() && !open && alleles.size() == 1) {
      String allele = alleles.get(0);
      throw new IllegalArgumentException(
          "\""
              + allele
              + "\" does not say what stands beside it; write "
              + allele
              + "_ for one at least, or "
              + (allele.length() == 1 ? allele + allele : allele + "/" + allele)
              + " for nothing else");
    }
  }

  /**
   * Reads the patterns of a row: {@code A_ bb}, {@code A_bb}, {@code S1/_}; {@code *} is any plant.
   *
   * @param loci the loci that may be written
   * @throws IllegalArgumentException if the text is not made of their alleles, or a locus stands in
   *     two places
   */
  public static List<Pattern> read(List<Locus> loci, String text) {
    Symbols symbols = new Symbols(loci);
    Map<Locus, List<String>> written = new LinkedHashMap<>();
    Map<Locus, Boolean> open = new LinkedHashMap<>();
    for (String token : text.strip().split("[\\s;,]+", -1)) {
      if (token.isEmpty() || token.equals("*")) {
        continue;
      }
      String[] runs = token.replace('/', '.').split("_", -1);
      for (int i = 0; i < runs.length; i++) {
        String run = runs[i].replaceAll("^\\.|\\.$", "");
        boolean parted = !run.equals(runs[i]);
        List<Allele> alleles = run.isEmpty() ? List.of() : symbols.read(run, parted, text);
        Set<Locus> before = Set.copyOf(written.keySet());
        for (Allele allele : alleles) {
          if (before.contains(allele.locus())) {
            throw new IllegalArgumentException(
                "the gene "
                    + allele.locus().name()
                    + " stands in two places in \""
                    + text
                    + "\"; write it once");
          }
          written
              .computeIfAbsent(allele.locus(), any -> new ArrayList<>())
              .add(allele.locus().alleles().get(allele.index()));
        }
        boolean last = i == runs.length - 1;
        if (!last && i == 0 && alleles.isEmpty()) {
          throw new IllegalArgumentException(
              "\"" + token + "\" in \"" + text + "\" begins with _; write A_ for one A at least");
        }
        if (!last && !alleles.isEmpty()) {
          open.put(alleles.get(alleles.size() - 1).locus(), true);
        }
      }
    }
    List<Pattern> patterns = new ArrayList<>();
    written.forEach(
        (locus, alleles) ->
            patterns.add(new Pattern(locus, alleles, open.getOrDefault(locus, false))));
    return List.copyOf(patterns);
  }

  /**
   * Whether a plant fits.
   *
   * @param present the places of its alleles in the order of the locus, rising
   */
  boolean matches(int[] present) {
    int[] wanted = alleles.stream().mapToInt(locus::index).sorted().toArray();
    if (open) {
      int found = 0;
      for (int i = 0; i < present.length && found < wanted.length; i++) {
        found += present[i] == wanted[found] ? 1 : 0;
      }
      return found == wanted.length;
    }
    if (wanted.length == present.length) {
      return Arrays.equals(wanted, present);
    }
    return wanted.length == 2
        && Arrays.equals(
            Arrays.stream(wanted).distinct().toArray(),
            Arrays.stream(present).distinct().toArray());
  }

  /** As it can be read again. */
  public String text() {
    boolean shortOnes = alleles.stream().allMatch(allele -> allele.length() == 1);
    return String.join(shortOnes ? "" : "/", alleles) + (open ? shortOnes ? "_" : "/_" : "");
  }
}
