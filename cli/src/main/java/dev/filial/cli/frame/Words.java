package dev.filial.cli.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The words that may follow a verb. A command declares them in its constructor and keeps what it
 * gets back, each of which gives the value once the command line was read.
 *
 * <p>Declared in plain code and not by annotations, because finding and reading annotations takes a
 * Java that has just started longer than most commands take to answer.
 */
public final class Words {

  /**
   * One of them.
   *
   * @param name an option's name with its hyphens, or an argument's label
   * @param label what stands for an option's value in help; empty for one that takes none
   */
  record Word(
      String name,
      String label,
      String meaning,
      boolean required,
      boolean repeated,
      Reading<?> reading,
      List<Object> values) {

    boolean isOption() {
      return name.startsWith("-");
    }

    boolean takesValue() {
      return !isOption() || !label.isEmpty();
    }

    /** As the usage line has it. */
    String usage() {
      String text = isOption() && takesValue() ? name + " " + label : name;
      text = repeated ? text + "..." : text;
      return required ? text : "[" + text + "]";
    }
  }

  /**
   * A word as help explains it.
   *
   * @param name as it is typed
   * @param meaning what it is for
   */
  public record Explained(String name, String meaning) {}

  private final List<Word> words = new ArrayList<>();
  private final List<String> description = new ArrayList<>();
  private final List<String> examples = new ArrayList<>();
  private final BooleanSupplier json =
      flag("--json", "Answer with one JSON object instead of lines to read.");
  private final BooleanSupplier help = flag("--help", "Show this page; -h for short.");

  /** A paragraph that says more than the verb's summary. */
  public Words describe(String paragraph) {
    description.add(paragraph);
    return this;
  }

  /** A whole command line that works, beginning with {@code filial}. */
  public Words example(String line) {
    examples.add(line);
    return this;
  }

  /** An argument that must be there. */
  public Supplier<String> argument(String label, String meaning) {
    return argument(label, meaning, Reading.TEXT);
  }

  /** An argument that must be there. */
  public <T> Supplier<T> argument(String label, String meaning, Reading<T> reading) {
    return required(add(label, "", meaning, true, false, reading));
  }

  /** An argument that may be left out; only further ones that may be left out can follow. */
  public Supplier<Optional<String>> optionalArgument(String label, String meaning) {
    return optionalArgument(label, meaning, Reading.TEXT);
  }

  /** An argument that may be left out; only further ones that may be left out can follow. */
  public <T> Supplier<Optional<T>> optionalArgument(
      String label, String meaning, Reading<T> reading) {
    return optional(add(label, "", meaning, false, false, reading));
  }

  /** All arguments from here on: one at least if {@code required}, else perhaps none. */
  public <T> Supplier<List<T>> arguments(
      String label, String meaning, boolean required, Reading<T> reading) {
    return several(add(label, "", meaning, required, true, reading));
  }

  /** An option that may be given once, such as {@code --by NAME}. */
  public Supplier<Optional<String>> option(String name, String label, String meaning) {
    return option(name, label, meaning, Reading.TEXT);
  }

  /** An option that may be given once. */
  public <T> Supplier<Optional<T>> option(
      String name, String label, String meaning, Reading<T> reading) {
    return optional(add(name, label, meaning, false, false, reading));
  }

  /** An option that must be given. */
  public <T> Supplier<T> requiredOption(
      String name, String label, String meaning, Reading<T> reading) {
    return required(add(name, label, meaning, true, false, reading));
  }

  /** An option that may be given any number of times. */
  public <T> Supplier<List<T>> repeatedOption(
      String name, String label, String meaning, Reading<T> reading) {
    return several(add(name, label, meaning, false, true, reading));
  }

  /** An option without a value. */
  public BooleanSupplier flag(String name, String meaning) {
    Word word = add(name, "", meaning, false, false, Reading.TEXT);
    return () -> !word.values().isEmpty();
  }

  /**
   * Reads what follows the verb. If help is asked for, what is missing is not missed.
   *
   * @throws Trouble if a word is unknown, missing, one too many or cannot be read
   */
  public void read(List<String> typed, Bench bench) {
    new WordReader(words, bench).read(typed, help);
  }

  /** Whether JSON was asked for. */
  public boolean json() {
    return json.getAsBoolean();
  }

  /** Whether help was asked for. */
  public boolean help() {
    return help.getAsBoolean();
  }

