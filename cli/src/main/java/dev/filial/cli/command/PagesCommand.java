package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.page.EmptyPage;
import dev.filial.cli.page.IndexPage;
import dev.filial.cli.page.PageLinks;
import dev.filial.cli.screen.ProgressLine;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.ListQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.register.RegisterView;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial pages}. */
public final class PagesCommand implements BenchCommand {

  private static final String INDEX = "index.html";

  private final Supplier<Path> folder;
  private final BooleanSupplier all;
  private final OpenRegister register;
  private final PhotosOnPage photos;

  /** Declares its words. */
  public PagesCommand(Words words) {
    folder = words.argument("FOLDER", "The folder to make, which is not there yet.", Reading.FILE);
    all = words.flag("--all", "Also what has died, left or was used up, and what was never here.");
    register = OpenRegister.toRead(words);
    photos = new PhotosOnPage(words, register);
    words
        .describe(
            "Writes a folder of pages that lead to each other: one of the whole register,"
                + " index.html, and one of every plant, cross and packet, as filial index and"
                + " filial page write them. It can be copied and sent as it is, and needs no"
                + " network.")
        .example("filial pages bench-2026")
        .example("filial pages everything --all");
  }

  /**
   * What was written.
   *
   * @param folder where
   * @param pages how many pages, the index among them
   * @param failed whose pages only say why there is nothing on them
   */
  record Written(String folder, int pages, Map<String, String> failed) implements Answer {
    @Override
    public void show(Screen screen) {
      screen
          .say("Wrote " + pages + " pages into " + folder + ".")
          .next("open " + folder + "/" + INDEX + " in a browser");
    }

    @Override
    public List<String> warnings() {
      List<String> told = new ArrayList<>();
      failed.forEach((code, why) -> told.add("the page of " + code + " says no more than: " + why));
      return told;
    }
  }

  @Override
  public Answer run(Bench bench) {
    Path to = folder.get();
    NewFile.require(to);
    ProgressLine progress = new ProgressLine(bench.terminal());
    try (NewFolder making = NewFolder.of(to)) {
      Written written =
          register.read(
              bench, view -> write(view, new Pages(view, all()), making, bench, progress));
      making.publish();
      return written;
    } finally {
      progress.clear();
    }
  }

  private boolean all() {
    return all.getAsBoolean();
  }

  private Written write(
      RegisterView view, Pages pages, NewFolder making, Bench bench, ProgressLine progress) {
    Map<String, String> failed = new LinkedHashMap<>();
    for (Code code : pages.codes) {
      String name = DrawCommand.fileName(code, ".html");
      PageLinks links = pages.from(name);
      String text;
      try {
        text = MadePage.of(view, code, links, photos.on(folder.get().resolve(name), bench)).text();
      } catch (PedigreeException e) {
        // One pedigree that cannot be reckoned with is no reason to have no pages.
        String why = String.valueOf(e.getMessage());
        failed.put(code.text(), why);
        text = EmptyPage.of(code.text(), why, links);
      }
      NewFile.write(making.folder().resolve(name), text);
      progress.at(++pages.done, "pages", (double) pages.done / pages.codes.size());
    }
    NewFile.write(
        making.folder().resolve(INDEX),
        IndexPage.of(IndexCommand.content(view, all(), pages.from(INDEX))));
    return new Written(NewFile.asTyped(folder.get(), bench), pages.codes.size() + 1, failed);
  }

  /** Which pages there are, and where each thing's lies. */
  private static final class Pages {
    private final Set<Code> codes = new LinkedHashSet<>();
    private final Map<String, String> files = new LinkedHashMap<>();
    private int done;

    Pages(RegisterView view, boolean gone) {
      for (ListQuestion.Line line : ListQuestion.of(view).withGone(gone).ask()) {
        Code code = MadePage.codeOf(view, line.code());
        codes.add(code);
        files.put(line.code().text(), DrawCommand.fileName(code, ".html"));
        files.put(code.text(), DrawCommand.fileName(code, ".html"));
      }
    }

    /** The links of one page, which does not lead to itself. */
    PageLinks from(String page) {
      return new PageLinks() {
        @Override
        public @Nullable String to(String code) {
          String file = files.get(code);
          return page.equals(file) ? null : file;
        }

        @Override
        public @Nullable String index() {
          return page.equals(INDEX) ? null : INDEX;
        }
      };
    }
  }
}
