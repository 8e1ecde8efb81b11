package dev.filial.core.answer;

import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Taxon;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is stated of the plants of a taxon, by itself or by a taxon above it: what a species does
 * not say of a gene, of how its chromosomes pair or of how long they are, its genus may say.
 */
final class TaxonProfile {

  private TaxonProfile() {}

  /** All that holds for the taxon; empty if nothing was said of it or of what stands above it. */
  static Optional<ProfileStated> of(RegisterView view, String taxon) {
    Map<String, Map<String, Fraction>> frequencies = new HashMap<>();
    ProfileStated.@Nullable Pairing pairing = null;
    @Nullable Fraction doubleReduction = null;
    List<BigDecimal> chromosomes = List.of();
    for (String name : upwards(view, taxon)) {
      ProfileStated found = view.profile(name).orElse(null);
      if (found == null) {
        continue;
      }
      found.frequencies().forEach(frequencies::putIfAbsent);
      if (pairing == null) {
        pairing = found.pairing();
        doubleReduction = found.doubleReduction();
      }
      if (chromosomes.isEmpty()) {
        chromosomes = found.chromosomes();
      }
    }
    return frequencies.isEmpty() && pairing == null && chromosomes.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ProfileStated(taxon, frequencies, pairing, doubleReduction, chromosomes, null));
  }

  /** The taxon, those it was said to count into, and by their names the species and the genus. */
  static Set<String> upwards(RegisterView view, String taxon) {
    Set<String> chain = new LinkedHashSet<>();
    @Nullable String next = taxon;
    while (next != null) {
      Taxon accepted = view.accepted(next);
      next =
          chain.add(accepted.name()) && accepted.declared() != null
              ? accepted.declared().within()
              : null;
    }
    Set<String> genera = new LinkedHashSet<>();
    for (String name : List.copyOf(chain)) {
      TaxonName read = TaxonName.parse(name).unqualified();
      read.species().ifPresent(species -> chain.add(species.text()));
      genera.add((read.hybridGenus() ? "×" : "") + read.genus());
    }
    chain.addAll(genera);
    return chain;
  }
}
