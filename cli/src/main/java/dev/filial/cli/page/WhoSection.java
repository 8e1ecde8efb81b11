package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.AncestryQuestion.Ancestry;
import dev.filial.core.answer.AncestryQuestion.Possibility;
import dev.filial.core.answer.AncestryQuestion.TaxonShare;
import dev.filial.core.answer.LikelyShares;
import dev.filial.core.answer.LikelyShares.Likely;
import dev.filial.core.number.Decimal;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The part of a page that tells who is in a plant, or in a seedling of a cross: the expected shares
 * as a table and as bars with their likely range, and the ways it may have come about.
 */
final class WhoSection {

  private static final double BAR_WIDTH = 180;
  private static final double BAR_HEIGHT = 18;
  private static final int SIMPLE_BITS = 11;
  private static final double NOTHING = 1e-9;

  private final PageWriter page;
  private final Markup html;
  private final Ancestry ancestry;
  private final Palette palette;

  /**
   * On this page.
   *
   * @param ancestry who is in it
   * @param palette the letters and fills of the taxa, as the drawing beside it has them
   */
  WhoSection(PageWriter page, Ancestry ancestry, Palette palette) {
    this.page = page;
    this.html = page.html();
    this.ancestry = ancestry;
    this.palette = palette;
  }

  /** Writes it. */
  void write() {
    LikelyShares likely = ancestry.likely();
    page.section("who", "Who is in it");
    html.element(
        "p",
        likely == null || isAlwaysSo(likely)
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
            ? List.of(Column.words("taxon"), Column.numbers("share"), Column.words("bar"))
            : List.of(
                Column.words("taxon"),
                Column.numbers("share"),
                Column.numbers("likely between"),
                Column.words("bar")));
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
        .text(" ");
    page.words(taxon);
    html.close();
    page.number(simple(share) && !share.isOne() ? share + ", " + percent : percent);
    if (ranges) {
      page.number(range);
    }
    html.open("td");
    bar(taxon, share.toDouble(), percent, likely, range);
    html.close().close().line();
  }

  private static boolean isAlwaysSo(LikelyShares likely) {
    Likely unknown = likely.unknown();
    return (unknown == null || unknown.standardDeviation() < NOTHING)
        && likely.taxa().stream().allMatch(one -> one.standardDeviation() < NOTHING);
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
    page.bar(told, BAR_WIDTH, BAR_HEIGHT);
    html.empty(
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
    List<Possibility> ways = ancestry.possibilities();
    if (ways.isEmpty()) {
      return;
    }
    html.element("h3", "The ways it may have come about", "id", "ways")
        .element("p", "The shares above are the mean over them.", "class", "said");
    page.table(
        "ways",
        List.of(
            Column.numbers("share"),
            Column.words("way"),
            Column.words("parents"),
            Column.words("what it would be")));
    for (Possibility way : ways) {
      html.open("tr")
          .element("td", glued(way.share().toPercent(1)), "class", "number")
          .element("th", way.route(), "scope", "row")
          .element("td", parents(way), "class", "day")
          .open("td", "class", "words");
      page.words(glued(sum(way)));
      html.close().close().line();
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
}
