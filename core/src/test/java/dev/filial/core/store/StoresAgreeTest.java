package dev.filial.core.store;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Item;
import dev.filial.core.register.Places;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Whatever is written, the register in memory and the register on disk give the same answers. */
class StoresAgreeTest {

  @Property(tries = 20)
  void memoryAndDiskAnswerAlike(@ForAll long seed, @ForAll @IntRange(min = 1, max = 120) int length)
      throws IOException {
    Path folder = Files.createTempDirectory("filial-test-");
    Path file = folder.resolve("agree.filial");
    try (SqliteStore disk = SqliteStore.create(file, Bench.OPENING, Bench.NOON)) {
      MemoryStore memory = MemoryStore.empty();
      memory.append(Bench.OPENING, "Klara", Bench.NOON);
      // One write, since durability is not the question and costs most of the time.
      disk.write(
          "Klara",
          Bench.NOON,
          book -> {
            RandomBook statements = new RandomBook(memory, seed);
            for (int i = 0; i < length; i++) {
              Statement statement = statements.next();
              assertThat(said(statement, it -> book.append(it)))
                  .isEqualTo(said(statement, it -> memory.append(it, "Klara", Bench.NOON)));
              if (i % 12 == 11) {
                requireAlike(memory, book); // and all of it is now at hand, and may grow stale
              }
            }
            requireAlike(memory, book);
            return book.size();
          });
      requireAlike(memory, disk);
      assertThat(disk.verify()).isEqualTo(memory.verify());
      assertThat(disk.verify().faults()).isEmpty();
      assertThat(MemoryStore.of(disk.read(StoresAgreeTest::entries)).snapshot().size())
          .isEqualTo(memory.size());
    }
    try (SqliteStore again = SqliteStore.open(file)) {
      assertThat(again.verify().isSound()).isTrue();
    } finally {
      Files.delete(file);
      Files.delete(folder); // fails if anything was left beside the file
    }
  }

  /** Read while others are looked up, as a question does it. */
  private static Map<Long, Statement> readOf(
      RegisterView view, Set<Class<? extends Statement>> kinds) {
    Map<Long, Statement> read = new LinkedHashMap<>();
    view.readAll(
        kinds,
        (statement, entry) -> {
          assertThat(view.effective(entry)).contains(statement);
          read.put(entry, statement);
        });
    return read;
  }

  private static List<dev.filial.core.register.Entry> entries(RegisterView view) {
    List<dev.filial.core.register.Entry> entries = new ArrayList<>();
    for (long number = 1; number <= view.size(); number++) {
      entries.add(view.entry(number).orElseThrow());
    }
    return entries;
  }

  /** The entry, or in which words it was refused. */
  private static Object said(Statement statement, Function<Statement, Accepted> store) {
    try {
      return store.apply(statement);
    } catch (RegisterRefusal e) {
      return e.getMessage();
    }
  }

