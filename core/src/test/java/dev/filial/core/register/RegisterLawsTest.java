package dev.filial.core.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

class RegisterLawsTest {

  /** A book written by chance, and what became of each thing said. */
  private static final class Story {
    private final Bench bench = new Bench();
    private final Dice dice;
    private int taken;
    private int refused;

    Story(long seed) {
      dice = new Dice(bench.book, seed);
    }

    /** Says one thing; gives what was accepted, if it was. */
    Optional<Clerk.Outcome> step() {
      try {
        Statement statement = dice.statement();
        Clerk.Outcome outcome = Clerk.of(bench.book).accept(statement, "Klara", Bench.NOON);
        taken++;
        return Optional.of(outcome);
      } catch (RegisterRefusal e) {
        refused++;
        return Optional.empty();
      } catch (IllegalArgumentException e) {
        return Optional.empty(); // said what not even makes a statement
      }
    }

    RegisterTables book() {
      return bench.book;
    }

    List<Entry> entries() {
      return LongStream.rangeClosed(1, book().size())
          .mapToObj(n -> book().entry(n).orElseThrow())
          .toList();
    }

    Snapshot snapshot() {
      return Snapshot.of(book(), Snapshot.subjects(book()));
    }

    static Story told(long seed, int steps) {
      Story story = new Story(seed);
      for (int i = 0; i < steps; i++) {
        story.step().ifPresent(outcome -> story.book().apply(outcome.delta()));
      }
      return story;
    }
  }

  @Property(tries = 30, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void replayingTheEntriesGivesTheSameTables(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 150) int steps) {
    Story story = Story.told(seed, steps);
    Register replayed = Register.replay(story.entries());
    Set<Subject> subjects = Snapshot.subjects(story.book());
    assertThat(Snapshot.of(replayed, subjects)).isEqualTo(story.snapshot());
    assertThat(replayed.isAllDiploid()).isEqualTo(story.book().isAllDiploid());
  }

