package dev.filial.cli;

import dev.filial.cli.command.CareCommand;
import dev.filial.cli.command.DueCommand;
import dev.filial.cli.command.IntervalCommand;
import dev.filial.cli.command.PlaceCommand;
import dev.filial.cli.command.TreatCommand;
import dev.filial.cli.command.WhereCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Care from day to day: treatments, bags, tags, places, and what is due. */
final class DiaryVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("due", Heading.SEASON, "List what is to be done on a day"),
        verb("where", Heading.SEASON, "Say where something stands, or what stands in a place"),
        verb("treat", Heading.CARE, "Write down a treatment, of a whole bag in one entry"),
        verb("look", Heading.CARE, "Write down that closed sowings were looked into"),
        verb("open", Heading.CARE, "Write down that a bag or lid was taken off"),
        verb("harden", Heading.CARE, "Write down that seedlings are hardened off"),
        verb("poton", Heading.CARE, "Write down that plants were potted on"),
        verb("retag", Heading.CARE, "Write down that tags were written anew"),
        verb("place", Heading.CARE, "Say which place stands in which"),
        verb("interval", Heading.CARE, "Say how long something takes here"));
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "due" -> new DueCommand(words);
      case "where" -> new WhereCommand(words);
      case "treat" -> new TreatCommand(words);
      case "look" -> CareCommand.look(words);
      case "open" -> CareCommand.open(words);
      case "harden" -> CareCommand.harden(words);
      case "poton" -> CareCommand.potOn(words);
      case "retag" -> CareCommand.retag(words);
      case "place" -> new PlaceCommand(words);
      case "interval" -> new IntervalCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}
