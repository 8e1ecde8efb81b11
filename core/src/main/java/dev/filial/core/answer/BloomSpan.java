package dev.filial.core.answer;

import dev.filial.core.register.PartialDate;
import java.time.LocalDate;

/**
 * One flowering of one plant, by what was seen of it. A month or a year counts as all of its days.
 *
 * @param since the day it was first seen in flower, as it was written
 * @param first the first of the days on which it is taken to have been in flower
 * @param lastSeen the last day on which a flower was seen open
 * @param last the last day on which it is taken to be in flower: the day before it was seen to be
 *     over, else as many days after it was last seen open as its kind usually flowers
 * @param seenOver whether somebody saw that it was over
 */
public record BloomSpan(
    PartialDate since, LocalDate first, LocalDate lastSeen, LocalDate last, boolean seenOver) {

  /** Whether it is taken to have been in flower on that day. */
  public boolean covers(LocalDate day) {
    return !day.isBefore(first) && !day.isAfter(last);
  }

  /** Whether there was a day on which both were in flower. */
  public boolean meets(BloomSpan other) {
    return !first.isAfter(other.last) && !other.first.isAfter(last);
  }
}
