package dev.filial.core.spreadsheet;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * How a table was written to its file: in which letters, and what parts its columns.
 *
 * @param charset the letters
 * @param mark how many bytes at the beginning only say so (a byte-order mark)
 * @param separator what stands between two columns
 * @param stated whether a first line {@code sep=;} says so, which is no row
 */
public record SheetForm(Charset charset, int mark, char separator, boolean stated) {

  /** What files of older spreadsheets in western Europe are written in. */
  private static final Charset WESTERN = Charset.forName("windows-1252");

  private static final String SEPARATORS = ",;\t";
  private static final int BUFFER = 1 << 16;

  /** How the file is written, in words. */
  public String inWords() {
    return letters() + ", columns parted by " + separatorInWords();
  }

  private String letters() {
    if (charset.equals(WESTERN)) {
      return "windows-1252 (it is not UTF-8, so it is read as older spreadsheets write)";
    }
    return charset.name() + (mark > 0 ? " with a byte-order mark" : "");
  }

  private String separatorInWords() {
    return switch (separator) {
      case '\t' -> "tabs";
      case ';' -> "semicolons";
      default -> "commas";
    };
  }

  /**
   * Looks at a file: once through the whole of it, since its first letter outside ASCII may stand
   * in the last row.
   *
   * @throws SheetException if it is empty, or no text at all
   * @throws IOException if it cannot be read
   */
  static SheetForm of(Path file) throws IOException {
    byte[] beginning;
    try (InputStream in = Files.newInputStream(file)) {
      beginning = in.readNBytes(BUFFER);
    }
    if (beginning.length == 0) {
      throw new SheetException(file + " is empty; save the table again as CSV");
    }
    requireText(file, beginning);
    SheetForm letters = letters(file, beginning);
    return letters.withSeparator(letters.firstLine(file));
  }

  private static void requireText(Path file, byte[] beginning) {
    if (beginning.length > 1 && beginning[0] == 'P' && beginning[1] == 'K') {
      throw new SheetException(
          file
              + " is a spreadsheet itself, not a table as text; open it and save it as CSV, then"
              + " take that file");
    }
  }

  private static SheetForm letters(Path file, byte[] beginning) throws IOException {
    if (begins(beginning, 0xEF, 0xBB, 0xBF)) {
      requireUtf8(file);
      return new SheetForm(StandardCharsets.UTF_8, 3, ',', false);
    }
    if (begins(beginning, 0xFF, 0xFE)) {
      return new SheetForm(StandardCharsets.UTF_16LE, 2, ',', false);
    }
    if (begins(beginning, 0xFE, 0xFF)) {
      return new SheetForm(StandardCharsets.UTF_16BE, 2, ',', false);
    }
    for (byte one : beginning) {
      if (one == 0) {
        throw new SheetException(
            file + " is no text (it has bytes of 0); save the table as CSV in UTF-8");
      }
    }
    return new SheetForm(isUtf8(file) ? StandardCharsets.UTF_8 : WESTERN, 0, ',', false);
  }

  private static boolean begins(byte[] bytes, int... mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if ((bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static void requireUtf8(Path file) throws IOException {
    if (!isUtf8(file)) {
      throw new SheetException(
          file + " says it is UTF-8 and is not; save the table again as CSV in UTF-8");
    }
  }

  private static boolean isUtf8(Path file) throws IOException {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer bytes = ByteBuffer.allocate(BUFFER);
    CharBuffer letters = CharBuffer.allocate(BUFFER);
    try (InputStream in = Files.newInputStream(file)) {
      while (true) {
        int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
        boolean end = read < 0;
        bytes.position(bytes.position() + Math.max(0, read));
        bytes.flip();
        CoderResult result = decoder.decode(bytes, letters, end);
        if (result.isError()) {
          return false;
        }
        if (end) {
          return true;
        }
        letters.clear();
        bytes.compact();
      }
    }
  }

  private String firstLine(Path file) throws IOException {
    try (BufferedReader in = new BufferedReader(reader(file))) {
      char[] beginning = new char[BUFFER];
      int length = Math.max(0, in.read(beginning));
      return firstRow(new String(beginning, 0, length));
    }
  }

  /** Up to the first line end that stands in no quotes. */
  private static String firstRow(String text) {
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == '\n' || c == '\r')) {
        return text.substring(0, i);
      }
    }
    return text;
  }

  private SheetForm withSeparator(String row) {
    if (row.length() == 5
        && row.regionMatches(true, 0, "sep=", 0, 4)
        && SEPARATORS.indexOf(row.charAt(4)) >= 0) {
      return new SheetForm(charset, mark, row.charAt(4), true);
    }
    int[] found = new int[SEPARATORS.length()];
    boolean quoted = false;
    for (int i = 0; i < row.length(); i++) {
      char c = row.charAt(i);
      quoted ^= c == '"';
      int which = quoted ? -1 : SEPARATORS.indexOf(c);
      if (which >= 0) {
        found[which]++;
      }
    }
    int most = 0;
    for (int which = 1; which < found.length; which++) {
      most = found[which] > found[most] ? which : most;
    }
    return new SheetForm(charset, mark, SEPARATORS.charAt(most), false);
  }

  /** The text of the file, behind its mark. */
  Reader reader(Path file) throws IOException {
    InputStream in = Files.newInputStream(file);
    return reader(in);
  }

  /** The text of the bytes, behind their mark. */
  Reader reader(InputStream in) throws IOException {
    try {
      in.skipNBytes(mark);
      return new InputStreamReader(in, charset);
    } catch (IOException e) {
      in.close();
      throw e;
    }
  }
}
