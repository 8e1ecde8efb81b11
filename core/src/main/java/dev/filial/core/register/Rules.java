package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The rules of the book: what an entry may not say given the others, and what is merely unlikely.
 *
 * <p>Each is a law about the register with the entry in it, not about the order of typing: the same
 * check serves a new entry and every entry that hangs on an amended one.
 */
final class Rules {

  private final RegisterView book;
  private final List<String> warnings;

  /**
   * Rules over a register that already holds the entry.
   *
   * @param warnings receives a sentence for each thing that is unlikely but taken
   */
  Rules(RegisterView book, List<String> warnings) {
    this.book = book;
    this.warnings = warnings;
  }

  /**
   * Checks one entry.
   *
   * @throws RegisterRefusal if it cannot stand
   */
  void check(long number, Statement statement) {
    for (Code code : Introduction.codes(statement)) {
      requireFree(code, number);
    }
    if (statement instanceof Pollinated cross) {
      new CrossRules(book, warnings).check(cross);
    } else if (statement instanceof FruitRecorded fruit) {
      requireKind(fruit.cross(), Item.Kind.CROSS);
      requireNotBefore(fruit.date(), fruit.cross(), "the cross was made");
      new FruitRules(book, warnings).check(fruit);
    } else if (statement instanceof Harvested harvest) {
      requireKind(harvest.lot().whole(), Item.Kind.CROSS);
      requireNotBefore(harvest.date(), harvest.lot().whole(), "the cross was made");
    } else if (statement instanceof LotSplit split) {
      requireKind(split.from(), Item.Kind.LOT);
    } else if (statement instanceof LotsMerged merged) {
      merged.parts().forEach(part -> requireKind(part.lot(), Item.Kind.LOT));
      requireNoLoop(merged.code());
    } else if (statement instanceof Sown sown) {
      checkSowing(sown);
    } else if (statement instanceof Counted counted) {
      counted.readings().forEach(reading -> checkReading(reading, counted.date()));
    } else if (statement instanceof Potted potted) {
      requireStock(potted.from());
      requireNotBefore(potted.date(), potted.from(), "that was begun");
    } else if (statement instanceof Numbered numbered) {
      checkNumbered(numbered);
    } else if (statement instanceof Propagated ramet) {
      requirePlant(ramet.of());
      ramet.sportFor().forEach(this::requireTrait);
      requireNoLoop(ramet.code());
    } else if (statement instanceof TagLost found) {
      found.candidates().forEach(candidate -> requireParent(candidate.plant()));
      requireNoLoop(found.code());
    } else if (statement instanceof FateRecorded fate) {
      fate.codes().forEach(code -> checkFate(code, fate));
    } else if (statement instanceof Moved moved) {
      moved.codes().forEach(this::requireThing);
    } else if (statement instanceof Named named) {
      requireThing(named.code());
    } else if (statement instanceof Noted noted) {
      requireThing(noted.code());
    } else if (statement instanceof Joined joined) {
      checkJoined(joined);
    } else if (statement instanceof Parted parted) {
      requirePlant(parted.code());
    } else if (statement instanceof Doubted doubted) {
      requireEntry(doubted.entry(), number);
    } else if (statement instanceof TaxonDeclared taxon) {
      checkTaxon(taxon);
    } else if (statement instanceof TaxonRenamed renamed) {
      requireNoNameLoop(renamed.from());
      requireNoNameLoop(renamed.to());
    } else if (statement instanceof TraitDeclared trait) {
      checkTraitDeclared(number, trait);
    } else if (statement instanceof Observed observed) {
      requireThing(observed.code());
      TraitValues.check(requireTrait(observed.trait()), observed.value());
    } else if (statement instanceof Tallied tallied) {
      checkTally(tallied);
    }
    requireNothingOverdrawn(statement);
  }

  /** Whether an amendment names an entry that can be amended. */
  static void checkAmendable(RegisterView book, Amended amended) {
    long target = amended.entry();
    Optional<Entry> entry = book.entry(target);
    if (entry.isEmpty()) {
      throw new RegisterRefusal("there is no entry " + target + "; the last one is " + book.size());
    }
    boolean strikes = amended.replacement() == null;
    if (target == 1 && !(amended.replacement() instanceof RegisterOpened)) {
      throw new RegisterRefusal(
          "entry 1 says whose register this is: it can be replaced by another such entry, not"
              + " struck");
    }
    if (target != 1 && amended.replacement() instanceof RegisterOpened) {
      throw new RegisterRefusal("only entry 1 says whose register this is");
    }
    if (strikes && book.effective(target).isEmpty()) {
      throw new RegisterRefusal("entry " + target + " has been struck already");
    }
    if (!strikes && entry.get().statement() instanceof Amended) {
      throw new RegisterRefusal(
          "entry " + target + " is itself an amendment; amend the entry it names, or strike it");
    }
  }

