package dev.filial.cli.page;

/** The fills, letters and strokes that a reader has to tell apart, on light and on dark. */
final class Ink {
  static final String PAPER = "#ffffff";
  static final String BOX = "#faf9f6";
  static final String TEXT = "#1a1a1a";
  static final String SOFT = "#4d4d4d";
  static final String STROKE = "#333333";
  static final String DARK_PAPER = "#16181a";
  static final String DARK_BOX = "#1f2225";
  static final String DARK_TEXT = "#f1efe9";
  static final String DARK_SOFT = "#c3c0b8";
  static final String DARK_STROKE = "#d0cdc6";

  private Ink() {}
}
