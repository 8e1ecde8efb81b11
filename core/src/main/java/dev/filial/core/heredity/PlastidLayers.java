package dev.filial.core.heredity;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

/**
 * A variegated plant whose plastids are green in some cell layers of its growing point and white in
 * others (a periclinal chimaera), and what its seedlings can be.
 *
 * <p>Seed comes from the second layer (Baur 1909, Zeitschrift für induktive Abstammungs- und
 * Vererbungslehre 1:330-351, from memory), and plastids in most plants through the seed parent
 * alone (Correns 1909, in the same volume, 1:291-329, from memory): what the first and the third
 * layer show never comes up from seed. In some genera pollen hands on plastids as well, as Baur
 * found in Pelargonium, and there a plant of another make-up as pollen parent can add what is not
 * listed here; about one species in five has pollen that could (Corriveau and Coleman 1988,
 * American Journal of Botany 75:1443-1458, from memory). White seedlings die when the seed's food
 * is used up. Where the second layer itself has green and white plastids in the same cells (a
 * striped plant), green, striped and white seedlings come up in shares that differ from fruit to
 * fruit; no ratio is expected of them, and none is given here.
 *
 * @param outer the first layer, which makes the skin
 * @param middle the second, which makes the seed
 * @param inner the third
 */
public record PlastidLayers(Layer outer, Layer middle, Layer inner) {

  /** The plastids of a layer. */
  public enum Layer {
    /** Green ones alone. */
    GREEN,
    /** White ones alone. */
    WHITE,
    /** Both in one cell, not sorted out yet. */
    MIXED
  }

  /** What a seedling can be. */
  public enum Seedling {
    /** Green for good. */
    GREEN,
    /** White, and bound to die unless grafted. */
    WHITE,
    /** Striped or blotched. */
    STRIPED
  }

  /** Checks that all layers were given. */
  public PlastidLayers {
    Objects.requireNonNull(outer, "outer");
    Objects.requireNonNull(middle, "middle");
    Objects.requireNonNull(inner, "inner");
  }

  /**
   * Reads the layers from the outside in: {@code GWG}, a plant of green skin and core with white
   * between; M is mixed.
   *
   * @throws IllegalArgumentException if the text is not three of these letters
   */
  public static PlastidLayers parse(String text) {
    String letters = text.strip().toUpperCase(Locale.ROOT);
    if (letters.length() != 3) {
      throw notLayers(text);
    }
    return new PlastidLayers(
        layer(letters.charAt(0), text),
        layer(letters.charAt(1), text),
        layer(letters.charAt(2), text));
  }

  private static Layer layer(char letter, String text) {
    return switch (letter) {
      case 'G' -> Layer.GREEN;
      case 'W' -> Layer.WHITE;
      case 'M' -> Layer.MIXED;
      default -> throw notLayers(text);
    };
  }

  private static IllegalArgumentException notLayers(String text) {
    return new IllegalArgumentException(
        "\""
            + text
            + "\" is not three layers from the outside in; write G for green, W for white, M for"
            + " mixed, as GWG");
  }

  /** Whether the plant itself is variegated. */
  public boolean isVariegated() {
    return Set.copyOf(List.of(outer, middle, inner)).size() > 1 || middle == Layer.MIXED;
  }

  /** What can come up from its own seed, whatever the pollen, where pollen hands on no plastids. */
  public Set<Seedling> seedlings() {
    return switch (middle) {
      case GREEN -> Set.of(Seedling.GREEN);
      case WHITE -> Set.of(Seedling.WHITE);
      case MIXED -> Set.of(Seedling.GREEN, Seedling.WHITE, Seedling.STRIPED);
    };
  }
}
