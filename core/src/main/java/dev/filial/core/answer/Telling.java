package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Joined;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.Moved;
import dev.filial.core.register.Named;
import dev.filial.core.register.Noted;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Observed;
import dev.filial.core.register.Parted;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.PopulationDeclared;
import dev.filial.core.register.Potted;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.Protection;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.TagLost;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.TaxonDeclared;
import dev.filial.core.register.TaxonRenamed;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.register.Weighted;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What an entry says, as a grower would say it: one short sentence without its date. */
public final class Telling {

  private Telling() {}

  /** The sentence. */
  public static String of(Statement statement) {
    if (statement instanceof RegisterOpened opened) {
      return "register of " + opened.grower() + ", mark " + opened.mark();
    }
    if (statement instanceof PlantAcquired plant) {
      return plant.code().text()
          + (plant.neverHeld() ? ": a plant held elsewhere, " : " acquired: ")
          + what(plant.determination(), plant.provenance());
    }
    if (statement instanceof SeedAcquired seed) {
      return seed.code().text()
          + ": seed acquired, "
          + what(seed.determination(), seed.provenance())
          + ", "
          + count(seed.count(), "seed");
    }
    if (statement instanceof Pollinated cross) {
      return ofCross(cross);
    }
    if (statement instanceof FruitRecorded fruit) {
      List<String> parts = new ArrayList<>();
      if (fruit.set() != null) {
        parts.add(fruit.set() + " set");
      }
      if (fruit.failed() != null) {
        parts.add(fruit.failed() + " failed");
      }
      if (fruit.aborted() != null) {
        parts.add(fruit.aborted() + " dropped unripe");
      }
      if (fruit.eaten() != null) {
        parts.add(fruit.eaten() + " eaten");
      }
      return "flowers of "
          + fruit.cross().text()
          + ": "
          + String.join(", ", parts)
          + because(fruit.why());
    }
    if (statement instanceof Harvested harvest) {
      return harvest.lot().text()
          + " harvested: "
          + count(harvest.seeds(), "seed")
          + (harvest.fruits() == null ? "" : " from " + count(harvest.fruits(), "fruit"));
    }
    if (statement instanceof LotSplit split) {
      return count(split.count(), "seed")
          + " of "
          + split.from().text()
          + " put apart as "
          + split.lot().text();
    }
    if (statement instanceof LotsMerged merged) {
      return merged.code().text()
          + " mixed from "
          + merged.parts().stream()
              .map(part -> part.lot().text() + " (" + part.share() + ")")
              .collect(Collectors.joining(", "));
    }
    if (statement instanceof Sown sown) {
      return sown.sowing().text()
          + ": "
          + count(sown.seeds(), "seed")
          + " of "
          + sown.lot().text()
          + " sown"
          + (sown.groups().isEmpty()
              ? ""
              : " into "
                  + sown.groups().stream()
                      .map(filled -> filled.group().text())
                      .collect(Collectors.joining(", ")))
          + on(sown.medium())
          + at(sown.place());
    }
    return ofSeedlings(statement);
  }

