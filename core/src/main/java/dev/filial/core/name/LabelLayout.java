package dev.filial.core.name;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The room on a label, and the fitting of text into it.
 *
 * <p>Facts are placed one after the other in order of importance, each into the first line with
 * room for it, two spaces behind what stands there; a later one never moves an earlier one, so what
 * matters more is never lost to what matters less. Parents too long for one line may run over
 * several, broken at spaces and before the ×. Of the ways to say the parents the longest is taken
 * that costs none of the other facts its place; if even the shortest has no room it is cut,
 * visibly, with an ellipsis. Nothing else is ever cut, the code least of all: it fits or is left
 * out.
 *
 * <p>Columns are counted as a reader sees characters: letters with their accents are one, emoji and
 * East Asian characters two.
 *
 * @param columns characters in a line, at least 7
 * @param lines lines on a side, 1 to 20
 * @param sides sides that are written on, 1 or 2
 * @param ascii whether the text is brought to plain ASCII: × as x, letters without marks, and ? for
 *     what has no like
 */
public record LabelLayout(int columns, int lines, int sides, boolean ascii) {

  /** A plastic tag of 10 × 1.3 cm, written on both sides: two lines of 24 on each. */
  public static final LabelLayout STANDARD = new LabelLayout(24, 2, 2, false);

  private static final String BETWEEN = "  ";

  /**
   * Checks the room.
   *
   * @throws IllegalArgumentException if there is not room for any code, or more than any label has
   */
  public LabelLayout {
    if (columns < 7 || columns > 1000) {
      throw new IllegalArgumentException(
          "a label has 7 to 1000 columns, the shortest code taking 7; not " + columns);
    }
    if (lines < 1 || lines > 20) {
      throw new IllegalArgumentException("a label has 1 to 20 lines on a side, not " + lines);
    }
    if (sides < 1 || sides > 2) {
      throw new IllegalArgumentException("a label has 1 side or 2, not " + sides);
    }
  }

  /** This layout for plain ASCII. */
  public LabelLayout inAscii() {
    return new LabelLayout(columns, lines, sides, true);
  }

  /**
   * The facts on this label.
   *
   * @throws IllegalArgumentException if the code does not fit into one line
   */
  public LabelText fit(LabelFacts facts) {
    String code = plain(facts.code());
    if (Columns.width(code) > columns) {
      throw new IllegalArgumentException(
          "the code "
              + code
              + " needs "
              + Columns.width(code)
              + " columns and a line of this label has "
              + columns
              + "; a code is never cut. Take a wider label or smaller letters.");
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
    facts.sown().ifPresent(date -> others.add(TagDate.text(date)));
    facts.generation().ifPresent(generation -> others.add(plain(generation)));
    facts.remarks().forEach(remark -> others.add(plain(remark)));
    others.removeIf(String::isEmpty);
    return others;
  }

  /** The lines with all of these on them, if there is room. */
  private Optional<Lines> placed(String code, Optional<String> parents, List<String> others) {
    Lines lines = new Lines();
    lines.put(code);
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
    lines.put(code);
    lines.putCut(shortest.orElse(""));
    others.forEach(lines::put);
    return lines;
  }

  /** One line of text: no line breaks, ASCII if asked for. */
  private String plain(String text) {
    String line = text.replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
    return ascii ? Ascii.of(line) : line;
  }

  /** The lines of all sides, front first, as they fill up. */
  private final class Lines {
    private final String[] text = new String[lines * sides];

    Lines() {
      Arrays.fill(text, "");
    }

    /** Puts a fact into the first line with room for all of it. */
    boolean put(String fact) {
      for (int i = 0; i < text.length; i++) {
        String line = text[i].isEmpty() ? fact : text[i] + BETWEEN + fact;
        if (Columns.width(line) <= columns) {
          text[i] = line;
          return true;
        }
      }
      return false;
    }

    /** Puts a fact into neighbouring empty lines, of one side if that has room. */
    boolean putOverSeveral(String fact) {
      List<String> broken = broken(fact);
      if (broken.isEmpty()) {
        return false;
      }
      for (boolean oneSide : new boolean[] {true, false}) {
        for (int i = 0; i + broken.size() <= text.length; i++) {
          int end = i + broken.size();
          boolean isEmpty = Arrays.stream(text, i, end).allMatch(String::isEmpty);
          boolean isOnOneSide = i / lines == (end - 1) / lines;
          if (isEmpty && (isOnOneSide || !oneSide)) {
            for (int j = i; j < end; j++) {
              text[j] = broken.get(j - i);
            }
            return true;
          }
        }
      }
      return false;
    }

    /** Puts as much as there is room for into the first line with most room, and an ellipsis. */
    void putCut(String fact) {
      String ellipsis = ascii ? "..." : "…";
      int best = 0;
      for (int i = 0; i < text.length; i++) {
        if (room(i) > room(best)) {
          best = i;
        }
      }
      String start = Columns.start(fact, room(best) - ellipsis.length()).strip();
      if (!start.isEmpty()) {
        text[best] += (text[best].isEmpty() ? "" : BETWEEN) + start + ellipsis;
      }
    }

    private int room(int i) {
      return columns - (text[i].isEmpty() ? 0 : Columns.width(text[i]) + BETWEEN.length());
    }

    LabelText toText(String code, List<String> leftOut) {
      List<String> all = Arrays.asList(text);
      return new LabelText(
          withoutEmptyEnd(all.subList(0, lines)),
          withoutEmptyEnd(all.subList(lines, all.size())),
          code,
          leftOut);
    }
  }

  private static List<String> withoutEmptyEnd(List<String> lines) {
    int end = lines.size();
    while (end > 0 && lines.get(end - 1).isEmpty()) {
      end--;
    }
    return lines.subList(0, end);
  }

  /** The fact over several lines: broken before each × if that will do, else at any space. */
  private List<String> broken(String fact) {
    List<String> atSigns = packed(List.of(fact.split(ascii ? " (?=x )" : " (?=× )", -1)));
    return atSigns.isEmpty() ? packed(unbreakable(fact)) : atSigns;
  }

  /** The pieces in as few lines as there must be; nothing if one of them is too long for a line. */
  private List<String> packed(List<String> pieces) {
    List<String> packed = new ArrayList<>();
    String line = "";
    for (String piece : pieces) {
      if (Columns.width(piece) > columns) {
        return List.of();
      }
      String longer = line.isEmpty() ? piece : line + " " + piece;
      if (Columns.width(longer) <= columns) {
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
