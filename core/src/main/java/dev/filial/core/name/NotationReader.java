package dev.filial.core.name;

import dev.filial.core.name.Notation.Node;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Reads pedigree notation by operator precedence: a cross with a higher number binds less. One
 * pass, with a stack of open crosses in place of recursion.
 */
final class NotationReader {

  /**
   * A finished part of the pedigree, or a name that an asterisk was put on.
   *
   * @param node its index; of a recurrent parent on the left, that of the first occurrence
   * @param lowest the number of its last cross, 0 for a name
   * @param highest the same, if the crosses within its backcrosses are counted one by one
   * @param doses how often it occurs, 1 without an asterisk
   * @param start the offset that it begins at
   */
  private record Operand(int node, int lowest, int highest, int doses, int start) {}

  /**
   * A mark that joins two parts.
   *
   * @param level 1 for {@code /}, 2 for {@code //}, else the number between the slashes
   * @param start the offset that it begins at
   * @param end the offset behind it
   */
  private record Mark(int level, int start, int end) {}

  private final String text;
  private final List<Node> nodes = new ArrayList<>();
  private final Deque<Operand> operands = new ArrayDeque<>();
  private final Deque<Mark> marks = new ArrayDeque<>();
  private int at;

  NotationReader(String text) {
    this.text = text;
  }

  List<Node> read() {
    skipSpace();
    if (at == text.length()) {
      throw error(at, "a pedigree is missing. Write seed parent/pollen parent, as A/B.");
    }
    while (true) {
      Name name = name();
      Optional<Mark> mark = mark();
      shift(name, mark);
      if (mark.isEmpty()) {
        break;
      }
      Mark joining = mark.get();
      while (!marks.isEmpty() && marks.element().level() < joining.level()) {
        reduce();
      }
      if (!marks.isEmpty() && marks.element().level() == joining.level()) {
        throw sameMark(joining);
      }
      marks.push(joining);
    }
    while (!marks.isEmpty()) {
      reduce();
    }
    return nodes;
  }

  /** Puts a name on the stack, as often as it occurs if it is the recurrent parent on the left. */
  private void shift(Name name, Optional<Mark> following) {
    // An asterisk goes with the cross that the name itself is a parent of: of the crosses on its
    // two
    // sides the one that binds more.
    boolean left =
        following.isPresent()
            && (marks.isEmpty() || following.get().level() < marks.element().level());
    if (name.doses() > 1) {
      checkRecurrent(name, left);
    }
    // On the right the occurrences come one by one, as the crosses are put down.
    int first = nodes.size();
    for (int i = 0; i < (left ? name.doses() : 1); i++) {
      add(new Node.Source(name.text()), name.start());
    }
    operands.push(new Operand(first, 0, 0, name.doses(), name.start()));
  }

  private void checkRecurrent(Name name, boolean left) {
    if (!left && marks.isEmpty()) {
      throw error(
          name.star(),
          "an asterisk needs what the recurrent parent was crossed with, as "
              + name.text()
              + "*"
              + name.doses()
              + "/B.");
    }
    if (!left && operands.element().doses() > 1) {
      throw error(
          name.star(),
          "both parents of a cross cannot be recurrent. Leave the asterisk out at one of them.");
    }
  }

  private void reduce() {
    Mark mark = marks.pop();
    Operand pollen = operands.pop();
    Operand seed = operands.pop();
    int lowest = Math.max(seed.lowest(), pollen.lowest());
    int highest = Math.max(seed.highest(), pollen.highest());
    if (mark.level() > highest + 1) {
      throw error(
          mark.start(),
          "the mark "
              + NotationWriter.mark(mark.level())
              + " is for a later cross than this: what it joins has "
              + (highest == 0
                  ? "no cross"
                  : "at most " + (highest == 1 ? "one cross" : highest + " crosses"))
              + " behind it. Write "
              + NotationWriter.mark(lowest + 1)
              + ", or put in what is missing.");
    }
    int doses = Math.max(seed.doses(), pollen.doses());
    int cross;
    if (seed.doses() > 1) {
      cross = pollen.node();
      for (int i = doses - 1; i >= 0; i--) {
        cross = add(new Node.Cross(seed.node() + i, cross), seed.start());
      }
    } else {
      cross = add(new Node.Cross(seed.node(), pollen.node()), seed.start());
      for (int i = 1; i < doses; i++) {
        int again = add(nodes.get(pollen.node()), pollen.start());
        cross = add(new Node.Cross(cross, again), seed.start());
      }
    }
    operands.push(
        new Operand(cross, mark.level(), Math.max(mark.level(), highest + doses), 1, seed.start()));
  }

  private int add(Node node, int offset) {
    if (nodes.size() == Notation.MOST) {
      throw error(offset, "this pedigree has more than " + Notation.MOST + " sources and crosses.");
    }
    nodes.add(node);
    return nodes.size() - 1;
  }

  /**
   * A name as it stands in the text.
   *
   * @param doses the number at its asterisk, 1 without one
   * @param start the offset that it begins at
   * @param star the offset of its asterisk
   */
  private record Name(String text, int doses, int start, int star) {}

  private Name name() {
    skipSpace();
    int start = at;
    Optional<Integer> before = dosesBefore();
    int star = at - 1;
    skipSpace();
    String name = isAt('"') ? quotedName() : plainName(start);
    skipSpace();
    if (!isAt('*')) {
      return new Name(name, before.orElse(1), start, star);
    }
    star = at;
    if (before.isPresent()) {
      throw error(star, "one asterisk for each name. Leave this or the one before it out.");
    }
    at++;
    skipSpace();
    int digits = at;
    skipDigits();
    if (digits == at) {
      throw error(
          at,
          "a number belongs behind the asterisk: how often "
              + name
              + " occurs, as "
              + name
              + "*2.");
    }
    return new Name(name, doses(digits, at), start, star);
  }

