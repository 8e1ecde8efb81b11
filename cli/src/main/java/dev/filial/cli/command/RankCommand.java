package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.RankingQuestion;
import dev.filial.core.answer.RankingQuestion.Place;
import dev.filial.core.answer.RankingQuestion.Ranking;
import dev.filial.core.name.Code;
import dev.filial.core.register.Fate;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** {@code filial rank}. */
public final class RankCommand implements BenchCommand {

  private final Supplier<String> trait;
  private final Supplier<List<String>> what;
  private final Supplier<Optional<PartialDate>> until;
  private final BooleanSupplier smallest;
  private final CsvText.Option csv;
  private final OpenRegister register;

  /** Declares its words. */
  public RankCommand(Words words) {
    trait = words.argument("TRAIT", "A trait that is scored or measured, as it was declared.");
    what =
        words.arguments(
            "WHAT",
            "Crosses or packets, whose numbered seedlings are meant, or plants; otherwise all that"
                + " were measured.",
            false,
            Reading.THING);
    until =
        words.option(
            "--until",
            "DATE",
            "As it stood at the end of that day, month or year; otherwise the latest.",
            Reading.PARTIAL_DATE);
    smallest = words.flag("--smallest-first", "Best is what is smallest.");
    csv = new CsvText.Option(words);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Ranks seedlings by a score or a size, with what was marked to be kept or thrown out."
                + " Marks are made with: filial fate.")
        .example("filial rank farina 24-007 --until 2025")
        .example("filial rank farina 24-007");
  }

  /**
   * The answer.
   *
   * @param found what was found
   * @param csv whether it is written for a spreadsheet
   */
  record Told(Ranking found, boolean csv) implements CsvOrTable {
    @Override
    public void lay(Screen screen) {
      String unit = found.unit() == null ? "" : ", " + found.unit();
      if (found.places().isEmpty()) {
        screen.say("Nobody was measured for " + found.trait() + ".");
      }
      boolean families =
          found.places().stream().map(place -> place.code().whole()).distinct().count() > 1;
      Table table = new Table().numbers("rank").column("plant");
      if (families) {
        table.column("what it is");
      }
      table.numbers(found.trait() + unit).column("on").column("state");
      for (Place place : found.places()) {
        String plant =
            place.code().text()
                + place.names().stream()
                    .map(name -> " \"" + name + "\"")
                    .collect(Collectors.joining());
        String rank = (place.tied() ? "=" : "") + place.rank();
        String day = place.date() == null ? "" : place.date().toString();
        if (families) {
          table.row(
              rank, plant, place.what(), place.value().toPlainString(), day, mark(place.fate()));
        } else {
          table.row(rank, plant, place.value().toPlainString(), day, mark(place.fate()));
        }
      }
      screen.table(table);
      notMeasured(screen, found.notMeasured());
      found.notes().forEach(note -> screen.field("note", note));
    }

    @Override
    public String rows() {
      CsvText rows =
          new CsvText()
              .row("rank", "tied", "plant", "what", found.trait(), "unit", "date", "state");
      for (Place place : found.places()) {
        rows.row(
            place.rank(),
            place.tied() ? "yes" : "no",
            place.code().text(),
            place.what(),
            place.value(),
            found.unit(),
            place.date(),
            mark(place.fate()));
      }
      return rows.text();
    }
  }

  /** What was decided of a plant, or became of it. */
  static String mark(Fate fate) {
    return switch (fate) {
      case ALIVE -> "";
      case KEPT -> "keep";
      case DISCARDED -> "discarded";
      case DEAD -> "dead";
      case GIVEN -> "given away";
      case USED_UP -> "used up";
    };
  }

  private static final int NAMED = 8;

  static void notMeasured(Screen screen, List<Code> codes) {
    if (!codes.isEmpty()) {
      screen.field(
          "not measured",
          codes.stream().limit(NAMED).map(Code::text).collect(Collectors.joining(", "))
              + (codes.size() > NAMED ? " and " + (codes.size() - NAMED) + " more" : ""));
    }
  }

  static List<Code> meant(RegisterView view, List<String> words) {
    Finding finding = Finding.in(view);
    return words.stream().map(text -> finding.one(text).code()).toList();
  }

  @Override
  public Answer run(Bench bench) {
    boolean rows = csv.isAsked();
    return register.read(
        bench,
        view ->
            new Told(
                RankingQuestion.of(view)
                    .until(until.get().map(PartialDate::latest).orElse(null))
                    .smallestFirst(smallest.getAsBoolean())
                    .rank(trait.get(), meant(view, what.get())),
                rows));
  }
}
