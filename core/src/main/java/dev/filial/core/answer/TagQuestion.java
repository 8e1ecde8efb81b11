package dev.filial.core.answer;

import dev.filial.core.ancestry.GenerationClass;
import dev.filial.core.ancestry.GenerationClassifier;
import dev.filial.core.name.Code;
import dev.filial.core.name.CodeException;
import dev.filial.core.name.GrowersMark;
import dev.filial.core.name.LabelFacts;
import dev.filial.core.name.LabelLayout;
import dev.filial.core.name.LabelText;
import dev.filial.core.name.TagDate;
import dev.filial.core.name.TaxonName;
import dev.filial.core.name.TravellingCode;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Item;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Potted;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What to write on a tag or a packet. */
public final class TagQuestion {

  private final RegisterView view;
  private final LabelLayout layout;
  private final boolean travelling;

  /** What stands behind the thing, where it was looked up before. */
  private final @Nullable RegisterPedigree behind;

  private TagQuestion(
      RegisterView view,
      LabelLayout layout,
      boolean travelling,
      @Nullable RegisterPedigree behind) {
    this.view = view;
    this.layout = layout;
    this.travelling = travelling;
    this.behind = behind;
  }

  /** Asks {@code view} for a tag that stays at home, of the standard size. */
  public static TagQuestion of(RegisterView view) {
    return new TagQuestion(view, LabelLayout.STANDARD, false, null);
  }

  /** The same on another size of tag. */
  public TagQuestion withLayout(LabelLayout other) {
    return new TagQuestion(view, other, travelling, behind);
  }

  /** The same for what leaves the house: with the grower's mark before the code. */
  public TagQuestion withMark(boolean leaves) {
    return new TagQuestion(view, layout, leaves, behind);
  }

  /** The same where the pedigree behind the thing was looked up before. */
  public TagQuestion withPedigree(RegisterPedigree known) {
    return new TagQuestion(view, layout, travelling, known);
  }

  /**
   * The text of a tag.
   *
   * @param code what it belongs to
   * @param text its lines
   * @param machineReadable mark and code with their ISO/IEC 7064 MOD 37,36 character, for a label
   *     that a machine reads; empty when the register has no mark
   */
  public record Tag(Code code, LabelText text, String machineReadable) {}

  /**
   * What belongs on the label of one thing, before it is fitted into any room.
   *
   * @param code what it belongs to
   * @param facts what may stand on it
   * @param machineReadable mark and code with their ISO/IEC 7064 MOD 37,36 character; empty when
   *     the register has no mark
   * @param taxa the taxa whose names, whole or shortened, stand among the facts
   */
  public record Label(Code code, LabelFacts facts, String machineReadable, Set<String> taxa) {

    /** Copies the taxa. */
    public Label {
      taxa = Set.copyOf(taxa);
    }
  }

  /**
   * The tag of one thing.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   */
  public Tag ask(Code code) {
    Label label = label(code);
    return new Tag(label.code(), layout.fit(label.facts()), label.machineReadable());
  }

  /** The own names of a thing for which its tag has no room. */
  public List<String> namesWithoutRoom(Tag tag) {
    List<String> missing = tag.text().missing();
    return view.item(tag.code()).map(Item::names).orElse(List.of()).stream()
        .filter(missing::contains)
        .toList();
  }

  /**
   * What belongs on the label of one thing, for one who has other room than lines of characters.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   */
  public Label label(Code code) {
    Item item = Things.required(view, code);
    Optional<TravellingCode> mark =
        view.opening()
            .map(opening -> new TravellingCode(new GrowersMark(opening.mark()), item.code()));
    String written =
        travelling ? mark.map(TravellingCode::text).orElse(item.code().text()) : item.code().text();
    LabelFacts facts = LabelFacts.of(written).withParentsOrTaxon(parentsOrTaxon(item));
    String field = genotype(Describing.origin(view, item)).fieldNumber();
    if (field != null) {
      facts = facts.withFieldNumber(field);
    }
    @Nullable PartialDate day = day(item);
    if (day != null) {
      facts = facts.withDate(onTag(day));
    }
    String generation = generation(item);
    if (!generation.isEmpty()) {
      facts = facts.withGeneration(generation);
    }
    facts = facts.withRemarks(remarks(item));
    return new Label(
        item.code(), facts, mark.map(TravellingCode::machineReadable).orElse(""), taxa(item));
  }

