package dev.filial.core.inference;

import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Pattern;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Something that was seen or is known of a plant or of a family. */
public sealed interface Evidence {

  /** The code of the plant in the pedigree; of a count, of a plant that stands for the family. */
  String plant();

  /** What the finding is called where it is listed: an entry's number, a page of a notebook. */
  String source();

  /**
   * A plant showed a state of a trait. Of ramets of one plant each may be named; they are one
   * genotype, and how it shows is drawn once for them all.
   *
   * @param trait the trait, which has a table
   * @param state the state
   * @param picked whether the plant was raised because it showed this, from a family nobody
   *     counted: it then says something of itself, and nothing of its parents
   */
  record Shown(String plant, String trait, String state, boolean picked, String source)
      implements Evidence {
    /** Checks that all was given. */
    public Shown {
      Objects.requireNonNull(plant, "plant");
      Objects.requireNonNull(trait, "trait");
      Objects.requireNonNull(state, "state");
      Objects.requireNonNull(source, "source");
    }

    /** Of a plant that was not picked for it. */
    public static Shown of(String plant, String trait, String state, String source) {
      return new Shown(plant, trait, state, false, source);
    }
  }

  /**
   * So many seedlings of a family showed each state, none of them named on its own.
   *
   * @param plant a plant of the pedigree that is of the family; its parents are those of all
   * @param counts how many showed each state, 0 or more
   */
  record Counted(String plant, String trait, Map<String, Long> counts, String source)
      implements Evidence {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is below 0
     */
    public Counted {
      Objects.requireNonNull(plant, "plant");
      Objects.requireNonNull(trait, "trait");
      Objects.requireNonNull(source, "source");
      counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
      counts.forEach(
          (state, number) -> {
            if (number < 0) {
              throw new IllegalArgumentException(
                  number + " seedlings that showed " + state + "; a count is 0 or more");
            }
          });
    }

    /** How many seedlings that is. */
    public long seedlings() {
      return counts.values().stream().mapToLong(Long::longValue).sum();
    }
  }

  /**
   * What a plant carries is known, by a marker or from its breeder.
   *
   * @param patterns what is so at some loci; empty if all is said by {@code whole}
   * @param whole its genotype, if that is known: at all loci of the genome, or at some of them and
   *     others besides, linked ones with how they lie together
   */
  record Carried(String plant, List<Pattern> patterns, Optional<Genotype> whole, String source)
      implements Evidence {
    /** Copies the patterns. */
    public Carried {
      Objects.requireNonNull(plant, "plant");
      patterns = List.copyOf(patterns);
      Objects.requireNonNull(whole, "whole");
      Objects.requireNonNull(source, "source");
    }

    /** A genotype of all loci. */
    public static Carried of(String plant, Genotype genotype, String source) {
      return new Carried(plant, List.of(), Optional.of(genotype), source);
    }
  }
}
