package dev.filial.cli.paper;

import dev.filial.core.name.LineMeasure;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How wide text is in DejaVu Sans, by the advance widths of the font itself; Verdana, which the
 * sheets name next, is much alike. They come with the program, so that a label or a drawing is laid
 * out the same whatever fonts this machine has. What the font lacks is given more than any common
 * font takes: an emoji 1.4 times the font size, another character 1.05 times. Every text of a label
 * is printed with the width reckoned here as its {@code textLength}, so that no browser and no font
 * can make it wider; of the common faces without serifs DejaVu Sans is the widest.
 */
public final class FontWidths {

  /** Height of a capital letter or a digit of DejaVu Sans, as a part of the font size. */
  public static final double CAP_HEIGHT = 0.729;

  /** How far letters reach below the line. */
  public static final double DESCENT = 0.24;

  private static final String ELLIPSIS = "…";
  private static final double EMOJI = 1.4;
  private static final double UNKNOWN = 1.05;
  private static final int KNOWN_END = 0x2800;
  private static final Pattern CLUSTER = Pattern.compile("\\X");
  private static final int EMOJI_PRESENTATION = 0xFE0F;

  /** By character; below 0 where the font has none. */
  private final double[] widths;

  private FontWidths(double[] widths) {
    this.widths = widths;
  }

  /**
   * The widths of both weights.
   *
   * @param regular of the usual one
   * @param bold of the heavy one
   */
  public record Weights(FontWidths regular, FontWidths bold) {

    /** Reads them. */
    public static Weights read() {
      try (InputStream in =
          Objects.requireNonNull(FontWidths.class.getResourceAsStream("dejavu-sans.widths"))) {
        return of(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    private static Weights of(BufferedReader lines) throws IOException {
      double[] regular = none();
      double[] bold = none();
      double[] current = regular;
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (line.startsWith("=")) {
          current = line.endsWith("bold") ? bold : regular;
        } else if (!line.startsWith("#")) {
          String[] words = line.split(" ", -1);
          int first = Integer.parseInt(words[0], 16);
          for (int i = 1; i < words.length; i++) {
            if (!words[i].equals("-")) {
              current[first + i - 1] = Integer.parseInt(words[i]) / 1000.0;
            }
          }
        }
      }
      return new Weights(new FontWidths(regular), new FontWidths(bold));
    }

    private static double[] none() {
      double[] none = new double[KNOWN_END];
      Arrays.fill(none, -1);
      return none;
    }
  }

  /** The width of the text in parts of the font size. */
  public double width(String text) {
    double width = 0;
    int end = 0;
    // Plain letters need no look at what belongs together.
    while (end < text.length() && isPlain(text, end)) {
      width += widths[text.charAt(end)];
      end++;
    }
    if (end == text.length()) {
      return width;
    }
    Matcher clusters = CLUSTER.matcher(text).region(end, text.length());
    while (clusters.find()) {
      width += ofCluster(clusters.group());
    }
    return width;
  }

  /** The width of the text at that font size, in the unit of that. */
  public double width(String text, double fontSize) {
    return width(text) * fontSize;
  }

  /** The text, or as much of it as is not wider, with three dots where it was cut. */
  public String fit(String text, double fontSize, double most) {
    if (width(text) * fontSize <= most) {
      return text;
    }
    LineMeasure measure = at(fontSize);
    return measure.start(text, most - measure.width(ELLIPSIS)).stripTrailing() + ELLIPSIS;
  }

  /** A measure in millimetres at a font size in millimetres. */
  public LineMeasure at(double fontSize) {
    return new LineMeasure() {
      @Override
      public double width(String text) {
        return FontWidths.this.width(text) * fontSize;
      }

      @Override
      public String start(String text, double room) {
        double width = 0;
        Matcher clusters = CLUSTER.matcher(text);
        while (clusters.find()) {
          width += ofCluster(clusters.group()) * fontSize;
          if (width > room) {
            return text.substring(0, clusters.start());
          }
        }
        return text;
      }
    };
  }

  /** A letter of the font that no mark on the next character can turn into something else. */
  private boolean isPlain(String text, int i) {
    char c = text.charAt(i);
    return c < 0x300 && widths[c] >= 0 && (i + 1 == text.length() || text.charAt(i + 1) < 0x300);
  }

  private double ofCluster(String cluster) {
    int first = cluster.codePointAt(0);
    boolean emoji =
        cluster.indexOf(EMOJI_PRESENTATION) >= 0 || (first >= 0x1F000 && first <= 0x1FAFF);
    if (emoji) {
      return EMOJI;
    }
    double width = 0;
    for (int i = 0; i < cluster.length(); i += Character.charCount(cluster.codePointAt(i))) {
      width += ofCharacter(cluster.codePointAt(i));
    }
    return width;
  }

  private double ofCharacter(int c) {
    if (c < KNOWN_END && widths[c] >= 0) {
      return widths[c];
    }
    return switch (Character.getType(c)) {
      case Character.NON_SPACING_MARK,
          Character.ENCLOSING_MARK,
          Character.FORMAT,
          Character.CONTROL ->
          0;
      default -> UNKNOWN;
    };
  }
}
