package dev.filial.core.spreadsheet;

import dev.filial.core.answer.DeterminationReading;
import dev.filial.core.name.HybridFormula;
import dev.filial.core.name.NameException;
import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.RegisterView;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Reads labels and remembers the last few thousand: a table says the same ones over and over. */
final class Labels {

  private static final int REMEMBERED = 5_000;

  private record Label(
      @Nullable String taxon,
      @Nullable String cultivar,
      Map<String, Fraction> makeup,
      @Nullable String generation,
      @Nullable Integer ploidy) {}

  private final DeterminationReading reading;
  private final Map<Label, Determination> read =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Label, Determination> eldest) {
          return size() > REMEMBERED;
        }
      };

  Labels(RegisterView view) {
    this.reading = DeterminationReading.in(view);
  }

  /**
   * What stands on a label.
   *
   * @param notes told what looks like a slip, once for each label
   */
  Determination determination(RowReading row, Consumer<String> notes) {
    Map<String, Fraction> shares = or(row.read(Field.MAKEUP, StatedShares::of), Map.of());
    String taxon = taxon(row, shares);
    Label label =
        new Label(
            taxon,
            row.text(Field.CULTIVAR),
            taxon != null && isAllOf(row.required(Field.TAXON), shares) ? Map.of() : shares,
            generation(row),
            row.read(Field.PLOIDY, Labels::sets));
    Determination known = read.get(label);
    if (known == null) {
      DeterminationReading.Reading fresh =
          RowReading.reading(row.header(Field.TAXON), "", unused -> fresh(label));
      fresh.notes().forEach(notes);
      known = fresh.determination();
      read.put(label, known);
    }
    return known;
  }

  /** The name, with its doubt; none where it is the formula of shares that say the same. */
  private static @Nullable String taxon(RowReading row, Map<String, Fraction> shares) {
    String taxon = row.text(Field.TAXON);
    if (taxon == null || taxon.equals("?")) {
      return null;
    }
    if (!shares.isEmpty() && taxon.contains("×") && name(taxon).isEmpty()) {
      return null;
    }
    String doubt = row.text(Field.CF_OR_AFF);
    return doubt == null
        ? taxon
        : RowReading.reading(
            row.header(Field.CF_OR_AFF), doubt, unused -> StatedShares.doubted(taxon, doubt));
  }

  /** A plant that is all of the taxon it is called after is no hybrid of it. */
  private static boolean isAllOf(String taxon, Map<String, Fraction> shares) {
    if (shares.size() != 1) {
      return false;
    }
    Map.Entry<String, Fraction> only = shares.entrySet().iterator().next();
    return only.getValue().isOne()
        && name(taxon)
            .map(name -> name.withoutAuthors().text())
            .equals(name(only.getKey()).map(name -> name.withoutAuthors().text()));
  }

  private static Optional<TaxonName> name(String text) {
    try {
      return Optional.of(TaxonName.parse(text));
    } catch (NameException e) {
      return Optional.empty();
    }
  }

  private static <T> T or(@Nullable T value, T otherwise) {
    return value == null ? otherwise : value;
  }

  private static @Nullable String generation(RowReading row) {
    String generation = row.generation();
    if (generation != null) {
      String plain = generation.strip().toUpperCase(Locale.ROOT);
      RowReading.reading(
          row.header(Field.GENERATION),
          plain,
          text -> new Determination(null, null, Map.of(), text, null));
    }
    return generation;
  }

  private static Integer sets(String text) {
    if (!text.matches("\\d{1,2}")) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no number of chromosome sets; write 2, or 4");
    }
    return Integer.valueOf(text);
  }

  private DeterminationReading.Reading fresh(Label label) {
    try {
      return reading.read(
          new DeterminationReading.Label(
              label.taxon(), label.cultivar(), label.makeup(), label.generation(), label.ploidy()));
    } catch (NameException e) {
      if (label.taxon() != null && isFormula(label.taxon())) {
        throw new CellRefusal(
            "",
            "\""
                + RowReading.shortened(label.taxon())
                + "\" names the parents of a hybrid, not a taxon; take such rows in as crosses, map a"
                + " column of shares as the make-up, or put the formula in the remark and ? here");
      }
      throw e;
    }
  }

  private static boolean isFormula(String text) {
    try {
      HybridFormula.parse(text);
      return true;
    } catch (NameException e) {
      return false;
    }
  }
}
