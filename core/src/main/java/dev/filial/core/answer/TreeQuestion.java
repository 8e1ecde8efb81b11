package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The pedigree of a plant as an indented tree: the seed parent above, the pollen parent below. */
public final class TreeQuestion {

  private final RegisterView view;
  private final int generations;

  private TreeQuestion(RegisterView view, int generations) {
    this.view = view;
    this.generations = generations;
  }

  /** Asks {@code view} for the whole tree. */
  public static TreeQuestion of(RegisterView view) {
    return new TreeQuestion(view, Integer.MAX_VALUE);
  }

  /**
   * The same, no further back than so many generations.
   *
   * @param most 1 or more
   * @throws IllegalArgumentException if it is less
   */
  public TreeQuestion withGenerations(int most) {
    if (most < 1) {
      throw new IllegalArgumentException(
          "a tree goes back 1 generation or more, not " + most + "; leave the number out for all");
    }
    return new TreeQuestion(view, most);
  }

  /**
   * One plant of the tree.
   *
   * @param depth how far from the plant asked for
   * @param role what it is to the plant above: empty for that asked for, else seed parent, pollen
   *     parent, selfed, offset of and so on, after the way and its share where there are several
   * @param name its code, or what it is when it has none
   * @param what its taxon, make-up or nothing
   * @param names its own names
   * @param seenAbove whether its own parents stand further up
   * @param cut whether its parents were left out because of the bound on generations
   */
  public record Line(
      int depth,
      String role,
      String name,
      String what,
      List<String> names,
      boolean seenAbove,
      boolean cut) {}

  /**
   * A tree.
   *
   * @param code the plant asked for
   * @param lines the plants, each parent below its child and one deeper
   * @param notes doubts in the records, one sentence each
   */
  public record Tree(Code code, List<Line> lines, List<String> notes) {}

  private record Open(int plant, int depth, String role) {}

  /**
   * The tree behind one plant.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   */
  public Tree ask(Code code) {
    Item item = Things.required(view, code);
    RegisterPedigree behind = RegisterPedigree.of(view, List.of(item.code()), false);
    Pedigree pedigree = behind.pedigree();
    List<Line> lines = new ArrayList<>();
    Set<Integer> opened = new HashSet<>();
    Deque<Open> open = new ArrayDeque<>();
    open.push(new Open(pedigree.indexOf(item.code().text()), 0, ""));
    while (!open.isEmpty()) {
      Open next = open.pop();
      if (next.plant() == Pedigree.UNKNOWN) {
        lines.add(new Line(next.depth(), next.role(), "unknown", "", List.of(), false, false));
        continue;
      }
      List<Open> parents = parents(behind, next);
      boolean seenAbove = !parents.isEmpty() && opened.contains(next.plant());
      boolean cut = !parents.isEmpty() && !seenAbove && next.depth() >= generations;
      String name = pedigree.code(next.plant());
      lines.add(
          new Line(
              next.depth(),
              next.role(),
              name,
              what(behind, next.plant()),
              behind.item(name).map(Item::names).orElse(List.of()),
              seenAbove,
              cut));
      if (!seenAbove && !cut) {
        opened.add(next.plant());
        for (int i = parents.size() - 1; i >= 0; i--) {
          open.push(parents.get(i));
        }
      }
    }
    return new Tree(item.code(), List.copyOf(lines), behind.notes());
  }

  private static List<Open> parents(RegisterPedigree behind, Open child) {
    Pedigree pedigree = behind.pedigree();
    List<Open> parents = new ArrayList<>();
    int depth = child.depth() + 1;
    if (pedigree.isRamet(child.plant())) {
      boolean joined = behind.item(pedigree.code(child.plant())).map(Item::sameAs).isPresent();
      String role =
          joined
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

  /** What a founder is; nothing for what was raised here, whose parents say it. */
  private String what(RegisterPedigree behind, int plant) {
    Founder founder = behind.pedigree().founder(plant);
    if (founder == null) {
      return "";
    }
    String field = founder.fieldNumber() == null ? "" : " " + founder.fieldNumber();
    return behind
            .item(behind.pedigree().code(plant))
            .map(item -> Describing.of(view, item))
            .orElseGet(() -> makeup(founder))
        + field;
  }

  private static String makeup(Founder founder) {
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
