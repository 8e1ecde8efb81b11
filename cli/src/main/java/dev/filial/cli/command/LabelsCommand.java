package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.label.LabelGrid;
import dev.filial.cli.label.LabelSheets;
import dev.filial.cli.label.LabelSheets.Printed;
import dev.filial.cli.label.LabelStyle;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.RegisterPedigree;
import dev.filial.core.answer.TagQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.register.RegisterView;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial labels}. */
public final class LabelsCommand implements BenchCommand {

  /** As many things are named one by one. */
  private static final int NAMED = 8;

  private final ThingsToLabel things;
  private final LabelPaper paper;
  private final BooleanSupplier qr;
  private final BooleanSupplier leaving;
  private final Supplier<Optional<Path>> file;
  private final OpenRegister register;

  /** Declares its words. */
  public LabelsCommand(Words words) {
    things = new ThingsToLabel(words);
    paper = new LabelPaper(words);
    qr =
        words.flag(
            "--qr", "With a QR code of your mark, the code and a character that proves them.");
    leaving = words.flag("--leaving", "With your mark before the code, for what leaves the house.");
    file =
        words.option(
            "--to",
            "FILE",
            "The file to write, which is not there yet; otherwise labels.html, or the next number.",
            Reading.FILE);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Writes a file that any browser prints in the exact size: sheets of labels for packets,"
                + " or of two-sided tags to be folded, the code again on the end that is buried."
                + " The code is as large as there is room for; what else fits is chosen as for"
                + " filial tag.")
        .example("filial labels 26-013")
        .example("filial labels --in kitchen --for tags --qr")
        .example("filial labels 26-013 --for packets --size 70x37 --skip 5");
  }

  /**
   * The answer.
   *
   * @param file what was written
   * @param name the same, from the current folder if it lies there
   * @param style packets or tags
   * @param sheets how many sheets of paper
   * @param columns labels across
   * @param rows labels down
   * @param paper the sheet, as text
   * @param size a label, or one side of a tag, as text
   * @param labels each label
   * @param passedOver what came of a cross and takes the other sort of label
   * @param warnings what should be known
   */
  record Labels(
      Path file,
      String name,
      LabelStyle style,
      int sheets,
      int columns,
      int rows,
      String paper,
      String size,
      List<Printed> labels,
      List<Code> passedOver,
      List<String> warnings)
      implements Answer {

    @Override
    public Object json() {
      return new Json(
          file,
          style,
          sheets,
          columns,
          rows,
          paper,
          size,
          labels,
          passedOver.stream().map(Code::text).toList());
    }

    /**
     * What is written under {@code --json}.
     *
     * @param file what was written
     * @param style packets or tags
     * @param sheets how many sheets of paper
     * @param columns labels across
     * @param rows labels down
     * @param paper the sheet, as text
     * @param size a label, or one side of a tag, as text
     * @param labels each label
     * @param passedOver what takes the other sort of label
     */
    record Json(
        Path file,
        LabelStyle style,
        int sheets,
        int columns,
        int rows,
        String paper,
        String size,
        List<Printed> labels,
        List<String> passedOver) {}

    @Override
    public void show(Screen screen) {
      boolean packets = style == LabelStyle.PACKETS;
      screen.say(
          "Wrote "
              + count(labels.size(), packets ? "label" : "tag")
              + (packets ? " of " : " with two sides of ")
              + size
              + " to "
              + name
              + ": "
              + count(sheets, "sheet")
              + " of "
              + paper
              + ", "
              + columns
              + " across and "
              + rows
              + " down.");
      screen.field("code", heights() + " high");
      int shown = 0;
      int more = 0;
      for (Printed label : labels) {
        if (!label.leftOut().isEmpty() && shown++ < NAMED) {
          screen.field(
              "no room for",
              label.code().replace(' ', '\u00A0') + ": " + String.join("; ", label.leftOut()));
        } else if (!label.leftOut().isEmpty()) {
          more++;
        }
      }
      if (more > 0) {
        screen.field("no room for", "all of what belongs on " + more + " more; --json names it");
      }
      if (!passedOver.isEmpty()) {
        screen.field(
            packets ? "takes tags" : "in packets",
            CodeList.text(passedOver) + ": --for " + (packets ? "tags" : "packets"));
      }
      screen.next("open it in a browser and print it at 100 %, without margins.");
    }

    private String heights() {
      double least = labels.stream().mapToDouble(Printed::codeHeight).min().orElseThrow();
      double most = labels.stream().mapToDouble(Printed::codeHeight).max().orElseThrow();
      return least == most ? least + " mm" : least + " to " + most + " mm";
    }

    private static String count(int count, String thing) {
      return count == 1 ? "1 " + thing : count + " " + thing + "s";
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, view -> labels(bench, view));
  }

  private Answer labels(Bench bench, RegisterView view) {
    ThingsToLabel.Found found = things.find(view);
    LabelSheets.Order order = paper.order(found.style(), qr.getAsBoolean());
    LabelSheets sheets = LabelSheets.of(order, belonging(view, found.codes()));
    Path written =
        file.get()
            .map(
                to -> {
                  NewFile.write(to, sheets::write);
                  return to;
                })
            .orElseGet(() -> NewFile.writeNext(bench.folder(), "labels", sheets::write));
    LabelGrid grid = order.grid();
    Path folder = bench.folder();
    return new Labels(
        written,
        (written.startsWith(folder) ? folder.relativize(written) : written).toString(),
        found.style(),
        sheets.sheets(),
        grid.columns(),
        grid.rows(),
        grid.paper().text(),
        order.side().text(),
        sheets.printed(),
        found.passedOver(),
        warnings(sheets));
  }

  private List<TagQuestion.Label> belonging(RegisterView view, List<Code> codes) {
    TagQuestion plain = TagQuestion.of(view).withMark(leaving.getAsBoolean());
    TagQuestion question = withPedigree(plain, view, codes);
    return codes.stream().map(question::label).toList();
  }

  /** What stands behind all of them is looked up once. */
  private static TagQuestion withPedigree(
      TagQuestion question, RegisterView view, List<Code> codes) {
    try {
      return question.withPedigree(RegisterPedigree.of(view, codes, false));
    } catch (PedigreeException e) {
      // One of them cannot be computed with; the others are told their generation one by one.
      return question;
    }
  }

  private static List<String> warnings(LabelSheets sheets) {
    List<String> warnings = new ArrayList<>();
    warnOf(warnings, sheets.small(), "the code on ");
    warnOf(warnings, sheets.smallWhenBuried(), "the code once more on the buried end of ");
    return warnings;
  }

  private static void warnOf(List<String> warnings, List<String> small, String where) {
    if (!small.isEmpty()) {
      warnings.add(
          "less than 2 mm high and hard to read: "
              + where
              + (small.size() > NAMED ? small.size() + " labels" : String.join(", ", small))
              + "; a wider label has room for a larger one");
    }
  }
}
