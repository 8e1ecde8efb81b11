package dev.filial.cli.screen;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A page of results, written from top to bottom: sentences, lines of name and value, tables, what
 * to write on the tag, what comes next. No line is wider than the terminal.
 */
public final class Screen {

  private static final String INDENT = "  ";
  private static final int LONGEST_BAR = 40;

  private record Field(String name, String value, boolean strong) {}

  private final PrintWriter out;
  private final int width;
  private final int proseWidth;
  private final boolean colour;
  private final List<Field> fields = new ArrayList<>();

  /** A page on the terminal's standard output. */
  public Screen(Terminal terminal) {
    this.out = terminal.out();
    this.width = terminal.width();
    this.proseWidth = terminal.proseWidth();
    this.colour = terminal.colour();
  }

  /**
   * A line set in one step, with a bar as long as {@code part} of the room there is, 40 columns at
   * the most: part of a picture of how things are spread.
   *
   * @param name what the bar stands for; the names of bars under each other are of one length
   * @param part 0 to 1
   * @param value what is written at the end of the bar
   */
  public Screen bar(String name, double part, String value) {
    int room = width - INDENT.length() - name.length() - value.length() - 3;
    int length = (int) Math.round(part * Math.max(1, Math.min(LONGEST_BAR, room)));
    flush();
    out.println(INDENT + name + "  " + "#".repeat(length) + (length == 0 ? "" : " ") + value);
    return this;
  }

  /** A sentence or several. */
  public Screen say(String text) {
    flush();
    for (String part : Wrap.lines(text, proseWidth)) {
      line(part);
    }
    return this;
  }

  /** A heading over what follows. */
  public Screen heading(String text) {
    flush();
    for (String part : Wrap.lines(text, proseWidth)) {
      line(strong(part));
    }
    return this;
  }

  /** A line of name and value; the values of lines that follow each other stand aligned. */
  public Screen field(String name, Object value) {
    fields.add(new Field(name, String.valueOf(value), false));
    return this;
  }

  /** As {@link #field}, the name standing out and both set in: a list of things explained. */
  public Screen item(String name, String explanation) {
    fields.add(new Field(INDENT + name, explanation, true));
    return this;
  }

  /** A word and what it introduces, which wraps beside it: {@code Usage: filial ...}. */
  public Screen lead(String word, String text) {
    flush();
    int margin = DisplayWidth.of(word) + 1;
    line(strong(word) + " " + String.join("\n", Wrap.hanging(text, proseWidth, margin)));
    return this;
  }

  /** A table; nothing at all if it has no rows. */
  public Screen table(Table table) {
    flush();
    if (!table.isEmpty()) {
      for (String row : table.layOut(width)) {
        line(row);
      }
    }
    return this;
  }

  /** A line set in by so many steps of two columns, as in a tree; it wraps under itself. */
  public Screen indented(int steps, String text) {
    flush();
    int margin = Math.min(INDENT.length() * steps, width / 2);
    line(" ".repeat(margin) + String.join("\n", Wrap.hanging(text, width, margin)));
    return this;
  }

  /**
   * A line of a drawn tree. Branches that would take more than half of the window are cut on the
   * left.
   *
   * @param branch what stands before its first line
   * @param under what stands before the lines it wraps into
   */
  public Screen branch(String branch, String under, String text) {
    flush();
    String before = withinHalf(branch);
    String following = withinHalf(under);
    int margin = DisplayWidth.of(before);
    List<String> wrapped = Wrap.lines(text, width - margin);
    for (int i = 0; i < wrapped.size(); i++) {
      line(((i == 0 ? before : following) + wrapped.get(i)).stripTrailing());
    }
    return this;
  }

  private String withinHalf(String branch) {
    int room = width / 2;
    return branch.length() <= room ? branch : "…" + branch.substring(branch.length() - room + 1);
  }

  /** Text as it is, never wrapped: what a program will read, such as a script. */
  public Screen raw(String text) {
    flush();
    out.print(text);
    return this;
  }

  /** An empty line. */
  public Screen blank() {
    flush();
    line("");
    return this;
  }

  /** What to write on the tag, each line of it as it is to be written. */
  public Screen tag(String... lines) {
    flush();
    if (lines.length == 1) {
      lead("Write on the tag:", Wrap.keepingDoubleSpaces(lines[0]));
      return this;
    }
    line(strong("Write on the tag:"));
    Arrays.stream(lines).forEach(text -> indented(2, Wrap.keepingDoubleSpaces(text)));
    return this;
  }

  /** What comes next at the bench, or what to type next. */
  public Screen next(String text) {
    flush();
    lead("Next:", text);
    return this;
  }

  /** Writes what is still held back. Called by the frame when an answer was shown. */
  public void flush() {
    if (fields.isEmpty()) {
      return;
    }
    List<Field> held = List.copyOf(fields);
    fields.clear();
    // Loops, not streams, here and where else every command passes: those start slowly.
    int nameWidth = 0;
    for (Field field : held) {
      nameWidth = Math.max(nameWidth, DisplayWidth.of(field.name()));
    }
    int margin = Math.min(nameWidth, width / 2) + INDENT.length();
    for (Field field : held) {
      write(field, margin);
    }
  }

  private void write(Field field, int margin) {
    String name = field.name().stripLeading();
    String inset = " ".repeat(field.name().length() - name.length());
    List<String> names = Wrap.lines(name, width - inset.length());
    List<String> values = Wrap.hanging(field.value(), Math.max(proseWidth, margin + 2), margin);
    for (String part : names.subList(0, names.size() - 1)) {
      line(inset + styled(field, part));
    }
    String last = names.get(names.size() - 1);
    int used = inset.length() + DisplayWidth.of(last);
    String styledName = inset + styled(field, last);
    if (used + INDENT.length() > margin) {
      line(styledName);
      styledName = "";
      used = 0;
    }
    line(styledName + " ".repeat(margin - used) + String.join("\n", values));
  }

  private String styled(Field field, String text) {
    return styled(text, field.strong() ? "1" : "2");
  }

  private String strong(String text) {
    return styled(text, "1");
  }

  private String styled(String text, String code) {
    return colour ? "\u001B[" + code + "m" + text + "\u001B[0m" : text;
  }

  // Not println: the line separator is the same on every system, so that output can be compared.
  private void line(String text) {
    out.print(text + "\n");
  }
}
