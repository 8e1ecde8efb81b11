package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.FitAnswer;
import dev.filial.core.answer.FitQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterView;
import dev.filial.core.trial.Fit;
import dev.filial.core.trial.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial fit}. */
public final class FitCommand implements BenchCommand {

  private static final Reading<Ratio> RATIO = (text, bench) -> Ratio.parse(text);

  /** Counts of one family, typed in. */
  private record Typed(Map<String, Long> counts) {
    static final Reading<Typed> READING =
        (text, bench) -> {
          Map<String, Long> counts = new LinkedHashMap<>();
          for (String one : text.split(",", -1)) {
            int equals = one.lastIndexOf('=');
            String number = one.substring(equals + 1).strip();
            if (equals < 1 || !number.matches("\\d{1,9}")) {
              throw new IllegalArgumentException(
                  "\""
                      + one
                      + "\" is not a state and how many showed it, 0 or more; write red=31,green=9");
            }
            if (counts.put(one.substring(0, equals).strip(), Long.parseLong(number)) != null) {
              throw new IllegalArgumentException(
                  "\"" + text + "\" counts one state twice; count it once");
            }
          }
          return new Typed(counts);
        };
  }

  private final Supplier<List<String>> families;
  private final Supplier<Optional<String>> trait;
  private final Supplier<List<Typed>> typed;
  private final Supplier<Optional<Ratio>> ratio;
  private final Supplier<List<Ratio>> against;
  private final Supplier<Optional<Fit.Method>> by;
  private final BooleanSupplier method;
  private final OpenRegister register;

  /** Declares its words. */
  public FitCommand(Words words) {
    families =
        words.arguments(
            "FAMILY",
            "A cross, a sowing or a pot whose seedlings were tallied; several to test them together.",
            false,
            Reading.THING);
    trait = words.option("--trait", "TRAIT", "The trait that was tallied.", RecordReadings.LINE);
    typed =
        words.repeatedOption(
            "--counts",
            "COUNTS",
            "Counts typed in instead of a family, as red=31,green=9; once for each family.",
            Typed.READING);
    ratio =
        words.option(
            "--ratio",
            "RATIO",
            "What is expected, as 3:1, in the order of the states; otherwise what the parents' genes"
                + " lead to expect.",
            RATIO);
    against =
        words.repeatedOption(
            "--or-ratio", "RATIO", "Another ratio it may be; says which fits best.", RATIO);
    by =
        words.option(
            "--test",
            "TEST",
            "chi-square, g or exact; otherwise what suits the counts.",
            Reading.oneOf(Fit.Method.class));
    method = words.flag("--method", "Say how it was tested.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says whether what came up fits what was expected. Chance alone makes small families"
                + " uneven; the answer says how often.")
        .example("filial fit 26-013 --trait tips")
        .example("filial fit --counts red=31,green=9 --ratio 3:1 --or-ratio 9:7");
  }

  @Override
  public Answer run(Bench bench) {
    if (!typed.get().isEmpty()) {
      if (!families.get().isEmpty()) {
        throw Trouble.usage(
            "either families of the register are tested or counts typed in",
            "Leave out --counts, or the codes.");
      }
      if (ratio.get().isEmpty()) {
        throw Trouble.usage("what is expected?", "Add --ratio 3:1.");
      }
      return new FitTold(ofTyped(), method.getAsBoolean());
    }
    if (families.get().isEmpty()) {
      throw Trouble.usage(
          "which family?",
          "Name a cross, a sowing or a pot, or type the counts: --counts red=31,green=9.");
    }
    String asked =
        trait
            .get()
            .orElseThrow(
                () -> Trouble.usage("which trait?", "Add --trait with the trait tallied."));
    return register.read(bench, view -> ofRegister(view, asked));
  }

  private Answer ofRegister(RegisterView view, String asked) {
    List<Code> codes = new ArrayList<>();
    families.get().forEach(text -> codes.add(Finding.in(view).one(text).code()));
    return new FitTold(question().ask(view, asked, codes), method.getAsBoolean());
  }

  private FitQuestion question() {
    FitQuestion question =
        ratio
            .get()
            .map(FitQuestion::against)
            .orElseGet(FitQuestion::byGenes)
            .comparedWith(against.get());
    return by.get().isPresent() ? question.withMethod(by.get().get()) : question;
  }

  private FitAnswer ofTyped() {
    List<String> states = List.copyOf(typed.get().get(0).counts().keySet());
    List<long[]> counts = new ArrayList<>();
    for (Typed family : typed.get()) {
      if (!states.containsAll(family.counts().keySet())) {
        throw Trouble.usage(
            "the families are not of the same states",
            "Give each family the states of the first: " + String.join(", ", states) + ".");
      }
      counts.add(
          states.stream().mapToLong(state -> family.counts().getOrDefault(state, 0L)).toArray());
    }
    return question().ask(states, counts);
  }
}
