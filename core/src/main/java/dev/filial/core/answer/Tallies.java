package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Potted;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Tallied;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The tallies of one trait in some pots, chosen so that no seedling counts twice.
 *
 * <p>Of one pot the latest tally holds. Seedlings that were potted on after it are in it still:
 * where they were tallied again, whichever of the two has more seedlings is taken, and the other
 * left out. A tally made after the potting has only those that stayed, and both count.
 */
final class Tallies {

  private final RegisterView view;
  private final LastSeen trait;
  private final Map<Code, Made> made = new LinkedHashMap<>();
  private final Map<Code, List<Code>> filledFrom = new LinkedHashMap<>();
  private final Set<Code> pots;
  private final List<String> notes = new ArrayList<>();

  /** A tally, its entry, and its day as a number; nothing else is earlier where none was given. */
  private record Made(Tallied tally, long entry, long day) {
    long seedlings() {
      return tally.counts().values().stream().mapToLong(Long::longValue).sum();
    }
  }

  private Tallies(RegisterView view, LastSeen trait, Set<Code> pots) {
    this.view = view;
    this.trait = trait;
    this.pots = pots;
  }

  /** Of these pots and sowings, which are all of one family. */
  static Tallies of(RegisterView view, LastSeen trait, List<Code> pots) {
    Tallies tallies = new Tallies(view, trait, new HashSet<>(pots));
    for (Code pot : pots) {
      tallies.last(pot).ifPresent(found -> tallies.made.put(pot, found));
      tallies
          .source(pot)
          .filter(tallies.pots::contains)
          .ifPresent(
              from -> tallies.filledFrom.computeIfAbsent(from, any -> new ArrayList<>()).add(pot));
    }
    return tallies;
  }

  /** The tallies that count, by pot. */
  Map<Code, Tallied> chosen() {
    Map<Code, Tallied> chosen = new LinkedHashMap<>();
    for (Code pot : pots.stream().sorted().toList()) {
      if (source(pot).filter(pots::contains).isEmpty()) {
        chosen.putAll(under(pot, new HashSet<>()));
      }
    }
    return chosen;
  }

  /** The entry of the tally that was chosen of a pot. */
  long entry(Code pot) {
    Made found = made.get(pot);
    if (found == null) {
      throw new IllegalStateException("no tally of " + pot.text());
    }
    return found.entry();
  }

  /** A pot and what it was filled from, and that, up to the sowing. */
  List<Code> filledThrough(Code pot) {
    List<Code> chain = new ArrayList<>();
    Optional<Code> next = Optional.of(pot);
    while (next.isPresent() && !chain.contains(next.get())) {
      chain.add(next.get());
      next = view.item(next.get()).isPresent() ? source(next.get()) : Optional.empty();
    }
    return chain;
  }

  /** Whether something is so, as far as the dates tell. */
  enum Answer {
    /** It is. */
    YES,
    /** It is not. */
    NO,
    /** They do not tell. */
    NOT_KNOWN
  }

  /**
   * Whether a numbered seedling is in one of the tallies that count: not if it was numbered out of
   * its pot, or potted on before, earlier than that was tallied, or if nothing of that was tallied.
   *
   * @param counting the pots whose tallies were chosen
   */
  Answer holds(Item seedling, Set<Code> counting) {
    if (!(view.effective(seedling.entry()).orElse(null) instanceof Numbered numbered)) {
      return Answer.NOT_KNOWN;
    }
    Map<Code, Answer> each = holding(numbered.from(), leftOn(numbered.date()), counting);
    return each.containsValue(Answer.YES)
        ? Answer.YES
        : each.containsValue(Answer.NOT_KNOWN) ? Answer.NOT_KNOWN : Answer.NO;
  }

  /**
   * The pots among whose counted seedlings a numbered one is: that of which the dates say so, or,
   * where they do not tell, each that may have counted it.
   *
   * @param counting the pots whose tallies were chosen
   */
  List<Code> holders(Numbered numbered, Set<Code> counting) {
    return surest(holding(numbered.from(), leftOn(numbered.date()), counting));
  }

  /**
   * The same of a seedling without a number, that still stands in its pot.
   *
   * @param counting the pots whose tallies were chosen
   */
  List<Code> holdersOfOneIn(Code pot, Set<Code> counting) {
    return surest(holding(pot, any -> Answer.YES, counting));
  }

