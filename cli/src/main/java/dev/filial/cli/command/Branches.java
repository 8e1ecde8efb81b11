package dev.filial.cli.command;

import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.TreeQuestion.Line;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Draws the lines of a tree with a branch before each. */
final class Branches {

  private Branches() {}

  /** Draws them, each parent under its child. */
  static void draw(List<Line> lines, boolean ascii, Screen screen) {
    boolean[] last = last(lines);
    List<String> guides = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      int depth = line.depth();
      while (guides.size() >= Math.max(1, depth)) {
        guides.remove(guides.size() - 1);
      }
      String above = String.join("", guides);
      if (depth == 0) {
        screen.branch("", "", text(line));
        continue;
      }
      String through = ascii ? "|  " : "│  ";
      String branch = last[i] ? (ascii ? "`- " : "└─ ") : (ascii ? "|- " : "├─ ");
      String under = last[i] ? "   " : through;
      screen.branch(above + branch, above + under, text(line));
      guides.add(under);
    }
  }

  /** Of each line, whether no other parent of the same child comes after it. */
  private static boolean[] last(List<Line> lines) {
    boolean[] last = new boolean[lines.size()];
    BitSet followed = new BitSet();
    for (int i = lines.size() - 1; i >= 0; i--) {
      int depth = lines.get(i).depth();
      last[i] = !followed.get(depth);
      followed.set(depth);
      followed.clear(depth + 1, Math.max(depth + 1, followed.length()));
    }
    return last;
  }

  private static String text(Line line) {
    StringBuilder text = new StringBuilder();
    if (!line.role().isEmpty()) {
      text.append(line.role()).append(' ');
    }
    text.append(line.name());
    if (!line.names().isEmpty()) {
      text.append(" \"").append(String.join("\", \"", line.names())).append('"');
    }
    if (!line.what().isEmpty()) {
      text.append(", ").append(line.what());
    }
    if (line.seenAbove()) {
      text.append(" (its parents stand above)");
    }
    if (line.cut()) {
      text.append(" (goes on)");
    }
    return text.toString();
  }
}