  /** Whether the codes that entry {@code number} gives out were never those of a struck entry. */
  static void checkUnused(RegisterView before, long number, Statement statement) {
    for (Code code : Introduction.codes(statement)) {
      Optional<Item> item = before.taken(code);
      if (item.isPresent() && item.get().struck() && item.get().entry() != number) {
        throw taken(before, item.get());
      }
    }
  }

  /** Whether the entries of a parting speak of its plant. */
  static void checkPartable(RegisterView book, Parted parted) {
    for (long entry : parted.entries()) {
      Statement statement =
          book.effective(entry)
              .orElseThrow(
                  () ->
                      new RegisterRefusal(
                          "there is no entry "
                              + entry
                              + " in force to part from "
                              + parted.code().text()));
      Subject subject = Subject.of(parted.code());
      if (!statement.subjects().contains(subject) && !statement.mentions().contains(subject)) {
        throw new RegisterRefusal(
            "entry "
                + entry
                + " does not speak of "
                + parted.code().text()
                + "; leave it out of the parting");
      }
      if (Introduction.codes(statement).contains(parted.code())) {
        throw new RegisterRefusal(
            "entry "
                + entry
                + " is where "
                + parted.code().text()
                + " was first recorded; it stays with that code");
      }
    }
  }

  private void requireFree(Code code, long number) {
    Optional<Item> item = book.taken(code);
    if (item.isPresent() && item.get().entry() != number) {
      throw taken(book, item.get());
    }
  }

  private static RegisterRefusal taken(RegisterView book, Item item) {
    return new RegisterRefusal(
        item.code().text()
            + " is taken already (entry "
            + item.entry()
            + (item.struck() ? ", struck; a code is never used again" : "")
            + "); take the next number, "
            + nextFree(book, item).text());
  }

  private static Code nextFree(RegisterView book, Item item) {
    Code code = item.code();
    int next = (int) Math.min(Integer.MAX_VALUE, book.lastSuffix(code.whole(), item.kind()) + 1);
    if (code.isWhole()) {
      return Code.of(code.year(), book.lastNumber(code.year()) + 1);
    }
    if (code.isSeedling()) {
      return code.whole().seedling(next);
    }
    if (code.isGroup()) {
      return code.whole().group(next);
    }
    return code.isLot() ? code.whole().lot(next) : code.whole().sowing(next);
  }

  private Item requireThing(Code code) {
    return References.thing(book, code);
  }

  private Item requirePlant(Code code) {
    return References.plant(book, code);
  }

  private Item requireParent(Code code) {
    return References.parent(book, code);
  }

  private Item requireKind(Code code, Item.Kind kind) {
    Item item = requireThing(code);
    if (item.kind() != kind) {
      throw new RegisterRefusal(
          code.text() + " is a " + item.kind().word() + ", not a " + kind.word());
    }
    return item;
  }

  private Item requireStock(Code from) {
    Item item = requireThing(from);
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
    return item;
  }

