package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Status;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.PicturesQuestion;
import dev.filial.core.answer.PicturesQuestion.Picture;
import dev.filial.core.answer.PicturesQuestion.State;
import dev.filial.core.name.Code;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** {@code filial photos}. */
public final class PhotosCommand implements BenchCommand {

  private final Supplier<Optional<String>> what;
  private final OpenRegister register;

  /** Declares its words. */
  public PhotosCommand(Words words) {
    what =
        words.optionalArgument(
            "WHAT", "Only pictures of this; otherwise all there are.", Reading.THING);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Each picture is read and compared with the digest that was kept when it was attached."
                + " Where one is missing, changed or cannot be read, the exit status is 1. Nothing but"
                + " the files named in the register is read.")
        .example("filial photos");
  }

  /**
   * The answer.
   *
   * @param pictures each of them, in order of entry
   */
  record Told(List<Picture> pictures) implements Answer {
    @Override
    public Status status() {
      return wanting() == 0 ? Status.DONE : Status.REFUSED;
    }

    private long wanting() {
      return pictures.stream().filter(picture -> picture.state() != State.THERE).count();
    }

    @Override
    public void show(Screen screen) {
      if (pictures.isEmpty()) {
        screen.say("There is no picture yet.").next("attach one: filial photo WHAT FILE");
        return;
      }
      Table table =
          new Table()
              .numbers("entry")
              .column("day")
              .column("of")
              .column("picture")
              .column("it is")
              .column("remark");
      for (Picture picture : pictures) {
        table.row(
            picture.entry(),
            picture.date() == null ? "" : picture.date(),
            picture.codes().stream().map(Code::text).collect(Collectors.joining(", ")),
            picture.path(),
            word(picture.state()),
            picture.remark() == null ? "" : picture.remark());
      }
      screen.table(table);
      if (wanting() > 0) {
        screen.next(
            "put them back where they were; or say where one lies now: filial amend ENTRY"
                + " photograph.path=PATH");
      }
    }

    private static String word(State state) {
      return switch (state) {
        case THERE -> "there";
        case CHANGED -> "CHANGED";
        case MISSING -> "MISSING";
        case UNREADABLE -> "NOT TO BE READ";
        case OUTSIDE -> "OUTSIDE THE FOLDER";
      };
    }
  }

  @Override
  public Answer run(Bench bench) {
    Path folder = Objects.requireNonNull(register.existingFile(bench).toAbsolutePath().getParent());
    return register.read(
        bench,
        view -> {
          PicturesQuestion question = PicturesQuestion.of(view, folder);
          return new Told(
              what.get()
                  .map(text -> question.of(Finding.in(view).one(text).code()))
                  .orElseGet(question::all));
        });
  }
}