  private static void requireAlike(RegisterView memory, RegisterView disk) {
    assertThat(disk.size()).isEqualTo(memory.size());
    assertThat(disk.entry(memory.size() + 1)).isEmpty();
    assertThat(disk.opening()).isEqualTo(memory.opening());
    assertThat(disk.taxa()).isEqualTo(memory.taxa());
    assertThat(disk.traits()).isEqualTo(memory.traits());
    assertThat(disk.isAllDiploid()).isEqualTo(memory.isAllDiploid());
    for (Subject.Kind kind : Subject.Kind.values()) {
      assertThat(disk.keys(kind)).as("%s", kind).isEqualTo(memory.keys(kind));
    }
    assertThat(disk.loci()).isEqualTo(memory.loci());
    for (Item.Kind kind : Item.Kind.values()) {
      assertThat(disk.items(EnumSet.of(kind))).isEqualTo(memory.items(EnumSet.of(kind)));
    }
    assertThat(disk.items(EnumSet.allOf(Item.Kind.class)))
        .isEqualTo(memory.items(EnumSet.allOf(Item.Kind.class)));
    assertThat(disk.items(EnumSet.noneOf(Item.Kind.class))).isEmpty();
    for (Class<?> kind : Statement.class.getPermittedSubclasses()) {
      Set<Class<? extends Statement>> one = Set.of(kind.asSubclass(Statement.class));
      assertThat(disk.entriesOf(one)).as("%s", kind).isEqualTo(memory.entriesOf(one));
    }
    assertThat(disk.entriesOf(Set.of(Pollinated.class, PlantAcquired.class)))
        .isEqualTo(memory.entriesOf(Set.of(Pollinated.class, PlantAcquired.class)));
    assertThat(readOf(disk, Set.of(Pollinated.class, PlantAcquired.class)))
        .isEqualTo(readOf(memory, Set.of(Pollinated.class, PlantAcquired.class)));
    Set<Class<? extends Statement>> all = new LinkedHashSet<>();
    for (Class<?> kind : Statement.class.getPermittedSubclasses()) {
      all.add(kind.asSubclass(Statement.class));
    }
    Map<Long, Statement> effective = new LinkedHashMap<>();
    for (long number = 1; number <= memory.size(); number++) {
      Optional<Statement> said = memory.effective(number);
      if (said.isPresent()) {
        effective.put(number, said.get());
      }
    }
    assertThat(readOf(disk, all)).isEqualTo(readOf(memory, all)).isEqualTo(effective);
    List<Code> codes =
        memory.items(EnumSet.allOf(Item.Kind.class)).stream().map(Item::code).toList();
    assertThat(disk.resolvedOf(codes)).isEqualTo(memory.resolvedOf(codes)).hasSameSizeAs(codes);
    codes.forEach(
        code ->
            assertThat(disk.resolvedOf(List.of(code)).get(code))
                .isEqualTo(memory.resolved(code).orElseThrow()));
    Set<Subject> subjects = new LinkedHashSet<>();
    for (long number = 1; number <= memory.size(); number++) {
      assertThat(disk.entry(number)).isEqualTo(memory.entry(number));
      Optional<Statement> said = memory.effective(number);
      assertThat(disk.effective(number)).isEqualTo(said);
      subjects.add(Subject.entry(number));
      for (Statement statement :
          List.of(said.orElse(Bench.OPENING), memory.entry(number).orElseThrow().statement())) {
        subjects.addAll(statement.subjects());
        subjects.addAll(statement.mentions());
      }
    }
    for (Subject subject : subjects) {
      assertThat(disk.entriesOn(subject)).as("%s", subject).isEqualTo(memory.entriesOn(subject));
      assertThat(disk.entriesMentioning(subject)).isEqualTo(memory.entriesMentioning(subject));
      assertThat(disk.firstMention(subject)).isEqualTo(memory.firstMention(subject));
      switch (subject.kind()) {
        case CODE -> requireAlike(memory, disk, Code.parse(subject.key()));
        case TAXON -> assertThat(disk.taxon(subject.key())).isEqualTo(memory.taxon(subject.key()));
        case TRAIT -> assertThat(disk.trait(subject.key())).isEqualTo(memory.trait(subject.key()));
        case LOCUS -> assertThat(disk.locus(subject.key())).isEqualTo(memory.locus(subject.key()));
        case FIELD_NUMBER ->
            assertThat(disk.population(subject.key())).isEqualTo(memory.population(subject.key()));
        case PLACE ->
            assertThat(Places.of(disk).around(subject.key()))
                .isEqualTo(Places.of(memory).around(subject.key()));
        case ENTRY, INTERVAL, CAUTION -> {}
      }
    }
    for (int year : List.of(24, 25, 26)) {
      assertThat(disk.lastNumber(year)).isEqualTo(memory.lastNumber(year));
    }
    for (String beginning : List.of("", "r", "ROSA", "rosa ", "Ä%", "薔", "number", "none")) {
      assertThat(List.copyOf(disk.named(beginning, 100).entrySet()))
          .as("named %s", beginning)
          .isEqualTo(List.copyOf(memory.named(beginning, 100).entrySet()));
      assertThat(disk.named(beginning, 2)).isEqualTo(memory.named(beginning, 2));
    }
    for (String beginning : List.of("", "2", "24-0", "25-001", "9")) {
      assertThat(disk.codesBeginning(beginning, 7)).isEqualTo(memory.codesBeginning(beginning, 7));
    }
  }

  private static void requireAlike(RegisterView memory, RegisterView disk, Code code) {
    assertThat(disk.taken(code)).isEqualTo(memory.taken(code));
    assertThat(disk.item(code)).isEqualTo(memory.item(code));
    assertThat(disk.resolved(code)).isEqualTo(memory.resolved(code));
    assertThat(disk.codesUnder(code.whole())).isEqualTo(memory.codesUnder(code.whole()));
    for (Item.Kind kind : Item.Kind.values()) {
      assertThat(disk.lastSuffix(code.whole(), kind))
          .isEqualTo(memory.lastSuffix(code.whole(), kind));
    }
    List<Code> twice = List.of(code, Code.of(24, 1), code.whole(), code);
    assertThat(disk.itemsOf(twice)).isEqualTo(memory.itemsOf(twice));
    // The one asks SQLite to climb, the other climbs step by step.
    assertThat(disk.lineage(List.of(code))).isEqualTo(memory.lineage(List.of(code)));
    assertThat(disk.lineage(List.of(code, Code.of(24, 1))))
        .isEqualTo(memory.lineage(List.of(code, Code.of(24, 1))));
  }
}
