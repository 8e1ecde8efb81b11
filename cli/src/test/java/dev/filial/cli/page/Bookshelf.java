package dev.filial.cli.page;

import dev.filial.core.answer.PlantsBehindQuestion;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Weighted;
import dev.filial.core.store.MemoryStore;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Invented registers, in memory, to draw. */
final class Bookshelf {

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");
  static final String[] TAXA = {
    "agavoides",
    "colorata",
    "elegans",
    "laui",
    "lilacina",
    "pulvinata",
    "derenbergii",
    "setosa",
    "shaviana"
  };

  private Bookshelf() {}

  static RegisterView of(List<Statement> statements) {
    MemoryStore store = MemoryStore.empty();
    store.append(new RegisterOpened("KB", "Klara Beispiel", null), "Klara Beispiel", NOON);
    statements.forEach(statement -> store.append(statement, "Klara Beispiel", NOON));
    return store;
  }

  static PlantsBehind behind(RegisterView view, String code) {
    return PlantsBehindQuestion.of(view).ask(Code.parse(code));
  }

  static Statement plant(String code, @Nullable String taxon, String... names) {
    Determination what = taxon == null ? Determination.UNKNOWN : Determination.of(taxon);
    return new PlantAcquired(
        Code.parse(code), what, Provenance.UNKNOWN, null, Arrays.asList(names), false, null, null);
  }

  static Statement offset(String code, String of) {
    return new Propagated(
        Code.parse(code), Code.parse(of), null, null, false, List.of(), List.of(), null, null);
  }

  /** A cross and its first seedling. */
  static List<Statement> cross(String code, String seed, String pollen) {
    return cross(code, seed, new Pollen.OnePlant(Code.parse(pollen)));
  }

  static List<Statement> selfed(String code, String of) {
    return cross(code, of, new Pollen.Itself());
  }

  static List<Statement> cross(String code, String seed, Pollen pollen) {
    return List.of(
        pollinated(code, seed, pollen),
        new Numbered(Code.parse(code), 1, 1, null, null, null, null));
  }

  private static Statement pollinated(String code, String seed, Pollen pollen) {
    return new Pollinated(
        Code.parse(code),
        Code.parse(seed),
        pollen,
        null,
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

  /** Open pollination, three quarters of it by these two plants. */
  static Pollen bees(String one, String other) {
    return new Pollen.Open(
        List.of(
            new Weighted(Code.parse(one), Fraction.ONE),
            new Weighted(Code.parse(other), Fraction.ONE)),
        Fraction.of(1, 4));
  }

  /** Two species, their F1, its F2 by selfing, and the F2 crossed back to the F1: five plants. */
  static List<Statement> five() {
    List<Statement> all = new ArrayList<>();
    all.add(plant("24-001", "Echeveria laui", "Rosa"));
    all.add(plant("24-002", "Echeveria agavoides"));
    all.addAll(cross("24-003", "24-001", "24-002"));
    all.addAll(selfed("24-004", "24-003-1"));
    all.addAll(cross("24-005", "24-004-1", "24-003-1"));
    return all;
  }

  /** One of every kind of parent: crosses, selfing, offset, open pollination, an unknown plant. */
  static List<Statement> manyWays() {
    List<Statement> all = five();
    all.add(plant("24-006", null, "Mystery"));
    all.add(offset("24-007", "24-003-1"));
    all.addAll(cross("24-008", "24-007", bees("24-001", "24-006")));
    all.addAll(cross("24-009", "24-008-1", "24-005-1"));
    return all;
  }

  /**
   * Plants in eight rows, each of a row crossed from two of the rows before; the last plant,
   * 26-999-1, comes of the last row, so that most of them stand behind it.
   */
  static List<Statement> rows(int plants) {
    Random dice = new Random(7);
    List<Statement> all = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    int each = Math.max(2, plants / 8);
    int number = 0;
    for (int row = 0; row < 8; row++) {
      List<String> codes = new ArrayList<>();
      for (int i = 0; i < each && number < plants - 1; i++) {
        String code = "2%d-%03d".formatted(row / 3 + 3, ++number);
        if (row == 0) {
          codes.add(code);
          all.add(plant(code, "Echeveria " + TAXA[i % TAXA.length]));
          continue;
        }
        codes.add(code + "-1");
        List<String> before = rows.get(row - 1);
        String seed = before.get(i % before.size());
        List<String> earlier = dice.nextInt(4) == 0 ? rows.get(dice.nextInt(row)) : before;
        String pollen = earlier.get(dice.nextInt(earlier.size()));
        all.addAll(seed.equals(pollen) ? selfed(code, seed) : cross(code, seed, pollen));
      }
      rows.add(codes);
    }
    // Halved again and again until one plant has all of the last row behind it.
    List<String> last = rows.get(rows.size() - 1);
    int joined = 0;
    while (last.size() > 1) {
      List<String> next = new ArrayList<>();
      for (int i = 0; i + 1 < last.size(); i += 2) {
        String code = "26-%03d".formatted(500 + joined++);
        all.addAll(cross(code, last.get(i), last.get(i + 1)));
        next.add(code + "-1");
      }
      if (last.size() % 2 == 1) {
        next.add(last.get(last.size() - 1));
      }
      last = next;
    }
    all.addAll(selfed("26-999", last.get(0)));
    return all;
  }
}
