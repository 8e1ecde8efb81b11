package dev.filial.cli;

import java.util.List;

/** Sowings, pots and seedlings. */
final class SeedlingVerbs {

  private SeedlingVerbs() {}

  static List<Verb> list() {
    return List.of();
  }
}
