package dev.filial.core.answer;

import dev.filial.core.ancestry.Breeding;
import dev.filial.core.ancestry.ExpectedAncestry;
import dev.filial.core.ancestry.GenerationClass;
import dev.filial.core.ancestry.GenerationClassifier;
import dev.filial.core.ancestry.Recurrent;
import dev.filial.core.name.Notation;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeFromNotation;
import dev.filial.core.pedigree.PlantRecord;
import java.util.List;
import java.util.Set;

/**
 * Explains a pedigree that somebody wrote in breeders' notation, without any register: what was
 * crossed with what, and how much of each source is in the outcome.
 *
 * <p>Each source is taken to be pure, diploid and of its own kind, and to be one source wherever
 * its name occurs; whether it was one plant cannot be read from the notation.
 */
public final class NotationReading {

  /** The most crosses that are explained: exact shares of more would take minutes. */
  public static final int MOST_CROSSES = 5_000;

  private NotationReading() {}

  /**
   * A notation explained.
   *
   * @param notation every cross written out
   * @param abbreviated the same with backcrosses abbreviated
   * @param crosses how many crosses it takes
   * @param generations how many of them lie one behind the other on the longest way to a source
   * @param shares the expected share of each source, largest first
   * @param generation the generation of the outcome in short
   * @param generationInWords the same in words
   * @param tree the outcome and all behind it, each parent below its child and one deeper
   */
  public record Explained(
      String notation,
      String abbreviated,
      int crosses,
      int generations,
      List<AncestryQuestion.TaxonShare> shares,
      String generation,
      String generationInWords,
      List<TreeQuestion.Line> tree) {}

  /**
   * Explains {@code text}.
   *
   * @throws dev.filial.core.name.NotationException if it cannot be read; it names the column
   * @throws IllegalArgumentException if it has more than {@link #MOST_CROSSES} crosses
   */
  public static Explained of(String text) {
    Notation notation = Notation.parse(text);
    int crosses =
        (int) notation.nodes().stream().filter(Notation.Node.Cross.class::isInstance).count();
    if (crosses > MOST_CROSSES) {
      throw new IllegalArgumentException(
          "this notation has "
              + crosses
              + " crosses, and at most "
              + MOST_CROSSES
              + " are explained; explain a part of it");
    }
    List<PlantRecord> records = PedigreeFromNotation.records(notation);
    Pedigree pedigree = Pedigree.of(records);
    String outcome = records.get(records.size() - 1).code();
    GenerationClass generation =
        ofSources(GenerationClassifier.of(pedigree).classOf(outcome));
    return new Explained(
        notation.text(),
        notation.text(Notation.Style.BACKCROSS_NUMBER_FIRST),
        crosses,
        notation.generations(),
        AncestryQuestion.largestFirst(ExpectedAncestry.of(pedigree, outcome).shares()),
        generation.label(),
        generation.text(),
        new TreeWalk(pedigree, Integer.MAX_VALUE, NAMES).from(pedigree.indexOf(outcome)));
  }

  /** The class without what holds of single plants, which the notation does not name. */
  private static GenerationClass ofSources(GenerationClass generation) {
    if (generation instanceof GenerationClass.Filial f && f.generation() > 1) {
      return new GenerationClass.Filial(
          f.generation(),
          f.first(),
          f.second(),
          Breeding.NOT_KNOWN,
          Set.of(Breeding.NOT_KNOWN));
    }
    if (generation instanceof GenerationClass.Backcross bc) {
      boolean plain = bc.filial() == 1;
      return new GenerationClass.Backcross(
          bc.generation(),
          bc.recurrent(),
          bc.donor(),
          Recurrent.NOT_KNOWN,
          bc.filial(),
          plain ? null : Breeding.NOT_KNOWN,
          plain ? Set.of() : Set.of(Breeding.NOT_KNOWN));
    }
    return generation;
  }

  private static final TreeWalk.Facts NAMES =
      new TreeWalk.Facts() {
        @Override
        public String what(int plant) {
          return "";
        }

        @Override
        public List<String> names(int plant) {
          return List.of();
        }

        @Override
        public boolean isJoined(int plant) {
          return false;
        }
      };
}
