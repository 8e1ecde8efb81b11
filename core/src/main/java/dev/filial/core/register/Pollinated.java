package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A pollination made by hand or left to the bees: one cross. The same pair repeated is a new one.
 *
 * <p>Of the seedlings, a share {@code apomixis} arises without fertilisation, {@code selfs} from
 * the seed parent's own pollen and {@code strays} from pollen of plants nobody knows; the rest is
 * as intended.
 *
 * @param code the code of the cross: a whole code
 * @param seedParent the plant that bears the fruit, or a group meaning one plant of it
 * @param pollen where the pollen came from
 * @param date the day, or null when not known
 * @param flowers how many flowers were tried, or null
 * @param protection how they were protected; empty when not recorded
 * @param selfs share of accidental selfs, 0 to 1
 * @param strays share sired by unknown plants, 0 to 1
 * @param apomixis share of seed without fertilisation, 0 to 1
 * @param seedSets chromosome sets the egg carried where that is not half of its parent, or null
 * @param pollenSets chromosome sets the pollen carried where that is not half of its parent, or
 *     null
 * @param storedPollen whether the pollen came out of store
 * @param place where the seed parent stood, or null
 * @param remark anything else, or null
 */
public record Pollinated(
    Code code,
    Code seedParent,
    Pollen pollen,
    @Nullable PartialDate date,
    @Nullable Count flowers,
    List<Protection> protection,
    Fraction selfs,
    Fraction strays,
    Fraction apomixis,
    @Nullable Integer seedSets,
    @Nullable Integer pollenSets,
    boolean storedPollen,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the code carries a suffix, a share lies outside 0 to 1 or
   *     they exceed 1 together, or a gamete has no possible number of sets
   */
  public Pollinated {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(seedParent, "seedParent");
    Objects.requireNonNull(pollen, "pollen");
    Objects.requireNonNull(selfs, "selfs");
    Objects.requireNonNull(strays, "strays");
    Objects.requireNonNull(apomixis, "apomixis");
    Require.whole(code);
    protection = List.copyOf(protection);
    if (protection.contains(Protection.NONE) && protection.size() > 1) {
      throw new IllegalArgumentException(
          "the flowers of " + code.text() + " were either protected or not; they cannot be both");
    }
    Require.shares(selfs, strays, apomixis);
    Require.sets("egg", seedSets);
    Require.sets("pollen", pollenSets);
    if (pollen instanceof Pollen.OnePlant one
        && one.plant().equals(seedParent)
        && !seedParent.isGroup()) {
      pollen = new Pollen.Itself();
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(code));
  }

  @Override
  public Set<Subject> mentions() {
    Set<Subject> plants = new LinkedHashSet<>();
    plants.add(Subject.of(seedParent));
    plants.addAll(Mentions.pollen(pollen));
    return Set.copyOf(plants);
  }

  /**
   * Whether the pollination was made by hand on flowers left open to others' pollen, and nobody
   * said how much of that came through.
   */
  public boolean isUnprotectedAndUnstated() {
    return protection.contains(Protection.NONE)
        && !(pollen instanceof Pollen.Open)
        && selfs.isZero()
        && strays.isZero();
  }
}
