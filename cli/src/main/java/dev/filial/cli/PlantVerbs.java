package dev.filial.cli;

import java.util.List;

/** Plants, crosses and their seed. */
final class PlantVerbs {

  private PlantVerbs() {}

  static List<Verb> list() {
    return List.of();
  }
}
