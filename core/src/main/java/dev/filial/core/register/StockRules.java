package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/** The rules of seed lots, sowings and pots: what can be taken from them, and when. */
final class StockRules {

  private final RegisterView book;
  private final List<String> warnings;

  StockRules(RegisterView book, List<String> warnings) {
    this.book = book;
    this.warnings = warnings;
  }

  /**
   * What seedlings can be taken from.
   *
   * @throws RegisterRefusal if it is not a pot, a sowing or a family
   */
  void requireStock(Code from) {
    Item item = References.thing(book, from);
    if (item.kind() != Item.Kind.GROUP
        && item.kind() != Item.Kind.SOWING
        && !item.kind().isFamily()) {
      throw new RegisterRefusal(
          "seedlings cannot be taken from "
              + from.text()
              + ", a "
              + item.kind().word()
              + "; name the pot, the sowing or the cross they stand under");
    }
  }

  /**
   * Whether something was done with {@code code} when it was there.
   *
   * @param event what its own day was the day of
   * @throws RegisterRefusal if it was done before
   */
  void requireNotBefore(@Nullable PartialDate date, Code code, String event) {
    Item item = References.thing(book, code);
    if (date != null && item.since() != null && date.isSurelyBefore(item.since())) {
      throw new RegisterRefusal(
          date
              + " is before "
              + event
              + " ("
              + code.text()
              + ", "
              + item.since()
              + "); mend the one date or the other");
    }
  }

  void checkSowing(Sown sown) {
    requireNotBefore(sown.date(), sown.lot(), "the seed was harvested or came");
    List<Code> filled = new ArrayList<>();
    filled.add(sown.sowing());
    sown.groups().forEach(group -> filled.add(group.group()));
    // After an amendment the seedlings may have been counted already.
    for (Code code : filled) {
      for (long entry : book.entriesOn(Subject.of(code))) {
        if (book.effective(entry).orElse(null) instanceof Counted counted) {
          counted.readings().stream()
              .filter(reading -> reading.code().equals(code))
              .forEach(reading -> warnIfMoreCameUp(reading, References.thing(book, code)));
        }
      }
    }
  }

  void checkReading(long number, Counted.Reading reading, @Nullable PartialDate date) {
    Item item = References.thing(book, reading.code());
    requireNotBefore(date, reading.code(), "it was sown or potted");
    warnIfMoreCameUp(reading, item);
    warnIfFewerCameUp(number, reading, date);
    warnIfMoreAlive(reading);
  }

  /** What had come up by one day had by every later one. */
  private void warnIfFewerCameUp(long number, Counted.Reading reading, @Nullable PartialDate date) {
    OptionalLong up = exactly(reading.germinated());
    if (up.isEmpty()) {
      return;
    }
    for (long entry : book.entriesOn(Subject.of(reading.code()))) {
      if (entry == number || !(book.effective(entry).orElse(null) instanceof Counted counted)) {
        continue;
      }
      boolean earlier =
          (date == null || counted.date() == null)
              ? entry < number
              : !date.isSurelyBefore(counted.date())
                  && (counted.date().isSurelyBefore(date) || entry < number);
      for (Counted.Reading other : counted.readings()) {
        OptionalLong then = exactly(other.germinated());
        if (!other.code().equals(reading.code()) || then.isEmpty()) {
          continue;
        }
        long before = earlier ? then.getAsLong() : up.getAsLong();
        long after = earlier ? up.getAsLong() : then.getAsLong();
        if (after < before) {
          warnings.add(
              "a count of all that came up cannot fall, and in "
                  + reading.code().text()
                  + " it was "
                  + then.getAsLong()
                  + (counted.date() == null ? "" : " " + counted.date().inWords())
                  + " (entry "
                  + entry
                  + ") and is "
                  + up.getAsLong()
                  + (date == null ? "" : " " + date.inWords())
                  + "; the higher one holds until the wrong one is amended");
          return;
        }
      }
    }
  }

  private static OptionalLong exactly(@Nullable Count count) {
    return count != null && count.isExact() ? count.size() : OptionalLong.empty();
  }

