package dev.filial.core.answer;

import dev.filial.core.register.Doubted;
import dev.filial.core.register.Entry;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An entry as it is told.
 *
 * @param entry its number
 * @param date the day it speaks of, or null
 * @param text what it says now, with what was remarked; of a struck entry what it said
 * @param struck whether it was struck
 * @param amended whether it was amended, and says something else than was first written
 * @param guess whose guess it is, or null when it is none
 * @param by who wrote it
 * @param written when
 */
public record Said(
    long entry,
    @Nullable PartialDate date,
    String text,
    boolean struck,
    boolean amended,
    @Nullable String guess,
    String by,
    Instant written) {

  /** Tells entry {@code number}, which must be there. */
  static Said of(RegisterView view, long number) {
    Entry entry = view.entry(number).orElseThrow();
    Optional<Statement> now = view.effective(number);
    Statement first = entry.statement();
    Statement told = now.orElse(first);
    String guess = null;
    for (long doubt : view.entriesOn(Subject.entry(number))) {
      if (view.effective(doubt).orElse(null) instanceof Doubted doubted) {
        guess = doubted.by();
      }
    }
    return new Said(
        number,
        told.date(),
        withRemark(Telling.of(told), told.remark()),
        now.isEmpty(),
        now.isPresent() && !now.get().equals(first),
        guess,
        entry.by(),
        entry.time());
  }

  private static String withRemark(String text, @Nullable String remark) {
    return remark == null || remark.isBlank() || text.contains(remark)
        ? text
        : text + "; " + remark;
  }
}