  @Property(tries = 12, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void whatIsRefusedChangesNothing(@ForAll long seed) {
    Story story = new Story(seed);
    for (int i = 0; i < 120; i++) {
      Snapshot before = story.snapshot();
      Optional<Clerk.Outcome> outcome = story.step();
      assertThat(story.snapshot()).isEqualTo(before);
      outcome.ifPresent(it -> story.book().apply(it.delta()));
    }
  }

  @Property(tries = 12, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void everyEntryInForceHoldsAfterEachStep(@ForAll long seed) {
    Story story = new Story(seed);
    for (int i = 0; i < 120; i++) {
      story.step().ifPresent(outcome -> story.book().apply(outcome.delta()));
      for (long n = 1; n <= story.book().size(); n++) {
        Optional<Statement> said = story.book().effective(n);
        if (said.isPresent()) {
          new Rules(story.book(), new ArrayList<>()).check(n, said.get());
        }
      }
    }
  }

  @Property(tries = 12, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void theDraftShowsWhatTheTablesWillShow(@ForAll long seed) {
    Story story = Story.told(seed, 60);
    for (int i = 0; i < 40; i++) {
      Optional<Clerk.Outcome> outcome = story.step();
      if (outcome.isEmpty()) {
        continue;
      }
      Delta delta = outcome.get().delta();
      Draft draft = new Draft(Register.of(story.book()));
      delta.entries().forEach(draft::add);
      Set<Subject> touched = new LinkedHashSet<>();
      for (Change change : delta.changes()) {
        change.before().ifPresent(said -> touched.addAll(said.subjects()));
        change.after().ifPresent(said -> touched.addAll(said.subjects()));
        draft.say(change.entry(), change.after());
      }
      delta.items().forEach(item -> touched.add(Subject.of(item.code())));
      draft.derive(touched);
      story.book().apply(delta);
      Set<Subject> subjects = Snapshot.subjects(story.book());
      assertThat(Snapshot.of(draft, subjects)).isEqualTo(Snapshot.of(story.book(), subjects));
      assertThat(draft.delta())
          .usingRecursiveComparison()
          .ignoringCollectionOrder()
          .isEqualTo(delta);
      if (draft.isAllDiploid()) {
        assertThat(story.book().isAllDiploid()).isTrue();
      }
    }
  }

  @Property(tries = 12, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void theLastEntryCanAlwaysBeUndoneAndThenAllIsAsBefore(@ForAll long seed) {
    Story story = Story.told(seed, 50);
    for (int i = 0; i < 40; i++) {
      Set<Subject> subjects = Snapshot.subjects(story.book());
      Snapshot before = Snapshot.of(story.book(), subjects);
      Optional<Clerk.Outcome> outcome = story.step();
      if (outcome.isEmpty()) {
        continue;
      }
      RegisterTables after = new RegisterTables(story.book());
      after.apply(outcome.get().delta());
      long last = after.size();
      after.apply(
          Clerk.of(after).accept(new Amended(last, null, "undone"), "Klara", Bench.NOON).delta());
      Snapshot undone = Snapshot.of(after, subjects);
      for (Subject subject : subjects) {
        if (subject.kind() == Subject.Kind.CODE) {
          String key = "taken " + subject.key();
          Item now = after.taken(dev.filial.core.name.Code.parse(subject.key())).orElse(null);
          if (now != null && now.struck()) {
            continue; // what was never there before is now struck; what was struck stays so
          }
          assertThat(undone.answers().get(key)).isEqualTo(before.answers().get(key));
          assertThat(undone.answers().get("lineage " + subject.key()))
              .isEqualTo(before.answers().get("lineage " + subject.key()));
        }
      }
      for (String question : List.of("items", "taxa", "traits", "named", "opening")) {
        assertThat(undone.answers().get(question))
            .as(question)
            .isEqualTo(before.answers().get(question));
      }
      for (long n = 1; n < last; n++) {
        assertThat(after.effective(n)).isEqualTo(story.book().effective(n));
      }
      story.book().apply(outcome.get().delta());
    }
  }

  @Property(tries = 12, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void entriesAreNeverChanged(@ForAll long seed) {
    Story story = new Story(seed);
    List<Entry> written = new ArrayList<>(story.entries());
    for (int i = 0; i < 150; i++) {
      story.step().ifPresent(outcome -> story.book().apply(outcome.delta()));
      List<Entry> now = story.entries();
      assertThat(now).startsWith(written.toArray(Entry[]::new));
      written = new ArrayList<>(now);
    }
  }

  @Property(tries = 10, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void theStoryIsNotAllRefusals(@ForAll long seed) {
    Story story = Story.told(seed, 400);
    assertThat(story.taken).isGreaterThan(60);
    assertThat(story.refused).isGreaterThan(20);
  }

  @Property(tries = 200, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void anyByteOfAnyFieldBreaksTheChain(
      @ForAll long seed,
      @ForAll @IntRange(min = 0, max = 4) int field,
      @ForAll @IntRange(min = 0, max = 10_000) int place,
      @ForAll @IntRange(min = 1, max = 127) int flip) {
    List<Entry> entries = new ArrayList<>(Story.told(seed, 6).entries());
    int which = place % entries.size();
    entries.set(which, damaged(entries.get(which), field, place, flip));
    RegisterTables tables = new RegisterTables();
    long broken = 0;
    for (Entry entry : entries) {
      try {
        tables.apply(Clerk.of(tables).reread(entry));
      } catch (RegisterRefusal e) {
        assertThat(e.getMessage()).contains("is not as it was written");
        broken = tables.size() + 1;
        break;
      }
    }
    assertThat(broken).isEqualTo(which + 1L);
  }

  private static Entry damaged(Entry entry, int field, int place, int flip) {
    return switch (field) {
      case 0 ->
          new Entry(entry.number() + flip, entry.time(), entry.by(), entry.body(), entry.digest());
      case 1 -> {
        Instant time = entry.time().plusSeconds(flip);
        yield new Entry(entry.number(), time, entry.by(), entry.body(), entry.digest());
      }
      case 2 ->
          new Entry(
              entry.number(),
              entry.time(),
              flipped(entry.by(), place, flip),
              entry.body(),
              entry.digest());
      case 3 ->
          new Entry(
              entry.number(),
              entry.time(),
              entry.by(),
              flipped(entry.body(), place, flip),
              entry.digest());
      default ->
          new Entry(
              entry.number(),
              entry.time(),
              entry.by(),
              entry.body(),
              flipped(entry.digest(), place, flip));
    };
  }

  private static String flipped(String text, int place, int flip) {
    StringBuilder changed = new StringBuilder(text);
    int at = place % text.length();
    changed.setCharAt(at, (char) (text.charAt(at) ^ flip));
    return changed.toString();
  }
}
