package dev.filial.core.store;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteStoreTest {

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");

  @TempDir Path folder;

  private static PlantAcquired plant(Code code, String taxon) {
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

  private static Pollinated cross(Code code, Code seed, Code pollen) {
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

  @Test
  void whatWasWrittenIsThereWhenTheFileIsOpenedAgain() throws Exception {
    Path file = folder.resolve("odd name?%20 'x'.filial");
    try (SqliteStore store =
        SqliteStore.create(file, new RegisterOpened("KB", "Klara", null), NOON)) {
      store.append(plant(Code.of(24, 1), "Echeveria laui"), "Klara", NOON);
      store.append(plant(Code.of(24, 2), "Echeveria agavoides"), "Klara", NOON);
      store.append(cross(Code.of(26, 1), Code.of(24, 1), Code.of(24, 2)), "Klara", NOON);
      store.append(
          new Amended(4, cross(Code.of(26, 1), Code.of(24, 2), Code.of(24, 1)), "other way round"),
          "Klara",
          NOON);
    }
    try (SqliteStore store = SqliteStore.open(file)) {
      Item cross = store.item(Code.of(26, 1)).orElseThrow();
      assertThat(cross.descent().get(0).seed()).isEqualTo(Code.of(24, 2));
      assertThat(store.lineage(List.of(Code.of(26, 1)))).hasSize(3);
      assertThat(store.named("rosa", 10)).hasSize(2);
      assertThat(store.verify().faults()).isEmpty();
    }
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(file);
    }
  }
}
