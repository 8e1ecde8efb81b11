package dev.filial.cli.screen;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where lines are typed, one after the other. */
public interface TypedLines extends AutoCloseable {

  /** Proposes what a word may become. */
  @FunctionalInterface
  interface Completion {
    /** Nothing to propose. */
    Completion NONE = (before, begun) -> List.of();

    /**
     * The words that may stand here.
     *
     * @param before the words before it on the line, without their quotes
     * @param begun what is typed of it already
     */
    List<String> proposals(List<String> before, String begun);
  }

  /** Somebody pressed Ctrl-C: what was begun is not wanted. */
  final class Cancelled extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Without further words. */
    public Cancelled() {
      super("cancelled");
    }
  }

  /**
   * A line of words, as a shell has them.
   *
   * @return what was typed, or null when there is no more
   * @throws Cancelled if what was begun is not wanted
   */
  @Nullable String words(String prompt, Completion completion);

  /**
   * A line that is one text, whatever spaces and quotes are in it.
   *
   * @return what was typed, or null when there is no more
   * @throws Cancelled if what was begun is not wanted
   */
  @Nullable String text(String prompt, Completion completion);

  @Override
  void close();
}
