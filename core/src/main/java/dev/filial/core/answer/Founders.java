package dev.filial.core.answer;

import dev.filial.core.name.NameException;
import dev.filial.core.name.Rank;
import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Standing;
import dev.filial.core.pedigree.StatedGeneration;
import dev.filial.core.register.Determination;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Taxon;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What the register says of acquired plants, as the founders of a pedigree.
 *
 * <p>A cultivar of a named species counts as that species. One named with its genus alone counts as
 * a taxon of its own, of whatever breeding, and is no pure plant. A genus alone says nothing of the
 * species.
 */
final class Founders {

  private static final Pattern FILIAL = Pattern.compile("F([1-9]\\d{0,3})");
  private static final Pattern BACKCROSS =
      Pattern.compile("BC([1-9]\\d{0,3})(?:F([1-9]\\d{0,3}))?");
  private static final int DIPLOID = 2;

  private final RegisterView view;
  private final boolean countingIntoSpecies;
  private final Map<String, Named> known = new HashMap<>();

  /**
   * A taxon under the name that answers give it.
   *
   * @param name that name
   * @param taxon what was declared of the taxon as it was written
   * @param hybrid whether a plant of it is never pure
   * @param determined whether the name says which species it is, or that it is a hybrid
   */
  private record Named(String name, Taxon taxon, boolean hybrid, boolean determined) {}

  Founders(RegisterView view, boolean countingIntoSpecies) {
    this.view = view;
    this.countingIntoSpecies = countingIntoSpecies;
  }

  /** An acquired plant. */
  Founder plant(Determination said, @Nullable String fieldNumber) {
    return of(said, fieldNumber, said.cultivar() == null ? cultivar(said) : said.cultivar());
  }

  /** A seedling out of an acquired packet, which has no cultivar name whatever its parent had. */
  Founder seedling(Determination said, @Nullable String fieldNumber) {
    return of(said, fieldNumber, null);
  }

  /** A plant of which nothing is known but its chromosome sets. */
  Founder unknown(int ploidy) {
    return new Founder(Makeup.unknown(), ploidy, Standing.UNKNOWN, Optional.empty(), null, null);
  }

  private Founder of(Determination said, @Nullable String fieldNumber, @Nullable String cultivar) {
    Optional<String> written = written(said);
    @Nullable Named taxon = written.isPresent() ? named(written.get()) : null;
    Map<String, Fraction> shares =
        said.makeup().isEmpty() && taxon != null ? taxon.taxon().makeup() : said.makeup();
    Makeup makeup = Makeup.unknown();
    Standing standing = Standing.UNKNOWN;
    if (!shares.isEmpty()) {
      makeup = accepted(shares);
      standing = isOnePureTaxon(makeup, shares) ? Standing.PURE : Standing.HYBRID;
    } else if (taxon != null) {
      makeup = taxon.determined() ? Makeup.pure(taxon.name()) : makeup;
      standing =
          taxon.hybrid() ? Standing.HYBRID : taxon.determined() ? Standing.PURE : Standing.UNKNOWN;
    }
    Integer ofTaxon = taxon == null ? null : taxon.taxon().ploidy();
    int ploidy = ofTaxon == null ? DIPLOID : ofTaxon;
    return new Founder(
        makeup,
        said.ploidy() == null ? ploidy : said.ploidy(),
        standing,
        standing == Standing.HYBRID ? stated(said.generation(), shares) : Optional.empty(),
        cultivar,
        fieldNumber);
  }

  /** The name a determination gives, a cultivar of no named species with its cultivar name. */
  static Optional<String> written(Determination said) {
    if (said.taxon() == null) {
      return Optional.empty();
    }
    TaxonName name = TaxonName.parse(said.taxon());
    if (name.rank() != Rank.GENUS || said.cultivar() == null) {
      return Optional.of(said.taxon());
    }
    String full = name.text() + " '" + said.cultivar() + "'";
    try {
      return Optional.of(TaxonName.parse(full).text());
    } catch (NameException e) {
      return Optional.of(said.taxon()); // a cultivar spelt as none can be says no more than none
    }
  }

  private static @Nullable String cultivar(Determination said) {
    return said.taxon() == null ? null : TaxonName.parse(said.taxon()).cultivar().orElse(null);
  }

  private Makeup accepted(Map<String, Fraction> shares) {
    Map<String, Fraction> accepted = new TreeMap<>();
    // Two names of one taxon are one taxon, whose shares add up; a genus is not known to be any.
    shares.forEach(
        (name, share) -> {
          if (named(name).determined()) {
            accepted.merge(named(name).name(), share, Fraction::plus);
          }
        });
    return Makeup.of(accepted);
  }

