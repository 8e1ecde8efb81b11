package dev.filial.cli.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.cli.paper.FontWidths;
import dev.filial.core.answer.TagQuestion;
import dev.filial.core.name.LabelFacts;
import dev.filial.core.name.TagDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** What stands on labels and in which size, and that the file says it whatever the names are. */
class LabelSheetsTest {

  private static final Size PACKET = LabelStyle.PACKETS.usual();
  private static final Size TAG = LabelStyle.TAGS.usual();

  private static LabelSheets packets(TagQuestion.Label... labels) {
    return LabelSheets.of(Sheets.order(LabelStyle.PACKETS, PACKET, false), List.of(labels));
  }

  private static LabelSheets tags(Size size, TagQuestion.Label... labels) {
    return LabelSheets.of(Sheets.order(LabelStyle.TAGS, size, false), List.of(labels));
  }

  @Test
  void theCodeOfATagStandsOnBothSidesAndOnTheEndThatIsBuried() {
    Document document = Sheets.parsed(tags(TAG, Sheets.label("26-013 H2", "agavoides × laui")));

    List<Element> codes = Sheets.texts(document, "code");
    assertThat(codes).hasSize(4).allMatch(text -> text.getTextContent().equals("26-013E H2"));
    // Two of them in the last third, one on each side of the fold.
    List<Element> buried =
        codes.stream().filter(text -> Sheets.number(text, "x") > TAG.width() * 2 / 3).toList();
    assertThat(buried).hasSize(2);
    assertThat(Sheets.number(buried.get(0), "y")).isLessThan(13);
    assertThat(Sheets.number(buried.get(1), "y")).isBetween(13.0, 26.0);
  }

  @Test
  void theCodeIsReadAtArmsLengthWhereTheLabelHasRoom() {
    assertThat(packets(Sheets.label("26-013 H2", "Lilo")).printed().get(0).codeHeight())
        .isGreaterThanOrEqualTo(4);
    assertThat(tags(TAG, Sheets.label("26-013-40", "Lilo")).printed().get(0).codeHeight())
        .isGreaterThanOrEqualTo(4);
    // Ten millimetres leave the rest little room: the code is served first.
    assertThat(
            tags(new Size(95, 10), Sheets.label("26-013-40", "Lilo")).printed().get(0).codeHeight())
        .isGreaterThanOrEqualTo(4);
  }

  @Test
  void aCodeBelowTwoMillimetresIsNamed() {
    LabelSheets narrow =
        LabelSheets.of(
            Sheets.order(LabelStyle.PACKETS, new Size(16, 12), false),
            List.of(Sheets.label("26-013-40"), Sheets.label("26-013")));

    assertThat(narrow.small()).containsExactly("26-013E-40");
  }

  @Test
  void aLabelOnWhichNoCodeCanBeReadIsRefused() {
    assertThatThrownBy(
            () ->
                LabelSheets.of(
                    Sheets.order(LabelStyle.PACKETS, new Size(9, 9), false),
                    List.of(Sheets.label("26-013-40"))))
        .hasMessageContaining("on a label of 9 × 9 mm the code 26-013E-40 would be 0.")
        .hasMessageContaining("printed 1 mm high or more");
  }

  @Test
  void aTagTooShortForTheCodeOnItsBuriedEndIsWarnedOfOrRefused() {
    // A third of 40 mm, less 1.5 mm at either end: 10.3 mm for ten letters.
    LabelSheets small = tags(new Size(40, 13), Sheets.label("26-013-40"));
    assertThat(small.smallWhenBuried()).containsExactly("26-013E-40");
    assertThat(small.small()).isEmpty();
    assertThatThrownBy(() -> tags(new Size(30, 13), Sheets.label("26-013-40")))
        .hasMessageContaining("mm high on the end that is buried");
  }

  @Test
  void aTagThatWouldStandUprightIsRefused() {
    assertThatThrownBy(() -> tags(new Size(13, 95), Sheets.label("26-013")))
        .hasMessageContaining("write the longer side first: 95x13");
  }

  @Test
  void aQrCodeTooFineToPrintIsRefusedWithTheNumbers() {
    assertThatThrownBy(
            () ->
                LabelSheets.of(
                    Sheets.order(LabelStyle.PACKETS, new Size(60, 9), true),
                    List.of(Sheets.label("26-013"))))
        // 21 modules and 4 on either side: 29 × 0.33 = 9.57.
        .hasMessageContaining("takes 9.6 mm with its white border")
        .hasMessageContaining("this label has room for 9 mm");
  }

