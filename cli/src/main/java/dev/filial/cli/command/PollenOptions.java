package dev.filial.cli.command;

import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Pollen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** Where the pollen of a cross came from, when it is not simply one other plant. */
final class PollenOptions {

  private final BooleanSupplier selfed;
  private final BooleanSupplier open;
  private final Supplier<List<Weighing>> perhaps;
  private final Supplier<Optional<Fraction>> unknown;
  private final Supplier<List<Weighing>> mix;

  /** Adds the options. */
  PollenOptions(Words words) {
    selfed = words.flag("--selfed", "With its own pollen; there is no pollen parent.");
    open = words.flag("--open", "Left to the bees; there is no pollen parent.");
    perhaps =
        words.repeatedOption(
            "--perhaps",
            "PLANT[=WEIGHT]",
            "With --open: a plant that was in flower near by; may be repeated. =2 makes one twice"
                + " as likely as one without.",
            Weighing.READING);
    unknown =
        words.option(
            "--unknown",
            "SHARE",
            "With --perhaps: how much of the pollen may have come from other plants, as 1/4; 0 if"
                + " none can have.",
            RecordReadings.SHARE);
    mix =
        words.repeatedOption(
            "--mix",
            "PLANT=WEIGHT",
            "A mix of pollen was put on: one plant of it, and how much of its pollen there was"
                + " against the others'; once for each plant.",
            Weighing.WITH_WEIGHT);
  }

  /** Whether the options say where the pollen came from. */
  boolean isSaid() {
    return selfed.getAsBoolean() || open.getAsBoolean() || !mix.get().isEmpty();
  }

  /**
   * Whether what was typed can hold together.
   *
   * @throws Trouble if the pollen would have come from two sources, or an option stands alone
   */
  void check(boolean pollenParent, boolean stored) {
    List<String> sources = new ArrayList<>();
    if (pollenParent) {
      sources.add("POLLEN_PARENT");
    }
    if (selfed.getAsBoolean()) {
      sources.add("--selfed");
    }
    if (open.getAsBoolean()) {
      sources.add("--open");
    }
    if (!mix.get().isEmpty()) {
      sources.add("--mix");
    }
    if (sources.size() > 1) {
      throw Trouble.usage(
          String.join(" and ", sources) + " each say where the pollen came from", "Keep one.");
    }
    boolean isOpen = open.getAsBoolean();
    if (!isOpen && !perhaps.get().isEmpty()) {
      throw Trouble.usage("--perhaps goes with --open", "Add --open, or leave it out.");
    }
    if (perhaps.get().isEmpty() && unknown.get().isPresent()) {
      throw Trouble.usage(
          "--unknown goes with --perhaps",
          "Name the plants that were in flower; with none named, all the pollen is unknown.");
    }
    if (!perhaps.get().isEmpty() && unknown.get().isEmpty()) {
      throw Trouble.usage(
          "how much of the pollen may have come from plants that are not named?",
          "Add --unknown 1/4, or --unknown 0 if none can have.");
    }
    if (isOpen && stored) {
      throw Trouble.usage("bees bring no stored pollen", "Leave out --open or --stored-pollen.");
    }
  }

  /** The pollen as the register has it. */
  Pollen in(Writing writing, Optional<String> pollenParent) {
    if (pollenParent.isPresent()) {
      return new Pollen.OnePlant(writing.find(pollenParent.get()).code());
    }
    if (open.getAsBoolean()) {
      return new Pollen.Open(
          Weighing.in(writing, perhaps.get()), unknown.get().orElse(Fraction.ONE));
    }
    return mix.get().isEmpty()
        ? new Pollen.Itself()
        : new Pollen.Mix(Weighing.in(writing, mix.get()));
  }
}
