package dev.filial.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How candidates are related and what they are made of, carried on to seedlings that are only
 * planned: coancestry by the recursion of tabular kinship (Emik and Terrill 1949, Journal of
 * Heredity 40:51-55), expected shares as the mean of the parents'.
 */
public final class Relations {

  private final double[][] coancestry;
  private final double[][] shares;

  private Relations(double[][] coancestry, double[][] shares) {
    this.coancestry = coancestry;
    this.shares = shares;
  }

  /**
   * Of candidates.
   *
   * @param coancestry between each two of them, and of each with itself
   * @param shares by candidate, then by whatever it is that shares are asked of; 0 to 1
   */
  public static Relations of(double[][] coancestry, double[][] shares) {
    return new Relations(copy(coancestry), copy(shares));
  }

  private static double[][] copy(double[][] rows) {
    double[][] all = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      all[i] = rows[i].clone();
    }
    return all;
  }

  /** A candidate, or a seedling that is planned. */
  private record Node(int candidate, @Nullable Node seed, @Nullable Node pollen, int depth) {
    static Node of(int candidate) {
      return new Node(candidate, null, null, 0);
    }

    static Node child(Node seed, Node pollen) {
      return new Node(-1, seed, pollen, 1 + Math.max(seed.depth, pollen.depth));
    }
  }

  private record Parents(Node seed, Node pollen) {}

  private static Parents last(CrossPath path) {
    Parents parents = new Parents(Node.of(path.seed()), Node.of(path.pollen()));
    if (path.seed() == path.pollen()) {
      parents = new Parents(parents.seed(), parents.seed());
    }
    List<Node> plants = new ArrayList<>();
    plants.add(parents.seed());
    plants.add(parents.pollen());
    for (CrossPath.Later later : path.later()) {
      Node kept = Node.child(parents.seed(), parents.pollen());
      Mate mate = later.mate();
      if (mate instanceof Mate.Itself) {
        parents = new Parents(kept, kept);
      } else if (mate instanceof Mate.Sib) {
        parents = new Parents(kept, Node.child(parents.seed(), parents.pollen()));
      } else if (mate instanceof Mate.Plant plant) {
        Node other = known(plants, plant.candidate());
        parents = plant.asSeed() ? new Parents(other, kept) : new Parents(kept, other);
      } else if (mate instanceof Mate.OtherCross cross) {
        Node other = Node.child(known(plants, cross.seed()), known(plants, cross.pollen()));
        parents = cross.asSeed() ? new Parents(other, kept) : new Parents(kept, other);
      }
    }
    return parents;
  }

  /** A plant that comes back is the same plant. */
  private static Node known(List<Node> plants, int candidate) {
    for (Node plant : plants) {
      if (plant.candidate() == candidate) {
        return plant;
      }
    }
    Node plant = Node.of(candidate);
    plants.add(plant);
    return plant;
  }

  /** The inbreeding coefficient of the last season's seedlings, 0 to 1. */
  public double inbreeding(CrossPath path) {
    Parents parents = last(path);
    return between(parents.seed(), parents.pollen());
  }

  /** The coancestry of a seedling of one cross of candidates with one of another, 0 to 1. */
  double between(int seed, int pollen, int otherSeed, int otherPollen) {
    return (coancestry[seed][otherSeed]
            + coancestry[seed][otherPollen]
            + coancestry[pollen][otherSeed]
            + coancestry[pollen][otherPollen])
        / 4;
  }

  @SuppressWarnings("ReferenceEquality") // a sib has the same parents and is another plant
  private double between(Node one, Node other) {
    if (one == other) {
      return one.seed() == null || one.pollen() == null
          ? coancestry[one.candidate()][one.candidate()]
          : (1 + between(one.seed(), one.pollen())) / 2;
    }
    Node younger = one.depth() >= other.depth() ? one : other;
    Node older = younger == one ? other : one;
    return younger.seed() == null || younger.pollen() == null
        ? coancestry[one.candidate()][other.candidate()]
        : (between(younger.seed(), older) + between(younger.pollen(), older)) / 2;
  }

  /** The expected shares of the last season's seedlings. */
  public double[] shares(CrossPath path) {
    Parents parents = last(path);
    return shares(Node.child(parents.seed(), parents.pollen()));
  }

  private double[] shares(Node plant) {
    if (plant.seed() == null || plant.pollen() == null) {
      return shares[plant.candidate()].clone();
    }
    double[] one = shares(plant.seed());
    double[] other = shares(plant.pollen());
    for (int i = 0; i < one.length; i++) {
      one[i] = (one[i] + other[i]) / 2;
    }
    return one;
  }
}
