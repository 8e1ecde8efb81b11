package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.core.ancestry.FounderContributions;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.Founded;
import dev.filial.core.answer.FoundersQuestion;
import dev.filial.core.number.Decimal;
import java.util.List;
import java.util.function.Supplier;

/** {@code filial founders}. */
public final class FoundersCommand implements BenchCommand {

  private final Supplier<List<String>> plants;
  private final OpenRegister register;

  /** Declares its words. */
  public FoundersCommand(Words words) {
    plants =
        words.arguments(
            "PLANT",
            "The plants that are meant; if none is given, all that stand here and have a number.",
            false,
            Reading.THING);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says which acquired plants stand behind a collection, and by how much. The effective"
                + " number is how many founders would leave it as varied if they all gave the same;"
                + " offsets are not counted again.")
        .example("filial founders");
  }

  /**
   * The answer.
   *
   * @param founded who founded it
   */
  record Told(Founded founded) implements Answer {
    @Override
    public Object json() {
      return founded;
    }

    @Override
    public void show(Screen screen) {
      FounderContributions behind = founded.contributions();
      int different = behind.founders().size() + behind.unknownParents();
      screen.say(
          behind.genotypes()
              + (behind.genotypes() == 1 ? " genotype goes" : " genotypes go")
              + " back to "
              + different
              + (different == 1 ? " founder, " : " founders, ")
              + "as varied as "
              + Decimal.text(behind.effectiveNumber(), 2)
              + " of like shares would be.");
      screen.table(RelatedCommand.founders(behind.founders(), behind.unknown()));
      if (behind.unknownParents() > 0) {
        screen.field("not known", behind.unknownParents() + " parents, each counted as one more");
      }
      if (founded.meanCoancestry() != null) {
        screen.field(
            "mean coancestry",
            ShareWords.text(founded.meanCoancestry()) + ", each plant with itself counted too");
      }
      founded.notes().forEach(note -> screen.field("note", note));
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(
        bench,
        view -> {
          FoundersQuestion question = FoundersQuestion.of(view);
          if (plants.get().isEmpty()) {
            return new Told(question.ask());
          }
          Finding finding = Finding.in(view);
          return new Told(
              question.ask(plants.get().stream().map(plant -> finding.one(plant).code()).toList()));
        });
  }
}
