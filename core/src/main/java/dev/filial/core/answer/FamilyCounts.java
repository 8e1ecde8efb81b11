package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.number.Decimal;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.trial.LikeCrosses;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How many seedlings of a family showed which state: by its tallies, each seedling once, with those
 * seen one by one that had left their pot before it was tallied; where nothing was tallied, by what
 * its numbered seedlings showed, those left out that were picked for it.
 *
 * @param code the family, or the pot or sowing that was asked about
 * @param counts how many showed each state of the trait, in the order of its states
 * @param from where that is from, in a grower's words
 * @param counted where they were counted: pots and sowings, or the family itself
 * @param partly those of them whose tally does not name every state of the trait
 * @param notes what was left out, a sentence each
 */
public record FamilyCounts(
    Code code,
    Map<String, Long> counts,
    String from,
    List<Code> counted,
    List<Code> partly,
    List<String> notes) {

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

  /** Below it the chi-square distribution is a rough one. Cochran 1954, from memory. */
  private static final double FEW_EXPECTED = 5;

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
      Tallies all = Tallies.of(view, seen, pots);
      Map<Code, Tallied> tallies = all.chosen();
      if (tallies.isEmpty()) {
        return item.kind().isFamily() ? ofNumbered(item) : Optional.empty();
      }
      notes.addAll(all.notes());
      noteIfTheyDiffer(tallies);
      Map<String, Long> counts = zeros();
      long added = addSeenAlone(item, all, tallies.keySet(), counts);
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
              (from.size() == 1 ? "the tally of " : "the tallies of ")
                  + String.join(", ", from)
                  + (added == 0
                      ? ""
                      : ", and "
                          + added
                          + (added == 1 ? " seedling" : " seedlings")
                          + " seen by "
                          + (added == 1 ? "itself" : "themselves")),
              List.copyOf(tallies.keySet()),
              tallies.entrySet().stream()
                  .filter(made -> !made.getValue().counts().keySet().containsAll(trait.states()))
                  .map(Map.Entry::getKey)
                  .toList(),
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

    /**
     * Adds the seedlings that were seen one by one and had left their pot before it was tallied;
     * returns how many.
     */
    private long addSeenAlone(
        Item item, Tallies tallies, Set<Code> counting, Map<String, Long> counts) {
      long picked = 0;
      long added = 0;
      long tallied = 0;
      long unsure = 0;
      for (Code code : item.kind().isFamily() ? view.codesUnder(item.code()) : List.<Code>of()) {
        Optional<Item> seedling = code.isSeedling() ? view.item(code) : Optional.empty();
        Optional<String> state = seedling.flatMap(any -> seen.value(code));
        if (seedling.isPresent() && seen.isPicked(seedling.get())) {
          picked++;
        } else if (seedling.isPresent() && state.isPresent()) {
          switch (tallies.holds(seedling.get(), counting)) {
            case NO -> {
              counts.merge(state.get(), 1L, Long::sum);
              added++;
            }
            case YES -> tallied++;
            case NOT_KNOWN -> unsure++;
          }
        }
      }
      if (picked > 0) {
        notes.add(
            picked
                + (picked == 1 ? " seedling was" : " seedlings were")
                + " picked for "
                + trait.trait()
                + "; if that was before the tally, and it counts only those left, the shares are"
                + " off.");
      }
      noteNotAdded(
          tallied, "numbered out of the pot after its tally, which counts them with the others");
      noteNotAdded(
          unsure,
          "the dates do not tell whether they were numbered out of the pot before its tally, or are"
              + " counted in it");
      return added;
    }

    private void noteNotAdded(long number, String why) {
      if (number > 0) {
        notes.add(
            number
                + (number == 1 ? " seedling" : " seedlings")
                + " seen one by one "
                + (number == 1 ? "is" : "are")
                + " not added: "
                + why
                + ".");
      }
    }

    /** Tallies that differ more than chance allows are no sample of one family. */
    private void noteIfTheyDiffer(Map<Code, Tallied> tallies) {
      if (tallies.size() < 2) {
        return;
      }
      List<long[]> each = new ArrayList<>();
      for (Tallied tally : tallies.values()) {
        each.add(
            trait.states().stream()
                .mapToLong(state -> tally.counts().getOrDefault(state, 0L))
                .toArray());
      }
      LikeCrosses.of(each)
          .differences()
          .filter(differences -> differences.p() < GerminationQuestion.DOUBTFUL)
          .ifPresent(
              differences ->
                  notes.add(
                      "The tallies of "
                          + GerminationQuestion.codes(List.copyOf(tallies.keySet()))
                          + " differ more than by chance (chi-square "
                          + Decimal.text(differences.chiSquare(), 2)
                          + ", p "
                          + (differences.p() < 0.001
                              ? "below 0.001"
                              : Decimal.text(differences.p(), 3))
                          + (differences.leastExpected() < FEW_EXPECTED
                              ? ", a rough one, since few were expected somewhere"
                              : "")
                          + "); what they come to together may be true of none of them."));
    }

    private Map<String, Long> zeros() {
      Map<String, Long> counts = new LinkedHashMap<>();
      trait.states().forEach(state -> counts.put(state, 0L));
      return counts;
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
                  List.of(family.code()),
                  List.of(),
                  List.copyOf(notes)));
    }
  }
}
