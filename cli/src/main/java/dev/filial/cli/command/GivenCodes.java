package dev.filial.cli.command;

import dev.filial.cli.frame.ShellWords;
import dev.filial.core.name.Code;
import dev.filial.core.register.Introduction;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The codes that the lines of a batch gave out, for the lines after them: {@code ^} stands for what
 * the line before gave, {@code @name} for what the line gave that was written behind
 * {@code @name:}.
 */
final class GivenCodes {

  /** What the codes of one line are known by; a line that could not be taken has none. */
  private record Given(long line, List<Code> codes, boolean failed) {}

  private static final String NAME = "@[\\p{L}\\p{N}_-]+";

  private static final Pattern LABEL = Pattern.compile("(" + NAME + "):");

  /** Alone, before an equals sign as in {@code @a=2}, or behind one as in {@code --of=@a}. */
  private static final Pattern REFERENCE =
      Pattern.compile("(--[a-z-]+=)?(\\^|" + NAME + ")(?:\\.([1-9]\\d{0,8}))?(=.*)?");

  private final Map<String, Given> labelled = new HashMap<>();
  private Given last = new Given(0, List.of(), false);

  /** A line that waits for another, which could not be taken. */
  static final class Waits extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Waits(String message) {
      super(message);
    }
  }

  /** The codes that a statement gave out, in the order in which they want a tag. */
  static List<Code> of(Statement statement) {
    List<Code> codes = Introduction.codes(statement);
    // The pots stand there with tags; the sowing they are of is only reckoned with.
    return statement instanceof Sown && codes.size() > 1 ? codes.subList(1, codes.size()) : codes;
  }

  /** Whether a word names the line that it begins. */
  static boolean isLabel(ShellWords.Word word) {
    return word.bare() && word.text().startsWith("@") && LABEL.matcher(word.text()).matches();
  }

  /** Remembers what a line gave. */
  void took(long line, List<Code> codes) {
    if (!codes.isEmpty()) {
      last = new Given(line, List.copyOf(codes), false);
    }
  }

  /** Remembers that a line could not be taken. */
  void failed(long line) {
    last = new Given(line, List.of(), true);
  }

  /**
   * Gives a line's codes a name.
   *
   * @throws IllegalArgumentException if another line has it
   */
  void label(String word, long line, List<Code> codes, boolean failed) {
    String name = word.substring(0, word.length() - 1);
    Given other = labelled.putIfAbsent(name, new Given(line, List.copyOf(codes), failed));
    if (other != null) {
      throw new IllegalArgumentException(
          name + " is the name of line " + other.line() + " already; take another");
    }
  }

  /**
   * The words with codes in place of what stands for them; a word in quotes stands for itself.
   *
   * @throws IllegalArgumentException if nothing was given that is spoken of
   * @throws Waits if what is spoken of could not be taken
   */
  List<String> resolved(List<ShellWords.Word> words) {
    List<String> texts = new ArrayList<>(words.size());
    for (ShellWords.Word word : words) {
      String text = word.text();
      texts.add(
          word.bare() && (text.indexOf('^') >= 0 || text.indexOf('@') >= 0)
              ? resolved(text)
              : text);
    }
    return texts;
  }

  private String resolved(String text) {
    Matcher reference = REFERENCE.matcher(text);
    if (!reference.matches()) {
      return text;
    }
    String name = reference.group(2);
    Given given = name.equals("^") ? last : labelled.get(name);
    if (given == null) {
      throw new IllegalArgumentException(
          "no line before this one is called " + name + "; begin that line with " + name + ":");
    }
    if (given.failed()) {
      throw new Waits("not looked at: it takes the code of line " + given.line());
    }
    if (given.codes().isEmpty()) {
      throw new IllegalArgumentException(
          name.equals("^")
              ? "^ stands for the code that the line before gave out, and none did"
              : "line " + given.line() + ", " + name + ", gave out no code");
    }
    int place = reference.group(3) == null ? 1 : Integer.parseInt(reference.group(3));
    if (place > given.codes().size()) {
      throw new IllegalArgumentException(
          "line "
              + given.line()
              + " gave out "
              + (given.codes().size() == 1 ? "1 code" : given.codes().size() + " codes")
              + ", not "
              + place);
    }
    return before(reference.group(1))
        + given.codes().get(place - 1).text()
        + before(reference.group(4));
  }

  private static String before(@org.jspecify.annotations.Nullable String text) {
    return text == null ? "" : text;
  }
}
