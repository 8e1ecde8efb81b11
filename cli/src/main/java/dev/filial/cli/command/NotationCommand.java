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
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.NotationQuestion;
import dev.filial.core.answer.NotationQuestion.Sources;
import dev.filial.core.answer.NotationQuestion.Written;
import dev.filial.core.answer.NotationReading;
import dev.filial.core.answer.NotationReading.Explained;
import dev.filial.core.name.Notation;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial notation}. */
public final class NotationCommand implements BenchCommand {

  private final Supplier<Optional<String>> plant;
  private final Supplier<Optional<String>> explain;
  private final Supplier<Optional<Sources>> names;
  private final BooleanSupplier backcross;
  private final BooleanSupplier ascii;
  private final OpenRegister register;

  /** Declares its words. */
  public NotationCommand(Words words) {
    plant =
        words.optionalArgument(
            "PLANT",
            "A code or a name; a cross, a seed lot or a pot stands for one seedling of it. Without"
                + " it you are asked for a notation to explain.",
            Reading.THING);
    names =
        words.option(
            "--names",
            "WHAT",
            "Call the sources by their names, by short names of taxa, or by codes; otherwise by"
                + " names, and by taxon and field number where they have none.",
            Reading.oneOf(Sources.class));
    backcross = words.flag("--backcross", "Abbreviate backcrosses, as A*3/B.");
    explain =
        words.option(
            "--explain",
            "TEXT",
            "Explain a notation instead of writing one; in single quotes, as 'A/B//C'.");
    ascii = words.flag("--ascii", "Draw the branches of an explained notation in plain characters.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "A/B is a first cross, seed parent left; A/B//C crosses that with C, and A/B//C/3/D the"
                + " outcome with D. A*3/B is A crossed with B and twice back to A.")
        .example("filial notation 24-010-1")
        .example("filial notation 24-010-1 --names taxa --backcross")
        .example("filial notation --explain 'laui/agavoides//laui'");
  }

  /**
   * A notation that was written.
   *
   * @param written the notation and what it does not say
   */
  record Wrote(Written written) implements Answer {
    @Override
    public Object json() {
      return written;
    }

    @Override
    public void show(Screen screen) {
      screen.say(written.notation());
      written.notes().forEach(note -> screen.field("note", note));
    }
  }

  /**
   * A notation that was explained.
   *
   * @param explained what it says
   * @param ascii whether to draw with plain characters
   */
  record Told(Explained explained, boolean ascii) implements Answer {
    @Override
    public Object json() {
      return explained;
    }

    @Override
    public void show(Screen screen) {
      screen.field("notation", explained.notation());
      if (!explained.abbreviated().equals(explained.notation())) {
        screen.field("in short", explained.abbreviated());
      }
      screen.field("generation", explained.generationInWords());
      screen.field("crosses", explained.crosses());
      Table table = new Table().column("source").numbers("share").numbers("");
      explained
          .shares()
          .forEach(one -> table.row(one.taxon(), one.share(), one.share().toPercent(2)));
      screen.table(table);
      Branches.draw(explained.tree(), ascii, screen);
      screen.say("A name that occurs twice is one source, not one plant.");
    }
  }

  @Override
  public Answer run(Bench bench) {
    if (plant.get().isPresent() && explain.get().isPresent()) {
      throw Trouble.usage(
          "PLANT and --explain are both given", "Name a plant, or a notation to explain.");
    }
    if (plant.get().isEmpty()) {
      if (names.get().isPresent() || backcross.getAsBoolean()) {
        throw Trouble.usage(
            "--names and --backcross say how the notation of a PLANT is written, and none is named",
            "Name one.");
      }
      String text =
          explain
              .get()
              .or(() -> bench.asker().ask("Notation", null))
              .orElseThrow(
                  () ->
                      Trouble.usage(
                          "PLANT is missing", "Name one, or a notation with --explain 'A/B//C'."));
      return new Told(NotationReading.of(text), ascii.getAsBoolean());
    }
    Notation.Style style =
        backcross.getAsBoolean()
            ? Notation.Style.BACKCROSS_NUMBER_FIRST
            : Notation.Style.PLAIN;
    return register.read(
        bench,
        view ->
            new Wrote(
                NotationQuestion.of(view)
                    .notation(
                        Finding.in(view).one(plant.get().orElseThrow()).code(),
                        names.get().orElse(Sources.NAMES),
                        style)));
  }
}
