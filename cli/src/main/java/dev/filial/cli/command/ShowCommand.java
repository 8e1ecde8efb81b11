package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.CardQuestion;
import dev.filial.core.answer.CardQuestion.Card;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.Said;
import dev.filial.core.register.Provenance;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** {@code filial show}. */
public final class ShowCommand implements BenchCommand {

  private final Supplier<String> thing;
  private final OpenRegister register;

  /** Declares its words. */
  public ShowCommand(Words words) {
    thing =
        words.argument(
            "THING",
            "A code or a name of a plant, a cross, a seed lot, a sowing or a pot.",
            Reading.THING);
    register = OpenRegister.toRead(words);
    words.example("filial show 22-001").example("filial show \"26-013 H2\"");
  }

  /**
   * The answer.
   *
   * @param card all that is known of the thing
   */
  record Shown(Card card) implements Answer {
    @Override
    public Object json() {
      return card;
    }

    @Override
    public void show(Screen screen) {
      String fate = card.fate().isEmpty() ? "" : ", " + card.fate();
      screen.heading(card.code().text() + ", " + card.kind() + ": " + card.what() + fate);
      if (card.readAs() != null) {
        screen.field("asked for as", card.readAs().text() + ", another record of the same plant");
      }
      if (!card.names().isEmpty()) {
        screen.field("called", String.join(", ", card.names()));
      }
      if (card.provenance() != null) {
        from(screen, card.provenance());
      }
      if (card.since() != null) {
        screen.field("since", card.since());
      }
      if (card.until() != null) {
        screen.field("until", card.until());
      }
      if (card.count() != null) {
        screen.field("how many", card.count());
      }
      if (card.place() != null) {
        screen.field("place", card.place());
      }
      if (!card.under().isEmpty()) {
        screen.field("under it", CodeList.text(card.under()));
      }
      if (!card.parentOf().isEmpty()) {
        screen.field("went into", CodeList.text(card.parentOf()));
      }
      screen.table(history(card.history()));
      String typed = CommandLine.quoted(card.code().text());
      screen.next("who is in it: filial ancestry " + typed);
    }

    private static void from(Screen screen, Provenance provenance) {
      List<String> parts = new ArrayList<>();
      if (provenance.donor() != null) {
        parts.add(provenance.donor());
      }
      if (provenance.donorCode() != null) {
        parts.add("there " + provenance.donorCode());
      }
      if (!parts.isEmpty()) {
        screen.field("from", String.join(", ", parts));
      }
      if (provenance.fieldNumber() != null) {
        screen.field("field number", provenance.fieldNumber());
      }
      if (provenance.locality() != null) {
        screen.field("locality", provenance.locality());
      }
    }

    private static Table history(List<Said> history) {
      Table table = new Table().numbers("entry").column("date").column("what it says");
      for (Said said : history) {
        String mark =
            (said.guess() == null ? "" : " (a guess of " + said.guess() + ")")
                + (said.amended() ? " (amended)" : "");
        table.row(said.entry(), said.date() == null ? "" : said.date(), said.text() + mark);
      }
      return table;
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(
        bench,
        view -> new Shown(CardQuestion.of(view).ask(Finding.in(view).code(thing.get()))));
  }
}
