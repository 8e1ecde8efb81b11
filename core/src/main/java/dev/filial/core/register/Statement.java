package dev.filial.core.register;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What one entry of the register says. Each kind is a record that checks what can be seen from the
 * statement alone; whether it fits the rest of the book is for the {@link Rules}.
 */
public sealed interface Statement
    permits Amended,
        Counted,
        Doubted,
        FateRecorded,
        Flowered,
        FruitRecorded,
        GenotypeStated,
        Harvested,
        IntervalStated,
        Joined,
        LocusDeclared,
        LotSplit,
        LotsMerged,
        ModelDeclared,
        Moved,
        Named,
        Noted,
        Numbered,
        Observed,
        Parted,
        Photographed,
        PlaceDeclared,
        PlantAcquired,
        PollenKept,
        Pollinated,
        PopulationDeclared,
        Potted,
        ProfileStated,
        Promised,
        Propagated,
        RegisterOpened,
        SeedAcquired,
        SeedKept,
        Sown,
        TagLost,
        Tallied,
        TaxonDeclared,
        TaxonRenamed,
        Tended,
        TraitDeclared,
        Treated {

  /** The things that this statement changes something about. */
  Set<Subject> subjects();

  /** Further things that it leans on without changing them: parents, taxa, a trait. */
  default Set<Subject> mentions() {
    return Set.of();
  }

  /** The day it speaks of; null when it has none or nobody knows. */
  default @Nullable PartialDate date() {
    return null;
  }

  /** What was written beside it in the grower's own words; null for nothing. */
  default @Nullable String remark() {
    return null;
  }
}
