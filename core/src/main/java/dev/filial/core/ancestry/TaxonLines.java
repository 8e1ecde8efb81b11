package dev.filial.core.ancestry;

import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Gamete;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.StatedGeneration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The diploid genotypes behind one plant with the taxon that each founder is wholly of: what the
 * spread of genome shares is worked out on.
 *
 * <p>A founder of a stated generation, as an F2 that was bought, is written out as the crosses that
 * the generation means, from two pure plants; past the F2 and the backcross, where selfing and sib
 * crossing part, as selfed.
 */
final class TaxonLines {

  private static final int UNKNOWN = Pedigree.UNKNOWN;

  private final GeneFlow flow;
  private final int target;
  private final List<String> taxa;
  private final boolean anyUnknown;

  /** The taxon a founder is of, by node; the unknown one stands last. */
  private final int[] founderTaxon;

  private final Set<String> takenAsSelfed;

  private TaxonLines(Pedigree pedigree, String code, Set<String> takenAsSelfed) {
    flow = GeneFlow.behind(pedigree, pedigree.indexOf(code));
    target = flow.nodeOf(pedigree.indexOf(code));
    this.takenAsSelfed = takenAsSelfed;
    Set<String> names = new TreeSet<>();
    boolean unknown = false;
    for (int i = 0; i < flow.size(); i++) {
      Founder founder = flow.pedigree().founder(flow.plant(i));
      if (founder != null) {
        names.addAll(founder.makeup().shares().keySet());
        unknown |= founder.makeup().shares().isEmpty();
      } else {
        unknown |= hasUnknownParent(i);
      }
    }
    taxa = List.copyOf(names);
    anyUnknown = unknown;
    founderTaxon = new int[flow.size()];
    for (int i = 0; i < flow.size(); i++) {
      Founder founder = flow.pedigree().founder(flow.plant(i));
      founderTaxon[i] =
          founder == null
              ? UNKNOWN
              : founder.makeup().shares().isEmpty()
                  ? taxa.size()
                  : taxa.indexOf(founder.makeup().shares().firstKey());
    }
  }

  /**
   * The lines behind a plant.
   *
   * @throws NoSpreadException if one behind it, or itself, is not diploid, or is a hybrid of which
   *     only the shares are stated
   * @throws dev.filial.core.pedigree.PedigreeException if there is no plant of this code
   */
  static TaxonLines behind(Pedigree pedigree, String code) {
    BitSet behind = pedigree.ancestors(pedigree.indexOf(code));
    Set<String> takenAsSelfed = new LinkedHashSet<>();
    boolean stated = false;
    for (int p = behind.nextSetBit(0); p >= 0; p = behind.nextSetBit(p + 1)) {
      requireDiploid(pedigree, p);
      Founder founder = pedigree.founder(p);
      if (founder != null && !isOfOne(founder)) {
        StatedGeneration generation = founder.stated().orElse(null);
        if (generation == null) {
          throw new NoSpreadException(
              pedigree.code(p)
                  + " is a hybrid of stated shares only: how these lie on its chromosomes is not"
                  + " known, and so not what its seedlings may get; state its generation if it is"
                  + " known");
        }
        stated = true;
      }
    }
    if (!stated) {
      return new TaxonLines(pedigree, code, takenAsSelfed);
    }
    List<PlantRecord> records = new ArrayList<>();
    for (int p = behind.nextSetBit(0); p >= 0; p = behind.nextSetBit(p + 1)) {
      Founder founder = pedigree.founder(p);
      if (founder != null && !isOfOne(founder)) {
        writeOut(pedigree.code(p), founder.stated().orElseThrow(), records, takenAsSelfed);
      } else {
        records.add(pedigree.plantRecord(p));
      }
    }
    return new TaxonLines(Pedigree.of(records), code, takenAsSelfed);
  }

