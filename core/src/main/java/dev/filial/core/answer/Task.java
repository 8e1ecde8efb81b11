package dev.filial.core.answer;

import dev.filial.core.name.Code;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something that is due on the bench.
 *
 * @param work what is to be done
 * @param codes with what
 * @param due since when, or from when, it is due
 * @param why what makes it so, in a grower's words
 * @param place where it stands, or null when nobody said
 */
public record Task(Work work, List<Code> codes, LocalDate due, String why, @Nullable String place) {

  /** What is to be done; in the order in which a day goes. */
  public enum Work {
    /** A bag or lid to be taken off. */
    OPEN("open"),
    /** A closed sowing to be looked into. */
    LOOK_INTO("look into"),
    /** A sowing that comes up, to be counted. */
    COUNT("count"),
    /** A sowing of which nothing came up after its usual time. */
    NOTHING_UP("see why nothing is up"),
    /** A treatment to be repeated. */
    TREAT("treat again"),
    /** Fruit that should be ripe. */
    HARVEST("harvest"),
    /** What is promised and not given yet. */
    SEND("give what is promised"),
    /** Seed that gets old. */
    SOW_SOON("sow, for it gets old"),
    /** Stored pollen that gets old. */
    USE_POLLEN("use, for it gets old"),
    /** Tags that fade. */
    REWRITE_TAG("rewrite the tag");

    private static final int NEVER = 366_000;

    private final String words;

    Work(String words) {
      this.words = words;
    }

    /** What a grower would say. */
    public String words() {
      return words;
    }

    /**
     * After how many days it was given up, or done and never written down: a sowing is no longer
     * counted as it comes up, and no fruit still hangs after a year. Common practice, no source.
     */
    int givenUpAfter() {
      return switch (this) {
        case COUNT -> 56;
        case OPEN, LOOK_INTO, NOTHING_UP, TREAT, HARVEST -> 365;
        case SEND, SOW_SOON, USE_POLLEN, REWRITE_TAG -> NEVER;
      };
    }
  }

  /** Copies the list. */
  public Task {
    codes = List.copyOf(codes);
  }
}
