package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.name.NameException;
import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Route;
import java.math.BigInteger;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of words on the day they are written: of a new entry, and of what an amendment puts
 * in the place of an earlier one.
 *
 * <p>Books written before these rules hold entries that break them. Such an entry stays readable,
 * and does not stand against the amendment of another that it hangs on; so these rules are not
 * among those that every hanging entry is asked again.
 */
final class NewlySaid {

  /** The highest weight of a gamete: nobody measures a thousand to one. */
  private static final Fraction HEAVIEST = Fraction.of(1000);

  private final RegisterView book;
  private final List<String> warnings;

  /** Over the register with the entry in it. */
  NewlySaid(RegisterView book, List<String> warnings) {
    this.book = book;
    this.warnings = warnings;
  }

  /**
   * Checks what entry {@code number} says from now on.
   *
   * @throws RegisterRefusal if it cannot stand
   */
  void check(long number, Statement statement) {
    if (statement instanceof Amended amended) {
      if (amended.replacement() != null) {
        check(amended.entry(), amended.replacement());
      }
    } else if (statement instanceof PlantAcquired plant) {
      requireOneStory(plant.determination());
      plant.names().forEach(name -> requireNoCode(name, plant.code()));
    } else if (statement instanceof SeedAcquired seed) {
      requireOneStory(seed.determination());
      requireSeed(seed.count(), "a packet");
    } else if (statement instanceof Parted parted) {
      requireOneStory(parted.determination());
    } else if (statement instanceof Propagated ramet) {
      ramet.names().forEach(name -> requireNoCode(name, ramet.code()));
      requireHere(ramet);
      requireSown(ramet.of(), "the source of this offset", ramet.date());
    } else if (statement instanceof Named named) {
      requireNoCode(named.name(), named.code());
    } else if (statement instanceof Pollinated cross) {
      checkParents(cross);
    } else if (statement instanceof Flowered flowered) {
      flowered.codes().forEach(code -> requireSown(code, "in flower", flowered.date()));
    } else if (statement instanceof Sown sown) {
      requireSeed(sown.seeds(), "a sowing");
    } else if (statement instanceof Observed observed) {
      requireSown(observed.code(), "observed", observed.date());
      TraitValues.requireMeasurable(book.requiredTrait(observed.trait()), observed.value());
    } else if (statement instanceof FateRecorded fate) {
      fate.codes().forEach(code -> requireCame(code, fate));
    } else if (statement instanceof LocusDeclared locus) {
      locus.eggs().forEach((allele, weight) -> requireWeight("an egg", allele, weight));
      locus.pollen().forEach((allele, weight) -> requireWeight("pollen", allele, weight));
    }
  }

  private void checkParents(Pollinated cross) {
    requireSown(cross.seedParent(), "the seed parent of this cross", cross.date());
    Set<Code> pollenParents = new LinkedHashSet<>();
    for (Descent descent : Descents.of(cross)) {
      if (descent.pollen() != null && descent.route() != Route.SELFING) {
        pollenParents.add(descent.pollen());
      }
    }
    pollenParents.forEach(
        parent -> requireSown(parent, "the pollen parent of this cross", cross.date()));
  }

  /** A seedling exists from its sowing at the earliest, where it is known of which it came. */
  private void requireSown(Code plant, String role, @Nullable PartialDate day) {
    if (day == null || hadANumber(plant, day)) {
      return;
    }
    Optional<PartialDate> sown = Birth.sown(book, plant);
    if (sown.isPresent() && day.isSurelyBefore(sown.get())) {
      throw new RegisterRefusal(
          References.described(book, plant)
              + ", "
              + role
              + ", did not exist on "
              + day
              + ": it was sown "
              + sown.get().inWords()
              + "; mend the date or name another plant");
    }
  }

  /** Whether it was pricked out by then, so that when it was sown need not be looked up. */
  private boolean hadANumber(Code plant, PartialDate day) {
    PartialDate since = book.resolved(plant).map(Item::since).orElse(null);
    return since != null && !day.isSurelyBefore(since);
  }

  /** An offset may have been taken where the plant stood before, but then not under a day here. */
  private void requireHere(Propagated ramet) {
    PartialDate day = ramet.date();
    Birth source = Birth.of(book, ramet.of());
    if (day != null
        && source.day() != null
        && source.stoodElsewhere()
        && source.isSurelyAfter(day)
        && !References.resolved(book, ramet.of()).neverHeld()) {
      throw new RegisterRefusal(
          References.described(book, ramet.of())
              + ", the source of this offset, came "
              + source.day().inWords()
              + ", after "
              + day
              + "; mend the date, or leave it open if this was taken where the plant stood before");
    }
  }

