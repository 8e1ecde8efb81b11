package dev.filial.core.benchmark;

import dev.filial.core.answer.RegisterPedigree;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.store.Book;
import dev.filial.core.store.SqliteStore;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Writes a register of 100,000 crosses, for whole-process measurements, and names a plant of at most
 * 600 ancestors and two plants to cross.
 *
 * <p>Two thousand plants of twelve taxa, then forty seasons of 2,500 crosses whose parents are of
 * the same line, so that pedigrees grow deep and tangled without holding the whole register.
 */
final class LargeRegister {

  private static final int FOUNDERS = 2_000;
  private static final int LINES = 50;
  private static final int SEASONS = 40;
  private static final int CROSSES = 2_500;
  private static final int ANCESTORS = 600;
  private static final Instant TIME = Instant.parse("2026-01-01T12:00:00Z");

  private LargeRegister() {}

  public static void main(String[] args) {
    Path file = Path.of(args[0]);
    long begun = System.nanoTime();
    try (SqliteStore store =
        SqliteStore.create(file, new RegisterOpened("KB", "Klara", null), TIME)) {
      List<List<Code>> lines = store.write("Klara", TIME, LargeRegister::fill);
      System.err.printf(
          "%d entries in %.1f s%n", store.size(), (System.nanoTime() - begun) / 1e9);
      System.out.println(plant(store, lines) + " " + lines.get(0).get(0).text() + " "
          + lines.get(1).get(1).text());
    }
  }

  private static List<List<Code>> fill(Book book) {
    Random random = new Random(1);
    List<List<Code>> lines = new ArrayList<>();
    for (int line = 0; line < LINES; line++) {
      lines.add(new ArrayList<>());
    }
    for (int i = 1; i <= FOUNDERS; i++) {
      Code code = Code.of(0, i);
      book.append(
          new PlantAcquired(
              code,
              Determination.of("Echeveria taxon" + (char) ('a' + i % 12)),
              Provenance.UNKNOWN,
              PartialDate.parse("1980"),
              List.of(),
              false,
              null,
              null));
      lines.get(i % LINES).add(code);
    }
    for (int season = 1; season <= SEASONS; season++) {
      List<List<Code>> next = new ArrayList<>();
      lines.forEach(line -> next.add(new ArrayList<>()));
      for (int i = 1; i <= CROSSES; i++) {
        int line = i % LINES;
        List<Code> parents = lines.get(line);
        Code code = Code.of(season, i);
        book.append(
            cross(
                code,
                parents.get(random.nextInt(parents.size())),
                parents.get(random.nextInt(parents.size())),
                1980 + season));
        book.append(new Numbered(code, 1, 2, null, null, null, null));
        next.get(line).add(code.seedling(1 + random.nextInt(2)));
      }
      for (int line = 0; line < LINES; line++) {
        lines.set(line, next.get(line).subList(0, 14));
      }
    }
    return lines;
  }

  private static Pollinated cross(Code code, Code seed, Code pollen, int year) {
    return new Pollinated(
        code,
        seed,
        seed.equals(pollen) ? new Pollen.Itself() : new Pollen.OnePlant(pollen),
        PartialDate.parse(Integer.toString(year)),
        null,
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

  /** The plant of the most ancestors that are not above the bound. */
  private static String plant(SqliteStore store, List<List<Code>> lines) {
    String best = "";
    int most = -1;
    for (List<Code> line : lines) {
      for (Code code : line) {
        int ancestors =
            RegisterPedigree.of(store, List.of(code), false).pedigree().size() - 1;
        if (ancestors <= ANCESTORS && ancestors > most) {
          most = ancestors;
          best = code.text();
        }
      }
    }
    System.err.println(best + " has " + most + " ancestors");
    return best;
  }
}
