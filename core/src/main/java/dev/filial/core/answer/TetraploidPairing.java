package dev.filial.core.answer;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * How the chromosomes of the tetraploids of a pedigree are taken to pair when their inbreeding is
 * reckoned: any two of the four, with one double reduction for all.
 *
 * @param doubleReduction what is stated of the first of the taxa, by name, of which anything is; 0
 *     if nothing is, or there are no tetraploids
 * @param notes what the grower should know of it, a sentence each
 */
record TetraploidPairing(Fraction doubleReduction, List<String> notes) {

  private static final int TETRAPLOID = 4;

  static TetraploidPairing of(RegisterView view, Pedigree pedigree) {
    Set<String> taxa = new TreeSet<>();
    boolean tetraploid = false;
    for (int i = 0; i < pedigree.size(); i++) {
      Founder founder = pedigree.founder(i);
      tetraploid |= pedigree.ploidy(i) == TETRAPLOID;
      if (founder != null) {
        taxa.addAll(founder.makeup().shares().keySet());
      }
    }
    return tetraploid ? ofTaxa(view, taxa) : new TetraploidPairing(Fraction.ZERO, List.of());
  }

  private static TetraploidPairing ofTaxa(RegisterView view, Set<String> taxa) {
    Map<Fraction, List<String>> stated = new LinkedHashMap<>();
    List<String> disomic = new ArrayList<>();
    for (String taxon : taxa) {
      Optional<ProfileStated> profile = TaxonProfile.of(view, taxon);
      if (profile.map(ProfileStated::pairing).orElse(null) == ProfileStated.Pairing.DISOMIC) {
        disomic.add(taxon);
      }
      profile
          .map(ProfileStated::doubleReduction)
          .ifPresent(alpha -> stated.computeIfAbsent(alpha, any -> new ArrayList<>()).add(taxon));
    }
    Fraction alpha = stated.isEmpty() ? Fraction.ZERO : stated.keySet().iterator().next();
    List<String> notes = new ArrayList<>();
    notes.add(
        "Of tetraploids any two of the four chromosomes are taken to pair, with double reduction "
            + alpha
            + (stated.isEmpty()
                ? ", as none is stated."
                : ", as stated of " + String.join(", ", stated.values().iterator().next()) + "."));
    if (stated.size() > 1) {
      notes.add(
          "Double reduction is stated differently of others, which is not reckoned with: "
              + stated.keySet().stream()
                  .skip(1)
                  .map(other -> other + " of " + String.join(", ", stated.get(other)))
                  .collect(Collectors.joining("; "))
              + ".");
    }
    if (!disomic.isEmpty()) {
      notes.add(
          "Chromosomes of "
              + String.join(", ", disomic)
              + " are stated to pair only within subgenomes; inbreeding of its tetraploids is not"
              + " reckoned by that, and the figures do not hold for it.");
    }
    return new TetraploidPairing(alpha, List.copyOf(notes));
  }
}
