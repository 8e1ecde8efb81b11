package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.CrossOdds;
import dev.filial.core.answer.CrossOdds.Scenario;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.Holdings;
import dev.filial.core.answer.Hope;
import dev.filial.core.answer.OddsQuestion;
import dev.filial.core.answer.OddsQuestion.Side;
import dev.filial.core.answer.Wanted;
import dev.filial.core.heredity.Checkerboard;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Odds;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial odds}. */
public final class OddsCommand implements BenchCommand {

  /** A longer one is read by nobody. */
  private static final int LONGEST_RATIO = 60;

  private final Supplier<Optional<String>> first;
  private final Supplier<Optional<String>> second;
  private final Supplier<List<String>> traits;
  private final WantedWords wanted;
  private final Supplier<Optional<String>> seedGenes;
  private final Supplier<Optional<String>> pollenGenes;
  private final Supplier<Optional<Meiosis>> egg;
  private final Supplier<Optional<Meiosis>> pollen;
  private final BooleanSupplier selfed;
  private final Supplier<Optional<Integer>> selfings;
  private final BooleanSupplier keeping;
  private final BooleanSupplier grid;
  private final Supplier<Optional<MapFunction>> map;
  private final BooleanSupplier method;
  private final OpenRegister register;

  /** Declares its words. */
  public OddsCommand(Words words) {
    first =
        words.optionalArgument(
            "SEED_PARENT", "The seed parent; or a cross, and no other plant.", Reading.THING);
    second = words.optionalArgument("POLLEN_PARENT", "The pollen parent.", Reading.THING);
    traits =
        words.repeatedOption(
            "--trait",
            "TRAIT",
            "The trait the odds are asked of; several for their combinations.",
            RecordReadings.LINE);
    wanted = new WantedWords(words);
    seedGenes =
        words.option(
            "--seed-genes", "GENES", "The seed parent's genes, as \"Rr Gg\".", RecordReadings.LINE);
    pollenGenes =
        words.option("--pollen-genes", "GENES", "The pollen parent's genes.", RecordReadings.LINE);
    selfed = words.flag("--selfed", "The seed parent is pollinated with its own pollen.");
    selfings =
        words.option(
            "--selfings",
            "NUMBER",
            "Ask of the seedlings after so many further selfings, one seedling looked at of each"
                + " plant.",
            Reading.WHOLE_NUMBER);
    keeping =
        words.flag(
            "--keep-wanted",
            "Before each selfing keep only seedlings that show what is wanted; a line whose one"
                + " seedling does not ends.");
    egg =
        words.option(
            "--eggs-form",
            "HOW",
            "How eggs form where that is not plain: 1 or 2 sets of a triploid's, first:0.9 or"
                + " second:0.2 if unreduced, tetrasomic:1/7 of a tetraploid.",
            GameteReading.MEIOSIS);
    pollen =
        words.option("--pollen-forms", "HOW", "The same of the pollen.", GameteReading.MEIOSIS);
    grid = words.flag("--grid", "Show the checkerboard of gametes, for one gene or two.");
    map =
        words.option(
            "--map",
            "FUNCTION",
            "How map distances become recombination: haldane or kosambi; haldane if not given.",
            Reading.oneOf(MapFunction.class));
    method = words.flag("--method", "Say how it was reckoned.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says what a cross will throw, by the genes of its parents: those recorded of them,"
                + " those that follow from their taxon, their own parents or what they showed, or"
                + " those given here. With --want it says how many seeds to sow.")
        .example("filial odds 26-013 --trait tips")
        .example("filial odds 26-013 --want tips=plain --at-least 3");
  }

  /**
   * The answer.
   *
   * @param odds what was found
   * @param telling whether the method is told
   * @param next what comes next; empty if nothing does
   */
  record Told(CrossOdds odds, boolean telling, String next) implements Answer {
    @Override
    public Object json() {
      return odds;
    }

    @Override
    public void show(Screen screen) {
      boolean several = odds.scenarios().size() > 1;
      if (several) {
        screen.say(
            "What comes up depends on how the chromosomes of a tetraploid pair, which is not stated;"
                + " each way is answered.");
      }
      for (Scenario scenario : odds.scenarios()) {
        if (scenario.assuming() != null) {
          screen.heading("If " + scenario.assuming() + ":");
        }
        show(screen, scenario);
      }
      if (telling) {
        odds.method().forEach(sentence -> screen.field("method", sentence));
      }
      odds.notes().forEach(note -> screen.field("note", note));
      if (!next.isEmpty()) {
        screen.next(next);
      }
    }

