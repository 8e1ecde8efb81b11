package dev.filial.cli.label;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import dev.filial.core.name.Code;
import dev.filial.core.name.GrowersMark;
import dev.filial.core.name.TravellingCode;
import java.util.Arrays;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** QR codes as they are drawn, read back by ZXing's reader. */
class QrCodeTest {

  private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-(\\d+)z");

  /** The path painted into a picture, each module a few pixels. */
  private static int[] painted(QrCode code, int pixels) {
    int width = code.side() * pixels;
    int[] picture = new int[width * width];
    Arrays.fill(picture, 0xFFFFFF);
    Matcher run = RUN.matcher(code.path());
    while (run.find()) {
      int left = Integer.parseInt(run.group(1)) * pixels;
      int top = Integer.parseInt(run.group(2)) * pixels;
      int length = Integer.parseInt(run.group(3)) * pixels;
      for (int y = top; y < top + pixels; y++) {
        Arrays.fill(picture, y * width + left, y * width + left + length, 0);
      }
    }
    return picture;
  }

  private static String read(QrCode code) throws ReaderException {
    int width = code.side() * 4;
    RGBLuminanceSource source = new RGBLuminanceSource(width, width, painted(code, 4));
    return new QRCodeReader()
        .decode(
            new BinaryBitmap(new GlobalHistogramBinarizer(source)),
            Map.of(DecodeHintType.PURE_BARCODE, true))
        .getText();
  }

  @Property(tries = 100)
  void everyTravellingCodeIsReadBack(
      @ForAll @IntRange(max = 99) int year,
      @ForAll @IntRange(min = 1, max = 99_999) int number,
      @ForAll @IntRange(min = 1, max = 9_999) int seedling)
      throws ReaderException {
    TravellingCode code =
        new TravellingCode(new GrowersMark("KLAR"), Code.of(year, number).seedling(seedling));

    String read = read(QrCode.of(code.machineReadable()));

    assertThat(TravellingCode.parseMachineReadable(read)).isEqualTo(code);
  }

  @Test
  void fourModulesOnEverySideStayWhite() {
    // ISO/IEC 18004: the quiet zone is four modules wide (from memory).
    QrCode code = QrCode.of("KB26013EL");
    int width = code.side();
    int[] picture = painted(code, 1);
    for (int y = 0; y < width; y++) {
      for (int x = 0; x < width; x++) {
        if (x < 4 || y < 4 || x >= width - 4 || y >= width - 4) {
          assertThat(picture[y * width + x]).isEqualTo(0xFFFFFF);
        }
      }
    }
    // The corner of a finder pattern touches it.
    assertThat(picture[4 * width + 4]).isZero();
  }

  @Test
  void aShortCodeTakesTheSmallestSymbol() {
    // Version 1 has 21 modules, and at level Q holds 16 letters and digits (ISO/IEC 18004, from
    // memory).
    assertThat(QrCode.of("KB26013EL").side()).isEqualTo(21 + 8);
    assertThat(QrCode.of("A".repeat(16)).side()).isEqualTo(21 + 8);
    assertThat(QrCode.of("A".repeat(20)).side()).isEqualTo(21 + 8);
    assertThat(QrCode.of("A".repeat(21)).side()).isEqualTo(25 + 8);
  }
}
