package dev.filial.cli.demo;

import dev.filial.core.register.RegisterOpened;
import dev.filial.core.store.SqliteStore;
import java.nio.file.Path;
import java.time.LocalDate;

/**
 * An invented bench of <i>Echeveria</i>: five seasons, 2022 to June 2026, of Klara Beispiel, mark
 * KB. Plants, people, field numbers, localities, counts, ploidies and inheritance are made up; only
 * the names of the species are real. It is the same entry by entry whenever it is written, so that
 * the examples in help and handbook work on it.
 *
 * <table>
 * <caption>The plants and crosses most talked about; docs/demo.md has all of them</caption>
 * <tr><td>22-001E</td><td><i>E. laui</i> XM 014, called Rosa</td></tr>
 * <tr><td>22-002H</td><td><i>E. laui</i> XM 021, called Nebel: another plant of the species</td></tr>
 * <tr><td>22-003J</td><td><i>E. agavoides</i> XM 033, called Anna</td></tr>
 * <tr><td>22-005L</td><td>came as <i>E. albicans</i>, renamed <i>E. elegans</i> in 2024</td></tr>
 * <tr><td>22-009R</td><td>22-001E × 22-003J: F1</td></tr>
 * <tr><td>23-004E</td><td>22-003J open pollinated, without candidates</td></tr>
 * <tr><td>23-005H</td><td>22-004K selfed</td></tr>
 * <tr><td>24-001W, 24-002X</td><td>F2 by selfing, F2 by sibbing</td></tr>
 * <tr><td>24-006D</td><td>22-009R-3 open pollinated, with candidates; a guess</td></tr>
 * <tr><td>24-007E</td><td>22-009R-1 × 22-001E: BC1 to the very same plant</td></tr>
 * <tr><td>24-008H</td><td>22-009R-1 × 22-002H: BC1 to another plant of the taxon</td></tr>
 * <tr><td>24-009J</td><td>three-way cross; amended</td></tr>
 * <tr><td>24-010K</td><td>double cross</td></tr>
 * <tr><td>24-011L</td><td>4x × 2x</td></tr>
 * <tr><td>25-001R</td><td>mixed packet</td></tr>
 * <tr><td>25-002T</td><td>found without its tag</td></tr>
 * <tr><td>26-013E</td><td>24-007E-1 × 22-001E: BC2, three lots, pots P1 to P3, seedlings 1 to 7</td></tr>
 * <tr><td>26-014H</td><td>pollinated in May 2026, not yet harvested</td></tr>
 * </table>
 */
public final class DemoBench {

  private static final RegisterOpened OPENING =
      new RegisterOpened("KB", DemoBook.GROWER, "an invented bench to try things on");

  private DemoBench() {}

  /**
   * Writes the bench into a new register.
   *
   * @return how many entries it has
   * @throws dev.filial.core.store.StoreException if there is a file of that name already, or it
   *     cannot be written
   */
  public static long write(Path file) {
    try (SqliteStore store =
        SqliteStore.create(file, OPENING, DemoBook.evening(LocalDate.of(2022, 1, 8)))) {
      DemoBook book = new DemoBook(store);
      Season2022.write(book);
      Season2023.write(book);
      Season2024.write(book);
      Season2025.write(book);
      Season2026.write(book);
      book.close();
      return store.size();
    }
  }
}
