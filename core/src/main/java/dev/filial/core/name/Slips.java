package dev.filial.core.name;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The registered codes that are one slip away from what was typed: one wrong digit, two neighbours
 * or two digits one apart swapped, a doubled digit mistaken for another, or the wrong letter.
 *
 * <p>When a letter was typed, a code with other digits is proposed only if that letter is its own;
 * without a letter all of them are. (A text whose letter is the right one is therefore never one
 * slip away from another code; ask {@link #near(Code, Predicate)} then.) The suffix is taken as
 * typed. Most plausible first: each candidate is ranked by how often its kind of slip happens,
 * shared out over the candidates of the kind. Frequencies after Verhoeff 1969 (single digits 79 %,
 * neighbours swapped 10.2 %, swapped across one 0.8 %, twins 0.6 % of the errors; from memory),
 * digits that look alike in pencil before others (common practice, no source).
 */
public final class Slips {

  /** Pairs of digits that pencil and weather make alike. */
  private static final List<String> LOOK_ALIKE =
      List.of("17", "27", "06", "08", "35", "38", "49", "56", "68", "89");

  private Slips() {}

  /**
   * The codes one slip away from a typed text that has the shape of a code, whether or not its
   * letter is right. Empty if it has not that shape, or nothing registered is near.
   *
   * @param typed the text as typed
   * @param registered whether a code (with the suffix that was typed) is in the register; asked for
   *     about a hundred codes at most
   * @throws CodeException if the suffix has the number 0
   */
  public static List<Slip> near(String typed, Predicate<Code> registered) {
    Optional<CodeReader.Typed> shape = CodeReader.shape(CodeReader.plain(typed));
    if (shape.isEmpty()) {
      return List.of();
    }
    CodeReader.Typed code = shape.get();
    return near(code.year() + code.padded(), code.letter(), code.part(), registered);
  }

  /**
   * The codes one slip in the digits away from a code that is not registered, whatever their
   * letters: for a code that was typed without its letter.
   *
   * @param code the code that was not found
   * @param registered whether a code is in the register
   */
  public static List<Slip> near(Code code, Predicate<Code> registered) {
    return near(code.digits().replace("-", ""), Optional.empty(), code.part(), registered);
  }

  private static List<Slip> near(
      String digits, Optional<Character> letter, Code.Part part, Predicate<Code> registered) {
    Map<Code, Slip> found = new LinkedHashMap<>();
    for (Candidate candidate : candidates(digits)) {
      code(candidate.digits(), part)
          .filter(code -> letter.isEmpty() || letter.get() == code.letter())
          .filter(registered)
          .ifPresent(code -> found.putIfAbsent(code, new Slip(code, candidate.kind())));
    }
    if (letter.isPresent()) {
      // The digits stand as they are; only a letter that is not theirs makes this a slip.
      code(digits, part)
          .filter(code -> letter.get() != code.letter())
          .filter(registered)
          .ifPresent(code -> found.putIfAbsent(code, new Slip(code, Slip.Kind.WRONG_LETTER)));
    }
    List<Slip> slips = new ArrayList<>(found.values());
    slips.sort(Comparator.comparing(Slip::kind).thenComparing(Slip::code));
    return List.copyOf(slips);
  }

  private record Candidate(String digits, Slip.Kind kind) {}

  private static List<Candidate> candidates(String digits) {
    List<Candidate> all = new ArrayList<>();
    for (int i = 0; i < digits.length(); i++) {
      char old = digits.charAt(i);
      for (char c = '0'; c <= '9'; c++) {
        if (c == old) {
          continue;
        }
        String pair = c < old ? "" + c + old : "" + old + c;
        all.add(
            new Candidate(
                with(digits, i, c, i, c),
                LOOK_ALIKE.contains(pair) ? Slip.Kind.LOOK_ALIKE_DIGIT : Slip.Kind.WRONG_DIGIT));
        if (i + 1 < digits.length() && old == digits.charAt(i + 1)) {
          all.add(new Candidate(with(digits, i, c, i + 1, c), Slip.Kind.TWINS));
        }
      }
      for (int apart = 1; apart <= 2 && i + apart < digits.length(); apart++) {
        char other = digits.charAt(i + apart);
        if (other != old) {
          all.add(
              new Candidate(
                  with(digits, i, other, i + apart, old),
                  apart == 1 ? Slip.Kind.NEIGHBOURS_SWAPPED : Slip.Kind.JUMP_SWAPPED));
        }
      }
    }
    return all;
  }

  private static String with(String digits, int i, char a, int j, char b) {
    StringBuilder changed = new StringBuilder(digits);
    changed.setCharAt(i, a);
    changed.setCharAt(j, b);
    return changed.toString();
  }

  private static Optional<Code> code(String digits, Code.Part part) {
    String running = digits.substring(2);
    return CodeReader.Typed.isRunningNumber(running)
        ? Optional.of(
            new Code(Integer.parseInt(digits.substring(0, 2)), Long.parseLong(running), part))
        : Optional.empty();
  }
}
