package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.Holdings;
import dev.filial.core.answer.OfferQuestion;
import dev.filial.core.answer.OfferQuestion.Line;
import dev.filial.core.answer.OfferQuestion.Offer;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterView;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial offer}. */
public final class OfferCommand implements BenchCommand {

  private static final String PRINTED = "-";

  private final Supplier<List<String>> lots;
  private final Supplier<Optional<String>> csv;
  private final OpenRegister register;

  /** Declares its words. */
  public OfferCommand(Words words) {
    lots =
        words.arguments(
            "LOT",
            "Only these seed lots; the cross or packet will do while it has only one. Otherwise all"
                + " of which something is free.",
            false,
            Reading.THING);
    csv =
        words.option(
            "--csv",
            "FILE",
            "Write it as comma-separated values into a new file, for a spreadsheet; - prints them.",
            Reading.TEXT);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "A list fit for a club: the name, the code the packet travels under, how many are free"
                + " beyond what is promised, the year, and in plain words all that is doubtful about"
                + " it.")
        .example("filial offer")
        .example("filial offer 26-012 26-004 --csv offer.csv");
  }

  /**
   * The answer.
   *
   * @param offer the list
   * @param file the file it was written to, a hyphen where it is printed, or null
   */
  record Told(Offer offer, @Nullable String file) implements Answer {
    @Override
    public void show(Screen screen) {
      if (offer.lines().isEmpty()) {
        screen.say("No seed is free to be offered.");
        return;
      }
      if (PRINTED.equals(file)) {
        screen.raw(csv(offer));
        return;
      }
      if (file == null) {
        screen.table(table());
      } else {
        screen.say(
            offer.lines().size()
                + (offer.lines().size() == 1 ? " packet" : " packets")
                + " written to "
                + file
                + ".");
      }
      if (file == null) {
        screen.field("mind", offer.reminder());
      }
    }

    /** What goes into a file is a table and nothing else; what to mind is said beside it. */
    @Override
    public List<String> warnings() {
      return file == null || offer.lines().isEmpty() ? List.of() : List.of(offer.reminder());
    }

    private Table table() {
      Table table =
          new Table()
              .column("code")
              .column("name")
              .numbers("seeds")
              .column("year")
              .column("doubts");
      for (Line line : offer.lines()) {
        table.row(
            line.code(),
            line.fieldNumber() == null ? line.name() : line.name() + " " + line.fieldNumber(),
            line.number(),
            year(line),
            String.join(", ", line.doubts()));
      }
      return table;
    }
  }

  private static String year(Line line) {
    if (line.year() == null) {
      return "?";
    }
    return line.year() + (line.harvested() ? "" : " came");
  }

  @Override
  public Answer run(Bench bench) {
    Path file = null;
    if (csv.get().isPresent() && !csv.get().get().equals(PRINTED)) {
      file = Reading.FILE.read(csv.get().get(), bench);
    }
    if (file != null) {
      NewFile.require(file);
    }
    Offer offer = register.read(bench, view -> ask(view, bench));
    if (file != null && !offer.lines().isEmpty()) {
      NewFile.write(file, csv(offer));
    }
    return new Told(offer, file == null ? csv.get().orElse(null) : file.toString());
  }

  private Offer ask(RegisterView view, Bench bench) {
    Holdings holdings = Holdings.in(view);
    List<Code> codes =
        lots.get().stream()
            .map(lot -> holdings.lot(Finding.in(view).one(lot)).code())
            .distinct()
            .toList();
    return OfferQuestion.of(view, bench.today()).withLots(codes).ask();
  }

  private static String csv(Offer offer) {
    CsvText text =
        new CsvText().row("code", "name", "parents", "field number", "seeds", "year", "doubts");
    for (Line line : offer.lines()) {
      text.row(
          line.code(),
          line.name(),
          line.parents(),
          line.fieldNumber(),
          line.number(),
          year(line),
          String.join("; ", line.doubts()));
    }
    return text.text();
  }
}
