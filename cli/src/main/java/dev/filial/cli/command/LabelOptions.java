package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.DeterminationReading;
import dev.filial.core.name.HybridFormula;
import dev.filial.core.name.NameException;
import dev.filial.core.name.TaxonName;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterView;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What an acquired plant or packet was said to be, and where it came from. */
final class LabelOptions {

  private final Supplier<Optional<String>> cultivar;
  private final Supplier<List<TaxonShare>> makeup;
  private final Supplier<Optional<String>> generation;
  private final Supplier<Optional<Integer>> ploidy;
  private final Supplier<Optional<String>> field;
  private final Supplier<Optional<String>> locality;
  private final Supplier<Optional<String>> donor;
  private final Supplier<Optional<String>> donorCode;

  /** Adds the options. */
  LabelOptions(Words words) {
    cultivar = words.option("--cultivar", "NAME", "The cultivar it is.", RecordReadings.LINE);
    field =
        words.option(
            "--field", "NUMBER", "The collector's field number, as KB 117.", RecordReadings.LINE);
    locality = words.option("--locality", "PLACE", "Where it was collected.", RecordReadings.LINE);
    donor = words.option("--from", "NAME", "Who gave or sold it.", RecordReadings.LINE);
    donorCode =
        words.option(
            "--donor-code",
            "CODE",
            "The giver's own code, kept beside yours.",
            RecordReadings.LINE);
    makeup =
        words.repeatedOption(
            "--makeup",
            "TAXON=SHARE",
            "Of a hybrid: how much of it is of a taxon, as \"E. laui=1/2\"; once for each taxon."
                + " What is missing to the whole is unknown.",
            TaxonShare.READING);
    generation =
        words.option(
            "--generation",
            "F1",
            "Of a hybrid: F1, F2 ... or BC1 ..., as it was said; a backcross is to the taxon it has"
                + " more of.",
            RecordReadings.LINE);
    ploidy =
        words.option(
            "--ploidy",
            "SETS",
            "How many chromosome sets it has, if not as many as its taxon.",
            Reading.SETS);
  }

  /** A taxon as it was typed, which a forgotten variable of the shell is not. */
  static String typed(String taxon) {
    if (taxon.isBlank()) {
      throw Trouble.usage(
          "the taxon is empty", "Write its name in quotes, or ? if nobody knows it.");
    }
    return taxon;
  }

  /** What it was said to be; {@code ?} or nothing for a name that nobody knows. */
  DeterminationReading.Reading determination(RegisterView view, String taxon) {
    boolean unknown = taxon.isBlank() || taxon.strip().equals("?");
    try {
      return DeterminationReading.in(view)
          .read(
              new DeterminationReading.Label(
                  unknown ? null : taxon,
                  cultivar.get().orElse(null),
                  TaxonShare.map(makeup.get()),
                  generation.get().orElse(null),
                  ploidy.get().orElse(null)));
    } catch (NameException e) {
      if (isFormula(taxon)) {
        throw Trouble.refused(
            "\"" + taxon + "\" names the parents of a hybrid, not a taxon",
            "Leave it out and say what it is made of: "
                + makeup(taxon)
                + ", and --generation F1 if that was said.");
      }
      if (NAMES_PARENTS.matcher(taxon).find()) {
        throw Trouble.refused(
            String.valueOf(e.getMessage()),
            "If the parents are known, leave the name out and write --makeup \"GENUS SPECIES=1/2\""
                + " for each.");
      }
      throw e;
    }
  }

  /** What is written where the parents are meant and no name of one taxon is. */
  private static final Pattern NAMES_PARENTS =
      Pattern.compile("\\s[x×]\\s|\\s(hybrid|hybr\\.|hyb\\.|hybride)(\\s|$)");

  /** The parents of a formula in equal shares, which is right of a first cross of two. */
  private static String makeup(String formula) {
    List<TaxonName> parents = HybridFormula.parse(formula).parents();
    return parents.stream()
        .map(
            parent ->
                "--makeup \"" + parent.withoutAuthors().text() + "=1/" + parents.size() + "\"")
        .collect(Collectors.joining(" "));
  }

  /** Whether shares of taxa are stated, so that no name is needed. */
  boolean hasMakeup() {
    return !makeup.get().isEmpty();
  }

  private static boolean isFormula(String text) {
    try {
      HybridFormula.parse(text);
      return true;
    } catch (NameException e) {
      return false;
    }
  }

  /** Where it came from. */
  Provenance provenance() {
    return new Provenance(
        donor.get().orElse(null),
        donorCode.get().orElse(null),
        field.get().orElse(null),
        locality.get().orElse(null));
  }
}