  private static String ofSeedlings(Statement statement) {
    if (statement instanceof Counted counted) {
      return counted.readings().stream()
          .map(
              reading ->
                  reading.code().text()
                      + ": "
                      + (reading.germinated() == null ? "" : reading.germinated() + " came up")
                      + (reading.germinated() != null && reading.alive() != null ? ", " : "")
                      + (reading.alive() == null ? "" : reading.alive() + " alive"))
          .collect(Collectors.joining("; "));
    }
    if (statement instanceof Potted potted) {
      return count(potted.count(), "seedling")
          + " of "
          + potted.from().text()
          + " potted as "
          + potted.group().text()
          + at(potted.place());
    }
    if (statement instanceof Numbered numbered) {
      Code whole = numbered.from().whole();
      return (numbered.first() == numbered.last()
              ? whole.seedling(numbered.first()).text()
              : whole.seedling(numbered.first()).text() + " to -" + numbered.last())
          + " numbered from "
          + numbered.from().text()
          + (numbered.pickedFor() == null ? "" : ", picked for " + numbered.pickedFor());
    }
    if (statement instanceof Propagated ramet) {
      return ramet.code().text()
          + ": "
          + (ramet.how() == null ? "an offset" : ramet.how())
          + " of "
          + ramet.of().text()
          + (ramet.doubled() ? ", its chromosomes doubled" : "")
          + (ramet.sportFor().isEmpty() ? "" : ", a sport for " + join(ramet.sportFor()));
    }
    if (statement instanceof FateRecorded fate) {
      return (fate.count() == null ? "" : fate.count() + " of ")
          + codes(fate.codes())
          + " "
          + fate(fate.fate())
          + (fate.to() == null ? "" : " to " + fate.to())
          + because(fate.cause());
    }
    if (statement instanceof Moved moved) {
      return codes(moved.codes()) + " moved to " + moved.place();
    }
    if (statement instanceof Observed observed) {
      return observed.code().text() + ": " + observed.trait() + " " + observed.value();
    }
    if (statement instanceof Tallied tallied) {
      return tallied.code().text()
          + ", "
          + tallied.trait()
          + ": "
          + tallied.counts().entrySet().stream()
              .map(state -> state.getValue() + " " + state.getKey())
              .collect(Collectors.joining(", "));
    }
    return ofRecords(statement);
  }

  private static String end(Joined joined) {
    if (joined.fate() == null) {
      return "";
    }
    String verb =
        switch (joined.fate()) {
          case ALIVE, KEPT -> "is ";
          case DISCARDED, GIVEN, USED_UP -> "was ";
          case DEAD -> "";
        };
    return "; it "
        + verb
        + fate(joined.fate())
        + (joined.until() == null ? "" : " " + joined.until().inWords());
  }

  private static String ofRecords(Statement statement) {
    if (statement instanceof TaxonDeclared taxon) {
      return taxon.name()
          + " declared"
          + (taxon.synonyms().isEmpty() ? "" : ", also called " + join(taxon.synonyms()))
          + (taxon.ploidy() == null ? "" : ", " + taxon.ploidy() + "x")
          + (taxon.selfIncompatible() ? ", self-incompatible" : "");
    }
    if (statement instanceof TaxonRenamed renamed) {
      return renamed.from() + " is to be read as " + renamed.to();
    }
    if (statement instanceof PopulationDeclared population) {
      return "the field numbers " + join(population.fieldNumbers()) + " are one population";
    }
    if (statement instanceof Named named) {
      return named.code().text() + " is also called " + named.name();
    }
    if (statement instanceof Joined joined) {
      return joined.other().text()
          + " is the same plant as "
          + joined.keep().text()
          + because(joined.why())
          + end(joined);
    }
    if (statement instanceof Parted parted) {
      return parted.into().text() + " parted from " + parted.code().text() + because(parted.why());
    }
    if (statement instanceof Doubted doubted) {
      return "entry " + doubted.entry() + " is a guess of " + doubted.by();
    }
    if (statement instanceof TagLost found) {
      return found.code().text()
          + " found without a tag: "
          + (found.candidates().isEmpty()
              ? "nobody knows what"
              : "one of "
                  + found.candidates().stream()
                      .map(candidate -> candidate.plant().text())
                      .collect(Collectors.joining(", ")))
          + (found.unknown().isZero() || found.candidates().isEmpty() ? "" : ", or something else");
    }
    if (statement instanceof TraitDeclared trait) {
      return "trait "
          + trait.trait()
          + (trait.states().isEmpty()
              ? trait.unit() == null ? ", scored" : ", in " + trait.unit()
              : ": " + join(trait.states()));
    }
    if (statement instanceof LocusDeclared
        || statement instanceof ModelDeclared
        || statement instanceof ProfileStated
        || statement instanceof GenotypeStated) {
      return GeneTelling.of(statement);
    }
    if (statement instanceof Amended amended) {
      Statement now = amended.replacement();
      return "entry "
          + amended.entry()
          + (now == null ? " struck" : " amended: " + of(now))
          + because(amended.why());
    }
    if (statement instanceof Noted noted) {
      return noted.code().text() + ": " + noted.text();
    }
    return DiaryTelling.of(statement)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no telling of " + statement.getClass().getSimpleName()));
  }

