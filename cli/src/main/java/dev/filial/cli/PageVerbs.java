package dev.filial.cli;

import dev.filial.cli.command.DrawCommand;
import dev.filial.cli.command.IndexCommand;
import dev.filial.cli.command.PageCommand;
import dev.filial.cli.command.PagesCommand;
import java.util.List;

/** Drawings and pages to look at. */
final class PageVerbs {

  private PageVerbs() {}

  static List<Verb> list() {
    return List.of(
        new Verb(
            "draw", Heading.PAPER, "Draw a plant's pedigree into an SVG file", DrawCommand::new),
        new Verb(
            "page",
            Heading.PAPER,
            "Write all of a plant or a cross onto a page for a browser or for paper",
            PageCommand::new),
        new Verb(
            "index",
            Heading.PAPER,
            "Write a page of what there is, to search and to sort",
            IndexCommand::new),
        new Verb(
            "pages",
            Heading.PAPER,
            "Write a folder of pages of everything, that lead to each other",
            PagesCommand::new));
  }
}
