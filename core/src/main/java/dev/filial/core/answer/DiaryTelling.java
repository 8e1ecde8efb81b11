package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Bloom;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.Interval;
import dev.filial.core.register.IntervalStated;
import dev.filial.core.register.Photographed;
import dev.filial.core.register.PlaceDeclared;
import dev.filial.core.register.PollenKept;
import dev.filial.core.register.Promised;
import dev.filial.core.register.SeedKept;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Tended;
import dev.filial.core.register.Treated;
import dev.filial.core.register.Treatment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the entries of the diary say: flowers, pollen, the seed tin, care, places. */
final class DiaryTelling {

  private DiaryTelling() {}

  /** The sentence; empty for a statement of another sort. */
  static Optional<String> of(Statement statement) {
    return Optional.ofNullable(told(statement));
  }

  private static @Nullable String told(Statement statement) {
    if (statement instanceof Flowered flowered) {
      return codes(flowered.codes())
          + (flowered.bloom() == Bloom.OPEN ? " in flower" : " out of flower");
    }
    if (statement instanceof PollenKept pollen) {
      return ofPollen(pollen);
    }
    if (statement instanceof SeedKept kept) {
      return ofSeed(kept);
    }
    if (statement instanceof Promised promised) {
      return (promised.count() == null ? "" : promised.count() + " of ")
          + codes(promised.codes())
          + " promised to "
          + promised.to();
    }
    if (statement instanceof Treated treated) {
      return ofTreatment(treated);
    }
    if (statement instanceof Tended tended) {
      return codes(tended.codes())
          + " "
          + word(tended.care())
          + (tended.container() == null ? "" : " into " + tended.container())
          + (tended.medium() == null ? "" : ", " + tended.medium());
    }
    if (statement instanceof Photographed photographed) {
      return codes(photographed.codes()) + " on the picture " + photographed.photograph().path();
    }
    if (statement instanceof PlaceDeclared place) {
      return place.place()
          + (place.within() == null ? " stands in nothing else" : " stands in " + place.within());
    }
    return statement instanceof IntervalStated stated
        ? (stated.taxon() == null ? "" : stated.taxon() + ", ")
            + word(stated.interval())
            + ": "
            + days(stated.days())
        : null;
  }

  private static String ofPollen(PollenKept pollen) {
    return "pollen of "
        + pollen.plant().text()
        + (pollen.gathered() == null ? "" : " gathered " + pollen.gathered())
        + " "
        + word(pollen.step())
        + (pollen.from() == null ? "" : ", from " + pollen.from())
        + (pollen.place() == null ? "" : ", " + pollen.place());
  }

  private static String ofSeed(SeedKept kept) {
    List<String> parts = new ArrayList<>();
    if (kept.cleaned()) {
      parts.add("cleaned");
    }
    if (kept.left() != null) {
      parts.add(Telling.count(kept.left(), "seed"));
    }
    if (kept.milligrams() != null) {
      parts.add(kept.milligrams().toPlainString() + " mg");
    }
    if (kept.seedsPerGram() != null) {
      parts.add(kept.seedsPerGram().toPlainString() + " a gram");
    }
    if (kept.keeping() != null) {
      parts.add("kept in " + kept.keeping());
    }
    if (kept.place() != null) {
      parts.add(kept.place());
    }
    return codes(kept.lots()) + ": " + String.join(", ", parts);
  }

  private static String ofTreatment(Treated treated) {
    return codes(treated.codes())
        + ": "
        + word(treated.treatment())
        + (treated.product() == null ? "" : ", " + treated.product())
        + (treated.dilution() == null ? "" : ", " + treated.dilution())
        + (treated.everyDays() == null ? "" : ", again every " + days(treated.everyDays()));
  }

  private static String codes(List<Code> codes) {
    return String.join(", ", codes.stream().map(Code::text).toList());
  }

  static String days(int days) {
    return days + (days == 1 ? " day" : " days");
  }

  static String word(PollenKept.Step step) {
    return switch (step) {
      case GATHERED -> "gathered";
      case DRIED -> "dried";
      case FROZEN -> "frozen";
      case THAWED -> "thawed";
      case USED_UP -> "used up";
      case DISCARDED -> "thrown out";
    };
  }

  static String word(Treatment treatment) {
    return switch (treatment) {
      case OXIDISER -> "oxidiser";
      case FUNGICIDE -> "fungicide";
      case INSECTICIDE -> "insecticide";
      case HORMONE -> "hormone";
      case SOAK -> "soaked";
      case SCARIFICATION -> "scarified";
      case COLD -> "kept cold and moist";
      case HEAT -> "kept hot";
      case SMOKE -> "smoked";
      case FEED -> "fed";
      case OTHER -> "treated";
    };
  }

  static String word(Tended.Care care) {
    return switch (care) {
      case LOOKED_INTO -> "looked into";
      case OPENED -> "opened";
      case HARDENED_OFF -> "hardened off";
      case POTTED_ON -> "potted on";
      case TAG_REWRITTEN -> "tag rewritten";
    };
  }

  static String word(Interval interval) {
    return switch (interval) {
      case COMING_UP -> "from sowing until something should be up";
      case COUNTING -> "from one count to the next";
      case LOOKING_INTO -> "from one look into a closed bag to the next";
      case OPENING -> "from sowing until a closed bag is opened";
      case RIPENING -> "from pollination until fruit should be ripe";
      case SEED_AGEING -> "from harvest until seed is old";
      case POLLEN_AGEING -> "until stored pollen is old";
      case TAG_FADING -> "from writing a tag until it is rewritten";
      case FLOWERING -> "how long a plant seen in flower stays so";
    };
  }
}
