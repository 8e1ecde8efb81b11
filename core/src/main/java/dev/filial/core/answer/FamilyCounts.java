package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.Potted;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How many seedlings of a family showed which state: by its tallies, each seedling once; where
 * nothing was tallied, by what its numbered seedlings showed, those left out that were picked for
 * it.
 *
 * @param code the family, or the pot or sowing that was asked about
 * @param counts how many showed each state of the trait, in the order of its states
 * @param from where that is from, in a grower's words
 * @param notes what was left out, a sentence each
 */
public record FamilyCounts(Code code, Map<String, Long> counts, String from, List<String> notes) {

  /** How many seedlings that is. */
  public long seedlings() {
    return counts.values().stream().mapToLong(Long::longValue).sum();
  }

  /** The counts in the order of these states. */
  long[] inOrder(List<String> states) {
    return states.stream().mapToLong(state -> counts.getOrDefault(state, 0L)).toArray();
  }

  /**
   * Of one family, pot or sowing.
   *
   * @throws RegisterRefusal if the trait has no states, or nothing of it was counted or seen there
   */
  static FamilyCounts of(RegisterView view, Code asked, TraitDeclared trait) {
    return find(view, asked, trait)
        .orElseThrow(
            () ->
                new RegisterRefusal(
                    "nobody counted "
                        + trait.trait()
                        + " in "
                        + asked.text()
                        + " yet; enter a tally of it first"));
  }

  /** The same; empty if nothing was counted or seen. */
  static Optional<FamilyCounts> find(RegisterView view, Code asked, TraitDeclared trait) {
    if (trait.states().isEmpty()) {
      throw new RegisterRefusal(
          trait.trait() + " is scored or measured and has no states to count");
    }
    Item item = Things.required(view, asked);
    return new Counting(view, trait).of(item);
  }

  private static final class Counting {
    private final RegisterView view;
    private final TraitDeclared trait;
    private final LastSeen seen;
    private final List<String> notes = new ArrayList<>();

    Counting(RegisterView view, TraitDeclared trait) {
      this.view = view;
      this.trait = trait;
      this.seen = LastSeen.of(view, trait.trait());
    }

    Optional<FamilyCounts> of(Item item) {
      List<Code> pots = new ArrayList<>();
      if (item.kind().isFamily()) {
        for (Code code : view.codesUnder(item.code())) {
          if ((code.isGroup() || code.isSowing()) && view.item(code).isPresent()) {
            pots.add(code);
          }
        }
        pots.sort(null);
      } else if (item.kind() == Item.Kind.GROUP || item.kind() == Item.Kind.SOWING) {
        pots.add(item.code());
        addFilled(item.code(), pots);
      } else {
        throw new RegisterRefusal(
            item.code().text()
                + " is a "
                + item.kind().word()
                + "; a family is counted: name a cross, a packet, a sowing or a pot");
      }
      Map<Code, Tallied> tallies = new LinkedHashMap<>();
      for (Code pot : pots) {
        last(pot).ifPresent(tally -> tallies.put(pot, tally));
      }
      if (tallies.isEmpty()) {
        return item.kind().isFamily() ? ofNumbered(item) : Optional.empty();
      }
      leaveOutCountedAgain(tallies);
      Map<String, Long> counts = zeros();
      List<String> from = new ArrayList<>();
      tallies.forEach(
          (pot, tally) -> {
            tally.counts().forEach((state, number) -> counts.merge(state, number, Long::sum));
            from.add(pot.text() + (tally.date() == null ? "" : " of " + tally.date()));
          });
      return Optional.of(
          new FamilyCounts(
              item.code(),
              counts,
              (from.size() == 1 ? "the tally of " : "the tallies of ") + String.join(", ", from),
              List.copyOf(notes)));
    }

    private void addFilled(Code sowing, List<Code> pots) {
      view.item(sowing)
          .flatMap(item -> view.effective(item.entry()))
          .filter(Sown.class::isInstance)
          .map(Sown.class::cast)
          .filter(sown -> sown.sowing().equals(sowing))
          .ifPresent(sown -> sown.groups().forEach(filled -> pots.add(filled.group())));
    }

    private Map<String, Long> zeros() {
      Map<String, Long> counts = new LinkedHashMap<>();
      trait.states().forEach(state -> counts.put(state, 0L));
      return counts;
    }

    /** The tally of the latest day; of several on one day, or without a day, the last entered. */
    private Optional<Tallied> last(Code pot) {
      Tallied last = null;
      long latest = Long.MIN_VALUE;
      for (long entry : view.entriesOn(Subject.of(pot))) {
        Statement statement = view.effective(entry).orElseThrow();
        if (statement instanceof Tallied tally && seen.isOf(tally.trait())) {
          long day = LastSeen.day(tally.date(), latest);
          if (day >= latest) {
            latest = day;
            last = tally;
          }
        }
      }
      return Optional.ofNullable(last);
    }

    /**
     * What was potted from a pot and tallied there holds seedlings that the pot's own tally has.
     */
    private void leaveOutCountedAgain(Map<Code, Tallied> tallies) {
      Map<Code, Code> source = new HashMap<>();
      for (Code pot : tallies.keySet()) {
        Code child = pot;
        Set<Code> walked = new HashSet<>();
        while (walked.add(child)) {
          Optional<Code> from = source(child);
          if (from.isEmpty()) {
            break;
          }
          source.put(child, from.get());
          child = from.get();
        }
      }
      Set<Code> again = new HashSet<>();
      for (Code pot : tallies.keySet()) {
        Code from = source.get(pot);
        while (from != null && again.add(from)) {
          from = source.get(from);
        }
      }
      for (Code pot : List.copyOf(tallies.keySet())) {
        if (again.contains(pot)) {
          tallies.remove(pot);
          notes.add(
              "The tally of "
                  + pot.text()
                  + " is left out, because seedlings of it were counted again in pots filled from"
                  + " it.");
        }
      }
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

    private Optional<FamilyCounts> ofNumbered(Item family) {
      Map<String, Long> counts = zeros();
      long looked = 0;
      long picked = 0;
      for (Code code : view.codesUnder(family.code())) {
        Optional<Item> item = view.item(code);
        if (!code.isSeedling() || item.isEmpty()) {
          continue;
        }
        Optional<String> state = seen.value(code);
        if (state.isPresent() && seen.isPicked(item.get())) {
          picked++;
        } else if (state.isPresent()) {
          counts.merge(state.get(), 1L, Long::sum);
          looked++;
        }
      }
      if (picked > 0) {
        notes.add(LastSeen.leftOut(picked, trait.trait()));
      }
      return looked == 0
          ? Optional.empty()
          : Optional.of(
              new FamilyCounts(
                  family.code(),
                  counts,
                  "what numbered seedlings of " + family.code().text() + " showed",
                  List.copyOf(notes)));
    }
  }
}
