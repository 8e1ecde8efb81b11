package dev.filial.core.ancestry;

import dev.filial.core.ancestry.GenerationClass.Backcross;
import dev.filial.core.ancestry.GenerationClass.Complex;
import dev.filial.core.ancestry.GenerationClass.DoubleCross;
import dev.filial.core.ancestry.GenerationClass.Filial;
import dev.filial.core.ancestry.GenerationClass.FilialCross;
import dev.filial.core.ancestry.GenerationClass.Pure;
import dev.filial.core.ancestry.GenerationClass.ThreeWay;
import dev.filial.core.ancestry.GenerationClass.Unclassified;
import dev.filial.core.pedigree.Pedigree;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** The rules: which class a plant has whose two parents' classes are known. */
final class Crossing {

  private static final int UNKNOWN = Pedigree.UNKNOWN;

  private final Level level;
  private final Lineage seed;
  private final Lineage pollen;
  private final int plant;

  private Crossing(Level level, Lineage seed, Lineage pollen, int plant) {
    this.level = level;
    this.seed = seed;
    this.pollen = pollen;
    this.plant = plant;
  }

  static Lineage of(Level level, Lineage seed, Lineage pollen, int plant) {
    return new Crossing(level, seed, pollen, plant).lineage();
  }

  private Lineage lineage() {
    GenerationClass s = seed.generation();
    GenerationClass p = pollen.generation();
    if (s instanceof Unclassified reason) {
      return Lineage.unclassified(reason.reason(), plant);
    }
    if (p instanceof Unclassified reason) {
      return Lineage.unclassified(reason.reason(), plant);
    }
    if (s instanceof Pure first && p instanceof Pure second) {
      return first.source().equals(second.source())
          ? pureAgain(first.source())
          : child(
              new Filial(1, first.source(), second.source(), null, Set.of()),
              seed.genet(),
              pollen.genet());
    }
    if (s instanceof Pure pure) {
      return withPure(pollen, seed, pure.source());
    }
    if (p instanceof Pure pure) {
      return withPure(seed, pollen, pure.source());
    }
    if (s instanceof Filial first && p instanceof Filial second) {
      return filials(first, second);
    }
    if (s instanceof Backcross first && p instanceof Backcross second && alike(first, second)) {
      return backcrosses(first, second);
    }
    return complex(words(s) + " × " + words(p));
  }

  private Lineage pureAgain(String source) {
    return new Lineage(
        new Pure(source, true),
        plant,
        seed.genet(),
        pollen.genet(),
        UNKNOWN,
        UNKNOWN,
        seed.sources(),
        0,
        0);
  }

  /** A hybrid crossed with a pure plant; which of them bore the seed makes no difference. */
  private Lineage withPure(Lineage hybrid, Lineage pure, String source) {
    if (hybrid.generation() instanceof Filial f1 && f1.generation() == 1) {
      boolean first = source.equals(f1.first());
      if (!first && !source.equals(f1.second())) {
        return child(new ThreeWay(f1.first(), f1.second(), source), UNKNOWN, UNKNOWN);
      }
      int before = first ? hybrid.firstPlant() : hybrid.secondPlant();
      String donor = first ? f1.second() : f1.first();
      Recurrent same = recurrent(before, pure.genet(), Recurrent.SAME_PLANT);
      return child(new Backcross(1, source, donor, same, 1, null, Set.of()), pure.genet(), UNKNOWN);
    }
    if (hybrid.generation() instanceof Backcross bc
        && bc.filial() == 1
        && bc.recurrent().equals(source)) {
      Recurrent same = recurrent(hybrid.firstPlant(), pure.genet(), bc.plant());
      return child(
          new Backcross(bc.generation() + 1, source, bc.donor(), same, 1, null, Set.of()),
          pure.genet(),
          UNKNOWN);
    }
    String words = words(seed.generation()) + " × " + words(pollen.generation());
    if (hybrid.generation() instanceof Backcross bc && bc.donor().equals(source)) {
      words += ", the other " + level.text();
    }
    return complex(words);
  }

  private static Recurrent recurrent(int before, int now, Recurrent soFar) {
    if (before != UNKNOWN && before != now) {
      return Recurrent.OTHER_PLANTS;
    }
    return before == UNKNOWN && soFar == Recurrent.SAME_PLANT ? Recurrent.NOT_KNOWN : soFar;
  }

  private Lineage filials(Filial first, Filial second) {
    Set<String> one = Set.of(first.first(), first.second());
    Set<String> other = Set.of(second.first(), second.second());
    if (one.equals(other)) {
      if (first.generation() != second.generation()) {
        return child(
            new FilialCross(first.generation(), second.generation(), first.first(), first.second()),
            UNKNOWN,
            UNKNOWN);
      }
      Breeding breeding = breeding();
      return child(
          new Filial(
              first.generation() + 1,
              first.first(),
              first.second(),
              breeding,
              union(first.steps(), second.steps(), breeding)),
          UNKNOWN,
          UNKNOWN);
    }
    if (first.generation() == 1 && second.generation() == 1 && Collections.disjoint(one, other)) {
      return child(
          new DoubleCross(first.first(), first.second(), second.first(), second.second()),
          UNKNOWN,
          UNKNOWN);
    }
    return complex(words(first) + " × " + words(second));
  }

