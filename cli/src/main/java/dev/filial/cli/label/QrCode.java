package dev.filial.cli.label;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A QR code as a drawing, with the white border of four modules that ISO/IEC 18004 asks for.
 *
 * <p>A quarter of it may be lost (level Q), or less (level M) where that makes it smaller and so
 * its modules larger.
 */
final class QrCode {

  /** The white border on every side, in modules. */
  static final int QUIET = 4;

  /** The smallest module, millimetres, that is printed; common practice, no source. */
  static final double SMALLEST_MODULE = 0.33;

  private final ByteMatrix modules;

  private QrCode(ByteMatrix modules) {
    this.modules = modules;
  }

  /** The code of a text of digits and capital letters. */
  static QrCode of(String text) {
    ByteMatrix strong = encoded(text, ErrorCorrectionLevel.Q);
    ByteMatrix small = encoded(text, ErrorCorrectionLevel.M);
    return new QrCode(small.getWidth() < strong.getWidth() ? small : strong);
  }

  private static ByteMatrix encoded(String text, ErrorCorrectionLevel level) {
    try {
      return Encoder.encode(text, level).getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException(
          "\"" + text + "\" cannot be made into a QR code: " + e.getMessage(), e);
    }
  }

  /** Modules along a side, the white border counted in. */
  int side() {
    return modules.getWidth() + 2 * QUIET;
  }

  /**
   * The dark modules as an SVG path, one unit a module, the corner of the white border at 0,0.
   * Drawn as one path, so that no printer shows seams.
   */
  String path() {
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < modules.getHeight(); y++) {
      for (int x = 0; x < modules.getWidth(); ) {
        int end = x;
        while (end < modules.getWidth() && modules.get(end, y) == 1) {
          end++;
        }
        if (end > x) {
          path.append('M').append(x + QUIET).append(' ').append(y + QUIET);
          path.append('h').append(end - x).append("v1h-").append(end - x).append('z');
        }
        x = end + 1;
      }
    }
    return path.toString();
  }
}
