package dev.filial.cli;

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
 * The table of verbs: {@link #all} is the one place where a group of them is named.
 *
 * @param groups every group, in the order in which help lists them
 */
record Verbs(List<VerbGroup> groups) {

  /** The verbs of Filial. */
  static Verbs all() {
    return new Verbs(
        List.of(
            new BeginVerbs(),
            new PlantVerbs(),
            new SeedlingVerbs(),
            new DiaryVerbs(),
            new FlowerVerbs(),
            new TinVerbs(),
            new GeneVerbs(),
            new AskVerbs(),
            new PageVerbs(),
            new ExpectVerbs(),
            new MeasureVerbs(),
            new LabelVerbs(),
            new CorrectVerbs(),
            new KeepVerbs(),
            new SpreadsheetVerbs(),
            new EntryVerbs(),
            new ProgramVerbs()));
  }

  /** The same for a command that runs others. */
  static VerbTable table() {
    Verbs verbs = all();
    return new VerbTable() {
      @Override
      public List<String> names() {
        return verbs.names();
      }

      @Override
      public Function<Words, BenchCommand> find(String name) {
        return verbs.find(name).command();
      }
    };
  }

  /** Every verb, each group's in the order in which help lists them. */
  List<Verb> list() {
    List<Verb> all = new ArrayList<>();
    for (VerbGroup group : groups) {
      all.addAll(group.list());
    }
    return List.copyOf(all);
  }

  private List<String> names() {
    return list().stream().map(Verb::name).toList();
  }

  /**
   * The verb of that name. Groups after its own are not gone through, since one short command asks
   * for one verb.
   *
   * @throws Trouble if there is none, proposing the nearest
   */
  Verb find(String name) {
    for (VerbGroup group : groups) {
      for (Verb verb : group.list()) {
        if (verb.name().equals(name)) {
          return verb;
        }
      }
    }
    String nearest =
        Nearest.of(name, names()).map(found -> "Did you mean: filial " + found + "? ").orElse("");
    throw Trouble.usage(
        "there is no verb \"" + name + "\"", nearest + "All of them are listed by: filial help");
  }

  Map<String, Words> words() {
    Map<String, Words> words = new LinkedHashMap<>();
    list().forEach(verb -> words.put(verb.name(), verb.words()));
    return words;
  }
}
