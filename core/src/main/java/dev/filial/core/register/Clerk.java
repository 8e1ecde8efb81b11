package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Takes statements into a book: numbers and seals them, has the rules look at them, and works out
 * what changes.
 *
 * <p>The register beneath is only read. What was accepted is handed over as a {@link Delta}, for
 * whoever keeps the register to apply whole. Cost of one plain entry: the statements made about the
 * few things it touches; of an amendment: those, and every statement that leans on them.
 */
public final class Clerk {

  /** How many of the entries that stand against an amendment are named in its refusal. */
  private static final int NAMED = 5;

  private final RegisterView book;

  private Clerk(RegisterView book) {
    this.book = book;
  }

  /** A clerk who writes to {@code book}. */
  public static Clerk of(RegisterView book) {
    return new Clerk(book);
  }

  /**
   * What a clerk accepted and what it changes.
   *
   * @param accepted the entry and its warnings
   * @param delta what to apply
   */
  public record Outcome(Accepted accepted, Delta delta) {}

  /**
   * Accepts one statement.
   *
   * @param by who writes
   * @param time when; kept to the second
   * @throws RegisterRefusal if a rule refuses it; the message names the plants and the remedy
   */
  public Outcome accept(Statement statement, String by, Instant time) {
    requireWriter(by);
    requireOpening(statement);
    long number = book.size() + 1;
    String body = EntryJson.write(statement);
    Entry entry =
        Entry.seal(number, time.truncatedTo(ChronoUnit.SECONDS), by.strip(), body, lastDigest());
    Statement said = reread(body);
    new Amending(book).check(said);
    Draft draft = new Draft(book);
    List<String> warnings = new ArrayList<>();
    Touched touched = write(draft, entry, said);
    for (long changed : touched.entries()) {
      draft.effective(changed).ifPresent(now -> FreeCodes.require(book, changed, now));
    }
    requireNoCircles(draft, touched.subjects());
    new Rules(draft, warnings).check(number, said);
    new NewlySaid(draft, warnings).check(number, said);
    if (said instanceof Amended amended) {
      JoinRules.warnOfEndsStillTold(book, amended, warnings);
    }
    recheck(draft, number, said, touched, warnings);
    return new Outcome(new Accepted(entry, warnings), draft.delta());
  }

  /** What is taken is what will be read back, to the last digit. */
  private static Statement reread(String body) {
    if (hasHalfACharacter(body)) {
      throw new RegisterRefusal(
          "the entry holds half a character, which no file keeps; type that text again");
    }
    try {
      return EntryJson.read(body);
    } catch (IllegalArgumentException e) {
      throw new RegisterRefusal(String.valueOf(e.getMessage()));
    }
  }

