package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.DayOption;
import dev.filial.cli.frame.LeftOut;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Holdings;
import dev.filial.core.answer.NextCode;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.PartialDate;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial split}. */
public final class SplitCommand implements BenchCommand {

  private final Supplier<String> lot;
  private final Supplier<Optional<Count>> count;
  private final Supplier<Optional<String>> place;
  private final Supplier<Optional<String>> code;
  private final DayOption day;
  private final OpenRegister register;

  /** Declares its words. */
  public SplitCommand(Words words) {
    lot =
        words.argument(
            "LOT", "The seed lot, as \"26-013 H1\"; the cross will do while it has only one.");
    count =
        words.optionalArgument(
            "COUNT", "How many seeds are put apart: 20, ~20, few, many or ?.", Reading.COUNT);
    place = words.option("--place", "TEXT", "Where the new packet is kept.");
    code = words.option("--code", "CODE", "Its lot, if the packet bears one already, as H3.");
    day = new DayOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe("Puts part of a seed lot in a packet of its own, to give away or to keep.")
        .example("filial split 26-012 20");
  }

  @Override
  public Answer run(Bench bench) {
    String meant = Choice.among(lot.get(), Holdings::lots, register, bench);
    Count seeds =
        LeftOut.orAsk(
            count.get(), "COUNT", "How many seeds are put apart?", null, Reading.COUNT, bench);
    PartialDate date = day.of(bench);
    return register.write(
        bench,
        writing -> {
          Code from = Holdings.in(writing.view()).lot(writing.find(meant)).code();
          Code packet =
              StatedCode.or(code.get(), NextCode.in(writing.view()).lot(from), Code::isLot);
          LotSplit split = new LotSplit(packet, from, date, seeds, place.get().orElse(null), null);
          return Recorded.of(
                  writing,
                  writing.append(split),
                  packet,
                  "sow it or give it away: filial sow \""
                      + packet.text()
                      + "\" COUNT, or filial give \""
                      + packet.text()
                      + "\"")
              .withTag(writing, packet);
        });
  }
}
