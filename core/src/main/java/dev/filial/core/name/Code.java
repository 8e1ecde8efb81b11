package dev.filial.core.name;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The code on a tag: year, running number, and what of it is meant, as {@code 26-013E-7}.
 *
 * <p>The running number is shared by the crosses and acquisitions of a year. It is written with at
 * least three digits and, from 1000 on, with as many as it needs and never a leading zero, so that
 * one code has one string of digits. The check letter is that of these digits, year first, read as
 * one number: 26-013 is 26013, and 26-1013 is 261013. Were {@code 26-0013} read as 26-013, a four
 * digit code whose first running digit was misread as 0 would be checked as a number of another
 * length and could slip through (32-1000 as 32-0000, say); it is refused instead.
 *
 * <p>Codes are ordered as they are written: year, number, then the whole before its seedlings,
 * groups, seed lots and sowings. Two digits do not tell the century, so 99 comes after 26.
 */
public final class Code implements Comparable<Code> {
  /** The highest running number, and the highest number in a suffix. */
  public static final int HIGHEST = 999_999_999;

  /** What of a cross or an acquisition a code means. */
  public sealed interface Part {

    /** The suffix as it is written after the check letter, with what sets it off. */
    String suffix();

    /** The place of this kind in the order of codes. */
    private int order() {
      if (this instanceof Whole) {
        return 0;
      }
      if (this instanceof Seedling) {
        return 1;
      }
      if (this instanceof Group) {
        return 2;
      }
      return this instanceof Lot ? 3 : 4;
    }

    /** The number of the suffix; 0 when there is none. */
    default int number() {
      return 0;
    }

    /** The cross or acquisition itself: {@code 26-013E}. */
    record Whole() implements Part {
      @Override
      public String suffix() {
        return "";
      }
    }

    /**
     * A numbered seedling: {@code 26-013E-7}.
     *
     * @param number 1 to {@link Code#HIGHEST}
     */
    record Seedling(int number) implements Part {
      /** Checks the number. */
      public Seedling {
        checkSuffix("seedling", number);
      }

      @Override
      public String suffix() {
        return "-" + number;
      }
    }

    /**
     * A group of unnumbered sister seedlings, a pot or a tray: {@code 26-013E P3}.
     *
     * @param number 1 to {@link Code#HIGHEST}
     */
    record Group(int number) implements Part {
      /** Checks the number. */
      public Group {
        checkSuffix("group", number);
      }

      @Override
      public String suffix() {
        return " P" + number;
      }
    }

    /**
     * A seed lot, what one harvest gave: {@code 26-013E H2}. The first lot prints its H1 too; that
     * people leave it unsaid is for whoever looks a code up.
     *
     * @param number 1 to {@link Code#HIGHEST}
     */
    record Lot(int number) implements Part {
      /** Checks the number. */
      public Lot {
        checkSuffix("seed lot", number);
      }

      @Override
      public String suffix() {
        return " H" + number;
      }
    }

    /**
     * A sowing: {@code 26-013E S1}.
     *
     * @param number 1 to {@link Code#HIGHEST}
     */
    record Sowing(int number) implements Part {
      /** Checks the number. */
      public Sowing {
        checkSuffix("sowing", number);
      }

      @Override
      public String suffix() {
        return " S" + number;
      }
    }
  }

  private static final Part WHOLE = new Part.Whole();

  private final int year;
  private final long number;
  private final Part part;

  /** What {@link #text} answers, once it was asked: a register asks the same code many times. */
  private @Nullable String text;

  /**
   * A code of its parts.
   *
   * @param year the year's last two digits, 0 to 99
   * @param number the running number in that year, 1 to 999,999,999
   * @param part what of it is meant
   * @throws CodeException if the year or the number is out of range
   */
  public Code(int year, long number, Part part) {
    if (year < 0 || year > 99) {
      throw new CodeException(
          "the year of a code is its last two digits, 0 to 99, not "
              + year
              + (year >= 1900 && year < 2200 ? "; give " + year % 100 : ""));
    }
    if (number < 1 || number > HIGHEST) {
      throw new CodeException("a running number is 1 to " + HIGHEST + ", not " + number);
    }
    this.year = year;
    this.number = number;
    this.part = Objects.requireNonNull(part, "part");
  }

  /** The year's last two digits, 0 to 99. */
  public int year() {
    return year;
  }

  /** The running number in that year, 1 to 999,999,999. */
  public long number() {
    return number;
  }

  /** What of the cross or acquisition is meant. */
  public Part part() {
    return part;
  }

