package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a plant carries at some loci, known beforehand: from its breeder, or by a marker.
 *
 * @param code the plant
 * @param loci the loci
 * @param genotype what it carries there: {@code Aa Bb}, of linked loci {@code AB/ab}
 * @param date the day, or null when not known
 * @param remark anything else, or null
 */
public record GenotypeStated(
    Code code,
    List<String> loci,
    String genotype,
    @Nullable PartialDate date,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if it names no locus or one twice, or the genotype is empty
   */
  public GenotypeStated {
    Objects.requireNonNull(code, "code");
    loci = List.copyOf(loci);
    Require.loci(loci);
    Require.text("genotype", genotype);
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(code));
  }

  @Override
  public Set<Subject> mentions() {
    Set<Subject> mentioned = new LinkedHashSet<>();
    loci.forEach(locus -> mentioned.add(Subject.locus(locus)));
    return Set.copyOf(mentioned);
  }
}
