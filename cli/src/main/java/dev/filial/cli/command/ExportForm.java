package dev.filial.cli.command;

import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.Trouble;
import dev.filial.core.answer.AccessionsQuestion;
import dev.filial.core.answer.Cautions;
import dev.filial.core.answer.Chosen;
import dev.filial.core.answer.CrossesMadeQuestion;
import dev.filial.core.answer.PedigreeDocumentQuestion;
import dev.filial.core.exchange.Accession;
import dev.filial.core.exchange.CrossMade;
import dev.filial.core.exchange.CrossTable;
import dev.filial.core.exchange.CsvRows;
import dev.filial.core.exchange.EntryLines;
import dev.filial.core.exchange.OccurrenceTable;
import dev.filial.core.exchange.PassportTable;
import dev.filial.core.exchange.PedigreeDocument;
import dev.filial.core.exchange.PlantTable;
import dev.filial.core.exchange.TableForm;
import dev.filial.core.register.Caution;
import dev.filial.core.register.Entry;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterView;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.LongStream;

/** The forms in which {@code filial export} hands on what the register holds. */
enum ExportForm {
  ENTRIES,
  PLANTS,
  CROSSES,
  PASSPORT,
  OCCURRENCES,
  GRAPHML,
  DOT;

  /**
   * What is wanted.
   *
   * @param chosen which things
   * @param localities whether to tell where plants were collected
   * @param people whether to tell who gave and bred them
   * @param institute the code of the institute that has them
   */
  record Asked(Chosen chosen, boolean localities, boolean people, Optional<String> institute) {}

  /**
   * What was written.
   *
   * @param rows how many
   * @param of what these are
   * @param notes what was left out, and what to mind
   */
  record Told(long rows, String of, List<String> notes) {}

  /** As it is typed. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether it can tell who gave a plant and where it was collected. */
  boolean tellsOrigin() {
    return this == PLANTS || namesInstitute();
  }

  /** Whether it has a place for the code of an institute. */
  boolean namesInstitute() {
    return this == PASSPORT || this == OCCURRENCES;
  }

  /** What comes next with the file it was written into. */
  String next(String file) {
    String typed = CommandLine.quoted(file);
    return switch (this) {
      case PLANTS, PASSPORT, OCCURRENCES ->
          "read it through in a spreadsheet before it leaves the house; a plant or seed that goes"
              + " with it: filial give CODE --to NAME";
      case CROSSES -> "read it through in a spreadsheet before it leaves the house";
      case GRAPHML ->
          "open it in a program that reads GraphML; for a picture of one plant's pedigree:"
              + " filial draw CODE";
      case DOT -> "have Graphviz draw it: dot -Tsvg -O " + typed;
      case ENTRIES -> "make a new register of them: filial import " + typed + " --register NEW";
    };
  }

  /**
   * Writes it.
   *
   * @throws IOException if it cannot be written
   * @throws Trouble if there is nothing to be written
   */
  Told write(RegisterView view, Asked asked, Writer out) throws IOException {
    return switch (this) {
      case ENTRIES -> entries(view, out);
      case PLANTS -> accessions(view, asked, new PlantTable(), out);
      case CROSSES -> crosses(view, asked, out);
      case PASSPORT ->
          accessions(
              view,
              asked,
              new PassportTable(
                  asked.institute().orElse(null),
                  asked.people() ? view.opening().map(RegisterOpened::grower).orElse(null) : null),
              out);
      case OCCURRENCES ->
          accessions(view, asked, new OccurrenceTable(asked.institute().orElse(null)), out);
      case GRAPHML, DOT -> pedigree(view, asked, out);
    };
  }

  private static Told entries(RegisterView view, Writer out) throws IOException {
    // One entry at a time: a long book is not to be in memory as a whole.
    Iterable<Entry> entries =
        () ->
            LongStream.rangeClosed(1, view.size())
                .mapToObj(number -> view.entry(number).orElseThrow())
                .iterator();
    EntryLines.write(entries, out);
    return new Told(
        view.size(),
        view.size() == 1 ? "entry" : "entries",
        List.of("this is the whole book, names of people and localities with it"));
  }

  private Told accessions(RegisterView view, Asked asked, TableForm<Accession> table, Writer out)
      throws IOException {
    CsvRows rows = new CsvRows(out);
    rows.row(table.columns());
    AccessionsQuestion.Told told =
        AccessionsQuestion.of(view, asked.chosen())
            .withSeedLots(this == PASSPORT)
            .withNeverHeld(this == PLANTS)
            .withLocalities(asked.localities())
            .withPeople(asked.people())
            .each(accession -> rows.row(table.row(accession)));
    List<String> notes = new ArrayList<>();
    if (told.gone() > 0) {
      notes.add(
          told.gone()
              + (this == PLANTS
                  ? " that died, left or never stood here"
                  : " that died, left or were used up")
              + (told.gone() == 1 ? " is" : " are")
              + " left out; --all takes them in");
    }
    if (told.neverHeld() > 0) {
      notes.add(
          told.neverHeld()
              + " that never stood here"
              + (told.neverHeld() == 1 ? " is" : " are")
              + " left out");
    }
    if (this == PASSPORT) {
      notes.add("pots and sowings are no accessions and are left out");
    }
    requireSome(told.rows(), this == PASSPORT ? "no plant and no seed" : "no plant", told.gone());
    if (asked.localities()) {
      notes.add(
          "exact localities bring thieves to wild plants; hand them only to those you trust, and"
              + " never where anybody can read them");
    } else {
      notes.add("where plants were collected is left out; --localities tells it");
    }
    if (!asked.people()) {
      notes.add("who gave plants is left out; --people tells it");
    }
    notes.add(Cautions.of(Caution.BORDER));
    return new Told(told.rows(), told.rows() == 1 ? "row" : "rows", notes);
  }

  private static Told crosses(RegisterView view, Asked asked, Writer out) throws IOException {
    CsvRows rows = new CsvRows(out);
    TableForm<CrossMade> table = new CrossTable();
    rows.row(table.columns());
    int crosses =
        CrossesMadeQuestion.of(view, asked.chosen()).each(cross -> rows.row(table.row(cross)));
    requireSome(crosses, "no cross", 0);
    return new Told(crosses, crosses == 1 ? "row" : "rows", List.of());
  }

  private Told pedigree(RegisterView view, Asked asked, Writer out) throws IOException {
    PedigreeDocument document = PedigreeDocumentQuestion.of(view, asked.chosen()).ask();
    if (this == DOT) {
      document.dot(out);
    } else {
      document.graphml(out);
    }
    return new Told(document.plants(), document.plants() == 1 ? "plant" : "plants", List.of());
  }

  private static void requireSome(int rows, String none, int gone) {
    if (rows == 0) {
      throw Trouble.refused(
          "there is " + none + " to hand on among what was asked for",
          gone > 0 ? "What is gone is taken in with --all." : "What there is: filial list --all");
    }
  }
}
