package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.NewFolder;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.page.EmptyPage;
import dev.filial.cli.page.IndexPage;
import dev.filial.cli.page.PageLinks;
import dev.filial.cli.screen.ProgressLine;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.ListQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial pages}. */
public final class PagesCommand implements BenchCommand {

  private static final String INDEX = "index.html";

  /** A second's worth or less. */
  private static final int AT_A_TIME = 25;

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
          .say("Wrote " + pages + (pages == 1 ? " page" : " pages") + " into " + folder + ".")
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
    NewFolder.require(to);
    ProgressLine progress = new ProgressLine(bench.terminal());
    try (NewFolder making = NewFolder.of(to)) {
      Written written = write(making, bench, progress);
      making.publish();
      return written;
    } finally {
      progress.clear();
    }
  }

  private boolean all() {
    return all.getAsBoolean();
  }

  /** Lets go of the register every few pages, so that whoever writes an entry need not wait. */
  private Written write(NewFolder making, Bench bench, ProgressLine progress) {
    Pages pages = register.read(bench, view -> new Pages(view, all()));
    List<Code> codes = List.copyOf(pages.codes);
    Map<String, String> failed = new LinkedHashMap<>();
    for (int from = 0; from < codes.size(); from += AT_A_TIME) {
      List<Code> some = codes.subList(from, Math.min(codes.size(), from + AT_A_TIME));
      read(
          bench,
          pages,
          view -> {
            for (Code code : some) {
              write(view, code, pages, making, bench, failed);
              progress.at(++pages.done, "pages", (double) pages.done / codes.size());
            }
          });
    }
    read(
        bench,
        pages,
        view ->
            making.write(
                INDEX, IndexPage.of(IndexCommand.content(view, all(), pages.from(INDEX)))));
    return new Written(NewFile.asTyped(folder.get(), bench), codes.size() + 1, failed);
  }

  private void read(Bench bench, Pages pages, Consumer<RegisterView> work) {
    boolean same =
        register.read(
            bench,
            view -> {
              boolean unchanged = view.size() == pages.entries;
              if (unchanged) {
                work.accept(view);
              }
              return unchanged;
            });
    if (!same) {
      throw Trouble.refused(
          "an entry was written while the pages were made, and they would not all be of the same"
              + " register; none was kept",
          "Make them again.");
    }
  }

  private void write(
      RegisterView view,
      Code code,
      Pages pages,
      NewFolder making,
      Bench bench,
      Map<String, String> failed) {
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
    making.write(name, text);
  }

  /** Which pages there are, and where each thing's lies. */
  private static final class Pages {
    private final Set<Code> codes = new LinkedHashSet<>();
    private final Map<String, String> files = new LinkedHashMap<>();
    private final long entries;
    private int done;

    Pages(RegisterView view, boolean gone) {
      entries = view.size();
      for (ListQuestion.Line line : ListQuestion.of(view).withGone(gone).ask()) {
        Code code = MadePage.codeOf(view, line.code());
        codes.add(code);
        files.put(line.code().text(), DrawCommand.fileName(code, ".html"));
        files.put(code.text(), DrawCommand.fileName(code, ".html"));
      }
      // Another record of a plant has no page of its own.
      for (Item item : view.items(EnumSet.allOf(Item.Kind.class))) {
        if (item.sameAs() != null) {
          String file =
              view.resolved(item.code()).map(kept -> files.get(kept.code().text())).orElse(null);
          if (file != null) {
            files.put(item.code().text(), file);
          }
        }
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
