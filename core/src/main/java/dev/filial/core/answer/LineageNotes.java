package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.Rank;
import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Item;
import dev.filial.core.register.Joined;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TaxonDeclared;
import dev.filial.core.register.TaxonRenamed;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What an answer leans on without knowing it for certain. */
final class LineageNotes {

  private final RegisterView view;
  private final Set<Code> asked = new HashSet<>();
  private final List<String> notes = new ArrayList<>();
  private final Set<Subject> taxa = new LinkedHashSet<>();

  private LineageNotes(RegisterView view, Collection<Code> roots) {
    this.view = view;
    for (Code root : roots) {
      asked.add(root.whole());
    }
  }

  /**
   * A sentence for each doubt in the lineage, in order of entry, those about names last. That one
   * of {@code roots} itself may have come about in several ways is left to the answer to say.
   */
  static List<String> of(RegisterView view, Collection<Item> lineage, Collection<Code> roots) {
    LineageNotes notes = new LineageNotes(view, roots);
    List<Item> saying = new ArrayList<>();
    for (Item item : lineage) {
      if (!isPlain(item)) {
        saying.add(item);
      }
    }
    saying.sort(Item.IN_ORDER);
    for (Item item : saying) {
      notes.add(item);
    }
    for (Subject taxon : notes.taxa) {
      notes.addName(taxon);
    }
    return notes.notes;
  }

  /**
   * A sentence for each thing of the lineage that was recorded, or read as another, by somebody's
   * guess, in order of entry.
   */
  static List<String> guesses(RegisterView view, Collection<Item> lineage) {
    LineageNotes notes = new LineageNotes(view, List.of());
    lineage.stream()
        .filter(item -> item.sameAs() != null || item.guess() != null)
        .sorted(Item.IN_ORDER)
        .forEach(notes::addGuess);
    return List.copyOf(notes.notes);
  }

  /** A sentence for each of these entries that is somebody's guess. */
  static List<String> guessed(RegisterView view, Collection<Said> entries) {
    return entries.stream()
        .filter(said -> said.guess() != null)
        .map(said -> guess("that " + said.text(), said.guess(), said.entry()))
        .toList();
  }

  private void addGuess(Item item) {
    if (item.sameAs() != null) {
      addJoin(item);
    } else if (item.guess() != null) {
      notes.add(guess("what is recorded of " + item.code().text(), item.guess(), item.entry()));
    }
  }

  /** Whether there is nothing to say of it, as of nearly all. */
  private static boolean isPlain(Item item) {
    return item.sameAs() == null
        && item.guess() == null
        && !item.unprotected()
        && item.determination().taxon() == null
        && item.determination().makeup().isEmpty()
        && item.determination().generation() == null
        && item.descent().size() <= 1
        && item.kind() != Item.Kind.MIXTURE;
  }

  private void add(Item item) {
    String code = item.code().text();
    if (item.sameAs() != null) {
      addJoin(item);
      return;
    }
    if (item.guess() != null) {
      notes.add(guess("what is recorded of " + code, item.guess(), item.entry()));
    }
    if (item.unprotected()) {
      notes.add(
          code
              + " was made on unprotected flowers, and no share of selfs and strays is stated: taken"
              + " as pure");
    }
    addDetermination(code, item.determination());
    if (item.descent().size() > 1 && !asked.contains(item.code())) {
      notes.add(code + " may have come about in several ways, counted by share: " + ways(item));
    }
    if (item.kind() == Item.Kind.MIXTURE) {
      addGuessedMixture(item);
    }
  }

  private void addJoin(Item item) {
    for (long entry : view.entriesOn(Subject.of(item.code()))) {
      if (view.effective(entry).orElse(null) instanceof Joined joined
          && joined.other().equals(item.code())) {
        String by = guessOf(entry);
        if (by != null) {
          notes.add(
              guess(
                  "that " + item.code().text() + " is the same plant as " + joined.keep().text(),
                  by,
                  entry));
        }
      }
    }
  }

  private void addDetermination(String code, Determination said) {
    for (String name : said.makeup().keySet()) {
      taxa.add(Subject.taxon(name));
    }
    if (said.taxon() != null) {
      taxa.add(Subject.taxon(said.taxon()));
      addTaxon(code, said, said.taxon());
    }
    if (said.generation() != null
        && said.makeup().size() == 2
        && Founders.isGeneration(said.generation())
        && !Founders.fits(said.generation(), said.makeup())) {
      notes.add(
          "the generation stated of "
              + code
              + ", "
              + said.generation()
              + ", does not go with its shares, and is not counted from");
    }
    if (said.generation() != null && !Founders.isGeneration(said.generation())) {
      notes.add(
          "the generation stated of "
              + code
              + ", \""
              + said.generation()
              + "\", is not counted from: it is none of F1, F2 …, BC1, BC1F2 …");
    }
  }

  private void addTaxon(String code, Determination said, String taxon) {
    TaxonName name = TaxonName.parse(taxon);
    boolean genusOnly = name.rank() == Rank.GENUS && said.cultivar() == null;
    if (name.qualifier().isPresent()) {
      notes.add(
          code
              + " is determined only as "
              + name.text()
              + ", and counted as "
              + view.accepted(name.unqualified().text()).name());
    } else if ((name.isUndetermined() || genusOnly) && said.makeup().isEmpty()) {
      notes.add(code + " is determined only as " + name.text() + ", and its species is unknown");
    } else if (name.epithets().isEmpty() && !genusOnly && !name.isUndetermined()) {
      notes.add(
          code
              + " is a cultivar of no stated species: "
              + Founders.written(said).orElse(name.text())
              + " is counted as a taxon of its own, and as no pure plant");
    }
  }

  private static String ways(Item item) {
    Map<String, Fraction> ways = new LinkedHashMap<>();
    for (Descent descent : item.descent()) {
      boolean unknown = descent.form() == Descent.Form.SEXUAL && descent.pollen() == null;
      String way = descent.route().text() + (unknown ? " by an unknown plant" : "");
      ways.merge(way, descent.share(), Fraction::plus);
    }
    return ways.entrySet().stream()
        .map(way -> way.getValue().toPercent(1) + " " + way.getKey())
        .collect(Collectors.joining(", "));
  }

  private void addGuessedMixture(Item item) {
    if (view.effective(item.entry()).orElse(null) instanceof LotsMerged merged
        && merged.parts().stream().anyMatch(part -> !part.taken().isExact())) {
      notes.add(
          "the shares of the lots mixed in "
              + item.code().text()
              + " rest on seed that was not counted");
    }
  }

  /** Whether somebody only guessed what a name is to be read as. */
  private void addName(Subject taxon) {
    for (long entry : view.entriesOn(taxon)) {
      Statement said = view.effective(entry).orElse(null);
      if (said instanceof TaxonRenamed || said instanceof TaxonDeclared) {
        String by = guessOf(entry);
        if (by != null) {
          notes.add(guess("that " + Telling.of(said), by, entry));
        }
      }
    }
  }

  private @Nullable String guessOf(long entry) {
    String by = null;
    for (long doubt : view.entriesOn(Subject.entry(entry))) {
      if (view.effective(doubt).orElse(null) instanceof Doubted doubted) {
        by = doubted.by();
      }
    }
    return by;
  }

  private static String guess(String what, String by, long entry) {
    return what + " is a guess of " + by + " (entry " + entry + ")";
  }
}
