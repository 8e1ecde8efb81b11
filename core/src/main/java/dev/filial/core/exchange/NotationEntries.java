package dev.filial.core.exchange;

import dev.filial.core.name.Code;
import dev.filial.core.name.CodeException;
import dev.filial.core.name.NameException;
import dev.filial.core.name.Notation;
import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Item;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A pedigree in notation as the statements that record it.
 *
 * <p>Each distinct source is one plant: the one it was said to be, or the plant of this register
 * that bears that name as its own, or else a new plant held elsewhere, of that name. A source that
 * is called like a taxon of this register, or by a genus and an epithet as a species is, is of that
 * taxon. Each cross becomes a cross with one numbered seedling, which stands for it in the next.
 * Notation says nothing of days, and so no statement has one.
 */
public final class NotationEntries {

  /** A pedigree of more crosses was not meant to be one. */
  public static final int MOST_CROSSES = 10_000;

  private final RegisterView view;
  private final int year;
  private final List<Statement> statements = new ArrayList<>();
  private final Map<String, Code> sources = new LinkedHashMap<>();
  private final Set<Code> added = new LinkedHashSet<>();
  private final Map<String, Code> readAsSpecies = new LinkedHashMap<>();
  private final Map<String, Code> withoutTaxon = new LinkedHashMap<>();
  private long next;
  private Code last;

  private NotationEntries(RegisterView view, int year) {
    this.view = view;
    this.year = Math.floorMod(year, 100);
    this.next = view.lastNumber(this.year) + 1;
    this.last = Code.of(this.year, next);
  }

  /**
   * The statements that record {@code notation} in {@code view}, with the next free codes.
   *
   * @param meant plants that sources stand for, by the name of the source
   * @param year the calendar year under whose numbers new plants and crosses are entered
   * @throws RegisterRefusal if there is no cross to record, a name is that of several plants, or
   *     {@code meant} names a source that is not there
   */
  public static NotationEntries of(
      RegisterView view, Notation notation, Map<String, Code> meant, int year) {
    long crosses =
        notation.nodes().stream().filter(node -> node instanceof Notation.Node.Cross).count();
    if (crosses == 0) {
      throw new RegisterRefusal(
          "\"" + notation + "\" is one plant and no cross; write A/B, the seed parent on the left");
    }
    if (crosses > MOST_CROSSES) {
      throw new RegisterRefusal(
          "that is a pedigree of "
              + crosses
              + " crosses; at most "
              + MOST_CROSSES
              + " are taken at once");
    }
    Set<String> names = notation.sources();
    for (String name : meant.keySet()) {
      if (!names.contains(name)) {
        throw new RegisterRefusal(
            "the pedigree has no \"" + name + "\"; it has " + String.join(", ", names));
      }
    }
    NotationEntries entries = new NotationEntries(view, year);
    entries.add(notation, meant);
    return entries;
  }

  /** The statements, in the order in which they can be appended. */
  public List<Statement> statements() {
    return List.copyOf(statements);
  }

  /** The plant that each source stands for, in order of mention. */
  public Map<String, Code> sources() {
    return new LinkedHashMap<>(sources);
  }

  /** Those of the sources that were not in the register. */
  public Set<Code> added() {
    return new LinkedHashSet<>(added);
  }

  /**
   * The new plants whose taxon the register did not know, and whose names were read as those of
   * species, by their names.
   */
  public Map<String, Code> readAsSpecies() {
    return new LinkedHashMap<>(readAsSpecies);
  }

  /** The new plants of whose taxon nothing is known, by their names. */
  public Map<String, Code> withoutTaxon() {
    return new LinkedHashMap<>(withoutTaxon);
  }

  /** The seedling whose pedigree it is. */
  public Code last() {
    return last;
  }

  private void add(Notation notation, Map<String, Code> meant) {
    List<Code> codes = new ArrayList<>();
    for (Notation.Node node : notation.nodes()) {
      if (node instanceof Notation.Node.Source source) {
        Code code = sources.get(source.name());
        if (code == null) {
          Code said = meant.get(source.name());
          code = said == null ? plant(source.name()) : said;
          sources.put(source.name(), code);
        }
        codes.add(code);
      } else if (node instanceof Notation.Node.Cross cross) {
        codes.add(cross(codes.get(cross.seed()), codes.get(cross.pollen())));
      }
    }
    last = codes.get(codes.size() - 1);
  }

  private Code free() {
    return Code.of(year, next++);
  }

  private Code cross(Code seed, Code pollen) {
    Code code = free();
    statements.add(
        new Pollinated(
            code,
            seed,
            new Pollen.OnePlant(pollen),
            null,
            null,
            List.of(),
            Fraction.ZERO,
            Fraction.ZERO,
            Fraction.ZERO,
            null,
            null,
            false,
            null,
            null));
    statements.add(new Numbered(code, 1, 1, null, null, null, null));
    return code.seedling(1);
  }

  /** The plant that the name is the code of. */
  private Optional<Code> coded(String name) {
    try {
      return view.resolved(Code.parse(name)).filter(item -> item.kind().isPlant()).map(Item::code);
    } catch (CodeException e) {
      return Optional.empty(); // a name, as nearly all are
    }
  }

  private Code plant(String name) {
    Optional<Code> coded = coded(name);
    if (coded.isPresent()) {
      return coded.get();
    }
    Set<Code> bearing = new LinkedHashSet<>();
    view.named(name, Integer.MAX_VALUE)
        .forEach(
            (spelt, codes) -> {
              if (spelt.strip().equalsIgnoreCase(name)) {
                codes.forEach(
                    code ->
                        view.resolved(code)
                            .filter(item -> item.kind().isPlant())
                            .map(Item::code)
                            .ifPresent(bearing::add));
              }
            });
    if (bearing.size() > 1) {
      throw new RegisterRefusal(
          "several plants are called \""
              + name
              + "\": "
              + String.join(", ", bearing.stream().map(Code::text).toList())
              + "; say which of them is meant");
    }
    if (!bearing.isEmpty()) {
      return bearing.iterator().next();
    }
    Code code = free();
    boolean known = isKnownTaxon(name);
    boolean species = !known && isSpecies(name);
    if (species) {
      readAsSpecies.put(name, code);
    } else if (!known) {
      withoutTaxon.put(name, code);
    }
    statements.add(
        new PlantAcquired(
            code,
            known || species ? Determination.of(name) : Determination.UNKNOWN,
            Provenance.UNKNOWN,
            null,
            List.of(name),
            true,
            null,
            null));
    added.add(code);
    return code;
  }

  /**
   * Whether it reads as a genus and an epithet, which no name of one plant has in small letters.
   */
  private static boolean isSpecies(String name) {
    try {
      return !TaxonName.parse(name).epithets().isEmpty();
    } catch (NameException e) {
      return false;
    }
  }

  private boolean isKnownTaxon(String name) {
    try {
      return view.taxon(Subject.taxon(name).key()).isPresent();
    } catch (NameException e) {
      return false; // the name of a plant and no taxon's
    }
  }
}
