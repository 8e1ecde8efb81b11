package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Crosses in eighty invented registers as they are typed, against every egg meeting every grain of
 * pollen, apart from Filial: {@code src/test/reference/crosses.py}, by Python 3.11.
 *
 * <p>Linked genes with a map and without, an S locus, gametes that do not count alike, states that
 * do not always show, kinds that die, plants of two, three and four sets, unreduced gametes, lines
 * selfed on, what breeds true; and how many to sow.
 */
class EnumeratedCrossesTest {

  private static final Path CROSSES = Path.of("src/test/reference/crosses.txt");

  private record Question(List<String> words, Map<String, Double> odds) {}

  private record Invented(int number, List<String> lines, List<Question> questions) {
    @Override
    public String toString() {
      return "register " + number;
    }
  }

  static Stream<Invented> registers() throws IOException {
    List<Invented> registers = new ArrayList<>();
    Map<String, Double> odds = Map.of();
    for (String text : Files.readAllLines(CROSSES)) {
      int last = text.lastIndexOf(' ');
      if (text.startsWith("register ")) {
        registers.add(
            new Invented(
                Integer.parseInt(text.substring(last + 1)), new ArrayList<>(), new ArrayList<>()));
      } else if (text.startsWith("  ")) {
        registers.get(registers.size() - 1).lines().add(text.strip());
      } else if (text.startsWith("ask\t")) {
        odds = new HashMap<>();
        registers
            .get(registers.size() - 1)
            .questions()
            .add(new Question(List.of(text.substring(4).split("\t", -1)), odds));
      } else if (!text.startsWith("#")) {
        odds.put(text.substring(0, last), Double.valueOf(text.substring(last + 1)));
      }
    }
    assertThat(registers).hasSize(80);
    assertThat(registers.stream().mapToInt(one -> one.questions().size()).sum()).isEqualTo(278);
    return registers.stream();
  }

  @TempDir Path folder;

  @ParameterizedTest
  @MethodSource("registers")
  void everyCrossThrowsWhatEveryEggByEveryGrainThrows(Invented register) throws IOException {
    TypedRegister typed = new TypedRegister(folder, register.lines());

    for (Question question : register.questions()) {
      JsonNode answer = typed.told(question.words().toArray(String[]::new));
      assertThat(answer.get("scenarios")).hasSize(1);
      JsonNode scenario = answer.at("/scenarios/0");
      Map<String, Double> found = new HashMap<>();
      for (JsonNode one : scenario.get("classes")) {
        List<String> shows = new ArrayList<>();
        for (int i = 0; i < one.get("states").size(); i++) {
          shows.add(answer.at("/traits/" + i).asString() + "=" + one.at("/states/" + i).asString());
        }
        if (one.at("/chance/value").asDouble() > 0) {
          String sorted = String.join(" ", shows.stream().sorted().toList());
          found.put("class " + sorted, one.at("/chance/value").asDouble());
        }
      }
      found.put("lost", scenario.at("/lost/value").asDouble(0));
      if (scenario.get("hope").isObject()) {
        found.put("hope", scenario.at("/hope/chance/value").asDouble());
        for (String number : List.of("seedlings", "seeds")) {
          if (question.odds().containsKey(number)) {
            found.put(number, scenario.at("/hope/" + number).asDouble());
          }
        }
      }
      assertThat(found).as("%s", question.words()).containsOnlyKeys(question.odds().keySet());
      question
          .odds()
          .forEach(
              (of, chance) ->
                  assertThat(found.get(of))
                      .as("%s of %s", of, question.words())
                      .isCloseTo(chance, within(1e-9)));
    }
  }
}
