package dev.filial.core.answer;

import dev.filial.core.heredity.Checkerboard;
import dev.filial.core.heredity.Compatibility;
import dev.filial.core.heredity.Cross;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Odds;
import dev.filial.core.heredity.Parent;
import dev.filial.core.heredity.SelfedLine;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a cross will throw, how likely a wanted seedling is, and how many seeds to sow for it.
 *
 * <p>Parents are plants of the register whose genes follow from what is recorded, or genes that are
 * typed in. Where a tetraploid's pairing was never stated, both answers are given.
 */
public final class OddsQuestion {

  private final RegisterView view;
  private final List<String> traits;
  private final MapFunction function;
  private final Optional<Wanted> wanted;
  private final int selfings;
  private final boolean keeping;
  private final boolean grid;

  private OddsQuestion(
      RegisterView view,
      List<String> traits,
      MapFunction function,
      Optional<Wanted> wanted,
      int selfings,
      boolean keeping,
      boolean grid) {
    this.view = view;
    this.traits = List.copyOf(traits);
    this.function = function;
    this.wanted = wanted;
    this.selfings = selfings;
    this.keeping = keeping;
    this.grid = grid;
  }

  /**
   * About these traits.
   *
   * @throws RegisterRefusal if none is named
   */
  public static OddsQuestion of(RegisterView view, List<String> traits) {
    if (traits.isEmpty()) {
      throw new RegisterRefusal("say of which trait the odds are asked");
    }
    return new OddsQuestion(view, traits, MapFunction.HALDANE, Optional.empty(), 0, false, false);
  }

  /** The same with map distances turned into recombination in that way. */
  public OddsQuestion withMapFunction(MapFunction other) {
    return new OddsQuestion(view, traits, other, wanted, selfings, keeping, grid);
  }

  /** The same with a plant that is wanted. */
  public OddsQuestion wanting(Wanted wish) {
    return new OddsQuestion(view, traits, function, Optional.of(wish), selfings, keeping, grid);
  }

  /**
   * The same after so many generations of selfing, each seedling down a line of its own.
   *
   * @param generations 0 or more
   * @param keepingOnes whether only seedlings that show the wanted states are selfed on
   */
  public OddsQuestion afterSelfings(int generations, boolean keepingOnes) {
    return new OddsQuestion(view, traits, function, wanted, generations, keepingOnes, grid);
  }

  /** The same with the checkerboard. */
  public OddsQuestion withCheckerboard() {
    return new OddsQuestion(view, traits, function, wanted, selfings, keeping, true);
  }

  /**
   * One of the parents: a plant of the register, or genes.
   *
   * @param plant the plant; null if its genes are typed in
   * @param genes its genes; null if they are to be taken from the register
   * @param meiosis how it forms gametes; null for what follows from its chromosome sets
   */
  public record Side(@Nullable Code plant, @Nullable String genes, @Nullable Meiosis meiosis) {}

  /**
   * What seed parent and pollen parent throw; a selfing if both are one plant. A note says so where
   * a cross of two plants would be close.
   *
   * @throws RegisterRefusal if a trait has no model, or the genes of a parent are not known; the
   *     message says what is possible and how to state them
   * @throws IllegalArgumentException if typed genes cannot be read, or what was asked is not
   *     computed
   */
  public CrossOdds ask(Side seed, Side pollen) {
    CrossOdds odds = ofPair(seed, pollen);
    if (seed.plant() == null || pollen.plant() == null) {
      return odds;
    }
    return CloseCross.of(view, seed.plant(), pollen.plant())
        .map(close -> odds.noting(close.sentence()))
        .orElse(odds);
  }

