package dev.filial.core.answer;

import dev.filial.core.number.Fraction;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.ProfileStated.Pairing;
import dev.filial.core.register.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What an entry about genes says, as a grower would say it. */
final class GeneTelling {

  private GeneTelling() {}

  static String of(Statement statement) {
    if (statement instanceof LocusDeclared locus) {
      return locus(locus);
    }
    if (statement instanceof ModelDeclared model) {
      return model.trait()
          + " goes by the "
          + (model.loci().size() == 1 ? "gene " : "genes ")
          + String.join(" and ", model.loci())
          + ": "
          + model.rows().stream().map(GeneTelling::row).collect(Collectors.joining("; "));
    }
    if (statement instanceof ProfileStated profile) {
      return profile(profile);
    }
    if (statement instanceof GenotypeStated genotype) {
      return genotype.code().text()
          + " is "
          + genotype.genotype()
          + " ("
          + String.join(", ", genotype.loci())
          + ")";
    }
    throw new IllegalArgumentException("no telling of " + statement.getClass().getSimpleName());
  }

  private static String locus(LocusDeclared locus) {
    StringBuilder text = new StringBuilder("gene ").append(locus.locus()).append(": ");
    // In the cytoplasm there is but one, and those that refuse pollen show in nothing else.
    boolean hides = !locus.cytoplasmic() && !locus.incompatibility();
    text.append(String.join(hides ? " over " : ", ", locus.alleles()));
    if (locus.cytoplasmic()) {
      text.append(", handed on by the seed parent alone");
    }
    if (locus.chromosome() != null && locus.centimorgans() != null) {
      text.append(", on chromosome ")
          .append(locus.chromosome())
          .append(" at ")
          .append(locus.centimorgans().toPlainString())
          .append(" cM");
    }
    if (locus.linkedTo() != null && locus.recombination() != null) {
      text.append(", beside ")
          .append(locus.linkedTo())
          .append(" (")
          .append(locus.recombination().toPercent(1))
          .append(" recombined)");
    }
    if (locus.incompatibility()) {
      text.append(", self-incompatible");
    }
    if (locus.leak() != null) {
      text.append(", leaking ").append(locus.leak().toPercent(1));
    }
    if (!locus.selfFertile().isEmpty()) {
      text.append(", self-fertile with ").append(String.join(", ", locus.selfFertile()));
    }
    weights(text, "eggs", locus.eggs());
    weights(text, "pollen", locus.pollen());
    return text.toString();
  }

  private static void weights(StringBuilder text, String side, Map<String, Fraction> weights) {
    if (!weights.isEmpty()) {
      text.append(", ")
          .append(side)
          .append(" with ")
          .append(
              weights.entrySet().stream()
                  .map(weight -> weight.getKey() + " counting " + weight.getValue())
                  .collect(Collectors.joining(", ")));
    }
  }

  private static String row(ModelDeclared.Row row) {
    String genes = row.genes().strip().equals("*") ? "all others" : row.genes();
    if (row.lost().isOne()) {
      return genes + (genes.equals(row.genes()) ? " dies" : " die");
    }
    return genes
        + " "
        + row.shows().entrySet().stream()
            .map(
                state ->
                    state.getValue().isOne()
                        ? state.getKey()
                        : state.getKey() + " in " + state.getValue().toPercent(1))
            .collect(Collectors.joining(", "))
        + (row.lost().isZero() ? "" : ", " + row.lost().toPercent(1) + " lost");
  }

  private static String profile(ProfileStated profile) {
    List<String> parts = new ArrayList<>();
    profile
        .frequencies()
        .forEach(
            (locus, alleles) ->
                parts.add(
                    locus
                        + " "
                        + alleles.entrySet().stream()
                            .map(
                                allele ->
                                    allele.getValue().isOne()
                                        ? "always " + allele.getKey()
                                        : allele.getKey() + " " + allele.getValue().toPercent(1))
                            .collect(Collectors.joining(", "))));
    if (profile.pairing() != null) {
      parts.add(
          profile.pairing() == Pairing.TETRASOMIC
              ? "its four chromosomes pair freely"
              : "its two subgenomes keep apart");
    }
    if (profile.doubleReduction() != null) {
      parts.add("double reduction " + profile.doubleReduction());
    }
    profile.geneticMap().ifPresent(map -> parts.add(map.text()));
    return profile.taxon()
        + (profile.frequencies().isEmpty() ? ": " : " carries ")
        + String.join("; ", parts);
  }
}
