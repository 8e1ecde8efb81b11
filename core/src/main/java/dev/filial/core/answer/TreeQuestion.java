package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.List;
import java.util.Optional;


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

  /**
   * The tree behind one plant.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   */
  public Tree ask(Code code) {
    Item item = Things.required(view, code);
    RegisterPedigree behind = RegisterPedigree.of(view, List.of(item.code()), false);
    List<Line> lines =
        new TreeWalk(behind.pedigree(), generations, new Recorded(behind))
            .from(behind.pedigree().indexOf(item.code().text()));
    return new Tree(item.code(), lines, behind.notes());
  }

  /** What the register says of the plants. */
  private final class Recorded implements TreeWalk.Facts {
    private final RegisterPedigree behind;

    Recorded(RegisterPedigree behind) {
      this.behind = behind;
    }

    @Override
    public String what(int plant) {
      Founder founder = behind.pedigree().founder(plant);
      if (founder == null) {
        return "";
      }
      String field = founder.fieldNumber() == null ? "" : " " + founder.fieldNumber();
      return item(plant)
              .map(item -> Describing.of(view, item))
              .orElseGet(() -> TreeWalk.makeup(founder))
          + field;
    }

    @Override
    public List<String> names(int plant) {
      return item(plant).map(Item::names).orElse(List.of());
    }

    @Override
    public boolean isJoined(int plant) {
      return item(plant).map(Item::sameAs).isPresent();
    }

    private Optional<Item> item(int plant) {
      return behind.item(behind.pedigree().code(plant));
    }
  }
}