  private void requireNotBefore(@Nullable PartialDate date, Code code, String event) {
    Item item = requireThing(code);
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

  private void checkSowing(Sown sown) {
    requireKind(sown.lot(), Item.Kind.LOT);
    requireNotBefore(sown.date(), sown.lot(), "the seed was harvested or came");
  }

  private void checkReading(Counted.Reading reading, @Nullable PartialDate date) {
    Item item = requireThing(reading.code());
    requireNotBefore(date, reading.code(), "it was sown or potted");
    Count up = reading.germinated();
    if (up == null || !up.isExact()) {
      return;
    }
    Optional<Count> sown = References.seedsSown(book, reading.code(), item.entry());
    if (sown.isPresent()
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

  private void checkNumbered(Numbered numbered) {
    requireStock(numbered.from());
    requireNotBefore(numbered.date(), numbered.from(), "that was begun");
    Item whole = requireThing(numbered.from().whole());
    if (!whole.kind().isFamily()) {
      throw new RegisterRefusal(
          whole.code().text()
              + " is a "
              + whole.kind().word()
              + ", and seedlings are numbered under a cross or a packet of seed");
    }
    if (numbered.pickedFor() != null) {
      requireTrait(numbered.pickedFor());
    }
  }

  private void checkFate(Code code, FateRecorded fate) {
    Item item = requireThing(code);
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
      requireNotBefore(fate.date(), code, "it came about");
    }
  }

  private void checkJoined(Joined joined) {
    Item keep = requirePlant(joined.keep());
    Item other = requirePlant(joined.other());
    requireNoLoop(joined.keep());
    List<Code> roots = new ArrayList<>();
    other.descent().forEach(descent -> addParents(roots, descent));
    if (!other.code().isWhole()) {
      roots.add(other.code().whole());
    }
    if (book.lineage(roots).containsKey(keep.code())) {
      throw new RegisterRefusal(
          keep.code().text()
              + " is an ancestor of "
              + other.code().text()
              + ", so they cannot be one plant; see who the parents were");
    }
  }

  private static void addParents(List<Code> roots, Descent descent) {
    roots.add(descent.seed());
    if (descent.pollen() != null) {
      roots.add(descent.pollen());
    }
  }

  /** Whether {@code code} comes of itself, by the records as they would be. */
  private void requireNoLoop(Code code) {
    CrossRules.requireNoLoop(book, code);
  }

  private void requireEntry(long entry, long before) {
    if (entry >= before || book.effective(entry).isEmpty()) {
      throw new RegisterRefusal(
          "there is no entry " + entry + " in force to be marked a guess; see the history");
    }
  }

  private void checkTaxon(TaxonDeclared taxon) {
    requireNoNameLoop(taxon.name());
    taxon.synonyms().forEach(this::requireNoNameLoop);
    long declarations =
        book.entriesOn(Subject.taxon(taxon.name())).stream()
            .map(entry -> book.effective(entry).orElseThrow())
            .filter(
                statement ->
                    statement instanceof TaxonDeclared other
                        && Subject.taxon(other.name()).equals(Subject.taxon(taxon.name())))
            .count();
    if (declarations > 1) {
      throw new RegisterRefusal(
          taxon.name() + " has been declared already; amend that entry instead");
    }
    Set<String> within = new HashSet<>();
    for (String next = taxon.name(); next != null; ) {
      Taxon known = book.accepted(next);
      if (!within.add(known.key())) {
        throw new RegisterRefusal(
            taxon.name()
                + " would count into itself through "
                + known.name()
                + "; mend the taxon it counts into");
      }
      next = known.declared() == null ? null : known.declared().within();
    }
  }

  private void requireNoNameLoop(String name) {
    Set<String> seen = new HashSet<>();
    String key = Subject.taxon(name).key();
    while (seen.add(key)) {
      Optional<Taxon> taxon = book.taxon(key);
      if (taxon.isEmpty() || taxon.get().acceptedAs() == null) {
        return;
      }
      key = Subject.taxon(taxon.get().acceptedAs()).key();
    }
    throw new RegisterRefusal(
        name
            + " would be read as itself in a circle; strike the entry that read it as "
            + book.taxon(Subject.taxon(name).key()).map(Taxon::acceptedAs).orElse(name));
  }

  private TraitDeclared requireTrait(String name) {
    return book.trait(Subject.trait(name).key())
        .orElseThrow(
            () ->
                new RegisterRefusal(
                    "no trait is called \""
                        + name
                        + "\""
                        + (book.traits().isEmpty()
                            ? "; declare it first"
                            : "; the traits are "
                                + String.join(
                                    ", ", book.traits().stream().map(TraitDeclared::trait).toList())
                                + ", or declare it first")));
  }

  private void checkTraitDeclared(long number, TraitDeclared trait) {
    for (long entry : book.entriesOn(Subject.trait(trait.trait()))) {
      if (entry != number && book.effective(entry).orElseThrow() instanceof TraitDeclared) {
        throw new RegisterRefusal(
            "the trait "
                + trait.trait()
                + " was declared in entry "
                + entry
                + "; amend that entry");
      }
    }
  }

  private void checkTally(Tallied tallied) {
    Item item = requireThing(tallied.code());
    if (item.kind() != Item.Kind.GROUP && item.kind() != Item.Kind.SOWING) {
      throw new RegisterRefusal(
          tallied.code().text()
              + " is a "
              + item.kind().word()
              + "; a tally counts the seedlings of a sowing or a pot");
    }
    TraitDeclared trait = requireTrait(tallied.trait());
    tallied.counts().keySet().forEach(state -> TraitValues.requireState(trait, state));
  }

  private void requireNothingOverdrawn(Statement statement) {
    for (Subject subject : statement.subjects()) {
      if (subject.kind() != Subject.Kind.CODE) {
        continue;
      }
      Code code = Code.parse(subject.key());
      Optional<Overdraft> overdraft = Derivation.overdraft(book, code);
      if (overdraft.isPresent()) {
        Overdraft over = overdraft.get();
        throw new RegisterRefusal(
            code.text()
                + " held "
                + over.had()
                + " when "
                + over.taken()
                + " left it (entry "
                + over.entry()
                + "); count it again first, or mend the number");
      }
    }
  }

  /** Names a plant with what it is, for messages. */
  static String describe(Item item) {
    Map<String, ?> makeup = item.determination().makeup();
    String what =
        !item.names().isEmpty()
            ? item.names().get(0)
            : item.determination().taxon() != null
                ? item.determination().taxon()
                : String.join(" × ", makeup.keySet());
    return what.isEmpty() ? item.code().text() : item.code().text() + " (" + what + ")";
  }
}
