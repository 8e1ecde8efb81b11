package dev.filial.cli;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.screen.Screen;
import java.util.List;

/** The page that {@code filial help} shows: what Filial is for, and every verb in its group. */
record Overview(List<Verb> all) implements Answer {

  /**
   * A verb as JSON has it.
   *
   * @param verb what is typed
   * @param heading the group it belongs to
   * @param summary what it does
   */
  record Listed(String verb, String heading, String summary) {}

  /**
   * All of them.
   *
   * @param verbs in the order of the page
   */
  record Listing(List<Listed> verbs) {}

  @Override
  public Object json() {
    return new Listing(
        all.stream()
            .map(verb -> new Listed(verb.name(), verb.heading().title(), verb.summary()))
            .toList());
  }

  @Override
  public void show(Screen screen) {
    screen.say(
        "Filial keeps the cross register of a grower who hybridises plants by hand, and answers"
            + " from it what is in a seedling, what a cross will throw, and what goes on the label.");
    screen.blank().lead("Usage:", "filial VERB [ARGUMENTS]");
    for (Heading heading : Heading.values()) {
      boolean first = true;
      for (Verb verb : all) {
        if (verb.heading() == heading) {
          if (first) {
            screen.blank().heading(heading.title());
            first = false;
          }
          screen.item(verb.name(), verb.summary());
        }
      }
    }
    screen
        .blank()
        .say(
            "The register is the file filial.register in this folder, or the one named by"
                + " --register FILE after the verb, or by the variable FILIAL_REGISTER.")
        .next("filial help VERB, for one verb with an example.");
  }
}
