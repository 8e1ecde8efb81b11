package dev.filial.core.answer;

import dev.filial.core.ancestry.ExpectedAncestry;
import dev.filial.core.ancestry.GenerationClass;
import dev.filial.core.ancestry.GenerationClassifier;
import dev.filial.core.ancestry.Level;
import dev.filial.core.ancestry.NoSpreadException;
import dev.filial.core.ancestry.SeedLine;
import dev.filial.core.ancestry.Shares;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Who is in a plant: the expected share of each taxon, exactly, its generation, and its seed-parent
 * line.
 *
 * <p>Asked of a cross, a seed lot, a sowing or a group, the answer is for any one seedling of it.
 */
public final class AncestryQuestion {

  private final RegisterView view;
  private final Level level;
  private final boolean countingIntoSpecies;
  private final @Nullable SpreadQuestion spread;

  private AncestryQuestion(
      RegisterView view,
      Level level,
      boolean countingIntoSpecies,
      @Nullable SpreadQuestion spread) {
    this.view = view;
    this.level = level;
    this.countingIntoSpecies = countingIntoSpecies;
    this.spread = spread;
  }

  /** Asks {@code view}, over taxa, subspecies and varieties standing for themselves. */
  public static AncestryQuestion of(RegisterView view) {
    return new AncestryQuestion(view, Level.TAXON, false, null);
  }

  /** The same, the generation counted over something else than taxa. */
  public AncestryQuestion withGenerationBy(Level other) {
    return new AncestryQuestion(view, other, countingIntoSpecies, spread);
  }

  /** The same, subspecies and varieties counting into their species or not. */
  public AncestryQuestion withCountingIntoSpecies(boolean counting) {
    return new AncestryQuestion(view, level, counting, spread);
  }

  /** The same, asking how far the shares of a real plant may lie from the expected ones. */
  public AncestryQuestion withSpread(SpreadQuestion how) {
    return new AncestryQuestion(view, level, countingIntoSpecies, how);
  }

  /**
   * A taxon and its share.
   *
   * @param taxon its accepted name
   * @param share its expected share of the chromosome sets, above 0 and at most 1
   */
  public record TaxonShare(String taxon, Fraction share) {}

  /**
   * One way the plant may have come about.
   *
   * @param share how likely it is
   * @param route how it went, in a grower's words
   * @param seed the seed parent, or the plant that is repeated; null if unknown
   * @param pollen the pollen parent; null if unknown, or for a repeated plant
   * @param copy whether the plant repeats {@code seed}
   * @param taxa the shares in this case, largest first
   * @param unknown the unknown share in this case
   */
  public record Possibility(
      Fraction share,
      String route,
      @Nullable String seed,
      @Nullable String pollen,
      boolean copy,
      List<TaxonShare> taxa,
      Fraction unknown) {}

  /**
   * Who is in a plant.
   *
   * @param code the plant, or the family one seedling of which is meant
   * @param kind what the code stands for, in a grower's words
   * @param taxa expected shares, largest first; with {@code unknown} they sum to exactly 1
   * @param unknown the share nobody knows
   * @param possibilities the ways it may have come about, when there are several
   * @param generation its generation in short, as {@code F2} or {@code BC1}
   * @param generationInWords the same in words, saying how it came about
   * @param generationBy what it is counted over
   * @param seedParentLine the plants from this one back whose cytoplasm it has
   * @param cytoplasm the same in words, with the taxon
   * @param ploidy chromosome sets; 0 when they differ between the ways it may have come about
   * @param likely how far the shares may lie from the expected ones; null if that was not asked,
   *     all of it is of one taxon, or it cannot be said, for which a note gives the reason
   * @param ancestors how many different plants stand behind it, an offset being the plant it was
   *     taken from, over all the ways it may have come about
   * @param notes doubts the answer leans on, one sentence each
   */
  public record Ancestry(
      Code code,
      String kind,
      List<TaxonShare> taxa,
      Fraction unknown,
      List<Possibility> possibilities,
      String generation,
      String generationInWords,
      String generationBy,
      List<String> seedParentLine,
      String cytoplasm,
      int ploidy,
      @Nullable LikelyShares likely,
      int ancestors,
      List<String> notes) {}

