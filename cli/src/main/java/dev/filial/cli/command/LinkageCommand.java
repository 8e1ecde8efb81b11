package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.LinkageQuestion;
import dev.filial.core.answer.LinkageQuestion.PairCounts;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.trial.GoodnessOfFit;
import dev.filial.core.trial.Linkage;
import dev.filial.core.trial.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial linkage}. */
public final class LinkageCommand implements BenchCommand {

  /** What family was counted. */
  enum FamilyKind {
    /** An F2 whose grandparents had one dominant state each. */
    REPULSION,
    /** An F2 of a grandparent with both dominant states. */
    COUPLING,
    /** A backcross of such an F1 in coupling to the plant recessive in both. */
    TESTCROSS_COUPLING,
    /** The same in repulsion. */
    TESTCROSS_REPULSION
  }

  private static final Reading<Long> COUNT =
      (text, bench) -> {
        if (!text.matches("\\d{1,9}")) {
          throw new IllegalArgumentException(
              "\"" + text + "\" is not a count; write 1997, at most 999999999");
        }
        return Long.parseLong(text);
      };

  private final Supplier<FamilyKind> kind;
  private final Supplier<List<Long>> counts;
  private final Supplier<Optional<String>> family;
  private final Supplier<List<String>> traits;
  private final OpenRegister register;

  /** Declares its words. */
  public LinkageCommand(Words words) {
    kind =
        words.argument(
            "KIND",
            "coupling or repulsion for an F2, as the dominant alleles came into the F1 from one"
                + " grandparent or from both; testcross-coupling or testcross-repulsion for a"
                + " backcross to the double recessive.",
            Reading.oneOf(FamilyKind.class));
    counts =
        words.arguments(
            "COUNT",
            "Four counts: both dominant, the first alone, the second alone, neither.",
            false,
            COUNT);
    family =
        words.option(
            "--family", "CROSS", "Count the numbered seedlings of this cross.", Reading.THING);
    traits =
        words.repeatedOption(
            "--trait",
            "TRAIT",
            "With --family: the two traits, each with its dominant state first.",
            RecordReadings.LINE);
    register = OpenRegister.toRead(words);
    words
        .describe("Says how closely two genes are linked, by how often their states come together.")
        .example("filial linkage repulsion 1997 906 904 32");
  }

  /**
   * The answer.
   *
   * @param kind what family it was
   * @param counts both, the first alone, the second alone, neither
   * @param linkage what was estimated
   * @param centimorgans the distance by Haldane's function; null where they are not linked
   * @param picked how many were left out because they were picked
   * @param doubts what in the counts does not go with the family stated
   */
  record Told(
      FamilyKind kind,
      List<Long> counts,
      Linkage linkage,
      @Nullable Double centimorgans,
      long picked,
      List<String> doubts)
      implements Answer {

    /** The LOD at which linkage is taken for shown: a thousand to one. */
    private static final double SHOWN = 3;

    @Override
    public void show(Screen screen) {
      double recombined = linkage.recombination();
      double likelier = Math.pow(10, linkage.lod());
      screen.say(
          !doubts.isEmpty()
              ? "These counts do not go with such a family; what follows is not to be relied on."
              : linkage.lod() >= SHOWN
                  ? "The two are linked: "
                      + ChanceWords.number(recombined * 100)
                      + " % of the gametes are recombined."
                  : likelier < 1.05
                      ? "Linkage is not shown: the counts are no likelier with it than without."
                      : "Linkage is not shown by these counts: they are only "
                          + ChanceWords.number(likelier)
                          + " times likelier with "
                          + ChanceWords.number(recombined * 100)
                          + " % recombination than without linkage.");
      screen.field(
          "recombination",
          fixed(recombined)
              + (linkage.standardError() == 0
                  ? ", at the end of what can be; no standard error"
                  : ", standard error " + fixed(linkage.standardError())));
      screen.field("LOD", ChanceWords.number(linkage.lod()) + " (3 or more is taken for shown)");
      if (centimorgans != null) {
        screen.field(
            "map distance", ChanceWords.number(centimorgans) + " cM by Haldane's function");
      }
      if (picked > 0) {
        screen.field(
            "note", picked + " seedlings that were picked for one of the traits left out.");
      }
      doubts.forEach(doubt -> screen.field("note", doubt));
      if (linkage.lod() >= SHOWN && doubts.isEmpty() && recombined > 0) {
        screen.next("filial gene NAME ALLELES --next-to GENE --recombination " + fixed(recombined));
      }
    }

    private static String fixed(double value) {
      return String.format(Locale.ROOT, "%.4f", value);
    }
  }

