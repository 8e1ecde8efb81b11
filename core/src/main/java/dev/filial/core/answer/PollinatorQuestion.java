package dev.filial.core.answer;

import dev.filial.core.heredity.MapFunction;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.inference.WayOdds;
import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Route;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Whose pollen a seedling or a whole fruit came of, by what the seedlings show. */
public final class PollinatorQuestion {

  private final RegisterView view;
  private final List<String> traits;
  private final Weighing weighing;
  private final boolean seedBySeed;
  private final boolean why;

  private PollinatorQuestion(
      RegisterView view, List<String> traits, Weighing weighing, boolean seedBySeed, boolean why) {
    this.view = view;
    this.traits = List.copyOf(traits);
    this.weighing = weighing;
    this.seedBySeed = seedBySeed;
    this.why = why;
  }

  /**
   * By these traits.
   *
   * @throws RegisterRefusal if none is named
   */
  public static PollinatorQuestion of(RegisterView view, List<String> traits) {
    if (traits.isEmpty()) {
      throw new RegisterRefusal("say by which trait the pollinator is to be told");
    }
    return new PollinatorQuestion(view, traits, Weighing.PLAIN, false, false);
  }

  /** The same with what was seen weighed in that way. */
  public PollinatorQuestion weighing(Weighing other) {
    return new PollinatorQuestion(view, traits, other, seedBySeed, why);
  }

  /** The same with the pollinator of each seed drawn by itself, where a whole fruit is asked. */
  public PollinatorQuestion seedBySeed() {
    return new PollinatorQuestion(view, traits, weighing, true, why);
  }

  /** The same with the entries that moved the odds. */
  public PollinatorQuestion saysWhy() {
    return new PollinatorQuestion(view, traits, weighing, seedBySeed, true);
  }

  /**
   * Of a seedling, or of a plant whose tag was lost; of a cross, a lot or a pot that one plant
   * pollinated all of it.
   *
   * @throws RegisterRefusal if there is nothing to choose from, or as {@link
   *     LikelyGenesQuestion#ask}
   */
  public Pollinators ask(Code asked) {
    Item item = Things.required(view, asked);
    boolean single = item.kind().isPlant();
    Code code = single ? item.code() : item.code().whole();
    GenesInPlay genes =
        GenesInPlay.of(view, GeneEvidence.withLinked(view, traits), MapFunction.HALDANE, false);
    GeneEvidence evidence = GeneEvidence.of(view, genes, weighing, List.of(code));
    String name = evidence.behind().asked().get(0);
    if (evidence.pedigree().caseCount(evidence.pedigree().indexOf(name)) < 2) {
      throw new RegisterRefusal(
          code.text()
              + " is recorded to have come about in one way, so nobody else is to choose from; record"
              + " its pollination as open, with the plants that were in flower");
    }
    // The seed of a mixed lot is of several fruits.
    boolean mixed =
        evidence.pedigree().cases(evidence.pedigree().indexOf(name)).stream()
            .anyMatch(way -> way.route() == Route.LOT_SHARE);
    boolean wholeFruit = !single && !seedBySeed && !mixed;
    Set<String> family = new HashSet<>(Set.of(name));
    for (int plant = 0; plant < evidence.pedigree().size(); plant++) {
      String sib = evidence.pedigree().code(plant);
      if (evidence.behind().family(sib).filter(of -> of.code().equals(code.whole())).isPresent()) {
        family.add(sib); // looked at, or a parent of some that were
      }
    }
    long seen = evidence.all().stream().filter(finding -> family.contains(finding.plant())).count();
    GeneEvidence.Scenario scenario = evidence.scenarios().get(0);
    PedigreeOdds all = wholeFruit ? scenario.odds().withOnePollinator(family) : scenario.odds();
    PedigreeOdds odds = all.withEvidence(all.bearingOn(List.of(name)));
    WayOdds ways = ReckoningTelling.told(() -> odds.ways(name));
    List<Pollinators.Candidate> candidates = new ArrayList<>();
    int likeliest = 0;
    for (int i = 0; i < ways.ways().size(); i++) {
      WayOdds.Chance way = ways.ways().get(i);
      likeliest = way.after() > ways.ways().get(likeliest).after() ? i : likeliest;
      candidates.add(
          new Pollinators.Candidate(
              who(evidence.behind(), way.way()),
              way.way().route() == Route.IDENTITY,
              way.way().route().text(),
              way.before(),
              way.after(),
              way.error()));
    }
    candidates.sort(Comparator.comparingDouble(Pollinators.Candidate::after).reversed());
    Set<String> notes = new LinkedHashSet<>(ReckoningTelling.leaning(ways.reckoning()));
    if (scenario.assuming() != null) {
      notes.add("Taken for granted: " + scenario.assuming() + ".");
    }
    notes.addAll(evidence.notes());
    notes.addAll(ReckoningTelling.noted(genes));
    int top = likeliest;
    List<Influence> influences =
        why
            ? ReckoningTelling.told(
                () ->
                    Influences.of(
                        view, odds, some -> some.ways(name).ways().get(top).after(), notes))
            : List.of();
    return new Pollinators(
        code.text(), wholeFruit, (int) seen, candidates, influences, List.copyOf(notes));
  }

  private static String who(RegisterPedigree behind, Case way) {
    if (way instanceof Case.Sexual sexual) {
      String pollen = sexual.pollen().parent();
      return pollen == null ? "somebody else" : pollen;
    }
    // A plant that the register does not number stands for something that was not named.
    String of = ((Case.Copy) way).of();
    if (way.route() == Route.LOT_SHARE) {
      return behind.family(of).map(family -> family.code().text()).orElse(of);
    }
    return behind.item(of).isPresent() || behind.family(of).isPresent() ? of : "none of these";
  }
}
