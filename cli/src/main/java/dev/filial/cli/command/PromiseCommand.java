package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Holdings;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Count;
import dev.filial.core.register.Item;
import dev.filial.core.register.Promised;
import dev.filial.core.register.Promises;
import dev.filial.core.register.Statement;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial promise}. */
public final class PromiseCommand implements BenchCommand {

  private final Supplier<List<String>> what;
  private final Supplier<String> to;
  private final Supplier<Optional<Count>> count;
  private final BooleanSupplier off;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public PromiseCommand(Words words) {
    what =
        words.arguments(
            "WHAT",
            "Seed lots, pots or plants; of seed the cross or packet will do while it has one lot.",
            true,
            Reading.THING);
    to = words.requiredOption("--to", "NAME", "To whom.", RecordReadings.LINE);
    count =
        words.option(
            "--count",
            "COUNT",
            "How many of each pot or seed lot; otherwise all of it.",
            Reading.COUNT);
    off = words.flag("--off", "It is off: take back what was promised.");
    date = new DateOption(words, "it was promised");
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records what is promised to whom. A promise is kept when as many are given to the same"
                + " person: filial give WHAT --to NAME.")
        .example("filial promise 26-012 --count 20 --to \"Lena Muster\"")
        .example("filial promise \"26-006 H1\" --to \"Jonas Muster\" --off");
  }

  @Override
  public Answer run(Bench bench) {
    if (off.getAsBoolean() && count.get().isPresent()) {
      throw Trouble.usage(
          "--off takes back the whole promise",
          "Leave --count out, and promise again what still holds.");
    }
    return register.write(
        bench,
        writing -> {
          List<Code> codes =
              what.get().stream().map(named -> meant(writing, named)).distinct().toList();
          return off.getAsBoolean() ? takeBack(writing, codes) : record(writing, codes, bench);
        });
  }

  /** A lot, pot or plant; for a cross or packet its only lot. */
  private static Code meant(Writing writing, String named) {
    Item item = writing.find(named);
    return item.kind().isFamily() ? Holdings.in(writing.view()).lot(item).code() : item.code();
  }

  private Answer record(Writing writing, List<Code> codes, Bench bench) {
    Accepted accepted =
        writing.append(
            new Promised(
                codes,
                count.get().orElse(null),
                to.get(),
                date.orToday(bench),
                remark.get().orElse(null)));
    return Recorded.of(
        writing,
        accepted,
        Several.only(codes),
        "when it leaves: filial give "
            + CommandLine.quoted(codes.get(0).text())
            + count.get().map(number -> " --count " + number).orElse("")
            + " --to "
            + CommandLine.quoted(to.get()));
  }

  private Answer takeBack(Writing writing, List<Code> codes) {
    Set<Long> entries = new TreeSet<>();
    for (Code code : codes) {
      List<Promises.Open> open =
          Promises.of(writing.view(), code).stream()
              .filter(promise -> promise.to().equalsIgnoreCase(to.get()))
              .toList();
      if (open.isEmpty()) {
        throw Trouble.refused(
            "nothing of " + code.text() + " is promised to " + to.get(),
            "What is promised to whom is shown by: filial tin");
      }
      open.forEach(promise -> entries.add(promise.entry()));
    }
    Accepted last = null;
    for (long entry : entries) {
      Promised promised = (Promised) writing.view().effective(entry).orElseThrow();
      List<Code> still = promised.codes().stream().filter(code -> !codes.contains(code)).toList();
      Statement holds =
          still.isEmpty()
              ? null
              : new Promised(
                  still, promised.count(), promised.to(), promised.date(), promised.remark());
      last =
          writing.append(
              new Amended(entry, holds, remark.get().orElse("the promise was taken back")));
    }
    return Recorded.of(
        writing, Objects.requireNonNull(last), Several.only(codes), "what is free now: filial tin");
  }
}
