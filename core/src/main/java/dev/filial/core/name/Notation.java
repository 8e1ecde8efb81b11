package dev.filial.core.name;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A pedigree as it is written on one line: {@code A/B//C} for (A × B) × C, the seed parent left.
 *
 * <p>The notation is that of L. H. Purdy, W. Q. Loegering, C. F. Konzak, C. J. Peterson and R. E.
 * Allan, A proposed standard method for illustrating pedigrees of small grain varieties, Crop
 * Science 8:405-406, 1968. {@code /} is a first cross, {@code //} the next, {@code /3/}, {@code
 * /4/} … later ones. {@code A*3/B} is A × (A × (A × B)), and {@code B/3*A} or {@code B/A*3} is ((B
 * × A) × A) × A: the number says how often the recurrent parent occurs. A name that occurs twice is
 * one source, not one plant.
 *
 * <p>A pedigree is kept flat, each cross behind its two parents and the whole last, so that one of
 * a hundred thousand generations is as good as one of three; nothing here is recursive. Reading and
 * writing take time in proportion to the text.
 *
 * <p>Names with characters that mean something in the notation ({@code / * " ( ) [ ]}), names of
 * digits alone and names with two spaces in a row are put in double quotes, a double quote within
 * them being doubled: {@code "7/8 hybrid"/B}.
 *
 * @param nodes sources and crosses, a cross behind both its parents; the last is the pedigree
 *     itself, and each of the others is the parent of one
 */
public record Notation(List<Node> nodes) {

  /** The most characters that are written, and the most nodes that are read. */
  public static final int MOST = 20_000_000;

  /** The highest number that may stand at an asterisk. */
  public static final int MOST_DOSES = 999;

  /** A source or a cross. */
  public sealed interface Node {

    /**
     * A plant, line or taxon that the pedigree begins with.
     *
     * @param name without control characters, not blank, no space at either end
     */
    record Source(String name) implements Node {
      /** Checks the name. */
      public Source {
        if (name.isEmpty() || !name.equals(name.strip())) {
          throw new IllegalArgumentException(
              "a source needs a name, without space around it: \"" + Quote.of(name) + "\"");
        }
        if (name.codePoints().anyMatch(Character::isISOControl)) {
          throw new IllegalArgumentException(
              "a name cannot have line breaks or control characters: " + Quote.of(name));
        }
      }
    }

    /**
     * A cross of two earlier nodes.
     *
     * @param seed the index of the seed parent
     * @param pollen the index of the pollen parent
     */
    record Cross(int seed, int pollen) implements Node {}
  }

  /** How backcrosses are written. */
  public enum Style {
    /** Every cross by itself: {@code A//A/B}, {@code B/A//A}. */
    PLAIN,
    /** With the number before the asterisk on the right: {@code A*2/B}, {@code B/2*A}. */
    BACKCROSS_NUMBER_FIRST,
    /** With the asterisk before the number throughout: {@code A*2/B}, {@code B/A*2}. */
    BACKCROSS_STAR_FIRST
  }

  /**
   * Checks the shape.
   *
   * @throws IllegalArgumentException if there is no node, a cross has a parent that is not before
   *     it, or a node other than the last is nobody's parent
   */
  public Notation {
    nodes = List.copyOf(nodes);
    if (nodes.isEmpty()) {
      throw new IllegalArgumentException("a pedigree has at least one source");
    }
    boolean[] isParent = new boolean[nodes.size()];
    for (int i = 0; i < nodes.size(); i++) {
      if (nodes.get(i) instanceof Node.Cross cross) {
        checkParent(cross.seed(), i);
        checkParent(cross.pollen(), i);
        isParent[cross.seed()] = true;
        isParent[cross.pollen()] = true;
      }
    }
    for (int i = 0; i < nodes.size() - 1; i++) {
      if (!isParent[i]) {
        throw new IllegalArgumentException(
            "node " + i + " (" + nodes.get(i) + ") is the parent of none; only the last may be");
      }
    }
  }

  private static void checkParent(int parent, int cross) {
    if (parent < 0 || parent >= cross) {
      throw new IllegalArgumentException(
          "cross " + cross + " has the parent " + parent + ", which is not before it");
    }
  }

  /**
   * Reads a pedigree. A single name is one too. Spaces around slashes and asterisks mean nothing;
   * within a name they are one space each.
   *
   * @throws NotationException if the text cannot be read; it names the column and says what to
   *     write
   */
  public static Notation parse(String text) {
    return new Notation(new NotationReader(text).read());
  }

  /**
   * The pedigree with every cross written out and the lowest numbers that are right.
   *
   * @throws IllegalArgumentException if it is longer than {@link #MOST} characters, as when nodes
   *     with many ancestors are parents several times
   */
  public String text() {
    return text(Style.PLAIN);
  }

  /**
   * The pedigree in this style. A node that is parent twice is written twice.
   *
   * @throws IllegalArgumentException if it is longer than {@link #MOST} characters
   */
  public String text(Style style) {
    return new NotationWriter(nodes, style).text();
  }

  /** How many characters {@link #text(Style)} has, or would have, without writing it. */
  public long length(Style style) {
    return new NotationWriter(nodes, style).length();
  }

  /**
   * The pedigree as reading its text would give it: every use of a node a node of its own, the
   * parents of a cross right before it. Text says nothing about which sources were one plant.
   *
   * @throws IllegalArgumentException if it would have more than {@link #MOST} nodes
   */
  public Notation asWritten() {
    return new Notation(NotationWriter.unshared(nodes));
  }

  /** The names of the sources, each once, in order of their first mention. */
  public Set<String> sources() {
    Set<String> names = new LinkedHashSet<>();
    for (Node node : nodes) {
      if (node instanceof Node.Source source) {
        names.add(source.name());
      }
    }
    return names;
  }

  /** How many crosses lie one behind the other on the longest way to a source; 0 for a source. */
  public int generations() {
    int[] levels = new int[nodes.size()];
    for (int i = 0; i < levels.length; i++) {
      if (nodes.get(i) instanceof Node.Cross cross) {
        levels[i] = Math.max(levels[cross.seed()], levels[cross.pollen()]) + 1;
      }
    }
    return levels[levels.length - 1];
  }

  /** The text, or if that is too long a word on how large the pedigree is. */
  @Override
  public String toString() {
    try {
      String text = text();
      return text.length() <= 1000 ? text : Quote.of(text) + " (" + nodes.size() + " nodes)";
    } catch (IllegalArgumentException e) {
      return "a pedigree of " + nodes.size() + " nodes";
    }
  }

  /** Puts a pedigree together; an index used twice is one plant that was parent twice. */
  public static final class Builder {
    private final List<Node> nodes = new ArrayList<>();

    /** A builder with nothing in it. */
    public Builder() {}

    /**
     * Adds a source and gives its index.
     *
     * @throws IllegalArgumentException if the name is blank, has space around it or control
     *     characters within
     */
    public int source(String name) {
      nodes.add(new Node.Source(name));
      return nodes.size() - 1;
    }

    /**
     * Adds a cross of two nodes and gives its index. A selfing has the same node twice.
     *
     * @throws IllegalArgumentException if there is no node with one of these indexes
     */
    public int cross(int seed, int pollen) {
      checkParent(seed, nodes.size());
      checkParent(pollen, nodes.size());
      nodes.add(new Node.Cross(seed, pollen));
      return nodes.size() - 1;
    }

    /**
     * The pedigree of the node that was added last.
     *
     * @throws IllegalArgumentException if there is none, or one of the others is nobody's parent
     */
    public Notation build() {
      return new Notation(nodes);
    }
  }
}
