package dev.filial.core.name;

import dev.filial.core.name.Notation.Node;
import dev.filial.core.name.Notation.Style;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Writes a pedigree: first, from the sources on, the number of each cross and how long its text
 * gets; then the text, with a stack of what is still to be written.
 */
final class NotationWriter {
  private static final Pattern NEEDS_QUOTES =
      Pattern.compile("[/*\"()\\[\\]\u00a0]|\\A\\d+\\z|\\s\\s");

  private final List<Node> nodes;
  private final Style style;
  private final int[] levels;
  private final long[] lengths;

  // Of a backcross: how often its recurrent parent occurs, and what it was first crossed with.
  private final int[] leftDoses;
  private final int[] leftDonor;
  private final int[] rightDoses;
  private final int[] rightDonor;

  NotationWriter(List<Node> nodes, Style style) {
    this.nodes = nodes;
    this.style = style;
    int size = nodes.size();
    levels = new int[size];
    lengths = new long[size];
    leftDoses = new int[size];
    leftDonor = new int[size];
    rightDoses = new int[size];
    rightDonor = new int[size];
    measure();
  }

  private void measure() {
    for (int i = 0; i < nodes.size(); i++) {
      if (nodes.get(i) instanceof Node.Cross cross) {
        findBackcrosses(i, cross);
        int seed = isLeftBackcross(i) || !isRightBackcross(i) ? cross.seed() : rightDonor[i];
        int pollen = isLeftBackcross(i) ? leftDonor[i] : cross.pollen();
        levels[i] = Math.max(levels[seed], levels[pollen]) + 1;
        int doses = isLeftBackcross(i) ? leftDoses[i] : isRightBackcross(i) ? rightDoses[i] : 0;
        int star = doses == 0 ? 0 : 1 + Integer.toString(doses).length();
        lengths[i] =
            Math.min(
                Long.MAX_VALUE / 4,
                lengths[seed] + lengths[pollen] + mark(levels[i]).length() + star);
      } else {
        lengths[i] = written((Node.Source) nodes.get(i)).length();
      }
    }
  }

  private void findBackcrosses(int i, Node.Cross cross) {
    leftDoses[i] = 1;
    leftDonor[i] = cross.pollen();
    rightDoses[i] = 1;
    rightDonor[i] = cross.seed();
    if (style == Style.PLAIN) {
      return;
    }
    if (nodes.get(cross.seed()) instanceof Node.Source recurrent
        && nodes.get(cross.pollen()) instanceof Node.Cross before
        && recurrent.equals(nodes.get(before.seed()))) {
      leftDoses[i] = leftDoses[cross.pollen()] + 1;
      leftDonor[i] = leftDonor[cross.pollen()];
    }
    if (nodes.get(cross.pollen()) instanceof Node.Source recurrent
        && nodes.get(cross.seed()) instanceof Node.Cross before
        && recurrent.equals(nodes.get(before.pollen()))) {
      rightDoses[i] = rightDoses[cross.seed()] + 1;
      rightDonor[i] = rightDonor[cross.seed()];
    }
  }

  private boolean isLeftBackcross(int i) {
    return leftDoses[i] > 1 && leftDoses[i] <= Notation.MOST_DOSES;
  }

  private boolean isRightBackcross(int i) {
    return rightDoses[i] > 1 && rightDoses[i] <= Notation.MOST_DOSES;
  }

  /** How long the text is. */
  long length() {
    return lengths[nodes.size() - 1];
  }

  String text() {
    int root = nodes.size() - 1;
    if (length() > Notation.MOST) {
      throw new IllegalArgumentException(
          "this pedigree written out on one line has more than "
              + Notation.MOST
              + " characters, because plants with many ancestors are parents several times;"
              + " write the pedigree of one of its parents");
    }
    StringBuilder text = new StringBuilder((int) lengths[root]);
    // Holds indexes of nodes and pieces of text, the next to be written on top.
    Deque<Object> rest = new ArrayDeque<>();
    rest.push(root);
    while (!rest.isEmpty()) {
      Object top = rest.pop();
      if (top instanceof Integer i) {
        write(i, text, rest);
      } else {
        text.append(top);
      }
    }
    return text.toString();
  }

  private void write(int i, StringBuilder text, Deque<Object> rest) {
    if (nodes.get(i) instanceof Node.Source source) {
      text.append(written(source));
      return;
    }
    Node.Cross cross = (Node.Cross) nodes.get(i);
    String mark = mark(levels[i]);
    if (isLeftBackcross(i)) {
      rest.push(leftDonor[i]);
      rest.push("*" + leftDoses[i] + mark);
      rest.push(cross.seed());
    } else if (isRightBackcross(i)) {
      if (style == Style.BACKCROSS_NUMBER_FIRST) {
        rest.push(cross.pollen());
        rest.push(mark + rightDoses[i] + "*");
      } else {
        rest.push("*" + rightDoses[i]);
        rest.push(cross.pollen());
        rest.push(mark);
      }
      rest.push(rightDonor[i]);
    } else {
      rest.push(cross.pollen());
      rest.push(mark);
      rest.push(cross.seed());
    }
  }

  static String mark(int level) {
    return level == 1 ? "/" : level == 2 ? "//" : "/" + level + "/";
  }

  private static String written(Node.Source source) {
    String name = source.name();
    return NEEDS_QUOTES.matcher(name).find() ? '"' + name.replace("\"", "\"\"") + '"' : name;
  }

  /** The nodes with every use of one a node of its own, in the order in which text has them. */
  static List<Node> unshared(List<Node> nodes) {
    long[] sizes = new long[nodes.size()];
    for (int i = 0; i < sizes.length; i++) {
      sizes[i] = 1;
      if (nodes.get(i) instanceof Node.Cross cross) {
        sizes[i] = Math.min(Long.MAX_VALUE / 4, 1 + sizes[cross.seed()] + sizes[cross.pollen()]);
      }
    }
    if (sizes[sizes.length - 1] > Notation.MOST) {
      throw new IllegalArgumentException(
          "this pedigree written out has more than " + Notation.MOST + " sources and crosses");
    }
    // Backwards: a cross, then all of its pollen parent, then all of its seed parent.
    int place = (int) sizes[sizes.length - 1];
    Node[] out = new Node[place];
    Deque<Integer> rest = new ArrayDeque<>();
    rest.push(nodes.size() - 1);
    while (!rest.isEmpty()) {
      int i = rest.pop();
      place--;
      if (nodes.get(i) instanceof Node.Cross cross) {
        out[place] = new Node.Cross(place - 1 - (int) sizes[cross.pollen()], place - 1);
        rest.push(cross.seed());
        rest.push(cross.pollen());
      } else {
        out[place] = nodes.get(i);
      }
    }
    return List.of(out);
  }
}
