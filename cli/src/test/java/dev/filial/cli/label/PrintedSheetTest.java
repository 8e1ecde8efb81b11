package dev.filial.cli.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.ResultPoint;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import com.google.zxing.qrcode.QRCodeReader;
import dev.filial.core.answer.TagQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.name.TravellingCode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sheets as Chromium prints them, looked at with PDFBox and ZXing: page boxes, where things lie on
 * the paper, and the QR codes.
 */
class PrintedSheetTest {

  private static final double MM = 72 / 25.4;
  private static final double INK = 0.2;
  private static final int DPI = 300;

  @TempDir Path folder;

  private static List<TagQuestion.Label> labels(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(i -> Sheets.label(Code.of(26, i).text(), "agavoides × laui"))
        .toList();
  }

  private static void assertPaper(PDDocument pdf, Size paper, int pages) {
    assertThat(pdf.getNumberOfPages()).isEqualTo(pages);
    for (int i = 0; i < pages; i++) {
      PDRectangle box = pdf.getPage(i).getMediaBox();
      assertThat((double) box.getWidth()).isCloseTo(paper.width() * MM, within(0.5));
      assertThat((double) box.getHeight()).isCloseTo(paper.height() * MM, within(0.5));
    }
  }

  @Test
  void anA4SheetIsAnA4PageAndTheNextLabelTheNextPage() throws Exception {
    LabelSheets sheets =
        LabelSheets.of(
            Sheets.order(LabelStyle.PACKETS, LabelStyle.PACKETS.usual(), false), labels(28));

    try (PDDocument pdf = Printer.print(sheets, folder)) {
      assertPaper(pdf, Size.A4, 2);
    }
  }

  @Test
  void aSheetOfAnotherSizeIsAPageOfThatSize() throws Exception {
    for (Size paper : List.of(Size.LETTER, new Size(62, 29))) {
      LabelGrid grid =
          LabelGrid.of(paper, new Size(62, 29), new LabelGrid.Gap(0, 0), LabelGrid.Asked.NOTHING);
      LabelSheets sheets =
          LabelSheets.of(
              new LabelSheets.Order(LabelStyle.PACKETS, new Size(62, 29), grid, 0, false, false),
              labels(grid.perSheet() + 1));

      try (PDDocument pdf = Printer.print(sheets, folder)) {
        assertPaper(pdf, paper, 2);
      }
    }
  }

