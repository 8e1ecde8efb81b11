package dev.filial.core.answer;

import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * How old seed was when it was sown: from its harvest, or where only that is known, from the day it
 * came.
 *
 * @param least the fewest days it may have been, 0 or more
 * @param most the most days, more than the fewest where a date is known to the month or year only,
 *     or the lot was mixed
 * @param sinceItCame whether it is counted from the day the seed came, so that it may be older
 */
record SeedAge(long least, long most, boolean sinceItCame) {

  /** A class of ages. Where the classes part is ours. */
  enum Span {
    THREE_MONTHS("under 3 months", 91),
    SIX_MONTHS("3 to 6 months", 183),
    ONE_YEAR("6 to 12 months", 365),
    TWO_YEARS("1 to 2 years", 730),
    THREE_YEARS("2 to 3 years", 1095),
    FIVE_YEARS("3 to 5 years", 1826),
    OLDER("5 years or more", Long.MAX_VALUE);

    private final String text;
    private final long below;

    Span(String text, long below) {
      this.text = text;
      this.below = below;
    }

    String text() {
      return text;
    }

    /** Where it stands among the others: the younger first. */
    int order() {
      return (int) Math.min(below, Integer.MAX_VALUE - 1L);
    }

    static Span of(long days) {
      for (Span span : values()) {
        if (days < span.below) {
          return span;
        }
      }
      return OLDER;
    }
  }

  /** Of the seed of a sowing; empty where one of the two days is not known. */
  static Optional<SeedAge> of(RegisterView view, Sown sown) {
    PartialDate day = sown.date();
    if (day == null) {
      return Optional.empty();
    }
    return SeedBegun.of(view, sown.lot())
        .map(
            born ->
                new SeedAge(
                    Math.max(0, ChronoUnit.DAYS.between(born.last().latest(), day.earliest())),
                    Math.max(0, ChronoUnit.DAYS.between(born.first().earliest(), day.latest())),
                    born.came()));
  }

  /** The class it falls into; empty where what is known of the days leaves it open. */
  Optional<Span> span() {
    Span span = Span.of(least);
    return span == Span.of(most) ? Optional.of(span) : Optional.empty();
  }
}
