package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.ForecastQuestion;
import dev.filial.core.answer.ForecastQuestion.Forecast;
import dev.filial.core.answer.ForecastQuestion.Likeness;
import dev.filial.core.answer.ForecastQuestion.OfMeasure;
import dev.filial.core.answer.ForecastQuestion.OfStates;
import dev.filial.core.heredity.PlastidLayers;
import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** {@code filial forecast}. */
public final class ForecastCommand implements BenchCommand {

  private final Supplier<Optional<String>> seed;
  private final Supplier<Optional<String>> pollen;
  private final Supplier<Optional<String>> trait;
  private final Supplier<Optional<Integer>> next;
  private final Supplier<Optional<Double>> sure;
  private final Supplier<Optional<PlastidLayers>> layers;
  private final OpenRegister register;

  /** Declares its words. */
  public ForecastCommand(Words words) {
    seed =
        words.optionalArgument(
            "SEED_PARENT", "The seed parent; or a cross, and no other plant.", Reading.THING);
    pollen = words.optionalArgument("POLLEN_PARENT", "The pollen parent.", Reading.THING);
    trait =
        words.option(
            "--trait", "TRAIT", "What is to be forecast: states or a size.", RecordReadings.LINE);
    next =
        words.option(
            "--seedlings",
            "NUMBER",
            "For how many seedlings; 20 if not given.",
            Reading.WHOLE_NUMBER);
    sure =
        words.option(
            "--sure", "SHARE", "How sure the range is to be; 95% if not given.", Certainty.READING);
    layers =
        words.option(
            "--layers",
            "LAYERS",
            "Of a variegated seed parent instead: its cell layers from the outside in, G green, W"
                + " white, M mixed, as GWG.",
            (text, bench) -> PlastidLayers.parse(text));
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says what a cross may bring where no gene is known: by what the same two plants, or"
                + " plants of the same two taxa, brought before, and for a size by how families went"
                + " with their parents' mean. These are no odds of genes; those are: filial odds.")
        .example("filial forecast 22-001 22-003 --trait tips");
  }

  /**
   * The answer for states or a size.
   *
   * @param forecast what was found
   */
  record Told(Forecast forecast) implements Answer {
    @Override
    public Object json() {
      return forecast;
    }

    @Override
    public void show(Screen screen) {
      if (forecast.states() != null) {
        show(screen, forecast.states());
      }
      if (forecast.measure() != null) {
        show(screen, forecast.measure());
      }
      screen.field("kind of answer", "a forecast from what was counted, not the odds of genes");
      forecast.notes().forEach(note -> screen.field("note", note));
    }

    private static void show(Screen screen, OfStates states) {
      screen.say(
          "Of the next "
              + states.next()
              + " seedlings, with a certainty of "
              + ChanceWords.certainty(states.certainty())
              + " for each state:");
      Table table =
          new Table().column("state").numbers("so far").numbers("share").numbers("expect");
      for (ForecastQuestion.State state : states.states()) {
        table.row(
            state.state(),
            state.seen() + " of " + states.seedlings(),
            ChanceWords.number(state.share() * 100) + " %",
            state.fewest() == state.most()
                ? Integer.toString(state.fewest())
                : state.fewest() + " to " + state.most());
      }
      screen.table(table);
      screen.field(
          "from",
          states.families().stream().map(Code::text).collect(Collectors.joining(", "))
              + (states.likeness() == Likeness.SAME_PLANTS
                  ? ", of the same two plants"
                  : ", of other plants of the same two taxa"));
      screen.field(
          "leans on",
          switch (states.basis()) {
            case ONE_FAMILY ->
                "one family; how much families differ is not known, and the next may differ";
            case FAMILIES_ALIKE -> "families that differ no more than by chance";
            case FAMILIES_DIFFER -> "families that differ, so the range is wide";
          });
    }

    private static void show(Screen screen, OfMeasure measure) {
      String unit = measure.unit() == null ? "" : " " + measure.unit();
      screen.say(
          "A family of "
              + measure.size()
              + " is expected to have a mean of "
              + ChanceWords.number(measure.prediction().mean())
              + unit
              + ", with a certainty of "
              + ChanceWords.certainty(measure.certainty())
              + " between "
              + ChanceWords.number(measure.prediction().lower())
              + " and "
              + ChanceWords.number(measure.prediction().upper())
              + ".");
      Table table =
          new Table().column("family").numbers("parents' mean").numbers("its mean").numbers("of");
      for (ForecastQuestion.Measured family : measure.families()) {
        table.row(
            family.family().text(),
            ChanceWords.number(family.midParent()),
            ChanceWords.number(family.mean()),
            family.size());
      }
      screen.table(table);
      screen.field("parents' mean here", ChanceWords.number(measure.midParent()) + unit);
      screen.field(
          "slope",
          ChanceWords.number(measure.line().slope())
              + ", standard error "
              + ChanceWords.number(measure.line().slopeError())
              + " (how much of the parents' difference their seedlings showed)");
      if (measure.prediction().beyond()) {
        screen.field(
            "note", "These parents lie beyond all that were measured; the line is stretched.");
      }
    }
  }

  /**
   * The answer for a variegated seed parent.
   *
   * @param layers its layers
   * @param seedlings what can come up
   */
  record Variegated(PlastidLayers layers, List<PlastidLayers.Seedling> seedlings)
      implements Answer {
    @Override
    public void show(Screen screen) {
      if (seedlings.size() == 1) {
        String colour = seedlings.get(0).name().toLowerCase(Locale.ROOT);
        screen.say(
            "All seedlings will be "
                + colour
                + ", whatever the pollen: seed comes from the second layer, and plastids through the"
                + " seed parent."
                + (colour.equals("white")
                    ? " White seedlings die when the seed's food is gone."
                    : "")
                + (layers.isVariegated()
                    ? " The variegation itself does not come up from seed."
                    : ""));
      } else {
        screen.say(
            "Green, striped and white seedlings will come up, in shares that differ from fruit to"
                + " fruit; no ratio is expected. White ones die. Count a family and forecast from"
                + " it.");
      }
    }
  }

  @Override
  public Answer run(Bench bench) {
    if (layers.get().isPresent()) {
      if (seed.get().isPresent() || trait.get().isPresent()) {
        throw Trouble.usage(
            "--layers says all there is to say of a variegated seed parent",
            "Leave the plants and the trait out.");
      }
      PlastidLayers plant = layers.get().get();
      return new Variegated(plant, List.copyOf(new TreeSet<>(plant.seedlings())));
    }
    if (seed.get().isEmpty()) {
      throw Trouble.usage("which cross?", "Name it, or its seed parent and its pollen parent.");
    }
    if (trait.get().isEmpty()) {
      throw Trouble.usage("a forecast of what?", "Add --trait TRAIT.");
    }
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    Finding finding = Finding.in(view);
    Item first = finding.one(seed.get().orElseThrow());
    ForecastQuestion question =
        ForecastQuestion.of(view)
            .forNext(next.get().orElse(20))
            .withCertainty(sure.get().orElse(Certainty.USUAL));
    String asked = trait.get().orElseThrow();
    if (pollen.get().isPresent()) {
      return new Told(question.ask(asked, first.code(), finding.one(pollen.get().get()).code()));
    }
    if (first.kind().isPlant()) {
      throw Trouble.usage("with whose pollen?", "Name the pollen parent too.");
    }
    return new Told(question.ask(asked, first.code()));
  }
}
