package dev.filial.core.answer;

import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Finds the genes that a text is about by the symbols of their alleles: of {@code Rr ww} those that
 * have the alleles R, r and w. Where a symbol is used twice, as few genes as can be are meant.
 */
public final class GeneReading {

  /** What a text may have between alleles. */
  private static final String BETWEEN = "[\\s;,/|_.*]+";

  /** A text that can be of more sets of genes than this is clear to nobody. */
  private static final int MOST_READINGS = 200;

  private final List<LocusDeclared> declared;

  private GeneReading(List<LocusDeclared> declared) {
    this.declared = declared;
  }

  /** Reads with the genes that {@code view} declares. */
  public static GeneReading in(RegisterView view) {
    return new GeneReading(view.loci());
  }

  /** The gene of that name; failing that, the only one whose name differs by case alone. */
  public Optional<LocusDeclared> called(String name) {
    List<LocusDeclared> alike =
        declared.stream().filter(gene -> name(gene).equalsIgnoreCase(name.strip())).toList();
    return alike.stream()
        .filter(gene -> name(gene).equals(name.strip()))
        .findFirst()
        .or(() -> alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty());
  }

  /** All genes with their alleles, in a few words: {@code tips (T, t), wax (W, w)}. */
  public String known() {
    return declared.stream()
        .map(gene -> name(gene) + " (" + String.join(", ", gene.alleles()) + ")")
        .collect(Collectors.joining(", "));
  }

  /**
   * The names of the genes that texts are about, in the order in which they come up. A text is a
   * genotype, or what a plant must carry: {@code Rr ww}, {@code RW/rw}, {@code R_}, {@code *}.
   *
   * @throws RegisterRefusal if a text is not made of the alleles of declared genes, or may be of
   *     one gene as well as of another
   */
  public List<String> meant(List<String> texts) {
    List<Set<String>> readings = List.of(Set.of());
    for (String text : texts) {
      for (String run : text.split(BETWEEN, -1)) {
        if (!run.isEmpty()) {
          readings = joined(readings, ofRun(run, text));
        }
      }
    }
    int fewest = readings.stream().mapToInt(Set::size).min().orElse(0);
    List<Set<String>> meant = readings.stream().filter(set -> set.size() == fewest).toList();
    if (meant.size() > 1) {
      throw unclear(texts, meant);
    }
    return List.copyOf(meant.get(0));
  }

  private static RegisterRefusal unclear(List<String> texts, List<Set<String>> meant) {
    Set<String> either = new TreeSet<>();
    meant.forEach(either::addAll);
    Set<String> surely = new LinkedHashSet<>(either);
    meant.forEach(surely::retainAll);
    either.removeAll(surely);
    return new RegisterRefusal(
        "\""
            + String.join("\", \"", texts)
            + "\" may be of the gene "
            + String.join(" or ", either)
            + ", which have alleles of the same symbol; name the genes that are meant");
  }

  /** The sets of genes of which a run of symbols may be made. */
  private List<Set<String>> ofRun(String run, String text) {
    List<List<Set<String>>> from = new ArrayList<>();
    for (int i = 0; i <= run.length(); i++) {
      from.add(new ArrayList<>());
    }
    from.get(run.length()).add(Set.of());
    for (int i = run.length() - 1; i >= 0; i--) {
      for (LocusDeclared gene : declared) {
        for (String allele : gene.alleles()) {
          if (run.startsWith(allele, i)) {
            for (Set<String> rest : from.get(i + allele.length())) {
              Set<String> all = new LinkedHashSet<>(Set.of(name(gene)));
              all.addAll(rest);
              addUnlessMore(from.get(i), all);
            }
          }
        }
      }
    }
    if (from.get(0).isEmpty()) {
      throw new RegisterRefusal(
          "\""
              + run
              + "\""
              + (run.equals(text.strip()) ? "" : " in \"" + text + "\"")
              + " is not made of alleles of declared genes; "
              + (declared.isEmpty()
                  ? "declare the gene first"
                  : "there are " + known() + ", or declare the gene first"));
    }
    return from.get(0);
  }

  private static List<Set<String>> joined(List<Set<String>> ones, List<Set<String>> others) {
    List<Set<String>> joined = new ArrayList<>();
    for (Set<String> one : ones) {
      for (Set<String> other : others) {
        Set<String> both = new LinkedHashSet<>(one);
        both.addAll(other);
        addUnlessMore(joined, both);
      }
    }
    return joined;
  }

  /** A set that holds another can never become the smaller one. */
  private static void addUnlessMore(List<Set<String>> sets, Set<String> set) {
    if (sets.stream().noneMatch(set::containsAll)) {
      sets.removeIf(other -> other.containsAll(set));
      sets.add(set);
    }
    if (sets.size() > MOST_READINGS) {
      throw new RegisterRefusal(
          "these alleles can be of many genes, which have the same symbols; name the genes that are"
              + " meant");
    }
  }

  private static String name(LocusDeclared gene) {
    return gene.locus().strip();
  }
}
