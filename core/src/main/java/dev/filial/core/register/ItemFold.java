package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The state of one coded thing while the statements about it are read in order. */
final class ItemFold {

  private final Code code;
  private final Item.Kind kind;
  private final long entry;
  private final @Nullable PartialDate since;
  private final List<Descent> descent;
  private final @Nullable String guess;
  private final List<String> names = new ArrayList<>();
  private Determination determination = Determination.UNKNOWN;
  private @Nullable String fieldNumber;
  private @Nullable String place;
  private boolean neverHeld;
  private boolean unprotected;
  private Fate fate = Fate.ALIVE;
  private @Nullable PartialDate until;
  private @Nullable Count count;
  private Count left = Count.of(0);
  private @Nullable Count germinated;
  private @Nullable Code sameAs;
  private @Nullable Overdraft overdraft;
  private @Nullable Overdraft beyondGuess;

  ItemFold(Code code, Item.Kind kind, long entry, Statement introduction, @Nullable String guess) {
    this.code = code;
    this.kind = kind;
    this.entry = entry;
    this.since = introduction.date();
    this.descent = code.isWhole() ? Descents.of(introduction) : List.of();
    this.guess = guess;
    introduce(introduction);
  }

  private void introduce(Statement statement) {
    if (statement instanceof PlantAcquired plant) {
      determination = plant.determination();
      fieldNumber = plant.provenance().fieldNumber();
      names.addAll(plant.names());
      place = plant.place();
      neverHeld = plant.neverHeld();
    } else if (statement instanceof SeedAcquired seed) {
      determination = seed.determination();
      fieldNumber = seed.provenance().fieldNumber();
      place = seed.place();
      count = code.isLot() ? seed.count() : null;
    } else if (statement instanceof Propagated ramet) {
      names.addAll(ramet.names());
      place = ramet.place();
    } else if (statement instanceof Pollinated cross) {
      unprotected = cross.isUnprotectedAndUnstated();
    } else if (statement instanceof TagLost found) {
      place = found.place();
    } else if (statement instanceof Parted parted) {
      determination = parted.determination();
    } else if (statement instanceof Harvested harvest) {
      count = harvest.seeds();
      place = harvest.place();
    } else if (statement instanceof LotSplit split) {
      count = split.count();
      place = split.place();
    } else if (statement instanceof LotsMerged merged) {
      place = merged.place();
      count =
          code.isLot()
              ? merged.parts().stream().map(LotsMerged.Part::taken).reduce(Count.of(0), Count::plus)
              : null;
    } else if (statement instanceof Sown sown) {
      place = sown.place();
      for (Sown.Filled filled : sown.groups()) {
        if (filled.group().equals(code)) {
          place = filled.place() == null ? sown.place() : filled.place();
          count = Count.unknown();
        }
      }
    } else if (statement instanceof Potted potted) {
      count = potted.count();
      place = potted.place();
    } else if (statement instanceof Numbered numbered) {
      place = numbered.place();
    }
  }

  /** Reads one statement about this thing. */
  void read(long number, Statement statement) {
    if (statement instanceof LotSplit split) {
      leave(number, split.count(), Fate.USED_UP, split.date());
    } else if (statement instanceof LotsMerged merged) {
      for (LotsMerged.Part part : merged.parts()) {
        if (part.lot().equals(code)) {
          leave(number, part.taken(), Fate.USED_UP, merged.date());
        }
      }
    } else if (statement instanceof Sown sown) {
      leave(number, sown.seeds(), Fate.USED_UP, sown.date());
    } else if (statement instanceof Potted potted) {
      leave(number, potted.count(), Fate.USED_UP, potted.date());
    } else if (statement instanceof Numbered numbered) {
      long seedlings = numbered.last() - (long) numbered.first() + 1;
      leave(number, Count.of(seedlings), Fate.USED_UP, numbered.date());
    } else if (statement instanceof Counted counted) {
      recount(number, counted);
    } else if (statement instanceof FateRecorded recorded) {
      meet(number, recorded);
    } else if (statement instanceof Moved moved) {
      place = moved.place();
    } else if (statement instanceof SeedKept kept) {
      keep(kept);
    } else if (statement instanceof Named named) {
      names.add(named.name());
    } else if (statement instanceof Joined joined && joined.other().equals(code)) {
      sameAs = joined.keep();
    } else if (statement instanceof Joined joined && joined.fate() != null) {
      // What was found out when the records were joined, whatever either said before.
      fate = joined.fate();
      until = joined.until();
    }
  }

