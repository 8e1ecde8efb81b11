package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.trial.LikeCrosses;
import dev.filial.core.trial.Proportion;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Germination and survival as the register's own sowings show them, by the reading of the counts
 * that {@link GerminationQuestion} has too. Only sowings whose seeds and seedlings were counted
 * exactly are used: a share of a guess is a guess.
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

  /** Sowings that differ so much come up by chance once in twenty times. */
  private static final double DOUBTFUL = 0.05;

  /** Of each sowing how many did and how many did not. */
  private static final class Sums {
    private final List<long[]> germinated = new ArrayList<>();
    private final List<long[]> alive = new ArrayList<>();
  }

  /** Of the sowings of one cross or packet. */
  public Rates ofFamily(Code family) {
    return rates(
        sowings(view.codesUnder(family.whole())), "own sowings of " + family.whole().text());
  }

  /**
   * Of the sowings of seed of the same species as a cross or packet, either way round; none where
   * its species are not known. One pass over the pedigree behind all sowings.
   */
  public Rates ofSameSpecies(Code family) {
    TaxaBehind taxa = TaxaBehind.in(view);
    String its = SowingLabels.species(taxa, family.whole());
    if (its.isEmpty()) {
      return new Rates(Optional.empty(), Optional.empty());
    }
    return rates(
        all().stream()
            .filter(sowing -> its.equals(SowingLabels.species(taxa, sowing.whole())))
            .toList(),
        "sowings of " + its);
  }

  /** The sowings of one cross or packet that are in no rate, with why. */
  List<GerminationQuestion.LeftOut> leftOut(Code family) {
    Map<Emergence.Doubt, List<Code>> doubts = new EnumMap<>(Emergence.Doubt.class);
    for (Code sowing : sowings(view.codesUnder(family.whole()))) {
      view.item(sowing)
          .flatMap(item -> view.effective(item.entry()))
          .filter(Sown.class::isInstance)
          .map(Sown.class::cast)
          .map(sown -> Emergence.of(view, sown).doubt())
          .ifPresent(doubt -> doubts.computeIfAbsent(doubt, any -> new ArrayList<>()).add(sowing));
    }
    return GerminationQuestion.leftOut(doubts);
  }

  /** Of all sowings in the register: what the bench does on the whole. */
  public Rates ofAll() {
    return rates(all(), "all sowings in the register");
  }

  private List<Code> all() {
    return view.items(Set.of(Item.Kind.SOWING)).stream().map(Item::code).toList();
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
          .ifPresent(sown -> add(sums, Emergence.of(view, sown)));
    }
    return new Rates(
        rate("germination", sums.germinated, from), rate("survival", sums.alive, from));
  }

  /**
   * All sowings together. Where they differ more than by chance they count for fewer than were
   * counted: by as much as they differ (overdispersion, McCullagh and Nelder, Generalized Linear
   * Models, from memory), since the next may differ as much.
   */
  private static Optional<SeedRate> rate(String what, List<long[]> sowings, String from) {
    long some = 0;
    long all = 0;
    for (long[] one : sowings) {
      some += one[0];
      all += one[0] + one[1];
    }
    if (all < 1 || all > Integer.MAX_VALUE) {
      return Optional.empty();
    }
    String counted = from + (sowings.size() > 1 ? ", " + sowings.size() + " of them" : "");
    double spread =
        sowings.size() < 2
            ? 1
            : LikeCrosses.of(sowings)
                .differences()
                .filter(differences -> differences.p() < DOUBTFUL)
                .map(LikeCrosses.Differences::overdispersion)
                .orElse(1.0);
    if (spread > 1) {
      long fewer = Math.max(2, Math.round(all / spread));
      some = Math.round((double) some / all * fewer);
      counted += ", which differ and so count as " + fewer + " and not as " + all;
      all = fewer;
    }
    return Optional.of(SeedRate.counted(what, new Proportion((int) some, (int) all), counted));
  }

  private static void add(Sums sums, Emergence read) {
    if (read.doubt() != null) {
      return;
    }
    long up = read.up();
    sums.germinated.add(new long[] {up, read.seeds() - up});
    if (read.alive().isPresent() && read.alive().getAsLong() <= up && up > 0) {
      long alive = read.alive().getAsLong();
      sums.alive.add(new long[] {alive, up - alive});
    }
  }
}
