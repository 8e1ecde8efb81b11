package dev.filial.core.spreadsheet;

import dev.filial.core.name.Code;
import dev.filial.core.register.Counted;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.Statement;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.spreadsheet.SheetImport.Complaint;
import dev.filial.core.spreadsheet.SheetImport.Outcome;
import dev.filial.core.store.MemoryStore;
import dev.filial.core.store.RegisterStore;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** A grower's table in a file, and a register to take it into. */
record TableFile(Path file, RegisterStore store) {

  static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");
  static final LocalDate TODAY = LocalDate.of(2026, 3, 4);
  static final String PLANTS = "rows = plants\nold code = Nr\ntaxon = Art\n";

  static TableFile of(Path file, String text) throws IOException {
    return of(file, text.getBytes(StandardCharsets.UTF_8));
  }

  static TableFile of(Path file, byte[] bytes) throws IOException {
    Files.write(file, bytes);
    MemoryStore store = MemoryStore.empty();
    append(store, new RegisterOpened("KB", "Klara", null));
    return new TableFile(file, store);
  }

  /** Lines, each ended. */
  static String lines(String... lines) {
    return String.join("\n", lines) + "\n";
  }

  static void append(RegisterStore store, Statement statement) {
    var unused = store.append(statement, "Klara", NOON);
  }

  static TraitDeclared trait(String name, List<String> states) {
    return new TraitDeclared(
        name, states, states.isEmpty() ? BigDecimal.ZERO : null, null, null, null);
  }

  static Counted alive(Code pot, long count) {
    return new Counted(
        null,
        List.of(new Counted.Reading(pot, null, dev.filial.core.register.Count.of(count))),
        null);
  }

  /** The same store with another table. */
  TableFile with(Path other, String text) throws IOException {
    Files.writeString(other, text);
    return new TableFile(other, store);
  }

  SheetImport by(String mapping) throws IOException {
    return SheetImport.of(Sheet.of(file), MappingText.read(mapping), TODAY);
  }

  Outcome tried(String mapping) throws IOException {
    return by(mapping).tryOut(store, "Klara", NOON);
  }

  Outcome applied(String mapping) throws IOException {
    return by(mapping).applyAll(store, "Klara", NOON);
  }

  Outcome good(String mapping, Path rejects) throws IOException {
    return by(mapping).applyGood(store, rejects, "Klara", NOON);
  }

  /** What is wrong, one line each: line, column and reason. */
  static List<String> complaints(Outcome outcome) {
    return outcome.complaints().stream().map(TableFile::inWords).toList();
  }

  private static String inWords(Complaint complaint) {
    return complaint.line() + " " + complaint.inWords();
  }
}
