package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The entries that a change may make impossible. */
final class Hanging {

  private final RegisterView before;
  private final RegisterView now;

  Hanging(RegisterView before, RegisterView now) {
    this.before = before;
    this.now = now;
  }

  /** The entries about {@code touched}, or about what stands under its codes, or that name it. */
  Set<Long> on(Collection<Subject> touched) {
    Set<Long> hanging = new TreeSet<>();
    Set<Code> reached = new LinkedHashSet<>();
    for (Subject subject : touched) {
      if (subject.kind() == Subject.Kind.CODE) {
        reached.addAll(under(Code.parse(subject.key())));
      } else {
        hanging.addAll(now.entriesOn(subject));
      }
      if (subject.kind() == Subject.Kind.TRAIT) {
        hanging.addAll(now.entriesMentioning(subject));
      } else if (subject.kind() == Subject.Kind.LOCUS) {
        hanging.addAll(ofRow(subject.key()));
      }
    }
    // A record that was joined with a touched one is read as that.
    Deque<Code> open = new ArrayDeque<>(reached);
    while (!open.isEmpty()) {
      Code code = open.remove();
      for (long entry : now.entriesOn(Subject.of(code))) {
        hanging.add(entry);
        if (now.effective(entry).orElse(null) instanceof Joined joined
            && joined.keep().equals(code)
            && reached.add(joined.other())) {
          open.add(joined.other());
        }
      }
      hanging.addAll(now.entriesMentioning(Subject.of(code)));
    }
    return hanging;
  }

  /** A gene may hold the two beside it together, and so bear on what is said of these. */
  private Set<Long> ofRow(String locus) {
    Set<String> row = new LinkedHashSet<>(LinkedRow.reached(before, locus));
    row.addAll(LinkedRow.reached(now, locus));
    Set<Long> entries = new TreeSet<>();
    for (String name : row) {
      entries.addAll(now.entriesOn(Subject.locus(name)));
      entries.addAll(now.entriesMentioning(Subject.locus(name)));
    }
    return entries;
  }

  private List<Code> under(Code code) {
    return code.isWhole() ? now.codesUnder(code) : List.of(code);
  }

  /**
   * The crosses and the genotypes of plants whose number of chromosome sets is another now because
   * of a change to {@code touched}, however many generations down.
   */
  Set<Long> withOtherSets(Collection<Subject> touched) {
    if (before.isAllDiploid() && now.isAllDiploid()) {
      return Set.of();
    }
    Set<Code> shifted = new LinkedHashSet<>();
    for (Subject subject : touched) {
      if (subject.kind() == Subject.Kind.CODE) {
        shifted.add(Code.parse(subject.key()));
      } else if (subject.kind() == Subject.Kind.TAXON) {
        shifted.addAll(plantsOfOtherPloidy(subject.key()));
      }
    }
    shifted.removeIf(code -> sets(before, code).equals(sets(now, code)));
    return crossesAndGenotypesBelow(shifted);
  }

  private static OptionalInt sets(RegisterView view, Code code) {
    return SetsOf.in(view, List.of(code)).ploidy(code);
  }

  private Set<Code> plantsOfOtherPloidy(String key) {
    Set<String> keys = new LinkedHashSet<>(NameChains.keys(before, key));
    keys.addAll(NameChains.keys(now, key));
    Set<Code> plants = new LinkedHashSet<>();
    for (String name : keys) {
      if (Objects.equals(ploidy(before, name), ploidy(now, name))) {
        continue;
      }
      for (long entry : now.entriesMentioning(new Subject(Subject.Kind.TAXON, name))) {
        now.effective(entry).map(Introduction::codes).ifPresent(plants::addAll);
      }
    }
    return plants;
  }

  private static @Nullable Integer ploidy(RegisterView view, String key) {
    return view.taxon(key).map(taxon -> view.accepted(taxon.name()).ploidy()).orElse(null);
  }

  private Set<Long> crossesAndGenotypesBelow(Set<Code> plants) {
    Set<Long> found = new TreeSet<>();
    Set<Code> seen = new HashSet<>();
    Deque<Code> open = new ArrayDeque<>(plants);
    while (!open.isEmpty()) {
      for (Code code : under(open.remove())) {
        if (!seen.add(code)) {
          continue;
        }
        Subject subject = Subject.of(code);
        for (long entry : now.entriesMentioning(subject)) {
          Statement statement = now.effective(entry).orElseThrow();
          if (statement instanceof Pollinated) {
            found.add(entry);
          }
          // Sowings and pots name the code they stand under, whose plants are reached already.
          Introduction.codes(statement).stream().filter(Code::isWhole).forEach(open::add);
        }
        for (long entry : now.entriesOn(subject)) {
          Statement statement = now.effective(entry).orElseThrow();
          if (statement instanceof GenotypeStated) {
            found.add(entry);
          } else if (statement instanceof LotsMerged merged) {
            open.add(merged.code());
          } else if (statement instanceof Joined joined && joined.keep().equals(code)) {
            open.add(joined.other());
          }
        }
      }
    }
    return found;
  }
}
