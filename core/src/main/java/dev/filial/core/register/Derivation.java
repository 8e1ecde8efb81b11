package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is true now of one thing, derived from the statements made about it and from nothing else.
 *
 * <p>Statements are read in the order of the days they speak of, since a count of the fourth of
 * March may be typed in after a loss of the fifth; one without a day comes after all that stands
 * before it in the book.
 */
final class Derivation {

  private Derivation() {}

  /** A statement and the number of its entry. */
  private record Said(long entry, Statement statement, long day) {}

  /** What {@code code} stands for, by the statements now in force; empty when none gives it out. */
  static Optional<Item> item(RegisterView view, Code code) {
    return fold(view, code, WHOLE_BOOK).map(ItemFold::item);
  }

  /**
   * What {@code code} stood for when that statement about it was made: by all that are read before
   * it; empty when none of them gives it out.
   */
  static Optional<Item> itemBefore(RegisterView view, Code code, long entry) {
    return fold(view, code, entry).map(ItemFold::item);
  }

  /** The first statement that took more from {@code code} than was there; empty when none did. */
  static Optional<Overdraft> overdraft(RegisterView view, Code code) {
    return fold(view, code, WHOLE_BOOK).flatMap(ItemFold::overdraft);
  }

  /** The last statement that took more than twice what was guessed to be there. */
  static Optional<Overdraft> beyondGuess(RegisterView view, Code code) {
    return fold(view, code, WHOLE_BOOK).flatMap(ItemFold::beyondGuess);
  }

  /** No entry has that number. */
  private static final long WHOLE_BOOK = -1;

  /** All that is said of it, or what is read before one entry. */
  private static Optional<ItemFold> fold(RegisterView view, Code code, long before) {
    List<Said> others = new ArrayList<>();
    Said introduction = null;
    Item.Kind kind = null;
    long latest = Long.MIN_VALUE;
    for (long entry : view.entriesOn(Subject.of(code))) {
      Statement statement = view.effective(entry).orElseThrow();
      PartialDate date = statement.date();
      // Without a day it was known when it was typed: after all that stands before it.
      long said = date == null ? latest : date.latest().toEpochDay();
      latest = Math.max(latest, said);
      Optional<Item.Kind> given = Introduction.kind(statement, code);
      if (given.isPresent() && introduction == null) {
        introduction = new Said(entry, statement, said);
        kind = given.get();
      } else {
        others.add(new Said(entry, statement, said));
      }
    }
    if (introduction == null || kind == null || introduction.entry() == before) {
      return Optional.empty();
    }
    others.sort(Comparator.comparingLong(Said::day).thenComparingLong(Said::entry));
    ItemFold fold =
        new ItemFold(
            code,
            kind,
            introduction.entry(),
            introduction.statement(),
            guess(view, introduction.entry()));
    for (Said said : others) {
      if (said.entry() == before) {
        break;
      }
      fold.read(said.entry(), said.statement());
    }
    return Optional.of(fold);
  }

  private static @Nullable String guess(RegisterView view, long entry) {
    String by = null;
    for (long doubt : view.entriesOn(Subject.entry(entry))) {
      if (view.effective(doubt).orElse(null) instanceof Doubted doubted) {
        by = doubted.by();
      }
    }
    return by;
  }

  /** What the register says of the taxon of that folded name; empty when nothing. */
  static Optional<Taxon> taxon(RegisterView view, String key) {
    String name = null;
    String acceptedAs = null;
    TaxonDeclared declared = null;
    List<String> readAlso = new ArrayList<>();
    for (long entry : view.entriesOn(new Subject(Subject.Kind.TAXON, key))) {
      Statement statement = view.effective(entry).orElseThrow();
      if (statement instanceof TaxonDeclared taxon) {
        if (Subject.taxon(taxon.name()).key().equals(key)) {
          declared = taxon;
          name = taxon.name();
          readAlso.addAll(taxon.synonyms());
        } else {
          acceptedAs = taxon.name();
          for (String synonym : taxon.synonyms()) {
            name = Subject.taxon(synonym).key().equals(key) ? synonym : name;
          }
        }
      } else if (statement instanceof TaxonRenamed renamed) {
        if (Subject.taxon(renamed.to()).key().equals(key)) {
          name = renamed.to();
          acceptedAs = null;
          readAlso.add(renamed.from());
        } else {
          name = name == null ? renamed.from() : name;
          acceptedAs = renamed.to();
        }
      }
    }
    return name == null
        ? Optional.empty()
        : Optional.of(new Taxon(key, name, acceptedAs, readAlso, declared));
  }

  /** The trait of that name; empty when it was not declared. */
  static Optional<TraitDeclared> trait(RegisterView view, String key) {
    for (long entry : view.entriesOn(new Subject(Subject.Kind.TRAIT, key))) {
      if (view.effective(entry).orElseThrow() instanceof TraitDeclared trait) {
        return Optional.of(trait);
      }
    }
    return Optional.empty();
  }
}
