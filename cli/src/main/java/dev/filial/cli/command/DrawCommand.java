package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.page.PedigreeDrawing;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.PlantsBehindQuestion;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import dev.filial.core.name.Code;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial draw}. */
public final class DrawCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<Optional<Integer>> depth;
  private final Supplier<Optional<Path>> file;
  private final OpenRegister register;

  /** Declares its words. */
  public DrawCommand(Words words) {
    plant =
        words.argument(
            "PLANT",
            "A code or a name; a cross, a seed lot or a pot stands for one seedling of it.",
            Reading.THING);
    depth =
        words.option(
            "--depth",
            "N",
            "Go back no further than N generations; otherwise as far as is known.",
            Reading.WHOLE_NUMBER);
    file =
        words.option(
            "--to",
            "FILE",
            "The file to write, which is not there yet; otherwise the code with .svg.",
            Reading.FILE);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Writes the pedigree as a drawing, an SVG file that every browser shows. Each plant is"
                + " drawn once, its parents to the left of it, with a bar of who is in it. Every"
                + " species has a letter beside its colour.")
        .example("filial draw 24-010-1")
        .example("filial draw 24-010-1 --depth 2 --to grandparents.svg");
  }

  /**
   * What was drawn.
   *
   * @param code the plant
   * @param file where it was written
   * @param plants how many plants stand in the drawing
   * @param parents how many lines
   * @param notes doubts the drawing leans on
   */
  record Drawn(Code code, String file, int plants, int parents, List<String> notes)
      implements Answer {
    @Override
    public void show(Screen screen) {
      screen.say(
          "Drew the pedigree of "
              + code.text()
              + ", "
              + (plants == 1 ? "1 plant" : plants + " plants")
              + ", into "
              + file
              + ".");
      notes.forEach(note -> screen.field("note", note));
    }
  }

  @Override
  public Answer run(Bench bench) {
    PlantsBehind behind =
        register.read(
            bench,
            view -> {
              PlantsBehindQuestion question = PlantsBehindQuestion.of(view);
              return depth
                  .get()
                  .map(question::withGenerations)
                  .orElse(question)
                  .ask(Finding.in(view).one(plant.get()).code());
            });
    Path to = file.get().orElseGet(() -> bench.folder().resolve(fileName(behind.code(), ".svg")));
    NewFile.require(to);
    NewFile.write(to, PedigreeDrawing.of(behind));
    return new Drawn(
        behind.code(),
        NewFile.asTyped(to, bench),
        behind.plants().size(),
        behind.parents().size(),
        behind.notes());
  }

  /** A code as the name of a file. */
  static String fileName(Code code, String ending) {
    return code.text().replaceAll("[^A-Za-z0-9-]+", "-") + ending;
  }
}
