package dev.filial.core.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The page of the handbook about entries says what the program does, example by example. */
class EntriesPageTest {

  private static final JsonMapper JSON = new JsonMapper();

  private static final Map<String, Class<?>> PARTS =
      Map.of(
          "determination", Determination.class,
          "provenance", Provenance.class,
          "photograph", Photograph.class,
          "readings", Counted.Reading.class,
          "groups", Sown.Filled.class,
          "rows", ModelDeclared.Row.class,
          "parts", LotsMerged.Part.class,
          "plants, candidates", Weighted.class);

  private static String page() throws IOException {
    return Files.readString(Path.of("..", "docs", "entries.md"));
  }

  private static String section(String heading) throws IOException {
    String page = page();
    int from = page.indexOf("\n### `" + heading + "`");
    assertThat(from).as("a section about " + heading).isPositive();
    int to = page.indexOf("\n##", from + 5);
    return page.substring(from, to < 0 ? page.length() : to);
  }

  /** The first and last cells of the rows of a table: property and example. */
  private static Map<String, String> table(String section) {
    Map<String, String> rows = new LinkedHashMap<>();
    section
        .lines()
        .filter(line -> line.startsWith("| `"))
        .map(line -> line.split(" *\\| *", -1))
        .forEach(cells -> rows.put(unquoted(cells[1]), unquoted(cells[3])));
    return rows;
  }

  private static String unquoted(String cell) {
    return cell.replaceAll("^`|`$", "");
  }

  private static List<String> components(Class<?> type) {
    return Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName).toList();
  }

  static Stream<Statement> examples() {
    Map<Class<?>, Statement> first = new LinkedHashMap<>();
    ExampleBook.statements().forEach(said -> first.putIfAbsent(said.getClass(), said));
    return first.values().stream();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void showsOneExampleOfEachKindToTheLetter(Statement statement) throws IOException {
    String json = EntryJson.write(statement);
    String kind = JSON.readTree(json).get("kind").stringValue();
    assertThat(section(kind)).contains("\n```json\n" + json + "\n```\n");
    assertThat(EntryJson.read(json)).isEqualTo(statement);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void namesThePropertiesOfEachKindWithAnExampleThatCanBeRead(Statement statement)
      throws IOException {
    ObjectNode example = (ObjectNode) JSON.readTree(EntryJson.write(statement));
    Map<String, String> rows = table(section(example.get("kind").stringValue()));
    assertThat(rows.keySet()).containsExactlyElementsOf(components(statement.getClass()));
    rows.forEach(
        (property, text) -> {
          JsonNode value = JSON.readTree(text);
          if (example.has(property)) {
            assertThat(value).as(property).isEqualTo(example.get(property));
          } else if (inAnother(statement, property) != null) {
            assertThat(value).as(property).isEqualTo(inAnother(statement, property));
          } else {
            ObjectNode more = example.deepCopy();
            more.set(property, value);
            assertThat(EntryJson.write(EntryJson.read(JSON.writeValueAsString(more))))
                .contains("\"" + property + "\":" + text);
          }
        });
  }

  /** What a further example of the kind has there: some properties do not go together. */
  private static @Nullable JsonNode inAnother(Statement statement, String property) {
    return ExampleBook.statements().stream()
        .filter(other -> other.getClass() == statement.getClass())
        .map(other -> JSON.readTree(EntryJson.write(other)).get(property))
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  @Test
  void showsEachSourceOfPollen() throws IOException {
    List<String> pollens = examples(section("cross.pollen"));
    assertThat(pollens).hasSize(Pollen.class.getPermittedSubclasses().length);
    for (String pollen : pollens) {
      String cross =
          "{\"kind\":\"cross\",\"code\":\"25-001R\",\"seedParent\":\"24-001W\",\"pollen\":"
              + pollen
              + "}";
      assertThat(EntryJson.write(EntryJson.read(cross))).isEqualTo(cross);
    }
  }

  private static List<String> examples(String section) {
    return section
        .lines()
        .filter(line -> line.startsWith("| `{"))
        .map(line -> unquoted(line.split(" *\\| *", -1)[1]))
        .toList();
  }

  @Test
  void namesThePropertiesOfEachPart() throws IOException {
    for (Map.Entry<String, Class<?>> part : PARTS.entrySet()) {
      assertThat(table(section(part.getKey())).keySet())
          .as(part.getKey())
          .containsExactlyElementsOf(components(part.getValue()));
    }
  }

  @Test
  void hasNoKindThatIsNotThereAndLacksNone() throws IOException {
    assertThat(examples().<Class<?>>map(Statement::getClass))
        .containsExactlyInAnyOrder(Statement.class.getPermittedSubclasses());
    // Beside the kinds and the parts there is one section about pollen.
    assertThat(page().lines().filter(line -> line.startsWith("### `")).count())
        .isEqualTo(Statement.class.getPermittedSubclasses().length + PARTS.size() + 1L);
  }

  @Test
  void showsABookThatIsAccepted() {
    RegisterTables book = new RegisterTables();
    for (Statement statement : ExampleBook.statements()) {
      book.apply(Clerk.of(book).accept(statement, "Klara", Bench.NOON).delta());
    }
    assertThat(book.size()).isEqualTo(ExampleBook.statements().size());
  }
}
