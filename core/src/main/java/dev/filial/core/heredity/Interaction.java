package dev.filial.core.heredity;

import dev.filial.core.heredity.TraitModel.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The classic interactions of two loci with dominance at each, by the ratio in which the F2 of two
 * unlinked ones segregates. Organisms and authors are from memory.
 */
public enum Interaction {
  /** Two steps that are both needed: 9:7 (sweet pea, Bateson and Punnett). */
  COMPLEMENTARY("9:7", "both are needed", "A_ B_", "*"),
  /** Either of two does: 15:1 (shepherd's purse, Shull 1914). */
  DUPLICATE("15:1", "either will do", "A_,B_", "*"),
  /** One, where dominant, hides what the other would show: 12:3:1 (squash, Sinnott). */
  DOMINANT_EPISTASIS("12:3:1", "the first hides the second", "A_", "B_", "*"),
  /** One, where recessive, hides what the other would show: 9:3:4 (mice, Cuénot). */
  RECESSIVE_EPISTASIS("9:3:4", "the first is needed for the second to show", "A_ B_", "A_", "*"),
  /**
   * The first holds back what the second would show: 13:3 (white fowl, Bateson and Punnett). The
   * larger class comes first.
   */
  INHIBITION("13:3", "the first holds back the second", "A_,bb", "*"),
  /** Either does something, both do more: 9:6:1 (squash, Sinnott). */
  CUMULATIVE("9:6:1", "either does something, both do more", "A_ B_", "A_,B_", "*");

  private final String ratio;
  private final String words;

  @SuppressWarnings("ImmutableEnumChecker") // List.of made it
  private final List<String> classes;

  Interaction(String ratio, String words, String... classes) {
    this.ratio = ratio;
    this.words = words;
    this.classes = List.of(classes);
  }

  /** The interaction that throws this ratio, if there is one. */
  public static Optional<Interaction> ofRatio(String ratio) {
    for (Interaction interaction : values()) {
      if (interaction.ratio.equals(ratio.strip())) {
        return Optional.of(interaction);
      }
    }
    return Optional.empty();
  }

  /** The F2 ratio. */
  public String ratio() {
    return ratio;
  }

  /** What the two loci do to each other, in a few words. */
  public String words() {
    return words;
  }

  /** How many states it tells apart. */
  public int states() {
    return classes.size();
  }

  List<Row> rows(Locus one, Locus other, List<String> states) {
    if (states.size() != states()) {
      throw new IllegalArgumentException(
          ratio + " has " + states() + " classes, and " + states.size() + " states were given");
    }
    if (one.isCytoplasmic() || other.isCytoplasmic()) {
      throw new IllegalArgumentException("the two genes of " + ratio + " lie on chromosomes");
    }
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < classes.size(); i++) {
      for (String fitting : classes.get(i).split(",", -1)) {
        rows.add(new Row(patterns(fitting, one, other), Outcome.of(states.get(i))));
      }
    }
    return rows;
  }

  private static List<Pattern> patterns(String text, Locus one, Locus other) {
    List<Pattern> patterns = new ArrayList<>();
    for (String token : text.split(" ", -1)) {
      switch (token) {
        case "A_" -> patterns.add(new Pattern(one, List.of(one.alleles().get(0)), true));
        case "B_" -> patterns.add(new Pattern(other, List.of(other.alleles().get(0)), true));
        case "bb" -> {
          String last = other.alleles().get(other.alleles().size() - 1);
          patterns.add(new Pattern(other, List.of(last, last), false));
        }
        default -> {
          // "*": whatever is left
        }
      }
    }
    return patterns;
  }
}
