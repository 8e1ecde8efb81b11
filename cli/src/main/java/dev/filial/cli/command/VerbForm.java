package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.TypedLines;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Asks for the words of a verb one after the other, as the fields of a form. */
final class VerbForm {

  private static final String BACK = "<";
  private static final String REST = ".";
  private static final String GIVE_UP = "!";

  /** Said once for the whole sitting, and not of each entry. */
  private static final Set<String> NOT_ASKED = Set.of("--register", "--by");

  private final TypedLines lines;
  private final Proposals proposals;
  private final Bench bench;

  VerbForm(TypedLines lines, Proposals proposals, Bench bench) {
    this.lines = lines;
    this.proposals = proposals;
    this.bench = bench;
  }

  /** The words after the verb; empty if it was given up. */
  Optional<List<String>> fill(Words words) {
    List<Words.Field> fields =
        words.fields().stream().filter(field -> !NOT_ASKED.contains(field.name())).toList();
    List<List<String>> values = new ArrayList<>();
    fields.forEach(field -> values.add(List.of()));
    say("Enter leaves a field out, * must be there; < goes back, . is enough, ! gives up.");
    int at = 0;
    while (at < fields.size()) {
      Words.Field field = fields.get(at);
      if (!field.isOption() && isShut(fields, values, at)) {
        at++;
        continue;
      }
      String answer = ask(field, fields, values);
      if (answer == null || answer.equals(GIVE_UP)) {
        return Optional.empty();
      }
      if (answer.equals(BACK)) {
        at = before(fields, values, at);
        continue;
      }
      boolean enough = answer.equals(REST);
      if ((enough || answer.isEmpty()) && field.required()) {
        say("This must be there: " + field.meaning());
        continue;
      }
      if (enough && nextRequired(fields, at + 1).isPresent()) {
        at = nextRequired(fields, at + 1).get();
        continue;
      }
      if (enough) {
        break;
      }
      List<String> given = answer.isEmpty() ? List.of() : given(field, answer, fields, values);
      String last = given.isEmpty() ? "" : given.get(given.size() - 1);
      if (last.equals(GIVE_UP)) {
        return Optional.empty();
      }
      values.set(at, last.equals(REST) ? given.subList(0, given.size() - 1) : given);
      at = last.equals(REST) ? nextRequired(fields, at + 1).orElse(fields.size()) : at + 1;
    }
    return Optional.of(typed(fields, values));
  }

  /** An argument cannot follow one that was left out. */
  private static boolean isShut(List<Words.Field> fields, List<List<String>> values, int at) {
    return at > 0 && !fields.get(at - 1).isOption() && values.get(at - 1).isEmpty();
  }

  private static int before(List<Words.Field> fields, List<List<String>> values, int at) {
    int back = Math.max(0, at - 1);
    while (back > 0 && !fields.get(back).isOption() && isShut(fields, values, back)) {
      back--;
    }
    return back;
  }

  private static Optional<Integer> nextRequired(List<Words.Field> fields, int from) {
    for (int i = from; i < fields.size(); i++) {
      if (fields.get(i).required()) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private @Nullable String ask(
      Words.Field field, List<Words.Field> fields, List<List<String>> values) {
    say("  " + field.meaning());
    String name = field.isOption() ? field.name().substring(2) : field.name();
    String usual =
        field.name().equals("--date") ? " [" + bench.day() + "]" : field.isFlag() ? " [y/N]" : "";
    String line =
        lines.text(
            name + (field.required() ? " *" : "") + usual + ": ",
            (before, begun) ->
                field.isFlag() ? List.of() : proposals.values(field, known(fields, values), begun));
    return line == null ? null : line.strip();
  }

  private static List<String> known(List<Words.Field> fields, List<List<String>> values) {
    List<String> known = new ArrayList<>();
    for (int i = 0; i < fields.size(); i++) {
      if (!fields.get(i).isOption()) {
        known.addAll(values.get(i));
      }
    }
    return known;
  }

  /**
   * One value, or of a repeated field as many as are given; at the end the sign that no more of the
   * form is wanted, if that was given.
   */
  private List<String> given(
      Words.Field field, String first, List<Words.Field> fields, List<List<String>> values) {
    if (field.isFlag()) {
      return first.toLowerCase(java.util.Locale.ROOT).startsWith("y") ? List.of("") : List.of();
    }
    List<String> given = new ArrayList<>(List.of(first));
    // The words of a sentence are one text here, where no shell parts them.
    while (field.repeated() && !field.label().equals("TEXT")) {
      String more =
          lines.text(
              "  and: ", (before, begun) -> proposals.values(field, known(fields, values), begun));
      if (more == null || more.isBlank()) {
        break;
      }
      if (more.strip().equals(BACK)) {
        given.remove(given.size() - 1);
        if (given.isEmpty()) {
          break;
        }
        continue;
      }
      given.add(more.strip());
      if (more.strip().equals(REST) || more.strip().equals(GIVE_UP)) {
        break;
      }
    }
    return List.copyOf(given);
  }

  private static List<String> typed(List<Words.Field> fields, List<List<String>> values) {
    List<String> typed = new ArrayList<>();
    List<String> arguments = new ArrayList<>();
    for (int i = 0; i < fields.size(); i++) {
      Words.Field field = fields.get(i);
      for (String value : values.get(i)) {
        if (!field.isOption()) {
          arguments.add(value);
        } else if (field.isFlag()) {
          typed.add(field.name());
        } else {
          // In one word, so that a value may begin with a hyphen.
          typed.add(field.name() + "=" + value);
        }
      }
    }
    Set<String> hyphens = new HashSet<>();
    arguments.stream().filter(argument -> argument.startsWith("-")).forEach(hyphens::add);
    if (!hyphens.isEmpty()) {
      typed.add("--");
      typed.addAll(arguments);
    } else {
      typed.addAll(0, arguments);
    }
    return List.copyOf(typed);
  }

  private void say(String text) {
    bench.terminal().err().print(text + "\n");
    bench.terminal().err().flush();
  }
}
