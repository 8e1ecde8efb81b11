package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.LineSource;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Status;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.VerbTable;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.name.Code;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** {@code filial batch}. */
public final class BatchCommand implements BenchCommand {

  private static final String STANDARD_INPUT = "-";

  /** So many entries are shown to a person. */
  private static final int SHOWN = 20;

  private final VerbTable verbs;
  private final Supplier<Optional<String>> file;
  private final BooleanSupplier check;
  private final OpenRegister register;

  /** Declares its words; {@code verbs} are those that may stand in a line. */
  public BatchCommand(Words words, VerbTable verbs) {
    this.verbs = verbs;
    file =
        words.optionalArgument(
            "FILE",
            "Plain text in UTF-8, one entry a line; - or nothing for standard input.",
            Reading.TEXT);
    check = words.flag("--check", "Only say what could not be taken; write nothing.");
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Each line is typed as after the word filial: cross Rosa Lilo --flowers 3. Words are"
                + " parted as a shell does, a # begins a remark, empty lines do not count. A line on"
                + " 4 mar sets the day of the lines after it, as far as they name none.")
        .describe(
            "^ stands for the code that the line before gave out; @NAME for that of the line that"
                + " begins with @NAME:. Of several codes, ^.2 is the second.")
        .describe(
            "All lines are checked, each with those before it, and all of them written, or none."
                + " While they are, nobody else can write.")
        .example("filial batch evening.txt --check")
        .example("filial batch evening.txt");
  }

  /**
   * What came of the lines.
   *
   * @param checked whether they were only checked
   * @param outcome the entries, or what is wrong
   */
  record Taken(boolean checked, Batch.Outcome outcome) implements Answer {

    /**
     * As JSON.
     *
     * @param checked whether nothing was to be written
     * @param lines how many lines hold an entry
     * @param entries how many entries they make
     * @param bad how many lines cannot be taken
     * @param complaints why
     * @param written the first of the entries, {@value Batch#LISTED} at most
     * @param unlisted how many entries there are beyond those
     * @param warnings what should be known
     */
    record Told(
        boolean checked,
        long lines,
        long entries,
        long bad,
        List<Batch.Complaint> complaints,
        List<Batch.Written> written,
        long unlisted,
        List<String> warnings) {}

    @Override
    public Object json() {
      return new Told(
          checked,
          outcome.lines(),
          outcome.entries(),
          outcome.bad(),
          outcome.complaints(),
          outcome.written(),
          outcome.isGood() ? outcome.entries() - outcome.written().size() : 0,
          warnings());
    }

    @Override
    public Status status() {
      return outcome.isGood() ? Status.DONE : Status.REFUSED;
    }

    @Override
    public List<String> warnings() {
      if (outcome.unsaid() == 0) {
        return outcome.warnings();
      }
      List<String> all = new ArrayList<>(outcome.warnings());
      all.add("and " + outcome.unsaid() + " more");
      return all;
    }

    @Override
    public void show(Screen screen) {
      if (!outcome.isGood()) {
        for (String line : outcome.refusal().split("\n", -1)) {
          screen.say(line.endsWith(".") || line.endsWith("?") ? line : line + ".");
        }
        return;
      }
      if (outcome.lines() == 0) {
        screen.say("There is no entry in it; nothing was written.");
        return;
      }
      if (checked) {
        screen.say(
            number(outcome.lines(), "line")
                + " can be taken and make "
                + number(outcome.entries(), "entry", "entries")
                + "; nothing was written.");
        return;
      }
      screen.say(
          "Written: "
              + number(outcome.entries(), "entry", "entries")
              + " of "
              + number(outcome.lines(), "line")
              + ".");
      Table table = new Table().numbers("line").numbers("entry").column("code").column("it says");
      outcome.written().stream()
          .limit(SHOWN)
          .forEach(one -> table.row(one.line(), one.entry(), codes(one), one.text()));
      screen.table(table);
      long more = outcome.entries() - SHOWN;
      screen.next(
          more > 0
              ? "the other " + more + ": filial history --last " + outcome.entries()
              : "if one of them was wrong: filial strike ENTRY");
    }

    private static String codes(Batch.Written one) {
      List<Code> codes = one.codes();
      return codes.size() > 3
          ? codes.get(0).text() + " … " + codes.get(codes.size() - 1).text()
          : codes.stream().map(Code::text).collect(Collectors.joining(", "));
    }

    private static String number(long count, String one) {
      return number(count, one, one + "s");
    }

    private static String number(long count, String one, String several) {
      return count + " " + (count == 1 ? one : several);
    }
  }

  @Override
  public Answer run(Bench bench) {
    boolean only = check.getAsBoolean();
    Batch.Outcome outcome = outcome(bench, only);
    if (!only && !outcome.isGood()) {
      throw Trouble.refused(
          outcome.refusal(), "Mend " + (outcome.bad() == 1 ? "it" : "them") + " and try again.");
    }
    return new Taken(only, outcome);
  }

  private Batch.Outcome outcome(Bench bench, boolean only) {
    String name = file.get().orElse(STANDARD_INPUT);
    if (name.equals(STANDARD_INPUT)) {
      return run(new LineSource(standardInput(bench)), bench, only);
    }
    Path path = Reading.FILE.read(name, bench);
    if (Files.isDirectory(path)) {
      throw Trouble.file(path + " is a folder, not a text", "Name the file in it.");
    }
    // What is no UTF-8 is told with its line, so it is let through here.
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(Files.newInputStream(path), StandardCharsets.UTF_8))) {
      return run(new LineSource(in), bench, only);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is typed is awaited before the register is opened, so that nobody waits for a typist. */
  private static java.io.Reader standardInput(Bench bench) {
    if (!bench.terminal().asks()) {
      return bench.terminal().in();
    }
    bench.terminal().err().print("One entry a line; Ctrl-D on a line of its own ends them.\n");
    bench.terminal().err().flush();
    return new StringReader(
        bench.terminal().in().lines().collect(Collectors.joining("\n", "", "\n")));
  }

  private Batch.Outcome run(LineSource lines, Bench bench, boolean only) {
    return register.share(
        bench,
        shared -> Batch.run(lines, verbs, shared, bench),
        outcome -> !only && outcome.isGood());
  }
}
