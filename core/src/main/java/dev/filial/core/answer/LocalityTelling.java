package dev.filial.core.answer;

import dev.filial.core.ancestry.LocalityLoss;
import dev.filial.core.ancestry.LocalityLoss.Cause;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.Route;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Where a line was lost, as a grower would say it. */
final class LocalityTelling {

  private final RegisterView view;
  private final RegisterPedigree behind;

  LocalityTelling(RegisterView view, RegisterPedigree behind) {
    this.view = view;
    this.behind = behind;
  }

  /** The loss in words, with the day and the parents of the cross in which it happened. */
  LocalityQuestion.Lost of(LocalityLoss loss) {
    Optional<Item> made = behind.family(loss.plant()).or(() -> behind.item(loss.plant()));
    return new LocalityQuestion.Lost(
        called(loss.plant()),
        made.map(Item::code).orElse(null),
        made.map(item -> Describing.of(view, item)).orElse(null),
        made.map(Item::since).orElse(null),
        how(loss),
        loss.causes().stream().map(this::why).distinct().toList());
  }

  private static String how(LocalityLoss loss) {
    Cause first = loss.causes().get(0);
    if (first.why() == LocalityLoss.Why.OPEN_TO_DOUBT) {
      return "unprotected flowers";
    }
    return first.route() == null ? "" : first.route().text();
  }

  private String why(Cause cause) {
    String what =
        switch (cause.why()) {
          case OPEN_TO_DOUBT ->
              "its flowers were not protected and no share of strays is stated, so a bee may have"
                  + " come";
          case UNKNOWN_PLANT -> unknown(cause);
          case OTHER_NUMBER -> founder(cause, "is of " + number(cause.founder()));
          case NO_NUMBER ->
              isRecorded(cause.founder())
                  ? founder(cause, "has no field number")
                  : cause.founder() != null && cause.founder().equals(cause.parent())
                      ? "it may be a plant nobody knows"
                      : called(cause.parent()) + " may be a plant nobody knows";
        };
    return cause.share().isOne() ? what : what + " (" + cause.share().toPercent(1) + " likely)";
  }

  private static String unknown(Cause cause) {
    if (cause.parent() != null) {
      return "nobody knows what stands behind " + called(cause.parent());
    }
    return cause.route() == Route.STRAY
        ? "stray pollen of plants nobody knows"
        : "nobody knows whose pollen it was";
  }

  private static String founder(Cause cause, String what) {
    return String.valueOf(cause.founder()).equals(cause.parent())
        ? called(cause.parent()) + " " + what
        : called(cause.parent()) + " comes of " + called(cause.founder()) + ", which " + what;
  }

  /** A plant without a number is one of its pot or lot; which use of it is meant is clear here. */
  private static String called(@Nullable String plant) {
    String name = String.valueOf(plant);
    int use = name.indexOf(" (");
    return use < 0 ? name : name.substring(0, use);
  }

  /** Whether the register speaks of it, and it is no stand-in for a plant nobody knows. */
  private boolean isRecorded(@Nullable String founder) {
    return founder != null
        && (behind.item(founder).isPresent() || behind.family(founder).isPresent());
  }

  private String number(@Nullable String founder) {
    Pedigree pedigree = behind.pedigree();
    Founder said = founder == null ? null : pedigree.founder(pedigree.indexOf(founder));
    return said == null ? "another number" : String.valueOf(said.fieldNumber());
  }
}
