package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.ListQuestion;
import dev.filial.core.answer.ListQuestion.Line;
import dev.filial.core.register.Item;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial list}. */
public final class ListCommand implements BenchCommand {

  /** What can be listed by itself. */
  enum Kind {
    PLANTS,
    CROSSES,
    SEEDLINGS,
    POTS,
    /** Seed, harvested, bought or mixed. */
    LOTS,
    SOWINGS;

    Set<Item.Kind> kinds() {
      return switch (this) {
        case PLANTS -> EnumSet.of(Item.Kind.PLANT);
        case CROSSES -> EnumSet.of(Item.Kind.CROSS);
        case SEEDLINGS -> EnumSet.of(Item.Kind.SEEDLING);
        case POTS -> EnumSet.of(Item.Kind.GROUP);
        case LOTS -> EnumSet.of(Item.Kind.LOT, Item.Kind.SEED, Item.Kind.MIXTURE);
        case SOWINGS -> EnumSet.of(Item.Kind.SOWING);
      };
    }
  }

  private final Supplier<List<String>> text;
  private final Supplier<List<Kind>> kinds;
  private final Supplier<Optional<Integer>> year;
  private final BooleanSupplier all;
  private final OpenRegister register;

  /** Declares its words. */
  public ListCommand(Words words) {
    text =
        words.arguments(
            "WORD",
            "Only what has each of these words, or pieces of words, in its code, name, taxon,"
                + " field number or place, or in its parents' codes, names or taxa.",
            false,
            Reading.TEXT);
    kinds =
        words.repeatedOption(
            "--kind",
            "WHAT",
            "Only plants, crosses, seedlings, pots, lots or sowings; may be given several times.",
            Reading.oneOf(Kind.class));
    year =
        words.option(
            "--year", "YEAR", "Only codes of this year, as 2024 or 24.", Reading.WHOLE_NUMBER);
    all = words.flag("--all", "Also what died, left or was used up, and what never stood here.");
    register = OpenRegister.toRead(words);
    words
        .example("filial list laui --kind plants")
        .example("filial list --kind pots --year 2024 --all");
  }

  /**
   * The answer.
   *
   * @param things what was found, in order of entry
   * @param all whether what is gone was looked at too
   */
  record Listed(List<Line> things, boolean all) implements Answer {
    @Override
    public void show(Screen screen) {
      if (things.isEmpty()) {
        screen.say(
            "Nothing to list."
                + (all ? "" : " What is gone is listed too with: filial list --all"));
        return;
      }
      boolean kinds = things.stream().map(Line::kind).distinct().count() > 1;
      boolean counts = things.stream().anyMatch(line -> line.count() != null);
      boolean places = things.stream().anyMatch(line -> line.place() != null);
      Columns columns = new Columns();
      columns.add("code", line -> line.code().text(), true);
      columns.add("kind", Line::kind, kinds);
      columns.add("what it is", Listed::what, true);
      columns.add("how many", line -> text(line.count()), counts);
      columns.add("place", line -> text(line.place()), places);
      columns.add("state", Line::fate, all);
      screen.table(columns.table(things));
    }

    private static String what(Line line) {
      StringBuilder what = new StringBuilder(line.what());
      if (line.fieldNumber() != null) {
        what.append(' ').append(line.fieldNumber());
      }
      line.names().forEach(name -> what.append(" \"").append(name).append('"'));
      return what.toString();
    }

    private static String text(@Nullable Object value) {
      return value == null ? "" : value.toString();
    }
  }

  /** The columns of a list that have anything in them. */
  private static final class Columns {
    private final Table table = new Table();
    private final List<Function<Line, String>> cells = new ArrayList<>();

    void add(String heading, Function<Line, String> cell, boolean shown) {
      if (shown) {
        table.column(heading);
        cells.add(cell);
      }
    }

    Table table(List<Line> lines) {
      lines.forEach(line -> table.row(cells.stream().map(cell -> cell.apply(line)).toArray()));
      return table;
    }
  }

  @Override
  public Answer run(Bench bench) {
    Set<Item.Kind> only = EnumSet.noneOf(Item.Kind.class);
    kinds.get().forEach(kind -> only.addAll(kind.kinds()));
    boolean gone = all.getAsBoolean();
    String words = String.join(" ", text.get());
    return register.read(
        bench,
        view ->
            new Listed(
                ListQuestion.of(view)
                    .withKinds(only.isEmpty() ? EnumSet.allOf(Item.Kind.class) : only)
                    .withGone(gone)
                    .withText(words.isBlank() ? null : words)
                    .withYear(year.get().orElse(null))
                    .ask(),
                gone));
  }
}
