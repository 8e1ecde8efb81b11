package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.RecordedRates;
import dev.filial.core.answer.SeedRate;
import dev.filial.core.answer.Wanted;
import dev.filial.core.answer.Wanted.State;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The options that say what is wanted of a cross, how many, how surely, and through which rates.
 */
final class WantedWords {

  private static final Reading<State> STATE =
      (text, bench) -> {
        int equals = text.indexOf('=');
        if (equals < 1 || equals == text.length() - 1) {
          throw new IllegalArgumentException(
              "\"" + text + "\" is not a trait and a state of it; write \"leaf edge=red\"");
        }
        return new State(text.substring(0, equals).strip(), text.substring(equals + 1).strip());
      };

  private final Supplier<List<State>> states;
  private final Supplier<Optional<String>> genes;
  private final Supplier<List<String>> breedingTrue;
  private final Amount amount;

  WantedWords(Words words) {
    states =
        words.repeatedOption(
            "--want", "TRAIT=STATE", "What the seedling you hope for shows.", STATE);
    genes =
        words.option(
            "--want-genes",
            "GENES",
            "What it carries: rr, \"R_ gg\"; R_ is one R at least.",
            RecordReadings.LINE);
    breedingTrue =
        words.repeatedOption(
            "--true-breeding",
            "TRAIT",
            "It is to breed true for this trait when it is selfed.",
            RecordReadings.LINE);
    amount = new Amount(words);
  }

  /** The traits that are mentioned. */
  List<String> traits() {
    List<String> traits = new ArrayList<>();
    states.get().forEach(state -> traits.add(state.trait()));
    traits.addAll(breedingTrue.get());
    return traits;
  }

  /**
   * What is wanted; empty if nothing was said of it.
   *
   * @param family the cross whose own sowings tell the rates; null if there is none
   */
  Optional<Wanted> in(RegisterView view, @Nullable Code family) {
    if (states.get().isEmpty() && genes.get().isEmpty() && breedingTrue.get().isEmpty()) {
      if (amount.isGiven()) {
        throw Trouble.usage(
            "how many of what?", "Say what is wanted: --want \"TRAIT=STATE\", or --want-genes.");
      }
      return Optional.empty();
    }
    return Optional.of(
        new Wanted(
            states.get(),
            genes.get().orElse(null),
            breedingTrue.get(),
            amount.atLeast(),
            amount.certainty(),
            amount.rates(view, family)));
  }

  /** How many, how surely, through which rates. */
  static final class Amount {
    private final Supplier<Optional<Integer>> atLeast;
    private final Supplier<Optional<Double>> sure;
    private final Supplier<Optional<RateReading>> germination;
    private final Supplier<Optional<RateReading>> survival;

    Amount(Words words) {
      atLeast =
          words.option(
              "--at-least", "NUMBER", "How many you want; 1 if not given.", Reading.WHOLE_NUMBER);
      sure =
          words.option(
              "--sure", "SHARE", "How sure you want to be; 95% if not given.", Certainty.READING);
      germination =
          words.option(
              "--germination",
              "RATE",
              "How many seeds come up: 72% if you are certain of it, 18/25 if 18 came up of 25"
                  + " counted, or recorded for what this register has seen.",
              RateReading.of("germination"));
      survival =
          words.option(
              "--survival",
              "RATE",
              "How many of those live long enough to show it, in the same way.",
              RateReading.of("survival"));
    }

    boolean isGiven() {
      return atLeast.get().isPresent()
          || sure.get().isPresent()
          || germination.get().isPresent()
          || survival.get().isPresent();
    }

    int atLeast() {
      return atLeast.get().orElse(1);
    }

    double certainty() {
      return sure.get().orElse(Certainty.USUAL);
    }

    /** The rates as given; of a cross that was sown before, without being asked, its own. */
    List<SeedRate> rates(RegisterView view, @Nullable Code family) {
      Function<String, Optional<SeedRate>> recorded =
          what -> Optional.of(recorded(view, family, what));
      List<SeedRate> rates = new ArrayList<>();
      germination.get().flatMap(rate -> rate.or(recorded, "germination")).ifPresent(rates::add);
      survival.get().flatMap(rate -> rate.or(recorded, "survival")).ifPresent(rates::add);
      if (germination.get().isEmpty() && family != null) {
        RecordedRates.of(view).ofFamily(family).germination().ifPresent(rate -> rates.add(0, rate));
      }
      return rates;
    }

    /** Rates that are given without a register to look them up in. */
    List<SeedRate> rates(Bench bench) {
      Function<String, Optional<SeedRate>> none =
          what -> {
            throw Trouble.usage(
                "no register was named to look up the " + what + " in", "Add --register FILE.");
          };
      List<SeedRate> rates = new ArrayList<>();
      germination.get().flatMap(rate -> rate.or(none, "germination")).ifPresent(rates::add);
      survival.get().flatMap(rate -> rate.or(none, "survival")).ifPresent(rates::add);
      return rates;
    }

    boolean isLookedUp() {
      return Stream.of(germination.get(), survival.get())
          .flatMap(Optional::stream)
          .anyMatch(rate -> rate.given() == null);
    }

    private static SeedRate recorded(RegisterView view, @Nullable Code family, String what) {
      RecordedRates recorded = RecordedRates.of(view);
      Optional<SeedRate> own =
          family == null ? Optional.empty() : pick(recorded.ofFamily(family), what);
      Optional<SeedRate> alike =
          own.isPresent() || family == null ? own : pick(recorded.ofSameSpecies(family), what);
      return alike
          .or(() -> pick(recorded.ofAll(), what))
          .orElseThrow(
              () ->
                  Trouble.refused(
                      (what.equals("germination")
                              ? "this register has no sowing whose seeds and seedlings were counted"
                                  + " exactly"
                              : "this register has no sowing of which all that came up and all that"
                                  + " live were counted exactly and none were pricked out, given"
                                  + " away or thrown out")
                          + ", so it has no rate of "
                          + what,
                      "Give it: --" + what + " 72%, or --" + what + " 18/25 if it was counted."));
    }

    private static Optional<SeedRate> pick(RecordedRates.Rates rates, String what) {
      return what.equals("germination") ? rates.germination() : rates.survival();
    }
  }
}