  @Test
  void aRegisterWithoutAMarkHasNoQrCodes() {
    TagQuestion.Label marked = Sheets.label("26-013");

    assertThatThrownBy(
            () ->
                LabelSheets.of(
                    Sheets.order(LabelStyle.PACKETS, PACKET, true),
                    List.of(new TagQuestion.Label(marked.code(), marked.facts(), "", Set.of()))))
        .hasMessageContaining("this register has none");
  }

  @Test
  void usedPlacesStayEmpty() {
    LabelSheets.Order order = Sheets.order(LabelStyle.PACKETS, PACKET, false);
    LabelSheets.Order skipping =
        new LabelSheets.Order(order.style(), order.side(), order.grid(), 4, false, false);

    String html = Sheets.html(LabelSheets.of(skipping, List.of(Sheets.label("26-013"))));

    // The second column of the second row: 15 + 60, 13.5 + 30.
    assertThat(html).contains("translate(75 43.5)").containsOnlyOnce("<g ");
  }

  @Test
  void moreUsedPlacesThanASheetHasAreRefused() {
    LabelSheets.Order order = Sheets.order(LabelStyle.PACKETS, PACKET, false);

    assertThatThrownBy(
            () ->
                new LabelSheets.Order(order.style(), order.side(), order.grid(), 27, false, false))
        .hasMessage("27 places cannot be skipped: a sheet has 27, 3 across and 9 down");
  }

  @Test
  void whatThereIsNoRoomForIsSaid() {
    LabelFacts facts =
        LabelFacts.of("26-013E")
            .withParentsOrTaxon(List.of("Echeveria agavoides × E. laui"))
            .withFieldNumber("XM 014")
            .withDate(new TagDate(2026, 3, 4))
            .withRemarks(List.of("x".repeat(200)));
    TagQuestion.Label label =
        new TagQuestion.Label(Sheets.label("26-013").code(), facts, "KB26013EL", Set.of());

    assertThat(packets(label).printed().get(0).leftOut()).containsExactly("x".repeat(200));
    // Six millimetres hold the code alone.
    LabelSheets low =
        LabelSheets.of(Sheets.order(LabelStyle.PACKETS, new Size(60, 6), false), List.of(label));
    assertThat(low.printed().get(0).lines()).isEmpty();
    assertThat(low.printed().get(0).leftOut())
        .containsExactly("Echeveria agavoides × E. laui", "XM 014", "4 MAR 26", "x".repeat(200));
  }

  @Test
  void aNameThatMustBeCutIsSaidToBe() {
    String name = "Echeveria " + "longissima ".repeat(90).strip();

    LabelSheets.Printed printed = packets(Sheets.label("26-013", name)).printed().get(0);

    assertThat(printed.lines()).anyMatch(line -> line.endsWith("…"));
    assertThat(printed.leftOut()).hasSize(1);
    assertThat(printed.leftOut().get(0)).endsWith(" longissima, the end of " + name);
  }

  @Test
  void aNameThatIsCutInAnySizeMakesTheRestNoSmallerThanItHasToBe() {
    Document document = Sheets.parsed(packets(Sheets.label("26-013", "W".repeat(300))));

    assertThat(Sheets.number(Sheets.texts(document, "line").get(0), "font-size"))
        .isBetween(2.3, 2.4);
  }

  /** What would not fit in small letters either has no say in how large the others are. */
  @Test
  void aNameForWhichThereIsNoRoomMakesTheRestNoSmaller() {
    TagQuestion.Label plain = Sheets.label("26-013", "Echeveria laui");
    TagQuestion.Label named =
        new TagQuestion.Label(
            plain.code(),
            plain.facts().withRemarks(List.of("x".repeat(300))),
            plain.machineReadable(),
            plain.taxa());

    assertThat(fontSize(packets(named))).isEqualTo(fontSize(packets(plain))).isGreaterThan(4);
    assertThat(packets(named).printed().get(0).leftOut()).containsExactly("x".repeat(300));
  }

  private static double fontSize(LabelSheets sheets) {
    return Sheets.number(Sheets.texts(Sheets.parsed(sheets), "line").get(0), "font-size");
  }

  @Test
  void theCodesOfASheetHaveOneSizeUnlessOneIsMuchLonger() {
    TagQuestion.Label narrow = Sheets.label("26-013 H1");
    TagQuestion.Label wide = Sheets.label("26-004 H4");
    TagQuestion.Label longest = Sheets.label("26-123456 H44");
    double alone = packets(narrow).printed().get(0).codeHeight();

    assertThat(packets(narrow, wide).printed().stream().map(LabelSheets.Printed::codeHeight))
        .hasSize(2)
        .containsOnly(packets(wide).printed().get(0).codeHeight());
    List<LabelSheets.Printed> mixed = packets(narrow, longest).printed();
    assertThat(mixed.get(0).codeHeight()).isEqualTo(alone);
    assertThat(mixed.get(1).codeHeight()).isLessThan(0.8 * alone);
  }

