package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Route;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** The rules of a pollination. */
final class CrossRules {

  private final RegisterView book;
  private final List<String> warnings;

  CrossRules(RegisterView book, List<String> warnings) {
    this.book = book;
    this.warnings = warnings;
  }

  void check(Pollinated cross) {
    Code seedParent = cross.seedParent();
    References.parent(book, seedParent);
    requireNoLoop(book, cross.code());
    requireBorn(cross, seedParent, "seed parent");
    warnIfGone(cross, seedParent, "seed parent");
    List<Descent> cases = Descents.of(cross);
    Set<Code> pollenParents = new LinkedHashSet<>();
    for (Descent descent : cases) {
      if (descent.pollen() != null && descent.route() != Route.SELFING) {
        pollenParents.add(descent.pollen());
      }
    }
    for (Code parent : pollenParents) {
      References.parent(book, parent);
      requireBorn(cross, parent, "pollen parent");
      if (!cross.storedPollen()) {
        warnIfGone(cross, parent, "pollen parent");
      }
    }
    warnIfSelfing(cross, pollenParents);
    warnIfUnprotected(cross);
    requireEvenGametes(cross, cases);
  }

  private void requireBorn(Pollinated cross, Code parent, String role) {
    PartialDate day = cross.date();
    Birth birth = Birth.of(book, parent);
    if (day == null || !birth.isSurelyAfter(day)) {
      return;
    }
    if (!birth.stoodElsewhere()) {
      throw birth.refusal(
          References.described(book, parent), "the " + role + " of this cross", day);
    }
    PartialDate came = birth.day();
    if (came != null && !References.resolved(book, parent).neverHeld()) {
      warnings.add(
          References.described(book, parent)
              + " came "
              + came.inWords()
              + ", after the cross of "
              + day
              + "; right only if it was used where it stood before");
    }
  }

  private void warnIfGone(Pollinated cross, Code code, String role) {
    PartialDate day = cross.date();
    Item parent = References.resolved(book, code);
    if (day != null
        && !parent.fate().isHere()
        && parent.until() != null
        && parent.until().isSurelyBefore(day)) {
      warnings.add(
          References.described(book, code)
              + ", the "
              + role
              + ", "
              + parent.fate().became()
              + " "
              + parent.until().inWords()
              + (role.equals("pollen parent")
                  ? "; right if its pollen was stored, which the entry can say"
                  : "; see whether the date is right"));
    }
  }

  private void warnIfSelfing(Pollinated cross, Set<Code> pollenParents) {
    Item clone = clone(cross.seedParent());
    String taxon = clone.determination().taxon();
    boolean refuses = taxon != null && book.accepted(taxon).isSelfIncompatible();
    if (refuses && cross.pollen() instanceof Pollen.Itself) {
      warnings.add(
          References.described(book, cross.seedParent())
              + " belongs to a taxon recorded as self-incompatible; a selfing may set little or"
              + " nothing");
    }
    for (Code parent : pollenParents) {
      if (clone.kind().isPlant() && clone(parent).code().equals(clone.code())) {
        warnings.add(
            cross.seedParent().text()
                + " and "
                + parent.text()
                + " are one clone"
                + (refuses
                    ? ", of a taxon recorded as self-incompatible; this is a selfing and may set"
                        + " little or nothing"
                    : ", so this is a selfing"));
      }
    }
  }

  /** The plant that {@code code} has its genotype from, through joins and vegetative increase. */
  private Item clone(Code code) {
    Set<Code> seen = new HashSet<>();
    Item here = References.resolved(book, code);
    while (seen.add(here.code())
        && here.descent().size() == 1
        && here.descent().get(0).form() == Descent.Form.COPY
        && here.descent().get(0).route() == Route.IDENTITY
        && here.descent().get(0).share().isOne()) {
      Optional<Item> source = book.resolved(here.descent().get(0).seed());
      if (source.isEmpty()) {
        break;
      }
      here = source.get();
    }
    return here;
  }

