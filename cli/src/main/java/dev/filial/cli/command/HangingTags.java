package dev.filial.cli.command;

import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.core.answer.HangingQuestion;
import dev.filial.core.answer.HangingQuestion.Hanging;
import dev.filial.core.answer.HangingQuestion.Touched;
import dev.filial.core.answer.TagQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterView;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What hangs on an entry that is put right, and what their tags said before that.
 *
 * @param tags the lines of the tag of each thing; of too many, none
 */
record HangingTags(Map<Code, List<String>> tags) {

  /** So many tags are compared; of more it is only said that there are more. */
  private static final int MOST_COMPARED = 500;

  /** Before the entry is put right; nothing where nobody reads the answer. */
  static HangingTags of(Writing writing, long entry) {
    return new HangingTags(
        writing.isTold() ? tags(writing.view(), below(writing.view(), entry)) : Map.of());
  }

  /** What came of the things that the entry speaks of. */
  private static List<Touched> below(RegisterView view, long entry) {
    return HangingQuestion.of(view).onEntry(entry).things().stream()
        .filter(thing -> thing.steps() > 0)
        .toList();
  }

  private static Map<Code, List<String>> tags(RegisterView view, List<Touched> things) {
    Map<Code, List<String>> tags = new LinkedHashMap<>();
    if (things.size() <= MOST_COMPARED) {
      TagQuestion question = TagQuestion.of(view);
      things.forEach(thing -> tags.put(thing.code(), question.ask(thing.code()).text().lines()));
    }
    return tags;
  }

  /** In a sentence, once it was put right; empty where nothing hangs on it. */
  String now(Writing writing, long entry) {
    if (!writing.isTold()) {
      return "";
    }
    Hanging hanging = HangingQuestion.of(writing.view()).onEntry(entry);
    List<Touched> things = below(writing.view(), entry);
    if (things.isEmpty()) {
      return "";
    }
    long others =
        things.stream()
            .filter(thing -> !writing.view().item(thing.code()).orElseThrow().kind().isPlant())
            .count();
    Map<Code, List<String>> now = tags(writing.view(), things);
    long other =
        now.entrySet().stream()
            .filter(tag -> !tag.getValue().equals(tags.get(tag.getKey())))
            .count();
    return "on it "
        + (things.size() == 1 && hanging.gifts().isEmpty() ? "hangs " : "hang ")
        + Stream.of(
                number(things.size() - others, "plant"),
                number(others, "other thing"),
                number(hanging.gifts().size(), "gift"))
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(", "))
        + (now.isEmpty()
            ? ", whose tags may say something else now"
            : other == 0
                ? "; their tags stay as they are"
                : other == 1
                    ? "; the tag of 1 of them says something else now"
                    : "; the tags of " + other + " of them say something else now")
        + ". They are listed by: filial hangs "
        + entry;
  }

  private static String number(long count, String thing) {
    return count == 0 ? "" : count + " " + thing + (count == 1 ? "" : "s");
  }
}
