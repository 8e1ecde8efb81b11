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
 * Sixty invented benches as they are typed, against the odds of everything that can be, added up
 * apart from Filial: {@code src/test/reference/benches.py}, by Python 3.11.
 *
 * <p>Hand crosses with selfs and strays, pollen mixes, open pollination, mixed packets, offsets,
 * lost tags; pots that were tallied, seedlings looked at by themselves or picked; a trait that does
 * not always show, and states that are misread.
 */
class EnumeratedBenchesTest {

  private static final Path BENCHES = Path.of("src/test/reference/benches.txt");

  private record Plant(int line, Map<String, Double> odds) {}

  private record Invented(
      int number, String misread, String strangers, List<String> lines, List<Plant> plants) {
    @Override
    public String toString() {
      return "bench " + number;
    }
  }

  static Stream<Invented> benches() throws IOException {
    List<Invented> benches = new ArrayList<>();
    for (String text : Files.readAllLines(BENCHES)) {
      String[] words = text.split(" ", -1);
      if (words[0].equals("bench")) {
        benches.add(
            new Invented(
                Integer.parseInt(words[1]),
                words[3] + "%",
                "Echeveria " + words[5],
                new ArrayList<>(),
                new ArrayList<>()));
      } else if (words[0].equals("line")) {
        Map<String, Double> odds = new HashMap<>();
        for (int i = 2; i < words.length; i += 2) {
          odds.put(words[i], Double.valueOf(words[i + 1]));
        }
        benches.get(benches.size() - 1).plants().add(new Plant(Integer.parseInt(words[1]), odds));
      } else if (!text.startsWith("#")) {
        benches.get(benches.size() - 1).lines().add(text.strip());
      }
    }
    assertThat(benches).hasSize(60);
    return benches.stream();
  }

  @TempDir Path folder;

  @ParameterizedTest
  @MethodSource("benches")
  void everyPlantCarriesWhatGoingThroughEverythingSays(Invented bench) throws IOException {
    TypedRegister typed = new TypedRegister(folder, bench.lines());
    for (Plant plant : bench.plants()) {
      JsonNode told =
          typed.told(
              "carries",
              typed.code(plant.line()),
              "--misread",
              bench.misread(),
              "--strangers",
              bench.strangers());
      Map<String, Double> odds = new HashMap<>(Map.of("TT", 0.0, "Tt", 0.0, "tt", 0.0));
      for (JsonNode one : told.at("/genes/0/ways/0/genotypes")) {
        odds.put(one.get("genes").asString(), one.get("chance").asDouble());
      }
      plant
          .odds()
          .forEach(
              (genes, chance) ->
                  assertThat(odds.get(genes))
                      .as("%s of line %s", genes, plant.line())
                      .isCloseTo(chance, within(1e-8)));
    }
  }
}
