package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Item;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Protection;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is doubtful about the pollinations behind seed. Stray pollen in a grandparent's cross is in
 * the grandchildren too, and putting lots together makes none of them surer.
 */
final class PollinationDoubts {

  /** More codes than these make a list for a club unreadable. */
  private static final int CODES = 3;

  /** Kind of doubt and how it is said; parts of a mixture may have several shares. */
  private final Map<String, Set<String>> near = new LinkedHashMap<>();

  private final Map<String, Set<Code>> far = new LinkedHashMap<>();

  private PollinationDoubts() {}

  /**
   * Each kind of doubt once: of the cross the seed is of, or of any cross that a mixture has seed
   * of, as it is; of crosses behind those with their codes, and without shares, which are not those
   * of this seed.
   *
   * @param origin the cross, packet or mixture
   * @param behind everything the seed came of, the origin among it
   */
  static List<String> of(RegisterView view, Item origin, Collection<Item> behind) {
    Set<Code> last = new HashSet<>();
    addLast(view, origin, last, new HashSet<>());
    PollinationDoubts doubts = new PollinationDoubts();
    for (Item item : behind) {
      if (item.kind() == Item.Kind.CROSS
          && view.effective(item.entry()).orElse(null) instanceof Pollinated cross) {
        boolean isLast = last.contains(item.code());
        of(cross)
            .forEach(
                (doubt, share) -> {
                  if (isLast) {
                    doubts.near.computeIfAbsent(doubt, any -> new LinkedHashSet<>()).add(share);
                  } else {
                    doubts.far.computeIfAbsent(doubt, any -> new TreeSet<>()).add(item.code());
                  }
                });
      }
    }
    return doubts.told();
  }

  /** The crosses the seed itself was borne of. */
  private static void addLast(RegisterView view, Item origin, Set<Code> last, Set<Code> seen) {
    if (!seen.add(origin.code())) {
      return;
    }
    if (origin.kind() == Item.Kind.MIXTURE) {
      for (Descent part : origin.descent()) {
        view.item(part.seed())
            .ifPresent(lot -> addLast(view, Describing.origin(view, lot), last, seen));
      }
    } else {
      last.add(origin.code());
    }
  }

  private List<String> told() {
    List<String> told = new ArrayList<>();
    near.forEach(
        (doubt, shares) -> {
          String share = String.join(", ", shares);
          Set<Code> also = far.remove(doubt);
          told.add(
              doubt
                  + (share.isEmpty() ? "" : " (" + share + ")")
                  + (also == null ? "" : ", also further back (" + codes(also) + ")"));
        });
    far.forEach((doubt, crosses) -> told.add(doubt + ", further back (" + codes(crosses) + ")"));
    return told;
  }

  private static String codes(Set<Code> crosses) {
    String first = String.join(", ", crosses.stream().limit(CODES).map(Code::text).toList());
    int more = crosses.size() - CODES;
    return more > 0 ? first + " and " + more + " more" : first;
  }

  /** Kind of doubt, and the share of the seed it is of, empty where there is none. */
  private static Map<String, String> of(Pollinated cross) {
    Map<String, String> doubts = new LinkedHashMap<>();
    if (cross.pollen() instanceof Pollen.Open) {
      doubts.put("open pollinated", "");
    } else if (cross.pollen() instanceof Pollen.Mix) {
      doubts.put("pollen mixed", "");
    }
    if (!(cross.pollen() instanceof Pollen.Open)) {
      if (cross.protection().contains(Protection.NONE)) {
        doubts.put("unprotected flowers", "");
      } else if (cross.protection().isEmpty()) {
        doubts.put("nobody wrote whether the flowers were protected", "");
      }
    }
    addPerhaps(doubts, "perhaps selfed", cross.selfs());
    addPerhaps(doubts, "perhaps of stray pollen", cross.strays());
    addPerhaps(doubts, "perhaps without fertilisation", cross.apomixis());
    return doubts;
  }

  private static void addPerhaps(Map<String, String> doubts, String what, Fraction share) {
    if (share.signum() > 0) {
      doubts.put(what, share.toPercent(1));
    }
  }
}
