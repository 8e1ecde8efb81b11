package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.AncestryQuestion.Ancestry;
import dev.filial.core.answer.AncestryQuestion.Possibility;
import dev.filial.core.answer.AncestryQuestion.TaxonShare;
import dev.filial.core.answer.CardQuestion.Card;
import dev.filial.core.answer.LikelyShares;
import dev.filial.core.answer.LikelyShares.Likely;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import dev.filial.core.answer.Said;
import dev.filial.core.number.Decimal;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Provenance;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * All of one plant on one page of HTML: a single file that asks for nothing else, on light and on
 * dark, on a telephone and on paper.
 */
public final class PlantPage {

  /**
   * What came of the plant.
   *
   * @param code its code
   * @param what its taxon or its parents
   */
  public record Came(String code, String what) {}

  /**
   * What the page tells.
   *
   * @param card what the register says of the plant
   * @param ancestry who is in it
   * @param behind the plants behind it
   * @param came what came of it
   * @param grower whose register it is
   * @param entries how many entries the register had
   * @param links where other pages lie
   */
  public record Content(
      Card card,
      Ancestry ancestry,
      PlantsBehind behind,
      List<Came> came,
      String grower,
      long entries,
      PageLinks links) {}

  private static final double BAR_WIDTH = 180;
  private static final double BAR_HEIGHT = 18;
  private static final int SIMPLE_BITS = 11;
  private static final double NOTHING = 1e-9;

  private final Content content;
  private final Palette palette;
  private final PageWriter page;
  private final Markup html;

  private PlantPage(Content content) {
    this.content = content;
    this.page = new PageWriter(title(content.card()), content.links());
    this.html = page.html();
    this.palette = new Palette(content.behind().taxa());
  }

  /** The page as the text of a file. */
  public static String of(Content content) {
    return new PlantPage(content).write();
  }

  private String write() {
    header();
    html.open("main").line();
    facts();
    ancestry();
    pedigree();
    history();
    cameOfIt();
    html.close().line();
    return page.end(content.grower(), content.entries());
  }

  private static String title(Card card) {
    return (card.code().text() + " " + String.join(", ", card.names())).strip();
  }

  private void header() {
    Card card = content.card();
    html.open("header").open("h1").element("span", card.code().text(), "class", "code");
    for (String name : card.names()) {
      html.text(" ").element("bdi", name);
    }
    html.close()
        .element("p", card.kind() + ", " + content.ancestry().generationInWords(), "class", "lead")
        .close()
        .line();
  }

  // --- what it is ---

  private void facts() {
    Card card = content.card();
    page.section("what", "What it is");
    html.open("dl");
    page.fact("taxon or parents", card.what());
    page.fact("seed-parent line", content.ancestry().cytoplasm());
    int sets = content.ancestry().ploidy();
    page.fact(
        "chromosome sets",
        sets == 0 ? "differ between the ways it may have come about" : "" + sets);
    Provenance from = card.provenance();
    if (from != null) {
      page.fact("from", from.donor());
      page.fact("its code there", from.donorCode());
      page.fact("field number", from.fieldNumber());
      page.fact("locality", from.locality());
    }
    page.fact("since", card.since());
    page.fact("until", card.until());
    page.fact("how many", card.count());
    page.fact("place", card.place());
    page.fact("what became of it", card.fate());
    html.close().line().close().line();
  }

  // --- who is in it ---

  private void ancestry() {
    Ancestry ancestry = content.ancestry();
    LikelyShares likely = ancestry.likely();
    page.section("who", "Who is in it");
    html.element(
        "p",
        likely == null
            ? "Expected shares of the chromosome sets."
            : "Expected shares of the chromosome sets. "
                + Math.round(10 * likely.chance())
                + " of 10 such seedlings lie within the range; on the bar it is the line with"
                + " two ends.",
        "class",
        "said");
    page.table(
        "who",
        likely == null
            ? List.of("taxon", "share", "bar")
            : List.of("taxon", "share", "likely between", "bar"));
    for (int i = 0; i < ancestry.taxa().size(); i++) {
      TaxonShare one = ancestry.taxa().get(i);
      share(one.taxon(), one.share(), likely != null, likely == null ? null : likely.taxa().get(i));
    }
    if (!ancestry.unknown().isZero()) {
      share(
          Palette.UNKNOWN,
          ancestry.unknown(),
          likely != null,
          likely == null ? null : likely.unknown());
    }
    page.endTable();
    ways();
    page.notes(ancestry.notes());
    html.close().line();
  }

  private void share(String taxon, Fraction share, boolean ranges, @Nullable Likely likely) {
    String percent = glued(share.toPercent(2));
    String range = likely == null ? "" : range(likely);
    html.open("tr")
        .open("th", "scope", "row")
        .element("span", palette.letter(taxon), "class", "code")
        .text(" ")
        .element("bdi", taxon)
        .close()
        .element("td", simple(share) ? share + ", " + percent : percent, "class", "number");
    if (ranges) {
      html.element("td", range, "class", "number");
    }
    html.open("td");
    bar(taxon, share.toDouble(), percent, likely, range);
    html.close().close().line();
  }