  private void addDetermination(List<Determination> said, Code parent) {
    view.resolved(parent).ifPresent(found -> said.add(genotype(found).determination()));
  }

  /** The taxa that a tag of it may name: its own, or its parents'. */
  private Set<String> taxa(Item item) {
    Item origin = genotype(Describing.origin(view, item));
    List<Determination> said = new ArrayList<>();
    said.add(item.determination());
    said.add(origin.determination());
    for (Descent descent : origin.descent()) {
      addDetermination(said, descent.seed());
      if (descent.pollen() != null) {
        addDetermination(said, descent.pollen());
      }
    }
    Set<String> taxa = new HashSet<>();
    for (Determination one : said) {
      if (one.taxon() != null) {
        taxa.add(one.taxon());
        taxa.add(Describing.name(view, one.taxon()).text());
      }
      one.makeup().keySet().forEach(taxon -> taxa.add(Describing.name(view, taxon).text()));
    }
    return taxa;
  }

  /** What it is, said several ways from the longest to the shortest. */
  private List<String> parentsOrTaxon(Item item) {
    Item origin = genotype(Describing.origin(view, item));
    Set<String> ways = new LinkedHashSet<>();
    if (origin.descent().isEmpty()) {
      addTaxon(ways, Describing.determination(item, origin));
    } else {
      ways.add(Describing.of(view, origin, this::shortName));
      ways.add(Describing.of(view, origin));
    }
    // The first way says most; another is of use only where there is less room.
    List<String> shorter = new ArrayList<>();
    for (String way : ways) {
      if (shorter.isEmpty() || way.length() < shorter.get(shorter.size() - 1).length()) {
        shorter.add(way);
      }
    }
    return shorter;
  }

  private void addTaxon(Set<String> ways, Determination said) {
    if (said.taxon() == null && !said.makeup().isEmpty()) {
      ways.add(
          said.makeup().entrySet().stream()
              .map(share -> share.getValue() + " " + Describing.shortName(view, share.getKey()))
              .collect(Collectors.joining(" + ")));
    } else {
      ways.add(Describing.acquired(view, withoutGeneration(said)));
    }
    if (said.taxon() != null && said.cultivar() == null) {
      TaxonName name = TaxonName.parse(said.taxon());
      String abbreviated = Describing.name(view, said.taxon()).abbreviated();
      ways.add(
          name.qualifier()
              .map(doubt -> abbreviated + " (" + doubt.text() + ")")
              .orElse(abbreviated));
    }
    String shortest = Describing.shortest(view, said);
    if (shortest != null) {
      ways.add(shortest);
    }
  }

  /** The generation has a place of its own on a tag. */
  private static Determination withoutGeneration(Determination said) {
    return new Determination(said.taxon(), said.cultivar(), said.makeup(), null, said.ploidy());
  }

  /** The plant that an offset was taken from: what it is says what the offset is. */
  private Item genotype(Item plant) {
    Item here = plant;
    Set<Code> seen = new HashSet<>();
    while (seen.add(here.code())
        && here.kind() == Item.Kind.PLANT
        && here.descent().size() == 1
        && here.descent().get(0).form() == Descent.Form.COPY
        && here.descent().get(0).share().isOne()) {
      Optional<Item> source = view.resolved(here.descent().get(0).seed());
      if (source.isEmpty()) {
        return here;
      }
      here = Describing.origin(view, source.get());
    }
    return here;
  }