  @Test
  void eachCodeStandsWhereItsLabelLies() throws Exception {
    LabelGrid grid =
        LabelGrid.of(
            Size.A4,
            new Size(48.5, 25.4),
            new LabelGrid.Gap(2, 1.5),
            new LabelGrid.Asked(4, 10, 4.5, 13.0));
    LabelSheets sheets =
        LabelSheets.of(
            new LabelSheets.Order(LabelStyle.PACKETS, new Size(48.5, 25.4), grid, 3, false, false),
            labels(37));

    try (PDDocument pdf = Printer.print(sheets, folder)) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(1);
      List<TextPosition> starts = starts(pdf, "26-0");
      assertThat(starts).hasSize(37);
      for (int i = 0; i < 37; i++) {
        int place = i + 3;
        double left = (place % 4) * 50.5 + 4.5 + 1.5;
        double top = Math.floorDiv(place, 4) * 26.9 + 13;
        TextPosition start = starts.get(i);
        assertThat(start.getXDirAdj() / MM).as("label " + i).isCloseTo(left, within(INK));
        assertThat(start.getYDirAdj() / MM).isBetween(top, top + 25.4);
      }
    }
  }

  /** The first letter of each text that begins so, in the order of the page. */
  private static List<TextPosition> starts(PDDocument pdf, String beginning) throws IOException {
    List<TextPosition> starts = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void writeString(String text, List<TextPosition> positions) {
            for (int i = text.indexOf(beginning); i >= 0; i = text.indexOf(beginning, i + 1)) {
              starts.add(positions.get(i));
            }
          }
        };
    stripper.setSortByPosition(true);
    stripper.getText(pdf);
    return starts;
  }

  @Test
  void theQrCodesOnThePaperAreReadAndLieToAFifthOfAMillimetreWhereTheyShould() throws Exception {
    Size tag = LabelStyle.TAGS.usual();
    List<TagQuestion.Label> labels = labels(6);
    LabelSheets.Order order = Sheets.order(LabelStyle.TAGS, tag, true);
    LabelSheets sheets = LabelSheets.of(order, labels);

    try (PDDocument pdf = Printer.print(sheets, folder)) {
      BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(0, 2 * DPI);
      LabelGrid grid = order.grid();
      for (int i = 0; i < labels.size(); i++) {
        // The square of 13 mm before the end that is buried: 29 modules with the white border.
        double left = grid.x(i) + tag.width() * 2 / 3 - 13;
        BufferedImage square = cut(page, left, grid.y(i), 13);
        Result read =
            new QRCodeReader().decode(bitmap(square), Map.of(DecodeHintType.TRY_HARDER, true));
        assertThat(read.getText()).isEqualTo(labels.get(i).machineReadable());
        // The finder pattern at the upper left is in the middle of its seven modules.
        double middle = (4 + 3.5) * 13 / 29;
        ResultPoint upperLeft = read.getResultPoints()[1];
        assertThat(upperLeft.getX() / (2 * DPI) * 25.4).isCloseTo(middle, within(INK));
        assertThat(upperLeft.getY() / (2 * DPI) * 25.4).isCloseTo(middle, within(INK));
      }
    }
  }

  @Test
  void aWholeSheetOfPacketsIsReadFromOnePicture() throws Exception {
    List<TagQuestion.Label> labels = labels(27);
    LabelSheets sheets =
        LabelSheets.of(Sheets.order(LabelStyle.PACKETS, LabelStyle.PACKETS.usual(), true), labels);

    try (PDDocument pdf = Printer.print(sheets, folder)) {
      BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(0, DPI);
      List<String> read = new ArrayList<>();
      for (int i = 0; i < 27; i++) {
        BufferedImage label =
            cut(page, 15 + (i % 3) * 60, 13.5 + Math.floorDiv(i, 3) * 30.0, 60, 30);
        for (Result result :
            new QRCodeMultiReader()
                .decodeMultiple(bitmap(label), Map.of(DecodeHintType.TRY_HARDER, true))) {
          read.add(TravellingCode.parseMachineReadable(result.getText()).code().text());
        }
      }
      assertThat(read).isEqualTo(labels.stream().map(label -> label.code().text()).toList());
    }
  }

  @Test
  void namesOfAnyScriptArePrintedAsTheyAre() throws Exception {
    LabelSheets sheets =
        LabelSheets.of(
            Sheets.order(LabelStyle.PACKETS, LabelStyle.PACKETS.usual(), false),
            List.of(Sheets.label("26-013", "<b>Rosa</b> & \"Lilo\" 'Anna'")));

    try (PDDocument pdf = Printer.print(sheets, folder)) {
      assertThat(new PDFTextStripper().getText(pdf).strip().replaceAll("\\s+", " "))
          .isEqualTo("26-013E <b>Rosa</b> & \"Lilo\" 'Anna'");
    }
  }

  @Test
  void nothingIsPrintedOutsideTheLabels() throws Exception {
    LabelGrid grid =
        LabelGrid.of(
            Size.A4,
            new Size(60, 30),
            new LabelGrid.Gap(0, 0),
            new LabelGrid.Asked(1, 1, 20.0, 40.0));
    String everything = "Wide ".repeat(60) + "🌵🌵 שלום صبار 多肉植物";
    LabelSheets sheets =
        LabelSheets.of(
            new LabelSheets.Order(LabelStyle.PACKETS, new Size(60, 30), grid, 0, false, false),
            List.of(Sheets.label("26-013", everything, "🌵 אגבה صبار 多肉植物 ".repeat(8))));

    try (PDDocument pdf = Printer.print(sheets, folder)) {
      BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(0, DPI);
      int[] box = inked(page);
      double pixel = 25.4 / DPI;
      assertThat(box[0] * pixel).isGreaterThan(20 + 1);
      assertThat(box[1] * pixel).isGreaterThan(40);
      assertThat(box[2] * pixel).isLessThan(80 - 1);
      assertThat(box[3] * pixel).isLessThan(70);
    }
  }

  /** Left, upper, right and lower end of what is not white. */
  private static int[] inked(BufferedImage page) {
    int[] box = {page.getWidth(), page.getHeight(), 0, 0};
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        if ((page.getRGB(x, y) & 0xFF) < 200) {
          box[0] = Math.min(box[0], x);
          box[1] = Math.min(box[1], y);
          box[2] = Math.max(box[2], x);
          box[3] = Math.max(box[3], y);
        }
      }
    }
    assertThat(Arrays.stream(box).sum()).isPositive();
    return box;
  }

  private static BufferedImage cut(BufferedImage page, double x, double y, double side) {
    double pixels = 2 * DPI / 25.4;
    return page.getSubimage(
        (int) Math.round(x * pixels),
        (int) Math.round(y * pixels),
        (int) Math.round(side * pixels),
        (int) Math.round(side * pixels));
  }

  private static BufferedImage cut(
      BufferedImage page, double x, double y, double width, double height) {
    double pixels = DPI / 25.4;
    return page.getSubimage(
        (int) Math.round(x * pixels),
        (int) Math.round(y * pixels),
        (int) Math.round(width * pixels),
        (int) Math.round(height * pixels));
  }

  private static BinaryBitmap bitmap(BufferedImage picture) {
    int width = picture.getWidth();
    int height = picture.getHeight();
    return new BinaryBitmap(
        new HybridBinarizer(
            new RGBLuminanceSource(
                width, height, picture.getRGB(0, 0, width, height, null, 0, width))));
  }
}
