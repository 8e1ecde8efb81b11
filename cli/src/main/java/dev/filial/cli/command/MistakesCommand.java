package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Mistakes;
import dev.filial.core.answer.MistakesQuestion;
import dev.filial.core.answer.Said;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial mistakes}. */
public final class MistakesCommand implements BenchCommand {

  private final WeighingOptions weighing;
  private final Supplier<Optional<Fraction>> below;
  private final OpenRegister register;

  /** Declares its words. */
  public MistakesCommand(Words words) {
    weighing = new WeighingOptions(words);
    below =
        words.option(
            "--below",
            "SHARE",
            "List entries that had a smaller chance than this; 1% if not given.",
            RecordReadings.SHARE);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Finds the record that must be wrong. Where entries cannot all be true by the laws of"
                + " heredity, it shows as few as contradict each other, and what would explain it, the"
                + " likeliest first: another plant's pollen, a swapped tag, a state misread. Where all"
                + " is possible, it lists what is hardly likely.")
        .describe("It changes nothing. Once you know which it was: filial amend, or filial strike.")
        .example("filial mistakes --trait tips")
        .example("filial mistakes --trait down");
  }

  /**
   * The answer.
   *
   * @param mistakes trait after trait
   */
  record Told(List<Mistakes> mistakes) implements Answer {
    @Override
    public Object json() {
      return mistakes;
    }

    @Override
    public void show(Screen screen) {
      for (int i = 0; i < mistakes.size(); i++) {
        if (i > 0) {
          screen.blank();
        }
        show(screen, mistakes.get(i));
      }
    }

    private static void show(Screen screen, Mistakes one) {
      String traits = String.join(" and ", one.traits());
      if (one.contradictions().isEmpty()) {
        screen.say(
            "Of "
                + traits
                + " nothing contradicts itself, in "
                + one.looked()
                + (one.looked() == 1 ? " entry." : " entries."));
      }
      for (Mistakes.Contradiction contradiction : one.contradictions()) {
        contradiction(screen, traits, contradiction);
      }
      if (!one.unlikely().isEmpty()) {
        screen.say(
            "Possible, but with a chance below "
                + LikelyWords.percent(one.below())
                + " by all the others:");
        Table table =
            new Table().numbers("entry").column("day").column("what it says").numbers("chance");
        one.unlikely()
            .forEach(
                unlikely ->
                    table.row(
                        String.valueOf(unlikely.said().entry()),
                        day(unlikely.said()),
                        unlikely.said().text(),
                        LikelyWords.percent(unlikely.chance())));
        screen.table(table);
      }
      one.notes().forEach(note -> screen.field("note", note));
    }

    private static void contradiction(
        Screen screen, String traits, Mistakes.Contradiction contradiction) {
      int entries = contradiction.entries().size();
      screen.say(
          entries == 1
              ? "Of " + traits + " this entry cannot be true, whatever else is:"
              : "Of "
                  + traits
                  + " these "
                  + entries
                  + " entries cannot all be true"
                  + (contradiction.smallest()
                      ? ", and no fewer contradict each other:"
                      : "; without any one of them the others could be:"));
      Table table = new Table().numbers("entry").column("day").column("what it says");
      contradiction
          .entries()
          .forEach(said -> table.row(String.valueOf(said.entry()), day(said), said.text()));
      screen.table(table);
      if (contradiction.mends().isEmpty()) {
        screen.say("No single mistake explains it; two of them are wrong, or the model is.");
        return;
      }
      screen.say("What would explain it, each held alike likely beforehand:");
      Table mends = new Table().numbers("entry").column("what happened").numbers("chance");
      contradiction
          .mends()
          .forEach(
              mend ->
                  mends.row(
                      String.valueOf(mend.entry()),
                      mend.words(),
                      LikelyWords.percent(mend.chance())));
      screen.table(mends);
      screen.next("filial history " + contradiction.mends().get(0).entry());
    }

    private static String day(Said said) {
      return said.date() == null ? "" : said.date().toString();
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    List<Mistakes> all = new ArrayList<>();
    for (List<String> traits : weighing.sets(view)) {
      MistakesQuestion question =
          MistakesQuestion.of(view, traits).weighing(weighing.weighing(view));
      if (below.get().isPresent()) {
        question = question.below(below.get().get().toDouble());
      }
      all.add(question.ask());
    }
    return new Told(all);
  }
}