  private static List<Code> surest(Map<Code, Answer> held) {
    Answer surest = held.containsValue(Answer.YES) ? Answer.YES : Answer.NOT_KNOWN;
    return held.entrySet().stream()
        .filter(one -> one.getValue() == surest)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Of each pot in which a seedling may have stood, whether its tally counted it. */
  private Map<Code, Answer> holding(
      Code from, Function<Code, Answer> whenItLeft, Set<Code> counting) {
    List<Code> chain = filledThrough(from);
    Map<Code, Answer> held = new LinkedHashMap<>();
    Function<Code, Answer> counted = whenItLeft;
    for (Code pot : chain) {
      if (counting.contains(pot)) {
        held.put(pot, counted.apply(pot));
      }
      Statement filling = view.item(pot).flatMap(item -> view.effective(item.entry())).orElse(null);
      if (filling instanceof Potted potted) {
        counted = leftOn(potted.date());
      }
    }
    for (Code pot : counting) {
      // Out of the sowing or the family: it may have stood in any of the pots that came of it.
      boolean came = !chain.contains(pot) && (from.isWhole() || filledThrough(pot).contains(from));
      if (came && whenItLeft.apply(pot) != Answer.NO) {
        held.put(pot, Answer.NOT_KNOWN);
      }
    }
    return held;
  }

  private Function<Code, Answer> leftOn(@Nullable PartialDate day) {
    return pot -> wasIn(pot, day);
  }

  /** Whether what left a pot on that day was in its tally. */
  private Answer wasIn(Code pot, @Nullable PartialDate left) {
    Made tally = made.get(pot);
    PartialDate day = tally == null ? null : tally.tally().date();
    if (left == null || day == null) {
      return Answer.NOT_KNOWN;
    }
    return left.latest().isBefore(day.earliest())
        ? Answer.NO
        : day.latest().isBefore(left.earliest()) ? Answer.YES : Answer.NOT_KNOWN;
  }

  /** What was left out and why, a sentence each. */
  List<String> notes() {
    return notes;
  }

  /** What counts of a pot and of all that was filled from it. */
  private Map<Code, Tallied> under(Code pot, Set<Code> walked) {
    Map<Code, Tallied> counting = new LinkedHashMap<>();
    if (!walked.add(pot)) {
      return counting;
    }
    Made own = made.get(pot);
    Map<Code, Tallied> again = new LinkedHashMap<>();
    for (Code filled : filledFrom.getOrDefault(pot, List.of())) {
      Map<Code, Tallied> its = under(filled, walked);
      (own != null && isIn(own, filled) ? again : counting).putAll(its);
    }
    if (own == null) {
      return counting;
    }
    if (again.isEmpty() || seedlings(again) < own.seedlings()) {
      counting.put(pot, own.tally());
      again
          .keySet()
          .forEach(
              later ->
                  notes.add(leftOut(later, "its seedlings are in the tally of " + pot.text())));
      return counting;
    }
    notes.add(leftOut(pot, "all its seedlings were tallied again where they were potted"));
    counting.putAll(again);
    return counting;
  }

  private static String leftOut(Code pot, String why) {
    return "The tally of " + pot.text() + " is left out: " + why + ".";
  }

  private static long seedlings(Map<Code, Tallied> tallies) {
    return tallies.values().stream()
        .flatMap(tally -> tally.counts().values().stream())
        .mapToLong(Long::longValue)
        .sum();
  }

  /** Whether the seedlings of a pot were still where it was filled from when that was tallied. */
  private boolean isIn(Made own, Code filled) {
    long entry = view.item(filled).orElseThrow().entry();
    Statement filling = view.effective(entry).orElseThrow();
    if (!(filling instanceof Potted potted)) {
      return true; // a sowing holds its own pots whenever it is tallied
    }
    long day = LastSeen.day(potted.date(), own.day());
    return own.day() < day || (own.day() == day && own.entry() < entry);
  }

  /** The latest; of several on one day, or without a day, the last entered. One of none is none. */
  private Optional<Made> last(Code pot) {
    Made last = null;
    long latest = Long.MIN_VALUE;
    for (long entry : view.entriesOn(Subject.of(pot))) {
      if (view.effective(entry).orElseThrow() instanceof Tallied tally
          && trait.isOf(tally.trait())) {
        long day = LastSeen.day(tally.date(), latest);
        Made next = new Made(tally, entry, day);
        if (day >= latest && next.seedlings() > 0) {
          latest = day;
          last = next;
        }
      }
    }
    return Optional.ofNullable(last);
  }

  /** What a pot was filled from. */
  private Optional<Code> source(Code pot) {
    Statement first = view.item(pot).flatMap(item -> view.effective(item.entry())).orElse(null);
    if (first instanceof Potted potted) {
      return Optional.of(potted.from());
    }
    return first instanceof Sown sown && !sown.sowing().equals(pot)
        ? Optional.of(sown.sowing())
        : Optional.empty();
  }
}
