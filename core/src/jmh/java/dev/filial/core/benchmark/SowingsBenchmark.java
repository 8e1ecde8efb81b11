package dev.filial.core.benchmark;

import dev.filial.core.answer.GerminationQuestion;
import dev.filial.core.answer.GerminationQuestion.By;
import dev.filial.core.answer.SurvivalQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.Sown;
import dev.filial.core.store.Book;
import dev.filial.core.store.MemoryStore;
import dev.filial.core.store.RegisterStore;
import dev.filial.core.store.SqliteStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Germination and survival over a register on disk of 10,000 sowings, five of each of 2,000 crosses
 * of twelve species, each in one pot that was counted three times.
 */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 4)
@Fork(value = 1, jvmArgsAppend = {"-Xms2g", "-Xmx2g"})
@State(Scope.Benchmark)
public class SowingsBenchmark {

  private static final int CROSSES = 2_000;
  private static final int SOWINGS = 5;
  private static final Instant TIME = Instant.parse("2026-01-01T12:00:00Z");

  private Path file = Path.of("");
  private RegisterStore store = MemoryStore.empty();

  /** Writes the register. */
  @Setup(Level.Trial)
  public void write() throws IOException {
    file = Files.createTempDirectory("sowings").resolve("sowings.register");
    SqliteStore disk = SqliteStore.create(file, new RegisterOpened("KB", "Klara", null), TIME);
    disk.write(
        "Klara",
        TIME,
        book -> {
          fill(book);
          return book.size();
        });
    store = disk;
  }

  /** Takes it away again. */
  @TearDown(Level.Trial)
  public void close() throws IOException {
    store.close();
    Files.deleteIfExists(file);
    Files.deleteIfExists(file.getParent());
  }

  private static void fill(Book book) {
    Random random = new Random(1);
    List<Code> plants = new ArrayList<>();
    for (int i = 1; i <= 24; i++) {
      Code code = Code.of(20, i);
      plants.add(code);
      book.append(
          new PlantAcquired(
              code,
              Determination.of("Echeveria taxon" + (char) ('a' + i % 12)),
              Provenance.UNKNOWN,
              PartialDate.parse("2020"),
              List.of(),
              false,
              null,
              null));
    }
    for (int i = 1; i <= CROSSES; i++) {
      Code cross = Code.of(25, i);
      book.append(
          new Pollinated(
              cross,
              plants.get(random.nextInt(24)),
              new Pollen.OnePlant(plants.get(random.nextInt(24))),
              PartialDate.parse("2025-03"),
              Count.of(3),
              List.of(),
              Fraction.ZERO,
              Fraction.ZERO,
              Fraction.ZERO,
              null,
              null,
              false,
              null,
              null));
      book.append(
          new Harvested(
              cross.lot(1),
              PartialDate.parse("2025-06-01"),
              null,
              false,
              Count.of(200),
              null,
              null,
              null,
              null));
      for (int sowing = 1; sowing <= SOWINGS; sowing++) {
        sow(book, cross, sowing, random);
      }
    }
  }

  private static void sow(Book book, Code cross, int sowing, Random random) {
    LocalDate day = LocalDate.of(2025, 9, 1).plusDays(random.nextInt(60));
    Code pot = cross.group(sowing);
    book.append(
        new Sown(
            cross.sowing(sowing),
            cross.lot(1),
            PartialDate.of(day),
            Count.of(30),
            "medium " + random.nextInt(6),
            null,
            true,
            null,
            true,
            null,
            null,
            List.of(),
            List.of(new Sown.Filled(pot, Count.of(30), null)),
            null,
            null));
    int up = 0;
    for (int week = 1; week <= 3; week++) {
      up = Math.min(30, up + random.nextInt(12));
      book.append(
          new Counted(
              PartialDate.of(day.plusDays(7L * week)),
              List.of(
                  new Counted.Reading(
                      pot, Count.of(up), Count.of(up - random.nextInt(Math.min(3, up + 1))))),
              null));
    }
  }

  /** Germination by species: percentages, days and the curve of each. */
  @Benchmark
  public int germinationBySpecies() {
    return store.read(
        view -> GerminationQuestion.of(view).by(By.SPECIES).ask().groups().size());
  }

  /** Survival of all. */
  @Benchmark
  public int survival() {
    return store.read(view -> SurvivalQuestion.of(view).ask(null).died());
  }
}
