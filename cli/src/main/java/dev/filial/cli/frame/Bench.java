package dev.filial.cli.frame;

import dev.filial.cli.screen.Asker;
import dev.filial.cli.screen.Terminal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * Where a command runs: all that it may know of the world beside its own arguments.
 *
 * @param terminal where answers go and questions are asked
 * @param env the environment variables
 * @param clock what day and time it is, and in which zone
 * @param folder the current folder, against which file names are resolved
 * @param registers how a register is opened
 * @param set the day that entries speak of where they name none, if it is not today
 */
public record Bench(
    Terminal terminal,
    Map<String, String> env,
    Clock clock,
    Path folder,
    Registers registers,
    Optional<LocalDate> set) {

  /** A bench where each command opens the register for itself, and speaks of today. */
  public Bench(Terminal terminal, Map<String, String> env, Clock clock, Path folder) {
    this(terminal, env, clock, folder, Registers.onDisk(), Optional.empty());
  }

  /** Today, where the grower is. */
  public LocalDate today() {
    return LocalDate.now(clock);
  }

  /** The day that an entry speaks of where it names none. */
  public LocalDate day() {
    return set.orElseGet(this::today);
  }

  /** Reads dates as people write them, today being {@link #today}. */
  public DateWords dates() {
    return new DateWords(today());
  }

  /** Asks for what was left out, where somebody can be asked. */
  public Asker asker() {
    return new Asker(terminal);
  }

  /** An environment variable, unless it is unset or blank. */
  public Optional<String> variable(String name) {
    return Optional.ofNullable(env.get(name)).map(String::strip).filter(text -> !text.isEmpty());
  }
}
