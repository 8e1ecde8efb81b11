package dev.filial.core.answer;

import dev.filial.core.ancestry.ExpectedShares;
import dev.filial.core.ancestry.GenerationClass;
import dev.filial.core.ancestry.GenerationClassifier;
import dev.filial.core.ancestry.SeedLine;
import dev.filial.core.exchange.Accession.Behind;
import dev.filial.core.exchange.Accession.Share;
import dev.filial.core.exchange.Accession.Status;
import dev.filial.core.name.Code;
import dev.filial.core.name.FormulaStyle;
import dev.filial.core.name.HybridFormula;
import dev.filial.core.name.Notation;
import dev.filial.core.name.TaxonName;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.NotationOf;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.Route;
import dev.filial.core.pedigree.Standing;
import dev.filial.core.register.Fate;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The pedigree behind some things of a register as others see it: codes carry the grower's mark,
 * and no person is named. All of it is worked out in passes over the whole, none of which goes back
 * from each plant to all its ancestors.
 */
final class OutwardPedigree {

  private static final String FURTHER_BACK = "doubts further back in its pedigree";
  private static final FormulaStyle FORMULA = FormulaStyle.PLAIN.withoutAuthors();
  private static final Notation.Style NOTATION = Notation.Style.BACKCROSS_NUMBER_FIRST;

  /** Notation of more generations, or longer, is no help to anybody. */
  private static final int MOST_GENERATIONS = 10;

  private static final int LONGEST_NOTATION = 2000;

  private final OutwardCodes outward;
  private final RegisterPedigree behind;
  private final Pedigree pedigree;
  private final ExpectedShares shares;
  private final List<GenerationClass> generations;
  private final boolean[] doubtful;
  private final List<List<String>> taxa = new ArrayList<>();
  private final Map<String, TaxonName> names = new HashMap<>();

  private OutwardPedigree(OutwardCodes outward, RegisterPedigree behind) {
    this.outward = outward;
    this.behind = behind;
    pedigree = behind.pedigree();
    shares = ExpectedShares.of(pedigree);
    generations = GenerationClassifier.of(pedigree).all();
    doubtful = new boolean[pedigree.size()];
    for (int plant = 0; plant < pedigree.size(); plant++) {
      Set<String> ofIts = new LinkedHashSet<>();
      Founder founder = pedigree.founder(plant);
      if (founder != null) {
        ofIts.addAll(founder.makeup().shares().keySet());
      }
      for (int parent : SeedFirst.parents(pedigree, plant)) {
        if (parent != Pedigree.UNKNOWN) {
          doubtful[plant] |= doubtful[parent];
          ofIts.addAll(taxa.get(parent));
        }
      }
      taxa.add(List.copyOf(ofIts));
      doubtful[plant] |= !ownDoubts(pedigree.code(plant)).isEmpty();
    }
  }

  /**
   * That behind {@code roots}.
   *
   * @throws dev.filial.core.pedigree.PedigreeException if it cannot be computed with
   */
  static OutwardPedigree of(RegisterView view, OutwardCodes outward, Collection<Code> roots) {
    return new OutwardPedigree(outward, RegisterPedigree.of(view, roots, false));
  }

  Pedigree pedigree() {
    return pedigree;
  }

  Optional<Item> item(String plant) {
    return behind.item(plant);
  }

  /** What the plant says of itself: its own record, or of a seedling its family's. */
  Item origin(Item item) {
    return behind.family(item.code().text()).orElse(item);
  }

  /** What a plant of the pedigree is called outside. */
  String code(String plant) {
    return behind.item(plant).map(item -> outward.of(item.code())).orElse(outward.in(plant));
  }

  /**
   * The taxon, or the formula with the seed parent's taxa first, and a question mark where others
   * have a share in it; empty where none is known.
   */
  String formula(String plant) {
    int index = pedigree.indexOf(plant);
    List<String> known = taxa.get(index);
    if (known.isEmpty()) {
      return "";
    }
    String formula =
        known.size() == 1
            ? known.get(0)
            : HybridFormula.of(known.stream().map(this::name).toList()).text(FORMULA);
    return formula + (shares.unknown(index) > 0 ? " × ?" : "");
  }