  /** Whether a surrogate stands without its other half. */
  private static boolean hasHalfACharacter(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isSurrogate(c)) {
        if (Character.isLowSurrogate(c)
            || i + 1 == text.length()
            || !Character.isLowSurrogate(text.charAt(i + 1))) {
          return true;
        }
        i++;
      }
    }
    return false;
  }

  private String lastDigest() {
    return book.size() == 0 ? Entry.NO_DIGEST : book.entry(book.size()).orElseThrow().digest();
  }

  /**
   * Works out what an entry changes that was accepted long ago; the rules are not asked again,
   * since they may have grown stricter than they were on the day.
   *
   * @throws RegisterRefusal if the entry is not the next one, or is not as it was sealed
   */
  public Delta reread(Entry entry) {
    long number = book.size() + 1;
    if (entry.number() != number || !entry.isIntact(lastDigest())) {
      throw new RegisterRefusal(
          "entry "
              + entry.number()
              + " is not as it was written: its digest does not fit; restore the register from a"
              + " copy",
          List.of(entry.number()));
    }
    Draft draft = new Draft(book);
    write(draft, entry, entry.statement());
    return draft.delta();
  }

  /** The entries whose meaning changes, and what they are about. */
  private record Touched(Set<Long> entries, Set<Subject> subjects) {}

  private Touched write(Draft draft, Entry entry, Statement statement) {
    draft.add(entry);
    Set<Long> changed = new TreeSet<>();
    change(draft, entry.number(), Optional.of(statement), changed);
    Set<Subject> subjects = touched(draft);
    draft.derive(subjects);
    return new Touched(changed, subjects);
  }

  private static void requireWriter(String by) {
    if (by.isBlank() || by.chars().anyMatch(Character::isISOControl) || hasHalfACharacter(by)) {
      throw new RegisterRefusal("an entry says who wrote it: give a name on one line");
    }
  }

  private void requireOpening(Statement statement) {
    if (book.size() == 0 && !(statement instanceof RegisterOpened)) {
      throw new RegisterRefusal("this register is empty; its first entry says whose it is");
    }
    if (book.size() > 0 && statement instanceof RegisterOpened) {
      throw new RegisterRefusal(
          "this register has been opened already; amend entry 1 to change its mark or its keeper");
    }
  }

  /** Sets what entry {@code number} says, and what other entries say because of it. */
  private static void change(Draft draft, long number, Optional<Statement> now, Set<Long> changed) {
    Optional<Statement> before = draft.effective(number);
    draft.say(number, now);
    changed.add(number);
    Set<Long> targets = new LinkedHashSet<>();
    before.ifPresent(statement -> targets.addAll(targets(statement)));
    now.ifPresent(statement -> targets.addAll(targets(statement)));
    for (long target : targets) {
      change(draft, target, InForce.statement(draft, target), changed);
    }
  }

  private static Set<Long> targets(Statement statement) {
    if (statement instanceof Amended amended) {
      return Set.of(amended.entry());
    }
    return statement instanceof Parted parted ? Set.copyOf(parted.entries()) : Set.of();
  }

  /** All that the changed entries said or say something about. */
  private static Set<Subject> touched(Draft draft) {
    // Sorted, so that of two things to complain about it is always the same one.
    Set<Subject> touched =
        new TreeSet<>(Comparator.comparing(Subject::kind).thenComparing(Subject::key));
    for (Change change : draft.changes()) {
      touched.addAll(change.concernedBefore().subjects());
      touched.addAll(change.concernedAfter().subjects());
      addDoubted(draft, change.before(), touched);
      addDoubted(draft, change.after(), touched);
    }
    return touched;
  }

  /** A guess is told of what the doubted entry introduced. */
  private static void addDoubted(Draft draft, Optional<Statement> statement, Set<Subject> touched) {
    if (statement.orElse(null) instanceof Doubted doubted) {
      draft
          .effective(doubted.entry())
          .ifPresent(
              said -> Introduction.codes(said).forEach(code -> touched.add(Subject.of(code))));
    }
  }

  /**
   * Chains of names and of joins are followed everywhere, so they must end before any rule asks.
   */
  private static void requireNoCircles(Draft draft, Set<Subject> touched) {
    for (Subject subject : touched) {
      if (subject.kind() == Subject.Kind.TAXON) {
        NameChains.requireNoLoop(draft, subject.key());
      } else if (subject.kind() == Subject.Kind.CODE) {
        Item item = draft.taken(Code.parse(subject.key())).orElse(null);
        if (item != null && item.sameAs() != null) {
          JoinRules.requireNoCircle(draft, item.code());
        }
      }
    }
  }

  /** Whether the changed entries can say what they say now, and all that hangs on them holds. */
  private void recheck(
      Draft draft, long number, Statement statement, Touched touched, List<String> warnings) {
    boolean changes = touched.entries().size() > 1 || statement instanceof Joined;
    if (!changes && !(statement instanceof TaxonDeclared) && !(statement instanceof TaxonRenamed)) {
      return; // nothing that stands leans on what was never there before
    }
    for (long entry : touched.entries()) {
      draft
          .effective(entry)
          .filter(said -> entry != number)
          .ifPresent(said -> recheckChanged(new Rules(draft, warnings), entry, said));
    }
    Hanging found = new Hanging(book, draft);
    Set<Long> hanging = new TreeSet<>(found.withOtherSets(touched.subjects()));
    if (changes) {
      hanging.addAll(found.on(touched.subjects()));
    }
    hanging.removeAll(touched.entries());
    List<Long> against = new ArrayList<>();
    Map<String, List<Long>> reasons = new LinkedHashMap<>();
    for (long entry : hanging) {
      try {
        // What is unlikely of these was said when they were written.
        Rules rules = new Rules(draft, new ArrayList<>());
        draft.effective(entry).ifPresent(said -> rules.recheck(entry, said));
      } catch (RegisterRefusal e) {
        against.add(entry);
        if (against.size() <= NAMED) {
          reasons
              .computeIfAbsent(String.valueOf(e.getMessage()), any -> new ArrayList<>())
              .add(entry);
        }
      }
    }
    if (!against.isEmpty()) {
      throw refusal(against, reasons);
    }
  }

  private static void recheckChanged(Rules rules, long entry, Statement said) {
    try {
      rules.recheck(entry, said);
    } catch (RegisterRefusal e) {
      throw new RegisterRefusal(
          "entry " + entry + " cannot say so: " + e.getMessage(), e.entries());
    }
  }

  private static RegisterRefusal refusal(List<Long> against, Map<String, List<Long>> reasons) {
    boolean one = against.size() == 1;
    String more = against.size() > NAMED ? "; and " + (against.size() - NAMED) + " more" : "";
    return new RegisterRefusal(
        (one
                ? "an entry hangs on it and would no longer hold: "
                : against.size() + " entries hang directly on it and would no longer hold: ")
            + reasons.entrySet().stream()
                .map(reason -> entries(reason.getValue()) + ": " + reason.getKey())
                .collect(Collectors.joining("; "))
            + more
            + ". Amend or strike "
            + (one ? "it" : "these")
            + " first",
        against);
  }

  private static String entries(List<Long> numbers) {
    return (numbers.size() == 1 ? "entry " : "entries ")
        + numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }
}
