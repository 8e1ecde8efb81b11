package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.FormulaStyle;
import dev.filial.core.name.GrowersMark;
import dev.filial.core.name.TaxonName;
import dev.filial.core.name.TravellingCode;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.register.Caution;
import dev.filial.core.register.Count;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What seed there is to offer to a club: the name as a list would print it, the code it travels
 * under, how much is free, of which year, and everything about it that is doubtful.
 */
public final class OfferQuestion {

  private final RegisterView view;
  private final LocalDate day;
  private final Set<Code> only;

  private OfferQuestion(RegisterView view, LocalDate day, Set<Code> only) {
    this.view = view;
    this.day = day;
    this.only = only;
  }

  /** Asks {@code view} for all seed of which some is free on that day. */
  public static OfferQuestion of(RegisterView view, LocalDate day) {
    return new OfferQuestion(view, day, Set.of());
  }

  /** The same of these lots only; of all where none is named. */
  public OfferQuestion withLots(Collection<Code> lots) {
    return new OfferQuestion(view, day, Set.copyOf(lots));
  }

  /**
   * One packet of the list.
   *
   * @param code the code it travels under, the grower's mark before it
   * @param lot its code at home
   * @param name the taxon, or the hybrid formula with the seed parent's taxa first, and the
   *     generation after it where it is short, certain and later than F1; what is not known of it
   *     is among the doubts
   * @param parents the codes of its parents, of a cross; empty of seed that came
   * @param fieldNumber the collector's field number of seed that came under one, or null
   * @param number how many are free
   * @param year the year of the harvest, or in which the seed came; null when not known
   * @param harvested whether it is that of the harvest
   * @param doubts what is doubtful about it, in plain words; empty when nothing is
   */
  public record Line(
      String code,
      Code lot,
      String name,
      String parents,
      @Nullable String fieldNumber,
      Count number,
      @Nullable Integer year,
      boolean harvested,
      List<String> doubts) {}

  /**
   * The list.
   *
   * @param lines the packets, by name
   * @param reminder what to mind before seed crosses a border
   */
  public record Offer(List<Line> lines, String reminder) {}

  /** The list. One pass over all lots, and the pedigree of each that is listed. */
  public Offer ask() {
    List<Line> lines = new ArrayList<>();
    for (TinQuestion.Line tin : TinQuestion.of(view, day).ask()) {
      boolean asked = only.isEmpty() || only.contains(tin.lot());
      if (asked && !tin.free().equals(Count.of(0))) {
        lines.add(line(tin));
      }
    }
    lines.sort(Comparator.comparing(Line::name).thenComparing(Line::lot));
    return new Offer(List.copyOf(lines), Cautions.of(Caution.BORDER));
  }

  private Line line(TinQuestion.Line tin) {
    Item lot = Things.required(view, tin.lot());
    Item origin = Describing.origin(view, lot);
    String travelling =
        view.opening()
            .map(opening -> new TravellingCode(new GrowersMark(opening.mark()), lot.code()).text())
            .orElse(lot.code().text());
    return new Line(
        travelling,
        lot.code(),
        name(lot, origin),
        origin.descent().isEmpty() ? "" : Describing.of(view, origin),
        origin.fieldNumber(),
        tin.free(),
        tin.since() == null ? null : tin.since().year(),
        tin.harvested(),
        doubts(tin, lot, origin));
  }

  private String name(Item lot, Item origin) {
    if (origin.determination().taxon() != null) {
      return Describing.acquired(view, origin.determination());
    }
    try {
      String formula =
          NotationQuestion.of(view)
              .formula(lot.code(), new FormulaStyle(false, false, false, false))
              .formula();
      String generation = TagQuestion.of(view).generation(lot);
      // A formula without a word is read as an F1.
      return generation.isEmpty() || generation.equals("F1")
          ? formula
          : formula + ", " + generation;
    } catch (RegisterRefusal | PedigreeException e) {
      // Of a plant of unknown make-up there is no formula; its parents are still known by code.
      return Describing.of(view, origin);
    }
  }

  private List<String> doubts(TinQuestion.Line tin, Item lot, Item origin) {
    Set<String> doubts = new LinkedHashSet<>();
    // Behind a packet that came stands nobody; of a cross every doubt of the lineage counts.
    Collection<Item> behind = view.lineage(List.of(lot.code())).values();
    doubts.addAll(PollinationDoubts.of(view, origin, behind));
    if (origin.kind() == Item.Kind.MIXTURE) {
      doubts.add("a mixed packet");
    }
    if (origin.kind() == Item.Kind.SEED) {
      doubts.add("name as it came");
    }
    if (behind.stream().anyMatch(OfferQuestion::isLikeOnly)) {
      doubts.add("identity in doubt (cf. or aff.)");
    }
    if (behind.stream().anyMatch(item -> isOfNoName(view, item))) {
      doubts.add("partly of unknown origin");
    }
    if (behind.stream().anyMatch(item -> isUncertain(item, origin))) {
      doubts.add("parentage uncertain further back");
    }
    if (behind.stream().anyMatch(item -> item.guess() != null)) {
      doubts.add("parents or name partly a guess");
    }
    switch (tin.sureness()) {
      case COUNTED -> {}
      case WEIGHED -> doubts.add("number by weight");
      case GUESSED -> doubts.add("number guessed");
      case NOT_KNOWN -> doubts.add("not counted");
    }
    if (tin.old()) {
      doubts.add("old seed");
    }
    return List.copyOf(doubts);
  }

  private static boolean isLikeOnly(Item item) {
    return item.determination().taxon() != null
        && TaxonName.parse(item.determination().taxon()).qualifier().isPresent();
  }

  /** Whether somebody nobody can name stands there: without a name, or in part. */
  private static boolean isOfNoName(RegisterView view, Item item) {
    if (!item.descent().isEmpty()) {
      return item.descent().stream()
          .anyMatch(way -> way.form() == Descent.Form.SEXUAL && way.pollen() == null);
    }
    boolean founder =
        item.kind() == Item.Kind.PLANT
            || item.kind() == Item.Kind.SEED
            || item.kind() == Item.Kind.CROSS;
    return founder
        && Describing.determination(item, item).taxon() == null
        && TaxaBehind.in(view).of(item.code()).unknown();
  }

  /** Of crosses it is told what is uncertain about each. */
  private static boolean isUncertain(Item item, Item origin) {
    return item.kind() != Item.Kind.CROSS
        && !item.code().equals(origin.code())
        && item.descent().size() > 1;
  }
}