  private boolean isOnePureTaxon(Makeup makeup, Map<String, Fraction> shares) {
    return makeup.shares().size() == 1
        && makeup.unknownShare().isZero()
        && shares.keySet().stream().noneMatch(name -> named(name).hybrid());
  }

  /** Whether a stated generation can be counted from: its form is known, and its two taxa. */
  static boolean isGeneration(String text) {
    String generation = text.strip().toUpperCase(Locale.ROOT);
    return FILIAL.matcher(generation).matches() || BACKCROSS.matcher(generation).matches();
  }

  private Optional<StatedGeneration> stated(@Nullable String text, Map<String, Fraction> shares) {
    List<String> written = new ArrayList<>(shares.keySet());
    if (text == null || !fits(text, shares)) {
      return Optional.empty();
    }
    // A backcross is to the taxon it has more of; where they are even, to the one named first.
    if (share(shares, written.get(1)).compareTo(share(shares, written.get(0))) > 0) {
      Collections.reverse(written);
    }
    List<String> taxa = new ArrayList<>();
    for (String name : written) {
      taxa.add(named(name).name());
    }
    if (taxa.get(0).equals(taxa.get(1))) {
      return Optional.empty();
    }
    String generation = text.strip().toUpperCase(Locale.ROOT);
    Matcher filial = FILIAL.matcher(generation);
    if (filial.matches()) {
      return Optional.of(
          StatedGeneration.filial(Integer.parseInt(filial.group(1)), taxa.get(0), taxa.get(1)));
    }
    Matcher backcross = BACKCROSS.matcher(generation);
    if (backcross.matches()) {
      return Optional.of(
          new StatedGeneration.Backcross(
              Integer.parseInt(backcross.group(1)),
              taxa.get(0),
              taxa.get(1),
              backcross.group(2) == null ? 1 : Integer.parseInt(backcross.group(2))));
    }
    return Optional.empty();
  }

  /** Whether a generation of two taxa can have such shares: of F1, F2 … it is half and half. */
  static boolean fits(String generation, Map<String, Fraction> shares) {
    if (shares.size() != 2) {
      return false;
    }
    boolean isFilial = FILIAL.matcher(generation.strip().toUpperCase(Locale.ROOT)).matches();
    return !isFilial || shares.values().stream().allMatch(Fraction.HALF::equals);
  }

  private static Fraction share(Map<String, Fraction> shares, String taxon) {
    return shares.getOrDefault(taxon, Fraction.ZERO);
  }

  /** The name that answers use for the taxon written so. */
  String name(String written) {
    return named(written).name();
  }

  private Named named(String written) {
    Named found = known.get(written);
    if (found == null) {
      found = look(written);
      known.put(written, found);
    }
    return found;
  }

  private Named look(String written) {
    Taxon taxon = view.accepted(written);
    TaxonName own = TaxonName.parse(taxon.name());
    boolean ofNamedSpecies = own.cultivar().isPresent() && !own.epithets().isEmpty();
    Taxon base = ofNamedSpecies ? view.accepted(withoutCultivar(own).text()) : taxon;
    if (taxon.declared() == null) {
      taxon = base;
    }
    Taxon counted = countingIntoSpecies ? species(base) : base;
    TaxonName name = TaxonName.parse(counted.name()).unqualified().withoutAuthors();
    boolean ofNoSpecies =
        name.cultivar().isPresent()
            && name.epithets().isEmpty()
            && (taxon.declared() == null || taxon.declared().within() == null);
    Taxon species = own.epithets().isEmpty() ? taxon : species(base);
    boolean belowHybrid = species.declared() != null && species.declared().hybrid();
    if (belowHybrid && taxon.declared() == null) {
      taxon = species; // what is known of the hybrid holds of what stands below it
    }
    boolean hybrid =
        name.isHybridName()
            || ofNoSpecies
            || belowHybrid
            || (taxon.declared() != null && taxon.declared().hybrid());
    boolean determined = !name.isUndetermined() && name.rank() != Rank.GENUS;
    return new Named(name.text(), taxon, hybrid, determined);
  }

  private static TaxonName withoutCultivar(TaxonName name) {
    return new TaxonName(
        name.hybridGenus(),
        name.genus(),
        name.genusAuthor(),
        name.epithets(),
        name.undetermined(),
        Optional.empty(),
        name.doubt().filter(doubt -> doubt.before() != Rank.CULTIVAR));
  }

  /** The species a taxon counts into: as it was declared, else as its own name says. */
  private Taxon species(Taxon taxon) {
    Taxon here = taxon;
    Set<String> seen = new HashSet<>();
    // A taxon may have come to stand within itself when a name was changed later.
    while (seen.add(here.key()) && here.declared() != null && here.declared().within() != null) {
      here = view.accepted(here.declared().within());
    }
    return TaxonName.parse(here.name())
        .species()
        .map(species -> view.accepted(species.text()))
        .orElse(here);
  }
}
