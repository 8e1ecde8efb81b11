package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.TraitDeclared;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial trait}. */
public final class TraitCommand implements BenchCommand {

  private final Supplier<String> name;
  private final Supplier<Optional<String>> states;
  private final Supplier<Optional<BigDecimal>> least;
  private final Supplier<Optional<BigDecimal>> most;
  private final Supplier<Optional<String>> unit;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public TraitCommand(Words words) {
    name =
        words.argument("NAME", "What it is called, as \"leaf edge\" or tips.", RecordReadings.LINE);
    states =
        words.option(
            "--states",
            "A,B,...",
            "What it can be, with commas between: red,green.",
            RecordReadings.LINE);
    least = words.option("--least", "NUMBER", "The least score or size.", RecordReadings.NUMBER);
    most = words.option("--most", "NUMBER", "The greatest score or size.", RecordReadings.NUMBER);
    unit = words.option("--unit", "UNIT", "What it is measured in, as mm.", RecordReadings.LINE);
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Declares a trait that plants are looked at for. It has states, or it is scored from"
                + " --least to --most, or it is measured in a --unit.")
        .example("filial trait \"leaf edge\" --states red,green");
  }

  @Override
  public Answer run(Bench bench) {
    boolean measured = least.get().isPresent() || most.get().isPresent() || unit.get().isPresent();
    if (states.get().isPresent() == measured) {
      throw Trouble.usage(
          measured
              ? "a trait has states, or it is scored or measured, not both"
              : "what can " + name.get() + " be?",
          "Give --states A,B, or --least and --most for a score, or --unit for a size.");
    }
    return register.write(bench, this::record);
  }

  private Answer record(Writing writing) {
    List<String> possible =
        states.get().stream()
            .flatMap(text -> Arrays.stream(text.split(",", -1)))
            .map(RecordReadings::line)
            .toList();
    Accepted accepted =
        writing.append(
            new TraitDeclared(
                name.get(),
                possible,
                least.get().orElse(null),
                most.get().orElse(null),
                unit.get().orElse(null),
                remark.get().orElse(null)));
    return Recorded.of(
        writing,
        accepted,
        null,
        "look at a plant: filial observe PLANT "
            + CommandLine.quoted(name.get())
            + " "
            + (possible.isEmpty() ? "NUMBER" : CommandLine.quoted(possible.get(0))));
  }
}
