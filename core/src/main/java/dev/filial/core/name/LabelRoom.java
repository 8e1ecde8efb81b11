package dev.filial.core.name;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The room on a label, and the fitting of text into it, however the width of text is measured.
 *
 * <p>Facts are placed one after the other in order of importance, each into the first line with
 * room for it, two spaces behind what stands there; a later one never moves an earlier one, so what
 * matters more is never lost to what matters less. Parents too long for one line may run over
 * several of one side, broken at spaces and before the ×; nothing is written between the pieces,
 * lest a class or a date be read as that of one parent. Of the ways to say the parents the longest
 * is taken that costs none of the other facts its place; if even the shortest has no room it is
 * cut, visibly, with an ellipsis. Nothing else is ever cut, the code least of all: it fits or is
 * left out.
 *
 * <p>Where the code stands by itself, in letters of its own size, the lines hold only the rest.
 */
public final class LabelRoom {

  private static final String BETWEEN = "  ";

  private final double width;
  private final int lines;
  private final int sides;
  private final LineMeasure measure;
  private final boolean codeApart;
  private final boolean ascii;

  private LabelRoom(
      double width, int lines, int sides, LineMeasure measure, boolean codeApart, boolean ascii) {
    this.width = width;
    this.lines = lines;
    this.sides = sides;
    this.measure = measure;
    this.codeApart = codeApart;
    this.ascii = ascii;
  }

  /**
   * Room for lines of text.
   *
   * @param width of a line, in the unit of {@code measure}; above 0
   * @param lines on a side, 1 or more
   * @param sides that are written on, 1 or 2
   * @param measure how wide text is
   * @throws IllegalArgumentException if one of these is not so
   */
  public static LabelRoom of(double width, int lines, int sides, LineMeasure measure) {
    if (!(width > 0) || lines < 1 || sides < 1 || sides > 2) {
      throw new IllegalArgumentException(
          "a label has room for a line at least, and 1 side or 2; not "
              + lines
              + " lines of "
              + width
              + " on "
              + sides);
    }
    return new LabelRoom(width, lines, sides, measure, false, false);
  }

  /** The same where the code stands elsewhere on the label, and not in these lines. */
  public LabelRoom withCodeApart() {
    return new LabelRoom(width, lines, sides, measure, true, ascii);
  }

  /** The same for plain ASCII. */
  public LabelRoom inAscii() {
    return new LabelRoom(width, lines, sides, measure, codeApart, true);
  }

  /**
   * The facts in this room.
   *
   * @throws IllegalArgumentException if the code does not fit into one line
   */
  public LabelText fit(LabelFacts facts) {
    return fit(facts, code -> "the code " + code + " does not fit into a line; it is never cut");
  }

  /** The same, with what to say of a code that does not fit. */
  LabelText fit(LabelFacts facts, UnaryOperator<String> tooLong) {
    String code = plain(facts.code());
    if (!codeApart && measure.width(code) > width) {
      throw new IllegalArgumentException(tooLong.apply(code));
    }
    List<String> parents = facts.parentsOrTaxon().stream().map(this::plain).toList();
    List<String> leftOut = new ArrayList<>();
    List<String> kept = keptBesideShortest(code, parents, others(facts), leftOut);
    Lines placed =
        parents.stream()
            .flatMap(way -> placed(code, Optional.of(way), kept).stream())
            .findFirst()
            .orElseGet(() -> withCut(code, parents, kept));
    return placed.toText(code, leftOut);
  }

  /** What fits when the parents are said in the shortest way; the rest goes to {@code leftOut}. */
  private List<String> keptBesideShortest(
      String code, List<String> parents, List<String> others, List<String> leftOut) {
    Lines lines = withCut(code, parents, List.of());
    List<String> kept = new ArrayList<>();
    for (String other : others) {
      (lines.put(other) ? kept : leftOut).add(other);
    }
    return kept;
  }

  private List<String> others(LabelFacts facts) {
    List<String> others = new ArrayList<>();
    facts.fieldNumber().ifPresent(number -> others.add(plain(number)));
    facts.date().ifPresent(date -> others.add(date.text()));
    facts.generation().ifPresent(generation -> others.add(plain(generation)));
    facts.remarks().forEach(remark -> others.add(plain(remark)));
    others.removeIf(String::isEmpty);
    return others;
  }

  /** The lines with all of these on them, if there is room. */
  private Optional<Lines> placed(String code, Optional<String> parents, List<String> others) {
    Lines lines = new Lines();
    putCode(lines, code);
    boolean fits =
        parents.map(way -> lines.put(way) || lines.putOverSeveral(way)).orElse(true)
            && others.stream().allMatch(lines::put);
    return fits ? Optional.of(lines) : Optional.empty();
  }

  /** The shortest way to say the parents, cut if it must be. */
  private Lines withCut(String code, List<String> parents, List<String> others) {
    Optional<String> shortest =
        parents.isEmpty() ? Optional.empty() : Optional.of(parents.get(parents.size() - 1));
    Optional<Lines> whole = placed(code, shortest, others);
    if (whole.isPresent()) {
      return whole.get();
    }
    Lines lines = new Lines();
    putCode(lines, code);
    lines.putCut(shortest.orElse(""));
    others.forEach(lines::put);
    return lines;
  }

  private void putCode(Lines lines, String code) {
    if (!codeApart) {
      lines.put(code);
    }
  }

  /** One line of text: no line breaks, ASCII if asked for. */
  private String plain(String text) {
    String line = text.replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
    return ascii ? Ascii.of(line) : line;
  }