    private void show(Screen screen, Scenario scenario) {
      if (scenario.hope() != null) {
        HopeWords.show(screen, scenario.hope(), scenario.lost());
      } else {
        screen.say(sentence(scenario));
      }
      screen.field(
          "parents",
          parent(odds.seed(), scenario.seedGenes())
              + " × "
              + parent(odds.pollen(), scenario.pollenGenes()));
      if (scenario.ratio() != null && scenario.ratio().length() <= LONGEST_RATIO) {
        screen.field("ratio", scenario.ratio());
      }
      Table table = new Table();
      odds.traits().forEach(table::column);
      table.numbers("chance").numbers("").column("");
      List<String> words = words(scenario);
      for (int i = 0; i < words.size(); i++) {
        Odds.Share one = scenario.classes().get(i);
        List<Object> cells = new ArrayList<>(one.states());
        cells.add(ChanceWords.fraction(one.chance(), scenario.exact()));
        cells.add(ChanceWords.percent(one.chance()));
        cells.add(words.get(i));
        table.row(cells.toArray());
      }
      screen.table(table);
      boolean said = scenario.hope() != null && scenario.hope().seedlings() != null;
      if (!scenario.lost().isZero() && !said) {
        screen.say(
            ChanceWords.about(scenario.lost())
                + " of the seedlings will die before they can be looked at; the odds are of those"
                + " that live.");
      }
      if (scenario.checkerboard() != null) {
        show(screen, scenario.checkerboard());
      }
    }

    private static List<String> words(Scenario scenario) {
      return ChanceWords.oneIn(scenario.classes().stream().map(Odds.Share::chance).toList());
    }

    private static String parent(String name, @Nullable String genes) {
      return genes == null || genes.isEmpty() || genes.equals(name)
          ? name
          : name + " (" + genes + ")";
    }

    private static String sentence(Scenario scenario) {
      List<Odds.Share> classes = scenario.classes();
      if (classes.size() == 1) {
        return "All will be " + String.join(", ", classes.get(0).states()) + ".";
      }
      List<String> words = words(scenario);
      List<String> parts = new ArrayList<>();
      for (int i = 0; i < words.size(); i++) {
        String often = i == 0 ? ChanceWords.about(words.get(i)) : words.get(i);
        parts.add(
            often + (i == 0 ? " will be " : " ") + String.join(", ", classes.get(i).states()));
        if (parts.size() == 4 && classes.size() > 4) {
          parts.add("and so on");
          break;
        }
      }
      return String.join("; ", parts) + ".";
    }

    private static void show(Screen screen, Checkerboard board) {
      screen.say("Eggs down the side, pollen along the top:");
      Table table = new Table().column("");
      board.pollen().forEach(grain -> table.column(side(grain.text(), grain.chance())));
      for (int row = 0; row < board.eggs().size(); row++) {
        List<Object> cells = new ArrayList<>();
        cells.add(side(board.eggs().get(row).text(), board.eggs().get(row).chance()));
        for (Checkerboard.Cell cell : board.cells().get(row)) {
          cells.add(
              cell.genotype()
                  + (cell.shows().isEmpty() ? "" : "\n" + String.join(", ", cell.shows())));
        }
        table.row(cells.toArray());
      }
      screen.table(table);
    }

    private static String side(String gamete, Fraction chance) {
      return (gamete.isEmpty() ? "-" : gamete)
          + "\n"
          + (chance.denominator().bitLength() > 12 ? chance.toPercent(2) : chance.toString());
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    @Nullable Item one = first.get().map(text -> Finding.in(view).one(text)).orElse(null);
    boolean ofCross = one != null && !one.kind().isPlant() && one.kind() != Item.Kind.GROUP;
    @Nullable Code family = ofCross && one != null ? one.code().whole() : null;
    // Its own germination is that of one generation, and says nothing of several.
    Optional<Wanted> wish = wanted.in(view, selfings.get().orElse(0) > 0 ? null : family);
    OddsQuestion question = OddsQuestion.of(view, asked(view));
    if (wish.isPresent()) {
      question = question.wanting(wish.get());
    }
    if (keeping.getAsBoolean() && (wish.isEmpty() || selfings.get().isEmpty())) {
      throw Trouble.usage(
          "--keep-wanted keeps what is wanted before each selfing",
          "Add --want TRAIT=STATE and --selfings NUMBER.");
    }
    question = question.afterSelfings(selfings.get().orElse(0), keeping.getAsBoolean());
    if (map.get().isPresent()) {
      question = question.withMapFunction(map.get().get());
    }
    if (grid.getAsBoolean()) {
      question = question.withCheckerboard();
    }
    if (one != null && family != null) {
      if (second.get().isPresent()
          || seedGenes.get().isPresent()
          || pollenGenes.get().isPresent()
          || egg.get().isPresent()
          || pollen.get().isPresent()
          || selfed.getAsBoolean()) {
        throw Trouble.usage(
            family.text() + " is a " + one.kind().word() + " and comes of its own parents",
            "Name it alone, or name two plants instead.");
      }
      CrossOdds odds = question.ask(family);
      return new Told(odds, method.getAsBoolean(), next(view, odds, family));
    }
    Side seed = seed(one);
    return new Told(question.ask(seed, pollen(view, seed)), method.getAsBoolean(), "");
  }

