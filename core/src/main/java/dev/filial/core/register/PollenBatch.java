package dev.filial.core.register;

import dev.filial.core.name.Code;
import org.jspecify.annotations.Nullable;

/**
 * Pollen that one plant gave on one day, and what was done with it since.
 *
 * @param plant whose pollen it is
 * @param entry the entry that put it by
 * @param gathered the day it was gathered or came, or null when not known
 * @param from who sent it, or null
 * @param step what was done with it last
 * @param since the day of that, or null when not known
 * @param place where it is kept, or null
 */
public record PollenBatch(
    Code plant,
    long entry,
    @Nullable PartialDate gathered,
    @Nullable String from,
    PollenKept.Step step,
    @Nullable PartialDate since,
    @Nullable String place) {

  /** Whether some of it is left. */
  public boolean isLeft() {
    return step.isLeft();
  }

  static PollenBatch gathered(long entry, PollenKept kept) {
    return new PollenBatch(
        kept.plant(), entry, kept.date(), kept.from(), kept.step(), kept.date(), kept.place());
  }

  PollenBatch after(PollenKept kept) {
    return new PollenBatch(
        plant,
        entry,
        gathered,
        from,
        kept.step(),
        kept.date(),
        kept.place() == null ? place : kept.place());
  }
}