  private static String ofCross(Pollinated cross) {
    StringBuilder text = new StringBuilder(cross.code().text()).append(": ");
    text.append(cross.seedParent().text());
    Pollen pollen = cross.pollen();
    if (pollen instanceof Pollen.OnePlant one) {
      text.append(" × ").append(one.plant().text());
    } else if (pollen instanceof Pollen.Itself) {
      text.append(" selfed");
    } else if (pollen instanceof Pollen.Mix mix) {
      text.append(" × pollen of ").append(weighted(mix.plants()));
    } else if (pollen instanceof Pollen.Open open) {
      text.append(" open pollinated");
      if (!open.candidates().isEmpty()) {
        text.append(", perhaps by ").append(weighted(open.candidates()));
      }
    }
    if (cross.flowers() != null) {
      text.append(", ").append(count(cross.flowers(), "flower"));
    }
    if (!cross.protection().isEmpty()) {
      text.append(", ").append(protection(cross));
    }
    sets(text, cross.seedSets(), "egg");
    sets(text, cross.pollenSets(), "pollen");
    share(text, cross.selfs(), "selfs");
    share(text, cross.strays(), "strays");
    share(text, cross.apomixis(), "without fertilisation");
    return text.toString();
  }

  /** How flowers were kept from other pollen; empty when nobody wrote it. */
  static String protection(Pollinated cross) {
    return cross.protection().contains(Protection.NONE)
        ? "unprotected"
        : cross.protection().stream()
            .map(way -> way.name().toLowerCase(Locale.ROOT))
            .collect(Collectors.joining(" and "));
  }

  private static void sets(StringBuilder text, @Nullable Integer sets, String gamete) {
    if (sets != null) {
      text.append(", ").append(gamete).append(" of ").append(sets);
      text.append(sets == 1 ? " chromosome set" : " chromosome sets");
    }
  }

  private static void share(StringBuilder text, Fraction share, String what) {
    if (!share.isZero()) {
      text.append(", ").append(share.toPercent(1)).append(' ').append(what);
    }
  }

  private static String weighted(List<Weighted> plants) {
    return plants.stream().map(plant -> plant.plant().text()).collect(Collectors.joining(", "));
  }

  private static String what(Determination determination, Provenance provenance) {
    List<String> parts = new ArrayList<>();
    parts.add(Describing.determination(determination));
    if (provenance.fieldNumber() != null) {
      parts.add(provenance.fieldNumber());
    }
    if (provenance.donor() != null) {
      parts.add("from " + provenance.donor());
    }
    return String.join(", ", parts);
  }

  private static String fate(Fate fate) {
    return switch (fate) {
      case ALIVE -> "alive after all";
      case KEPT -> "kept";
      case DISCARDED -> "discarded";
      case DEAD -> "died";
      case GIVEN -> "given away";
      case USED_UP -> "used up";
    };
  }

  private static String codes(List<Code> codes) {
    return codes.stream().map(Code::text).collect(Collectors.joining(", "));
  }

  private static String join(List<String> words) {
    return String.join(", ", words);
  }

  static String count(Count count, String thing) {
    if (count.size().isEmpty()) {
      return (count.toString().equals("?") ? "an unknown number of " : count + " ") + thing + "s";
    }
    return count + " " + thing + (count.size().getAsLong() == 1 ? "" : "s");
  }

  private static String because(@Nullable String why) {
    return why == null ? "" : " (" + why + ")";
  }

  private static String on(@Nullable String medium) {
    return medium == null ? "" : " on " + medium;
  }

  private static String at(@Nullable String place) {
    return place == null ? "" : ", " + place;
  }
}
