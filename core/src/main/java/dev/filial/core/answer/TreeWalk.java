package dev.filial.core.answer;

import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Goes through the plants behind one, each parent after its child, the seed parent and all behind
 * it before the pollen parent. The parents of a plant met twice are gone through once, so that the
 * lines are never more than the plants have parents.
 */
final class TreeWalk {

  /** What is told of a plant beside its code. */
  interface Facts {
    /** What a plant is whose parents are not told; else nothing. */
    String what(int plant);

    /** Its own names. */
    List<String> names(int plant);

    /** Whether it is another record of the plant it repeats, and no offset of it. */
    boolean isJoined(int plant);
  }

  private final Pedigree pedigree;
  private final int generations;
  private final Facts facts;

  TreeWalk(Pedigree pedigree, int generations, Facts facts) {
    this.pedigree = pedigree;
    this.generations = generations;
    this.facts = facts;
  }

  private record Open(int plant, int depth, String role) {}

  List<TreeQuestion.Line> from(int root) {
    List<TreeQuestion.Line> lines = new ArrayList<>();
    Set<Integer> opened = new HashSet<>();
    Deque<Open> open = new ArrayDeque<>();
    open.push(new Open(root, 0, ""));
    while (!open.isEmpty()) {
      Open next = open.pop();
      if (next.plant() == Pedigree.UNKNOWN) {
        lines.add(
            new TreeQuestion.Line(
                next.depth(), next.role(), "unknown", "", List.of(), false, false));
        continue;
      }
      List<Open> parents = parents(next);
      boolean seenAbove = !parents.isEmpty() && opened.contains(next.plant());
      boolean cut = !parents.isEmpty() && !seenAbove && next.depth() >= generations;
      lines.add(
          new TreeQuestion.Line(
              next.depth(),
              next.role(),
              pedigree.code(next.plant()),
              facts.what(next.plant()),
              facts.names(next.plant()),
              seenAbove,
              cut));
      if (!seenAbove && !cut) {
        opened.add(next.plant());
        for (int i = parents.size() - 1; i >= 0; i--) {
          open.push(parents.get(i));
        }
      }
    }
    return List.copyOf(lines);
  }

  private List<Open> parents(Open child) {
    List<Open> parents = new ArrayList<>();
    int depth = child.depth() + 1;
    if (pedigree.isRamet(child.plant())) {
      String role =
          facts.isJoined(child.plant())
              ? "the same plant as"
              : pedigree.isDoubled(child.plant()) ? "doubled offset of" : "offset of";
      parents.add(new Open(pedigree.rametOf(child.plant()), depth, role));
      return parents;
    }
    List<Descent> descents = pedigree.descents(child.plant());
    for (Descent descent : descents) {
      String way =
          descents.size() == 1
              ? ""
              : descent.share().toPercent(1) + " " + descent.route().text() + ": ";
      if (descent instanceof Descent.Sexual cross) {
        if (cross.seed() == cross.pollen() && cross.seed() != Pedigree.UNKNOWN) {
          parents.add(new Open(cross.seed(), depth, way + "selfed"));
        } else {
          parents.add(new Open(cross.seed(), depth, way + "seed parent"));
          parents.add(new Open(cross.pollen(), depth, way + "pollen parent"));
        }
      } else {
        parents.add(new Open(((Descent.Copy) descent).of(), depth, way + "the same as"));
      }
    }
    return parents;
  }

  /** The make-up of a founder that has no record of its own. */
  static String makeup(Founder founder) {
    return founder.makeup().shares().isEmpty()
        ? "unknown"
        : founder.makeup().shares().entrySet().stream()
            .map(
                share ->
                    share.getValue().isOne()
                        ? share.getKey()
                        : share.getValue() + " " + share.getKey())
            .collect(Collectors.joining(" + "));
  }
}
