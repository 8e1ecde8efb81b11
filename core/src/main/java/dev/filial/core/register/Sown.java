package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A sowing: seed of one lot, into one or more pots, trays or bags, each a group with a code.
 *
 * @param sowing the code of the sowing, under that of its lot
 * @param lot the lot it came from
 * @param date the day, or null when not known
 * @param seeds how many seeds were sown
 * @param medium what they were sown on, or null
 * @param cover what they were covered with, or null
 * @param surface whether they were left on the surface
 * @param container pot, tray, bag …, or null
 * @param closed whether it was closed: a bag, a lid
 * @param bottomHeat how warm it is kept from below, in °C, or null
 * @param lightHours how many hours of light a day, or null
 * @param treatments what was done to seed or medium
 * @param groups the pots that were filled; empty when all stand in one
 * @param place where it stands, or null
 * @param remark anything else, or null
 */
public record Sown(
    Code sowing,
    Code lot,
    @Nullable PartialDate date,
    Count seeds,
    @Nullable String medium,
    @Nullable String cover,
    boolean surface,
    @Nullable String container,
    boolean closed,
    @Nullable BigDecimal bottomHeat,
    @Nullable BigDecimal lightHours,
    List<String> treatments,
    List<Filled> groups,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the codes are not a sowing, a lot and groups of one whole
   *     code, the groups hold more than was sown, the seed was covered and left on the surface, or
   *     heat or light is out of range
   */
  public Sown {
    Objects.requireNonNull(sowing, "sowing");
    Objects.requireNonNull(lot, "lot");
    Objects.requireNonNull(seeds, "seeds");
    treatments = List.copyOf(treatments);
    groups = List.copyOf(groups);
    Require.sowing(sowing);
    Require.lot(lot);
    if (surface && cover != null) {
      throw new IllegalArgumentException(
          "the seed of "
              + sowing.text()
              + " was either left on the surface or covered with "
              + cover
              + "; leave one of the two out");
    }
    Require.between("bottom heat in °C", bottomHeat, -20, 60);
    Require.between("hours of light a day", lightHours, 0, 24);
    Set<Code> pots = new LinkedHashSet<>();
    for (Filled filled : groups) {
      Require.group(filled.group());
      if (!filled.group().whole().equals(sowing.whole()) || !pots.add(filled.group())) {
        throw new IllegalArgumentException(
            filled.group().text()
                + " cannot be filled from "
                + sowing.text()
                + ": give each pot a number of its own under the same code");
      }
    }
    Count filled = groups.stream().map(Filled::seeds).reduce(Count.of(0), Count::plus);
    if (filled.isExact()
        && seeds.isExact()
        && filled.size().orElseThrow() > seeds.size().orElseThrow()) {
      throw new IllegalArgumentException(
          "the pots of "
              + sowing.text()
              + " hold "
              + filled
              + " seeds, but "
              + seeds
              + " were sown; mend one of the numbers");
    }
    if (!lot.whole().equals(sowing.whole())) {
      throw new IllegalArgumentException(
          sowing.text() + " is not under the code of its lot " + lot.text());
    }
  }

  @Override
  public Set<Subject> subjects() {
    Set<Subject> subjects = new LinkedHashSet<>();
    subjects.add(Subject.of(sowing));
    subjects.add(Subject.of(lot));
    groups.forEach(filled -> subjects.add(Subject.of(filled.group())));
    return Set.copyOf(subjects);
  }

  @Override
  public Set<Subject> mentions() {
    return Mentions.with(Caution.of(this), Subject.of(sowing.whole()));
  }

  /**
   * A pot, tray or bag that was filled.
   *
   * @param group its code
   * @param seeds how many seeds went in
   * @param place where it stands, or null
   */
  public record Filled(Code group, Count seeds, @Nullable String place) {
    /** Checks that code and number were given. */
    public Filled {
      Objects.requireNonNull(group, "group");
      Objects.requireNonNull(seeds, "seeds");
    }
  }
}
