package dev.filial.cli.page;

import dev.filial.core.answer.PlantsBehindQuestion.Parent;

/** How the line to a parent is drawn, as the legend explains it. */
enum LineStroke {
  SEED("fp-seed", "seed parent"),
  POLLEN("fp-pollen", "pollen parent"),
  SELF("fp-self", "selfed: seed and pollen of one plant"),
  COPY("fp-copy", "offset, or the same plant again (box with two edges)"),
  DOUBT("fp-doubt", "not certain, with how likely it is; ? for a parent nobody knows");

  private final String look;
  private final String meaning;

  LineStroke(String look, String meaning) {
    this.look = look;
    this.meaning = meaning;
  }

  /** Of the line to this parent. */
  static LineStroke of(Parent parent) {
    if (!parent.isCertain() || parent.parent() == null) {
      return DOUBT;
    }
    return switch (parent.role()) {
      case SEED -> SEED;
      case POLLEN -> POLLEN;
      case SELFED -> SELF;
      case OFFSET, DOUBLED, SAME, REPEATED -> COPY;
    };
  }

  /** Its class in the style sheet. */
  String look() {
    return look;
  }

  /** What it means. */
  String meaning() {
    return meaning;
  }
}
