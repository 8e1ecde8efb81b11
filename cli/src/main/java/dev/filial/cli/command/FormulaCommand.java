package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.NotationQuestion;
import dev.filial.core.answer.NotationQuestion.Formula;
import dev.filial.core.name.FormulaStyle;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial formula}. */
public final class FormulaCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final BooleanSupplier alphabetical;
  private final BooleanSupplier signs;
  private final BooleanSupplier ascii;
  private final OpenRegister register;

  /** Declares its words. */
  public FormulaCommand(Words words) {
    plant =
        words.argument(
            "PLANT",
            "A code or a name; a cross, a seed lot or a pot stands for one seedling of it.",
            Reading.THING);
    alphabetical =
        words.flag("--alphabetical", "In alphabetical order; otherwise the seed parent first.");
    signs =
        words.flag(
            "--signs",
            "With the signs of seed and pollen parent; only for a cross of two plants of one taxon"
                + " each.");
    ascii = words.flag("--ascii", "In plain ASCII, x for the sign of a hybrid.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Every taxon behind the plant once, as the code of nomenclature writes hybrids. What was"
                + " crossed with what is told by its notation.")
        .example("filial formula 22-009-1")
        .example("filial formula 22-009-1 --alphabetical");
  }

  /**
   * The answer.
   *
   * @param formula the formula, its order, and what it leaves open
   */
  record Told(Formula formula) implements Answer {
    @Override
    public Object json() {
      return formula;
    }

    @Override
    public void show(Screen screen) {
      screen.say(formula.formula() + "  (" + formula.order() + ")");
      formula.notes().forEach(note -> screen.field("note", note));
    }
  }

  @Override
  public Answer run(Bench bench) {
    FormulaStyle style =
        new FormulaStyle(
            alphabetical.getAsBoolean(), signs.getAsBoolean(), false, ascii.getAsBoolean());
    return register.read(
        bench,
        view ->
            new Told(
                NotationQuestion.of(view)
                    .formula(Finding.in(view).one(plant.get()).code(), style)));
  }
}
