package dev.filial.core.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What several tables write alike. */
final class Cells {

  private static final int DECIMALS = 6;

  private Cells() {}

  /** Empty for what is not known. */
  static String text(@Nullable Object value) {
    return value == null ? "" : value.toString();
  }

  /** Several values of one cell; within a value the sign that parts them becomes a comma. */
  static String several(List<String> values, String between) {
    String sign = between.strip();
    List<String> told = new ArrayList<>();
    for (String value : values) {
      told.add(value.replace(sign, ","));
    }
    return String.join(between, told);
  }

  /** Shares as {@code Echeveria laui 0.75; Echeveria agavoides 0.25}, to six decimals. */
  static String shares(List<Accession.Share> shares) {
    List<String> told = new ArrayList<>();
    for (Accession.Share share : shares) {
      told.add(
          share.taxon()
              + " "
              + BigDecimal.valueOf(share.share())
                  .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                  .stripTrailingZeros()
                  .toPlainString());
    }
    return several(told, "; ");
  }
}
