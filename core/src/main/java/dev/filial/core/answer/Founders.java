package dev.filial.core.answer;

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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What the register says of acquired plants, as the founders of a pedigree. */
final class Founders {

  private static final Pattern FILIAL = Pattern.compile("F(\\d{1,4})");
  private static final Pattern BACKCROSS = Pattern.compile("BC(\\d{1,4})(?:F(\\d{1,4}))?");
  private static final int DIPLOID = 2;

  private final RegisterView view;
  private final boolean countingIntoSpecies;
  private final Map<String, Named> known = new HashMap<>();

  /** A taxon under the name that answers give it. */
  private record Named(String name, Taxon taxon, boolean hybrid) {}

  Founders(RegisterView view, boolean countingIntoSpecies) {
    this.view = view;
    this.countingIntoSpecies = countingIntoSpecies;
  }

  Founder of(Determination said, @Nullable String fieldNumber) {
    Makeup makeup = Makeup.unknown();
    Standing standing = Standing.UNKNOWN;
    int ploidy = DIPLOID;
    if (!said.makeup().isEmpty()) {
      makeup = makeup(said.makeup());
      standing = Standing.HYBRID;
    } else if (said.taxon() != null && !TaxonName.parse(said.taxon()).isUndetermined()) {
      Named taxon = named(said.taxon());
      standing = taxon.hybrid() ? Standing.HYBRID : Standing.PURE;
      makeup =
          taxon.taxon().makeup().isEmpty()
              ? Makeup.pure(taxon.name())
              : makeup(taxon.taxon().makeup());
    }
    if (said.taxon() != null) {
      Integer ofTaxon = named(said.taxon()).taxon().ploidy();
      ploidy = ofTaxon == null ? ploidy : ofTaxon;
    }
    if (said.ploidy() != null) {
      ploidy = said.ploidy();
    }
    return new Founder(
        makeup, ploidy, standing, stated(said, standing), said.cultivar(), fieldNumber);
  }

  private Makeup makeup(Map<String, Fraction> shares) {
    Map<String, Fraction> accepted = new TreeMap<>();
    // Two names of one taxon are one taxon, whose shares add up.
    shares.forEach((name, share) -> accepted.merge(named(name).name(), share, Fraction::plus));
    return Makeup.of(accepted);
  }

  private Optional<StatedGeneration> stated(Determination said, Standing standing) {
    if (said.generation() == null || standing != Standing.HYBRID || said.makeup().size() != 2) {
      return Optional.empty();
    }
    List<String> taxa = new ArrayList<>();
    said.makeup().keySet().forEach(name -> taxa.add(named(name).name()));
    Matcher filial = FILIAL.matcher(said.generation());
    if (filial.matches()) {
      return Optional.of(
          StatedGeneration.filial(Integer.parseInt(filial.group(1)), taxa.get(0), taxa.get(1)));
    }
    Matcher backcross = BACKCROSS.matcher(said.generation());
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

  /** The name that answers use for the taxon written so. */
  String name(String written) {
    return named(written).name();
  }

  private Named named(String written) {
    return known.computeIfAbsent(
        written,
        any -> {
          Taxon taxon = view.accepted(written);
          Taxon counted = countingIntoSpecies ? species(taxon) : taxon;
          TaxonName name = TaxonName.parse(counted.name()).unqualified().withoutAuthors();
          boolean hybrid =
              name.isHybridName() || (taxon.declared() != null && taxon.declared().hybrid());
          return new Named(name.text(), taxon, hybrid);
        });
  }

  /** The species a taxon counts into: as it was declared, else as its own name says. */
  private Taxon species(Taxon taxon) {
    Taxon here = taxon;
    while (here.declared() != null && here.declared().within() != null) {
      here = view.accepted(here.declared().within());
    }
    return TaxonName.parse(here.name())
        .species()
        .map(species -> view.accepted(species.text()))
        .orElse(here);
  }
}
