package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Repetition;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Corrections;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial again}. */
public final class AgainCommand implements BenchCommand {

  private final Supplier<List<String>> words;
  private final OpenRegister register;

  /** Declares its words. */
  public AgainCommand(Words words) {
    this.words =
        words.arguments(
            "[ENTRY] PROPERTY=VALUE",
            "The number of the entry to repeat, otherwise the last one; then what is other this"
                + " time, as in filial amend: pollen=Lilo, flowers=2, date=\"4 mar\".",
            false,
            Reading.TEXT);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Makes an entry once more, of today unless a date is given. What it gives out gets new"
                + " codes; a plant's own names and pictures stay behind. A harvest of another cross"
                + " is written cross=CODE. The properties are those that filial history ENTRY shows.")
        .describe(
            "What is said once and for all cannot be repeated: genes, taxa, places, and what puts"
                + " other entries right.")
        .example("filial again")
        .example("filial again 181 text=\"three flower stalks\"");
  }

  /** What was typed, told apart. */
  private record Typed(Optional<Long> entry, List<PropertySetting> settings) {
    Optional<String> value(String name) {
      return settings.stream()
          .filter(setting -> setting.name().equals(name))
          .map(PropertySetting::value)
          .findFirst();
    }
  }

  @Override
  public Answer run(Bench bench) {
    Typed typed = typed(bench);
    return register.write(bench, writing -> record(typed, writing, bench));
  }

  private Typed typed(Bench bench) {
    List<String> texts = words.get();
    Optional<Long> entry = Optional.empty();
    List<PropertySetting> settings = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      try {
        if (i == 0 && !texts.get(i).contains("=")) {
          entry = Optional.of(EntryNumber.READING.read(texts.get(i), bench));
        } else {
          settings.add(PropertySetting.READING.read(texts.get(i), bench));
        }
      } catch (IllegalArgumentException e) {
        throw Trouble.usage(String.valueOf(e.getMessage()), "");
      }
    }
    return new Typed(entry, List.copyOf(settings));
  }

  private static Answer record(Typed typed, Writing writing, Bench bench) {
    Repetition repeated =
        typed
            .entry()
            .map(number -> Repetition.of(writing.view(), number))
            .orElseGet(() -> Repetition.ofLast(writing.view()));
    PartialDate date =
        typed
            .value("date")
            .filter(text -> !text.isBlank())
            .map(text -> bench.dates().partial(text))
            .orElseGet(() -> PartialDate.of(bench.day()));
    String source = repeated.source();
    Optional<Code> other =
        source == null
            ? Optional.empty()
            : typed.value(source).map(text -> writing.find(text).code());
    Corrections corrections =
        repeated
            .on(writing.view(), date, other)
            .withDates(text -> bench.dates().partial(text))
            .withCodes(text -> PropertySetting.code(text, writing));
    for (PropertySetting setting : typed.settings()) {
      boolean said = setting.name().equals("cross") && setting.name().equals(source);
      corrections = said ? corrections : corrections.set(setting.name(), setting.value());
    }
    Statement statement = corrections.statement();
    Accepted accepted = writing.append(statement);
    List<Code> given = GivenCodes.of(statement);
    String next = "once more: filial again; if that was a slip: filial undo";
    if (given.size() > 1) {
      return RecordedTags.of(writing, accepted, given, next);
    }
    Recorded recorded = Recorded.of(writing, accepted, given.isEmpty() ? null : given.get(0), next);
    return given.isEmpty() ? recorded : recorded.withTag(writing, given.get(0));
  }
}
