package dev.filial.core.answer;

import dev.filial.core.ancestry.ExpectedShares;
import dev.filial.core.ancestry.GenerationClassifier;
import dev.filial.core.ancestry.Level;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.Route;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * All plants behind one, each once, and what each is to its offspring: what a drawing of the
 * pedigree is made of.
 *
 * <p>The order of the plants and of their parents depends on the pedigree alone, and not on the
 * order in which it was recorded. Cost in proportion to the plants, times the taxa.
 */
public final class PlantsBehindQuestion {

  private final RegisterView view;
  private final int generations;

  private PlantsBehindQuestion(RegisterView view, int generations) {
    this.view = view;
    this.generations = generations;
  }

  /** Asks {@code view} for all there are. */
  public static PlantsBehindQuestion of(RegisterView view) {
    return new PlantsBehindQuestion(view, Integer.MAX_VALUE);
  }

  /**
   * The same, no further back than so many generations by the shortest way.
   *
   * @param most 1 or more
   * @throws IllegalArgumentException if it is less
   */
  public PlantsBehindQuestion withGenerations(int most) {
    if (most < 1) {
      throw new IllegalArgumentException(
          "a pedigree goes back 1 generation or more, not "
              + most
              + "; leave the number out for all");
    }
    return new PlantsBehindQuestion(view, most);
  }

  /** What a parent is to its offspring. */
  public enum Role {
    /** It bore the seed. */
    SEED("seed parent"),
    /** It gave the pollen. */
    POLLEN("pollen parent"),
    /** It bore the seed and gave the pollen. */
    SELFED("selfed"),
    /** The offspring is an offset, cutting or scion of it. */
    OFFSET("offset of"),
    /** The same with its chromosomes doubled. */
    DOUBLED("doubled offset of"),
    /** Both are records of one plant. */
    SAME("the same plant as"),
    /** The offspring repeats it: seed without fertilisation, or a plant that may be it. */
    REPEATED("a repeat of");

    private final String text;

    Role(String text) {
      this.text = text;
    }

    /** What it is in a grower's words. */
    public String text() {
      return text;
    }
  }

  /**
   * A taxon and its share in a plant.
   *
   * @param taxon its name; "unknown" for what nobody knows
   * @param share the expected share of the chromosome sets, above 0 and at most 1
   */
  public record Part(String taxon, double share) {}

  /**
   * One plant.
   *
   * @param name its code, or what it is when the register does not number it
   * @param numbered whether the register numbers it
   * @param names its own names
   * @param what its taxon and field number, for one whose parents are not recorded; else nothing
   * @param generation its generation class in short, counted over taxa
   * @param generationInWords the same in words
   * @param parts expected shares in the order of {@link PlantsBehind#taxa}, the unknown one last
   * @param cut whether its parents were left out because of the bound on generations
   */
  public record Plant(
      String name,
      boolean numbered,
      List<String> names,
      String what,
      String generation,
      String generationInWords,
      List<Part> parts,
      boolean cut) {}

  /**
   * A parent of a plant, over all the ways in which it is that.
   *
   * @param parent its name among the plants; null for one nobody knows
   * @param offspring the plant's name
   * @param role what it is to the plant
   * @param share in what share of the ways the plant may have come about it is that; 1 if certain
   * @param ways how, in a grower's words: one word or two for each way
   */
  public record Parent(
      @Nullable String parent, String offspring, Role role, Fraction share, List<String> ways) {

    /** Whether it is that for certain. */
    public boolean isCertain() {
      return share.isOne();
    }
  }

  /**
   * The plants behind one.
   *
   * @param code the plant asked for, or the family one seedling of which is meant
   * @param name what it is called among the plants
   * @param plants it and those behind it, each once, parents before offspring
   * @param parents who are the parents of which, in the order of the offspring
   * @param taxa all that stand in a plant's parts, by the share in the plant asked for, the largest
   *     first, then by name
   * @param notes doubts the answer leans on, one sentence each
   */
  public record PlantsBehind(
      Code code,
      String name,
      List<Plant> plants,
      List<Parent> parents,
      List<String> taxa,
      List<String> notes) {}

  /**
   * Answers for one code.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  public PlantsBehind ask(Code code) {
    Item item = Things.required(view, code);
    RegisterPedigree behind = RegisterPedigree.of(view, List.of(item.code()), false);
    return new Walk(behind, item.code()).answer();
  }

  private final class Walk {
    private static final String UNKNOWN = "unknown";

    private final RegisterPedigree behind;
    private final Pedigree pedigree;
    private final Code code;
    private final int root;
    private final int[] depth;
    private final ExpectedShares shares;
    private final List<String> taxa;

    Walk(RegisterPedigree behind, Code code) {
      this.behind = behind;
      this.pedigree = behind.pedigree();
      this.code = code;
      this.root = pedigree.indexOf(code.text());
      this.depth = depths();
      this.shares = ExpectedShares.of(pedigree);
      this.taxa =
          shares.taxa().stream()
              .sorted(
                  Comparator.comparing((String taxon) -> -shares.share(root, taxon))
                      .thenComparing(Comparator.naturalOrder()))
              .toList();
    }

    /** The fewest generations back to each plant; -1 where that is more than were asked for. */
    private int[] depths() {
      int[] depths = new int[pedigree.size()];
      Arrays.fill(depths, -1);
      depths[root] = 0;
      Deque<Integer> open = new ArrayDeque<>(List.of(root));
      while (!open.isEmpty()) {
        int plant = open.remove();
        if (depths[plant] == generations) {
          continue;
        }
        for (int parent : pedigree.parents(plant)) {
          if (depths[parent] < 0) {
            depths[parent] = depths[plant] + 1;
            open.add(parent);
          }
        }
      }
      return depths;
    }

