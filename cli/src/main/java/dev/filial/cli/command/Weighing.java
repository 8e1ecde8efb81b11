package dev.filial.cli.command;

import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Weighted;
import java.util.List;

/**
 * One of several plants that may be meant, and what counts for it: {@code 24-003} or {@code
 * 24-003=2}.
 *
 * @param plant a code or a name
 * @param weight how much it counts against the others; 1 when not said
 */
record Weighing(String plant, Fraction weight) {

  /** Reads {@code PLANT} or {@code PLANT=WEIGHT}. */
  static final Reading<Weighing> READING = (text, bench) -> read(text);

  /** Reads {@code PLANT=WEIGHT}, where the weight must be said. */
  static final Reading<Weighing> WITH_WEIGHT =
      (text, bench) -> {
        if (text.lastIndexOf('=') < 0) {
          throw new IllegalArgumentException(
              "\"" + text + "\" has no weight; write " + text + "=1, or how much there was of it");
        }
        return read(text);
      };

  private static Weighing read(String text) {
    int equals = text.lastIndexOf('=');
    if (equals < 0) {
      return new Weighing(text, Fraction.ONE);
    }
    String plant = text.substring(0, equals).strip();
    if (plant.isEmpty()) {
      throw new IllegalArgumentException("\"" + text + "\" names no plant; write 24-003=2");
    }
    return new Weighing(plant, Fraction.parse(text.substring(equals + 1)));
  }

  /** All of them as the register has them. */
  static List<Weighted> in(Writing writing, List<Weighing> plants) {
    return plants.stream()
        .map(one -> new Weighted(writing.find(one.plant()).code(), one.weight()))
        .toList();
  }
}
