package dev.filial.core.register;

import dev.filial.core.number.Fraction;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What an acquired plant or packet was said to be.
 *
 * @param taxon the name on its label, with {@code cf.} or {@code aff.} where that is in doubt; null
 *     when there was none
 * @param cultivar the cultivar epithet without quotes, or null
 * @param makeup stated shares per taxon of a hybrid; what is missing to 1 is unknown; empty when
 *     nothing was stated
 * @param generation the generation the donor stated: {@code F1}, {@code F2} … or {@code BC1} …, the
 *     taxa being those of {@code makeup}, a backcross being to the one it has more of, of even
 *     shares to the first; null when none
 * @param ploidy chromosome sets, 1 to 32, where this plant's differ from its taxon's; null when not
 *     stated
 */
public record Determination(
    @Nullable String taxon,
    @Nullable String cultivar,
    Map<String, Fraction> makeup,
    @Nullable String generation,
    @Nullable Integer ploidy) {

  private static final Pattern GENERATION = Pattern.compile("(BC[1-9]\\d?)?(F[1-9]\\d?)?(?<!^)");

  /** Nothing is known of it. */
  public static final Determination UNKNOWN = new Determination(null, null, Map.of(), null, null);

  /**
   * Copies the map, keeping its order.
   *
   * @throws IllegalArgumentException if a name cannot be read, the shares exceed 1 or one is not
   *     positive, the generation is none, or the ploidy is out of range
   */
  @SuppressWarnings("NullAway") // an absent JSON property reaches a record's constructor as null
  public Determination {
    makeup = makeup == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(makeup));
    requireShares(makeup);
    requirePloidy(ploidy);
    if (taxon != null) {
      Subject.taxon(taxon); // a name nobody can read would be missed by every later question
    }
    if (generation != null && !GENERATION.matcher(generation).matches()) {
      throw new IllegalArgumentException(
          "\"" + generation + "\" is no generation; write F1, F2 …, BC1, BC2 … or BC1F2");
    }
  }

  /** A plant of the named taxon. */
  public static Determination of(String taxon) {
    return new Determination(taxon, null, Map.of(), null, null);
  }

  /** An absent JSON property reaches a record's constructor as null. */
  static Determination orUnknown(@Nullable Determination determination) {
    return determination == null ? UNKNOWN : determination;
  }

  static void requirePloidy(@Nullable Integer ploidy) {
    if (ploidy != null && (ploidy < 1 || ploidy > 32)) {
      throw new IllegalArgumentException(
          "a ploidy of " + ploidy + "; it is the number of chromosome sets, 1 to 32");
    }
  }

  static void requireShares(Map<String, Fraction> makeup) {
    Fraction sum = Fraction.ZERO;
    Set<Subject> taxa = new HashSet<>();
    for (Map.Entry<String, Fraction> share : makeup.entrySet()) {
      if (share.getValue().signum() <= 0) {
        throw new IllegalArgumentException(
            "the share of " + share.getKey() + " is " + share.getValue() + "; a share is above 0");
      }
      if (!taxa.add(Subject.taxon(share.getKey()))) {
        throw new IllegalArgumentException(
            share.getKey() + " has two shares; give it one, their sum");
      }
      sum = sum.plus(share.getValue());
    }
    if (sum.compareTo(Fraction.ONE) > 0) {
      throw new IllegalArgumentException(
          "the shares of "
              + String.join(", ", makeup.keySet())
              + " come to "
              + sum
              + ", which exceeds 1; lower one of them");
    }
  }
}