  /** Of a plant that stood here, nothing can become before it came. */
  private void requireCame(Code code, FateRecorded fate) {
    PartialDate day = fate.date();
    Item item = References.resolved(book, code);
    if (day == null || item.kind() != Item.Kind.PLANT || item.neverHeld()) {
      return; // what has a sowing or a pot behind it is asked in any case
    }
    PartialDate came = Birth.of(book, code).day();
    if (came != null && day.isSurelyBefore(came)) {
      throw new RegisterRefusal(
          References.described(book, code)
              + " came "
              + came.inWords()
              + ", so nothing can have become of it "
              + day.inWords()
              + "; mend the one date or the other");
    }
  }

  /**
   * A name that reads as the code of another thing would stand on tags for that thing. Codes of an
   * old notebook are welcome as names; one that is given out here as well has to be told apart.
   */
  private void requireNoCode(String name, Code bearer) {
    Code read;
    try {
      read = Code.parse(name.strip());
    } catch (IllegalArgumentException e) {
      return; // it reads as no code
    }
    if (read.equals(bearer)) {
      return;
    }
    String otherwise = "write it so that it reads as none, as \"old " + name.strip() + "\"";
    Optional<Item> taken = book.taken(read);
    if (taken.isPresent()) {
      throw new RegisterRefusal(
          "\""
              + name.strip()
              + "\" cannot be the name of a plant: "
              + read.text()
              + " is a "
              + taken.get().kind().word()
              + " of this register (entry "
              + taken.get().entry()
              + "); "
              + otherwise,
          List.of(taken.get().entry()));
    }
    boolean stillToCome = Math.floorMod(read.year() - bearer.year(), 100) < 50;
    if (stillToCome || book.lastNumber(read.year()) > 0) {
      warnings.add(
          "the name \""
              + name.strip()
              + "\" reads as a code that this register may give out yet; "
              + otherwise);
    }
  }

  private static void requireSeed(@Nullable Count seeds, String what) {
    if (seeds != null && seeds.size().orElse(1) == 0) {
      throw new RegisterRefusal(
          what + " of 0 seeds is none; say how many there were, or ? if nobody counted");
    }
  }

  private static void requireWeight(String gamete, String allele, Fraction weight) {
    if (weight.compareTo(HEAVIEST) > 0) {
      throw new RegisterRefusal(
          gamete
              + " with "
              + allele
              + " would count more than 1000 times as much as another; say how much it counts"
              + " against one that counts 1, from 0 to 1000");
    }
    if (weight.denominator().compareTo(BigInteger.valueOf(Count.MOST)) > 0) {
      throw new RegisterRefusal(
          "how much "
              + gamete
              + " with "
              + allele
              + " counts is written with more than 9 decimals; nobody measures so, write fewer");
    }
  }

  /** A plant of a species is of that wholly; a hybrid is told by its shares. */
  private void requireOneStory(Determination said) {
    String written = said.taxon();
    if (written == null || said.makeup().isEmpty() || !isOfOneTaxon(written)) {
      return;
    }
    String key = book.accepted(written).key();
    boolean same =
        said.makeup().entrySet().stream()
            .allMatch(
                share ->
                    share.getValue().isOne() && book.accepted(share.getKey()).key().equals(key));
    if (!same) {
      throw new RegisterRefusal(
          "nothing can be both "
              + written
              + " and made up of "
              + shares(said.makeup())
              + ": what bears that name is wholly of it. Leave the shares out if the name is"
              + " right, or give the shares without that name");
    }
  }

  private boolean isOfOneTaxon(String written) {
    TaxonName name;
    Taxon accepted = book.accepted(written);
    try {
      name = TaxonName.parse(accepted.name());
    } catch (NameException e) {
      return false;
    }
    boolean hybrid = accepted.declared() != null && accepted.declared().hybrid();
    return !hybrid
        && !name.isHybridName()
        && !name.isUndetermined()
        && name.species().isPresent()
        && name.cultivar().isEmpty()
        && TaxonName.parse(written).qualifier().isEmpty();
  }

  private static String shares(Map<String, Fraction> makeup) {
    return String.join(
        " + ",
        makeup.entrySet().stream().map(share -> share.getValue() + " " + share.getKey()).toList());
  }
}
