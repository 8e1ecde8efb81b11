package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Route;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The ways in which the plants of a statement may have come about. */
final class Descents {

  private Descents() {}

  /**
   * The cases of what {@code statement} gives out under a whole code; empty for what was acquired.
   */
  static List<Descent> of(Statement statement) {
    if (statement instanceof Pollinated cross) {
      return ofCross(cross);
    }
    if (statement instanceof Propagated ramet) {
      return List.of(
          new Descent(
              ramet.doubled() ? Descent.Form.DOUBLED : Descent.Form.COPY,
              Route.IDENTITY,
              Fraction.ONE,
              ramet.of(),
              0,
              null,
              0));
    }
    if (statement instanceof LotsMerged merged) {
      return merged.parts().stream()
          .map(part -> Descent.sibling(Route.LOT_SHARE, part.share(), part.lot()))
          .toList();
    }
    return statement instanceof TagLost found ? ofFound(found) : List.of();
  }

  private static List<Descent> ofFound(TagLost found) {
    List<Descent> cases = new ArrayList<>();
    Fraction known = Fraction.ONE.minus(found.unknown());
    for (Weighted candidate : shares(found.candidates(), known)) {
      cases.add(
          candidate.plant().isGroup()
              ? Descent.sibling(Route.IDENTITY, candidate.weight(), candidate.plant())
              : Descent.copy(Route.IDENTITY, candidate.weight(), candidate.plant()));
    }
    return cases;
  }

  private static List<Descent> ofCross(Pollinated cross) {
    List<Descent> cases = new ArrayList<>();
    Fraction intended =
        Fraction.ONE.minus(cross.selfs()).minus(cross.strays()).minus(cross.apomixis());
    Pollen pollen = cross.pollen();
    if (pollen instanceof Pollen.OnePlant one) {
      add(cases, cross, Route.CROSS, intended, one.plant());
    } else if (pollen instanceof Pollen.Itself) {
      // Accidental selfs of a selfing are no case of their own.
      add(cases, cross, Route.SELFING, intended.plus(cross.selfs()), cross.seedParent());
    } else if (pollen instanceof Pollen.Mix mix) {
      for (Weighted plant : shares(mix.plants(), intended)) {
        add(cases, cross, Route.POLLEN_MIX, plant.weight(), plant.plant());
      }
    } else if (pollen instanceof Pollen.Open open) {
      Fraction unknown = intended.times(open.unknown());
      for (Weighted plant : shares(open.candidates(), intended.minus(unknown))) {
        add(cases, cross, Route.OPEN_POLLINATION, plant.weight(), plant.plant());
      }
      add(cases, cross, Route.OPEN_POLLINATION, unknown, null);
    }
    if (!(pollen instanceof Pollen.Itself)) {
      addAccident(cases, cross, Route.SELFING, cross.selfs(), cross.seedParent());
    }
    addAccident(cases, cross, Route.STRAY, cross.strays(), null);
    if (!cross.apomixis().isZero()) {
      cases.add(Descent.copy(Route.APOMIXIS, cross.apomixis(), cross.seedParent()));
    }
    return cases;
  }

  private static void add(
      List<Descent> cases, Pollinated cross, Route route, Fraction share, @Nullable Code pollen) {
    add(cases, cross, route, share, pollen, cross.pollenSets() == null ? 0 : cross.pollenSets());
  }

  /** What the pollen carried was said of the pollen that was meant, and not of any other. */
  private static void addAccident(
      List<Descent> cases, Pollinated cross, Route route, Fraction share, @Nullable Code pollen) {
    add(cases, cross, route, share, pollen, 0);
  }

  private static void add(
      List<Descent> cases,
      Pollinated cross,
      Route route,
      Fraction share,
      @Nullable Code pollen,
      int pollenSets) {
    if (!share.isZero()) {
      cases.add(
          new Descent(
              Descent.Form.SEXUAL,
              route,
              share,
              cross.seedParent(),
              cross.seedSets() == null ? 0 : cross.seedSets(),
              pollen,
              pollenSets));
    }
  }

  /** The weights brought to shares that come to {@code whole}; those of no share left out. */
  private static List<Weighted> shares(List<Weighted> plants, Fraction whole) {
    if (whole.isZero()) {
      return List.of();
    }
    Fraction sum = plants.stream().map(Weighted::weight).reduce(Fraction.ZERO, Fraction::plus);
    return plants.stream()
        .map(plant -> new Weighted(plant.plant(), plant.weight().times(whole).dividedBy(sum)))
        .toList();
  }
}
