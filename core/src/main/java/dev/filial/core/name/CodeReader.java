package dev.filial.core.name;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes a typed code apart, and when it cannot, finds out what the writer should hear. */
final class CodeReader {

  /** The outer shape of a code: year, what follows it, running digits, letter, suffix. */
  private static final Pattern SHAPE =
      Pattern.compile("(\\d{2})([- ]?)(\\d{1,9})([A-Z]?)(?:[- ]([PHS]?)(\\d{1,9}))?");

  private static final Pattern MARKED = Pattern.compile("([A-Z]{2,4})[- ]?(\\d.*)");
  private static final Pattern FOUR_DIGIT_YEAR =
      Pattern.compile("(?:19|20)(\\d{2})[- ](\\d{1,9}[A-Z]?([- ].*)?)");
  private static final Pattern GLUED_SUFFIX =
      Pattern.compile("(\\d{2})[- ]?(\\d{3,9})([A-Z]?)([A-Z])(\\d{1,9})");
  private static final Pattern LETTER_APART =
      Pattern.compile("(\\d{2}[- ]?\\d{1,9})([A-Z]?)[- ]([A-Z])([- ].*)?");
  private static final Pattern OTHER_SUFFIX =
      Pattern.compile("(\\d{2}[- ]?\\d{1,9}[A-Z]?)[- ]([A-Z]) ?(\\d{1,9})");
  private static final Pattern LETTER_FOR_DIGIT =
      Pattern.compile("(?=\\d{0,2}[- ]?\\d*[OIL])[\\dOIL]{2}[- ]?[\\dOIL]{1,9}.*");
  private static final Pattern TOO_LONG = Pattern.compile(".*\\d{10,}.*");

  /**
   * What was typed, as far as it has the shape of a code.
   *
   * @param year the two digits of the year
   * @param separated whether something stood between year and number
   * @param running the running digits as typed, leading zeros and all
   * @param letter the letter, if one was typed
   * @param part the suffix
   */
  record Typed(
      String year, boolean separated, String running, Optional<Character> letter, Code.Part part) {

    /** Running digits as they stand on a tag: filled up to three. */
    String padded() {
      return "0".repeat(Math.max(0, 3 - running.length())) + running;
    }

    /** Whether the running digits can be a number's: not too many zeros in front, not nothing. */
    static boolean isRunningNumber(String padded) {
      return (padded.length() == 3 || padded.charAt(0) != '0') && !padded.equals("000");
    }
  }

  private CodeReader() {}

  static Code read(String text) {
    String plain = plain(text);
    Typed typed = shape(plain).orElseThrow(() -> new CodeException(diagnosis(plain)));
    if (!typed.separated() && typed.running().length() < 3) {
      throw new CodeException(withoutHyphen(plain, typed));
    }
    String padded = typed.padded();
    if (padded.equals("000") || Long.parseLong(padded) == 0) {
      throw new CodeException(
          Quote.of(text) + ": running numbers begin at 1, as " + typed.year() + "-001.");
    }
    if (!Typed.isRunningNumber(padded)) {
      throw new CodeException(
          Quote.of(text)
              + ": a running number of more than three digits does not begin with 0. Write "
              + Code.of(Integer.parseInt(typed.year()), Long.parseLong(padded)).digits()
              + " if that is meant; if the tag shows "
              + padded.length()
              + " digits, its first is not a 0.");
    }
    Code code = new Code(Integer.parseInt(typed.year()), Long.parseLong(padded), typed.part());
    if (typed.letter().isPresent() && typed.letter().get() != code.letter()) {
      throw new WrongLetterException(text, code, typed.letter().get());
    }
    return code;
  }

  /** The typed text in upper case, with plain hyphens, and single spaces between its parts. */
  static String plain(String text) {
    return isPlain(text)
        ? text.toUpperCase(Locale.ROOT)
        : text.strip()
            .replaceAll("[\u2010-\u2015\u2212]", "-")
            .replaceAll("[\\s\u00a0]+", " ")
            .replaceAll(" ?- ?", "-")
            .toUpperCase(Locale.ROOT);
  }

