package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.DayOption;
import dev.filial.cli.frame.LeftOut;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Holdings;
import dev.filial.core.answer.WhereQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial count}. */
public final class CountCommand implements BenchCommand {

  /** Counts in the order of the codes: {@code 12,9}. */
  private static final Reading<List<Count>> COUNTS =
      (text, bench) -> {
        List<Count> counts = new ArrayList<>();
        for (String part : text.split(",", -1)) {
          counts.add(Count.parse(part));
        }
        return List.copyOf(counts);
      };

  private final Supplier<List<String>> codes;
  private final Supplier<Optional<String>> place;
  private final Supplier<Optional<List<Count>>> up;
  private final Supplier<Optional<List<Count>>> alive;
  private final DayOption day;
  private final OpenRegister register;

  /** Declares its words. */
  public CountCommand(Words words) {
    codes =
        words.arguments(
            "CODE",
            "A pot or a sowing, as \"26-013 P1\"; the cross will do while it has only one. All the"
                + " pots of a bag or tray can go into one entry.",
            false,
            Reading.TEXT);
    place =
        words.option(
            "--in",
            "PLACE",
            "All pots and sowings in this bag, tray or other place, in the order of their codes.",
            RecordReadings.LINE);
    up =
        words.option(
            "--up",
            "COUNTS",
            "How many have come up by now, in all; of several pots in their order, as 18,15.",
            COUNTS);
    alive =
        words.option(
            "--alive",
            "COUNTS",
            "How many stand there now; of several pots in their order, as 12,9.",
            COUNTS);
    day = new DayOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe("Counts the seedlings of a pot, a sowing, or a whole bag or tray on a day.")
        .example("filial count \"26-013 P1\" --up 18 --alive 12")
        .example("filial count \"26-013 P1\" \"26-013 P2\" --alive 12,9")
        .example("filial count --in \"bag 1\" --up 13,16");
  }

  @Override
  public Answer run(Bench bench) {
    List<String> meant = meant(bench);
    Optional<List<Count>> living = alive.get();
    if (up.get().isEmpty() && living.isEmpty()) {
      living =
          Optional.of(
              LeftOut.orAsk(
                  living,
                  "--up or --alive",
                  "How many are alive in " + String.join(", ", meant) + "?",
                  null,
                  COUNTS,
                  bench));
    }
    List<@Nullable Count> cameUp = inOrder("--up", up.get(), meant);
    List<@Nullable Count> stand = inOrder("--alive", living, meant);
    return register.write(
        bench,
        writing -> {
          List<Counted.Reading> readings = new ArrayList<>();
          for (int i = 0; i < meant.size(); i++) {
            Code code = Holdings.in(writing.view()).pot(writing.find(meant.get(i))).code();
            readings.add(new Counted.Reading(code, cameUp.get(i), stand.get(i)));
          }
          Code first = readings.get(0).code();
          return Recorded.of(
              writing,
              writing.append(new Counted(day.of(bench), readings, null)),
              readings.size() == 1 ? first : null,
              isAnyUp(readings)
                  ? "when you prick them out: filial number \"" + first.text() + "\" COUNT"
                  : "when it is to be looked at again: filial due");
        });
  }

  private static boolean isAnyUp(List<Counted.Reading> readings) {
    return readings.stream()
        .anyMatch(reading -> isAny(reading.germinated()) || isAny(reading.alive()));
  }

  private static boolean isAny(@Nullable Count count) {
    return count != null && count.size().orElse(1) > 0;
  }

  private List<String> meant(Bench bench) {
    List<String> meant = new ArrayList<>();
    codes.get().forEach(code -> meant.add(Choice.among(code, Holdings::pots, register, bench)));
    place
        .get()
        .ifPresent(
            in ->
                register
                    .read(
                        bench,
                        view ->
                            WhereQuestion.of(view)
                                .codesIn(in, Set.of(Item.Kind.SOWING, Item.Kind.GROUP)))
                    .forEach(code -> meant.add(code.text())));
    if (meant.isEmpty()) {
      throw Trouble.usage(
          "CODE is missing", "Name what was counted, or where it stands: --in PLACE");
    }
    return meant;
  }

  /** One count for each code; nulls where this was not counted at all. */
  private static List<@Nullable Count> inOrder(
      String option, Optional<List<Count>> counts, List<String> codes) {
    List<@Nullable Count> ordered = new ArrayList<>();
    if (counts.isPresent() && counts.get().size() != codes.size()) {
      int given = counts.get().size();
      throw Trouble.usage(
          option
              + " has "
              + given
              + (given == 1 ? " number" : " numbers")
              + " for "
              + codes.size()
              + (codes.size() == 1 ? " code" : " codes"),
          "Write one number for each, in the order of the codes, as 12,9; ? where nobody counted.");
    }
    for (int i = 0; i < codes.size(); i++) {
      ordered.add(counts.isPresent() ? counts.get().get(i) : null);
    }
    return ordered;
  }
}
