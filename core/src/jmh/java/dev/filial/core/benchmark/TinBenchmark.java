package dev.filial.core.benchmark;

import dev.filial.core.answer.FloweringQuestion;
import dev.filial.core.answer.OfferQuestion;
import dev.filial.core.answer.PairsQuestion;
import dev.filial.core.answer.SetsQuestion;
import dev.filial.core.answer.TinQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Bloom;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Promised;
import dev.filial.core.register.Protection;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.store.Book;
import dev.filial.core.store.SqliteStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The seed tin, the table of what set on what and what flowers together, on a register on disk in
 * which every cross has its fruit and its seed lot.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class TinBenchmark {

  private static final Instant TIME = Instant.parse("2026-01-01T12:00:00Z");
  private static final LocalDate TODAY = LocalDate.of(2026, 1, 1);
  private static final int PLANTS = 1_000;
  private static final int IN_FLOWER = 30;

  /** So many crosses among a thousand plants of twelve taxa; thirty plants are in flower. */
  @State(Scope.Benchmark)
  public static class Season {
    /** How many crosses there are. */
    @Param({"1000", "20000"})
    public int crosses;

    SqliteStore store;
    private Path folder;

    /** Writes the register. */
    @Setup
    public void write() throws IOException {
      folder = Files.createTempDirectory("filial-benchmark-");
      store =
          SqliteStore.create(
              folder.resolve("tin.register"), new RegisterOpened("KB", "Klara", null), TIME);
      store.write("Klara", TIME, this::fill);
    }

    private Void fill(Book book) {
      Random random = new Random(1);
      PartialDate year = PartialDate.parse("2025");
      for (int i = 1; i <= PLANTS; i++) {
        book.append(
            new PlantAcquired(
                Code.of(0, i),
                Determination.of("Echeveria taxon" + (char) ('a' + i % 12)),
                Provenance.UNKNOWN,
                PartialDate.parse("2000"),
                List.of(),
                false,
                null,
                null));
      }
      for (int i = 1; i <= IN_FLOWER; i++) {
        book.append(
            new Flowered(
                List.of(Code.of(0, i)), Bloom.OPEN, PartialDate.parse("2025-12-25"), null));
      }
      for (int i = 1; i <= crosses; i++) {
        Code cross = Code.of(25, i);
        Code seed = Code.of(0, 1 + random.nextInt(PLANTS));
        Code pollen = Code.of(0, 1 + random.nextInt(PLANTS));
        int set = random.nextInt(5);
        book.append(
            new Pollinated(
                cross,
                seed,
                seed.equals(pollen) ? new Pollen.Itself() : new Pollen.OnePlant(pollen),
                year,
                Count.of(4),
                List.of(Protection.BAGGED),
                Fraction.ZERO,
                Fraction.ZERO,
                Fraction.ZERO,
                null,
                null,
                false,
                null,
                null));
        book.append(
            new FruitRecorded(
                cross, year, Count.of(set), Count.of(4 - set), null, null, null, null));
        book.append(
            new Harvested(
                cross.lot(1), year, null, false, Count.of(40), null, null, null, null));
        if (i % 5 == 0) {
          book.append(new Promised(List.of(cross.lot(1)), Count.of(10), "Lena", year, null));
        }
      }
      return null;
    }

    /** Takes it away again. */
    @TearDown
    public void delete() throws IOException {
      store.close();
      Files.deleteIfExists(folder.resolve("tin.register"));
      Files.deleteIfExists(folder);
    }
  }

  /** Every seed lot. */
  @Benchmark
  public Object tin(Season season) {
    return season.store.read(view -> TinQuestion.of(view, TODAY).ask());
  }

  /** Every two plants that were crossed. */
  @Benchmark
  public Object setsByPlant(Season season) {
    return season.store.read(view -> SetsQuestion.of(view).ask());
  }

  /** Every two taxa. */
  @Benchmark
  public Object setsByTaxon(Season season) {
    return season.store.read(view -> SetsQuestion.of(view).by(SetsQuestion.By.TAXON).ask());
  }

  /** What is in flower. */
  @Benchmark
  public Object flowering(Season season) {
    return season.store.read(view -> FloweringQuestion.of(view, TODAY).ask());
  }

  /** The 435 pairs that flower together, with what came of their crosses. */
  @Benchmark
  public Object pairs(Season season) {
    return season.store.read(view -> PairsQuestion.of(view).on(TODAY));
  }

  /** A list for a club of all lots: the pedigree of each is looked up. */
  @Benchmark
  public Object offer(Season season) {
    return season.store.read(view -> OfferQuestion.of(view, TODAY).ask());
  }
}
