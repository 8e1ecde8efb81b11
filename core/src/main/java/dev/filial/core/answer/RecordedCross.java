package dev.filial.core.answer;

import dev.filial.core.answer.CrossOdds.Scenario;
import dev.filial.core.answer.OddsQuestion.Side;
import dev.filial.core.heredity.Odds;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Route;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a recorded cross throws: the ways in which its seed may have come about, mixed. */
final class RecordedCross {

  private final OddsQuestion question;

  RecordedCross(OddsQuestion question) {
    this.question = question;
  }

  CrossOdds ask(Item family) {
    if (family.descent().isEmpty() || family.kind() != Item.Kind.CROSS) {
      throw new RegisterRefusal(
          family.code().text()
              + " is a "
              + family.kind().word()
              + " of which no two parents are recorded; ask by its parents, or by their genes");
    }
    List<Descent> known = known(family);
    Fraction reckoned = reckoned(family);
    if (known.isEmpty()) {
      throw new RegisterRefusal(
          "nobody knows whose pollen "
              + family.code().text()
              + " had, so there are no odds to reckon; ask for a forecast from like crosses");
    }
    if (question.isLater() && family.descent().size() > 1) {
      throw new RegisterRefusal(
          "the seed of "
              + family.code().text()
              + " came about in several ways, and what comes of all of them by further selfing is"
              + " not reckoned; ask by two parents");
    }
    List<String> notes = new ArrayList<>();
    if (!reckoned.isOne()) {
      notes.add(
          Fraction.ONE.minus(reckoned).toPercent(1)
              + " of the seed had unknown pollen and is left out of these odds, and no wanted seedling"
              + " is hoped for from it when reckoning how many to sow.");
    }
    List<CrossOdds> ways = new ArrayList<>();
    List<Fraction> shares = rescaled(known, notes);
    for (int i = known.size() - 1; i >= 0; i--) {
      if (shares.get(i).isZero()) {
        known.remove(i);
        shares.remove(i);
      }
    }
    for (Descent descent : known) {
      ways.add(way(family, descent));
    }
    if (ways.size() == 1 && (reckoned.isOne() || question.wanted().isEmpty())) {
      return named(ways.get(0), family, notes);
    }
    notes.add(
        "Mixed of the ways in which the seed may have come about: " + text(known, shares) + ".");
    if (known.stream().filter(way -> way.route() == Route.OPEN_POLLINATION).count() > 1) {
      notes.add(
          "Every seed is taken to have had pollen of its own. If all are of one fruit they may have"
              + " one pollinator, and then no number to sow is sure.");
    }
    return named(mixed(ways, shares, reckoned), family, notes);
  }

  /** The ways of which both parents are known, or the plant that is repeated. */
  private static List<Descent> known(Item family) {
    List<Descent> known = new ArrayList<>();
    for (Descent descent : family.descent()) {
      boolean parented = descent.form() == Descent.Form.SEXUAL && descent.pollen() != null;
      if (parented || descent.form() == Descent.Form.COPY) {
        known.add(descent);
      }
    }
    return known;
  }

  /** The share of the seed that came about in a way that odds can be reckoned of. */
  static Fraction reckoned(Item family) {
    return sum(known(family).stream().map(Descent::share).toList());
  }

  /**
   * The shares of the ways, those of several pollens rescaled by what a style lets through of each,
   * where the S alleles are known. A stated share of selfs or of seed without fertilisation is one
   * of seeds already, and stays.
   */
  private List<Fraction> rescaled(List<Descent> ways, List<String> notes) {
    List<@Nullable Fraction> through = new ArrayList<>();
    for (Descent way : ways) {
      through.add(isOneOfSeveral(way) ? through(way, notes) : null);
    }
    return PollenShares.rescaled(ways.stream().map(Descent::share).toList(), through);
  }

  private static boolean isOneOfSeveral(Descent way) {
    return way.pollen() != null
        && (way.route() == Route.POLLEN_MIX || way.route() == Route.OPEN_POLLINATION);
  }

  private Fraction through(Descent way, List<String> notes) {
    Code pollen = way.pollen();
    Optional<Fraction> through =
        pollen == null ? Optional.empty() : question.through(way.seed(), pollen);
    if (pollen != null && through.isPresent() && !through.get().isOne()) {
      notes.add(PollenShares.note(pollen.text(), through.get()));
    }
    return through.orElse(Fraction.ONE);
  }

