package dev.filial.core.pedigree;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Turns a sorted draft into the arrays of a pedigree: renumbers the parents, derives every plant's
 * ploidy from its parents', and moves what is no plain cross into the table of cases.
 */
final class Assembly {

  /** What the draft's plant number i was before sorting: its origin, if it is no plain cross. */
  interface Origins {
    /** The founder the draft's plant is. */
    Founder founder(int draftPlant);

    /** The cases the draft's plant has. */
    List<Case> cases(int draftPlant);
  }

  final String[] codes;
  final CodeIndex index;
  final byte[] kind;
  final int[] first;
  final int[] second;

  /** The sets a plant has; below 0, the most it may have where its cases differ. */
  final short[] ploidy;

  final int[] levelStart;
  final List<Founder> founders = new ArrayList<>();
  final Set<String> taxa = new HashSet<>();
  final CaseTable table;

  /** Whether any parent, or a share of any founder, is unknown. */
  boolean unknown;

  private final CaseTable.Builder rows = new CaseTable.Builder();

  Assembly(Draft draft, Origins origins) {
    Levels levels = Levels.of(draft);
    int[] order = levels.order;
    int n = order.length;
    levelStart = levels.start;
    codes = new String[n];
    kind = new byte[n];
    first = new int[n];
    second = new int[n];
    ploidy = new short[n];
    int[] place = new int[n];
    for (int i = 0; i < n; i++) {
      place[order[i]] = i;
    }
    for (int i = 0; i < n; i++) {
      int old = order[i];
      codes[i] = draft.codes[old];
      kind[i] = draft.kind[old];
      first[i] = draft.first[old];
      second[i] = draft.second[old];
      settle(i, old, place, draft, origins);
    }
    index = draft.index.reordered(codes, place);
    table = rows.build();
  }

  private void settle(int i, int old, int[] place, Draft draft, Origins origins) {
    switch (kind[i]) {
      case Kind.FOUNDER -> {
        Founder founder = origins.founder(old);
        first[i] = founders.size();
        second[i] = Pedigree.UNKNOWN;
        founders.add(founder);
        taxa.addAll(founder.makeup().shares().keySet());
        unknown =
            unknown
                || (founder.standing() != Standing.PURE
                    && !founder.makeup().unknownShare().isZero());
        ploidy[i] = (short) founder.ploidy();
      }
      case Kind.RAMET -> {
        first[i] = place[first[i]];
        int sets = ploidy[first[i]] * (second[i] + 1);
        ploidy[i] = checked(i, sets);
      }
      case Kind.CASES -> settleCases(i, origins.cases(old), place, draft);
      default -> {
        first[i] = first[i] < 0 ? Pedigree.UNKNOWN : place[first[i]];
        second[i] = second[i] < 0 ? Pedigree.UNKNOWN : place[second[i]];
        settleCross(i);
      }
    }
  }

  private void settleCross(int i) {
    int seed = first[i];
    int pollen = second[i];
    int seedPloidy = seed < 0 ? 0 : ploidy[seed];
    int pollenPloidy = pollen < 0 ? 0 : ploidy[pollen];
    int known = Math.max(seedPloidy, pollenPloidy);
    unknown |= seed < 0 || pollen < 0;
    boolean alike = seedPloidy == pollenPloidy || seed < 0 || pollen < 0;
    if (alike && known >= 0 && (known & 1) == 0 && seedPloidy >= 0 && pollenPloidy >= 0) {
      ploidy[i] = known == 0 ? 2 : (short) known;
      return;
    }
    Case.Sexual cross =
        new Case.Sexual(Fraction.ONE, Kind.route(kind[i]), ordinary(seed), ordinary(pollen));
    Descent.Sexual descent = resolve(i, cross, seed, pollen);
    kind[i] = Kind.CASES;
    first[i] = rows.add(List.of(cross), List.of(descent));
    second[i] = Pedigree.UNKNOWN;
    ploidy[i] = checked(i, descent.ploidy());
  }

  private Gamete ordinary(int parent) {
    return parent < 0 ? Gamete.unknown() : Gamete.of(codes[parent]);
  }

