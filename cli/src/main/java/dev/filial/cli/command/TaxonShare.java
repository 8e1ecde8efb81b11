package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.core.number.Fraction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A stated share of a hybrid: {@code E. laui=1/2}.
 *
 * @param taxon the name of the taxon
 * @param share how much of the hybrid is of it
 */
record TaxonShare(String taxon, Fraction share) {

  /** Reads {@code TAXON=SHARE}. */
  static final Reading<TaxonShare> READING =
      (text, bench) -> {
        int equals = text.lastIndexOf('=');
        if (equals < 1) {
          throw new IllegalArgumentException(
              "\"" + text + "\" states no share; write \"Echeveria laui=1/2\"");
        }
        return new TaxonShare(
            text.substring(0, equals).strip(),
            RecordReadings.SHARE.read(text.substring(equals + 1), bench));
      };

  /** The shares by taxon, in the order in which they were given. */
  static Map<String, Fraction> map(List<TaxonShare> shares) {
    Map<String, Fraction> map = new LinkedHashMap<>();
    for (TaxonShare one : shares) {
      if (map.put(one.taxon(), one.share()) != null) {
        throw Trouble.usage(
            "--makeup names " + one.taxon() + " twice", "Give it once, with the whole share.");
      }
    }
    return map;
  }
}
