import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.File;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Wrote src/main/resources/dev/filial/cli/paper/dejavu-sans.widths from the font files of DejaVu
 * Sans 2.37; no build runs it. {@code java FontWidthTable.java FOLDER OUTPUT}, where FOLDER holds
 * DejaVuSans.ttf and DejaVuSans-Bold.ttf.
 */
public final class FontWidthTable {

  private static final int UNITS = 2048; // the font's own units to its size
  private static final int IN_A_LINE = 32;

  private static final int[][] RANGES = {
    {0x20, 0x7E}, {0xA0, 0x24F}, {0x370, 0x3FF}, {0x400, 0x4FF}, {0x5D0, 0x5EA}, {0x621, 0x64A},
    {0x660, 0x669}, {0x1E00, 0x1EFF}, {0x2010, 0x2027}, {0x2030, 0x205E}, {0x20A0, 0x20B5},
    {0x2100, 0x214F}, {0x2150, 0x215E}, {0x2190, 0x2199}, {0x2200, 0x22FF}, {0x2640, 0x2642},
    {0x2700, 0x2709}
  };

  private FontWidthTable() {}

  public static void main(String[] args) throws Exception {
    System.setProperty("java.awt.headless", "true");
    try (PrintStream out = new PrintStream(args[1], StandardCharsets.UTF_8)) {
      out.println("# Advance widths of DejaVu Sans 2.37, in thousandths of the font size, rounded up.");
      out.println(
          "# A section for each weight; a line holds its first character and the widths from there"
              + " on, - where the font has none.");
      write(out, "regular", new File(args[0], "DejaVuSans.ttf"));
      write(out, "bold", new File(args[0], "DejaVuSans-Bold.ttf"));
    }
  }

  private static void write(PrintStream out, String weight, File file) throws Exception {
    Font font = Font.createFont(Font.TRUETYPE_FONT, file).deriveFont((float) UNITS);
    FontRenderContext exact = new FontRenderContext(null, true, true);
    out.println("= " + weight);
    for (int[] range : RANGES) {
      for (int first = range[0]; first <= range[1]; first += IN_A_LINE) {
        StringBuilder line = new StringBuilder(String.format("%04X", first));
        for (int c = first; c <= Math.min(range[1], first + IN_A_LINE - 1); c++) {
          line.append(' ').append(width(font, exact, c));
        }
        out.println(line);
      }
    }
  }

  private static String width(Font font, FontRenderContext exact, int c) {
    if (!font.canDisplay(c) || Character.getType(c) == Character.UNASSIGNED) {
      return "-";
    }
    double units =
        font.createGlyphVector(exact, Character.toString(c)).getGlyphMetrics(0).getAdvanceX();
    return Integer.toString((int) Math.ceil(units * 1000 / UNITS - 1e-3));
  }
}