  /** Whether the verb writes something into a register: it then asks who does. */
  public boolean records() {
    for (Word word : words) {
      if (word.name().equals(AuthorOption.NAME)) {
        return true;
      }
    }
    return false;
  }

  /** How the verb is typed, all in one line. */
  public String usage(String verb) {
    StringBuilder usage = new StringBuilder("filial ").append(verb);
    ordered().forEach(word -> usage.append(' ').append(word.usage()));
    return usage.toString();
  }

  /** The paragraphs of the description. */
  public List<String> description() {
    return List.copyOf(description);
  }

  /** The examples. */
  public List<String> examples() {
    return List.copyOf(examples);
  }

  /** The arguments, explained. */
  public List<Explained> arguments() {
    return words.stream()
        .filter(word -> !word.isOption())
        .map(word -> new Explained(word.name(), word.meaning()))
        .toList();
  }

  /** The options, explained, those that every verb has at the end. */
  public List<Explained> options() {
    return ordered()
        .filter(Word::isOption)
        .map(word -> new Explained((word.name() + " " + word.label()).strip(), word.meaning()))
        .toList();
  }

  /**
   * A word as a form asks for it.
   *
   * @param name an option's name with its hyphens, or an argument's label
   * @param label what stands for its value; empty for one that takes none
   * @param meaning what it is for
   * @param required whether it must be there
   * @param repeated whether it may be there several times
   * @param candidates what can stand there, if that can be listed
   */
  public record Field(
      String name,
      String label,
      String meaning,
      boolean required,
      boolean repeated,
      List<String> candidates) {

    static Field of(Word word) {
      return new Field(
          word.name(),
          word.isOption() ? word.label() : word.name(),
          word.meaning(),
          word.required(),
          word.repeated(),
          word.reading().candidates());
    }

    /** Whether it is an option, and not one of the arguments. */
    public boolean isOption() {
      return name.startsWith("-");
    }

    /** Whether it is there or not, and has no value. */
    public boolean isFlag() {
      return label.isEmpty();
    }
  }

  /** All words but those that every verb has: arguments in their order, then options. */
  public List<Field> fields() {
    return ordered().limit(words.size() - 2L).map(Field::of).toList();
  }

  /**
   * What the next word would be the value of.
   *
   * @param before the words after the verb and before it
   * @return empty where nothing can follow
   */
  public Optional<Field> expected(List<String> before) {
    List<Field> fields = fields();
    List<Field> arguments = fields.stream().filter(field -> !field.isOption()).toList();
    int place = 0;
    Optional<Field> open = Optional.empty();
    for (String word : before) {
      if (open.isPresent()) {
        open = Optional.empty();
      } else if (word.startsWith("--")) {
        open =
            fields.stream()
                .filter(field -> field.name().equals(word) && !field.isFlag())
                .findFirst();
      } else {
        place++;
      }
    }
    if (open.isPresent() || arguments.isEmpty()) {
      return open;
    }
    Field last = arguments.get(arguments.size() - 1);
    return place < arguments.size()
        ? Optional.of(arguments.get(place))
        : Optional.of(last).filter(Field::repeated);
  }

  /** The words themselves, for what makes completion scripts of them. */
  List<Word> all() {
    return List.copyOf(words);
  }

  /** Arguments, then options, then what every verb has: the order of reading. */
  private Stream<Word> ordered() {
    int common = 2;
    return Stream.of(
            words.stream().skip(common).filter(word -> !word.isOption()),
            words.stream().skip(common).filter(Word::isOption),
            words.stream().limit(common))
        .flatMap(part -> part);
  }

  private Word add(
      String name,
      String label,
      String meaning,
      boolean required,
      boolean repeated,
      Reading<?> reading) {
    Word word = new Word(name, label, meaning, required, repeated, reading, new ArrayList<>());
    words.add(word);
    return word;
  }

  // The values of a word were put there by its own reading, so they are of its type.
  @SuppressWarnings("unchecked")
  private static <T> Supplier<T> required(Word word) {
    return () -> (T) word.values().get(0);
  }

  @SuppressWarnings("unchecked")
  private static <T> Supplier<Optional<T>> optional(Word word) {
    return () -> word.values().isEmpty() ? Optional.empty() : Optional.of((T) word.values().get(0));
  }

  @SuppressWarnings("unchecked")
  private static <T> Supplier<List<T>> several(Word word) {
    return () -> List.copyOf((List<T>) word.values());
  }
}
