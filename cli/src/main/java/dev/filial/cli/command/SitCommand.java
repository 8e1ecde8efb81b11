package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.Failure;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.ShellWords;
import dev.filial.cli.frame.Status;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.VerbTable;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.EditedLines;
import dev.filial.cli.screen.PlainLines;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Terminal;
import dev.filial.cli.screen.TypedLines;
import dev.filial.cli.screen.Wrap;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** {@code filial sit}. */
public final class SitCommand implements BenchCommand {

  /** Verbs that talk to the terminal themselves. */
  private static final Set<String> NOT_HERE = Set.of("sit", "fill", "batch");

  private static final Set<String> ENDS = Set.of(".", "done", "exit", "quit");

  private final VerbTable verbs;
  private final Function<Bench, TypedLines> typing;
  private final OpenRegister register;

  /** Declares its words; {@code verbs} are those that can be typed. */
  public SitCommand(Words words, VerbTable verbs) {
    this(words, verbs, SitCommand::lines);
  }

  /** The same, typed at {@code typing}. */
  public SitCommand(Words words, VerbTable verbs, Function<Bench, TypedLines> typing) {
    this.verbs = verbs;
    this.typing = typing;
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Stays at the prompt until done, exit or Ctrl-D. What is typed is a verb as after the"
                + " word filial; each entry is written at once. A verb alone opens its form, field by"
                + " field. The Tab key completes verbs, options, codes, names, taxa, traits and"
                + " states; the arrow keys bring back what was typed. on 4 mar sets the day of what"
                + " follows.")
        .describe("On a terminal that can do no more (TERM=dumb) there are plain prompts.")
        .example("filial sit");
  }

  /**
   * What was done.
   *
   * @param entries how many lines wrote something
   */
  record Sat(long entries) implements Answer {
    @Override
    public void show(Screen screen) {
      screen.say(
          entries == 0
              ? "Nothing was written."
              : entries == 1 ? "1 line was written." : entries + " lines were written.");
    }
  }

  private static TypedLines lines(Bench bench) {
    String kind = bench.env().getOrDefault("TERM", "dumb");
    return kind.equals("dumb") ? new PlainLines(bench.terminal()) : EditedLines.here();
  }

  @Override
  public Answer run(Bench bench) {
    Path file = register.existingFile(bench).toAbsolutePath();
    if (!bench.asker().canAsk()) {
      throw Trouble.usage(
          "sit wants somebody at a terminal",
          "Entries out of a file are taken in with: filial batch FILE");
    }
    try (TypedLines lines = typing.apply(bench)) {
      return new Sat(new Sitting(lines, file, bench).run());
    }
  }

  /** One sitting. */
  private final class Sitting {
    private final TypedLines lines;
    private final Path file;
    private final Bench outer;
    private final Proposals proposals;
    private Bench bench;
    private long entries;

    Sitting(TypedLines lines, Path file, Bench outer) {
      this.lines = lines;
      this.file = file;
      this.outer = outer;
      this.bench = bench(Optional.empty());
      this.proposals = new Proposals(verbs, register, outer);
    }

    /** Where the verbs run: on this register, and without asking back. */
    private Bench bench(Optional<LocalDate> day) {
      Map<String, String> env = new HashMap<>(outer.env());
      env.put("FILIAL_REGISTER", file.toString());
      register.author(outer).ifPresent(author -> env.put("FILIAL_BY", author));
      Terminal terminal = outer.terminal();
      Terminal silent =
          new Terminal(
              terminal.out(),
              terminal.err(),
              terminal.in(),
              false,
              terminal.progress(),
              terminal.colour(),
              terminal.width());
      return new Bench(
          silent, Map.copyOf(env), outer.clock(), outer.folder(), outer.registers(), day);
    }

    long run() {
      while (true) {
        try {
          String line = lines.words(prompt(), proposals);
          if (line == null || ENDS.contains(line.strip())) {
            return entries;
          }
          take(line);
        } catch (TypedLines.Cancelled e) {
          say("Left out. done or Ctrl-D ends the sitting.");
        } catch (RuntimeException e) {
          explain(e);
        }
        bench.terminal().out().flush();
        bench.terminal().err().flush();
      }
    }

    private String prompt() {
      return bench.set().map(day -> day + " ").orElse("") + "filial> ";
    }

    private void take(String line) {
      List<String> words = ShellWords.of(line).stream().map(ShellWords.Word::text).toList();
      if (words.isEmpty()) {
        return;
      }
      int first = words.get(0).equals("filial") && words.size() > 1 ? 1 : 0;
      String verb = words.get(first);
      List<String> following = words.subList(first + 1, words.size());
      if (verb.equals("on")) {
        bench = bench(Optional.of(outer.dates().day(String.join(" ", following))));
        return;
      }
      if (NOT_HERE.contains(verb)) {
        throw Trouble.usage(verb + " does not go within a sitting", "Say done first.");
      }
      Words declared = new Words();
      BenchCommand command = verbs.find(verb).apply(declared);
      if (following.isEmpty() && declared.records() && !declared.fields().isEmpty()) {
        fill(verb);
        return;
      }
      run(declared, command, following);
    }

    private void fill(String verb) {
      Words declared = new Words();
      BenchCommand command = verbs.find(verb).apply(declared);
      Optional<List<String>> typed = new VerbForm(lines, proposals, bench).fill(declared);
      if (typed.isEmpty()) {
        say("Given up; nothing was written.");
        return;
      }
      say(
          verb
              + typed.get().stream()
                  .map(word -> " " + CommandLine.quoted(word))
                  .collect(Collectors.joining()));
      @Nullable String sure = lines.text("Write it? [Y/n]: ", TypedLines.Completion.NONE);
      if (sure == null || sure.strip().toLowerCase(java.util.Locale.ROOT).startsWith("n")) {
        say("Nothing was written.");
        return;
      }
      run(declared, command, typed.get());
    }

    private void run(Words declared, BenchCommand command, List<String> typed) {
      declared.read(typed, bench);
      if (declared.help() || declared.json()) {
        throw Trouble.usage(
            "--help and --json do not go within a sitting", "Type help VERB, or say done first.");
      }
      Answer answer = command.run(bench);
      Screen screen = new Screen(bench.terminal());
      answer.show(screen);
      screen.flush();
      bench.terminal().out().flush();
      answer.warnings().forEach(warning -> say("Note: " + warning));
      if (declared.records()) {
        entries++;
      }
    }

    private void explain(RuntimeException cause) {
      Failure failure = Failure.of(cause, "");
      if (failure.status() == Status.DEFECT) {
        throw cause;
      }
      String message = failure.message();
      say(message + (message.endsWith(".") || message.endsWith("?") ? "" : "."));
      if (!failure.remedy().isEmpty()) {
        say(failure.remedy());
      }
    }

    private void say(String text) {
      for (String part : text.split("\n", -1)) {
        Wrap.lines(part, bench.terminal().proseWidth())
            .forEach(line -> bench.terminal().err().print(line + "\n"));
      }
      bench.terminal().err().flush();
    }
  }
}
