package dev.filial.cli.frame;

import dev.filial.core.register.Count;
import dev.filial.core.register.PartialDate;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How a word of the command line becomes a value.
 *
 * @param <T> what it becomes
 */
@FunctionalInterface
public interface Reading<T> {

  /** The word as it was typed. */
  Reading<String> TEXT = (text, bench) -> text;

  /** What names a plant or another coded thing: the Tab key proposes codes and names. */
  Reading<String> THING = (text, bench) -> text.strip();

  /** A whole number, not negative. */
  Reading<Integer> WHOLE_NUMBER =
      (text, bench) -> {
        if (!text.matches("\\d{1,9}")) {
          throw new IllegalArgumentException(
              text.matches("\\d+")
                  ? "\"" + text + "\" is more than is reckoned with; at most 999999999"
                  : "\"" + text + "\" is not a whole number, 0 or more");
        }
        return Integer.parseInt(text);
      };

  /** A number of chromosome sets, 1 to 32. */
  Reading<Integer> SETS =
      (text, bench) -> {
        int sets = text.matches("\\d{1,2}") ? Integer.parseInt(text) : 0;
        if (sets < 1 || sets > 32) {
          throw new IllegalArgumentException(
              "\"" + text + "\" is no number of chromosome sets; it is a whole number, 1 to 32");
        }
        return sets;
      };

  /** A day as people write it. */
  Reading<LocalDate> DAY = (text, bench) -> bench.dates().day(text);

  /** A day, a month or a year as people write them. */
  Reading<PartialDate> PARTIAL_DATE = (text, bench) -> bench.dates().partial(text);

  /** A count or a guess at one: 80, ~80, few, many or ?. */
  Reading<Count> COUNT = (text, bench) -> Count.parse(text);

  /** The name of a file, taken from the current folder. */
  Reading<Path> FILE =
      (text, bench) -> {
        try {
          return bench.folder().resolve(text);
        } catch (InvalidPathException e) {
          throw new IllegalArgumentException("\"" + text + "\" cannot be the name of a file", e);
        }
      };

  /**
   * Reads it.
   *
   * @throws IllegalArgumentException if it cannot be read; the message says why and what to write
   */
  T read(String text, Bench bench);

  /** The words that can stand here, for the Tab key; none if there are too many to list. */
  default List<String> candidates() {
    return List.of();
  }

  /** One of an enum's constants, by its name in lower case with hyphens. */
  static <E extends Enum<E>> Reading<E> oneOf(Class<E> type) {
    return new Reading<>() {
      @Override
      public E read(String text, Bench bench) {
        for (E constant : type.getEnumConstants()) {
          if (word(constant).equals(text.toLowerCase(Locale.ROOT))) {
            return constant;
          }
        }
        throw new IllegalArgumentException(
            "\"" + text + "\" is none of " + String.join(", ", candidates()));
      }

      @Override
      public List<String> candidates() {
        return Arrays.stream(type.getEnumConstants()).map(Reading::word).toList();
      }
    };
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
