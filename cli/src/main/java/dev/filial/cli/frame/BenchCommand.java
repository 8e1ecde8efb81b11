package dev.filial.cli.frame;

/**
 * One verb. picocli fills its annotated fields from the command line; the frame adds {@code --json}
 * and {@code --help}, runs it, and prints what it answers.
 */
@FunctionalInterface
public interface BenchCommand {

  /**
   * Does the work.
   *
   * @return what is to be shown or written as JSON; the command prints nothing itself
   * @throws Trouble if the register, the command line or a file stands in the way
   */
  Answer run(Bench bench);
}
