package dev.filial.core.register;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.TraitModel;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** What may be said of genes, of traits by their genes, and of what plants carry. */
final class GeneRules {

  /** A table may be of plants of more sets alone. */
  private static final int[] PLOIDIES = {2, 3, 4};

  private final RegisterView book;
  private final List<String> warnings;

  GeneRules(RegisterView book, List<String> warnings) {
    this.book = book;
    this.warnings = warnings;
  }

  /**
   * Checks a locus.
   *
   * @throws RegisterRefusal if it was declared before, or cannot lie where it is said to
   */
  void check(long number, LocusDeclared locus) {
    for (long entry : book.entriesOn(Subject.locus(locus.locus()))) {
      if (entry != number && book.effective(entry).orElse(null) instanceof LocusDeclared) {
        throw new RegisterRefusal(
            "the gene " + locus.locus() + " was declared in entry " + entry + "; amend that entry",
            List.of(entry));
      }
    }
    if (locus.incompatibility()) {
      requireTheOnlyRefusing(locus);
    }
    warnIfLettersCollide(locus);
    if (locus.linkedTo() == null) {
      return;
    }
    LocusDeclared beside = References.locus(book, locus.linkedTo(), List.of(locus.locus().strip()));
    if (beside.cytoplasmic()) {
      throw new RegisterRefusal(
          "the gene "
              + locus.locus()
              + " cannot lie beside "
              + beside.locus()
              + ", which sits in the cytoplasm; name one that lies on a chromosome");
    }
    if (beside.chromosome() != null) {
      throw new RegisterRefusal(
          "the gene "
              + locus.locus()
              + " cannot lie just beside "
              + beside.locus()
              + ", which has its place on the map of chromosome "
              + beside.chromosome()
              + "; give it a place on that map too");
    }
    LinkedRow.of(book, locus.locus().strip());
  }

  private void requireTheOnlyRefusing(LocusDeclared locus) {
    for (LocusDeclared other : book.loci()) {
      if (other.incompatibility() && !other.locus().strip().equals(locus.locus().strip())) {
        throw new RegisterRefusal(
            "the gene "
                + other.locus()
                + " refuses pollen already, and one such gene is reckoned with; amend or strike the"
                + " one that is wrong");
      }
    }
  }

  private void warnIfLettersCollide(LocusDeclared locus) {
    for (LocusDeclared other : book.loci()) {
      if (!other.locus().strip().equals(locus.locus().strip())) {
        for (String allele : locus.alleles()) {
          if (other.alleles().contains(allele)) {
            warnings.add(
                "the gene "
                    + other.locus()
                    + " has an allele "
                    + allele
                    + " too, so the two cannot be asked about together; undo this and choose other"
                    + " letters if they ever should be");
            break;
          }
        }
      }
    }
  }

  /**
   * Checks a table.
   *
   * @param trait the trait it is about
   * @throws RegisterRefusal if that has no states or has a table already, or the table cannot be
   *     read, shows what is no state, or leaves genotypes out
   */
  void check(long number, ModelDeclared said, TraitDeclared trait) {
    if (trait.states().isEmpty()) {
      throw new RegisterRefusal(
          trait.trait()
              + " is scored or measured; a table of genes can be had of a trait with states only");
    }
    for (long entry : book.entriesOn(Subject.trait(said.trait()))) {
      if (entry != number && book.effective(entry).orElse(null) instanceof ModelDeclared) {
        throw new RegisterRefusal(
            "how "
                + trait.trait()
                + " is inherited was said in entry "
                + entry
                + "; amend that entry",
            List.of(entry));
      }
    }
    List<Locus> loci = new ArrayList<>();
    said.loci().forEach(name -> loci.add(References.locus(book, name).toLocus()));
    try {
      TraitModel model = said.toModel(loci, trait.states());
      requireComplete(model);
      model.requireRowsThatHold();
    } catch (IllegalArgumentException e) {
      throw refusal(e);
    }
  }

  private static void requireComplete(TraitModel model) {
    if (IntStream.of(PLOIDIES).noneMatch(ploidy -> isComplete(model, ploidy))) {
      model.requireComplete(PLOIDIES[0]);
    }
  }

  private static boolean isComplete(TraitModel model, int ploidy) {
    try {
      model.requireComplete(ploidy);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  /**
   * Checks a profile.
   *
   * @throws RegisterRefusal if a locus was not declared or lacks an allele
   */
  void check(ProfileStated profile) {
    profile
        .frequencies()
        .forEach(
            (name, alleles) -> {
              LocusDeclared locus = References.locus(book, name);
              for (String allele : alleles.keySet()) {
                if (!locus.alleles().contains(allele)) {
                  throw new RegisterRefusal(
                      "the gene "
                          + locus.locus()
                          + " has no allele "
                          + allele
                          + "; it has "
                          + String.join(", ", locus.alleles()));
                }
              }
            });
  }

  /**
   * Checks a genotype.
   *
   * @throws RegisterRefusal if it is of no plant, cannot be read, or has more or fewer alleles than
   *     the plant has chromosome sets
   */
  void check(long number, GenotypeStated said) {
    References.plant(book, said.code());
    Genotype genotype;
    boolean onChromosomes;
    try {
      Genome genome = DeclaredGenome.of(book, said.loci(), MapFunction.HALDANE);
      genotype = genome.genotype(said.genotype());
      onChromosomes = genome.loci().stream().anyMatch(locus -> !locus.isCytoplasmic());
    } catch (IllegalArgumentException e) {
      throw refusal(e);
    }
    OptionalInt sets = SetsOf.in(book, List.of(said.code())).ploidy(said.code());
    if (onChromosomes && sets.isPresent() && sets.getAsInt() != genotype.ploidy()) {
      throw new RegisterRefusal(
          "\""
              + said.genotype()
              + "\" has "
              + genotype.ploidy()
              + " alleles of each gene, and "
              + References.described(book, said.code())
              + " has "
              + sets.getAsInt()
              + " chromosome sets; write as many alleles, or first say how many sets it has");
    }
    warnIfStatedBefore(number, said);
  }

  private void warnIfStatedBefore(long number, GenotypeStated said) {
    List<String> loci = said.loci().stream().map(String::strip).toList();
    for (long entry : book.entriesOn(Subject.of(said.code()))) {
      if (entry != number
          && book.effective(entry).orElse(null) instanceof GenotypeStated before
          && !Collections.disjoint(before.loci().stream().map(String::strip).toList(), loci)) {
        warnings.add(
            "what "
                + said.code().text()
                + " carries there was said in entry "
                + entry
                + " already ("
                + before.genotype()
                + "); if this says it better, amend that one");
      }
    }
  }

  private static RegisterRefusal refusal(IllegalArgumentException e) {
    RegisterRefusal refusal = new RegisterRefusal(String.valueOf(e.getMessage()));
    refusal.initCause(e);
    return refusal;
  }
}