  /**
   * The cross or acquisition with this running number.
   *
   * @throws CodeException if the year or the number is out of range
   */
  public static Code of(int year, long number) {
    return new Code(year, number, WHOLE);
  }

  /**
   * Reads a code as people type it: in either case, with or without the check letter, with a hyphen
   * or a space or nothing after the year; {@code 26-13} is 26-013 (without the hyphen three digits
   * are needed). A suffix is set off by a hyphen or a space: {@code -7} or {@code 7} a seedling,
   * {@code P3} a group, {@code H2} a seed lot, {@code S1} a sowing.
   *
   * @throws WrongLetterException if a letter is given and is not the one of the digits
   * @throws CodeException if the text is no code; the message says what to write
   */
  public static Code parse(String text) {
    Code canonical = CanonicalCode.read(text);
    if (canonical == null) {
      return CodeReader.read(text);
    }
    canonical.text = text;
    return canonical;
  }

  /** The code as it is written on a tag: {@code 26-013E-7}. */
  public String text() {
    String known = text;
    if (known == null) {
      // Threads that come here at once all make the same text.
      known = digits() + letter() + part.suffix();
      text = known;
    }
    return known;
  }

  /** Year and number without letter and suffix: {@code 26-013}. */
  public String digits() {
    // By hand: a register writes and reads codes by the thousand, and a formatter starts slowly.
    StringBuilder digits = new StringBuilder(8);
    if (year < 10) {
      digits.append('0');
    }
    digits.append(year).append('-');
    if (number < 100) {
      digits.append(number < 10 ? "00" : "0");
    }
    return digits.append(number).toString();
  }

  /** The check letter: {@code E} for 26-013. */
  public char letter() {
    return CheckLetter.FILIAL.letter(checkedNumber());
  }

  /** The cross or acquisition this belongs to, the code without its suffix. */
  public Code whole() {
    return isWhole() ? this : new Code(year, number, WHOLE);
  }

  /** Whether there is no suffix. */
  public boolean isWhole() {
    return part instanceof Part.Whole;
  }

  /** Whether this names a numbered seedling. */
  public boolean isSeedling() {
    return part instanceof Part.Seedling;
  }

  /** Whether this names a group of unnumbered seedlings. */
  public boolean isGroup() {
    return part instanceof Part.Group;
  }

  /** Whether this names a seed lot. */
  public boolean isLot() {
    return part instanceof Part.Lot;
  }

  /** Whether this names a sowing. */
  public boolean isSowing() {
    return part instanceof Part.Sowing;
  }

  /** The {@code n}th seedling of this cross. */
  public Code seedling(int n) {
    return new Code(year, number, new Part.Seedling(n));
  }

  /** The {@code n}th group of seedlings of this cross. */
  public Code group(int n) {
    return new Code(year, number, new Part.Group(n));
  }

  /** The {@code n}th seed lot of this cross. */
  public Code lot(int n) {
    return new Code(year, number, new Part.Lot(n));
  }

  /** The {@code n}th sowing of this cross. */
  public Code sowing(int n) {
    return new Code(year, number, new Part.Sowing(n));
  }

  @Override
  public int compareTo(Code other) {
    int order = Integer.compare(year, other.year);
    if (order == 0) {
      order = Long.compare(number, other.number);
    }
    if (order == 0) {
      order = Integer.compare(part.order(), other.part.order());
    }
    return order == 0 ? Integer.compare(part.number(), other.part.number()) : order;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Code code
        && year == code.year
        && number == code.number
        && part.order() == code.part.order()
        && part.number() == code.part.number();
  }

  @Override
  public int hashCode() {
    // Years and numbers are small and dense: times 31, those of 40 years would share few hashes. An
    // odd multiplier near 2^64 divided by the golden ratio spreads them over the upper half.
    long places = (number * 100 + year) * 8 + part.order();
    return (int) ((places * 0x9E3779B97F4A7C15L + part.number() * 0xC2B2AE3D27D4EB4FL) >>> 32);
  }

  /** The same as {@link #text()}. */
  @Override
  public String toString() {
    return text();
  }

  /** The digits as written, read as one number: 26013. */
  private long checkedNumber() {
    long ten = 1000;
    while (ten <= number) {
      ten *= 10;
    }
    return year * ten + number;
  }

  private static void checkSuffix(String what, int number) {
    if (number < 1 || number > HIGHEST) {
      throw new CodeException("a " + what + " number is 1 to " + HIGHEST + ", not " + number);
    }
  }
}