  @Test
  void scientificNamesAreItalicAndAsWideAsUprightOnes() {
    Document italic = Sheets.parsed(packets(Sheets.label("26-013", "E. laui 'Rosa'")));

    Element line = Sheets.texts(italic, "line").get(0);
    assertThat(line.getTextContent()).isEqualTo("E. laui 'Rosa'");
    List<String> taxa = new ArrayList<>();
    for (int i = 0; i < line.getElementsByTagName("tspan").getLength(); i++) {
      taxa.add(line.getElementsByTagName("tspan").item(i).getTextContent());
    }
    assertThat(taxa).containsExactly("E. laui");
    assertThat(Sheets.number(line, "textLength"))
        .isCloseTo(
            FontWidths.Weights.read()
                .regular()
                .width("E. laui 'Rosa'", Sheets.number(line, "font-size")),
            within(0.01));
  }

  static List<String> hardNames() {
    return List.of(
        "Echeveria " + "x".repeat(290),
        "W".repeat(300),
        "<b>Rosa</b> & \"Lilo\" 'Anna' ]]> --> </text></svg>",
        "🌵🌵 Kaktusfreund 👩‍🌾 🇲🇽 ".repeat(12),
        "אגבה כחולה ".repeat(27),
        "صبار أزرق ".repeat(30),
        "多肉植物".repeat(75),
        "e\u0301".repeat(150),
        "Ligature ﬁ Ǆ ᾳ ™ ½ ♀ × ♂",
        "turned \u202Eround\u202C and \u2067closed\u2069",
        "lone \uD83C surrogate \uDF35 and \uFFFF \u0007");
  }

  @ParameterizedTest
  @MethodSource("hardNames")
  void everyTextLiesInsideItsLabelAndBesideTheQrCode(String name) {
    for (LabelStyle style : LabelStyle.values()) {
      Size size = style.usual();
      LabelSheets sheets =
          LabelSheets.of(
              Sheets.order(style, size, true),
              List.of(Sheets.label("26-013", name), Sheets.label("26-013-7", name, "Lilo")));

      Document document = Sheets.parsed(sheets);

      for (String kind : List.of("code", "line")) {
        for (Element text : Sheets.texts(document, kind)) {
          double end = Sheets.number(text, "x") + Sheets.number(text, "textLength");
          double y = Sheets.number(text, "y");
          assertThat(end).as(text.getTextContent()).isLessThanOrEqualTo(size.width() - 1.4);
          assertThat(y).isLessThan(style.onPaper(size).height());
        }
      }
      for (Element line : Sheets.texts(document, "line")) {
        double end = Sheets.number(line, "x") + Sheets.number(line, "textLength");
        assertThat(end).isLessThanOrEqualTo(qrLeft(document));
        assertThat(line.getTextContent()).isNotBlank();
      }
    }
  }

  private static double qrLeft(Document document) {
    double left = Double.MAX_VALUE;
    var paths = document.getElementsByTagName("path");
    for (int i = 0; i < paths.getLength(); i++) {
      Element path = (Element) paths.item(i);
      if (path.getAttribute("class").equals("qr")) {
        String moved = path.getAttribute("transform");
        left = Math.min(left, Double.parseDouble(moved.substring(10, moved.indexOf(' '))));
      }
    }
    assertThat(left).isLessThan(1000);
    return left;
  }

  @Property(tries = 300)
  void whatIsOnTheLabelReadsBackFromTheFile(@ForAll("names") String name) {
    LabelSheets sheets = packets(Sheets.label("26-013", name));

    List<String> read =
        Sheets.texts(Sheets.parsed(sheets), "line").stream().map(Element::getTextContent).toList();

    List<String> written =
        sheets.printed().get(0).lines().stream().filter(line -> !line.isEmpty()).toList();
    assertThat(read).isEqualTo(written);
  }

  @Property(tries = 300)
  void anyTextWhateverGivesAFileThatParses(@ForAll String name) {
    assertThat(Sheets.texts(Sheets.parsed(packets(Sheets.label("26-013", name))), "code"))
        .hasSize(1);
  }

  /** Names of characters that XML has and that turn nothing round. */
  @Provide
  Arbitrary<String> names() {
    return Arbitraries.of(
            "<>&\"' ;#]!-/abcW×ÄéßשלוםعرجΩж東🌵♀\uE000\uFDCF"
                .codePoints()
                .mapToObj(Character::toString)
                .toList())
        .list()
        .ofMinSize(1)
        .ofMaxSize(80)
        .map(characters -> String.join("", characters));
  }
}
