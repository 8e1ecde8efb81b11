package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Corrections;
import dev.filial.core.register.Counted;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.Moved;
import dev.filial.core.register.Noted;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Observed;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.PollenKept;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Potted;
import dev.filial.core.register.Promised;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.SeedKept;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.TagLost;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.Tended;
import dev.filial.core.register.Treated;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An entry to be made once more: the same cross of another day, the next packet, the same count.
 *
 * <p>What it gives out gets new codes, its day is another, and what belonged to the one thing alone
 * stays behind: a plant's own names, a picture. What is said once and for all (a gene, a taxon, a
 * place, that two records are one plant) cannot be said again.
 *
 * @param entry the entry that is repeated
 * @param statement what it says now
 */
public record Repetition(long entry, Statement statement) {

  /**
   * Of entry {@code entry}.
   *
   * @throws RegisterRefusal if there is none in force, or it cannot be repeated
   */
  public static Repetition of(RegisterView view, long entry) {
    Statement said =
        view.effective(entry)
            .orElseThrow(
                () ->
                    new RegisterRefusal(
                        view.entry(entry).isPresent()
                            ? "entry " + entry + " was struck; repeat another"
                            : "there is no entry " + entry + "; the last one is " + view.size()));
    if (!happensAgain(said)) {
      throw new RegisterRefusal(
          "entry "
              + entry
              + " says something once and for all ("
              + Telling.of(said)
              + "); it cannot be repeated");
    }
    return new Repetition(entry, said);
  }

  /**
   * Of the last entry in force, those that only put others right left out.
   *
   * @throws RegisterRefusal if there is none, or it cannot be repeated
   */
  public static Repetition ofLast(RegisterView view) {
    for (long number = view.size(); number > 1; number--) {
      Optional<Statement> said = view.effective(number);
      if (said.isPresent() && !(said.get() instanceof Amended)) {
        return of(view, number);
      }
    }
    throw new RegisterRefusal("there is no entry yet that could be repeated");
  }

  private static boolean happensAgain(Statement said) {
    return said instanceof PlantAcquired
        || said instanceof SeedAcquired
        || said instanceof Pollinated
        || said instanceof FruitRecorded
        || said instanceof Harvested
        || said instanceof LotSplit
        || said instanceof LotsMerged
        || said instanceof Sown
        || said instanceof Counted
        || said instanceof Potted
        || said instanceof Numbered
        || said instanceof Tallied
        || said instanceof Observed
        || said instanceof Propagated
        || said instanceof TagLost
        || said instanceof FateRecorded
        || said instanceof Moved
        || said instanceof Noted
        || said instanceof GenotypeStated
        || happensInTheDiary(said);
  }

  private static boolean happensInTheDiary(Statement said) {
    return said instanceof Flowered
        || said instanceof PollenKept
        || said instanceof SeedKept
        || said instanceof Promised
        || said instanceof Treated
        || said instanceof Tended;
  }

  /**
   * The name of the property by which what is repeated names what it is taken from, so that another
   * source gives codes of its own: of a harvest the cross, of a sowing the lot; null for others.
   */
  public @Nullable String source() {
    if (statement instanceof Harvested) {
      return "cross";
    }
    if (statement instanceof Sown) {
      return "lot";
    }
    return statement instanceof LotSplit
            || statement instanceof Potted
            || statement instanceof Numbered
        ? "from"
        : null;
  }

  /**
   * The entry as it would be made again, to be changed further.
   *
   * @param date the day it speaks of
   * @param other what it is taken from instead, if from something else
   */
  public Corrections on(RegisterView view, PartialDate date, Optional<Code> other) {
    NextCode next = NextCode.in(view);
    Corrections again = Corrections.of(statement).set("date", date.toString());
    if (statement instanceof PlantAcquired || statement instanceof Propagated) {
      again = again.set("names", "");
    }
    if (statement instanceof Observed) {
      again = again.set("photograph", "");
    }
    if (statement instanceof PlantAcquired
        || statement instanceof SeedAcquired
        || statement instanceof Pollinated
        || statement instanceof LotsMerged
        || statement instanceof Propagated
        || statement instanceof TagLost) {
      return again.set("code", next.ofYear(date.year()).text());
    }
    if (statement instanceof Harvested harvest) {
      return again.set("lot", next.lot(other.orElse(harvest.lot())).text());
    }
    if (statement instanceof LotSplit split) {
      return again.set("lot", next.lot(other.orElse(split.from())).text());
    }
    if (statement instanceof Potted potted) {
      return again.set("group", next.group(other.orElse(potted.from())).text());
    }
    if (statement instanceof Numbered numbered) {
      int first = next.seedling(other.orElse(numbered.from())).part().number();
      int last = first + numbered.last() - numbered.first();
      return again.set("first", Integer.toString(first)).set("last", Integer.toString(last));
    }
    return statement instanceof Sown sown
        ? sown(again, sown, next, other.orElse(sown.lot()).whole())
        : again;
  }

  private static Corrections sown(Corrections again, Sown sown, NextCode next, Code whole) {
    Corrections renumbered = again.set("sowing", next.sowing(whole).text());
    int pot = next.group(whole).part().number();
    for (int i = 1; i <= sown.groups().size(); i++) {
      renumbered = renumbered.set("groups." + i + ".group", whole.group(pot++).text());
    }
    return renumbered;
  }
}