  /** What a tag says beside the rest: what it is an offset of, its own names, when it came. */
  private List<String> remarks(Item item) {
    List<String> remarks = new ArrayList<>();
    if (item.kind() == Item.Kind.PLANT && !genotype(item).equals(item)) {
      remarks.add("of " + item.descent().get(0).seed().text());
    }
    remarks.addAll(item.names());
    @Nullable PartialDate came = came(item);
    if (came != null) {
      remarks.add("got " + onTag(came).text());
    }
    return remarks;
  }

  private String shortName(Code parent) {
    Optional<Item> item = view.resolved(parent);
    if (item.isPresent() && !item.get().names().isEmpty()) {
      String name = item.get().names().get(0);
      return isOfOne(name) ? name : parent.text();
    }
    Determination said = item.map(found -> genotype(found).determination()).orElse(null);
    if (said == null || Describing.isBareSpecies(view, said)) {
      return parent.text(); // of one not determined the code tells more than its genus
    }
    String shortest = Describing.shortest(view, said);
    return shortest == null ? parent.text() : shortest;
  }

  /**
   * A name that several plants bear names none of them; a joined record is no second plant. Neither
   * does an old notebook's code that another thing was given here since.
   */
  private boolean isOfOne(String name) {
    return !isAnothersCode(name)
        && view.called(name).stream()
                .map(code -> view.resolved(code).map(Item::code).orElse(code))
                .distinct()
                .count()
            < 2;
  }

  private boolean isAnothersCode(String name) {
    try {
      return view.taken(Code.parse(name)).isPresent();
    } catch (CodeException e) {
      return false;
    }
  }

  private static TagDate onTag(PartialDate day) {
    return new TagDate(day.year(), day.month(), day.day());
  }

  /**
   * When the sowing was made that it stands in or was taken from; of seed, when it was harvested.
   */
  private @Nullable PartialDate day(Item item) {
    Code here = item.code();
    Set<Code> seen = new HashSet<>();
    while (seen.add(here) && !here.isWhole()) {
      Optional<Item> thing = view.item(here);
      Statement first = thing.flatMap(found -> view.effective(found.entry())).orElse(null);
      if (first instanceof Sown sowing) {
        return sowing.date();
      } else if (first instanceof Harvested harvest) {
        return harvest.date();
      } else if (first instanceof LotSplit split) {
        here = split.from();
      } else if (first instanceof Potted potted) {
        here = potted.from();
      } else if (first instanceof Numbered numbered) {
        here = numbered.from();
      }
    }
    return null;
  }

  /** When seed came that was bought or swapped: nobody knows when it was harvested. */
  private @Nullable PartialDate came(Item item) {
    Code here = item.code();
    Set<Code> seen = new HashSet<>();
    while (seen.add(here) && (here.isLot() || here.isWhole())) {
      Statement first =
          view.item(here).flatMap(found -> view.effective(found.entry())).orElse(null);
      if (first instanceof SeedAcquired seed) {
        return seed.date();
      } else if (first instanceof LotSplit split) {
        here = split.from();
      }
    }
    return null;
  }

  /** The generation where it is short, certain and not merely "pure". */
  String generation(Item item) {
    if (item.kind() == Item.Kind.PLANT && item.descent().isEmpty()) {
      return item.determination().generation() == null ? "" : item.determination().generation();
    }
    GenerationClass generation;
    try {
      Pedigree pedigree =
          (behind == null ? RegisterPedigree.of(view, List.of(item.code()), false) : behind)
              .pedigree();
      generation = GenerationClassifier.of(pedigree).classOf(item.code().text());
    } catch (PedigreeException e) {
      return ""; // nothing can be computed; the tag is to be written all the same
    }
    if (generation instanceof GenerationClass.Mixture mixture) {
      boolean certain =
          mixture.alternatives().stream().allMatch(one -> isShort(one.generation()))
              && !generation.label().contains(" or ");
      return certain ? generation.label() : "";
    }
    return isShort(generation) ? generation.label() : "";
  }

  private static boolean isShort(GenerationClass generation) {
    return generation instanceof GenerationClass.Filial
        || generation instanceof GenerationClass.FilialCross
        || generation instanceof GenerationClass.Backcross;
  }
}
