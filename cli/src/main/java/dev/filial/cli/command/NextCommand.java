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
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.NextCrossQuestion;
import dev.filial.core.answer.NextCrosses;
import dev.filial.core.answer.NextCrosses.Part;
import dev.filial.core.answer.NextCrosses.Plan;
import dev.filial.core.answer.NextCrosses.Plant;
import dev.filial.core.answer.NextCrosses.Season;
import dev.filial.core.answer.NextCrosses.Side;
import dev.filial.core.answer.SeedRate;
import dev.filial.core.answer.Wanted;
import dev.filial.core.answer.Weighing;
import dev.filial.core.name.Code;
import dev.filial.core.number.Decimal;
import dev.filial.core.number.Fraction;
import dev.filial.core.plan.Sowing;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** {@code filial next}. */
public final class NextCommand implements BenchCommand {

  private final WantedWords wanted;
  private final Supplier<Optional<Integer>> seasons;
  private final Supplier<List<String>> from;
  private final Supplier<Optional<Fraction>> mostRelated;
  private final Supplier<List<TaxonShare>> shares;
  private final Supplier<Optional<Integer>> show;
  private final Supplier<Optional<Fraction>> misread;
  private final BooleanSupplier method;
  private final OpenRegister register;

  /** Declares its words. */
  public NextCommand(Words words) {
    wanted = new WantedWords(words);
    seasons =
        words.option(
            "--seasons",
            "NUMBER",
            "How many seasons of crossing ahead, 1 to 3; 2 if not given.",
            Reading.WHOLE_NUMBER);
    from =
        words.repeatedOption(
            "--from",
            "PLANT",
            "Only with this plant, and others named so; also one that is as wanted already.",
            Reading.THING);
    mostRelated =
        words.option(
            "--most-related",
            "SHARE",
            "How inbred the seedlings at the end may be at most, as 1/8 or 12.5%.",
            RecordReadings.SHARE);
    shares =
        words.repeatedOption(
            "--share",
            "TAXON=SHARE",
            "The share of a species that the seedling is expected to have at least, as \"Echeveria"
                + " laui=3/4\".",
            TaxonShare.READING);
    show =
        words.option(
            "--show",
            "NUMBER",
            "How many plans to show; " + NextCrossQuestion.USUALLY_SHOWN + " if not given.",
            Reading.WHOLE_NUMBER);
    misread =
        words.option(
            "--misread",
            "SHARE",
            "How often a state is misread or written down wrong, as 1%; never, if not given.",
            RecordReadings.SHARE);
    method = words.flag("--method", "Say how it was reckoned.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says which of your plants to cross for a seedling that you want, this season and the"
                + " next ones: which with which, what to keep of the seedlings, how many seeds each"
                + " season takes, and how inbred the seedlings at the end are.")
        .describe(
            "Every plant that stands here is taken for what it most likely carries, by everything"
                + " that was seen. A plan of more seasons is shown only if it takes fewer seeds.")
        .example("filial next --want tips=red --true-breeding tips --show 3")
        .example("filial next --want tips=plain --share \"Echeveria laui=1/2\" --show 2");
  }

  /**
   * The answer.
   *
   * @param crosses what was found
   * @param telling whether the method is told
   */
  record Told(NextCrosses crosses, boolean telling) implements Answer {

    /** So many of the plants that do as well as another are named. */
    private static final int NAMED = 6;

    private static final double NEARLY_NONE = 1e-9;

    @Override
    public Object json() {
      return crosses;
    }

    @Override
    public void show(Screen screen) {
      if (!crosses.already().isEmpty()) {
        screen.say(
            "As wanted already: "
                + crosses.already().stream().map(Told::named).collect(Collectors.joining(", "))
                + ".");
      }
      screen.say(sentence());
      int number = 0;
      for (Plan plan : crosses.plans()) {
        number++;
        show(screen, number, plan);
      }
      crosses
          .leftOut()
          .forEach(out -> screen.field("left out", plants(out.plants()) + " " + out.why()));
      if (crosses.refused() > 0) {
        screen.field(
            "left out",
            crosses.refused()
                + (crosses.refused() == 1 ? " pair or selfing" : " pairs and selfings")
                + " that set no seed by their S alleles");
      }
      for (SeedRate rate : crosses.rates()) {
        screen.field(rate.what(), rate.text() + ", " + rate.from() + ", in every season");
      }
      if (crosses.further() > 0) {
        screen.field(
            "more",
            crosses.further()
                + (crosses.further() == 1
                    ? " other first cross leads there too"
                    : " other first crosses lead there too"));
      }
      notes().forEach(note -> screen.field("note", note));
      if (telling) {
        crosses.method().forEach(text -> screen.field("method", text));
      }
      screen.next(next());
    }

    private Set<String> notes() {
      Set<String> notes = new LinkedHashSet<>(crosses.notes());
      crosses.plans().forEach(plan -> notes.addAll(plan.notes()));
      return notes;
    }

