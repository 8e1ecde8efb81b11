package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.exchange.NotationEntries;
import dev.filial.core.name.Code;
import dev.filial.core.name.Notation;
import dev.filial.core.register.Introduction;
import dev.filial.core.register.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A pedigree that was written into the register.
 *
 * @param notation the pedigree
 * @param plant the seedling whose pedigree it is
 * @param first the number of the first entry
 * @param last the number of the last
 * @param sources which plant each name is
 * @param warnings what looked unlikely and was taken all the same
 */
record NotationImport(
    String notation, Code plant, long first, long last, List<Source> sources, List<String> warnings)
    implements Answer {

  /**
   * A name in the pedigree.
   *
   * @param name the name
   * @param code the plant
   * @param added whether it was entered just now, as a plant held elsewhere
   */
  record Source(String name, Code code, boolean added) {}

  static NotationImport into(
      Writing writing, Notation notation, List<SourceMeant> meant, Bench bench) {
    Map<String, Code> said = new LinkedHashMap<>();
    for (SourceMeant one : meant) {
      if (said.put(one.name(), writing.find(one.plant()).code()) != null) {
        throw new IllegalArgumentException(one.name() + " is said to be two plants; say it once");
      }
    }
    NotationEntries entries =
        NotationEntries.of(writing.view(), notation, said, bench.today().getYear());
    long before = writing.view().size();
    note(writing, entries, before);
    for (Statement statement : entries.statements()) {
      writing.append(statement);
    }
    List<Source> sources = new ArrayList<>();
    entries
        .sources()
        .forEach(
            (name, code) -> sources.add(new Source(name, code, entries.added().contains(code))));
    return new NotationImport(
        notation.toString(),
        entries.last(),
        before + 1,
        writing.view().size(),
        sources,
        writing.warnings());
  }

  /** What was made of names that the register did not know, and how to put that right. */
  private static void note(Writing writing, NotationEntries entries, long before) {
    if (!entries.readAsSpecies().isEmpty()) {
      Map.Entry<String, Code> first = entries.readAsSpecies().entrySet().iterator().next();
      writing.note(
          "read as the name of a species: "
              + String.join(", ", entries.readAsSpecies().keySet())
              + "; what is none is put right by: filial amend "
              + entry(entries, first.getValue(), before)
              + " taxon= --why \"the plant's own name\"");
    }
    if (!entries.withoutTaxon().isEmpty()) {
      Map.Entry<String, Code> first = entries.withoutTaxon().entrySet().iterator().next();
      writing.note(
          "nothing is known of the taxon of "
              + String.join(", ", entries.withoutTaxon().keySet())
              + ", so answers call it unknown; say it, for "
              + first.getKey()
              + " so: filial amend "
              + entry(entries, first.getValue(), before)
              + " taxon=\"GENUS SPECIES\" --why \"now known\"");
    }
  }

  private static long entry(NotationEntries entries, Code plant, long before) {
    List<Statement> statements = entries.statements();
    for (int i = 0; i < statements.size(); i++) {
      if (Introduction.codes(statements.get(i)).contains(plant)) {
        return before + i + 1;
      }
    }
    return before;
  }

  @Override
  public void show(Screen screen) {
    screen.say("Entries " + first + " to " + last + ": " + notation + " is " + plant.text() + ".");
    Table table = new Table().column("name").column("plant").column("");
    sources.forEach(
        source ->
            table.row(
                source.name(),
                source.code().text(),
                source.added() ? "new, held elsewhere" : "was here already"));
    screen.table(table);
    screen.next("see who is in it: filial ancestry " + CommandLine.quoted(plant.text()));
  }
}
