package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
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
  private final StockRules stock;

  /**
   * Rules over a register that already holds the entry.
   *
   * @param warnings receives a sentence for each thing that is unlikely but taken
   */
  Rules(RegisterView book, List<String> warnings) {
    this.book = book;
    this.warnings = warnings;
    this.stock = new StockRules(book, warnings);
  }

  /**
   * Checks a new entry.
   *
   * @throws RegisterRefusal if it cannot stand
   */
  void check(long number, Statement statement) {
    checkAlone(number, statement);
    stock.requireNothingOverdrawn(statement, number);
  }

  /**
   * Checks an entry that hangs on an amended one.
   *
   * @throws RegisterRefusal if it can no longer stand
   */
  void recheck(long number, Statement statement) {
    checkAlone(number, statement);
    stock.requireNotOverdrawing(statement, number);
  }

  private void checkAlone(long number, Statement statement) {
    FreeCodes.require(book, number, statement);
    if (statement instanceof Pollinated cross) {
      new CrossRules(book, warnings).check(cross);
    } else if (statement instanceof FruitRecorded fruit) {
      requireKind(fruit.cross(), Item.Kind.CROSS);
      stock.requireNotBefore(fruit.date(), fruit.cross(), "the cross was made");
      new FruitRules(book, warnings).check(fruit);
    } else if (statement instanceof Harvested harvest) {
      requireKind(harvest.lot().whole(), Item.Kind.CROSS);
      stock.requireNotBefore(harvest.date(), harvest.lot().whole(), "the cross was made");
    } else if (statement instanceof LotSplit split) {
      requireKind(split.from(), Item.Kind.LOT);
      stock.requireNotBefore(split.date(), split.from(), "there was seed in the lot");
    } else if (statement instanceof LotsMerged merged) {
      checkMerged(merged);
    } else if (statement instanceof Sown sown) {
      requireKind(sown.lot(), Item.Kind.LOT);
      stock.checkSowing(sown);
    } else if (statement instanceof Counted counted) {
      counted.readings().forEach(reading -> stock.checkReading(number, reading, counted.date()));
    } else if (statement instanceof Potted potted) {
      stock.requireStock(potted.from());
      stock.requireNotBefore(potted.date(), potted.from(), "that was begun");
    } else if (statement instanceof Numbered numbered) {
      stock.checkNumbered(numbered);
      if (numbered.pickedFor() != null) {
        book.requiredTrait(numbered.pickedFor());
      }
    } else if (statement instanceof Propagated ramet) {
      checkRamet(ramet);
    } else if (statement instanceof TagLost found) {
      checkFound(found);
    } else if (statement instanceof FateRecorded fate) {
      fate.codes().forEach(code -> stock.checkFate(code, fate.date()));
      warnIfGoneAlready(number, fate);
      fate.codes().forEach(code -> warnIfBackAgain(number, fate, code));
      fate.codes().forEach(code -> warnIfStillPromised(fate, code));
      warnIfJoined(fate.codes());
    } else if (statement instanceof Moved moved) {
      moved.codes().forEach(this::requireThing);
      moved.codes().forEach(code -> stock.warnIfGone(code, moved.date(), "it was moved"));
      warnIfJoined(moved.codes());
    } else if (statement instanceof Named named) {
      requireThing(named.code());
    } else if (statement instanceof Noted noted) {
      requireThing(noted.code());
    } else if (statement instanceof Joined joined) {
      JoinRules.check(book, number, joined);
      JoinRules.warnIfFatesDiffer(book, joined, warnings);
      JoinRules.warnIfKindsDiffer(book, joined, warnings);
    } else if (statement instanceof Parted parted) {
      requirePlant(parted.code());
    } else if (statement instanceof TaxonDeclared taxon) {
      checkTaxon(number, taxon);
    } else if (statement instanceof TaxonRenamed renamed) {
      NameChains.requireNotWithinItself(book, renamed.to());
      requireNoTaxonWithinItself();
    } else if (statement instanceof PopulationDeclared population) {
      Populations.warnIfKnown(book, number, population, warnings);
    } else if (statement instanceof TraitDeclared trait) {
      checkTraitDeclared(number, trait);
    } else if (statement instanceof Observed observed) {
      checkObserved(observed);
    } else if (statement instanceof Tallied tallied) {
      stock.checkTally(number, tallied);
      TraitDeclared trait = book.requiredTrait(tallied.trait());
      tallied.counts().keySet().forEach(state -> TraitValues.requireState(trait, state));
    } else if (!new DiaryRules(book, warnings, stock).check(number, statement)) {
      checkGenes(number, statement);
    }
  }

  private void checkGenes(long number, Statement statement) {
    GeneRules genes = new GeneRules(book, warnings);
    if (statement instanceof LocusDeclared locus) {
      genes.check(number, locus);
    } else if (statement instanceof ModelDeclared model) {
      genes.check(number, model, book.requiredTrait(model.trait()));
    } else if (statement instanceof ProfileStated profile) {
      genes.check(profile);
    } else if (statement instanceof GenotypeStated genotype) {
      genes.check(number, genotype);
    }
  }

  private void warnIfGoneAlready(long number, FateRecorded fate) {
    if (fate.fate().isHere() || fate.count() != null) {
      return;
    }
    for (Code code : fate.codes()) {
      for (long other : book.entriesOn(Subject.of(code))) {
        if (other != number && tellsAnEnd(book.effective(other).orElse(null), code)) {
          warnings.add(
              code.text()
                  + " was gone already, by entry "
                  + other
                  + "; if this says it better, amend that one");
        }
      }
    }
  }

  /** Marking as kept what died is more often a slip of the code than a plant that came back. */
  private void warnIfBackAgain(long number, FateRecorded fate, Code code) {
    Item before = book.itemBefore(code, number).orElse(null);
    if (fate.fate().isHere() && before != null && !before.fate().isHere()) {
      warnings.add(
          code.text()
              + " "
              + before.fate().became()
              + (before.until() == null ? "" : " " + before.until().inWords())
              + ", and stands here again by this entry; strike it if that is not so");
    }
  }

  private void warnIfStillPromised(FateRecorded fate, Code code) {
    if (fate.fate().isHere() || References.thing(book, code).fate().isHere()) {
      return;
    }
    for (Promises.Open open : Promises.of(book, code)) {
      warnings.add(
          code.text()
              + " is promised to "
              + open.to()
              + " (entry "
              + open.entry()
              + ") and is gone; tell them, and take the promise back");
    }
  }

  private static boolean tellsAnEnd(@Nullable Statement statement, Code code) {
    return (statement instanceof FateRecorded before
            && !before.fate().isHere()
            && before.count() == null)
        || (statement instanceof Joined joined
            && joined.keep().equals(code)
            && joined.fate() != null
            && !joined.fate().isHere());
  }

  private void checkMerged(LotsMerged merged) {
    for (LotsMerged.Part part : merged.parts()) {
      requireKind(part.lot(), Item.Kind.LOT);
      stock.requireNotBefore(merged.date(), part.lot(), "there was seed in the lot");
    }
    CrossRules.requireNoLoop(book, merged.code());
  }

  private void checkRamet(Propagated ramet) {
    requirePlant(ramet.of());
    ramet.sportFor().forEach(book::requiredTrait);
    requireExisted(ramet.of(), ramet.date(), "the source of this offset");
    CrossRules.requireNoLoop(book, ramet.code());
  }

  private void checkFound(TagLost found) {
    for (Weighted candidate : found.candidates()) {
      References.parent(book, candidate.plant());
      requireExisted(candidate.plant(), found.date(), "thought to be what was found");
    }
    CrossRules.requireNoLoop(book, found.code());
  }

  private void requireExisted(Code plant, @Nullable PartialDate day, String role) {
    Birth birth = Birth.of(book, plant);
    if (day != null && birth.isSurelyAfter(day) && !birth.stoodElsewhere()) {
      throw birth.refusal(References.described(book, plant), role, day);
    }
  }

  private void checkObserved(Observed observed) {
    Item item = requireThing(observed.code());
    if (item.kind().isFamily() || item.kind() == Item.Kind.LOT) {
      throw new RegisterRefusal(
          observed.code().text()
              + " is a "
              + item.kind().word()
              + "; observe a plant, or one out of a sowing or a pot, and fruit and seed on the"
              + " plant that bore it");
    }
    TraitValues.check(book.requiredTrait(observed.trait()), observed.value());
    if (References.resolved(book, observed.code()).fate() == Fate.DEAD) {
      stock.warnIfGone(observed.code(), observed.date(), "this was seen");
    }
  }

  private void warnIfJoined(List<Code> codes) {
    for (Code code : codes) {
      Item item = requireThing(code);
      if (item.sameAs() != null) {
        Code read = book.resolved(code).map(Item::code).orElse(item.sameAs());
        warnings.add(
            code.text()
                + " is one plant with "
                + read.text()
                + " and read as it; say this of "
                + read.text()
                + " if it is to show there");
      }
    }
  }

  private Item requireThing(Code code) {
    return References.thing(book, code);
  }

  private Item requirePlant(Code code) {
    return References.plant(book, code);
  }

  private Item requireKind(Code code, Item.Kind kind) {
    Item item = requireThing(code);
    if (item.kind() != kind) {
      throw new RegisterRefusal(
          code.text() + " is a " + item.kind().word() + ", not a " + kind.word());
    }
    return item;
  }

  /** A name that is read otherwise may close a circle that another taxon stands in. */
  private void requireNoTaxonWithinItself() {
    for (Taxon taxon : book.taxa()) {
      if (taxon.acceptedAs() == null) {
        NameChains.requireNotWithinItself(book, taxon.name());
      }
    }
  }

  private void checkTaxon(long number, TaxonDeclared taxon) {
    Subject subject = Subject.taxon(taxon.name());
    for (long entry : book.entriesOn(subject)) {
      if (entry != number
          && book.effective(entry).orElse(null) instanceof TaxonDeclared other
          && Subject.taxon(other.name()).equals(subject)) {
        throw new RegisterRefusal(
            taxon.name() + " was declared in entry " + entry + "; amend that entry",
            List.of(entry));
      }
    }
    NameChains.requireNotWithinItself(book, taxon.name());
    requireNoTaxonWithinItself();
    Taxon accepted = book.accepted(taxon.name());
    if (!accepted.key().equals(subject.key()) && !taxon.equals(accepted.declared())) {
      warnings.add(
          taxon.name()
              + " is read as "
              + accepted.name()
              + ", so what was declared of "
              + accepted.name()
              + " holds and not this");
    }
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
}