  /** A number and an asterisk before a name; without the asterisk the digits are left. */
  private Optional<Integer> dosesBefore() {
    int start = at;
    skipDigits();
    int end = at;
    skipSpace();
    if (end == start || !isAt('*')) {
      at = start;
      return Optional.empty();
    }
    at++;
    return Optional.of(doses(start, end));
  }

  private int doses(int start, int end) {
    int doses = end - start > 6 ? Integer.MAX_VALUE : Integer.parseInt(text.substring(start, end));
    if (doses < 2 || doses > Notation.MOST_DOSES) {
      throw error(
          start,
          "the number at an asterisk says how often the recurrent parent occurs, 2 to "
              + Notation.MOST_DOSES
              + (doses < 2 ? ". Leave it out for a single cross." : "."));
    }
    return doses;
  }

  private String quotedName() {
    int start = at;
    StringBuilder name = new StringBuilder();
    at++;
    while (true) {
      if (at == text.length()) {
        throw error(start, "this quote is not closed. Put another \" behind the name.");
      }
      char c = text.charAt(at++);
      if (c != '"') {
        name.append(c);
      } else if (isAt('"')) {
        name.append(c);
        at++;
      } else {
        break;
      }
    }
    skipSpace();
    if (at < text.length() && !isAt('/') && !isAt('*')) {
      throw error(at, "a slash belongs behind the quoted name.");
    }
    return checked(name.toString(), start);
  }

  private String plainName(int nameStart) {
    int start = at;
    while (at < text.length() && "/*\"()[]".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    if (at < text.length() && "\"()[]".indexOf(text.charAt(at)) >= 0) {
      throw error(
          at,
          isAt('"')
              ? "a quote begins before a name, not within it."
              : "the notation has no brackets: (A/B)/C is written A/B//C. A name with brackets goes"
                  + " into double quotes.");
    }
    String name = text.substring(start, at).strip().replaceAll("[\\s\u00a0]+", " ");
    if (name.isEmpty()) {
      throw missingName();
    }
    if (name.chars().allMatch(c -> c >= '0' && c <= '9')) {
      throw error(
          nameStart,
          "a number alone is not read as a name. Put it in quotes, \""
              + name
              + "\", if it is one; a later cross has slashes on both sides of its number, /"
              + name
              + "/.");
    }
    return checked(name, start);
  }

  private String checked(String name, int start) {
    try {
      return new Node.Source(name).name();
    } catch (IllegalArgumentException e) {
      NotationException error = error(start, e.getMessage() + ".");
      error.initCause(e);
      throw error;
    }
  }

  private NotationException missingName() {
    if (at == text.length()) {
      return error(at, "a name is missing behind the last slash.");
    }
    if (isAt('*')) {
      return error(at, "an asterisk stands at a name, as A*2/B or B/2*A.");
    }
    if (!marks.isEmpty() && text.startsWith("///", Math.max(0, at - 2))) {
      return error(at, "three slashes are not used. Write /3/ for a third cross.");
    }
    return error(
        at,
        marks.isEmpty()
            ? "a name is missing before this slash."
            : "a name is missing between two slashes. // for a second cross and /3/ for a third are"
                + " written together.");
  }

  private Optional<Mark> mark() {
    skipSpace();
    if (at == text.length()) {
      return Optional.empty();
    }
    int start = at;
    if (!isAt('/')) {
      throw error(at, "a slash belongs here, between two names.");
    }
    at++;
    if (isAt('/')) {
      at++;
      return Optional.of(new Mark(2, start, at));
    }
    int digits = at;
    skipSpace();
    int from = at;
    skipDigits();
    int to = at;
    skipSpace();
    if (from == to || !isAt('/')) {
      at = digits;
      return Optional.of(new Mark(1, start, at));
    }
    at++;
    int level = to - from > 8 ? Integer.MAX_VALUE : Integer.parseInt(text.substring(from, to));
    if (level == 0) {
      throw error(start, "crosses are counted from 1. Write / for a first cross.");
    }
    return Optional.of(new Mark(level, start, at));
  }

  /** Two crosses with one mark: which was first cannot be told. */
  private NotationException sameMark(Mark second) {
    Mark first = marks.element();
    String mark = NotationWriter.mark(second.level());
    String next = NotationWriter.mark(second.level() + 1);
    String a = part(operands.stream().skip(1).findFirst().orElseThrow().start(), first.start());
    String b = part(first.end(), second.start());
    return error(
        second.start(),
        "two crosses with the mark "
            + mark
            + ", so that it is unclear which was made first. Write "
            + next
            + " for the later one: "
            + a
            + mark
            + b
            + next
            + "… if this was"
            + (second.level() == 1 ? ", " + a + next + b + mark + "… if the other was." : "."));
  }

  private String part(int from, int to) {
    String part = text.substring(from, to).strip();
    return part.length() <= 24 ? part : "…" + part.substring(part.length() - 20);
  }

  private boolean isAt(char c) {
    return at < text.length() && text.charAt(at) == c;
  }

  private void skipSpace() {
    while (at < text.length()
        && (Character.isWhitespace(text.charAt(at)) || text.charAt(at) == '\u00a0')) {
      at++;
    }
  }

  private void skipDigits() {
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
  }

  private NotationException error(int offset, String message) {
    return new NotationException(text, text.codePointCount(0, offset) + 1, message);
  }
}