  private static void requireDiploid(Pedigree pedigree, int p) {
    boolean oneSetEach = true;
    for (Descent descent : pedigree.descents(p)) {
      oneSetEach &=
          !(descent instanceof Descent.Sexual cross)
              || (cross.seedSets() == 1 && cross.pollenSets() == 1);
    }
    if (pedigree.ploidy(p) != 2 || !oneSetEach) {
      throw new NoSpreadException(
          pedigree.code(p)
              + (pedigree.ploidy(p) == 0
                  ? " may have two chromosome sets or another number"
                  : pedigree.ploidy(p) == 2
                      ? " is of gametes of unlike numbers of chromosome sets"
                      : " has " + pedigree.ploidy(p) + " chromosome sets")
              + ": how far shares spread is worked out for plants of two sets, from parents of two"
              + " sets, and for no others");
    }
  }

  /** Whether both sets of a founder are wholly of one taxon, or nothing is known of either. */
  private static boolean isOfOne(Founder founder) {
    return founder.makeup().shares().isEmpty()
        || (founder.makeup().shares().size() == 1 && founder.makeup().unknownShare().isZero());
  }

  private static void writeOut(
      String code, StatedGeneration generation, List<PlantRecord> records, Set<String> selfed) {
    Line line = new Line(code, records);
    if (generation instanceof StatedGeneration.Filial filial) {
      line.start(filial.first(), filial.second(), filial.generation() == 1);
      line.self(filial.generation() - 1);
      if (filial.generation() > 2) {
        selfed.add(code);
      }
    } else if (generation instanceof StatedGeneration.Backcross backcross) {
      line.start(backcross.first(), backcross.second(), false);
      line.backcross(backcross.generation(), backcross.filial() == 1);
      line.self(backcross.filial() - 1);
      if (backcross.filial() > 1) {
        selfed.add(code);
      }
    }
  }

  /** Crosses of plants nobody has, that end in one somebody has. */
  private static final class Line {
    private final String code;
    private final List<PlantRecord> records;
    private String last = "";
    private int made;

    Line(String code, List<PlantRecord> records) {
      this.code = code;
      this.records = records;
    }

    private String name(boolean ends) {
      made++;
      return ends ? code : code + " (behind it, " + made + ")";
    }

    private String recurrent() {
      return code + " (one behind it)";
    }

    void start(String first, String second, boolean ends) {
      String other = code + " (other behind it)";
      records.add(PlantRecord.pure(recurrent(), first));
      records.add(PlantRecord.pure(other, second));
      last = name(ends);
      records.add(PlantRecord.cross(last, recurrent(), other));
    }

    void backcross(int times, boolean ends) {
      for (int k = 1; k <= times; k++) {
        String next = name(ends && k == times);
        records.add(PlantRecord.cross(next, Gamete.of(last), Gamete.of(recurrent())));
        last = next;
      }
    }

    void self(int times) {
      for (int k = 1; k <= times; k++) {
        String next = name(k == times);
        records.add(PlantRecord.selfing(next, last));
        last = next;
      }
    }
  }

  private boolean hasUnknownParent(int i) {
    boolean[] unknown = {false};
    flow.eachParent(i, (parent, weight) -> unknown[0] |= parent == UNKNOWN);
    return unknown[0];
  }

  GeneFlow flow() {
    return flow;
  }

  /** The node of the plant asked about. */
  int target() {
    return target;
  }

  /** The known taxa, sorted by name. */
  List<String> taxa() {
    return taxa;
  }

  /**
   * Whether anything behind the plant is unknown; it counts as one taxon more, after the others.
   */
  boolean anyUnknown() {
    return anyUnknown;
  }

  /** How many taxa there are, the unknown one counted. */
  int width() {
    return taxa.size() + (anyUnknown ? 1 : 0);
  }

  /** The taxon of a founder, by its place; the unknown one stands after the others. */
  int founderTaxon(int node) {
    return founderTaxon[node];
  }

  /** The place of what nobody knows among the taxa. */
  int unknownTaxon() {
    return taxa.size();
  }

  /** Most meioses between the plant and a founder. */
  int depth() {
    return flow.pedigree().level(flow.plant(target));
  }

  /** The acquired plants whose later generations were taken as selfed. */
  List<String> takenAsSelfed() {
    return List.copyOf(takenAsSelfed);
  }
}