  /** From the odds to how many to sow, and from there to the seed there is. */
  private static String next(RegisterView view, CrossOdds odds, Code family) {
    if (odds.scenarios().size() > 1) {
      return "";
    }
    Scenario scenario = odds.scenarios().get(0);
    Hope hope = scenario.hope();
    if (hope == null) {
      return scenario.classes().size() < 2 ? "" : wish(odds, scenario, family);
    }
    Integer seeds = hope.seeds();
    if (seeds == null) {
      return "";
    }
    List<Item> lots = Holdings.in(view).lots(view.item(family).orElseThrow());
    if (lots.isEmpty()) {
      return "harvest its seed first: filial harvest " + family.text() + " COUNT";
    }
    Item only = lots.get(0);
    Count left = only.count();
    boolean enough = left == null || !left.isExact() || left.size().orElse(Long.MAX_VALUE) >= seeds;
    return lots.size() > 1
        ? "sow them from one of its lots: " + Holdings.list(lots)
        : enough
            ? "sow them: filial sow " + CommandLine.quoted(only.code().text()) + " " + seeds
            : "only " + left + " seeds of it are left; more have to be harvested";
  }

  private static String wish(CrossOdds odds, Scenario scenario, Code family) {
    Odds.Share rarest = scenario.classes().get(0);
    for (Odds.Share one : scenario.classes()) {
      rarest = one.chance().compareTo(rarest.chance()) <= 0 ? one : rarest;
    }
    StringBuilder wish = new StringBuilder("how many to sow for some: filial odds ");
    wish.append(family.text());
    for (int i = 0; i < odds.traits().size(); i++) {
      wish.append(" --want ")
          .append(CommandLine.quoted(odds.traits().get(i) + "=" + rarest.states().get(i)));
    }
    return wish.append(" --at-least 3").toString();
  }

  private Side seed(@Nullable Item plant) {
    if (plant == null && seedGenes.get().isEmpty()) {
      throw Trouble.usage(
          "which cross?", "Name a cross, or a seed parent and a pollen parent, or --seed-genes.");
    }
    return new Side(
        plant == null ? null : plant.code(), seedGenes.get().orElse(null), egg.get().orElse(null));
  }

  private Side pollen(RegisterView view, Side seed) {
    @Nullable Code plant = second.get().map(text -> Finding.in(view).one(text).code()).orElse(null);
    if (selfed.getAsBoolean()) {
      if (plant != null || pollenGenes.get().isPresent()) {
        throw Trouble.usage(
            "with --selfed the pollen is the seed parent's own", "Leave the pollen parent out.");
      }
      return pollen.get().isPresent()
          ? new Side(seed.plant(), seed.genes(), pollen.get().get())
          : seed;
    }
    if (plant == null && pollenGenes.get().isEmpty()) {
      throw Trouble.usage(
          "with whose pollen?", "Name the pollen parent, or give --pollen-genes, or --selfed.");
    }
    return new Side(plant, pollenGenes.get().orElse(null), pollen.get().orElse(null));
  }

  /** The traits that were named; if none was, all that have a model, as long as it is one. */
  private List<String> asked(RegisterView view) {
    Map<String, String> named = new LinkedHashMap<>();
    traits.get().forEach(trait -> named.putIfAbsent(Subject.trait(trait).key(), trait));
    wanted.traits().forEach(trait -> named.putIfAbsent(Subject.trait(trait).key(), trait));
    if (!named.isEmpty()) {
      return List.copyOf(named.values());
    }
    List<String> modelled =
        view.traits().stream()
            .map(TraitDeclared::trait)
            .filter(trait -> view.model(Subject.trait(trait).key()).isPresent())
            .toList();
    if (modelled.size() != 1) {
      throw Trouble.usage(
          modelled.isEmpty()
              ? "nobody said yet how any trait is inherited"
              : "of which trait? There are models of " + String.join(", ", modelled),
          modelled.isEmpty()
              ? "Declare a gene and a model: filial help gene, filial help model."
              : "Add --trait \"" + modelled.get(0) + "\".");
    }
    return modelled;
  }
}
