package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.Joined;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The codes of what is handed on, in order. Only codes are kept of a long register; what they stand
 * for is looked up a chunk at a time.
 *
 * @param codes what is handed on
 * @param joined of those that other records were joined with, the codes of these
 * @param gone how many were left out because they died, left or were used up
 * @param neverHeld how many were left out because they never stood here
 */
record ChosenCodes(List<Code> codes, Map<Code, List<Code>> joined, int gone, int neverHeld) {

  /** So many are looked up at once; more would share more ancestors, and take more memory. */
  private static final int CHUNK = 16384;

  /**
   * Chooses.
   *
   * @param kinds what can be handed on in the form that was asked for
   * @param elsewhere whether plants that never stood here can
   */
  static ChosenCodes of(RegisterView view, Chosen chosen, Set<Item.Kind> kinds, boolean elsewhere) {
    Choice choice = new Choice(view, chosen, kinds, elsewhere);
    chunks(candidates(view, chosen, kinds)).forEach(choice::among);
    return new ChosenCodes(choice.codes, choice.joined, choice.gone, choice.neverHeld);
  }

  /** Codes in their order, as many at a time as are looked up at once. */
  static List<List<Code>> chunks(List<Code> codes) {
    List<List<Code>> chunks = new ArrayList<>();
    for (int from = 0; from < codes.size(); from += CHUNK) {
      chunks.add(codes.subList(from, Math.min(codes.size(), from + CHUNK)));
    }
    return chunks;
  }

  private static List<Code> candidates(RegisterView view, Chosen chosen, Set<Item.Kind> kinds) {
    if (!chosen.only().isEmpty()) {
      Set<Code> codes = new TreeSet<>();
      for (Code code : chosen.only()) {
        codes.add(code);
        if (code.isWhole()) {
          codes.addAll(view.codesUnder(code));
        }
      }
      return List.copyOf(codes);
    }
    List<Code> codes = new ArrayList<>();
    for (String key : view.keys(Subject.Kind.CODE)) {
      Code code = Code.parse(key);
      boolean seedling = code.isSeedling() && kinds.contains(Item.Kind.SEEDLING);
      boolean lot = code.isLot() && kinds.contains(Item.Kind.LOT);
      if (code.isWhole() || seedling || lot) {
        codes.add(code);
      }
    }
    codes.sort(null);
    return codes;
  }

  /** The choice as it goes on. */
  private static final class Choice {
    private final RegisterView view;
    private final Chosen chosen;
    private final Set<Item.Kind> kinds;
    private final boolean elsewhere;
    private final List<Code> codes = new ArrayList<>();
    private final Map<Code, List<Code>> joined = new HashMap<>();
    private int gone;
    private int neverHeld;

    Choice(RegisterView view, Chosen chosen, Set<Item.Kind> kinds, boolean elsewhere) {
      this.view = view;
      this.chosen = chosen;
      this.kinds = kinds;
      this.elsewhere = elsewhere;
    }

    void among(List<Code> candidates) {
      Map<Code, Item> items = view.itemsOf(candidates);
      for (Code code : candidates) {
        Optional<Item> item = Optional.ofNullable(items.get(code));
        item.filter(found -> kinds.contains(found.kind())).ifPresent(this::choose);
      }
    }

    private void choose(Item item) {
      if (item.sameAs() != null) {
        view.resolved(item.code())
            .ifPresent(
                kept ->
                    joined.computeIfAbsent(kept.code(), any -> new ArrayList<>()).add(item.code()));
      } else if (!chosen.isOfYear(item.code())) {
        return;
      } else if (item.neverHeld() && !elsewhere) {
        neverHeld++;
      } else if (isWanted(item)) {
        codes.add(item.code());
        if (!chosen.only().isEmpty()) {
          addJoined(item.code());
        }
      } else {
        gone++;
      }
    }

    private boolean isWanted(Item item) {
      return chosen.gone()
          || chosen.only().contains(item.code())
          || item.kind() == Item.Kind.CROSS
          || (item.fate().isHere() && !item.neverHeld());
    }

    private void addJoined(Code code) {
      for (long entry : view.entriesOn(Subject.of(code))) {
        if (view.effective(entry).orElse(null) instanceof Joined join && join.keep().equals(code)) {
          joined.computeIfAbsent(code, any -> new ArrayList<>()).add(join.other());
        }
      }
    }
  }
}
