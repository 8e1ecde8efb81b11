package dev.filial.cli;

import dev.filial.cli.command.DrawCommand;
import dev.filial.cli.command.IndexCommand;
import dev.filial.cli.command.PageCommand;
import dev.filial.cli.command.PagesCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Drawings and pages to look at. */
final class PageVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("draw", "Draw a plant's pedigree into an SVG file"),
        verb("page", "Write all of a plant or a cross onto a page for a browser or for paper"),
        verb("index", "Write a page of what there is, to search and to sort"),
        verb("pages", "Write a folder of pages of everything, that lead to each other"));
  }

  private Verb verb(String name, String summary) {
    return verb(name, Heading.PAPER, summary);
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "draw" -> new DrawCommand(words);
      case "page" -> new PageCommand(words);
      case "index" -> new IndexCommand(words);
      case "pages" -> new PagesCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}
