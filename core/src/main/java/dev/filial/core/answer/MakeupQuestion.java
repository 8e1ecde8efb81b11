package dev.filial.core.answer;

import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.inference.Evidence;
import dev.filial.core.inference.FounderPriors;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Standing;
import dev.filial.core.pedigree.StatedGeneration;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What an unlabelled plant is: of some taxa, which of them, or which cross of two, by what it shows
 * and what the profiles of the taxa say. What is recorded of its parents is not used.
 */
public final class MakeupQuestion {

  private final RegisterView view;
  private final List<String> traits;
  private final Weighing weighing;
  private final boolean why;

  private MakeupQuestion(RegisterView view, List<String> traits, Weighing weighing, boolean why) {
    this.view = view;
    this.traits = List.copyOf(traits);
    this.weighing = weighing;
    this.why = why;
  }

  /**
   * By these traits.
   *
   * @throws RegisterRefusal if none is named
   */
  public static MakeupQuestion of(RegisterView view, List<String> traits) {
    if (traits.isEmpty()) {
      throw new RegisterRefusal("say by which traits the plant is to be judged");
    }
    return new MakeupQuestion(view, traits, Weighing.PLAIN, false);
  }

  /** The same with what was seen weighed in that way. */
  public MakeupQuestion weighing(Weighing other) {
    return new MakeupQuestion(view, traits, other, why);
  }

  /** The same with the entries that moved the odds. */
  public MakeupQuestion saysWhy() {
    return new MakeupQuestion(view, traits, weighing, true);
  }

  /**
   * Of a plant, among these taxa: each by itself, and of every two the F1, the F2 and the backcross
   * to each; all alike likely before anything is seen.
   *
   * @throws RegisterRefusal if it is no single plant, nothing was seen of it, no taxon is named, or
   *     none of the proposals could show what it showed
   */
  public PossibleMakeups ask(Code plant, List<String> taxa) {
    Item item = Things.required(view, plant);
    if (!item.kind().isPlant()) {
      throw new RegisterRefusal(
          item.code().text() + " is a " + item.kind().word() + "; name a single plant");
    }
    Set<String> names = new LinkedHashSet<>();
    taxa.forEach(taxon -> names.add(view.accepted(taxon).name()));
    if (names.size() < 2) {
      throw new RegisterRefusal("name two taxa or more that it may be of");
    }
    GenesInPlay genes = GenesInPlay.of(view, traits, MapFunction.HALDANE, false);
    GeneEvidence evidence = GeneEvidence.of(view, genes, weighing, List.of(item.code()));
    String name = evidence.behind().asked().get(0);
    Pedigree pedigree = evidence.pedigree();
    int genet = pedigree.genet(pedigree.indexOf(name));
    long seen =
        evidence.all().stream()
            .filter(finding -> pedigree.genet(pedigree.indexOf(finding.plant())) == genet)
            .filter(finding -> !(finding instanceof Evidence.Counted))
            .count();
    if (seen == 0) {
      throw new RegisterRefusal(
          "nothing was seen of "
              + item.code().text()
              + " of "
              + String.join(", ", traits)
              + "; enter what it shows first");
    }
    int sets = pedigree.ploidy(genet) == 0 ? 2 : pedigree.ploidy(genet);
    Set<String> notes = new LinkedHashSet<>();
    GeneEvidence.Scenario scenario = evidence.scenarios().get(0);
    FounderPriors priors = evidence.priors();
    for (String taxon : names) {
      priors = evidence.with(priors, taxon, taxon);
      for (Locus locus : genes.genome().loci()) {
        if (priors.frequencies(taxon, locus.name()).isEmpty()) {
          notes.add(
              "Nothing is stated of "
                  + locus.name()
                  + " in "
                  + taxon
                  + ", so it tells little for or against; give it a profile.");
        }
      }
    }
    FounderPriors known = priors;
    List<String> words = new ArrayList<>();
    List<PedigreeOdds> each = new ArrayList<>();
    // What bears on one of the proposals is heard of all, or they could not be compared.
    Set<Evidence> bearing = new LinkedHashSet<>();
    proposals(List.copyOf(names), sets)
        .forEach(
            (proposal, founder) -> {
              PedigreeOdds odds =
                  scenario
                      .odds()
                      .withPedigree(as(pedigree, pedigree.code(genet), founder))
                      .withPriors(known);
              words.add(proposal);
              each.add(odds);
              bearing.addAll(odds.bearingOn(List.of(name)));
            });
    List<Evidence> heard = List.copyOf(bearing);
    double[] after = ReckoningTelling.told(() -> chances(each, heard));
    if (Double.isNaN(after[0])) {
      throw new RegisterRefusal(
          item.code().text()
              + " can be none of these, by the profiles of the taxa and what it shows; propose"
              + " others, or allow for states that were misread");
    }
    if (scenario.assuming() != null) {
      notes.add("Taken for granted: " + scenario.assuming() + ".");
    }
    List<PossibleMakeups.Proposal> all = new ArrayList<>();
    int likeliest = 0;
    for (int i = 0; i < after.length; i++) {
      all.add(new PossibleMakeups.Proposal(words.get(i), 1.0 / after.length, after[i]));
      likeliest = after[i] > after[likeliest] ? i : likeliest;
    }
    all.sort(Comparator.comparingDouble(PossibleMakeups.Proposal::after).reversed());
    int top = likeliest;
    List<Influence> influences =
        why
            ? ReckoningTelling.told(
                () ->
                    Influences.of(
                        view,
                        each.get(0).withEvidence(heard),
                        some -> chances(each, some.evidence())[top],
                        notes))
            : List.of();
    notes.addAll(evidence.notes());
    return new PossibleMakeups(
        item.code().text(),
        genes.models().stream().map(model -> model.trait()).toList(),
        (int) seen,
        all,
        influences,
        List.copyOf(notes));
  }

