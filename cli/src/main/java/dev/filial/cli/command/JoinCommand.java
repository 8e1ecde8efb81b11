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
import dev.filial.core.answer.Finding;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Joined;
import dev.filial.core.register.JoinedFates;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial join}. */
public final class JoinCommand implements BenchCommand {

  /** Which of the two records. */
  enum Whose {
    KEEP,
    OTHER
  }

  private final Supplier<String> keep;
  private final Supplier<String> other;
  private final Supplier<Optional<Whose>> fate;
  private final WhyOption why;
  private final OpenRegister register;

  /** Declares its words. */
  public JoinCommand(Words words) {
    keep =
        words.argument("KEEP", "The record that holds: where the plant came from stays its own.");
    other = words.argument("OTHER", "The record that is read as the first from now on.");
    fate =
        words.option(
            "--fate",
            "RECORD",
            "Whose word holds on what became of the plant: keep's or other's; otherwise a plant that"
                + " is gone under one code is gone, and you are asked where the two contradict each"
                + " other.",
            Reading.oneOf(Whose.class));
    why = new WhyOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Joins two records that turned out to be one plant. Either code finds it, and what died or"
                + " left under one of them is gone under both.")
        .example("filial join 22-001 22-002 --why \"one rosette under two tags\"");
  }

  @Override
  public Answer run(Bench bench) {
    String reason = why.in(bench);
    Optional<Whose> holds = fate.get().or(() -> asked(bench));
    return register.write(bench, writing -> record(writing, reason, holds));
  }

  /** Asked before the register is opened for writing, so that nobody else waits for the answer. */
  private Optional<Whose> asked(Bench bench) {
    if (!bench.asker().canAsk()) {
      return Optional.empty();
    }
    JoinedFates fates =
        register.read(
            bench,
            view ->
                JoinedFates.of(
                    view,
                    Finding.in(view).one(keep.get()).code(),
                    Finding.in(view).one(other.get()).code()));
    if (!fates.isConflict()) {
      return Optional.empty();
    }
    return bench
        .asker()
        .ask(fates.words().orElseThrow() + ". Which holds, keep or other", null)
        .map(answer -> Reading.oneOf(Whose.class).read(answer.strip(), bench));
  }

  private Answer record(Writing writing, String reason, Optional<Whose> holds) {
    // Either is found as the record that it is read as by now.
    Code kept = writing.find(keep.get()).code();
    Code joined = writing.find(other.get()).code();
    JoinedFates fates = JoinedFates.of(writing.view(), kept, joined);
    Accepted accepted = writing.append(join(writing, fates, reason, holds));
    return Recorded.of(writing, accepted, kept, "").withTag(writing, kept);
  }

  private Joined join(Writing writing, JoinedFates fates, String reason, Optional<Whose> holds) {
    if (holds.isPresent()) {
      return fates.joined(reason, holds.get() == Whose.OTHER);
    }
    if (fates.isConflict()) {
      throw Trouble.refused(
          fates.words().orElseThrow(),
          "Say whose word holds on what became of the plant: --fate keep, or --fate other.");
    }
    fates.words().ifPresent(writing::note);
    return fates.joined(reason);
  }
}
