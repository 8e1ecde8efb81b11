package dev.filial.cli.frame;

import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.TagQuestion;
import dev.filial.core.answer.Telling;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * An entry that was taken: what was written in the book, what to write on the tag, what comes next.
 *
 * @param entry the number of the (last) entry
 * @param code the code it gave out or speaks of, or null
 * @param text what it says
 * @param tag what to write on the tag, line by line; empty when there is nothing to write
 * @param next what comes next at the bench, or what to type next; empty when nothing does
 * @param warnings what looked unlikely and was taken all the same
 */
public record Recorded(
    long entry,
    @Nullable Code code,
    String text,
    List<String> tag,
    String next,
    List<String> warnings)
    implements Answer {

  /** Of a longer name its beginning tells which is meant. */
  private static final int LONGEST_TOLD = 60;

  /** An entry that gives nothing to write on a tag. */
  public static Recorded of(
      OpenRegister.Writing writing, Accepted accepted, @Nullable Code code, String next) {
    return new Recorded(
        accepted.entry().number(),
        code,
        writing.isTold() ? Telling.of(accepted.entry().statement()) : "",
        List.of(),
        next,
        writing.warnings());
  }

  /** The same with the text for the tag of {@code tagged}, if anybody reads it. */
  public Recorded withTag(OpenRegister.Writing writing, Code tagged) {
    return writing.isTold() ? withTag(writing.view(), tagged) : this;
  }

  /** The same with the text for the tag of {@code tagged}. */
  public Recorded withTag(RegisterView view, Code tagged) {
    return withTag(TagQuestion.of(view), tagged);
  }

  /** The same with the text for a tag, as the question gives it. */
  public Recorded withTag(TagQuestion question, Code tagged) {
    TagQuestion.Tag told = question.ask(tagged);
    Recorded with = new Recorded(entry, code, text, told.text().lines(), next, warnings);
    List<String> names = question.namesWithoutRoom(told);
    return names.isEmpty()
        ? with
        : with.withWarning(
            "no room on the tag for "
                + names.stream().map(Recorded::shortened).collect(Collectors.joining(", ")));
  }

  private static String shortened(String name) {
    return name.codePointCount(0, name.length()) <= LONGEST_TOLD
        ? name
        : name.substring(0, name.offsetByCodePoints(0, LONGEST_TOLD)) + "…";
  }

  /** The same with something more to be known. */
  public Recorded withWarning(String more) {
    List<String> all = new ArrayList<>(warnings);
    all.add(more);
    return new Recorded(entry, code, text, tag, next, List.copyOf(all));
  }

  @Override
  public void show(Screen screen) {
    screen.say("Entry " + entry + ": " + text + (text.endsWith(".") ? "" : "."));
    if (!tag.isEmpty()) {
      screen.tag(tag.toArray(String[]::new));
    }
    if (!next.isEmpty()) {
      screen.next(next);
    }
  }
}
