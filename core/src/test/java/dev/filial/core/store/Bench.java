package dev.filial.core.store;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/** An invented grower's entries and files, for the tests of the store. */
final class Bench {

  static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");
  static final RegisterOpened OPENING = new RegisterOpened("KB", "Klara", null);

  private Bench() {}

  static PlantAcquired plant(Code code, String taxon) {
    return new PlantAcquired(
        code,
        Determination.of(taxon),
        Provenance.UNKNOWN,
        PartialDate.parse("2024"),
        List.of("Rosa " + code.number()),
        false,
        null,
        null);
  }

  static Pollinated cross(Code code, Code seed, Code pollen) {
    return new Pollinated(
        code,
        seed,
        new Pollen.OnePlant(pollen),
        PartialDate.parse("2026-03-04"),
        Count.of(3),
        List.of(),
        Fraction.ZERO,
        Fraction.ZERO,
        Fraction.ZERO,
        null,
        null,
        false,
        null,
        null);
  }

  /** A register of two plants and their cross: four entries. */
  static Path register(Path file) {
    try (SqliteStore store = SqliteStore.create(file, OPENING, NOON)) {
      fill(store);
    }
    return file;
  }

  static void fill(RegisterStore store) {
    store.write(
        "Klara",
        NOON,
        book -> {
          book.append(plant(Code.of(24, 1), "Echeveria laui"));
          book.append(plant(Code.of(24, 2), "Echeveria agavoides"));
          return book.append(cross(Code.of(26, 1), Code.of(24, 1), Code.of(24, 2)));
        });
  }

  /** What lies in a folder, by name. */
  static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
