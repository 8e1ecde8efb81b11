package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Item;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Potted;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.trial.Proportion;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/**
 * Germination and survival as the register's own sowings show them. Only sowings whose seeds and
 * seedlings were counted exactly are used: a share of a guess is a guess.
 */
public final class RecordedRates {

  private final RegisterView view;

  private RecordedRates(RegisterView view) {
    this.view = view;
  }

  /** Looks into {@code view}. */
  public static RecordedRates of(RegisterView view) {
    return new RecordedRates(view);
  }

  /**
   * The rates of some sowings taken together.
   *
   * @param germination how many of the seeds came up; empty if no sowing was counted exactly
   * @param survival how many of those that came up were alive at the last count; empty if none was
   *     counted so
   */
  public record Rates(Optional<SeedRate> germination, Optional<SeedRate> survival) {}

  private static final class Sums {
    private final Set<String> sowings = new LinkedHashSet<>();
    private long sown;
    private long germinated;
    private long cameUp;
    private long alive;
  }

  /** Of the sowings of one cross or packet. */
  public Rates ofFamily(Code family) {
    return rates(
        sowings(view.codesUnder(family.whole())), "own sowings of " + family.whole().text());
  }

  /** Of all sowings in the register: what the bench does on the whole. */
  public Rates ofAll() {
    List<Code> all = new ArrayList<>();
    view.items(Set.of(Item.Kind.SOWING)).forEach(item -> all.add(item.code()));
    return rates(all, "all sowings in the register");
  }

  private List<Code> sowings(List<Code> codes) {
    return codes.stream()
        .filter(code -> code.isSowing() && view.item(code).isPresent())
        .sorted()
        .toList();
  }

  private Rates rates(List<Code> sowings, String from) {
    Sums sums = new Sums();
    for (Code sowing : sowings) {
      view.item(sowing)
          .flatMap(item -> view.effective(item.entry()))
          .filter(Sown.class::isInstance)
          .map(Sown.class::cast)
          .ifPresent(sown -> add(sums, sown));
    }
    String counted =
        from + (sums.sowings.size() > 1 ? ", " + sums.sowings.size() + " of them" : "");
    return new Rates(
        rate("germination", sums.germinated, sums.sown, counted),
        rate("survival", sums.alive, sums.cameUp, counted));
  }

  private static Optional<SeedRate> rate(String what, long some, long all, String from) {
    return all < 1 || some > all || all > Integer.MAX_VALUE
        ? Optional.empty()
        : Optional.of(SeedRate.counted(what, new Proportion((int) some, (int) all), from));
  }

  private void add(Sums sums, Sown sown) {
    List<Code> pots = new ArrayList<>();
    sown.groups().forEach(filled -> pots.add(filled.group()));
    OptionalLong germinated = sum(sown.sowing(), pots, true);
    if (germinated.isEmpty() || !sown.seeds().isExact()) {
      return;
    }
    long seeds = sown.seeds().size().orElseThrow();
    if (germinated.getAsLong() > seeds) {
      return; // two seedlings out of some seeds, or a wrong count: no share of the seeds
    }
    sums.sowings.add(sown.sowing().text());
    sums.sown += seeds;
    sums.germinated += germinated.getAsLong();
    OptionalLong alive = sum(sown.sowing(), pots, false);
    pots.add(sown.sowing());
    if (alive.isPresent()
        && alive.getAsLong() <= germinated.getAsLong()
        && pots.stream().noneMatch(this::isTakenFrom)) {
      sums.cameUp += germinated.getAsLong();
      sums.alive += alive.getAsLong();
    }
  }

  /**
   * Whether seedlings went elsewhere, so that fewer standing here says nothing of how many live.
   */
  private boolean isTakenFrom(Code pot) {
    for (long entry : view.entriesOn(Subject.of(pot))) {
      Statement statement = view.effective(entry).orElseThrow();
      if ((statement instanceof Potted potted && potted.from().equals(pot))
          || statement instanceof Numbered
          || (statement instanceof FateRecorded fate && fate.fate() != Fate.DEAD)) {
        return true;
      }
    }
    return false;
  }

  /** What was counted last of the sowing as a whole, else of all its pots together. */
  private OptionalLong sum(Code sowing, List<Code> pots, boolean germinated) {
    OptionalLong whole = last(sowing, germinated);
    if (whole.isPresent() || pots.isEmpty()) {
      return whole;
    }
    long sum = 0;
    for (Code pot : pots) {
      OptionalLong one = last(pot, germinated);
      if (one.isEmpty()) {
        return one;
      }
      sum += one.getAsLong();
    }
    return OptionalLong.of(sum);
  }

  private OptionalLong last(Code pot, boolean germinated) {
    OptionalLong last = OptionalLong.empty();
    long latest = Long.MIN_VALUE;
    for (long entry : view.entriesOn(Subject.of(pot))) {
      Statement statement = view.effective(entry).orElseThrow();
      if (statement instanceof Counted counted) {
        long day = counted.date() == null ? latest : counted.date().latest().toEpochDay();
        for (Counted.Reading reading : counted.readings()) {
          Count count = germinated ? reading.germinated() : reading.alive();
          if (reading.code().equals(pot) && count != null && day >= latest) {
            latest = day;
            last = count.isExact() ? count.size() : OptionalLong.empty();
          }
        }
      }
    }
    return last;
  }
}
