package dev.filial.core.heredity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The symbols of the alleles of several loci, each known by its symbol alone. */
final class Symbols {

  /** An allele of a locus. */
  record Allele(Locus locus, int index) {}

  private final Map<String, Allele> alleles = new LinkedHashMap<>();

  /**
   * Of these loci.
   *
   * @throws IllegalArgumentException if two have an allele of the same symbol
   */
  Symbols(List<Locus> loci) {
    for (Locus locus : loci) {
      for (int i = 0; i < locus.alleles().size(); i++) {
        Allele other = alleles.put(locus.alleles().get(i), new Allele(locus, i));
        if (other != null) {
          throw new IllegalArgumentException(
              "the genes "
                  + other.locus().name()
                  + " and "
                  + locus.name()
                  + " both have an allele "
                  + locus.alleles().get(i)
                  + ", and a genotype could not be read; call one of them otherwise");
        }
      }
    }
  }

  /**
   * Takes alleles that are written without a space apart, dots between them left out. What stands
   * between two dots or strokes and is the symbol of an allele is that allele, whatever else it
   * could be: of a series C, cch, ch, c the first of {@code cch/c} is not c and ch.
   *
   * @param text as {@code AaBb} or {@code S1.b}
   * @param parted whether it stood beside a stroke
   * @param whole what it stands in, for the message
   * @throws IllegalArgumentException if the text is no row of known symbols, or can be read in two
   *     ways
   */
  List<Allele> read(String text, boolean parted, String whole) {
    List<Allele> read = new ArrayList<>();
    String[] runs = text.split("\\.", -1);
    for (String run : runs) {
      Allele one = parted || runs.length > 1 ? alleles.get(run) : null;
      if (one == null) {
        read.addAll(run(run, text, whole));
      } else {
        read.add(one);
      }
    }
    return read;
  }

  private List<Allele> run(String run, String text, String whole) {
    List<List<Allele>> readings = new ArrayList<>();
    if (!run.isEmpty()) {
      read(run, 0, new ArrayList<>(), readings, new boolean[run.length() + 1]);
    }
    if (readings.size() == 1) {
      return readings.get(0);
    }
    String named = "\"" + text + "\"" + (text.equals(whole) ? "" : " in \"" + whole + "\"");
    throw new IllegalArgumentException(
        readings.isEmpty()
            ? named
                + " is made of no known alleles; they are "
                + String.join(", ", alleles.keySet())
            : named + " can be read in two ways; part its alleles by dots or strokes");
  }

  /**
   * At most two readings are looked for: more would be no clearer.
   *
   * @param dead places from which no reading leads to the end
   */
  private void read(
      String run, int from, List<Allele> soFar, List<List<Allele>> readings, boolean[] dead) {
    if (from == run.length()) {
      readings.add(List.copyOf(soFar));
      return;
    }
    int before = readings.size();
    for (Map.Entry<String, Allele> symbol : alleles.entrySet()) {
      int to = from + symbol.getKey().length();
      if (readings.size() < 2 && run.startsWith(symbol.getKey(), from) && !dead[to]) {
        soFar.add(symbol.getValue());
        read(run, to, soFar, readings, dead);
        soFar.remove(soFar.size() - 1);
      }
    }
    dead[from] = readings.size() == before;
  }
}
