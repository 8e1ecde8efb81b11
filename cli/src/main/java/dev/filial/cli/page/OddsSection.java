package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.CrossOdds;
import dev.filial.core.answer.CrossOdds.Scenario;
import dev.filial.core.answer.FamilyOddsQuestion;
import dev.filial.core.answer.FamilyOddsQuestion.Expected;
import dev.filial.core.answer.FamilyOddsQuestion.FamilyOdds;
import dev.filial.core.answer.FamilyOddsQuestion.NotKnown;
import dev.filial.core.answer.GerminationQuestion.LeftOut;
import dev.filial.core.answer.Hope;
import dev.filial.core.answer.SeedRate;
import dev.filial.core.heredity.Checkerboard;
import dev.filial.core.heredity.Odds;
import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The part of a page that tells what a family is expected to be, trait by trait: a strip of the
 * expected family, the odds with the seeds to sow for one of each kind, and the checkerboard.
 */
final class OddsSection {

  /** Of more traits only the odds are told, in one table: a page is for reading. */
  private static final int MOST_AT_LENGTH = 12;

  /** Of more ways in which tetraploids may pair only the first are told. */
  private static final int MOST_WAYS = 6;

  private static final int LONGEST_RATIO = 60;

  private final PageWriter page;
  private final Markup html;
  private final FamilyOdds found;
  private boolean rosetteDefined;
  private int number;

  OddsSection(PageWriter page, FamilyOdds found) {
    this.page = page;
    this.html = page.html();
    this.found = found;
  }

  /** Writes it. */
  void write() {
    page.section("odds", "What it may throw");
    List<Expected> single = found.single();
    if (single.isEmpty() && found.notKnown().isEmpty() && found.notModelled().isEmpty()) {
      html.element("p", "Nothing recorded: no trait of this register has states or a gene model.")
          .line();
    }
    if (!single.isEmpty()) {
      html.element("p", lead(found), "class", "said").line();
    }
    Set<String> notes = new LinkedHashSet<>();
    for (Expected one : single.subList(0, Math.min(MOST_AT_LENGTH, single.size()))) {
      trait(one);
      notes.addAll(one.odds().notes());
    }
    if (found.together() != null) {
      trait(found.together());
      notes.addAll(found.together().odds().notes());
    }
    if (single.size() > MOST_AT_LENGTH) {
      further(single.subList(MOST_AT_LENGTH, single.size()), notes);
    }
    notKnown();
    page.notes(List.copyOf(notes));
    page.endSection();
  }

  private static String lead(FamilyOdds found) {
    SeedRate rate = found.rate();
    String sure =
        "The last column is how many to "
            + (rate == null ? "raise" : "sow")
            + ", to be "
            + ChanceWords.certainty(FamilyOddsQuestion.CERTAINTY)
            + " sure of at least one of that kind.";
    return rate == null
        ? sure + " " + noRate(found.leftOut()) + ", so these are seedlings and not seeds."
        : sure
            + " Germination is reckoned as "
            + rate.text()
            + ", "
            + rate.from()
            + "; a count is no certainty, so a few more seeds are allowed for.";
  }

  private static String noRate(List<LeftOut> leftOut) {
    List<String> why = new ArrayList<>();
    for (LeftOut one : leftOut) {
      String codes = one.codes().stream().map(Code::text).collect(Collectors.joining(", "));
      why.add(codes + ": " + one.why());
    }
    return why.isEmpty()
        ? "No sowing of it is recorded"
        : "No sowing of it tells how much of its seed comes up (" + String.join("; ", why) + ")";
  }

  private void trait(Expected expected) {
    CrossOdds odds = expected.odds();
    String id = "odds-" + ++number;
    html.element(
            "h3",
            String.join(" and ", odds.traits()) + (odds.traits().size() > 1 ? " together" : ""),
            "id",
            id)
        .line();
    int ways = odds.scenarios().size();
    int told = Math.min(ways, MOST_WAYS);
    boolean several = ways > 1;
    if (several) {
      html.element(
              "p",
              "What comes up depends on how the chromosomes of a tetraploid pair, which is not"
                  + " stated; "
                  + (ways > told
                      ? "of " + ways + " ways the first " + told + " are told."
                      : "each way is answered."))
          .line();
    }
    for (int i = 0; i < told; i++) {
      Scenario scenario = odds.scenarios().get(i);
      String its = several ? id + "-" + (i + 1) : id;
      if (scenario.assuming() != null) {
        html.open("h4", "id", its);
        page.text("If " + scenario.assuming());
        html.close().line();
      }
      scenario(its, odds, scenario, expected.hopes().get(i));
    }
  }

