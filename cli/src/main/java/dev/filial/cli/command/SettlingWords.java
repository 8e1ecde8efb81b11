package dev.filial.cli.command;

import dev.filial.core.answer.LikelyGenes;
import java.util.ArrayList;
import java.util.List;

/** What a test cross would tell, in a sentence. */
final class SettlingWords {

  /** More genotypes than these are summed up. */
  private static final int MOST_ALIKE = 6;

  private SettlingWords() {}

  static String of(LikelyGenes.Test test) {
    String sure = LikelyWords.percent(test.sureness());
    if (test.atMost() < test.sureness()) {
      return "no number of seedlings of a cross with "
          + test.tester()
          + " makes it "
          + sure
          + " sure: it "
          + cannotTell(test)
          + parting(test);
    }
    if (test.seedlings() == null) {
      return "more than 500 seedlings of a cross with " + test.tester() + " would be needed";
    }
    return "look at "
        + seedlings(test.seedlings())
        + " of a cross with "
        + test.tester()
        + ": that makes it "
        + sure
        + " sure on the average"
        + (test.alike().isEmpty() ? "" : "; it " + cannotTell(test));
  }

  private static String cannotTell(LikelyGenes.Test test) {
    List<String> apart = new ArrayList<>();
    test.alike().forEach(some -> apart.add(listed(some) + " apart"));
    return "cannot tell "
        + String.join(", nor ", apart)
        + ", and names the right one in "
        + LikelyWords.percent(test.atMost())
        + " at most";
  }

  private static String parting(LikelyGenes.Test test) {
    Integer parting = test.parting();
    return parting == null || parting == 0
        ? ""
        : "; all else it tells after "
            + seedlings(parting)
            + ", "
            + LikelyWords.percent(test.sureness())
            + " sure";
  }

  private static String listed(List<String> some) {
    int last = some.size() - 1;
    return some.size() > MOST_ALIKE
        ? String.join(", ", some.subList(0, MOST_ALIKE - 1))
            + " and "
            + (some.size() - MOST_ALIKE + 1)
            + " others"
        : String.join(", ", some.subList(0, last)) + " and " + some.get(last);
  }

  private static String seedlings(int number) {
    return number == 1 ? "1 seedling" : number + " seedlings";
  }
}