  private CrossOdds way(Item family, Descent descent) {
    if (descent.form() == Descent.Form.COPY) {
      Side plant = new Side(descent.seed(), null, null);
      return question.ofPlant(plant);
    }
    Side seed = new Side(descent.seed(), null, null);
    Side pollen = descent.route() == Route.SELFING ? seed : new Side(descent.pollen(), null, null);
    if (descent.seedSets() != 0 || descent.pollenSets() != 0) {
      throw new NotStated(
          NotStated.Need.GAMETES,
          family.code().text(),
          family.code().text()
              + " was made with gametes of stated chromosome sets, and trait odds through these need"
              + " to know how they formed; ask by the two parents and say how");
    }
    return question.ofPair(seed, pollen);
  }

  private CrossOdds named(CrossOdds odds, Item family, List<String> more) {
    LinkedHashSet<String> notes = new LinkedHashSet<>(more);
    notes.addAll(odds.notes());
    Descent first = family.descent().get(0);
    return new CrossOdds(
        first.seed().text(),
        family.descent().size() > 1
            ? "pollen of several"
            : first.route() == Route.SELFING
                ? first.seed().text()
                : first.pollen() == null ? odds.pollen() : first.pollen().text(),
        odds.traits(),
        odds.scenarios(),
        odds.method(),
        List.copyOf(notes));
  }

  private static Fraction sum(List<Fraction> shares) {
    return shares.stream().reduce(Fraction.ZERO, Fraction::plus);
  }

  private static String text(List<Descent> ways, List<Fraction> shares) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < ways.size(); i++) {
      Descent way = ways.get(i);
      parts.add(
          shares.get(i).dividedBy(sum(shares)).toPercent(1)
              + " "
              + way.route().text()
              + (way.pollen() == null || way.route() == Route.SELFING
                  ? ""
                  : " by " + way.pollen().text()));
    }
    return String.join(", ", parts);
  }

  private CrossOdds mixed(List<CrossOdds> ways, List<Fraction> shares, Fraction reckoned) {
    List<Odds> odds = new ArrayList<>();
    for (CrossOdds way : ways) {
      if (way.scenarios().size() > 1) {
        throw new RegisterRefusal(
            "the seed came about in several ways, and of tetraploid parents it is not stated how"
                + " their chromosomes pair; state that in the profile of their taxon, or"
                + " ask by two parents");
      }
      Scenario one = way.scenarios().get(0);
      odds.add(new Odds(way.traits(), one.classes(), one.lost(), one.exact()));
    }
    Odds all = Odds.mixture(question.models(), shares, odds);
    CrossOdds first = ways.get(0);
    Scenario mixed =
        new Scenario(
            null,
            first.scenarios().get(0).seedGenes(),
            ways.stream().allMatch(way -> way.scenarios().get(0).pollenGenes() != null) ? "" : null,
            all.classes(),
            all.ratio().orElse(null),
            all.lost(),
            all.exact(),
            hope(ways, shares, odds, reckoned.times(Fraction.ONE.minus(all.lost()))),
            null);
    LinkedHashSet<String> notes = new LinkedHashSet<>();
    ways.forEach(way -> notes.addAll(way.notes()));
    return new CrossOdds(
        first.seed(),
        first.pollen(),
        first.traits(),
        List.of(mixed),
        first.method(),
        List.copyOf(notes));
  }

  /** The chance of the wanted among those that live, over all ways. */
  private @Nullable Hope hope(
      List<CrossOdds> ways, List<Fraction> shares, List<Odds> odds, Fraction seen) {
    if (question.wanted().isEmpty()) {
      return null;
    }
    Fraction wanted = Fraction.ZERO;
    Fraction living = Fraction.ZERO;
    String what = "";
    for (int i = 0; i < ways.size(); i++) {
      Hope one = ways.get(i).scenarios().get(0).hope();
      Fraction alive = shares.get(i).times(Fraction.ONE.minus(odds.get(i).lost()));
      living = living.plus(alive);
      if (one != null) {
        wanted = wanted.plus(alive.times(one.chance()));
        what = one.what();
      }
    }
    return Hope.of(what, wanted.dividedBy(living), seen, question.wanted().get());
  }
}
