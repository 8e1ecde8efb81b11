package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.trial.Proportion;
import dev.filial.core.trial.SurvivalCurve;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How many of the seedlings that came up live on from week to week, counted from the sowing.
 *
 * <p>They are followed out of their pots into others and under their own numbers. Who was given
 * away or thrown out, and what stands in a pot not looked at since, counts as long as it was seen
 * and no longer; a numbered seedling still here is taken to live to the register's last day.
 */
public final class SurvivalQuestion {

  private final RegisterView view;
  private final double certainty;

  private SurvivalQuestion(RegisterView view, double certainty) {
    this.view = view;
    this.certainty = certainty;
  }

  /** Asks {@code view}, with a certainty of 0.95. */
  public static SurvivalQuestion of(RegisterView view) {
    return new SurvivalQuestion(view, 0.95);
  }

  /**
   * The same with that certainty of the intervals, between 0 and 1.
   *
   * @throws IllegalArgumentException if it is not
   */
  public SurvivalQuestion withCertainty(double sure) {
    if (!(sure > 0 && sure < 1)) {
      throw new IllegalArgumentException(
          "a certainty of " + sure + "; it lies between 0 and 1, as 0.95");
    }
    return new SurvivalQuestion(view, sure);
  }

  /**
   * A week from the sowing.
   *
   * @param week 1 for the days up to the 7th …
   * @param before how many were under watch when it began
   * @param cameUp how many were counted to have come up in it
   * @param died how many were found dead or missing in it
   * @param left how many were last seen alive in it
   * @param surviving the share that lives past it, 0 to 1; null before the curve begins
   * @param error the standard error of that; 0 while none died and when all have, null before the
   *     curve begins
   * @param lower the lower end of its interval; null while none died and when all have
   * @param upper the upper end
   */
  public record Week(
      int week,
      int before,
      int cameUp,
      int died,
      int left,
      @Nullable Double surviving,
      @Nullable Double error,
      @Nullable Double lower,
      @Nullable Double upper) {}

  /**
   * How seedlings live on.
   *
   * @param what what was asked about; null for the whole register
   * @param sowings the sowings whose seedlings were followed
   * @param seedlings how many were
   * @param died how many of them died
   * @param certainty how sure the intervals are
   * @param weeks the weeks in which anything was seen
   * @param leftOut the sowings, pots and seedlings that could not be followed, and why
   * @param notes what the numbers rest on
   */
  public record Survival(
      @Nullable Code what,
      List<Code> sowings,
      int seedlings,
      int died,
      double certainty,
      List<Week> weeks,
      List<GerminationQuestion.LeftOut> leftOut,
      List<String> notes) {}

  /**
   * How the seedlings of a cross, packet, lot, sowing or pot live on; null for all. A pot stands
   * for the sowing it was filled from.
   *
   * @throws RegisterRefusal if the register has no such code or nothing of it was sown
   */
  public Survival ask(@Nullable Code what) {
    List<Code> followed = new ArrayList<>();
    List<SurvivalCurve.Event> events = new ArrayList<>();
    Map<Watch.Lost, List<Code>> lost = new EnumMap<>(Watch.Lost.class);
    LocalDate lastDay = Watch.lastDay(view);
    boolean takenAlive = false;
    for (Sown sown : SowingsMeant.of(view, what)) {
      Watch watch = Watch.of(view, sown, lastDay);
      takenAlive |= watch.isTakenAlive();
      watch
          .lost()
          .forEach(
              (why, codes) -> lost.computeIfAbsent(why, any -> new ArrayList<>()).addAll(codes));
      if (!watch.events().isEmpty()) {
        followed.add(sown.sowing());
        events.addAll(watch.events());
      }
    }
    SurvivalCurve curve = SurvivalCurve.of(events);
    List<GerminationQuestion.LeftOut> leftOut = new ArrayList<>();
    lost.forEach(
        (why, codes) ->
            leftOut.add(new GerminationQuestion.LeftOut(why.words(), List.copyOf(codes))));
    List<String> notes = new ArrayList<>();
    if (takenAlive) {
      notes.add(
          "numbered seedlings that no entry says anything else of are taken to be alive on "
              + lastDay
              + ", the last day in the register");
    }
    curve
        .conditionalFrom()
        .ifPresent(
            day ->
                notes.add(
                    "all under watch had died before others came up: the shares are of those alive"
                        + " on day "
                        + day
                        + " from the sowing, and of the time before nothing can be said"));
    return new Survival(
        what == null ? null : Things.required(view, what).code(),
        List.copyOf(followed),
        curve.entered(),
        curve.died(),
        certainty,
        curve.weeks().stream().map(this::week).toList(),
        List.copyOf(leftOut),
        List.copyOf(notes));
  }

  private static @Nullable Double known(double number) {
    return Double.isNaN(number) ? null : number;
  }

  private Week week(SurvivalCurve.Week week) {
    Proportion.Interval ends = week.end().interval(certainty).orElse(null);
    return new Week(
        week.week(),
        week.before(),
        week.entered(),
        week.died(),
        week.left(),
        known(week.end().surviving()),
        known(week.end().error()),
        ends == null ? null : ends.lower(),
        ends == null ? null : ends.upper());
  }
}
