package dev.filial.core.ancestry;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Which generation a plant is: F1, F2, BC1 and so on. It counts from pure plants of the level asked
 * for; generations since the wild are another count and are never written F.
 */
public sealed interface GenerationClass {

  /** As short as a label has it: {@code F2}, {@code BC1}, {@code complex}. */
  String label();

  /** In a grower's words. */
  String text();

  /**
   * A plant of one source.
   *
   * @param source the taxon, cultivar, field number or plant
   * @param raised whether it was raised here from seed of that source alone, rather than acquired
   */
  record Pure(String source, boolean raised) implements GenerationClass {
    @Override
    public String label() {
      return "pure";
    }

    @Override
    public String text() {
      return raised ? "pure " + source + ", raised from seed" : "pure " + source;
    }
  }

  /**
   * An Fn: F1 from two pure plants of different sources, each later one from two plants of the one
   * before.
   *
   * @param generation n, 1 or more
   * @param first the source of the F1's seed parent; where stated by a donor, the first one stated
   * @param second the other source
   * @param last how it was raised from generation n − 1; null for an F1
   * @param steps every way a generation since the F1 was raised; empty for an F1
   */
  record Filial(
      int generation, String first, String second, @Nullable Breeding last, Set<Breeding> steps)
      implements GenerationClass {
    /** Copies the steps. */
    public Filial {
      steps = sorted(steps);
    }

    @Override
    public String label() {
      return "F" + generation;
    }

    @Override
    public String text() {
      return label() + " of " + first + " × " + second + raising(last, steps);
    }
  }

  /**
   * A cross between two different generations of the same two sources, as F2 × F3; it is no Fn.
   *
   * @param seed the generation of the seed parent, 1 for F1
   * @param pollen the generation of the pollen parent
   * @param first one source
   * @param second the other source
   */
  record FilialCross(int seed, int pollen, String first, String second) implements GenerationClass {
    @Override
    public String label() {
      return "F" + seed + " × F" + pollen;
    }

    @Override
    public String text() {
      return label() + " of " + first + " × " + second;
    }
  }

  /**
   * A BCn: an F1 crossed n times in a row with its recurrent source; or, m generations of selfing
   * or sib crossing after, a BCnFm.
   *
   * @param generation n, 1 or more
   * @param recurrent the source that came back
   * @param donor the other source of the F1
   * @param plant whether it was the same recurrent plant each time
   * @param filial 1 for a BCn, m for a BCnFm
   * @param last how the last generation after the backcrosses was raised; null for a BCn
   * @param steps every way a generation after the backcrosses was raised; empty for a BCn
   */
  record Backcross(
      int generation,
      String recurrent,
      String donor,
      Recurrent plant,
      int filial,
      @Nullable Breeding last,
      Set<Breeding> steps)
      implements GenerationClass {
    /** Copies the steps. */
    public Backcross {
      steps = sorted(steps);
    }

    @Override
    public String label() {
      return "BC" + generation + (filial > 1 ? "F" + filial : "");
    }

    @Override
    public String text() {
      return label()
          + " to "
          + recurrent
          + ", the other being "
          + donor
          + "; "
          + plant.text(generation == 1 && filial == 1)
          + raising(last, steps);
    }
  }

  /**
   * An F1 crossed with a pure plant of a third source.
   *
   * @param first one source of the F1
   * @param second the other
   * @param third the pure parent's source
   */
  record ThreeWay(String first, String second, String third) implements GenerationClass {
    @Override
    public String label() {
      return "three-way";
    }

    @Override
    public String text() {
      return "three-way cross of F1 (" + first + " × " + second + ") with " + third;
    }
  }

  /**
   * Two F1s of four sources crossed.
   *
   * @param first one source of the seed parent
   * @param second the other
   * @param third one source of the pollen parent
   * @param fourth the other
   */
  record DoubleCross(String first, String second, String third, String fourth)
      implements GenerationClass {
    @Override
    public String label() {
      return "double cross";
    }

    @Override
    public String text() {
      return "double cross of F1 ("
          + first
          + " × "
          + second
          + ") with F1 ("
          + third
          + " × "
          + fourth
          + ")";
    }
  }

  /**
   * Any other cross of known plants.
   *
   * @param words seed parent × pollen parent, as {@code F1 × BC1 to E. laui}
   * @param sources every source in it
   * @param leastGenerations the fewest generations back to a pure plant
   * @param mostGenerations the most generations back to a pure plant
   */
  record Complex(String words, SortedSet<String> sources, int leastGenerations, int mostGenerations)
      implements GenerationClass {
    /** Copies the sources. */
    public Complex {
      sources = Collections.unmodifiableSortedSet(new TreeSet<>(sources));
    }

    @Override
    public String label() {
      return "complex";
    }

    @Override
    public String text() {
      String generations =
          leastGenerations == mostGenerations
              ? Integer.toString(leastGenerations)
              : leastGenerations + " to " + mostGenerations;
      return "complex: "
          + words
          + "; "
          + sources.size()
          + (sources.size() == 1 ? " kind in it, " : " kinds in it, ")
          + generations
          + (mostGenerations == 1 ? " generation" : " generations")
          + " back to a pure plant";
    }
  }

  /**
   * No class can be given.
   *
   * @param reason why, naming the plant it hangs on
   */
  record Unclassified(String reason) implements GenerationClass {
    @Override
    public String label() {
      return "no class";
    }

    @Override
    public String text() {
      return "no generation class: " + reason;
    }
  }

  /**
   * The class hangs on which of several ways a plant came about, its own or an ancestor's.
   *
   * @param alternatives the classes it may be, each once, the likeliest first; shares sum to 1
   */
  record Mixture(List<Alternative> alternatives) implements GenerationClass {
    /** Copies the alternatives. */
    public Mixture {
      alternatives = List.copyOf(alternatives);
    }

    @Override
    public String label() {
      List<String> labels = new ArrayList<>();
      for (Alternative one : alternatives) {
        if (!labels.contains(one.generation().label())) {
          labels.add(one.generation().label());
        }
      }
      return String.join(" or ", labels);
    }

    @Override
    public String text() {
      List<String> texts = new ArrayList<>();
      for (Alternative one : alternatives) {
        texts.add(one.share().toPercent(2) + " " + one.generation().text());
      }
      return String.join("; or ", texts);
    }
  }

  /**
   * A class a plant may be, and how likely that is before anything was seen of the plant.
   *
   * @param share how likely, above 0 and below 1
   * @param generation the class
   */
  record Alternative(Fraction share, GenerationClass generation) {}

  private static Set<Breeding> sorted(Set<Breeding> steps) {
    return steps.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(steps));
  }

  private static String raising(@Nullable Breeding last, Set<Breeding> steps) {
    if (last == null) {
      return "";
    }
    StringBuilder text = new StringBuilder(", ").append(last.text());
    if (steps.size() > 1) {
      List<String> before =
          steps.stream().filter(step -> step != last).map(Breeding::text).toList();
      text.append(" (earlier also ").append(String.join(", ", before)).append(')');
    }
    return text.toString();
  }
}
