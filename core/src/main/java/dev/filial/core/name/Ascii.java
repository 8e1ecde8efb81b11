package dev.filial.core.name;

import java.text.Normalizer;
import java.util.Map;

/** Text in plain ASCII, for printers and pencils that have nothing else. */
final class Ascii {

  /** What Unicode's decomposition does not bring to ASCII. */
  private static final Map<Integer, String> PLAIN =
      Map.ofEntries(
          Map.entry((int) '×', "x"),
          Map.entry((int) '♀', "(seed)"),
          Map.entry((int) '♂', "(pollen)"),
          Map.entry((int) 'ß', "ss"),
          Map.entry((int) 'æ', "ae"),
          Map.entry((int) 'Æ', "Ae"),
          Map.entry((int) 'œ', "oe"),
          Map.entry((int) 'Œ', "Oe"),
          Map.entry((int) 'ø', "o"),
          Map.entry((int) 'Ø', "O"),
          Map.entry((int) 'ł', "l"),
          Map.entry((int) 'Ł', "L"),
          Map.entry((int) 'đ', "d"),
          Map.entry((int) 'Đ', "D"),
          Map.entry((int) 'ð', "d"),
          Map.entry((int) 'þ', "th"),
          Map.entry((int) 'ı', "i"),
          Map.entry((int) '‘', "'"),
          Map.entry((int) '’', "'"),
          Map.entry((int) '′', "'"),
          Map.entry((int) '“', "\""),
          Map.entry((int) '”', "\""),
          Map.entry((int) '‐', "-"),
          Map.entry((int) '‑', "-"),
          Map.entry((int) '–', "-"),
          Map.entry((int) '—', "-"),
          Map.entry((int) '−', "-"),
          Map.entry((int) '·', "."),
          Map.entry((int) '°', " deg"));

  private Ascii() {}

  /** Nearly all names are; and Unicode's tables take a while to load. */
  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= 128) {
        return false;
      }
    }
    return true;
  }

  /**
   * {@code text} with × as x (and a space after it), letters without their marks, and ? for what
   * has no like.
   */
  static String of(String text) {
    if (isAscii(text)) {
      return text;
    }
    StringBuilder plain = new StringBuilder(text.length());
    // Before the decomposition, which would break some of these up.
    // A sign right before a word would be read as its first letter.
    text.replaceAll("×(?=\\S)", "× ")
        .codePoints()
        .forEach(c -> plain.append(PLAIN.getOrDefault(c, Character.toString(c))));
    String decomposed =
        Normalizer.normalize(plain, Normalizer.Form.NFKD).replaceAll("[\\p{M}\\p{Cf}]", "");
    StringBuilder ascii = new StringBuilder(decomposed.length());
    decomposed.codePoints().forEach(c -> ascii.append(c < 128 ? (char) c : '?'));
    return ascii.toString();
  }

  /** {@code text} without marks on its letters, other scripts kept. */
  static String withoutMarks(String text) {
    if (isAscii(text)) {
      return text;
    }
    StringBuilder plain = new StringBuilder(text.length());
    text.codePoints().forEach(c -> plain.append(PLAIN.getOrDefault(c, Character.toString(c))));
    return Normalizer.normalize(plain, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
  }
}
