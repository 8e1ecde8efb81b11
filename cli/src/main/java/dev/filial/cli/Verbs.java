package dev.filial.cli;

import dev.filial.cli.command.CompletionCommand;
import dev.filial.cli.command.VersionCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Nearest;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.VerbTable;
import dev.filial.cli.frame.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The table of verbs: {@link #all} is the one place where a verb is named.
 *
 * @param list every verb, each group in the order in which help lists it
 */
record Verbs(List<Verb> list) {

  /** The verbs of Filial. */
  static Verbs all() {
    List<Verb> all = new ArrayList<>();
    all.addAll(BeginVerbs.list());
    all.addAll(PlantVerbs.list());
    all.addAll(SeedlingVerbs.list());
    all.addAll(DiaryVerbs.list());
    all.addAll(FlowerVerbs.list());
    all.addAll(TinVerbs.list());
    all.addAll(GeneVerbs.list());
    all.addAll(AskVerbs.list());
    all.addAll(PageVerbs.list());
    all.addAll(ExpectVerbs.list());
    all.addAll(MeasureVerbs.list());
    all.addAll(LabelVerbs.list());
    all.addAll(CorrectVerbs.list());
    all.addAll(KeepVerbs.list());
    all.addAll(SpreadsheetVerbs.list());
    all.addAll(EntryVerbs.list());
    all.add(
        new Verb(
            "help",
            Heading.PROGRAM,
            "Show what there is, or how one verb is used",
            words -> new HelpCommand(words, all())));
    all.add(
        new Verb(
            "completion",
            Heading.PROGRAM,
            "Print a script that lets the Tab key complete verbs and options",
            words -> new CompletionCommand(words, () -> all().words())));
    all.add(
        new Verb(
            "version",
            Heading.PROGRAM,
            "Show the versions of Filial, Java and SQLite",
            VersionCommand::new));
    return new Verbs(List.copyOf(all));
  }

  /** The same for a command that runs others. */
  static VerbTable table() {
    Verbs verbs = all();
    return new VerbTable() {
      @Override
      public List<String> names() {
        return verbs.list().stream().map(Verb::name).toList();
      }

      @Override
      public Function<Words, BenchCommand> find(String name) {
        return verbs.find(name).command();
      }
    };
  }

  /**
   * The verb of that name.
   *
   * @throws Trouble if there is none, proposing the nearest
   */
  Verb find(String name) {
    for (Verb verb : list) {
      if (verb.name().equals(name)) {
        return verb;
      }
    }
    String nearest =
        Nearest.of(name, list.stream().map(Verb::name).toList())
            .map(found -> "Did you mean: filial " + found + "? ")
            .orElse("");
    throw Trouble.usage(
        "there is no verb \"" + name + "\"", nearest + "All of them are listed by: filial help");
  }

  private Map<String, Words> words() {
    Map<String, Words> words = new LinkedHashMap<>();
    list.forEach(verb -> words.put(verb.name(), verb.words()));
    return words;
  }
}