  /** The field number that the plant itself goes back to, or null. */
  @Nullable String fieldNumber(String plant) {
    Founder founder = pedigree.founder(pedigree.genet(pedigree.indexOf(plant)));
    return founder == null ? null : founder.fieldNumber();
  }

  /** The one taxon that all of it is of; null where it is of several, or not wholly. */
  @Nullable String onlyTaxon(String plant) {
    int index = pedigree.indexOf(plant);
    boolean pure =
        taxa.get(index).size() == 1
            && shares.unknown(index) == 0
            && generations.get(index) instanceof GenerationClass.Pure;
    return pure ? taxa.get(index).get(0) : null;
  }

  private TaxonName name(String taxon) {
    return names.computeIfAbsent(taxon, TaxonName::parse);
  }

  /** The generation in short; empty for a plant that came and stated none. */
  String generation(String plant) {
    GenerationClass generation = generations.get(pedigree.indexOf(plant));
    return generation instanceof GenerationClass.Unclassified ? "" : generation.label();
  }

  /** Who is behind a plant. */
  Behind behind(String plant) {
    int index = pedigree.indexOf(plant);
    Set<String> seeds = new LinkedHashSet<>();
    Set<String> pollen = new LinkedHashSet<>();
    Set<String> same = new LinkedHashSet<>();
    if (pedigree.isRamet(index)) {
      same.add(code(pedigree.code(pedigree.rametOf(index))));
    }
    for (Descent descent : pedigree.descents(index)) {
      if (descent instanceof Descent.Sexual cross) {
        add(seeds, cross.seed());
        add(pollen, cross.pollen());
      } else if (descent instanceof Descent.Copy copy) {
        add(same, copy.of());
      }
    }
    return new Behind(
        !pedigree.isFounder(pedigree.genet(index)),
        generation(plant),
        List.copyOf(seeds),
        List.copyOf(pollen),
        List.copyOf(same),
        shares(index),
        cytoplasm(plant),
        notation(index));
  }

  private void add(Set<String> codes, int plant) {
    if (plant != Pedigree.UNKNOWN) {
      codes.add(code(pedigree.code(plant)));
    }
  }

  private List<Share> shares(int plant) {
    List<Share> told = new ArrayList<>();
    for (String taxon : taxa.get(plant)) {
      double share = shares.share(plant, taxon);
      if (share > 0) {
        told.add(new Share(taxon, share));
      }
    }
    told.sort(Comparator.comparingDouble(Share::share).reversed());
    double unknown = shares.unknown(plant);
    if (unknown > 0) {
      told.add(new Share("unknown", unknown));
    }
    return told;
  }

  /** Empty for a plant that nothing is known behind, whose cytoplasm is its own. */
  private String cytoplasm(String plant) {
    if (pedigree.isFounder(pedigree.indexOf(plant))) {
      return "";
    }
    SeedLine line = SeedLine.of(pedigree, plant);
    List<String> told = new ArrayList<>();
    for (SeedLine.Source source : line.sources()) {
      told.add(code(source.code()) + (source.taxon() == null ? "" : " (" + source.taxon() + ")"));
    }
    if (!line.unknown().isZero()) {
      told.add("unknown");
    }
    return String.join(" or ", told);
  }

  private String notation(int plant) {
    int genet = pedigree.genet(plant);
    if (pedigree.isFounder(genet)
        || pedigree.caseCount(genet) > 1
        || pedigree.level(genet) > MOST_GENERATIONS) {
      return "";
    }
    try {
      Notation notation = NotationOf.of(pedigree, pedigree.code(genet), new Sources());
      return notation.length(NOTATION) > LONGEST_NOTATION ? "" : notation.text(NOTATION);
    } catch (IllegalArgumentException e) {
      return ""; // longer than can be written
    }
  }

  /** Sources by taxon and field number, which mean something outside, or else by code. */
  private final class Sources implements NotationOf.Names {
    private final Map<String, String> unknown = new HashMap<>();

    @Override
    public String founder(String plant, Founder founder) {
      if (founder.standing() != Standing.PURE) {
        return code(plant);
      }
      String taxon = founder.makeup().shares().firstKey();
      String cultivar =
          founder.cultivar() == null || taxon.contains("'") ? "" : " '" + founder.cultivar() + "'";
      String number = founder.fieldNumber() == null ? "" : " " + founder.fieldNumber();
      String name = taxon + cultivar + number;
      // What parts the crosses of a notation cannot stand in a name.
      boolean fits =
          name.indexOf('/') < 0
              && name.indexOf('*') < 0
              && name.codePoints().noneMatch(Character::isISOControl);
      return fits ? name : code(plant);
    }

