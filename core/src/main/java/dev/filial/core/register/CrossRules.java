package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Route;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The rules of a pollination. */
final class CrossRules {

  private final RegisterView book;
  private final List<String> warnings;

  CrossRules(RegisterView book, List<String> warnings) {
    this.book = book;
    this.warnings = warnings;
  }

  void check(Pollinated cross) {
    Item seedParent = References.parent(book, cross.seedParent());
    requireBorn(cross, seedParent, "seed parent");
    warnIfGone(cross, seedParent, "seed parent");
    Set<Code> pollenParents = new LinkedHashSet<>();
    for (Descent descent : Descents.of(cross)) {
      if (descent.pollen() != null && descent.route() != Route.SELFING) {
        pollenParents.add(descent.pollen());
      }
    }
    for (Code code : pollenParents) {
      Item parent = References.parent(book, code);
      requireBorn(cross, parent, "pollen parent");
      if (!cross.storedPollen()) {
        warnIfGone(cross, parent, "pollen parent");
      }
    }
    warnIfSelfIncompatible(cross, seedParent);
    warnIfUnprotected(cross);
    requireNoLoop(book, cross.code());
    requireEvenGametes(cross, pollenParents);
  }

  private void requireBorn(Pollinated cross, Item parent, String role) {
    PartialDate day = cross.date();
    PartialDate born = born(parent);
    if (day == null || born == null || !day.isSurelyBefore(born)) {
      return;
    }
    if (parent.kind() == Item.Kind.PLANT && parent.descent().isEmpty()) {
      // It stood somewhere before it came here, and its pollen may have come by post.
      warnings.add(
          Rules.describe(parent)
              + " came on "
              + born
              + ", after the cross of "
              + day
              + "; right only if it was used where it stood before");
      return;
    }
    throw new RegisterRefusal(
        Rules.describe(parent)
            + ", the "
            + role
            + " of "
            + cross.code().text()
            + ", did not exist on "
            + day
            + ": it came about on "
            + born
            + "; mend the date or name another plant");
  }

  private @Nullable PartialDate born(Item plant) {
    // A seedling is as old as its cross; when it was pricked out says nothing of that.
    return plant.code().isWhole()
        ? plant.since()
        : book.item(plant.code().whole()).map(Item::since).orElse(plant.since());
  }

  private void warnIfGone(Pollinated cross, Item parent, String role) {
    PartialDate day = cross.date();
    if (day != null
        && !parent.fate().isHere()
        && parent.until() != null
        && parent.until().isSurelyBefore(day)) {
      warnings.add(
          Rules.describe(parent)
              + ", the "
              + role
              + ", was "
              + (parent.fate() == Fate.GIVEN
                  ? "given away"
                  : parent.fate() == Fate.DEAD ? "dead" : "gone")
              + " on "
              + parent.until()
              + (role.equals("pollen parent")
                  ? "; right if its pollen was stored, which the entry can say"
                  : "; see whether the date is right"));
    }
  }

  private void warnIfSelfIncompatible(Pollinated cross, Item seedParent) {
    String taxon = seedParent.determination().taxon();
    if (cross.pollen() instanceof Pollen.Itself
        && taxon != null
        && book.accepted(taxon).isSelfIncompatible()) {
      warnings.add(
          Rules.describe(seedParent)
              + " belongs to a taxon recorded as self-incompatible; a selfing may set little or"
              + " nothing");
    }
  }

  private void warnIfUnprotected(Pollinated cross) {
    if (cross.isUnprotectedByHand() && cross.selfs().isZero() && cross.strays().isZero()) {
      warnings.add(
          cross.code().text()
              + " was not protected and no share of selfs and strays is stated; every answer will"
              + " take it as pure and say so");
    }
  }

  private void requireEvenGametes(Pollinated cross, Set<Code> pollenParents) {
    if (book.isAllDiploid()) {
      return;
    }
    SetsOf sets = SetsOf.in(book, List.of(cross.code()));
    if (cross.seedSets() == null) {
      requireEven(cross, sets, cross.seedParent(), "egg");
    }
    if (cross.pollenSets() == null) {
      pollenParents.forEach(code -> requireEven(cross, sets, code, "pollen"));
    }
  }

  private void requireEven(Pollinated cross, SetsOf sets, Code parent, String gamete) {
    OptionalInt ploidy = sets.ploidy(parent);
    if (ploidy.isPresent() && ploidy.getAsInt() % 2 == 1) {
      throw new RegisterRefusal(
          parent.text()
              + " has "
              + ploidy.getAsInt()
              + " chromosome sets, and half of that is no gamete; state how many sets the "
              + gamete
              + " of "
              + cross.code().text()
              + " carried");
    }
  }

  /**
   * Whether {@code code} comes of itself by the records.
   *
   * @throws RegisterRefusal if it does, naming the plants on the way round
   */
  static void requireNoLoop(RegisterView book, Code code) {
    Item item = References.thing(book, code);
    boolean isNew =
        book.codesUnder(code.whole()).stream()
            .allMatch(under -> book.entriesMentioning(Subject.of(under)).isEmpty());
    List<Code> parents = new ArrayList<>(Lineage.next(item));
    if (isNew && parents.stream().noneMatch(parent -> parent.whole().equals(code.whole()))) {
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
}