  /** As many can be alive as ever came up there, by the highest count of those. */
  private void warnIfMoreAlive(Counted.Reading reading) {
    Count alive = reading.alive();
    if (alive == null || !alive.isExact()) {
      return;
    }
    long cameUp = -1;
    for (long entry : book.entriesOn(Subject.of(reading.code()))) {
      if (book.effective(entry).orElse(null) instanceof Counted counted) {
        for (Counted.Reading other : counted.readings()) {
          Count up = other.germinated();
          if (other.code().equals(reading.code())
              && up != null
              && up.isExact()
              && up.size().isPresent()) {
            cameUp = Math.max(cameUp, up.size().getAsLong());
          }
        }
      }
    }
    if (cameUp >= 0 && alive.size().orElse(0) > cameUp) {
      warnings.add(
          "more are alive in "
              + reading.code().text()
              + " ("
              + alive
              + ") than came up ("
              + cameUp
              + "); see which count is wrong, or whether more came up since");
    }
  }

  private void warnIfMoreCameUp(Counted.Reading reading, Item item) {
    Count up = reading.germinated();
    Optional<Count> sown = References.seedsSown(book, reading.code(), item.entry());
    if (up != null
        && up.isExact()
        && sown.isPresent()
        && sown.get().size().isPresent()
        && up.size().orElseThrow() > sown.get().size().getAsLong()) {
      warnings.add(
          "more came up in "
              + reading.code().text()
              + " ("
              + up
              + ") than was sown ("
              + sown.get()
              + "): one of the two was a guess, or some seeds gave two");
    }
  }

  void checkNumbered(Numbered numbered) {
    requireStock(numbered.from());
    requireNotBefore(numbered.date(), numbered.from(), "that was begun");
    Item whole = References.thing(book, numbered.from().whole());
    if (!whole.kind().isFamily()) {
      throw new RegisterRefusal(
          whole.code().text()
              + " is a "
              + whole.kind().word()
              + ", and seedlings are numbered under a cross or a packet of seed");
    }
  }

  void checkFate(Code code, @Nullable PartialDate date) {
    Item item = References.thing(book, code);
    if (item.kind().isFamily()) {
      throw new RegisterRefusal(
          code.text()
              + " is a "
              + item.kind().word()
              + "; say what became of its seed ("
              + code.lot(1).text()
              + "), its pots or its seedlings");
    }
    if (item.kind() != Item.Kind.PLANT) {
      requireNotBefore(date, code, "it came about");
    }
  }

  /** What is said of a plant after it died or left is more often said of another. */
  void warnIfGone(Code code, @Nullable PartialDate day, String happened) {
    Item item = References.resolved(book, code);
    if (!item.fate().isHere()
        && item.until() != null
        && day != null
        && item.until().isSurelyBefore(day)) {
      warnings.add(
          References.described(book, code)
              + " "
              + item.fate().became()
              + " "
              + item.until().inWords()
              + ", before "
              + happened
              + " ("
              + day
              + "); see which date is wrong, or which plant was meant");
    }
  }

  void checkTally(long number, Tallied tallied) {
    Item item = References.thing(book, tallied.code());
    if (item.kind() != Item.Kind.GROUP && item.kind() != Item.Kind.SOWING) {
      throw new RegisterRefusal(
          tallied.code().text()
              + " is a "
              + item.kind().word()
              + "; a tally counts the seedlings of a sowing or a pot");
    }
    requireNotBefore(tallied.date(), tallied.code(), "it was sown or potted");
    warnIfMoreTallied(number, tallied, item);
  }