    @Override
    public String mixture(String plant, List<Case> cases) {
      return code(plant);
    }

    @Override
    public String unknownParent(String offspring) {
      int next = unknown.size() + 1;
      return unknown.computeIfAbsent(offspring, any -> next == 1 ? "unknown" : "unknown " + next);
    }
  }

  /** What is doubtful about a plant: its own record, its cross, and that there is more behind. */
  List<String> doubts(String plant) {
    List<String> doubts = new ArrayList<>(ownDoubts(plant));
    for (int parent : pedigree.parents(pedigree.indexOf(plant))) {
      if (doubtful[parent]) {
        doubts.add(FURTHER_BACK);
        break;
      }
    }
    return doubts;
  }

  private Set<String> ownDoubts(String plant) {
    Set<String> doubts = new LinkedHashSet<>();
    Item item = behind.item(plant).orElse(null);
    Item family = behind.family(plant).orElse(null);
    if (item != null) {
      addDoubts(doubts, item);
    }
    if (family != null && !family.equals(item)) {
      addDoubts(doubts, family);
    }
    int index = pedigree.indexOf(plant);
    Founder founder = pedigree.founder(index);
    if (founder != null && !founder.makeup().unknownShare().isZero()) {
      doubts.add(
          founder.makeup().shares().isEmpty() ? "taxon not known" : "its make-up is known in part");
    }
    return doubts;
  }

  private void addDoubts(Set<String> doubts, Item item) {
    if (item.guess() != null) {
      doubts.add("what is recorded of it is partly a guess");
    }
    String written = item.determination().taxon();
    if (written != null) {
      TaxonName name = name(written);
      name.qualifier()
          .ifPresent(
              sign ->
                  doubts.add(
                      "determined only as " + sign.text() + " " + name.unqualified().shortName()));
    }
    if (item.unprotected()) {
      doubts.add("unprotected flowers");
    }
    if (item.kind() == Item.Kind.MIXTURE) {
      doubts.add("a mixed packet");
    }
    boolean intendedSelf =
        item.descent().stream().allMatch(descent -> descent.route() == Route.SELFING);
    item.descent()
        .forEach(
            descent -> {
              switch (descent.route()) {
                case OPEN_POLLINATION -> doubts.add("open pollinated");
                case POLLEN_MIX -> doubts.add("pollen mixed");
                case STRAY -> doubts.add("perhaps of stray pollen");
                case APOMIXIS -> doubts.add("perhaps without fertilisation");
                case IDENTITY -> {
                  if (!descent.share().isOne() || item.descent().size() > 1) {
                    doubts.add("found without its tag");
                  }
                }
                case SELFING -> {
                  if (!intendedSelf) {
                    doubts.add("perhaps selfed");
                  }
                }
                case CROSS, LOT_SHARE -> {}
              }
              if (descent.form() == dev.filial.core.register.Descent.Form.SEXUAL
                  && descent.pollen() == null) {
                doubts.add("pollen parent unknown");
              }
            });
  }

  /** What kind of material a plant is. */
  Status status(Item item, boolean cultivarNamed) {
    int index = pedigree.indexOf(item.code().text());
    int genet = pedigree.genet(index);
    Founder founder = pedigree.founder(genet);
    if (founder != null) {
      if (founder.cultivar() != null || cultivarNamed) {
        return Status.CULTIVAR;
      }
      if (founder.fieldNumber() != null) {
        return Status.WILD;
      }
      return founder.standing() == Standing.HYBRID ? Status.HYBRID : Status.UNKNOWN;
    }
    GenerationClass generation = generations.get(index);
    if (generation instanceof GenerationClass.Pure) {
      return Status.BRED;
    }
    if (generation instanceof GenerationClass.Unclassified
        || generation instanceof GenerationClass.Mixture) {
      return Status.UNCERTAIN;
    }
    if (item.fate() == Fate.KEPT || pedigree.isRamet(index)) {
      return Status.SELECTED;
    }
    return generation instanceof GenerationClass.Filial filial && filial.generation() == 1
        ? Status.HYBRID
        : Status.SEGREGATING;
  }
}
