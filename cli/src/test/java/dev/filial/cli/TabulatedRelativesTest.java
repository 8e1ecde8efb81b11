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
 * Fifty invented benches as they are typed: how their plants are related and who founded them,
 * against the tabular method, apart from Filial: {@code src/test/reference/relatives.py}, by Python
 * 3.11.
 *
 * <p>Hand crosses with selfs, strays and apomixis, pollen mixes, open pollination, mixed packets,
 * offsets that are crossed, lost tags.
 */
class TabulatedRelativesTest {

  private static final Path RELATIVES = Path.of("src/test/reference/relatives.txt");

  /** What the reference says, by the words before the number. */
  private record Invented(
      int number, List<String> lines, Map<String, Integer> plants, Map<String, Double> told) {
    @Override
    public String toString() {
      return "bench " + number;
    }
  }

  static Stream<Invented> benches() throws IOException {
    List<Invented> benches = new ArrayList<>();
    for (String text : Files.readAllLines(RELATIVES)) {
      String[] words = text.split(" ", -1);
      int last = text.lastIndexOf(' ');
      if (words[0].equals("bench")) {
        benches.add(
            new Invented(
                Integer.parseInt(words[1]), new ArrayList<>(), new HashMap<>(), new HashMap<>()));
      } else if (text.startsWith("  ")) {
        benches.get(benches.size() - 1).lines().add(text.strip());
      } else if (words[0].equals("line")) {
        benches.get(benches.size() - 1).plants().put(words[2], Integer.valueOf(words[1]));
      } else if (!text.startsWith("#")) {
        benches
            .get(benches.size() - 1)
            .told()
            .put(text.substring(0, last), Double.valueOf(text.substring(last + 1)));
      }
    }
    assertThat(benches).hasSize(50);
    return benches.stream();
  }

  @TempDir Path folder;

  @ParameterizedTest
  @MethodSource("benches")
  void everyTwoPlantsAreAsCloseAndEveryFounderGaveAsTheTableSays(Invented bench)
      throws IOException {
    TypedRegister typed = new TypedRegister(folder, bench.lines());
    List<String> names = List.copyOf(bench.plants().keySet());
    Map<String, String> named = new HashMap<>();
    List<String> related = new ArrayList<>(List.of("related"));
    for (String name : names) {
      String code = typed.code(bench.plants().getOrDefault(name, 0));
      named.put(code, name);
      related.add(code);
    }
    Map<String, Double> found = new HashMap<>();
    JsonNode table = typed.told(related.toArray(String[]::new)).get("coancestry");
    for (int i = 0; i < names.size(); i++) {
      for (int j = 0; j < names.size(); j++) {
        String pair = "pair " + names.get(i) + " " + names.get(j);
        if (bench.told().containsKey(pair)) {
          found.put(pair, table.get(i).get(j).asDouble());
        }
      }
    }
    JsonNode founders = typed.told("founders");
    JsonNode gave = founders.get("contributions");
    for (JsonNode one : gave.get("founders")) {
      found.put("founder " + named.get(one.get("code").asString()), one.get("share").asDouble());
    }
    found.put("unknown " + gave.get("unknownParents").asInt(), gave.get("unknown").asDouble());
    found.put("effective", gave.get("effectiveNumber").asDouble());
    found.put("mean", founders.get("meanCoancestry").asDouble());

    assertThat(found).containsOnlyKeys(bench.told().keySet());
    bench
        .told()
        .forEach((of, value) -> assertThat(found.get(of)).as(of).isCloseTo(value, within(1e-9)));
  }
}
