package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Gamete;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Route;
import dev.filial.core.pedigree.Seedling;
import dev.filial.core.register.Item;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The pedigree of a register with pollen that a style refuses dropped out of its mixes. */
final class RefusedPollen {

  private final RegisterView view;
  private final RegisterPedigree behind;
  private final List<String> notes;

  private RefusedPollen(RegisterView view, RegisterPedigree behind, List<String> notes) {
    this.view = view;
    this.behind = behind;
    this.notes = notes;
  }

  /**
   * The pedigree, shares of pollens that are partly refused rescaled.
   *
   * @param notes where a sentence goes for each pollen that is
   */
  static Pedigree left(RegisterView view, RegisterPedigree behind, List<String> notes) {
    return view.loci().stream().noneMatch(LocusDeclared::incompatibility)
        ? behind.pedigree()
        : new RefusedPollen(view, behind, notes).left();
  }

  private Pedigree left() {
    Pedigree pedigree = behind.pedigree();
    List<PlantRecord> records = new ArrayList<>();
    boolean changed = false;
    for (int plant = 0; plant < pedigree.size(); plant++) {
      PlantRecord before = pedigree.plantRecord(plant);
      List<Case> cases = pedigree.cases(plant);
      List<Case> left = left(cases);
      boolean other = !left.equals(cases);
      changed |= other;
      records.add(other ? new PlantRecord(before.code(), new Seedling(left)) : before);
    }
    return changed ? Pedigree.of(records) : pedigree;
  }

  private List<Case> left(List<Case> cases) {
    List<@Nullable Fraction> through = new ArrayList<>();
    boolean any = false;
    for (Case one : cases) {
      Fraction part = isOfAMix(one) ? through((Case.Sexual) one) : null;
      any |= part != null && !part.isOne();
      through.add(part);
    }
    if (!any) {
      return cases;
    }
    List<Fraction> shares =
        PollenShares.rescaled(cases.stream().map(Case::share).toList(), through);
    List<Case> left = new ArrayList<>();
    for (int i = 0; i < cases.size(); i++) {
      if (!isOfAMix(cases.get(i))) {
        left.add(cases.get(i));
      } else if (!shares.get(i).isZero()) {
        Case.Sexual one = (Case.Sexual) cases.get(i);
        left.add(new Case.Sexual(shares.get(i), one.route(), one.seed(), one.pollen()));
      }
    }
    return left;
  }

  private static boolean isOfAMix(Case one) {
    return one instanceof Case.Sexual
        && (one.route() == Route.OPEN_POLLINATION || one.route() == Route.POLLEN_MIX);
  }

  private Fraction through(Case.Sexual mixed) {
    Optional<Code> style = code(mixed.seed());
    Optional<Code> grain = code(mixed.pollen());
    if (style.isEmpty() || grain.isEmpty()) {
      return Fraction.ONE;
    }
    Optional<Fraction> through =
        CompatibilityQuestion.known(view, style.get(), grain.get())
            .map(CompatibilityQuestion.Pair::leaking);
    through
        .filter(part -> !part.isOne())
        .ifPresent(part -> notes.add(PollenShares.note(grain.get().text(), part)));
    return through.orElse(Fraction.ONE);
  }

  private Optional<Code> code(Gamete gamete) {
    return gamete.parent() == null
        ? Optional.empty()
        : behind.item(gamete.parent()).map(Item::code);
  }
}
