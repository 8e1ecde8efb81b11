package dev.filial.cli;

import java.util.List;

/** Keeping and exchanging. */
final class KeepVerbs {

  private KeepVerbs() {}

  static List<Verb> list() {
    return List.of();
  }
}