  /** Whether there is nothing to make plain, as in nearly all codes; a table has thousands. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c <= ' ' || c > '~') {
        return false;
      }
    }
    return true;
  }

  static Optional<Typed> shape(String plain) {
    Matcher m = SHAPE.matcher(plain);
    if (!m.matches()) {
      return Optional.empty();
    }
    Code.Part part = new Code.Part.Whole();
    if (m.group(6) != null) {
      int number = Integer.parseInt(m.group(6));
      if (number == 0) {
        throw new CodeException(
            Quote.of(plain) + ": the number of a suffix begins at 1; there is no number 0.");
      }
      part =
          switch (m.group(5)) {
            case "P" -> new Code.Part.Group(number);
            case "H" -> new Code.Part.Lot(number);
            case "S" -> new Code.Part.Sowing(number);
            default -> new Code.Part.Seedling(number);
          };
    }
    String letter = m.group(4);
    return Optional.of(
        new Typed(
            m.group(1),
            !m.group(2).isEmpty(),
            m.group(3),
            letter.isEmpty() ? Optional.empty() : Optional.of(letter.charAt(0)),
            part));
  }

  private static String withoutHyphen(String plain, Typed typed) {
    Matcher year = FOUR_DIGIT_YEAR.matcher(plain);
    if (year.matches()) {
      return fourDigitYear(year);
    }
    return Quote.of(plain)
        + ": without a hyphen after the year three running digits are needed. Write "
        + typed.year()
        + "-"
        + typed.running()
        + " or "
        + typed.year()
        + typed.padded()
        + ".";
  }

  private static String fourDigitYear(Matcher year) {
    return Quote.of(year.group())
        + ": a code begins with the last two digits of the year. Write "
        + year.group(1)
        + "-"
        + year.group(2)
        + ".";
  }

  private static String diagnosis(String plain) {
    String quoted = Quote.of(plain);
    if (plain.isEmpty()) {
      return "a code is missing. Write one as 26-013E, or a seedling as 26-013E-7.";
    }
    if (plain.contains("/")) {
      return quoted + ": a code has no slash. Set a suffix off by a hyphen or a space: 26-013E-7.";
    }
    if (plain.contains("_") || plain.contains("?")) {
      return quoted
          + ": this is a code with unreadable characters. Look it up as a smudged tag, with one _"
          + " for each.";
    }
    Matcher marked = MARKED.matcher(plain);
    if (marked.matches()) {
      return quoted
          + ": a grower's mark ("
          + marked.group(1)
          + ") stands before this code. For a code of this register write "
          + marked.group(2)
          + " alone.";
    }
    if (TOO_LONG.matcher(plain).matches()) {
      return quoted + ": a number in a code has at most nine digits.";
    }
    Matcher year = FOUR_DIGIT_YEAR.matcher(plain);
    if (year.matches()) {
      return fourDigitYear(year);
    }
    Matcher glued = GLUED_SUFFIX.matcher(plain);
    if (glued.matches()) {
      return glued(quoted, glued);
    }
    Matcher other = OTHER_SUFFIX.matcher(plain);
    if (other.matches()) {
      if (!"PHS".contains(other.group(2))) {
        return unknownSuffix(quoted, other.group(2));
      }
      return quoted
          + ": letter and number of a suffix are written together. Write "
          + other.group(1)
          + " "
          + other.group(2)
          + other.group(3)
          + ".";
    }
    Matcher apart = LETTER_APART.matcher(plain);
    if (apart.matches()) {
      String kind = apart.group(3);
      if (!apart.group(2).isEmpty() && "PHS".contains(kind)) {
        return quoted + ": the suffix " + kind + " needs a number, as " + kind + "1.";
      }
      return quoted
          + ": a letter after a hyphen or a space is a suffix and needs a number (P3, H2, S1); a"
          + " check letter is written right behind the digits"
          + (apart.group(2).isEmpty() ? ": " + apart.group(1) + kind + "." : ".");
    }
    if (LETTER_FOR_DIGIT.matcher(plain).matches()) {
      return quoted + ": year and number are digits. Write 0 for O, and 1 for I or L.";
    }
    return quoted
        + ": not a code. A code is two digits of the year, a hyphen, the running number and its"
        + " letter, as 26-013E; a seedling is 26-013E-7, a group 26-013E P3, a seed lot 26-013E H2,"
        + " a sowing 26-013E S1.";
  }

  private static String unknownSuffix(String quoted, String kind) {
    return quoted
        + ": a suffix "
        + kind
        + " is not known. A bare number is a seedling (-7), P a group (P3), H a seed lot (H2), S a"
        + " sowing (S1).";
  }

  /** A suffix that nothing sets off: the digits before it tell whether its letter is theirs. */
  private static String glued(String quoted, Matcher m) {
    Code code = Code.of(Integer.parseInt(m.group(1)), Math.max(1, Long.parseLong(m.group(2))));
    String kind = m.group(4);
    String meant;
    if (!m.group(3).isEmpty() && !"PHS".contains(kind)) {
      return unknownSuffix(quoted, kind);
    }
    if (!m.group(3).isEmpty()) {
      meant = code.digits() + m.group(3) + " " + kind + m.group(5);
    } else if (kind.charAt(0) == code.letter() || !"PHS".contains(kind)) {
      meant = code.digits() + kind + "-" + m.group(5);
    } else {
      meant = code.text() + " " + kind + m.group(5);
    }
    return quoted + ": a suffix is set off by a hyphen or a space. Write " + meant + ".";
  }
}
