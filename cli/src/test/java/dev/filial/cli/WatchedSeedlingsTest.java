package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * How seedlings of sixty invented sowings live on, as their pots are typed in, against each
 * seedling followed by itself, apart from Filial: {@code src/test/reference/watched.py}, by Python
 * 3.11.
 *
 * <p>Pots that are counted with and without what came up, deaths entered, seedlings given away,
 * thrown out and numbered, and what became of these.
 */
class WatchedSeedlingsTest {

  private static final Path WATCHED = Path.of("src/test/reference/watched.txt");

  /** A sowing: what is typed, and of all and of each week the numbers that are due. */
  private record Invented(
      int number, String sure, List<String> lines, List<Double> all, List<List<Double>> weeks) {
    @Override
    public String toString() {
      return "sowing " + number;
    }
  }

  private static List<Double> numbers(String text) {
    return Stream.of(text.split(" ", -1)).skip(1).map(Double::valueOf).toList();
  }

  static Stream<Invented> sowings() throws IOException {
    List<Invented> sowings = new ArrayList<>();
    for (String text : Files.readAllLines(WATCHED)) {
      String[] words = text.split(" ", -1);
      if (words[0].equals("sowing")) {
        sowings.add(
            new Invented(
                Integer.parseInt(words[1]),
                words[3],
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>()));
      } else if (text.startsWith("  ")) {
        sowings.get(sowings.size() - 1).lines().add(text.strip());
      } else if (words[0].equals("all")) {
        sowings.get(sowings.size() - 1).all().addAll(numbers(text));
      } else if (words[0].equals("week")) {
        sowings.get(sowings.size() - 1).weeks().add(numbers(text));
      }
    }
    assertThat(sowings).hasSize(60);
    return sowings.stream();
  }

  @TempDir Path folder;

  @ParameterizedTest
  @MethodSource("sowings")
  void asManyLiveOnAsWhenEachIsFollowedByItself(Invented sowing) throws IOException {
    JsonNode answer =
        new TypedRegister(folder, sowing.lines()).told("survival", "--sure", sowing.sure());

    assertThat(List.of(answer.get("seedlings").asDouble(), answer.get("died").asDouble()))
        .isEqualTo(sowing.all());
    assertThat(answer.get("weeks")).hasSize(sowing.weeks().size());
    for (int i = 0; i < sowing.weeks().size(); i++) {
      JsonNode week = answer.get("weeks").get(i);
      List<Double> due = sowing.weeks().get(i);
      List<String> fields =
          new ArrayList<>(List.of("week", "before", "cameUp", "died", "left", "surviving"));
      if (due.size() > fields.size()) {
        fields.addAll(List.of("error", "lower", "upper"));
      } else {
        assertThat(week.get("lower").isNull()).isTrue();
      }
      assertThat(due).hasSameSizeAs(fields);
      for (int j = 0; j < fields.size(); j++) {
        assertThat(week.get(fields.get(j)).asDouble())
            .as("%s of week %s", fields.get(j), due.get(0))
            .isCloseTo(due.get(j), within(1e-9));
      }
    }
  }
}