  private void leave(long number, Count taken, Fate asLast, @Nullable PartialDate date) {
    left = left.plus(taken);
    if (count == null) {
      return; // a family or a sowing that nobody counted has nothing to run out of
    }
    boolean counted = count.isExact() && taken.isExact();
    if (overdraft == null && isMore(taken, count)) {
      overdraft = new Overdraft(number, Overdraft.Form.TAKEN, count, taken);
    }
    if (isBeyondGuess(taken, count)) {
      beyondGuess = new Overdraft(number, Overdraft.Form.TAKEN, count, taken);
    }
    count = count.less(taken);
    if (counted && count.equals(Count.of(0))) {
      fate = asLast;
      until = date;
    }
  }

  private static boolean isMore(Count one, Count other) {
    return one.isExact()
        && other.isExact()
        && one.size().orElseThrow() > other.size().orElseThrow();
  }

  private static boolean isBeyondGuess(Count taken, Count guessed) {
    return taken.isExact()
        && !guessed.isExact()
        && guessed.size().isPresent()
        && taken.size().orElseThrow() > 2 * guessed.size().getAsLong();
  }

  private void recount(long number, Counted counted) {
    for (Counted.Reading reading : counted.readings()) {
      if (!reading.code().equals(code)) {
        continue;
      }
      if (reading.germinated() != null) {
        if (overdraft == null && isMore(left, reading.germinated())) {
          overdraft = new Overdraft(number, Overdraft.Form.COUNTED, reading.germinated(), left);
        }
        // As many as ever had come up have come up: a lower count cannot take that back.
        if (germinated == null || !isMore(germinated, reading.germinated())) {
          // Seedlings come up over weeks: what stands there is what came up less what left.
          count = reading.germinated().less(left);
          germinated = reading.germinated();
        }
      }
      if (reading.alive() != null) {
        count = reading.alive();
        if (germinated != null) {
          // The missing ones are gone, noticed or not, and will not stand up with the late ones.
          left = germinated.less(count);
        }
      }
      if (count != null && count.size().orElse(1) > 0 && !fate.isHere()) {
        fate = Fate.ALIVE;
        until = null;
      }
    }
  }

  private void keep(SeedKept kept) {
    place = kept.place() == null ? place : kept.place();
    Count now = kept.seeds();
    // A weight works out to a guess, which does not take the place of what was counted.
    if (now == null || (count != null && count.isExact() && !now.isExact())) {
      return;
    }
    count = now;
    if (now.equals(Count.of(0))) {
      fate = Fate.USED_UP;
      until = kept.date();
    } else if (!fate.isHere()) {
      fate = Fate.ALIVE;
      until = null;
    }
  }

  private void meet(long number, FateRecorded recorded) {
    if (recorded.count() != null) {
      leave(number, recorded.count(), recorded.fate(), recorded.date());
      return;
    }
    // Recorded a second time, it is still the first day that counts.
    boolean again = fate == recorded.fate() && until != null;
    fate = recorded.fate();
    until = fate.isHere() ? null : again ? until : recorded.date();
    if (!fate.isHere() && count != null) {
      count = Count.of(0);
    }
  }

  Item item() {
    return new Item(
        code,
        kind,
        entry,
        false,
        since,
        until,
        fate,
        count,
        determination,
        fieldNumber,
        names,
        place,
        descent,
        sameAs,
        neverHeld,
        unprotected,
        guess);
  }

  /** The last statement that took more than twice what was guessed to be there. */
  Optional<Overdraft> beyondGuess() {
    return Optional.ofNullable(beyondGuess);
  }

  Optional<Overdraft> overdraft() {
    return Optional.ofNullable(overdraft);
  }
}
