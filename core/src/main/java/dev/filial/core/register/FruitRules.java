package dev.filial.core.register;

import java.util.List;
import java.util.Optional;

/** The rules of fruit set. */
final class FruitRules {

  private final RegisterView book;
  private final List<String> warnings;

  FruitRules(RegisterView book, List<String> warnings) {
    this.book = book;
    this.warnings = warnings;
  }

  /**
   * Warns when more flowers set or failed, over all entries, than were tried, or more fruit dropped
   * than had set.
   */
  void check(FruitRecorded fruit) {
    Count met = Count.of(0);
    Count set = Count.of(0);
    Count dropped = Count.of(0);
    Optional<Count> tried = Optional.empty();
    for (long entry : book.entriesOn(Subject.of(fruit.cross()))) {
      Statement statement = book.effective(entry).orElseThrow();
      if (statement instanceof FruitRecorded other) {
        met = other.set() == null ? met : met.plus(other.set());
        met = other.failed() == null ? met : met.plus(other.failed());
        set = other.set() == null ? set : set.plus(other.set());
        dropped = other.aborted() == null ? dropped : dropped.plus(other.aborted());
      } else if (statement instanceof Pollinated cross) {
        tried = Optional.ofNullable(cross.flowers());
      }
    }
    if (set.isExact()
        && dropped.isExact()
        && dropped.size().orElseThrow() > set.size().orElseThrow()) {
      warnings.add(
          dropped
              + " fruits of "
              + fruit.cross().text()
              + " dropped unripe, and "
              + set
              + " had set; enter those that set too, or mend one of the numbers");
    }
    if (tried.isPresent()
        && tried.get().isExact()
        && met.isExact()
        && met.size().orElseThrow() > tried.get().size().orElseThrow()) {
      warnings.add(
          met
              + " flowers of "
              + fruit.cross().text()
              + " have set or failed, and "
              + tried.get()
              + " were pollinated; see which number is wrong, or whether one was entered twice");
    }
  }
}
