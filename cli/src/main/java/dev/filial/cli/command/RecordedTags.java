package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Wrap;
import dev.filial.core.answer.TagQuestion;
import dev.filial.core.answer.Telling;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import java.util.ArrayList;
import java.util.List;

/**
 * An entry that gave out codes, or sent things away, each of which wants a tag.
 *
 * @param entry the number of the entry
 * @param codes the codes it gave out or speaks of
 * @param text what it says
 * @param tags what to write on each tag
 * @param next what comes next at the bench, or what to type next
 * @param warnings what looked unlikely and was taken all the same, and what to mind
 */
record RecordedTags(
    long entry,
    List<Code> codes,
    String text,
    List<OneTag> tags,
    String next,
    List<String> warnings)
    implements Answer {

  /** More tags than this are not all shown: they differ in the last number only. */
  private static final int SHOWN = 12;

  /**
   * What to write on one of the tags.
   *
   * @param code whose it is
   * @param lines its lines
   */
  record OneTag(Code code, List<String> lines) {}

  static RecordedTags of(
      OpenRegister.Writing writing, Accepted accepted, List<Code> codes, String next) {
    return of(writing, accepted, codes, next, TagQuestion.of(writing.view()));
  }

  /** The same for what leaves the house, with the grower's mark before each code. */
  static RecordedTags travelling(
      OpenRegister.Writing writing, Accepted accepted, List<Code> codes, String next) {
    return of(writing, accepted, codes, next, TagQuestion.of(writing.view()).withMark(true));
  }

  private static RecordedTags of(
      OpenRegister.Writing writing,
      Accepted accepted,
      List<Code> codes,
      String next,
      TagQuestion question) {
    return new RecordedTags(
        accepted.entry().number(),
        codes,
        writing.isTold() ? Telling.of(accepted.entry().statement()) : "",
        writing.isTold()
            ? codes.stream()
                .map(code -> new OneTag(code, question.ask(code).text().lines()))
                .toList()
            : List.of(),
        next,
        writing.warnings());
  }

  /** The same with further things to mind. */
  RecordedTags withWarnings(List<String> more) {
    List<String> all = new ArrayList<>(warnings);
    all.addAll(more);
    return new RecordedTags(entry, codes, text, tags, next, List.copyOf(all));
  }

  @Override
  public void show(Screen screen) {
    screen.say("Entry " + entry + ": " + text + (text.endsWith(".") ? "" : "."));
    if (tags.size() == 1) {
      screen.tag(tags.get(0).lines().toArray(String[]::new));
    } else if (!tags.isEmpty()) {
      screen.say("Write on the tags, each of which is one line here, | where a new line begins:");
      lines().forEach(line -> screen.indented(2, Wrap.keepingDoubleSpaces(line)));
    }
    if (!next.isEmpty()) {
      screen.next(next);
    }
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    int last = tags.size() - 1;
    for (int i = 0; i <= last; i++) {
      if (tags.size() > SHOWN && i > 1 && i < last) {
        if (i == 2) {
          lines.add("... and so on, to");
        }
        continue;
      }
      lines.add(String.join(" | ", tags.get(i).lines()));
    }
    return lines;
  }
}
