package dev.filial.cli;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.ClosedInput;
import dev.filial.cli.frame.Status;
import dev.filial.cli.screen.Terminal;
import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The one place that touches the process: its streams, environment, clock and folder.
 *
 * <p>The launcher says what it alone can see cheaply, in system properties: {@code
 * filial.terminals}, the digits of those of the streams 0, 1 and 2 that are terminals, {@code
 * filial.columns}, the window's width, and {@code filial.input}, {@code closed} where standard
 * input is.
 */
final class Launch {

  /** Told to the Windows launcher: the sources are newer than the program, build and try again. */
  static final int OUT_OF_DATE = 75;

  private Launch() {}

  static int run(String[] args) {
    @Nullable String sources = System.getProperty("filial.sources");
    if (sources != null && Sources.newerThanProgram(Path.of(sources))) {
      return OUT_OF_DATE;
    }
    Map<String, String> env = System.getenv();
    Charset charset = charset(env);
    Pipe pipe = new Pipe(new FileOutputStream(FileDescriptor.out));
    PrintWriter out = new PrintWriter(new OutputStreamWriter(pipe, charset), false);
    PrintWriter err =
        new PrintWriter(
            new OutputStreamWriter(new FileOutputStream(FileDescriptor.err), charset), true);
    BufferedReader in =
        new BufferedReader(
            "closed".equals(System.getProperty("filial.input"))
                ? new ClosedInput()
                : new InputStreamReader(new FileInputStream(FileDescriptor.in), charset));
    @Nullable String attached = System.getProperty("filial.terminals");
    if (attached == null) {
      attached = consoleFound() ? "012" : "";
    }
    Terminal terminal =
        Terminal.of(out, err, in, attached, System.getProperty("filial.columns"), env);
    int status =
        Filial.run(args, new Bench(terminal, env, new WallClock(), Path.of("").toAbsolutePath()));
    if (!out.checkError() || pipe.readerWentAway()) {
      return status;
    }
    err.print(
        "filial: the answer could not all be written. Is the disk full? What was entered is in the"
            + " register all the same: filial history tells.\n");
    err.flush();
    return Status.FILE.code();
  }

  // From Java 22 on a console is always found unless -Djdk.console=java.base is given, as Windows's
  // launcher does.
  @SuppressWarnings("SystemConsoleNull")
  private static boolean consoleFound() {
    return System.console() != null;
  }

  /**
   * UTF-8, unless the locale names another character set than the bare ASCII of a system where no
   * language was chosen.
   */
  private static Charset charset(Map<String, String> env) {
    if (!System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows")) {
      @Nullable String locale = env.get("LC_ALL");
      locale = locale == null || locale.isEmpty() ? env.get("LC_CTYPE") : locale;
      locale = locale == null || locale.isEmpty() ? env.get("LANG") : locale;
      if (locale == null || locale.indexOf('.') < 0) {
        return StandardCharsets.UTF_8;
      }
    }
    @Nullable String console =
        System.getProperty("stdout.encoding", System.getProperty("sun.stdout.encoding"));
    if (console == null) {
      console = System.getProperty("sun.jnu.encoding");
    }
    return console != null && Charset.isSupported(console) && !console.startsWith("ANSI_X3.4")
        ? Charset.forName(console)
        : StandardCharsets.UTF_8;
  }

  /** Remembers whether writing failed because the reader, such as {@code head}, had enough. */
  private static final class Pipe extends FilterOutputStream {
    private boolean broken;

    Pipe(OutputStream target) {
      super(target);
    }

    boolean readerWentAway() {
      return broken;
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
      try {
        out.write(bytes, offset, length);
      } catch (IOException e) {
        @Nullable String message = e.getMessage();
        broken = message != null && message.contains("pipe");
        throw e;
      }
    }
  }

  /** The system's clock, which looks up the time zone only when asked: that takes a while. */
  private static final class WallClock extends Clock {
    @Override
    public ZoneId getZone() {
      return ZoneId.systemDefault();
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return Clock.system(zone);
    }

    @Override
    public Instant instant() {
      return Clock.systemUTC().instant();
    }
  }
}
