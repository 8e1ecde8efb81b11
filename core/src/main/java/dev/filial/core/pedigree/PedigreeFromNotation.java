package dev.filial.core.pedigree;

import dev.filial.core.name.Notation;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntFunction;

/**
 * The plants of a pedigree written in notation.
 *
 * <p>Each distinct source name becomes one founder and each cross one plant. In the notation a
 * repeated name is one source, not one plant: shares and generation are the same for it, but
 * whether a backcross went to the very same plant, or two sibs share both parents, cannot be read
 * from it, and an answer to that holds of the sources only.
 */
public final class PedigreeFromNotation {

  private PedigreeFromNotation() {}

  /**
   * Records in which each source is a pure diploid founder, its name both code and taxon, and the
   * crosses are {@code cross 1}, {@code cross 2} and so on, numbers that a source bears being
   * passed over. The last record is the plant the notation is of.
   */
  public static List<PlantRecord> records(Notation notation) {
    Set<String> taken = new HashSet<>(notation.sources());
    List<String> free = new ArrayList<>();
    for (int n = 1; free.size() < notation.nodes().size(); n++) {
      if (!taken.contains("cross " + n)) {
        free.add("cross " + n);
      }
    }
    return records(notation, Founder::pure, cross -> free.get(cross - 1));
  }

  /**
   * Records in which each source is a founder of the caller's under the source's name, and the
   * crosses have codes of the caller's. The last record is the plant the notation is of.
   *
   * @param notation the pedigree
   * @param founders the founder that a source name stands for
   * @param crossCodes the code of each cross, counted from 1, parents before offspring
   */
  public static List<PlantRecord> records(
      Notation notation, Function<String, Founder> founders, IntFunction<String> crossCodes) {
    List<PlantRecord> records = new ArrayList<>();
    List<String> codes = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    int crosses = 0;
    for (Notation.Node node : notation.nodes()) {
      if (node instanceof Notation.Node.Source source) {
        codes.add(source.name());
        if (seen.add(source.name())) {
          records.add(new PlantRecord(source.name(), founders.apply(source.name())));
        }
      } else if (node instanceof Notation.Node.Cross cross) {
        String code = crossCodes.apply(++crosses);
        records.add(PlantRecord.cross(code, codes.get(cross.seed()), codes.get(cross.pollen())));
        codes.add(code);
      }
    }
    return records;
  }
}
