package dev.filial.core.name;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A code with the grower's mark before it, as it stands on what leaves the house: {@code KB
 * 26-013E-7}.
 *
 * <p>The machine-readable form leaves out hyphens and spaces and ends in an ISO/IEC 7064 MOD 37,36
 * check character: mark (two to four letters), year (two digits), running number (three digits or
 * more), check letter, then for a group, seed lot or sowing its letter P, H or S, then the number
 * of the suffix if there is one, then the check character: {@code KB26013E7} and one more. It can
 * be read back in one way only: with the last character off, letters and digits alternate, and the
 * first run of letters is the mark, the first run of digits year and number, the first letter after
 * it the check letter. It uses only 0 to 9 and A to Z, which every bar code symbology has.
 *
 * @param mark whose code it is
 * @param code the code
 */
public record TravellingCode(GrowersMark mark, Code code) {
  private static final Pattern WRITTEN = Pattern.compile("([A-Z]{2,4})[- ]?(\\d.*)");
  private static final Pattern MACHINE =
      Pattern.compile("([A-Z]{2,4})(\\d{2})(\\d{3,9})([A-Z])(?:([PHS]?)([1-9]\\d{0,8}))?");

  /** The code with the mark before it: {@code KB 26-013E-7}. */
  public String text() {
    return mark.letters() + " " + code.text();
  }

  /**
   * Reads a code with its mark before it, set off by a space, a hyphen or nothing, the rest as in
   * {@link Code#parse}.
   *
   * @throws WrongLetterException if the check letter is not the one of the digits
   * @throws CodeException if there is no mark, or what follows is no code
   */
  public static TravellingCode parse(String text) {
    String plain = CodeReader.plain(text);
    Matcher m = WRITTEN.matcher(plain);
    if (m.matches()) {
      return new TravellingCode(new GrowersMark(m.group(1)), Code.parse(m.group(2)));
    }
    throw new CodeException(
        Quote.of(text)
            + ": a grower's mark of two to four letters belongs before a code that travels, as KB"
            + " 26-013E.");
  }

  /**
   * Reads a code whose mark may be left out, as at home.
   *
   * @param text the code, with or without a mark before it
   * @param home the mark to take when none is written
   * @throws CodeException if the text is neither
   */
  public static TravellingCode parse(String text, GrowersMark home) {
    return WRITTEN.matcher(CodeReader.plain(text)).matches()
        ? parse(text)
        : new TravellingCode(home, Code.parse(text));
  }

  /** The form for bar codes: {@code KB26013E7} and its check character. */
  public String machineReadable() {
    String body =
        mark.letters()
            + code.digits().replace("-", "")
            + code.letter()
            + code.part().suffix().replaceAll("[- ]", "");
    return body + Mod37_36.checkCharacter(body);
  }

  /**
   * Reads the machine-readable form back; in either case.
   *
   * @throws CodeException if the check character is wrong, or it is of something else than a code
   */
  public static TravellingCode parseMachineReadable(String text) {
    String scanned = text.strip().toUpperCase(Locale.ROOT);
    if (!Mod37_36.isValid(scanned)) {
      throw new CodeException(
          "\""
              + Quote.of(text)
              + "\": the check character at the end does not go with the rest. Scan it again, or"
              + " type the code as it is printed beside it.");
    }
    Matcher m = MACHINE.matcher(scanned.substring(0, scanned.length() - 1));
    if (!m.matches()) {
      throw new CodeException(
          Quote.of(text)
              + ": this is not a plant's code with a grower's mark, but something else with the"
              + " same kind of check character.");
    }
    String suffix = m.group(6) == null ? "" : "-" + m.group(5) + m.group(6);
    return new TravellingCode(
        new GrowersMark(m.group(1)),
        Code.parse(m.group(2) + "-" + m.group(3) + m.group(4) + suffix));
  }

  /** The same as {@link #text()}. */
  @Override
  public String toString() {
    return text();
  }
}
