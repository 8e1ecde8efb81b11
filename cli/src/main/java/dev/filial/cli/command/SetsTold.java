package dev.filial.cli.command;

import dev.filial.core.answer.Tries;

/** How it is said what set. */
final class SetsTold {

  private SetsTold() {}

  /** As {@code 4 of 5 set}; what was never tried is nothing. */
  static String brief(Tries tries) {
    if (tries.crosses().isEmpty()) {
      return "not yet";
    }
    if (tries.known() == 0 && tries.setOnly() > 0) {
      return tries.setOnly() + " set, how many failed not known";
    }
    if (tries.known() == 0) {
      return tries.crosses().size() == 1
          ? "crossed, result not known"
          : tries.crosses().size() + " crosses, result not known";
    }
    return tries.set() + " of " + tries.known() + " set";
  }

  /** The same with the interval, and what dropped, was eaten or is not known. */
  static String full(Tries tries) {
    if (tries.crosses().isEmpty()) {
      return "";
    }
    StringBuilder text = new StringBuilder();
    text.append(tries.known() == 0 ? "none known" : tries.set() + " of " + tries.known());
    tries
        .interval()
        .ifPresent(
            interval ->
                text.append(" (")
                    .append(percent(interval.lower()))
                    .append("–")
                    .append(percent(interval.upper()))
                    .append(" %)"));
    add(text, tries.setOnly(), "set without a word on failures");
    addAbout(text, tries.about().set(), "set");
    addAbout(text, tries.about().failed(), "failed");
    add(text, tries.aborted(), "dropped");
    addAbout(text, tries.about().aborted(), "dropped");
    add(text, tries.eaten(), "eaten");
    addAbout(text, tries.about().eaten(), "eaten");
    add(text, tries.unknown(), "unknown");
    return text.toString();
  }

  private static void add(StringBuilder text, long number, String what) {
    if (number > 0) {
      text.append(", ").append(number).append(' ').append(what);
    }
  }

  private static void addAbout(StringBuilder text, long number, String what) {
    if (number > 0) {
      text.append(", about ").append(number).append(' ').append(what);
    }
  }

  private static long percent(double share) {
    return Math.round(100 * share);
  }
}