  /** The same of a cross that was made, where it is too late to say that it is close. */
  CrossOdds ofPair(Side seed, Side pollen) {
    GenesInPlay genes = GenesInPlay.of(view, traits, function, true);
    Parents parents = Parents.of(view, genes, seed, pollen);
    if (parents.lacksRefusal()) {
      genes = GenesInPlay.of(view, traits, function, false);
      parents = Parents.of(view, genes, seed, pollen);
    }
    List<String> notes = new ArrayList<>(parents.notes());
    if (genes.refusing().isPresent()) {
      notes.add(
          "The S locus "
              + genes.refusing().get()
              + " lies on the same chromosome, but it is not known of both parents which S alleles"
              + " lie with which of the others: if part of the pollen is refused, the odds shift.");
    }
    notes.addAll(genes.unevenNotes());
    refusal(seed, pollen).ifPresent(notes::add);
    List<CrossOdds.Scenario> scenarios = new ArrayList<>();
    for (Parents.Pair pair : parents.pairs()) {
      scenarios.add(scenario(genes, pair));
    }
    return new CrossOdds(
        parents.seedName(),
        parents.pollenName(),
        genes.models().stream().map(TraitModel::trait).toList(),
        List.copyOf(scenarios),
        method(genes),
        List.copyOf(new LinkedHashSet<>(notes)));
  }

  /**
   * What a cross of the register throws, all ways in which its seed may have come about together.
   *
   * @throws RegisterRefusal as {@link #ask(Side, Side)}, or if the code is not of a cross
   */
  public CrossOdds ask(Code code) {
    Item cross = Things.required(view, code);
    Item family = Describing.origin(view, cross);
    return new RecordedCross(this).ask(family);
  }

  /** That hardly any seed will set, if that is known of two plants. */
  private Optional<String> refusal(Side seed, Side pollen) {
    Code style = seed.plant();
    Code grain = pollen.plant();
    if (style == null || grain == null) {
      return Optional.empty();
    }
    return CompatibilityQuestion.known(view, style, grain)
        .filter(pair -> pair.verdict() == Compatibility.Verdict.NONE)
        .map(
            pair ->
                "By their S alleles "
                    + style.text()
                    + " refuses all pollen of "
                    + grain.text()
                    + ", save what leaks: hardly any seed will set.");
  }

  /** The share of the pollen that comes through, if the S alleles of both plants are known. */
  Optional<Fraction> through(Code seed, Code pollen) {
    return CompatibilityQuestion.known(view, seed, pollen).map(CompatibilityQuestion.Pair::leaking);
  }

  /** Whether later generations are asked about. */
  boolean isLater() {
    return selfings > 0;
  }

  /** What comes of seed without fertilisation: the plant again. */
  CrossOdds ofPlant(Side plant) {
    GenesInPlay genes = GenesInPlay.of(view, traits, function, false);
    Parents parents = Parents.of(view, genes, plant, plant);
    Parent again = parents.pairs().get(0).seed();
    if (!(again instanceof Parent.Plant known)) {
      throw new RegisterRefusal(
          "the genes of " + parents.seedName() + " are not known, and its seed repeats them");
    }
    Odds odds = Odds.ofPlant(known.genotype(), genes.models());
    return new CrossOdds(
        parents.seedName(),
        parents.pollenName(),
        odds.traits(),
        List.of(
            new CrossOdds.Scenario(
                null,
                known.genotype().text(),
                known.genotype().text(),
                odds.classes(),
                odds.ratio().orElse(null),
                odds.lost(),
                odds.exact(),
                wanted
                    .map(
                        asked -> {
                          Wish wish = asked.wish(genes);
                          return Hope.of(
                              asked.words(genes, wish),
                              wish.chanceOf(known.genotype()),
                              Fraction.ONE,
                              asked);
                        })
                    .orElse(null),
                null)),
        method(genes),
        parents.notes());
  }