  @Override
  public Answer run(Bench bench) {
    if (family.get().isPresent()) {
      if (!counts.get().isEmpty() || traits.get().size() != 2) {
        throw Trouble.usage(
            "a family is counted for two traits",
            "Give --family CROSS --trait ONE --trait OTHER, and no counts.");
      }
      PairCounts found =
          register.read(
              bench,
              view ->
                  LinkageQuestion.of(view)
                      .ask(
                          Finding.in(view).one(family.get().get()).code(),
                          traits.get().get(0),
                          traits.get().get(1)));
      return told(
          List.of(found.both(), found.firstAlone(), found.secondAlone(), found.neither()),
          found.picked());
    }
    if (counts.get().size() != 4) {
      throw Trouble.usage(
          counts.get().size() + " counts were given",
          "Give four: both dominant, the first alone, the second alone, neither.");
    }
    return told(new ArrayList<>(counts.get()), 0);
  }

  private Told told(List<Long> four, long picked) {
    long both = four.get(0);
    long first = four.get(1);
    long second = four.get(2);
    long neither = four.get(3);
    Linkage linkage =
        switch (kind.get()) {
          case COUPLING -> Linkage.inF2(Linkage.Phase.COUPLING, both, first, second, neither);
          case REPULSION -> Linkage.inF2(Linkage.Phase.REPULSION, both, first, second, neither);
          case TESTCROSS_COUPLING -> Linkage.inBackcross(both + neither, first + second);
          case TESTCROSS_REPULSION -> Linkage.inBackcross(first + second, both + neither);
        };
    List<String> doubts = new ArrayList<>();
    doubt(doubts, four);
    double morgans = MapFunction.HALDANE.morgans(Math.min(0.5, linkage.recombination()));
    return new Told(
        kind.get(),
        List.copyOf(four),
        linkage,
        Double.isFinite(morgans) ? morgans * 100 : null,
        picked,
        List.copyOf(doubts));
  }

  /** What in the counts does not go with the family that was stated. */
  private void doubt(List<String> doubts, List<Long> four) {
    long first = four.get(0) + four.get(1);
    long second = four.get(0) + four.get(2);
    long all = first + four.get(2) + four.get(3);
    boolean testCross =
        kind.get() == FamilyKind.TESTCROSS_COUPLING || kind.get() == FamilyKind.TESTCROSS_REPULSION;
    GoodnessOfFit alone = GoodnessOfFit.of(testCross ? Ratio.of(1, 1) : Ratio.of(3, 1));
    for (long showing : List.of(first, second)) {
      double p = alone.test(showing, all - showing).p();
      if (p < 0.01) {
        doubts.add(
            "The "
                + (doubts.isEmpty() && showing == first ? "first" : "second")
                + " by itself does not come up as "
                + (testCross ? "1:1" : "3:1")
                + " (p "
                + ChanceWords.p(p)
                + "), which this estimate takes for granted.");
      }
    }
    boolean coupling =
        kind.get() == FamilyKind.COUPLING || kind.get() == FamilyKind.TESTCROSS_COUPLING;
    long together = four.get(0) + four.get(3);
    if (testCross && 2 * (coupling ? together : all - together) < all) {
      doubts.add(
          "More than half are recombined, which cannot be: the alleles probably came in as "
              + (coupling ? "testcross-repulsion." : "testcross-coupling."));
    }
  }
}
