package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.name.Code;
import dev.filial.core.register.Photograph;
import dev.filial.core.register.Photographed;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial photo}. */
public final class PhotoCommand implements BenchCommand {

  private final Supplier<String> what;
  private final Supplier<List<Path>> files;
  private final Supplier<List<String>> also;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public PhotoCommand(Words words) {
    what = words.argument("WHAT", "A plant, a pot, a cross or a seed lot.", Reading.THING);
    files = words.arguments("FILE", "The pictures.", true, Reading.FILE);
    also =
        words.repeatedOption(
            "--also", "WHAT", "What else is on them; may be given several times.", Reading.THING);
    date = new DateOption(words, "they were taken");
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "The register keeps where a picture lies and its SHA-256, not the picture. One that lies"
                + " in the register's folder, or below it, is named from there, so that both can be"
                + " moved together. What a trait looked like goes with: filial observe --photo.")
        .example("filial photo Rosa rosa.jpg --date 2026-06-10");
  }

  /**
   * One of the pictures.
   *
   * @param entry the number of its entry
   * @param path where the register says that it lies
   * @param sha256 its digest
   */
  record Attached(long entry, String path, String sha256) {}

  /**
   * What was written.
   *
   * @param codes what is on the pictures
   * @param pictures each of them
   * @param warnings what looked unlikely and was taken all the same
   */
  record Told(List<Code> codes, List<Attached> pictures, List<String> warnings) implements Answer {
    @Override
    public void show(Screen screen) {
      Table table = new Table().numbers("entry").column("picture").column("SHA-256 begins");
      pictures.forEach(one -> table.row(one.entry(), one.path(), one.sha256().substring(0, 12)));
      screen
          .say(
              (pictures.size() == 1 ? "A picture" : pictures.size() + " pictures")
                  + " of "
                  + String.join(", ", codes.stream().map(Code::text).toList())
                  + ":")
          .table(table)
          .next(
              "whether they still lie there: filial photos "
                  + CommandLine.quoted(codes.get(0).text()));
    }
  }

  @Override
  public Answer run(Bench bench) {
    // Read before anything is written, since a film may take a while.
    List<Photograph> pictures = new ArrayList<>();
    for (Path file : files.get()) {
      pictures.add(PictureFile.read(file, register, bench));
    }
    return register.write(bench, writing -> record(writing, pictures, bench));
  }

  private Answer record(Writing writing, List<Photograph> pictures, Bench bench) {
    List<Code> codes = new ArrayList<>();
    codes.add(writing.find(what.get()).code());
    also.get().forEach(text -> codes.add(writing.find(text).code()));
    List<Attached> attached = new ArrayList<>();
    for (Photograph picture : pictures) {
      long entry =
          writing
              .append(
                  new Photographed(codes, picture, date.orToday(bench), remark.get().orElse(null)))
              .entry()
              .number();
      attached.add(new Attached(entry, picture.path(), picture.sha256()));
    }
    return new Told(List.copyOf(codes), List.copyOf(attached), writing.warnings());
  }
}
