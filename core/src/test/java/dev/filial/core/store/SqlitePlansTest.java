package dev.filial.core.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** One question never makes SQLite go through all that a register holds. */
class SqlitePlansTest {

  @Test
  void aLineageIsLookedUpAndNotSearchedFor() {
    try (Sql sql = SqliteFile.inMemory()) {
      SqliteSchema.layOut(sql);

      List<String> plan =
          sql.all("EXPLAIN QUERY PLAN " + SqliteReader.LINEAGE, row -> row.getString(4), "[]");

      assertThat(plan)
          .noneMatch(step -> step.matches("SCAN (i|d|family|item|descent)\\b.*"))
          .noneMatch(step -> step.contains("AUTOMATIC"))
          .anyMatch(step -> step.startsWith("SEARCH i USING PRIMARY KEY"))
          .anyMatch(step -> step.startsWith("SEARCH family USING PRIMARY KEY"))
          .anyMatch(step -> step.startsWith("SEARCH d USING PRIMARY KEY"));
    }
  }

  @Test
  void itemsAskedForByTheirCodesAreLookedUp() {
    try (Sql sql = SqliteFile.inMemory()) {
      SqliteSchema.layOut(sql);

      assertThat(plan(sql, SqliteReader.ITEMS_OF, "[]"))
          .noneMatch(step -> step.matches("SCAN (i|d|item|descent)\\b.*"))
          .noneMatch(step -> step.contains("AUTOMATIC"))
          .anyMatch(step -> step.startsWith("SEARCH i USING PRIMARY KEY"))
          .anyMatch(step -> step.startsWith("SEARCH d USING PRIMARY KEY"));
    }
  }

  @Test
  void whatStandsUnderAFamilyIsLookedUp() {
    try (Sql sql = SqliteFile.inMemory()) {
      SqliteSchema.layOut(sql);

      assertThat(plan(sql, SqliteReader.UNDER, "26-001M"))
          .noneMatch(step -> step.startsWith("SCAN item"))
          .anyMatch(step -> step.startsWith("SEARCH item USING PRIMARY KEY (code=?)"))
          .anyMatch(step -> step.matches("SEARCH item USING (COVERING )?INDEX item_family .*"));
      assertThat(plan(sql, SqliteReader.LAST_SUFFIX, "26-001M", "SEEDLING"))
          .containsExactly(
              "SEARCH item USING COVERING INDEX item_family (whole=? AND kind=? AND suffix>?)");
    }
  }

  private static List<String> plan(Sql sql, String query, Object... values) {
    return sql.all("EXPLAIN QUERY PLAN " + query, row -> row.getString(4), values);
  }

  @Test
  void theGenesOfARegisterLieBesideEachOther() {
    try (Sql sql = SqliteFile.inMemory()) {
      SqliteSchema.layOut(sql);

      List<String> plan =
          sql.all(
              "EXPLAIN QUERY PLAN " + SqliteReader.KEYS,
              row -> row.getString(4),
              "locus:",
              "locus;");

      assertThat(plan)
          .containsExactly("SEARCH concerns USING PRIMARY KEY (subject>? AND subject<?)");
    }
  }
}
