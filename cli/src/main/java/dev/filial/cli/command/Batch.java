package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Failure;
import dev.filial.cli.frame.LineSource;
import dev.filial.cli.frame.SharedRegister;
import dev.filial.cli.frame.ShellWords;
import dev.filial.cli.frame.Status;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.VerbTable;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Terminal;
import dev.filial.core.answer.Telling;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Statement;
import dev.filial.core.store.StoreException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Runs verb lines one after the other on a register that is open for all of them, and gathers what
 * cannot be taken. Of a long batch only the beginning of what there is to tell is kept.
 */
final class Batch {

  /** So many complaints and warnings are told; of more only the number. */
  static final int TOLD = 200;

  /** So many entries are told to a program, which wants the codes; of more only the number. */
  static final int LISTED = 10_000;

  /** Verbs that write, but not one entry into a register that is open. */
  private static final Set<String> ALONE = Set.of("batch", "import", "table", "sit", "fill");

  /**
   * A line that cannot be taken.
   *
   * @param line its number
   * @param message what is wrong, naming the thing
   * @param remedy what to do instead, possibly empty
   */
  record Complaint(long line, String message, String remedy) {
    String text() {
      String sentence = message.endsWith(".") || message.endsWith("?") ? message : message + ".";
      return "Line " + line + ": " + sentence + (remedy.isEmpty() ? "" : " " + remedy);
    }
  }

  /**
   * An entry that was written.
   *
   * @param line the line it came of
   * @param entry its number
   * @param codes the codes it gave out
   * @param text what it says
   */
  record Written(long line, long entry, List<Code> codes, String text) {}

  /**
   * What came of a batch.
   *
   * @param lines how many lines hold an entry, or cannot be taken
   * @param entries how many entries they make
   * @param bad how many lines cannot be taken
   * @param complaints why, for the first {@value #TOLD} of them
   * @param written the first {@value #LISTED} entries
   * @param warnings what should be known of lines that were taken, for the first {@value #TOLD}
   * @param unsaid how many warnings there are beyond those
   */
  record Outcome(
      long lines,
      long entries,
      long bad,
      List<Complaint> complaints,
      List<Written> written,
      List<String> warnings,
      long unsaid) {

    boolean isGood() {
      return bad == 0;
    }

    /** Why nothing is written, each line on one of its own. */
    String refusal() {
      StringBuilder text = new StringBuilder();
      text.append(bad).append(bad == 1 ? " line of " : " lines of ").append(lines);
      text.append(" cannot be taken; nothing was written");
      complaints.forEach(complaint -> text.append('\n').append(complaint.text()));
      if (bad > complaints.size()) {
        text.append("\nand ").append(bad - complaints.size()).append(" more lines.");
      }
      return text.toString();
    }
  }

  private final VerbTable verbs;
  private final SharedRegister register;
  private final Bench bench;
  private final GivenCodes given = new GivenCodes();
  private final List<Complaint> complaints = new ArrayList<>();
  private final List<Written> written = new ArrayList<>();
  private final List<String> warnings = new ArrayList<>();
  private final List<Code> codes = new ArrayList<>();
  private Bench lineBench;
  private long line;
  private long lines;
  private long entries;
  private long bad;
  private long unsaid;

  private Batch(VerbTable verbs, SharedRegister register, Bench bench) {
    this.verbs = verbs;
    this.register = register;
    this.bench = bench;
    this.lineBench = bench(bench.set());
  }

  /** Runs all lines; the caller keeps what was written if the outcome is good. */
  static Outcome run(LineSource source, VerbTable verbs, SharedRegister register, Bench bench) {
    Batch batch = new Batch(verbs, register, bench);
    register.tell(batch::took);
    for (String text = source.next(); text != null; text = source.next()) {
      batch.line = source.number();
      batch.take(text);
    }
    return new Outcome(
        batch.lines,
        batch.entries,
        batch.bad,
        List.copyOf(batch.complaints),
        List.copyOf(batch.written),
        List.copyOf(batch.warnings),
        batch.unsaid);
  }

