package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Namesakes;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Named;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial name}. */
public final class NameCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<List<String>> name;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public NameCommand(Words words) {
    plant = words.argument("PLANT", "Its code, or a name it has.");
    name = words.arguments("NAME", "The further name.", true, Reading.TEXT);
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Gives a plant a further name: its own, or its code in an old notebook. It can be named"
                + " by that from then on; its seedlings never inherit it.")
        .example("filial name 24-007-2 \"Grey Lady\"");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, this::record);
  }

  private Answer record(Writing writing) {
    Code code = writing.find(plant.get()).code();
    String further = RecordReadings.line(String.join(" ", name.get()));
    Namesakes.note(writing.view(), further, code).ifPresent(writing::note);
    Accepted accepted = writing.append(new Named(code, further, remark.get().orElse(null)));
    return Recorded.of(writing, accepted, code, "").withTag(writing, code);
  }
}
