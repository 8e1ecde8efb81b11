package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.TreeQuestion;
import dev.filial.core.answer.TreeQuestion.Tree;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial tree}. */
public final class TreeCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<Optional<Integer>> generations;
  private final BooleanSupplier ascii;
  private final OpenRegister register;

  /** Declares its words. */
  public TreeCommand(Words words) {
    plant =
        words.argument(
            "PLANT",
            "A code or a name; a cross, a seed lot or a pot stands for one seedling of it.",
            Reading.THING);
    generations =
        words.option(
            "--generations",
            "N",
            "Go back no further than N generations; otherwise as far as is known.",
            Reading.WHOLE_NUMBER);
    ascii = words.flag("--ascii", "Draw the branches with plain characters.");
    register = OpenRegister.toRead(words);
    words
        .describe("The seed parent stands above the pollen parent.")
        .example("filial tree 24-010-1")
        .example("filial tree 24-010-1 --generations 2");
  }

  /**
   * The answer.
   *
   * @param tree the plants behind it
   * @param ascii whether to draw with plain characters
   */
  record Drawn(Tree tree, boolean ascii) implements Answer {
    @Override
    public Object json() {
      return tree;
    }

    @Override
    public void show(Screen screen) {
      Branches.draw(tree.lines(), ascii, screen);
      tree.notes().forEach(note -> screen.field("note", note));
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(
        bench,
        view -> {
          TreeQuestion question =
              generations
                  .get()
                  .map(most -> TreeQuestion.of(view).withGenerations(most))
                  .orElseGet(() -> TreeQuestion.of(view));
          return new Drawn(
              question.ask(Finding.in(view).one(plant.get()).code()), ascii.getAsBoolean());
        });
  }
}
