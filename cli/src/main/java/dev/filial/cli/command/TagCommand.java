package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Wrap;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.TagQuestion;
import dev.filial.core.answer.TagQuestion.Tag;
import dev.filial.core.name.LabelLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial tag}. */
public final class TagCommand implements BenchCommand {

  private final Supplier<List<String>> things;
  private final Supplier<Optional<Integer>> columns;
  private final Supplier<Optional<Integer>> lines;
  private final Supplier<Optional<Integer>> sides;
  private final BooleanSupplier ascii;
  private final BooleanSupplier leaving;
  private final BooleanSupplier machine;
  private final OpenRegister register;

  /** Declares its words. */
  public TagCommand(Words words) {
    things =
        words.arguments(
            "THING",
            "Codes or names of plants, crosses, seed lots, sowings or pots.",
            true,
            Reading.THING);
    columns =
        words.option("--columns", "N", "Characters in a line; otherwise 24.", Reading.WHOLE_NUMBER);
    lines = words.option("--lines", "N", "Lines on a side; otherwise 2.", Reading.WHOLE_NUMBER);
    sides =
        words.option(
            "--sides", "N", "Sides that are written on; otherwise 2.", Reading.WHOLE_NUMBER);
    ascii = words.flag("--ascii", "In plain ASCII, for a printer that has nothing else.");
    leaving = words.flag("--leaving", "With your mark before the code, for what leaves the house.");
    machine =
        words.flag(
            "--machine",
            "Only the line for a label that a machine reads: mark, code and a character that proves"
                + " them.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "What matters most is kept where there is not room for all: the code, the parents or the"
                + " taxon, the field number, the day of sowing or of harvest, the generation, then the rest.")
        .example("filial tag 24-007-1")
        .example("filial tag \"26-013 H2\" --leaving --columns 30");
  }

  /**
   * The answer.
   *
   * @param tags the text of each tag
   * @param machine whether only the machine-readable line is shown
   */
  record Tags(List<Tag> tags, boolean machine) implements Answer {
    @Override
    public Object json() {
      return new Json(tags);
    }

    /**
     * What is written under {@code --json}.
     *
     * @param tags the text of each tag
     */
    record Json(List<Tag> tags) {}

    @Override
    public void show(Screen screen) {
      boolean first = true;
      for (Tag tag : tags) {
        if (machine) {
          screen.say(tag.machineReadable());
          continue;
        }
        if (!first) {
          screen.blank();
        }
        first = false;
        lines(screen, "front", tag.text().front());
        lines(screen, "back", tag.text().back());
        screen.field("buried end", tag.text().buriedEnd());
        tag.text().missing().forEach(left -> screen.field("no room for", left));
      }
    }

    private static void lines(Screen screen, String side, List<String> lines) {
      String name = side;
      for (String line : lines) {
        screen.field(name, Wrap.keepingDoubleSpaces(line));
        name = "";
      }
    }
  }

  @Override
  public Answer run(Bench bench) {
    LabelLayout standard = LabelLayout.STANDARD;
    LabelLayout layout =
        new LabelLayout(
            columns.get().orElse(standard.columns()),
            lines.get().orElse(standard.lines()),
            sides.get().orElse(standard.sides()),
            ascii.getAsBoolean());
    return register.read(
        bench,
        view -> {
          TagQuestion question =
              TagQuestion.of(view).withLayout(layout).withMark(leaving.getAsBoolean());
          return new Tags(
              things.get().stream()
                  .map(thing -> question.ask(Finding.in(view).one(thing).code()))
                  .toList(),
              machine.getAsBoolean());
        });
  }
}
