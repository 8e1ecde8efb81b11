package dev.filial.cli.page;

import static dev.filial.cli.page.Bookshelf.bees;
import static dev.filial.cli.page.Bookshelf.plant;
import static dev.filial.cli.page.FamilyShelf.code;
import static dev.filial.cli.page.FamilyShelf.counted;
import static dev.filial.cli.page.FamilyShelf.everything;
import static dev.filial.cli.page.FamilyShelf.genes;
import static dev.filial.cli.page.FamilyShelf.genotype;
import static dev.filial.cli.page.FamilyShelf.harvested;
import static dev.filial.cli.page.FamilyShelf.pollinated;
import static dev.filial.cli.page.FamilyShelf.selfed;
import static dev.filial.cli.page.FamilyShelf.sown;
import static dev.filial.cli.page.FamilyShelf.tallied;
import static dev.filial.cli.page.FamilyShelf.trait;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.paper.Markup;
import dev.filial.cli.paper.MarkupTest;
import dev.filial.cli.paper.Parsed;
import dev.filial.core.heredity.Odds;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Statement;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NotBlank;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class CrossPageTest {

  private static final String DOCTYPE = "<!DOCTYPE html>\n";

  static String page(List<Statement> register, String family) {
    RegisterView view = Bookshelf.of(register);
    return CrossPage.of(CrossPage.Content.in(view, code(family), PageLinks.NONE));
  }

  private static Parsed parsed(List<Statement> register, String family) {
    String page = page(register, family);
    assertThat(page).startsWith(DOCTYPE);
    return Parsed.of(page.substring(DOCTYPE.length()));
  }

  private static List<String> texts(Parsed page, String tag) {
    return page.all(tag).stream().map(Element::getTextContent).toList();
  }

  /** The section that a heading names. */
  private static Element section(Parsed page, String id) {
    return page.all("section").stream()
        .filter(one -> one.getAttribute("aria-labelledby").equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> cells(Element under, String tag) {
    return Parsed.under(under, tag).stream().map(Element::getTextContent).toList();
  }

  private static List<String> labels(Element under) {
    return Parsed.under(under, "svg").stream()
        .map(one -> one.getAttribute("aria-label"))
        .filter(label -> !label.isEmpty())
        .toList();
  }

  @Test
  void allOfAFamilyStandsUnderItsHeadings() {
    Parsed page = parsed(everything(), "24-010");

    assertThat(texts(page, "h1")).containsExactly("24-010K 24-001W selfed");
    assertThat(texts(page, "h2"))
        .containsExactly(
            "What it is",
            "Who is in it",
            "Pedigree",
            "What it may throw",
            "Its seed, sowings and pots",
            "How it came up",
            "What was counted",
            "Its numbered seedlings",
            "What came of it",
            "What was recorded of it");
    assertThat(cells(section(page, "what"), "dd")).contains("6", "bagged", "4", "1");
    assertThat(cells(section(page, "what"), "td")).contains("24-001W");
    assertThat(cells(section(page, "seed"), "td")).contains("harvested", "700", "~510", "pumice");
    assertThat(cells(section(page, "came"), "li")).containsExactly("25-001R 24-010K-1 selfed");
    assertThat(cells(section(page, "recorded"), "td")).anyMatch(text -> text.contains("harvested"));
  }

  @Test
  void theExpectedFamilyIsDrawnAndToldWithSeedsToSow() {
    Element odds = section(parsed(everything(), "24-010"), "odds");

    assertThat(cells(odds, "h3"))
        .containsExactly("edge", "wax", "edge and wax together", "What is not reckoned");
    assertThat(labels(odds))
        .containsExactly(
            "Of 16 seedlings there are expected: p 12 red; q 4 green",
            "Of 16 seedlings there are expected: p 12 waxy; q 4 bare",
            "Of 16 seedlings there are expected: p 9 red, waxy; q 3 red, bare; r 3 green, waxy;"
                + " s 1 green, bare");
    assertThat(cells(odds, "li")).containsExactly("bloom: nobody said how it is inherited.");
    assertThat(cells(odds, "p").get(0)).contains("Germination is reckoned as", "to sow");
    // One of each kind is drawn of the sixteenth.
    assertThat(Parsed.under(odds, "use")).hasSize(3 * 16);
  }

  @Test
  void theCheckerboardIsATableWithHeadsOnBothSides() {
    Element odds = section(parsed(everything(), "24-010"), "odds");
    List<Element> boards =
        Parsed.under(odds, "table").stream()
            .filter(one -> one.getAttribute("class").equals("board"))
            .toList();

    assertThat(boards).hasSize(3);
    Element two = boards.get(2);
    assertThat(Parsed.under(two, "th").stream().map(one -> one.getAttribute("scope")))
        .containsExactly("col", "col", "col", "col", "col", "row", "row", "row", "row");
    assertThat(cells(two, "td")).hasSize(16).contains("EE WW p red, waxy", "ee ww s green, bare");
  }

  @Test
  void whatWasCountedStandsBesideWhatWasExpected() {
    Element counted = section(parsed(everything(), "24-010"), "counted");

    assertThat(cells(counted, "h3")).containsExactly("bloom", "edge", "What this leans on");
    assertThat(labels(counted))
        .containsExactly(
            "pink: 3 counted",
            "coral: 2 counted",
            "red: 22 counted, 21.75 expected",
            "green: 7 counted, 7.25 expected");
    assertThat(cells(counted, "p"))
        .anyMatch(text -> text.startsWith("Not compared with any expectation: nobody said how"))
        .anyMatch(text -> text.startsWith("The counts fit 3:1."))
        .anyMatch(
            text -> text.startsWith("Tested by chi-square 0.01, 1 degree of freedom; p 0.91"));
    // 30 and 50 came up where it was counted; 29 were looked at.
    assertThat(cells(counted, "li")).anyMatch(text -> text.startsWith("Of 80 seedlings"));
  }

  @Test
  void theCurveTellsWhatTheTableTellsAndGuessesAreLeftOut() {
    Element up = section(parsed(everything(), "24-010"), "came-up");

    assertThat(labels(up))
        .containsExactly(
            "How much of the seed had come up by the days it was counted: S1 10 % by day 7, 75 % by"
                + " day 19; S2 33.3 % by day 7, 83.3 % by day 19");
    assertThat(cells(up, "text")).contains("S1", "S2", "0", "100", "days after sowing");
    assertThat(cells(up, "th")).contains("24-010K S1", "24-010K S2", "all");
    assertThat(cells(up, "td")).contains("4\u00A0by\u00A0day\u00A07, 30\u00A0by\u00A0day\u00A019");
    assertThat(cells(up, "li"))
        .containsExactly("24-010K S3: left out, since how many were sown is a guess.");
    List<String> strokes =
        Parsed.under(up, "path").stream()
            .map(one -> one.getAttribute("stroke-dasharray"))
            .filter(stroke -> !stroke.isEmpty())
            .toList();
    assertThat(strokes).hasSize(2).doesNotHaveDuplicates();
  }

  @Test
  void decimalsOfAColumnStandBelowEachOther() {
    Element up = section(parsed(everything(), "24-010"), "came-up");

    assertThat(cells(up, "td")).contains("75.0", "83.3");
  }

  @Test
  void aColumnOfNumbersIsOneInItsHeadAndInItsRows() {
    Parsed page = parsed(everything(), "24-010");

    assertThat(page.all("table")).hasSizeGreaterThan(8);
    for (Element table : page.all("table")) {
      List<Element> heads = Parsed.under(Parsed.under(table, "thead").get(0), "th");
      for (Element row : Parsed.under(Parsed.under(table, "tbody").get(0), "tr")) {
        List<Element> cells = new ArrayList<>();
        cells.addAll(Parsed.under(row, "th"));
        cells.addAll(Parsed.under(row, "td"));
        assertThat(cells).hasSameSizeAs(heads);
        // In the table of the ways the row is named by its second cell.
        if (row.getFirstChild().getNodeName().equals("th")) {
          for (int i = 0; i < heads.size(); i++) {
            assertThat(cells.get(i).getAttribute("class").equals("number"))
                .as(table.getAttribute("aria-labelledby") + " " + heads.get(i).getTextContent())
                .isEqualTo(heads.get(i).getAttribute("class").equals("number"));
          }
        }
      }
    }
  }

  @Test
  void whereNothingWasTreatedThereIsNoColumnForIt() {
    Element seed = section(parsed(everything(), "24-010"), "seed");

    assertThat(cells(seed, "th")).contains("into").doesNotContain("treated");
  }

  @Test
  void scientificNamesAreItalicAndNothingElseIs() {
    Parsed page = parsed(everything(), "24-010");

    assertThat(page.all("i").stream().map(Element::getTextContent).distinct())
        .isNotEmpty()
        .allMatch(name -> name.matches("Echeveria [a-z]+"));
  }

  @Test
  void seedlingsAreToldWithWhatTheyShowedAndWhatBecameOfThem() {
    Element seedlings = section(parsed(everything(), "24-010"), "seedlings");

    assertThat(cells(seedlings, "th")).contains("24-010K-1", "24-010K-2");
    assertThat(cells(seedlings, "td")).contains("edge red", "kept", "discarded");
  }

  @Test
  void aCrossOfWhichNothingElseIsRecordedSaysSo() {
    List<Statement> register =
        List.of(plant("24-001", "Echeveria laui"), selfed("24-010", "24-001"));
    Parsed page = parsed(register, "24-010");

    for (String empty : List.of("seed", "came-up", "counted", "seedlings")) {
      assertThat(cells(section(page, empty), "p")).containsExactly("Nothing recorded.");
    }
    assertThat(cells(section(page, "odds"), "p")).singleElement().asString().startsWith("Nothing");
  }

  @Test
  void whoListensFindsTheirWay() {
    Parsed page = parsed(everything(), "24-010");

    for (String landmark : List.of("header", "main", "footer")) {
      assertThat(page.all(landmark)).hasSize(1);
    }
    assertThat(page.all("th"))
        .allMatch(one -> !one.getAttribute("scope").isEmpty())
        .allMatch(one -> !one.getTextContent().isBlank());
    assertThat(page.all("svg"))
        .allMatch(
            one ->
                one.getAttribute("aria-hidden").equals("true")
                    || (one.getAttribute("role").equals("img")
                        && (one.hasAttribute("aria-label")
                            || one.hasAttribute("aria-labelledby"))));
    List<String> ids =
        page.all("*").stream()
            .map(one -> one.getAttribute("id"))
            .filter(id -> !id.isEmpty())
            .toList();
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(page.all("*").stream().map(one -> one.getAttribute("aria-labelledby")))
        .allMatch(names -> names.isEmpty() || ids.containsAll(List.of(names.split(" ", -1))));
    assertThat(page.all("div", "wide")).allMatch(one -> one.getAttribute("tabindex").equals("0"));
    int before = 1;
    for (Element one : page.all("*")) {
      if (one.getTagName().matches("h[1-6]")) {
        int level = one.getTagName().charAt(1) - '0';
        assertThat(level).isLessThanOrEqualTo(before + 1);
        before = level;
      }
    }
  }

  @Test
  void thePageAsksTheNetworkForNothingAndItsStylesAndScriptNeedNoEscapes() {
    String page = page(everything(), "24-010");

    assertThat(
            page.replace("http://www.w3.org/1999/xhtml", "")
                .replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http")
        .doesNotContain("@import")
        .doesNotContain("<script ")
        .doesNotContain("src=")
        .doesNotContain("<link");
    Parsed parsed = parsed(everything(), "24-010");
    for (String tag : List.of("style", "script")) {
      assertThat(parsed.all(tag))
          .isNotEmpty()
          .allSatisfy(one -> assertThat(one.getTextContent()).doesNotContain("&", "<", ">"));
    }
  }

  /** What is drawn is told apart from what it lies on: WCAG 2.2, 1.4.11. */
  @Test
  void theEdgesOfWhatIsDrawnStandOutOnLightAndOnDark() {
    assertThat(Contrast.between(Ink.STROKE, Ink.PAPER)).isGreaterThan(3);
    assertThat(Contrast.between(Ink.DARK_STROKE, Ink.DARK_PAPER)).isGreaterThan(3);
    assertThat(Contrast.between(Ink.TEXT, Ink.PAPER)).isGreaterThan(4.5);
  }

  @Test
  void whatATetraploidThrowsIsAnsweredForEachWayItMayPair() {
    Element odds = section(parsed(FamilyShelf.tetraploid(), "24-010"), "odds");

    assertThat(cells(odds, "h4")).hasSize(3).allMatch(text -> text.startsWith("If "));
    // A duplex selfed throws one in 36 where any two chromosomes pair.
    assertThat(labels(odds)).contains("Of 36 seedlings there are expected: p 35 red; q 1 green");
    assertThat(cells(odds, "p")).contains("All will be red.");
  }

  @Test
  void ofSeveralPollensEachStandsWithItsShareAndTheOddsAreMixed() {
    List<Statement> register = new ArrayList<>(genes("Rosa"));
    register.add(plant("24-002", "Echeveria agavoides"));
    register.add(plant("24-003", "Echeveria elegans"));
    register.add(genotype("24-002", "EE", "edge"));
    register.add(genotype("24-003", "ee", "edge"));
    register.add(pollinated("24-010", "24-001", bees("24-002", "24-003"), Fraction.ZERO));

    Parsed page = parsed(register, "24-010");

    assertThat(cells(section(page, "what"), "td"))
        .contains("24-002X", "37.5\u00A0%", "25\u00A0%", "nobody knows which");
    assertThat(cells(section(page, "what"), "li")).contains("open pollinated");
    // Half of the known pollen is E throughout: 1/2 + 1/4.
    assertThat(labels(section(page, "odds")))
        .containsExactly("Of 16 seedlings there are expected: p 12 red; q 4 green");
    assertThat(Parsed.under(section(page, "odds"), "table")).hasSize(1);
  }

  @Test
  void aPacketHasAPageThatSaysWhyNothingIsExpected() {
    List<Statement> register = new ArrayList<>(genes("Rosa"));
    register.add(
        new SeedAcquired(
            code("24-020"),
            Determination.of("Echeveria laui"),
            new Provenance("Lena Muster", null, "XM 1", null),
            null,
            Count.of(30),
            null,
            null));

    Parsed page = parsed(register, "24-020 H1");

    assertThat(texts(page, "h1")).singleElement().asString().startsWith("24-020");
    assertThat(cells(section(page, "what"), "dd")).contains("Lena Muster", "XM 1");
    assertThat(cells(section(page, "odds"), "li"))
        .hasSize(2)
        .anyMatch(text -> text.startsWith("edge, wax: ") && text.contains("packet of seed"));
  }

  /** Counts: Mendel 1866, Versuche über Pflanzenhybriden; statistics: R 4.2.2, chisq.test. */
  @Test
  void mendelsPeasStandOnThePageAsTheyWereTested() {
    List<Statement> register = new ArrayList<>(genes("Rosa"));
    register.add(new TraitDeclared("pea", List.of("a", "b", "c", "d"), null, null, null, null));
    register.add(
        new ModelDeclared(
            "pea",
            List.of("edge", "wax"),
            List.of(
                ModelDeclared.Row.of("E_ W_", "a"),
                ModelDeclared.Row.of("E_ ww", "b"),
                ModelDeclared.Row.of("ee W_", "c"),
                ModelDeclared.Row.of("ee ww", "d")),
            null));
    register.add(selfed("24-010", "24-001"));
    register.add(harvested("24-010 H1", 700));
    register.add(sown("24-010 S1", "24-010 H1", "600"));
    register.add(counted("24-010 S1", "2024-06-20", "556"));
    register.add(tallied("24-010 S1", "pea", "a", 315, "b", 108, "c", 101, "d", 32));

    Element counted = section(parsed(register, "24-010"), "counted");

    // R: chi-square 0.4700239808, p 0.9254258951; expected 556 × 9/16 = 312.75 and so on.
    assertThat(cells(counted, "p"))
        .anyMatch(
            text -> text.startsWith("Tested by chi-square 0.47, 3 degrees of freedom; p 0.93"));
    assertThat(labels(counted))
        .containsExactly(
            "a: 315 counted, 312.75 expected",
            "b: 108 counted, 104.25 expected",
            "c: 101 counted, 104.25 expected",
            "d: 32 counted, 34.75 expected");
    // All that came up were looked at, so no doubt is told.
    assertThat(cells(counted, "li")).isEmpty();
  }

  @Test
  void ofManyTraitsMostAreToldInShort() {
    List<Statement> register = new ArrayList<>();
    register.add(plant("24-001", "Echeveria laui"));
    for (int i = 0; i < 50; i++) {
      String allele = String.valueOf((char) ('A' + i % 26)) + (i < 26 ? "" : "x");
      String name = "trait%02d".formatted(i);
      String low = allele.toLowerCase(Locale.ROOT);
      register.addAll(trait(name, "big", "small", allele));
      register.add(genotype("24-001", allele + low, name));
    }
    register.add(selfed("24-010", "24-001"));

    Element odds = section(parsed(register, "24-010"), "odds");

    assertThat(cells(odds, "h3")).hasSize(13).contains("Further traits");
    assertThat(labels(odds)).hasSize(12);
    assertThat(cells(odds, "th")).contains("trait00", "trait49");
  }

  @Property(tries = 40)
  void aNameIsTextWhateverItIs(@ForAll @NotBlank @StringLength(max = 40) String name) {
    List<Statement> register = new ArrayList<>(genes(name));
    register.add(selfed("24-010", "24-001"));
    String kept =
        MarkupTest.holdable(
            Bookshelf.of(register).item(code("24-001")).orElseThrow().names().get(0));

    Parsed page = parsed(register, "24-010");

    assertThat(page.all("section")).hasSize(10);
    assertThat(page.all("bdi").stream().map(Element::getTextContent)).contains(kept);
  }

  @Property(tries = 200)
  void aStripHasEachKindInItsExactShare(
      @ForAll @Size(min = 2, max = 9) List<@IntRange(min = 1, max = 40) Integer> parts) {
    int all = parts.stream().mapToInt(Integer::intValue).sum();
    List<Odds.Share> classes = new ArrayList<>();
    for (int part : parts) {
      classes.add(new Odds.Share(List.of("kind" + classes.size()), Fraction.of(part, all)));
    }

    FamilyStrip strip = FamilyStrip.of(classes, true);

    if (strip.size() > 0) {
      assertThat(strip.size()).isBetween(9, 64);
      for (int kind = 0; kind < parts.size(); kind++) {
        assertThat(Fraction.of(strip.seedlings().get(kind), strip.size()))
            .isEqualTo(classes.get(kind).chance());
      }
    }
    // The parts of a bar fill it, and no more.
    Markup html = new Markup();
    FamilyStrip.of(classes, false).write(html, false);
    Parsed bar = Parsed.of(html.written());
    double width =
        bar.all("rect").stream()
            .mapToDouble(one -> Double.parseDouble(one.getAttribute("width")))
            .sum();
    assertThat(width).isBetween(384 - 0.1, 384 + 0.1);
  }

  private static Fraction chance(Element head) {
    String text = head.getTextContent();
    return Fraction.parse(text.substring(text.lastIndexOf(' ') + 1));
  }

  /** Of any two parents the cells of the checkerboard, added up by kind, are the odds above it. */
  @Property(tries = 60)
  void theCellsOfTheCheckerboardAddUpToTheOdds(
      @ForAll @Size(4) List<@IntRange(max = 2) Integer> dominants) {
    List<Statement> register = new ArrayList<>(trait("edge", "red", "green", "E"));
    register.addAll(trait("wax", "waxy", "bare", "W"));
    for (int parent = 0; parent < 2; parent++) {
      String plant = "24-00" + (parent + 1);
      register.add(plant(plant, "Echeveria laui"));
      String edge = List.of("ee", "Ee", "EE").get(dominants.get(2 * parent));
      String wax = List.of("ww", "Ww", "WW").get(dominants.get(2 * parent + 1));
      register.add(genotype(plant, edge + " " + wax, "edge", "wax"));
    }
    register.add(
        pollinated("24-010", "24-001", new Pollen.OnePlant(code("24-002")), Fraction.ZERO));

    Element odds = section(parsed(register, "24-010"), "odds");

    for (Element table : Parsed.under(odds, "table")) {
      if (!table.getAttribute("class").equals("board")) {
        continue;
      }
      List<Element> rows = Parsed.under(table, "tr");
      List<Element> columns = Parsed.under(rows.get(0), "th");
      Map<String, Fraction> sums = new LinkedHashMap<>();
      Fraction all = Fraction.ZERO;
      for (Element row : rows.subList(1, rows.size())) {
        Fraction egg = chance(Parsed.under(row, "th").get(0));
        List<Element> cells = Parsed.under(row, "td");
        for (int i = 0; i < cells.size(); i++) {
          Fraction both = egg.times(chance(columns.get(i + 1)));
          String kind = Parsed.under(cells.get(i), "bdi").get(0).getTextContent();
          sums.merge(kind, both, Fraction::plus);
          all = all.plus(both);
        }
      }
      assertThat(all).isEqualTo(Fraction.ONE);
      // The table above a board is that of the same odds; without one, all are of one kind.
      List<Element> tables = Parsed.under(odds, "table");
      int at = tables.indexOf(table);
      if (sums.size() > 1) {
        for (Element row : Parsed.under(tables.get(at - 1), "tr")) {
          List<Element> cells = Parsed.under(row, "td");
          if (!cells.isEmpty()) {
            String kind = Parsed.under(row, "bdi").get(0).getTextContent();
            assertThat(sums).containsEntry(kind, Fraction.parse(cells.get(0).getTextContent()));
          }
        }
      }
    }
  }

  @Test
  void ofManySowingsTheFirstSixAreDrawnAndAllStandInTheTable() {
    List<Statement> register = new ArrayList<>(genes("Rosa"));
    register.add(selfed("24-010", "24-001"));
    register.add(harvested("24-010 H1", 700));
    for (int i = 1; i <= 8; i++) {
      register.add(sown("24-010 S" + i, "24-010 H1", "20"));
      register.add(counted("24-010 S" + i, "2024-06-08", String.valueOf(i)));
      register.add(counted("24-010 S" + i, "2024-06-20", "15"));
    }

    Element up = section(parsed(register, "24-010"), "came-up");

    assertThat(cells(up, "figcaption").get(0)).contains("the first 6 of 8 sowings");
    assertThat(cells(up, "th")).contains("24-010K S8");
    // All ended alike, and yet no two names stand in one place.
    List<String> heights =
        Parsed.under(up, "text").stream()
            .filter(one -> one.getAttribute("class").equals("name"))
            .map(one -> one.getAttribute("y"))
            .toList();
    assertThat(heights).hasSize(6).doesNotHaveDuplicates();
  }
}