    private String sentence() {
      String wanted = crosses.what();
      if (crosses.plans().isEmpty()) {
        return crosses.parents() == 0
            ? "No plant is here that could be a parent of seedlings that are " + wanted + "."
            : "Within "
                + seasons(crosses.seasons())
                + " no cross of "
                + (crosses.parents() == 1
                    ? (crosses.already().isEmpty() ? "the one plant" : "the one other plant")
                    : "these " + plants(crosses.parents()))
                + " leads to seedlings that are "
                + wanted
                + ".";
      }
      return "Wanted: "
          + wanted
          + "; "
          + (crosses.atLeast() == 1 ? "one" : String.valueOf(crosses.atLeast()))
          + " at least, "
          + ChanceWords.certainty(crosses.certainty())
          + " sure. "
          + plants(crosses.parents())
          + (crosses.parents() == 1 ? " can be a parent." : " can be parents.");
    }

    private static String plants(int number) {
      return number == 1 ? "1 plant" : number + " plants";
    }

    private static String seasons(int number) {
      return number == 1 ? "one season" : number == 2 ? "two seasons" : "three seasons";
    }

    private static String named(Plant plant) {
      String others =
          plant.sameClone().isEmpty() ? "" : ", also " + CodeList.text(plant.sameClone());
      return plant.code().text() + " (" + plant.what() + others + ")";
    }

    private void show(Screen screen, int number, Plan plan) {
      screen.heading(
          number + ". " + seasons(plan.seasons().size()) + ", " + amount(plan.total()) + " in all");
      for (int i = 0; i < plan.seasons().size(); i++) {
        season(screen, i + 1, plan.seasons().get(i), i == plan.seasons().size() - 1, plan);
      }
      NextCrosses.Instead instead = plan.instead();
      if (instead != null) {
        screen.indented(
            1,
            "as well in place of "
                + instead.of().code().text()
                + ": "
                + some(instead.plants().stream().map(Plant::code).toList()));
      }
      List<String> costs = new ArrayList<>();
      costs.add("inbred " + ShareWords.text(plan.inbreeding()));
      plan.shares()
          .forEach(share -> costs.add(share.taxon() + " " + ShareWords.text(share.share())));
      screen.indented(1, String.join("; ", costs));
      if (!plan.reached()) {
        screen.indented(
            1,
            "not as sure as you want: however many are "
                + (crosses.rates().isEmpty() ? "raised" : "sown")
                + ", "
                + percent(plan.reachable())
                + " at most, since a parent or what is kept may not carry what it takes"
                + (refuses(plan) ? ", or sets no seed" : "")
                + ". These numbers come to "
                + percent(Sowing.NEARLY)
                + " of that; with them you are "
                + percent(plan.certainty())
                + " sure");
      }
    }

    private static boolean refuses(Plan plan) {
      return plan.seasons().stream().anyMatch(season -> refuses(season.setting()));
    }

    /** Whether some of what is kept sets no seed, save by rounding. */
    private static boolean refuses(@Nullable Double setting) {
      return setting != null && setting < 1 - NEARLY_NONE;
    }

    private static String some(List<Code> plants) {
      return CodeList.text(plants.subList(0, Math.min(NAMED, plants.size())))
          + (plants.size() > NAMED ? " and " + (plants.size() - NAMED) + " more" : "");
    }

    private static String percent(double share) {
      return Decimal.percent(share, 0);
    }

    private String amount(long number) {
      return number
          + (crosses.rates().isEmpty()
              ? number == 1 ? " seedling" : " seedlings"
              : number == 1 ? " seed" : " seeds");
    }

    private void season(Screen screen, int number, Season season, boolean last, Plan plan) {
      String one = number == 1 ? "the one" : one(plan.seasons().get(number - 2));
      boolean several = one.equals("each one");
      screen.indented(
          1,
          "season "
              + number
              + "  "
              + cross(season, one)
              + ": "
              + raise(season.seeds())
              + (several ? of(season) : "")
              + ", "
              + (last
                  ? (season.all() ? "all are wanted" : chance(season) + " wanted")
                  : keep(season, several)));
      setting(screen, number, season, plan);
      NextCrosses.Beside beside = season.beside();
      if (beside != null) {
        screen.indented(
            1,
            "season "
                + number
                + "  "
                + cross(beside.seed(), beside.pollen(), "the one")
                + ", the second cross: "
                + raise(beside.seeds())
                + ", "
                + kept(
                    beside.all(),
                    number(kept(season)),
                    beside.keep(),
                    ShareWords.text(beside.chance())));
      }
    }