  private void scenario(String id, CrossOdds odds, Scenario scenario, List<Optional<Hope>> hopes) {
    html.open("p", "class", "said").text("Parents ");
    page.words(parent(odds.seed(), scenario.seedGenes()));
    html.text(" × ");
    page.words(parent(odds.pollen(), scenario.pollenGenes()));
    String ratio = scenario.ratio();
    if (ratio != null && ratio.length() <= LONGEST_RATIO) {
      html.text("; ratio " + ratio);
    }
    html.text(".").close().line();
    List<Odds.Share> classes = scenario.classes();
    KindMarks marks = KindMarks.of(classes);
    if (classes.size() == 1) {
      html.open("p").text("All will be ").element("bdi", marks.words(0)).text(".").close().line();
    } else {
      strip(FamilyStrip.of(classes, scenario.exact()));
      classes(id, odds, scenario, marks, hopes);
    }
    if (!scenario.lost().isZero()) {
      html.element(
              "p",
              ChanceWords.about(scenario.lost())
                  + " of the seedlings will die before they can be looked at; the odds are of those"
                  + " that live, and how many to raise or sow is reckoned with those that die.",
              "class",
              "said")
          .line();
    }
    Checkerboard board = scenario.checkerboard();
    if (board != null && CheckerboardTable.isOneCell(board)) {
      return;
    }
    if (board != null && CheckerboardTable.isSmall(board)) {
      CheckerboardTable.write(page, id + "-board", board, marks);
    } else if (board != null) {
      html.element(
              "p",
              "Its checkerboard would have "
                  + board.eggs().size()
                  + " rows and "
                  + board.pollen().size()
                  + " columns, and is left out.",
              "class",
              "said")
          .line();
    }
  }

  private static String parent(String name, @Nullable String genes) {
    return genes == null || genes.isEmpty() || genes.equals(name)
        ? name
        : name + " (" + genes + ")";
  }

  private void strip(FamilyStrip strip) {
    html.open("figure", "class", "expected");
    strip.write(html, !rosetteDefined && strip.size() > 0);
    rosetteDefined |= strip.size() > 0;
    html.element(
            "figcaption",
            strip.size() > 0
                ? "The family to be expected, drawn as " + strip.size() + " seedlings."
                : "The family to be expected, as a bar cut by the shares.")
        .close()
        .line();
  }

  private void classes(
      String id, CrossOdds odds, Scenario scenario, KindMarks marks, List<Optional<Hope>> hopes) {
    page.table(
        id,
        List.of(
            Column.words(String.join(", ", odds.traits())),
            Column.numbers("chance"),
            Column.numbers("per cent"),
            Column.words("in words"),
            Column.numbers(found.rate() == null ? "raise" : "sow")));
    List<String> words =
        ChanceWords.oneIn(scenario.classes().stream().map(Odds.Share::chance).toList());
    for (int kind = 0; kind < scenario.classes().size(); kind++) {
      Odds.Share one = scenario.classes().get(kind);
      html.open("tr").open("th", "scope", "row");
      marks.write(html, kind);
      html.close()
          .element("td", ChanceWords.fraction(one.chance(), scenario.exact()), "class", "number")
          .element("td", glued(ChanceWords.percent(one.chance())), "class", "number")
          .element("td", words.get(kind))
          .element("td", toSow(hopes.get(kind)), "class", "number")
          .close()
          .line();
    }
    page.endTable();
  }

  private static String toSow(Optional<Hope> hope) {
    return hope.map(one -> one.rates().isEmpty() ? one.seedlings() : one.seeds())
        .map(String::valueOf)
        .orElse("not reckoned");
  }

  private static String glued(String text) {
    return text.replace(" %", "\u00A0%");
  }

  private void further(List<Expected> more, Set<String> notes) {
    html.element("h3", "Further traits", "id", "odds-more").line();
    page.table(
        "odds-more",
        List.of(Column.words("trait"), Column.words("ratio"), Column.words("what may come up")));
    for (Expected one : more) {
      notes.addAll(one.odds().notes());
      List<Scenario> ways = one.odds().scenarios();
      for (Scenario scenario : ways.subList(0, Math.min(ways.size(), MOST_WAYS))) {
        String ratio = scenario.ratio();
        html.open("tr")
            .open("th", "scope", "row")
            .element("bdi", String.join(", ", one.odds().traits()))
            .close()
            .element(
                "td", ratio == null || ratio.length() > LONGEST_RATIO ? "" : ratio, "class", "day")
            .open("td");
        page.words(
            shares(scenario) + (scenario.assuming() == null ? "" : ", if " + scenario.assuming()));
        html.close().close().line();
      }
    }
    page.endTable();
  }

  private static String shares(Scenario scenario) {
    List<String> shares = new ArrayList<>();
    for (Odds.Share one : scenario.classes()) {
      shares.add(glued(ChanceWords.percent(one.chance())) + " " + String.join(", ", one.states()));
    }
    return String.join("; ", shares);
  }

  private void notKnown() {
    if (found.notKnown().isEmpty() && found.notModelled().isEmpty()) {
      return;
    }
    html.element("h3", "What is not reckoned").open("ul");
    for (NotKnown one : found.notKnown()) {
      item(String.join(", ", one.traits()), one.why());
    }
    if (!found.notModelled().isEmpty()) {
      item(
          String.join(", ", found.notModelled()),
          "nobody said how "
              + (found.notModelled().size() == 1 ? "it is" : "they are")
              + " inherited");
    }
    html.close().line();
  }

  private void item(String traits, String why) {
    html.open("li").element("bdi", traits).text(": ");
    page.words(why);
    html.text(".").close().line();
  }
}
