package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Sown;
import java.util.ArrayList;
import java.util.List;

/**
 * A pot and what went in, as typed: {@code P1=20}.
 *
 * @param pot the pot: its suffix or its whole code
 * @param seeds how many seeds
 */
record PotPortion(String pot, Count seeds) {

  /** Reads {@code P1=20,P2=~20,P3}; a pot without a number holds nobody knows how many. */
  static final Reading<List<PotPortion>> LIST =
      (text, bench) -> {
        List<PotPortion> portions = new ArrayList<>();
        for (String part : text.split(",", -1)) {
          int equals = part.indexOf('=');
          String pot = (equals < 0 ? part : part.substring(0, equals)).strip();
          if (pot.isEmpty()) {
            throw new IllegalArgumentException(
                "\"" + text + "\" names no pot somewhere; write P1=20,P2=20");
          }
          portions.add(
              new PotPortion(
                  pot, equals < 0 ? Count.unknown() : Count.parse(part.substring(equals + 1))));
        }
        return List.copyOf(portions);
      };

  /** The pots as they stand under {@code whole}. */
  static List<Sown.Filled> filled(List<PotPortion> portions, Code whole) {
    return portions.stream()
        .map(one -> new Sown.Filled(StatedCode.read(whole, one.pot()), one.seeds(), null))
        .toList();
  }

  /** All the seeds in them. */
  static Count total(List<PotPortion> portions) {
    return portions.stream().map(PotPortion::seeds).reduce(Count.of(0), Count::plus);
  }
}