    /** Where not all that is kept sets seed, what to do about it. */
    private static void setting(Screen screen, int number, Season season, Plan plan) {
      Double share = season.setting();
      if (share == null || !refuses(share)) {
        return;
      }
      Season before = plan.seasons().get(number - 2);
      boolean selfed = season.seed().equals(season.pollen());
      boolean pairs = before.pairs() || isOfTwo(season);
      screen.indented(
          2,
          "by their S alleles "
              + ShareWords.text(share)
              + (pairs
                  ? " of such pairs set seed"
                  : selfed
                      ? " of such seedlings set seed with their own pollen"
                      : " of such seedlings set seed so")
              + (before.spare() == 0
                  ? ""
                  : ": pollinate up to "
                      + (before.kept() + before.spare())
                      + (number > 2 && plan.seasons().get(number - 3).kept() > 1 ? " of each" : "")
                      + (before.kept() == 1
                          ? ", sow of one that has set"
                          : ", sow of " + before.kept() + " that have set")));
    }

    private String raise(int seeds) {
      return (crosses.rates().isEmpty() ? "raise " : "sow ") + seeds;
    }

    private static String of(Season season) {
      return isOfTwo(season) ? " of each pair" : " of each";
    }

    /** Whether what was kept of two crosses is crossed. */
    private static boolean isOfTwo(Season season) {
      return season.seed().part() == Part.OTHER || season.pollen().part() == Part.OTHER;
    }

    private static String chance(Season season) {
      return ShareWords.text(season.chance());
    }

    private static String keep(Season season, boolean several) {
      String number =
          season.pairs()
              ? kept(season) == 1 ? "a pair" : kept(season) + " pairs"
              : number(kept(season));
      return kept(
          season.all(), number + (several ? " of each" : ""), season.keep(), chance(season));
    }

    private static int kept(Season season) {
      return season.kept() + season.spare();
    }

    private static String number(int kept) {
      return kept == 1 ? "one" : String.valueOf(kept);
    }

    private static String kept(boolean all, String number, String looks, String chance) {
      return "keep "
          + number
          + (all ? ", all are alike to look at (" + looks + ")" : " with " + looks + ", " + chance);
    }

    /** Which of those kept of the season before it goes on with. */
    private static String one(Season before) {
      return before.kept() > 1 ? "each one" : before.spare() > 0 ? "one" : "the one";
    }

    private static String cross(Season season, String one) {
      if (isOfTwo(season)) {
        boolean turned = season.seed().part() == Part.OTHER;
        return one
            + (turned ? " kept of the second cross × " : " kept of the first cross × ")
            + (one.equals("each one") ? "another one" : one)
            + (turned ? " of the first" : " of the second");
      }
      return cross(season.seed(), season.pollen(), one)
          + (season.backcross() ? ", a backcross" : "");
    }

    private static String cross(Side seed, Side pollen, String one) {
      return side(seed, one) + (seed.equals(pollen) ? " selfed" : " × " + side(pollen, one));
    }

    private static String side(Side side, String one) {
      Plant plant = side.plant();
      if (side.part() == Part.PLANT && plant != null) {
        return plant.code().text() + " (" + plant.what() + ")";
      }
      return side.part() == Part.SIB ? "its sib" : one + " kept";
    }

    private String next() {
      if (crosses.plans().isEmpty()) {
        if (!crosses.already().isEmpty()) {
          return "to breed from what is as wanted, name it: the same with --from "
              + CommandLine.quoted(crosses.already().get(0).code().text());
        }
        return crosses.parents() == 0
            ? "enter what you have: filial plant TAXON"
            : crosses.seasons() < 3
                ? "look further ahead: the same with --seasons 3"
                : "see what a plant carries: filial carries PLANT";
      }
      Season first = crosses.plans().get(0).seasons().get(0);
      NextCrosses.Beside beside = first.beside();
      return "when you pollinate: "
          + typed(first.seed(), first.pollen())
          + (beside == null ? "" : " and " + typed(beside.seed(), beside.pollen()));
    }

    private static String typed(Side seed, Side pollen) {
      return "filial cross "
          + word(seed)
          + (seed.equals(pollen) ? " --selfed" : " " + word(pollen));
    }

    private static String word(Side side) {
      Plant plant = side.plant();
      return plant == null ? "" : CommandLine.quoted(plant.code().text());
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    Wanted wish =
        wanted
            .in(view, null)
            .orElseThrow(
                () ->
                    Trouble.usage(
                        "which seedling do you hope for?",
                        "Say it with --want \"TRAIT=STATE\", --want-genes or --true-breeding."));
    List<Code> plants = new ArrayList<>();
    for (String name : from.get()) {
      plants.add(Finding.in(view).one(name).code());
    }
    NextCrossQuestion question = NextCrossQuestion.of(view, wish).of(plants);
    if (seasons.get().isPresent()) {
      question = question.withSeasons(seasons.get().get());
    }
    if (mostRelated.get().isPresent()) {
      question = question.withMostInbred(mostRelated.get().get().toDouble());
    }
    for (TaxonShare share : shares.get()) {
      question = question.withShare(share.taxon(), share.share());
    }
    if (show.get().isPresent()) {
      question = question.showing(show.get().get());
    }
    if (misread.get().isPresent()) {
      question = question.weighing(Weighing.PLAIN.withMisreading(misread.get().get().toDouble()));
    }
    return new Told(question.ask(), method.getAsBoolean());
  }
}