  /** The lines of all sides, front first, as they fill up. */
  private final class Lines {
    private final String[] text = new String[lines * sides];

    /** Whether the next line goes on with the parents of this one. */
    private final boolean[] goesOn = new boolean[lines * sides];

    private LabelText.@Nullable Cut cut;

    Lines() {
      Arrays.fill(text, "");
    }

    /** Puts a fact into the first line with room for all of it. */
    boolean put(String fact) {
      for (int i = 0; i < text.length; i++) {
        String line = text[i].isEmpty() ? fact : text[i] + BETWEEN + fact;
        if (!goesOn[i] && measure.width(line) <= width) {
          text[i] = line;
          return true;
        }
      }
      return false;
    }

    /** Puts a fact into neighbouring empty lines of one side. */
    boolean putOverSeveral(String fact) {
      return putPieces(packed(beforeSigns(fact))) || putPieces(packed(unbreakable(fact)));
    }

    private boolean putPieces(List<String> pieces) {
      if (pieces.isEmpty()) {
        return false;
      }
      for (int i = 0; i < text.length; i++) {
        if (emptyFrom(i) >= pieces.size()) {
          putFrom(i, pieces);
          return true;
        }
      }
      return false;
    }

    private void putFrom(int first, List<String> pieces) {
      for (int j = 0; j < pieces.size(); j++) {
        text[first + j] = pieces.get(j);
        goesOn[first + j] = j + 1 < pieces.size();
      }
    }

    /** How many lines from this one on are empty, to the end of its side. */
    private int emptyFrom(int first) {
      int end = first;
      while (end < (first / lines + 1) * lines && text[end].isEmpty()) {
        end++;
      }
      return end - first;
    }

    /** Puts as much as there is room for where most room is, and an ellipsis. */
    void putCut(String fact) {
      String ellipsis = ascii ? "..." : "…";
      int first = 0;
      for (int i = 0; i < text.length; i++) {
        if (emptyFrom(i) > emptyFrom(first)) {
          first = i;
        }
      }
      List<String> whole = wholeLines(emptyFrom(first) - 1, fact);
      String rest = fact.substring(String.join(" ", whole).length()).strip();
      String start = measure.start(rest, width - measure.width(ellipsis)).strip();
      if (whole.isEmpty() || start.isEmpty()) {
        putCutIntoOneLine(fact, ellipsis);
        return;
      }
      List<String> pieces = new ArrayList<>(whole);
      pieces.add(start + ellipsis);
      putFrom(first, pieces);
      lose(fact, rest.substring(start.length()));
    }

    private void putCutIntoOneLine(String fact, String ellipsis) {
      int best = 0;
      for (int i = 0; i < text.length; i++) {
        if (room(i) > room(best)) {
          best = i;
        }
      }
      String start = measure.start(fact, room(best) - measure.width(ellipsis)).strip();
      if (!start.isEmpty()) {
        text[best] += (text[best].isEmpty() ? "" : BETWEEN) + start + ellipsis;
      }
      lose(fact, fact.substring(start.length()));
    }

    private void lose(String fact, String end) {
      cut = fact.isEmpty() ? null : new LabelText.Cut(fact, end.strip());
    }

    private double room(int i) {
      return width - (text[i].isEmpty() ? 0 : measure.width(text[i] + BETWEEN));
    }

    LabelText toText(String code, List<String> leftOut) {
      List<String> all = Arrays.asList(text);
      return new LabelText(
          withoutEmptyEnd(all.subList(0, lines)),
          withoutEmptyEnd(all.subList(lines, all.size())),
          code,
          leftOut,
          cut);
    }
  }

  private static List<String> withoutEmptyEnd(List<String> lines) {
    int end = lines.size();
    while (end > 0 && lines.get(end - 1).isEmpty()) {
      end--;
    }
    return lines.subList(0, end);
  }

  /** The pieces that begin with a hybrid sign. */
  private List<String> beforeSigns(String fact) {
    return List.of(fact.split(ascii ? " (?=x )" : " (?=× )", -1));
  }

  /** The start of a fact in no more lines than these, whole words in each. */
  private List<String> wholeLines(int most, String fact) {
    List<String> whole = new ArrayList<>();
    String rest = fact;
    while (whole.size() < most) {
      String line = wholeWords(rest);
      if (line.isEmpty() || line.length() == rest.length()) {
        break;
      }
      whole.add(line);
      rest = rest.substring(line.length()).strip();
    }
    return List.copyOf(whole);
  }

  /** As many words of the start as a line has room for. */
  private String wholeWords(String fact) {
    String line = "";
    for (String word : unbreakable(fact)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (measure.width(longer) > width) {
        break;
      }
      line = longer;
    }
    return line;
  }

  /** The pieces in as few lines as there must be; nothing if one of them is too long for a line. */
  private List<String> packed(List<String> pieces) {
    List<String> packed = new ArrayList<>();
    String line = "";
    for (String piece : pieces) {
      if (measure.width(piece) > width) {
        return List.of();
      }
      String longer = line.isEmpty() ? piece : line + " " + piece;
      if (measure.width(longer) <= width) {
        line = longer;
      } else {
        packed.add(line);
        line = piece;
      }
    }
    packed.add(line);
    return List.copyOf(packed);
  }

  /** The words, a hybrid sign kept with the word after it. */
  private static List<String> unbreakable(String fact) {
    return List.of(fact.split("(?<!(^| )[×x]) ", -1));
  }
}