  /** Those that were numbered since belong to a tally too, and may have been counted in it. */
  private void warnIfMoreTallied(long number, Tallied tallied, Item item) {
    long tally = tallied.counts().values().stream().mapToLong(Long::longValue).sum();
    String where = "more of " + tallied.code().text() + " are tallied (" + tally + ") than ";
    OptionalLong sown =
        References.seedsSown(book, tallied.code(), item.entry())
            .map(StockRules::exactly)
            .orElse(OptionalLong.empty());
    if (sown.isPresent() && tally > sown.getAsLong()) {
      warnings.add(
          where
              + "were sown ("
              + sown.getAsLong()
              + "): one of the two is wrong, or some seeds gave two; amend the one that is wrong");
      return;
    }
    OptionalLong stood =
        book.itemBefore(tallied.code(), number)
            .map(before -> exactly(before.count()))
            .orElse(OptionalLong.empty());
    if (stood.isPresent() && tally > stood.getAsLong() + numberedFrom(tallied.code())) {
      warnings.add(
          where
              + "stood there by the last count ("
              + stood.getAsLong()
              + "); count it again, or amend the one that is wrong");
    }
  }

  private long numberedFrom(Code code) {
    long numbered = 0;
    for (long entry : book.entriesOn(Subject.of(code))) {
      if (book.effective(entry).orElse(null) instanceof Numbered from && from.from().equals(code)) {
        numbered += from.last() - (long) from.first() + 1;
      }
    }
    return numbered;
  }

  /**
   * Whether every lot, sowing and pot that the new entry {@code number} touches held what was taken
   * from it, by this entry or by one of a later day.
   *
   * @throws RegisterRefusal if one did not
   */
  void requireNothingOverdrawn(Statement statement, long number) {
    for (Code code : drawnOn(statement)) {
      Optional<Overdraft> overdraft = Derivation.overdraft(book, code);
      if (overdraft.isPresent()) {
        throw refusal(code, overdraft.get(), number);
      }
      warnIfBeyondGuess(code, number);
    }
  }

  /** A guess may be out, but seldom by more than half of what was there. */
  private void warnIfBeyondGuess(Code code, long number) {
    Count count = book.item(code).map(Item::count).orElse(null);
    if (count == null || count.isExact()) {
      return;
    }
    Derivation.beyondGuess(book, code)
        .filter(over -> over.entry() == number)
        .ifPresent(
            over ->
                warnings.add(
                    code.text()
                        + " was thought to hold "
                        + over.had()
                        + " when "
                        + over.taken()
                        + " left it; see whether the number is right, and count what is left"));
  }

  /**
   * Whether every lot, sowing and pot that entry {@code number} touches held what this entry took.
   *
   * @throws RegisterRefusal if one did not
   */
  void requireNotOverdrawing(Statement statement, long number) {
    for (Code code : drawnOn(statement)) {
      Optional<Overdraft> overdraft =
          Derivation.overdraft(book, code).filter(over -> over.entry() == number);
      if (overdraft.isPresent()) {
        throw refusal(code, overdraft.get(), number);
      }
    }
  }

  private static RegisterRefusal refusal(Code code, Overdraft over, long number) {
    boolean own = over.entry() == number;
    String which = own ? "" : " (entry " + over.entry() + ")";
    List<Long> against = own ? List.of() : List.of(over.entry());
    if (over.form() == Overdraft.Form.COUNTED) {
      return new RegisterRefusal(
          "of the "
              + over.had()
              + " counted to have come up in "
              + code.text()
              + which
              + ", "
              + over.taken()
              + " have already left; mend one of the numbers",
          against);
    }
    return new RegisterRefusal(
        code.text()
            + " held "
            + over.had()
            + " when "
            + over.taken()
            + " left it"
            + which
            + "; count it again first, or mend the number",
        against);
  }

  /** The lots, sowings and pots of a statement, in order of code. */
  private static List<Code> drawnOn(Statement statement) {
    if (statement instanceof Numbered numbered) {
      return List.of(numbered.from()); // the seedlings are single plants, and may be thousands
    }
    if (statement instanceof PlantAcquired) {
      return List.of(); // a plant alone, as most lines of a long table are
    }
    return statement.subjects().stream()
        .filter(subject -> subject.kind() == Subject.Kind.CODE)
        .map(subject -> Code.parse(subject.key()))
        .filter(code -> code.isLot() || code.isSowing() || code.isGroup())
        .sorted()
        .toList();
  }
}
