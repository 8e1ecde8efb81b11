package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.DayOption;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Holdings;
import dev.filial.core.name.Code;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Tallied;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** {@code filial tally}. */
public final class TallyCommand implements BenchCommand {

  private record Showing(String state, long seedlings) {}

  private static final Reading<Showing> SHOWING =
      (text, bench) -> {
        int equals = text.lastIndexOf('=');
        String number = text.substring(equals + 1).strip();
        if (equals < 1 || !number.matches("\\d{1,9}")) {
          throw new IllegalArgumentException(
              "\"" + text + "\" is not a state and how many showed it; write red=9");
        }
        return new Showing(text.substring(0, equals).strip(), Long.parseLong(number));
      };

  private final Supplier<String> code;
  private final Supplier<String> trait;
  private final Supplier<List<Showing>> showings;
  private final DayOption day;
  private final OpenRegister register;

  /** Declares its words. */
  public TallyCommand(Words words) {
    code =
        words.argument(
            "CODE",
            "A pot or a sowing, as \"26-013 P1\"; the cross will do while it has only one.");
    trait = words.argument("TRAIT", "The trait, as it was declared.");
    showings =
        words.arguments(
            "STATE=COUNT",
            "A state and how many seedlings showed it; name each state, 0 for none, if you want to"
                + " know whether the counts fit.",
            true,
            SHOWING);
    day = new DayOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Says how many seedlings of a pot showed which state on a day. Count all of them,"
                + " those with a number too: what is later seen on these is taken out of the tally"
                + " and not used twice.")
        .example("filial tally \"26-013 P1\" tips red=9 plain=3");
  }

  @Override
  public Answer run(Bench bench) {
    Map<String, Long> counts = new LinkedHashMap<>();
    for (Showing one : showings.get()) {
      if (counts.put(one.state(), one.seedlings()) != null) {
        throw Trouble.usage("the state " + one.state() + " is counted twice", "Give it once.");
      }
    }
    String meant = Choice.among(code.get(), Holdings::pots, register, bench);
    PartialDate date = day.of(bench);
    return register.write(
        bench,
        writing -> {
          Code pot = Holdings.in(writing.view()).pot(writing.find(meant)).code();
          return Recorded.of(
              writing,
              writing.append(new Tallied(pot, trait.get(), counts, date, null)),
              pot,
              writing.view().model(Subject.trait(trait.get()).key()).isPresent()
                  ? "does it fit? filial fit "
                      + CommandLine.quoted(pot.whole().text())
                      + " --trait "
                      + CommandLine.quoted(trait.get())
                  : "prick out those you keep: filial number \""
                      + pot.text()
                      + "\" COUNT --picked-for "
                      + CommandLine.quoted(trait.get()));
        });
  }
}