  /**
   * Answers for one code.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  public Ancestry ask(Code code) {
    Item item = Things.required(view, code);
    RegisterPedigree behind = RegisterPedigree.of(view, List.of(item.code()), countingIntoSpecies);
    String name = item.code().text();
    ExpectedAncestry expected = ExpectedAncestry.of(behind.pedigree(), name);
    GenerationClass generation = GenerationClassifier.of(behind.pedigree()).by(level).classOf(name);
    List<Possibility> possibilities = new ArrayList<>();
    if (expected.cases().size() > 1) {
      for (ExpectedAncestry.CaseShares one : expected.cases()) {
        possibilities.add(
            new Possibility(
                one.share(),
                one.route().text(),
                one.seed(),
                one.pollen(),
                one.copy(),
                largestFirst(one.shares()),
                one.shares().unknown()));
      }
    }
    List<TaxonShare> taxa = largestFirst(expected.shares());
    // A record that was joined with another is no generation of its own.
    SeedLine line =
        expected.seedLine().without(plant -> behind.item(plant).map(Item::sameAs).isPresent());
    List<String> notes = new ArrayList<>(behind.notes());
    LikelyShares likely = likely(behind, name, taxa, generation, notes);
    return new Ancestry(
        item.code(),
        item.kind().word(),
        taxa,
        expected.shares().unknown(),
        List.copyOf(possibilities),
        generation.label(),
        generation.text(),
        level.text(),
        line.line(),
        line.text(),
        behind.pedigree().ploidy(behind.pedigree().indexOf(name)),
        likely,
        ancestors(behind, name),
        List.copyOf(notes));
  }

  private @Nullable LikelyShares likely(
      RegisterPedigree behind,
      String name,
      List<TaxonShare> taxa,
      GenerationClass generation,
      List<String> notes) {
    if (spread == null || taxa.isEmpty() || taxa.get(0).share().isOne()) {
      return null;
    }
    List<String> names = taxa.stream().map(TaxonShare::taxon).toList();
    try {
      return spread.ask(view, behind.pedigree(), name, names, generation, notes);
    } catch (NoSpreadException e) {
      notes.add("No likely range can be given: " + e.getMessage() + ".");
      return null;
    }
  }

  /** How many genotypes stand behind the plant. */
  private static int ancestors(RegisterPedigree behind, String name) {
    Pedigree pedigree = behind.pedigree();
    int asked = pedigree.indexOf(name);
    BitSet plants = new BitSet();
    BitSet repeated = new BitSet();
    BitSet behindIt = pedigree.ancestors(asked);
    for (int plant = behindIt.nextSetBit(0); plant >= 0; plant = behindIt.nextSetBit(plant + 1)) {
      plants.set(pedigree.genet(plant));
      for (Descent descent : pedigree.descents(plant)) {
        // What a plant may be is that plant again, and no ancestor of it.
        if (descent instanceof Descent.Copy copy
            && behind.item(pedigree.code(copy.of())).isEmpty()) {
          repeated.set(copy.of());
        }
      }
    }
    plants.clear(pedigree.genet(asked));
    plants.andNot(repeated);
    return plants.cardinality();
  }

  static List<TaxonShare> largestFirst(Shares shares) {
    List<TaxonShare> all = new ArrayList<>();
    for (Map.Entry<String, Fraction> share : shares.taxa().entrySet()) {
      all.add(new TaxonShare(share.getKey(), share.getValue()));
    }
    // They come by name, and of two like shares the first stays before the second.
    all.sort((one, other) -> other.share().compareTo(one.share()));
    return List.copyOf(all);
  }
}
