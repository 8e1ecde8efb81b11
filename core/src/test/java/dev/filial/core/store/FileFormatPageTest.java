package dev.filial.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import dev.filial.core.register.Entry;
import dev.filial.core.register.RegisterOpened;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of the handbook about the file says what the file is, and its script checks one. */
class FileFormatPageTest {

  @TempDir Path folder;

  private Path file;
  private String page;

  @BeforeEach
  void write() throws IOException {
    page = Files.readString(Path.of("..", "docs", "file-format.md"));
    file = Bench.register(folder.resolve("balcony 🌵"));
  }

  private interface Reading<R> {
    R of(Statement statement) throws Exception;
  }

  private <R> R read(Reading<R> reading) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      return reading.of(statement);
    }
  }

  private static List<String> texts(Statement statement, String sql) throws Exception {
    List<String> texts = new ArrayList<>();
    try (ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        texts.add(rows.getString(1));
      }
    }
    return texts;
  }

  private String pragma(String name) throws Exception {
    return read(statement -> texts(statement, "PRAGMA " + name).get(0));
  }

  private List<String> blocks(String language) {
    List<String> blocks = new ArrayList<>();
    Matcher matcher =
        Pattern.compile("```" + language + "\n(.*?)\n```", Pattern.DOTALL).matcher(page);
    while (matcher.find()) {
      blocks.add(matcher.group(1));
    }
    return blocks;
  }

  @Test
  void everyTableAndColumnIsDescribedInItsOrder() throws Exception {
    List<String> described = new ArrayList<>();
    String table = "";
    for (String line : page.lines().toList()) {
      Matcher heading = Pattern.compile("###? ?#? ?`(\\w+)`").matcher(line);
      if (heading.matches()) {
        table = heading.group(1);
      } else if (line.startsWith("## ")) {
        table = "";
      }
      Matcher column = Pattern.compile("\\| `(\\w+)` \\|.*").matcher(line);
      if (!table.isEmpty() && column.matches()) {
        described.add(table + "." + column.group(1));
      }
    }
    List<String> there =
        read(
            statement -> {
              List<String> columns = new ArrayList<>();
              for (String name :
                  texts(statement, "SELECT name FROM sqlite_schema WHERE type = 'table'")) {
                for (String column :
                    texts(statement, "SELECT name FROM pragma_table_info('" + name + "')")) {
                  columns.add(name + "." + column);
                }
              }
              return columns;
            });
    assertThat(described).isEqualTo(there);
  }

  @Test
  void theHeaderIsAsDescribed() throws Exception {
    assertThat(pragma("application_id")).isEqualTo(Integer.toString(0x46696C31));
    assertThat(pragma("user_version")).isEqualTo("4");
    assertThat(pragma("page_size")).isEqualTo("4096");
    assertThat(pragma("encoding")).isEqualTo("UTF-8");
    byte[] header = Files.readAllBytes(file);
    assertThat(new String(header, 68, 4, StandardCharsets.US_ASCII)).isEqualTo("Fil1");
    assertThat(header[63]).isEqualTo((byte) 4);
    assertThat(page).contains("`0x46696C31`", "| `user_version` | `4`", "| page size | 4096 |");
  }

  /** Source: SHA-256 of the text on the page, by the JDK and by Python's hashlib. */
  @Test
  void theWorkedExampleIsRight() throws Exception {
    String body = blocks("json").get(0);
    String digested = blocks("text").get(0);
    String digest = blocks("text").get(1);
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(digested.getBytes(StandardCharsets.UTF_8));
    assertThat(HexFormat.of().formatHex(hash)).isEqualTo(digest);

    Path fresh = folder.resolve("fresh");
    try (SqliteStore store =
        SqliteStore.create(fresh, new RegisterOpened("KB", "Klara Beispiel", null), Bench.NOON)) {
      Entry first = store.entry(1).orElseThrow();
      assertThat(first.body()).isEqualTo(body);
      assertThat(first.digest()).isEqualTo(digest);
    }
  }

  /** By the page's rule on the raw rows, with nothing of the library. */
  @Test
  void everyDigestOfAFileFollowsFromItsRows() throws Exception {
    List<String> faults =
        read(
            statement -> {
              List<String> wrong = new ArrayList<>();
              String previous = "0".repeat(64);
              try (ResultSet rows = statement.executeQuery("SELECT * FROM entry ORDER BY number")) {
                while (rows.next()) {
                  MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
                  for (String part :
                      List.of(
                          previous,
                          rows.getString("number"),
                          rows.getString("time"),
                          rows.getString("writer"),
                          rows.getString("body"))) {
                    byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
                    sha256.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
                    sha256.update(bytes);
                  }
                  previous = HexFormat.of().formatHex(sha256.digest());
                  if (!previous.equals(rows.getString("digest"))) {
                    wrong.add(rows.getString("number"));
                  }
                }
              }
              return wrong;
            });
    assertThat(faults).isEmpty();
  }

  /** Source: Python's own sqlite3 and hashlib, with the script as the page has it. */
  @Test
  void thePagesScriptAgreesInAnotherLanguage() throws Exception {
    Path script = folder.resolve("check.py");
    Files.writeString(script, blocks("python").get(0));
    assumeThat(python("-c", "import sqlite3; assert sqlite3.sqlite_version_info >= (3, 37)"))
        .as("there is a python3 whose SQLite knows strict tables")
        .isNotEqualTo("none");
    String last =
        read(
            statement ->
                texts(statement, "SELECT digest FROM entry ORDER BY number DESC LIMIT 1").get(0));
    assertThat(python(script.toString(), file.toString())).isEqualTo(last + "\n");

    SqliteRefusalTest.run(file, "UPDATE entry SET writer = 'Clara' WHERE number = 3");
    assertThat(python(script.toString(), file.toString())).isEqualTo("none");
  }

  /** What it printed; {@code none} when it failed or is not there. */
  private static String python(String... arguments) throws Exception {
    List<String> command = new ArrayList<>(List.of("python3"));
    command.addAll(List.of(arguments));
    try {
      Process process =
          new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
      String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      boolean done = process.waitFor(30, TimeUnit.SECONDS);
      return done && process.exitValue() == 0 ? out : "none";
    } catch (IOException e) {
      return "none"; // no such program here
    }
  }
}