  /** How likely each is, all being alike before; not a number if none is possible. */
  private static double[] chances(List<PedigreeOdds> each, List<Evidence> heard) {
    double[] logs =
        each.stream().mapToDouble(odds -> odds.withEvidence(heard).logLikelihood()).toArray();
    double most = Arrays.stream(logs).max().orElseThrow();
    double sum = Arrays.stream(logs).map(log -> Math.exp(log - most)).sum();
    return Arrays.stream(logs).map(log -> Math.exp(log - most) / sum).toArray();
  }

  /** The plant as if it had been acquired as such a one. */
  private static Pedigree as(Pedigree pedigree, String plant, Founder founder) {
    List<PlantRecord> records = new ArrayList<>();
    for (int i = 0; i < pedigree.size(); i++) {
      boolean it = pedigree.code(i).equals(plant);
      records.add(it ? new PlantRecord(plant, founder) : pedigree.plantRecord(i));
    }
    return Pedigree.of(records);
  }

  private static Map<String, Founder> proposals(List<String> taxa, int sets) {
    Map<String, Founder> proposals = new LinkedHashMap<>();
    taxa.forEach(taxon -> proposals.put(taxon, Founder.pure(taxon, sets)));
    for (int i = 0; i < taxa.size(); i++) {
      for (int j = i + 1; j < taxa.size(); j++) {
        String one = taxa.get(i);
        String other = taxa.get(j);
        Makeup half = Makeup.of(Map.of(one, Fraction.HALF, other, Fraction.HALF));
        String both = one + " and " + other;
        proposals.put("F1 of " + both, hybrid(half, sets, StatedGeneration.f1(one, other)));
        proposals.put("F2 of " + both, hybrid(half, sets, StatedGeneration.filial(2, one, other)));
        proposals.put("BC1 of their F1 to " + one + " (" + both + ")", back(one, other, sets));
        proposals.put("BC1 of their F1 to " + other + " (" + both + ")", back(other, one, sets));
      }
    }
    return proposals;
  }

  private static Founder back(String recurrent, String donor, int sets) {
    return hybrid(
        Makeup.of(Map.of(recurrent, Fraction.of(3, 4), donor, Fraction.of(1, 4))),
        sets,
        StatedGeneration.backcross(1, recurrent, donor));
  }

  private static Founder hybrid(Makeup makeup, int sets, StatedGeneration generation) {
    return new Founder(makeup, sets, Standing.HYBRID, Optional.of(generation), null, null);
  }
}