    PlantsBehind answer() {
      GenerationClassifier generation = GenerationClassifier.of(pedigree).by(Level.TAXON);
      List<Integer> order = new ArrayList<>();
      for (int plant = 0; plant < pedigree.size(); plant++) {
        if (depth[plant] >= 0) {
          order.add(plant);
        }
      }
      order.sort(
          Comparator.comparing((Integer plant) -> pedigree.level(plant))
              .thenComparing(plant -> pedigree.code(plant)));
      List<Plant> plants = new ArrayList<>();
      List<Parent> parents = new ArrayList<>();
      for (int plant : order) {
        boolean cut = depth[plant] == generations && !pedigree.isFounder(plant);
        plants.add(plant(plant, generation, cut));
        if (!cut) {
          parents.addAll(parents(plant));
        }
      }
      List<String> shown = new ArrayList<>();
      for (String taxon : taxa) {
        if (plants.stream()
            .anyMatch(one -> one.parts().stream().anyMatch(part -> part.taxon().equals(taxon)))) {
          shown.add(taxon);
        }
      }
      return new PlantsBehind(
          code,
          pedigree.code(root),
          List.copyOf(plants),
          List.copyOf(parents),
          List.copyOf(shown),
          behind.notes());
    }

    private Plant plant(int plant, GenerationClassifier generation, boolean cut) {
      String name = pedigree.code(plant);
      Optional<Item> item = behind.item(name);
      Founder founder = pedigree.founder(plant);
      String what = "";
      if (founder != null) {
        String field = founder.fieldNumber() == null ? "" : " " + founder.fieldNumber();
        what =
            item.map(one -> Describing.of(view, one)).orElseGet(() -> TreeWalk.makeup(founder))
                + field;
      }
      return new Plant(
          name,
          item.isPresent(),
          item.map(Item::names).orElse(List.of()),
          what,
          generation.classOf(name).label(),
          generation.classOf(name).text(),
          parts(plant),
          cut);
    }

    private List<Part> parts(int plant) {
      List<Part> parts = new ArrayList<>();
      for (String taxon : taxa) {
        if (shares.share(plant, taxon) > 0) {
          parts.add(new Part(taxon, shares.share(plant, taxon)));
        }
      }
      if (pedigree.hasUnknown() && shares.unknown(plant) > 0) {
        parts.add(new Part(UNKNOWN, shares.unknown(plant)));
      }
      return List.copyOf(parts);
    }

    /** What tells one line of the drawing from another. */
    private record Line(Role role, int parent) {}

    private List<Parent> parents(int plant) {
      if (pedigree.isRamet(plant)) {
        boolean joined = behind.item(pedigree.code(plant)).map(Item::sameAs).isPresent();
        Role role = joined ? Role.SAME : pedigree.isDoubled(plant) ? Role.DOUBLED : Role.OFFSET;
        return List.of(
            new Parent(
                pedigree.code(pedigree.rametOf(plant)),
                pedigree.code(plant),
                role,
                Fraction.ONE,
                List.of()));
      }
      Map<Line, Map<Route, Fraction>> found = new LinkedHashMap<>();
      List<Descent> descents = pedigree.descents(plant);
      boolean oneWay = descents.size() == 1;
      for (Descent descent : descents) {
        if (descent instanceof Descent.Sexual cross) {
          if (oneWay && cross.seed() == cross.pollen() && cross.seed() != Pedigree.UNKNOWN) {
            add(found, new Line(Role.SELFED, cross.seed()), descent);
          } else {
            add(found, new Line(Role.SEED, cross.seed()), descent);
            add(found, new Line(Role.POLLEN, cross.pollen()), descent);
          }
        } else if (descent instanceof Descent.Copy copy) {
          add(found, new Line(Role.REPEATED, copy.of()), descent);
        }
      }
      List<Parent> parents = new ArrayList<>();
      found.forEach((line, ways) -> parents.add(parent(plant, line, ways)));
      // Seed parents, then pollen parents; the likelier first, what nobody knows last.
      parents.sort(
          Comparator.comparing(Parent::role)
              .thenComparing(parent -> parent.parent() == null)
              .thenComparing(Parent::share, Comparator.reverseOrder())
              .thenComparing(parent -> parent.parent() == null ? "" : parent.parent()));
      return parents;
    }

    private void add(Map<Line, Map<Route, Fraction>> found, Line line, Descent descent) {
      found
          .computeIfAbsent(line, key -> new TreeMap<>())
          .merge(descent.route(), descent.share(), Fraction::plus);
    }

    private Parent parent(int plant, Line line, Map<Route, Fraction> ways) {
      Fraction share = Fraction.ZERO;
      List<String> told = new ArrayList<>();
      for (Map.Entry<Route, Fraction> way : ways.entrySet()) {
        share = share.plus(way.getValue());
        told.add(way.getKey().text());
      }
      return new Parent(
          line.parent() == Pedigree.UNKNOWN ? null : pedigree.code(line.parent()),
          pedigree.code(plant),
          line.role(),
          share,
          List.copyOf(told));
    }
  }
}
