package dev.filial.core.spreadsheet;

import dev.filial.core.answer.DeterminationReading;
import dev.filial.core.name.HybridFormula;
import dev.filial.core.name.NameException;
import dev.filial.core.register.Determination;
import dev.filial.core.register.RegisterView;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Reads labels and remembers the last few thousand: a table says the same ones over and over. */
final class Labels {

  private static final int REMEMBERED = 5_000;

  private record Label(
      @Nullable String taxon,
      @Nullable String cultivar,
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
    String taxon = row.text(Field.TAXON);
    Label label =
        new Label(
            taxon == null || taxon.equals("?") ? null : taxon,
            row.text(Field.CULTIVAR),
            row.text(Field.GENERATION),
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
              label.taxon(), label.cultivar(), Map.of(), label.generation(), label.ploidy()));
    } catch (NameException e) {
      if (label.taxon() != null && isFormula(label.taxon())) {
        throw new CellRefusal(
            "",
            "\""
                + RowReading.shortened(label.taxon())
                + "\" names the parents of a hybrid, not a taxon; take such rows in as crosses, or put"
                + " the formula in the remark and ? here");
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