  private static boolean alike(Backcross first, Backcross second) {
    return first.generation() == second.generation()
        && first.filial() == second.filial()
        && first.recurrent().equals(second.recurrent())
        && first.donor().equals(second.donor());
  }

  private Lineage backcrosses(Backcross first, Backcross second) {
    Breeding breeding = breeding();
    boolean onePlant = seed.firstPlant() == pollen.firstPlant();
    boolean bothKnown = seed.firstPlant() != UNKNOWN && pollen.firstPlant() != UNKNOWN;
    Recurrent same;
    if (bothKnown && !onePlant) {
      same = Recurrent.OTHER_PLANTS;
    } else if (first.plant() == second.plant()
        && (onePlant || first.plant() != Recurrent.SAME_PLANT)) {
      same = first.plant();
    } else if (first.plant() != Recurrent.NOT_KNOWN && second.plant() != Recurrent.NOT_KNOWN) {
      same = Recurrent.OTHER_PLANTS;
    } else if (first.plant() == Recurrent.OTHER_PLANTS
        || second.plant() == Recurrent.OTHER_PLANTS) {
      same = Recurrent.OTHER_PLANTS;
    } else {
      same = Recurrent.NOT_KNOWN;
    }
    return child(
        new Backcross(
            first.generation(),
            first.recurrent(),
            first.donor(),
            same,
            first.filial() + 1,
            breeding,
            union(first.steps(), second.steps(), breeding)),
        seed.firstPlant(),
        UNKNOWN);
  }

  private Breeding breeding() {
    if (seed.genet() == pollen.genet()) {
      return Breeding.SELFING;
    }
    if (seed.seedGenet() == UNKNOWN
        || seed.pollenGenet() == UNKNOWN
        || pollen.seedGenet() == UNKNOWN
        || pollen.pollenGenet() == UNKNOWN) {
      return Breeding.NOT_KNOWN;
    }
    boolean sameWay =
        seed.seedGenet() == pollen.seedGenet() && seed.pollenGenet() == pollen.pollenGenet();
    boolean otherWay =
        seed.seedGenet() == pollen.pollenGenet() && seed.pollenGenet() == pollen.seedGenet();
    return sameWay || otherWay ? Breeding.SIB_CROSS : Breeding.BETWEEN_FAMILIES;
  }

  private static Set<Breeding> union(Set<Breeding> one, Set<Breeding> other, Breeding step) {
    EnumSet<Breeding> all = EnumSet.of(step);
    all.addAll(one);
    all.addAll(other);
    return all;
  }

  private Lineage complex(String words) {
    int least = 1 + Math.min(seed.least(), pollen.least());
    int most = 1 + Math.max(seed.most(), pollen.most());
    // Its sources are the lineage's own: Lineage.settled puts them in, for the plant asked about.
    return child(new Complex(words, Collections.emptySortedSet(), least, most), UNKNOWN, UNKNOWN);
  }

  private Lineage child(GenerationClass generation, int firstPlant, int secondPlant) {
    return new Lineage(
        generation,
        plant,
        seed.genet(),
        pollen.genet(),
        firstPlant,
        secondPlant,
        sources(),
        1 + Math.min(seed.least(), pollen.least()),
        1 + Math.max(seed.most(), pollen.most()));
  }

  private SortedSet<String> sources() {
    if (seed.sources() == pollen.sources() || seed.sources().containsAll(pollen.sources())) {
      return seed.sources();
    }
    if (pollen.sources().containsAll(seed.sources())) {
      return pollen.sources();
    }
    SortedSet<String> all = new TreeSet<>(seed.sources());
    all.addAll(pollen.sources());
    return all;
  }

  /** A parent in the words of a complex cross: never longer than one generation of names. */
  private static String words(GenerationClass parent) {
    if (parent instanceof Pure pure) {
      return pure.source();
    }
    if (parent instanceof Filial f) {
      return f.label() + " (" + f.first() + " × " + f.second() + ")";
    }
    if (parent instanceof FilialCross f) {
      return "(" + f.text() + ")";
    }
    if (parent instanceof Backcross bc) {
      return bc.label() + " to " + bc.recurrent() + " (donor " + bc.donor() + ")";
    }
    if (parent instanceof ThreeWay) {
      return "three-way hybrid";
    }
    return parent instanceof DoubleCross ? "double-cross hybrid" : "complex hybrid";
  }
}
