package dev.filial.core.spreadsheet;

import java.util.List;

/**
 * A row as it stands in the file.
 *
 * @param line the line of the file on which it begins, 1 being the first
 * @param cells its cells, as they were before they were made safe to open
 */
record SheetRow(long line, List<String> cells) {

  /** Whether nothing stands in any cell. */
  boolean isBlank() {
    for (String cell : cells) {
      if (!cell.isBlank()) {
        return false;
      }
    }
    return true;
  }
}
