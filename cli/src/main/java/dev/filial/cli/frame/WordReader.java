package dev.filial.cli.frame;

import dev.filial.cli.frame.Words.Word;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Reads a command line into the words a verb declares. Options ({@code --name VALUE}, {@code
 * --name=VALUE}) stand anywhere among the arguments; after {@code --} everything is an argument.
 */
final class WordReader {

  /** What Java puts in the place of bytes that are no letter. */
  private static final char LOST_LETTER = '\uFFFD';

  /** No character before this one is composed with one before it. */
  private static final char FIRST_COMBINING = '\u0300';

  private final List<Word> words;
  private final Bench bench;

  WordReader(List<Word> words, Bench bench) {
    this.words = words;
    this.bench = bench;
  }

  void read(List<String> typed, BooleanSupplier help) {
    List<String> arguments = new ArrayList<>();
    for (int i = 0; i < typed.size(); i++) {
      String text = typed.get(i);
      if (text.equals("--")) {
        arguments.addAll(typed.subList(i + 1, typed.size()));
        break;
      }
      if (!looksLikeOption(text)) {
        arguments.add(text);
        continue;
      }
      int equals = text.indexOf('=');
      Word option = option(equals < 0 ? text : text.substring(0, equals));
      if (!option.takesValue()) {
        if (equals >= 0) {
          throw wrong(option.name() + " takes no value", "Write just " + option.name() + ".");
        }
        put(option, option.name());
      } else if (equals >= 0) {
        put(option, text.substring(equals + 1));
      } else if (i + 1 < typed.size() && !looksLikeOption(typed.get(i + 1))) {
        i++;
        put(option, typed.get(i));
      } else {
        throw wrong(
            option.name() + " wants a " + option.label() + " after it",
            "Write " + option.name() + " " + option.label() + ".");
      }
    }
    if (!help.getAsBoolean()) {
      place(arguments);
      requireAll();
    }
  }

  /** A hyphen and a digit begin a number or a code, a hyphen alone is a name; neither an option. */
  private static boolean looksLikeOption(String text) {
    return text.length() > 1 && text.charAt(0) == '-' && !Character.isDigit(text.charAt(1));
  }

  private Word option(String typed) {
    String name = typed.equals("-h") ? "--help" : typed;
    for (Word word : words) {
      if (word.isOption() && word.name().equals(name)) {
        return word;
      }
    }
    List<String> names = words.stream().filter(Word::isOption).map(Word::name).toList();
    throw wrong(
        "there is no option " + typed,
        Nearest.of(typed, names).map(nearest -> "Did you mean " + nearest + "?").orElse(""));
  }

  private void place(List<String> arguments) {
    List<Word> places = new ArrayList<>();
    for (Word word : words) {
      if (!word.isOption()) {
        places.add(word);
      }
    }
    int next = 0;
    for (String argument : arguments) {
      if (next == places.size()) {
        throw wrong(
            "\"" + argument + "\" is one argument too many",
            "A name of several words stands in quotes, as 'Echeveria laui'.");
      }
      Word place = places.get(next);
      put(place, argument);
      if (!place.repeated()) {
        next++;
      }
    }
  }

  private void put(Word word, String text) {
    boolean isFlag = !word.takesValue();
    if (!word.values().isEmpty() && !word.repeated()) {
      if (isFlag) {
        return;
      }
      throw wrong(word.name() + " is given twice", "Give it once.");
    }
    try {
      word.values().add(isFlag ? true : word.reading().read(letters(word, text), bench));
    } catch (IllegalArgumentException e) {
      Trouble trouble = wrong(word.name() + ": " + e.getMessage(), "");
      trouble.initCause(e);
      throw trouble;
    }
  }

  /**
   * Each accented letter in its one composed form (Unicode's NFC), so that names which look alike
   * are alike; but the name of a file as its folder has it.
   */
  private static String letters(Word word, String text) {
    boolean simple = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == LOST_LETTER) {
        throw new IllegalArgumentException(
            "\""
                + text
                + "\" has a letter in it that could not be read; the language set for this terminal"
                + " (LC_ALL, LANG) may not be installed: set LC_ALL=C.UTF-8 and type it again");
      }
      simple &= c < FIRST_COMBINING;
    }
    return simple || word.reading().equals(Reading.FILE)
        ? text
        : Normalizer.normalize(text, Normalizer.Form.NFC);
  }

  private void requireAll() {
    List<String> missing = new ArrayList<>();
    for (Word word : words) {
      if (word.required() && word.values().isEmpty()) {
        missing.add(word.name());
      }
    }
    if (missing.isEmpty()) {
      return;
    }
    int last = missing.size() - 1;
    throw wrong(
        last == 0
            ? missing.get(0) + " is missing"
            : String.join(", ", missing.subList(0, last))
                + " and "
                + missing.get(last)
                + " are missing",
        "");
  }

  private static Trouble wrong(String message, String remedy) {
    return Trouble.usage(message, remedy);
  }
}
