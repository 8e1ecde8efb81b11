package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Interval;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PollenBatch;
import dev.filial.core.register.PollenKept;
import dev.filial.core.register.PollenStore;
import dev.filial.core.register.RegisterView;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What pollen is kept: whose, since when, how, and whether it is old. */
public final class PollenQuestion {

  private final RegisterView view;
  private final LocalDate day;
  private final boolean gone;

  private PollenQuestion(RegisterView view, LocalDate day, boolean gone) {
    this.view = view;
    this.day = day;
    this.gone = gone;
  }

  /** Asks {@code view} about what is left, its age being that on {@code day}. */
  public static PollenQuestion of(RegisterView view, LocalDate day) {
    return new PollenQuestion(view, day, false);
  }

  /** The same, with what was used up or thrown out. */
  public PollenQuestion withGone(boolean also) {
    return new PollenQuestion(view, day, also);
  }

  /**
   * Pollen that one plant gave on one day.
   *
   * @param plant whose it is
   * @param what that plant's taxon or parents
   * @param gathered the day it was gathered or came, or null when not known
   * @param from who sent it, or null
   * @param step what was done with it last
   * @param since the day of that, or null when not known
   * @param place where it is kept, or null
   * @param age how many days old it is at least on the day asked about; null when not known
   * @param keeps how long that usually is, and where that is known from
   * @param old whether it is older than that
   */
  public record Line(
      Code plant,
      String what,
      @Nullable PartialDate gathered,
      @Nullable String from,
      PollenKept.Step step,
      @Nullable PartialDate since,
      @Nullable String place,
      @Nullable Long age,
      IntervalDays keeps,
      boolean old) {}

  /** All of it, by plant and day. */
  public List<Line> ask() {
    Intervals intervals = Intervals.in(view);
    TaxaBehind taxa = TaxaBehind.in(view);
    List<Line> lines = new ArrayList<>();
    for (Item item : ThingsTold.of(view, PollenKept.class)) {
      for (PollenBatch batch : PollenStore.of(view, item.code()).batches()) {
        if (gone || batch.isLeft()) {
          lines.add(
              line(
                  item,
                  batch,
                  intervals.daysOf(Interval.POLLEN_AGEING, () -> taxa.of(item.code()).one())));
        }
      }
    }
    return List.copyOf(lines);
  }

  private Line line(Item item, PollenBatch batch, IntervalDays keeps) {
    Long age = age(batch.gathered());
    return new Line(
        item.code(),
        Describing.of(view, item),
        batch.gathered(),
        batch.from(),
        batch.step(),
        batch.since(),
        batch.place(),
        age,
        keeps,
        age != null && age > keeps.days());
  }

  private @Nullable Long age(@Nullable PartialDate gathered) {
    return gathered == null
        ? null
        : Long.valueOf(Math.max(0, ChronoUnit.DAYS.between(gathered.latest(), day)));
  }

  /** What was done with pollen last, in a grower's words. */
  public static String word(PollenKept.Step step) {
    return DiaryTelling.word(step);
  }
}
