package dev.filial.cli.screen;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.jline.reader.Candidate;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.DefaultParser;
import org.jline.terminal.TerminalBuilder;
import org.jspecify.annotations.Nullable;

/**
 * Lines that can be edited, taken up again with the arrow keys, and completed with the Tab key, by
 * JLine. What was typed is remembered until the end and nowhere kept.
 */
public final class EditedLines implements TypedLines {

  private final org.jline.terminal.Terminal terminal;
  private final LineReader words;
  private final LineReader texts;
  private Completion completion = Completion.NONE;

  /** Lines on that terminal of JLine's. */
  public EditedLines(org.jline.terminal.Terminal terminal) {
    this.terminal = terminal;
    words = reader(new DefaultParser(), terminal);
    texts = reader((line, cursor, context) -> new OneText(line, cursor), terminal);
  }

  /** A line of which nothing is parted and nothing in quotes. */
  private record OneText(String line, int cursor) implements CompletingParsedLine {
    @Override
    public String word() {
      return line;
    }

    @Override
    public int wordCursor() {
      return cursor;
    }

    @Override
    public int wordIndex() {
      return 0;
    }

    @Override
    public List<String> words() {
      return List.of(line);
    }

    @Override
    public CharSequence escape(CharSequence candidate, boolean complete) {
      return candidate;
    }

    @Override
    public int rawWordCursor() {
      return cursor;
    }

    @Override
    public int rawWordLength() {
      return line.length();
    }
  }

  /**
   * Lines on the terminal that this program runs in.
   *
   * @throws UncheckedIOException if there is none that could be used
   */
  public static EditedLines here() {
    try {
      return new EditedLines(
          TerminalBuilder.builder().system(true).provider("exec").dumb(true).build());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private LineReader reader(Parser parser, org.jline.terminal.Terminal where) {
    LineReader reader =
        LineReaderBuilder.builder()
            .terminal(where)
            .appName("filial")
            .parser(parser)
            .completer((asking, line, found) -> propose(line, found))
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.CASE_INSENSITIVE, true)
            .option(LineReader.Option.INSERT_TAB, false)
            .build();
    // A text that was pasted is taken as it is, and no menu of hundreds of codes fills the window.
    reader.setVariable(LineReader.LIST_MAX, 60);
    return reader;
  }

  private void propose(ParsedLine line, List<Candidate> found) {
    List<String> before = line.words().subList(0, line.wordIndex());
    String begun = line.word().substring(0, Math.min(line.wordCursor(), line.word().length()));
    for (String proposal : completion.proposals(before, begun)) {
      found.add(new Candidate(proposal));
    }
  }

  @Override
  public @Nullable String words(String prompt, Completion proposals) {
    return read(words, prompt, proposals);
  }

  @Override
  public @Nullable String text(String prompt, Completion proposals) {
    return read(texts, prompt, proposals);
  }

  private @Nullable String read(LineReader reader, String prompt, Completion proposals) {
    completion = proposals;
    try {
      return reader.readLine(Wrap.printable(prompt));
    } catch (UserInterruptException e) {
      throw new Cancelled();
    } catch (EndOfFileException e) {
      return null;
    } finally {
      completion = Completion.NONE;
    }
  }

  @Override
  public void close() {
    try {
      terminal.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