  private static String range(Likely likely) {
    return likely.standardDeviation() < NOTHING
        ? "always so"
        : glued(Decimal.text(100 * likely.low(), 0) + " and " + Decimal.percent(likely.high(), 0));
  }

  /** Whether anybody would read it as a fraction: after many crosses it has too many digits. */
  private static boolean simple(Fraction share) {
    return share.denominator().bitLength() <= SIMPLE_BITS;
  }

  /** With no line ending between a number and its sign. */
  private static String glued(String text) {
    return text.replace(" %", "\u00A0%");
  }

  private void bar(
      String taxon, double share, String percent, @Nullable Likely likely, String range) {
    String told =
        palette.letter(taxon)
            + " "
            + taxon
            + " "
            + percent
            + (range.isEmpty() ? "" : ", likely between " + range);
    html.open(
            "svg",
            "xmlns",
            "http://www.w3.org/2000/svg",
            "class",
            "bar",
            "role",
            "img",
            "aria-label",
            told,
            "width",
            PedigreeDrawing.number(BAR_WIDTH + 2),
            "height",
            PedigreeDrawing.number(BAR_HEIGHT),
            "viewBox",
            "-1 0 "
                + PedigreeDrawing.number(BAR_WIDTH + 2)
                + " "
                + PedigreeDrawing.number(BAR_HEIGHT))
        .empty(
            "rect",
            "class",
            "ground",
            "y",
            "1",
            "width",
            PedigreeDrawing.number(BAR_WIDTH),
            "height",
            "8")
        .empty(
            "rect",
            "class",
            "fp-part",
            "y",
            "1",
            "width",
            PedigreeDrawing.number(share * BAR_WIDTH),
            "height",
            "8",
            "fill",
            palette.fill(taxon));
    if (likely != null && likely.standardDeviation() >= NOTHING) {
      String low = PedigreeDrawing.number(likely.low() * BAR_WIDTH);
      String high = PedigreeDrawing.number(likely.high() * BAR_WIDTH);
      html.empty(
          "path",
          "class",
          "range",
          "d",
          "M" + low + " 11v6M" + low + " 14H" + high + "M" + high + " 11v6");
    }
    html.close();
  }

  private void ways() {
    List<Possibility> ways = content.ancestry().possibilities();
    if (ways.isEmpty()) {
      return;
    }
    html.element("h3", "The ways it may have come about", "id", "ways")
        .element("p", "The shares above are the mean over them.", "class", "said");
    page.table("ways", List.of("share", "way", "parents", "what it would be"));
    for (Possibility way : ways) {
      html.open("tr")
          .element("td", glued(way.share().toPercent(1)), "class", "number")
          .element("th", way.route(), "scope", "row")
          .element("td", parents(way), "class", "day")
          .element("td", glued(sum(way)), "class", "words")
          .close()
          .line();
    }
    page.endTable();
  }

  private static String parents(Possibility way) {
    String seed = way.seed() == null ? "?" : way.seed();
    return way.copy()
        ? "again " + seed
        : seed + " × " + (way.pollen() == null ? "?" : way.pollen());
  }

  private static String sum(Possibility way) {
    String taxa =
        way.taxa().stream()
            .map(one -> one.share().toPercent(1) + " " + one.taxon())
            .collect(Collectors.joining(", "));
    String unknown = way.unknown().isZero() ? "" : way.unknown().toPercent(1) + " unknown";
    return taxa.isEmpty() || unknown.isEmpty() ? taxa + unknown : taxa + ", " + unknown;
  }

  // --- the pedigree ---

  private void pedigree() {
    page.section("pedigree", "Pedigree");
    html.open("figure");
    page.wide("pedigree", "drawing");
    html.line();
    PedigreeDrawing.into(content.behind(), html);
    html.close()
        .open("figcaption")
        .text("Parents stand to the left of their offspring, each plant once. ")
        .element("span", "What is wider than the page can be moved sideways.", "class", "screen")
        .close()
        .close()
        .line()
        .close()
        .line();
  }

  // --- what was recorded, and what came of it ---

  private void history() {
    page.section("recorded", "What was recorded of it");
    page.table("recorded", List.of("day", "what the entry says", "entry"));
    for (Said said : byDay()) {
      String mark =
          (said.guess() == null ? "" : " (a guess of " + said.guess() + ")")
              + (said.amended() ? " (amended)" : "");
      html.open("tr")
          .element("td", said.date() == null ? "not known" : said.date().toString(), "class", "day")
          .open("td")
          .element("bdi", said.text() + mark)
          .close()
          .element("td", Long.toString(said.entry()), "class", "number")
          .close()
          .line();
    }
    page.endTable();
    page.endSection();
  }

  /** What speaks of no day stands last. */
  private List<Said> byDay() {
    return content.card().history().stream()
        .sorted(
            Comparator.comparing(
                said -> said.date() == null ? LocalDate.MAX : said.date().earliest()))
        .toList();
  }

  private void cameOfIt() {
    page.section("came", "What came of it");
    if (content.came().isEmpty()) {
      html.element("p", "Nothing so far.");
    } else {
      html.open("ul", "class", "came");
      for (Came one : content.came()) {
        html.open("li");
        page.code(one.code());
        html.text(" ").element("bdi", one.what()).close().line();
      }
      html.close();
    }
    html.line().close().line();
  }
}