  private CrossOdds.Scenario scenario(GenesInPlay genes, Parents.Pair pair) {
    if (wanted.isPresent()
        && (pair.seed() instanceof Parent.OfTaxon || pair.pollen() instanceof Parent.OfTaxon)) {
      // Seedlings of one plant share its alleles, so their number is no binomial one.
      throw new RegisterRefusal(
          "how many to sow depends on which alleles the parents have, and of one only the taxon is"
              + " known; ask without a wanted seedling, or by the genes of both");
    }
    if (selfings > 0 && wanted.isPresent() && !wanted.get().rates().isEmpty()) {
      throw new RegisterRefusal(
          "after further selfings seed germinates in every generation, which one rate does not"
              + " cover; leave the rates out");
    }
    Cross cross = cross(genes, pair);
    Odds odds =
        selfings == 0
            ? cross.odds(genes.models())
            : line(genes, cross).odds(selfings, genes.models());
    return new CrossOdds.Scenario(
        pair.assuming(),
        text(pair.seed()),
        text(pair.pollen()),
        odds.classes(),
        text(pair.seed()) == null || text(pair.pollen()) == null
            ? null // a share of the taxon's families is no ratio of one
            : odds.ratio().orElse(null),
        odds.lost(),
        odds.exact(),
        wanted.map(wish -> hope(genes, cross, wish, Fraction.ONE.minus(odds.lost()))).orElse(null),
        grid ? Checkerboard.of(cross, genes.models()) : null);
  }

  private static Cross cross(GenesInPlay genes, Parents.Pair pair) {
    Cross cross = Cross.of(genes.genome(), pair.seed(), pair.pollen());
    for (TraitModel loss : genes.losses()) {
      cross = cross.withLosses(loss);
    }
    // What is wished for may be of some of the traits only; who lives hangs on all of them.
    for (TraitModel model : genes.models()) {
      cross = model.touchesLife() ? cross.withLosses(model) : cross;
    }
    return cross;
  }

  private static @Nullable String text(Parent parent) {
    return parent instanceof Parent.Plant plant ? plant.genotype().text() : null;
  }

  private SelfedLine line(GenesInPlay genes, Cross cross) {
    SelfedLine line = SelfedLine.of(cross);
    return keeping && wanted.isPresent() ? line.keeping(wanted.get().shown(genes)) : line;
  }

  private Hope hope(GenesInPlay genes, Cross cross, Wanted asked, Fraction living) {
    Wish wish = asked.wish(genes);
    Fraction chance =
        selfings == 0 ? cross.chance(wish) : line(genes, cross).chance(selfings, wish);
    return Hope.of(asked.words(genes, wish), chance, living, asked);
  }

  List<String> method(GenesInPlay genes) {
    List<String> method = new ArrayList<>();
    method.add(
        "Each parent's gametes were gone through with their chances, those of genes on different"
            + " chromosomes independently; every egg meets every pollen grain.");
    for (TraitModel model : genes.all()) {
      List<String> rows = new ArrayList<>();
      for (TraitModel.Row row : model.rows()) {
        rows.add(
            row.text()
                + (row.outcome().shows().isEmpty()
                    ? " dies"
                    : " " + String.join(" or ", row.outcome().shows().keySet())));
      }
      method.add(
          "The table of "
              + model.trait()
              + ", read from the top: "
              + String.join("; ", rows)
              + ".");
    }
    if (!genes.genome().isExact()) {
      method.add(
          "Map distances were turned into recombination by "
              + (function == MapFunction.HALDANE
                  ? "Haldane's function."
                  : "Kosambi's function between neighbours, and without interference over more than"
                      + " one gap."));
    }
    if (selfings > 0) {
      method.add(
          "After "
              + selfings
              + (selfings == 1 ? " selfing" : " selfings")
              + ", each seedling being the only one of its parent"
              + (keeping ? ", and only those as wanted being selfed on." : "; none was chosen.")
              + (wanted.isPresent()
                  ? " How many to raise is of the last generation: lines that came to an end before"
                      + " it are not counted."
                  : ""));
    }
    return List.copyOf(method);
  }

  /** The models of the traits asked about. */
  List<TraitModel> models() {
    return GenesInPlay.of(view, traits, function, false).models();
  }

  Optional<Wanted> wanted() {
    return wanted;
  }
}