  private void settleCases(int i, List<Case> cases, int[] place, Draft draft) {
    List<Descent> descents = new ArrayList<>(cases.size());
    int k = 0;
    int most = 0;
    boolean differ = false;
    for (Case one : cases) {
      int sets;
      if (one instanceof Case.Sexual cross) {
        int seed = placed(draft.parents.get(first[i], k++), place);
        int pollen = placed(draft.parents.get(first[i], k++), place);
        Descent.Sexual descent = resolve(i, cross, seed, pollen);
        descents.add(descent);
        unknown |= seed < 0 || pollen < 0;
        sets = descent.ploidy();
      } else {
        int of = placed(draft.parents.get(first[i], k++), place);
        descents.add(new Descent.Copy(one.share(), one.route(), of));
        sets = ploidy[of];
      }
      differ |= sets < 0 || (most != 0 && sets != most);
      most = Math.max(most, Math.abs(sets));
    }
    first[i] = rows.add(cases, descents);
    second[i] = Pedigree.UNKNOWN;
    ploidy[i] = checked(i, differ ? -most : most);
  }

  private static int placed(int parent, int[] place) {
    return parent < 0 ? Pedigree.UNKNOWN : place[parent];
  }

  private Descent.Sexual resolve(int i, Case.Sexual cross, int seed, int pollen) {
    int seedSets = sets(i, cross.seed(), seed, "seed parent");
    int pollenSets = sets(i, cross.pollen(), pollen, "pollen parent");
    if (seedSets == 0 && pollenSets == 0) {
      seedSets = 1;
      pollenSets = 1;
    } else if (seedSets == 0) {
      seedSets = ordinary(pollen, pollenSets);
    } else if (pollenSets == 0) {
      pollenSets = ordinary(seed, seedSets);
    }
    return new Descent.Sexual(cross.share(), cross.route(), seed, seedSets, pollen, pollenSets);
  }

  /** An unknown parent is taken to be of the other's ploidy, and its gamete to be reduced. */
  private int ordinary(int other, int brought) {
    int has = other < 0 ? 0 : ploidy[other];
    return has > 0 && (has & 1) == 0 ? has / 2 : brought;
  }

  /** The sets the gamete brought, 0 for an unknown parent's unstated ones. */
  private int sets(int i, Gamete gamete, int parent, String role) {
    if (parent < 0) {
      return gamete.sets();
    }
    int has = ploidy[parent];
    String who = codes[parent] + ", " + role + " of " + codes[i] + ",";
    if (gamete.sets() == 0) {
      if (has < 0) {
        throw new PedigreeException(
            who
                + " has a ploidy that differs between its cases;"
                + " state how many chromosome sets its gamete brought");
      }
      if ((has & 1) == 1) {
        throw new PedigreeException(
            who
                + " has an odd ploidy ("
                + has
                + "x), of which there is no half;"
                + " state how many chromosome sets its gamete brought");
      }
      return has / 2;
    }
    if (gamete.sets() > Math.abs(has)) {
      throw new PedigreeException(
          who
              + " is said to have given "
              + gamete.sets()
              + " chromosome sets, but it has only "
              + Math.abs(has)
              + "; state at most that, or correct its ploidy");
    }
    return gamete.sets();
  }

  private short checked(int i, int sets) {
    if (Math.abs(sets) > Founder.MAX_PLOIDY) {
      throw new PedigreeException(
          codes[i]
              + " would have "
              + Math.abs(sets)
              + " chromosome sets, more than the "
              + Founder.MAX_PLOIDY
              + " a pedigree accepts; correct the gametes or doublings behind it");
    }
    return (short) sets;
  }

  static Origins fromRecords(PlantRecord[] records) {
    return new Origins() {
      @Override
      public Founder founder(int draftPlant) {
        return (Founder) records[draftPlant].origin();
      }

      @Override
      public List<Case> cases(int draftPlant) {
        return ((Seedling) records[draftPlant].origin()).cases();
      }
    };
  }

  static Origins fromTaxa(@Nullable String[] taxa) {
    return new Origins() {
      private final Map<String, Founder> known = new HashMap<>();

      @Override
      public Founder founder(int draftPlant) {
        String taxon = taxa[draftPlant];
        return taxon == null ? Founder.unknown() : known.computeIfAbsent(taxon, Founder::pure);
      }

      @Override
      public List<Case> cases(int draftPlant) {
        throw new IllegalStateException("plain crosses have no table of cases");
      }
    };
  }
}
