package dev.filial.core.ancestry;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Whose cytoplasm a plant has: the line from it through seed parents back to a founder. Plastids
 * and mitochondria come down that line in most flowering plants (not in all).
 *
 * <p>A ramet or an apomict has the cytoplasm of the plant it repeats. The line is followed as far
 * as it is certain; where the ways a plant may have come about have different seed parents, the
 * sources tell how likely each founder's cytoplasm is. Each plant is visited once, without
 * recursion.
 *
 * @param line the codes from the plant back to where the line ends or is no longer certain
 * @param sources the founders whose cytoplasm it may be, with how likely each is
 * @param unknown how likely it is a plant nobody knows; with the sources it sums to exactly 1
 */
public record SeedLine(List<String> line, List<Source> sources, Fraction unknown) {

  /** A line of more plants than this is told by its ends. */
  private static final int LONGEST = 24;

  /** So many of a longer line are told from the plant back. */
  private static final int FIRST = 12;

  /** And so many up to its end. */
  private static final int LAST = 4;

  /** Copies the lists. */
  public SeedLine {
    line = List.copyOf(line);
    sources = List.copyOf(sources);
  }

  /**
   * A founder at the end of the line.
   *
   * @param code the founder
   * @param taxon its taxon if it is pure; null for a hybrid, whose own seed parent nobody recorded
   * @param share how likely it is that founder's cytoplasm
   */
  public record Source(String code, @Nullable String taxon, Fraction share) {
    private String text() {
      return code + " (" + (taxon == null ? "cytoplasm of an unknown taxon" : taxon) + ")";
    }
  }

  /**
   * The seed-parent line of the plant of this code.
   *
   * @throws dev.filial.core.pedigree.PedigreeException if there is no such plant
   */
  public static SeedLine of(Pedigree pedigree, String code) {
    int plant = pedigree.indexOf(code);
    List<String> line = new ArrayList<>();
    List<Source> sources = new ArrayList<>();
    Fraction unknown = Fraction.ZERO;
    NavigableMap<Integer, Fraction> open = new TreeMap<>();
    open.put(plant, Fraction.ONE);
    boolean certain = true;
    while (!open.isEmpty()) {
      // The highest index first: every plant is reached before the plants behind it.
      var next = open.pollLastEntry();
      int at = next.getKey();
      Fraction share = next.getValue();
      certain = certain && share.isOne();
      if (certain) {
        line.add(pedigree.code(at));
      }
      Founder founder = pedigree.founder(at);
      if (founder != null) {
        sources.add(new Source(pedigree.code(at), taxon(founder), share));
      } else if (pedigree.isRamet(at)) {
        open.merge(pedigree.rametOf(at), share, Fraction::plus);
      } else {
        for (Descent descent : pedigree.descents(at)) {
          int donor = donor(descent);
          Fraction part = share.times(descent.share());
          if (donor == Pedigree.UNKNOWN) {
            unknown = unknown.plus(part);
          } else {
            open.merge(donor, part, Fraction::plus);
          }
        }
      }
    }
    return new SeedLine(line, sources, unknown);
  }

  /** The same line without those codes, as of records that are read as the one after them. */
  public SeedLine without(Predicate<String> codes) {
    return new SeedLine(line.stream().filter(codes.negate()).toList(), sources, unknown);
  }

  private static int donor(Descent descent) {
    return descent instanceof Descent.Sexual cross ? cross.seed() : ((Descent.Copy) descent).of();
  }

  private static @Nullable String taxon(Founder founder) {
    return founder.standing() == Standing.PURE ? founder.makeup().shares().firstKey() : null;
  }

  /**
   * The line in words, as {@code 26-013E <- 24-002A <- 22-001C (Echeveria agavoides)}; of more than
   * {@value #LONGEST} plants those in the middle are told by how many they are.
   */
  public String text() {
    StringBuilder text = new StringBuilder(String.join(" <- ", told()));
    if (unknown.isZero() && sources.size() == 1) {
      Source only = sources.get(0);
      if (line.get(line.size() - 1).equals(only.code())) {
        text.setLength(text.length() - only.code().length());
      } else {
        text.append(" <- … <- ");
      }
      return text.append(only.text()).toString();
    }
    text.append(" <- ");
    List<String> ends = new ArrayList<>();
    for (Source source : sources) {
      ends.add(source.text() + " " + source.share().toPercent(2));
    }
    if (!unknown.isZero()) {
      ends.add(unknown.isOne() ? "unknown" : "unknown " + unknown.toPercent(2));
    }
    return text.append(String.join(" or ", ends)).toString();
  }

  private List<String> told() {
    if (line.size() <= LONGEST) {
      return line;
    }
    List<String> told = new ArrayList<>(line.subList(0, FIRST));
    told.add("… " + (line.size() - FIRST - LAST) + " more …");
    told.addAll(line.subList(line.size() - LAST, line.size()));
    return told;
  }
}
