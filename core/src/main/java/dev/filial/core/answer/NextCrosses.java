package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which plants to cross, this season and the next ones, for a seedling that is wanted.
 *
 * @param what it, in words
 * @param atLeast how many are wanted
 * @param certainty how sure that is to be
 * @param rates germination and survival, as they were reckoned with in every season
 * @param seasons how many seasons ahead was looked
 * @param parents how many plants could be a parent, clone-mates counting once
 * @param leftOut plants that were not taken for parents
 * @param already plants that are as wanted now
 * @param refused how many pairs and selfings set no seed by their S alleles, and were left out
 * @param plans the plans, those of fewest seasons first, and then of fewest seeds
 * @param further how many more first crosses lead there and are not among them
 * @param notes what the answer leans on, a sentence each
 * @param method how it was reckoned, a sentence each
 */
public record NextCrosses(
    String what,
    int atLeast,
    double certainty,
    List<SeedRate> rates,
    int seasons,
    int parents,
    List<LeftOut> leftOut,
    List<Plant> already,
    int refused,
    List<Plan> plans,
    int further,
    List<String> notes,
    List<String> method) {

  /** Copies the lists. */
  public NextCrosses {
    rates = List.copyOf(rates);
    leftOut = List.copyOf(leftOut);
    already = List.copyOf(already);
    plans = List.copyOf(plans);
    notes = List.copyOf(notes);
    method = List.copyOf(method);
  }

  /**
   * Plants that were not taken for parents.
   *
   * @param why the reason, in a grower's words
   * @param plants how many
   */
  public record LeftOut(String why, int plants) {}

  /**
   * A plant.
   *
   * @param code its code
   * @param what its taxon or parents
   * @param sameClone other plants of its clone that stand here
   */
  public record Plant(Code code, String what, List<Code> sameClone) {
    /** Copies the list. */
    public Plant {
      sameClone = List.copyOf(sameClone);
    }
  }

  /**
   * A plan.
   *
   * @param seasons what is done in each
   * @param instead plants that do as well in place of one it begins with; null if there are none
   *     among those that were reckoned
   * @param total all seeds together; seedlings where no rates are given
   * @param certainty how sure the wanted seedling then is
   * @param reached whether that is as sure as was asked; if not, the numbers are those for {@value
   *     dev.filial.core.plan.Sowing#NEARLY} of {@code reachable}
   * @param reachable how sure it can be, however many are sown and however many are kept within
   *     reason
   * @param inbreeding the inbreeding coefficient of the last seedlings
   * @param shares the expected shares of the taxa that were asked of, in the last seedlings
   * @param notes what this plan leans on beyond the others, a sentence each
   */
  public record Plan(
      List<Season> seasons,
      @Nullable Instead instead,
      long total,
      double certainty,
      boolean reached,
      double reachable,
      double inbreeding,
      List<Share> shares,
      List<String> notes) {
    /** Copies the lists. */
    public Plan {
      seasons = List.copyOf(seasons);
      shares = List.copyOf(shares);
      notes = List.copyOf(notes);
    }
  }

  /**
   * Plants that do as well as another.
   *
   * @param of the other
   * @param plants they
   */
  public record Instead(Plant of, List<Plant> plants) {
    /** Copies the list. */
    public Instead {
      plants = List.copyOf(plants);
    }
  }

  /** A parent in a season. */
  public enum Part {
    /** A plant of the register. */
    PLANT,
    /** A seedling that was kept of the season before. */
    KEPT,
    /** A second one of the same. */
    SIB,
    /** A seedling that was kept of the cross made beside that in the season before. */
    OTHER
  }

  /**
   * A parent.
   *
   * @param part which it is
   * @param plant the plant; null for a seedling
   */
  public record Side(Part part, @Nullable Plant plant) {}

  /**
   * A season.
   *
   * @param seed the seed parent
   * @param pollen the pollen parent; the same for a selfing
   * @param backcross whether one of them is a parent of the other
   * @param keep what to keep of the seedlings, in words; of the last season the wanted ones
   * @param all whether every seedling that lives is such a one
   * @param chance how likely one that lives is
   * @param seeds how many to sow, of each plant kept in the season before, or of each two of them
   *     that are crossed; seedlings where no rates are given
   * @param kept how many to go on with; pairs if sibs are crossed next; of each of two crosses
   * @param spare how many to keep beyond them, since some set no seed with their mate by their S
   *     alleles; 0 where all do, or it is not known
   * @param pairs whether pairs are kept
   * @param setting how likely what was kept in the season before sets seed so, by the S alleles;
   *     null in the first season, or where they are not known
   * @param beside the cross that is made beside this one in the same season; null if there is none
   */
  public record Season(
      Side seed,
      Side pollen,
      boolean backcross,
      String keep,
      boolean all,
      double chance,
      int seeds,
      int kept,
      int spare,
      boolean pairs,
      @Nullable Double setting,
      @Nullable Beside beside) {}

  /**
   * Another cross of the same season, of which as many seedlings are kept.
   *
   * @param seed the seed parent
   * @param pollen the pollen parent; the same for a selfing
   * @param keep what to keep of the seedlings, in words
   * @param all whether every seedling that lives is such a one
   * @param chance how likely one that lives is
   * @param seeds how many to sow; seedlings where no rates are given
   * @param kept how many to go on with, as many as of the first, and as many to spare
   */
  public record Beside(
      Side seed, Side pollen, String keep, boolean all, double chance, int seeds, int kept) {}

  /**
   * A share.
   *
   * @param taxon the full name
   * @param least what was asked for
   * @param share what is expected
   */
  public record Share(String taxon, Fraction least, double share) {}
}
