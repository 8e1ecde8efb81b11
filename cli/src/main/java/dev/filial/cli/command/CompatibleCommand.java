package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.CompatibilityQuestion;
import dev.filial.core.answer.CompatibilityQuestion.Compatible;
import dev.filial.core.answer.CompatibilityQuestion.Pair;
import dev.filial.core.answer.CompatibilityQuestion.Plant;
import dev.filial.core.answer.Finding;
import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** {@code filial compatible}. */
public final class CompatibleCommand implements BenchCommand {

  private final Supplier<List<String>> plants;
  private final OpenRegister register;

  /** Declares its words. */
  public CompatibleCommand(Words words) {
    plants =
        words.arguments("PLANT", "Two plants or more; of one, its selfing.", true, Reading.THING);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says which plants can set seed on which, by their S alleles: pollen fails on a flower"
                + " that has its own S allele. Whether two kinds cross at all is another matter, and"
                + " so is the weather.")
        .example("filial compatible 22-004 22-005 22-006");
  }

  /**
   * The answer.
   *
   * @param compatible what was found
   */
  record Told(Compatible compatible) implements Answer {
    @Override
    public Object json() {
      return compatible;
    }

    @Override
    public void show(Screen screen) {
      List<Plant> plants = compatible.plants();
      for (Pair pair : compatible.pairs()) {
        if (plants.size() <= 2 && (plants.size() == 1 || !pair.seed().equals(pair.pollen()))) {
          screen.say(sentence(pair));
        }
      }
      screen.say("Seed parents down the side, pollen along the top:");
      Table table = new Table().column("").column(compatible.locus());
      plants.forEach(plant -> table.column(plant.plant().text()));
      int place = 0;
      for (Plant seed : plants) {
        List<Object> cells = new ArrayList<>();
        cells.add(seed.plant().text());
        cells.add(seed.alleles() == null ? "?" : seed.alleles());
        for (int i = 0; i < plants.size(); i++) {
          cells.add(word(compatible.pairs().get(place++)));
        }
        table.row(cells.toArray());
      }
      screen.table(table);
      screen.field(
          "leak",
          compatible.leak().toPercent(2)
              + " of refused pollen comes through all the same, so a seed or two may set even where"
              + " none should");
    }

    private static String word(Pair pair) {
      if (pair.verdict() == null || pair.working() == null) {
        return "?";
      }
      return switch (pair.verdict()) {
        case ALL -> "all";
        case NONE -> "none";
        case SOME -> ChanceWords.oneIn(pair.working());
      };
    }

    private static String sentence(Pair pair) {
      String way = pair.seed().text() + " × " + pair.pollen().text() + ": ";
      if (pair.verdict() == null || pair.working() == null) {
        return way + "not known; say what they carry, as filial genotype PLANT S1/S2.";
      }
      return way
          + switch (pair.verdict()) {
            case ALL -> "all the pollen works.";
            case NONE -> "none of the pollen works, save the little that leaks.";
            case SOME ->
                (pair.working().toString().equals("1/2")
                        ? "half the pollen works"
                        : ChanceWords.oneIn(pair.working()) + " of the pollen works")
                    + "; genes close to the S locus will not segregate evenly through it.";
          };
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(
        bench,
        view -> {
          List<Code> codes = new ArrayList<>();
          plants.get().forEach(text -> codes.add(Finding.in(view).one(text).code()));
          return new Told(CompatibilityQuestion.of(view).ask(codes.stream().distinct().toList()));
        });
  }
}