  private void warnIfUnprotected(Pollinated cross) {
    if (cross.isUnprotectedAndUnstated()) {
      warnings.add(
          cross.code().text()
              + " was not protected and no share of selfs and strays is stated; every answer will"
              + " take it as pure and say so");
    }
  }

  private void requireEvenGametes(Pollinated cross, List<Descent> cases) {
    if (book.isAllDiploid() && cross.seedSets() == null && cross.pollenSets() == null) {
      return;
    }
    SetsOf sets = SetsOf.in(book, List.of(cross.code()));
    // Seed that arises without fertilisation asks for no gametes.
    for (Descent sexual : cases) {
      if (sexual.form() != Descent.Form.SEXUAL) {
        continue;
      }
      requireGamete(sets, sexual.seed(), sexual.seedSets(), "egg");
      if (sexual.pollen() != null) {
        if (sexual.route() == Route.SELFING && !(cross.pollen() instanceof Pollen.Itself)) {
          requireSelfsOfEven(sets, sexual.seed());
        } else {
          requireGamete(sets, sexual.pollen(), sexual.pollenSets(), "pollen");
        }
      }
    }
  }

  /** What was said of the gametes is said of those that were meant; of chance selfs nothing is. */
  private void requireSelfsOfEven(SetsOf sets, Code parent) {
    OptionalInt ploidy = sets.ploidy(parent);
    if (ploidy.isPresent() && ploidy.getAsInt() % 2 == 1) {
      throw new RegisterRefusal(
          References.described(book, parent)
              + " has "
              + ploidy.getAsInt()
              + " chromosome sets, and what selfs of it carry cannot be reckoned; leave the share"
              + " of selfs out and write it into the remark");
    }
  }

  private void requireGamete(SetsOf sets, Code parent, int stated, String gamete) {
    OptionalInt ploidy = sets.ploidy(parent);
    if (ploidy.isEmpty()) {
      return;
    }
    if (stated > ploidy.getAsInt()) {
      throw new RegisterRefusal(
          References.described(book, parent)
              + " has "
              + ploidy.getAsInt()
              + " chromosome sets, so its "
              + gamete
              + " cannot have carried "
              + stated
              + "; state at most that, or correct its ploidy");
    }
    if (stated == 0 && ploidy.getAsInt() % 2 == 1) {
      throw new UnstatedGameteRefusal(
          References.described(book, parent)
              + " has "
              + ploidy.getAsInt()
              + " chromosome sets, and half of that is no gamete; state how many sets its "
              + gamete
              + " carried in this cross",
          gamete.equals("egg"));
    }
  }

  /**
   * Whether {@code code} comes of itself by the records.
   *
   * @throws RegisterRefusal if it does, naming the plants on the way round
   */
  static void requireNoLoop(RegisterView book, Code code) {
    Item item = References.thing(book, code);
    List<Code> parents = new ArrayList<>(Lineage.next(item));
    if (isUnused(book, code)
        && parents.stream().noneMatch(parent -> parent.whole().equals(code.whole()))) {
      return; // nothing was ever raised from it, so nothing it comes of can come of it
    }
    Map<Code, Item> lineage = book.lineage(parents);
    for (Item ancestor : lineage.values()) {
      boolean itself =
          code.isWhole() ? ancestor.code().whole().equals(code) : ancestor.code().equals(code);
      if (itself) {
        throw new RegisterRefusal(
            code.text()
                + " would be among its own ancestors: "
                + Loops.explain(book, parents, code)
                + "; see which parent was misread");
      }
    }
  }

  /** Whether nothing can come of {@code code} yet: no entry leans on it or on what is under it. */
  private static boolean isUnused(RegisterView book, Code code) {
    for (Code under : book.codesUnder(code.whole())) {
      if (!book.entriesMentioning(Subject.of(under)).isEmpty()) {
        return false;
      }
      for (long entry : book.entriesOn(Subject.of(under))) {
        Statement statement = book.effective(entry).orElse(null);
        if (statement instanceof Joined
            || (statement instanceof LotsMerged merged && !merged.code().equals(code))) {
          return false;
        }
      }
    }
    return true;
  }
}
