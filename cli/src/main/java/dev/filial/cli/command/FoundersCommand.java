package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.KinshipQuestion;
import dev.filial.core.answer.KinshipQuestion.Founded;
import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.EnumSet;
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
      int different = founded.founders().size() + founded.unknownParents();
      screen.say(
          founded.genotypes()
              + (founded.genotypes() == 1 ? " genotype goes" : " genotypes go")
              + " back to "
              + different
              + (different == 1 ? " founder, " : " founders, ")
              + "as varied as "
              + ChanceWords.number(founded.effectiveFounders())
              + " of like shares would be.");
      screen.table(RelatedCommand.founders(founded.founders(), founded.unknown()));
      if (founded.unknownParents() > 0) {
        screen.field("not known", founded.unknownParents() + " parents, each counted as one more");
      }
      if (founded.meanCoancestry() != null) {
        screen.field(
            "mean coancestry",
            Shares.text(founded.meanCoancestry()) + ", each plant with itself counted too");
      }
      founded.notes().forEach(note -> screen.field("note", note));
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(
        bench,
        view -> {
          List<Code> codes = plants.get().isEmpty() ? standing(view) : named(view);
          if (codes.isEmpty()) {
            throw Trouble.refused(
                "no plant with a number of its own stands here",
                "Enter one, as filial plant \"Echeveria laui\", or number seedlings.");
          }
          return new Told(KinshipQuestion.of(view).founders(codes));
        });
  }

  private List<Code> named(RegisterView view) {
    Finding finding = Finding.in(view);
    return plants.get().stream().map(plant -> finding.one(plant).code()).toList();
  }

  private static List<Code> standing(RegisterView view) {
    List<Code> codes = new ArrayList<>();
    for (Item item : view.items(EnumSet.of(Item.Kind.PLANT, Item.Kind.SEEDLING))) {
      if (item.fate().isHere() && !item.neverHeld() && item.sameAs() == null) {
        codes.add(item.code());
      }
    }
    return codes;
  }
}