  /** Where the lines run: nobody is asked, and the register is the one that is open. */
  private Bench bench(Optional<LocalDate> day) {
    Map<String, String> env = new HashMap<>(bench.env());
    env.remove("FILIAL_BY"); // counts for the batch as a whole, where --by may stand before it
    env.put("FILIAL_REGISTER", register.file().toString());
    Terminal terminal = bench.terminal();
    Terminal silent =
        new Terminal(
            terminal.out(),
            terminal.err(),
            terminal.in(),
            false,
            false,
            terminal.colour(),
            terminal.width());
    return new Bench(silent, Map.copyOf(env), bench.clock(), bench.folder(), register, day);
  }

  private void took(Accepted accepted, Statement statement) {
    entries++;
    List<Code> gave = GivenCodes.of(statement);
    codes.addAll(gave);
    if (written.size() < LISTED) {
      written.add(new Written(line, accepted.entry().number(), gave, Telling.of(statement)));
    }
  }

  private void take(String text) {
    String verb = "";
    @Nullable String label = null;
    codes.clear();
    try {
      if (LineSource.isGarbled(text)) {
        throw new IllegalArgumentException(
            "it holds characters that are no UTF-8; save the text in UTF-8 and try again");
      }
      List<ShellWords.Word> words = ShellWords.of(text);
      if (words.isEmpty()) {
        return;
      }
      int first = 0;
      if (GivenCodes.isLabel(words.get(0))) {
        label = words.get(0).text();
        first++;
      }
      if (first < words.size() && words.get(first).text().equals("filial")) {
        first++;
      }
      if (first == words.size()) {
        throw new IllegalArgumentException("there is no verb in it");
      }
      verb = words.get(first).text();
      if (label == null && verb.endsWith(":")) {
        throw new IllegalArgumentException(
            "\"" + verb + "\" is no verb; a name for what a line gives out stands so: @" + verb);
      }
      List<ShellWords.Word> following = words.subList(first + 1, words.size());
      if (verb.equals("on")) {
        setDay(following, label);
        return;
      }
      run(verb, given.resolved(following));
      given.took(line, codes);
      if (label != null) {
        String name = label;
        label = null;
        given.label(name, line, codes, false);
      }
      lines++;
    } catch (RuntimeException e) {
      complain(e, verb);
      if (label != null) {
        try {
          given.label(label, line, List.of(), true);
        } catch (IllegalArgumentException twice) {
          return; // that line has one complaint already
        }
      }
    }
  }

  private void setDay(List<ShellWords.Word> words, @Nullable String label) {
    StringBuilder text = new StringBuilder();
    words.forEach(word -> text.append(text.isEmpty() ? "" : " ").append(word.text()));
    if (label != null || text.isEmpty()) {
      throw new IllegalArgumentException(
          label == null
              ? "which day? Write on 4 mar, or on 2026-03-04"
              : "a day has no code that " + label + " could stand for");
    }
    lineBench = bench(Optional.of(bench.dates().day(text.toString())));
  }

  private void run(String verb, List<String> typed) {
    Words words = new Words();
    BenchCommand command = verbs.find(verb).apply(words);
    if (ALONE.contains(verb)) {
      throw Trouble.usage(verb + " cannot stand in a batch", "Take this line out.");
    }
    if (!words.records()) {
      throw Trouble.usage(
          verb + " writes no entry, and a batch is of entries", "Take this line out.");
    }
    words.read(typed, lineBench);
    if (words.json() || words.help()) {
      throw Trouble.usage(
          (words.json() ? "--json" : "--help") + " says how to answer, and a line is not answered",
          "Leave it out here; filial batch itself takes it.");
    }
    Answer answer = command.run(lineBench);
    for (String warning : answer.warnings()) {
      if (warnings.size() < TOLD) {
        warnings.add("line " + line + ": " + warning);
      } else {
        unsaid++;
      }
    }
  }

  private void complain(RuntimeException cause, String verb) {
    if (cause instanceof StoreException) {
      throw cause;
    }
    lines++;
    bad++;
    given.failed(line);
    Failure failure =
        cause instanceof GivenCodes.Waits
            ? new Failure(Status.REFUSED, String.valueOf(cause.getMessage()), "")
            : Failure.of(
                cause, verbs.names().contains(verb) ? "How it is used: filial help " + verb : "");
    if (failure.status() == Status.DEFECT) {
      throw cause;
    }
    if (complaints.size() < TOLD) {
      complaints.add(new Complaint(line, failure.message(), failure.remedy()));
    }
  }
}
