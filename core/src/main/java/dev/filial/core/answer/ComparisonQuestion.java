package dev.filial.core.answer;

import dev.filial.core.answer.GerminationQuestion.By;
import dev.filial.core.answer.GerminationQuestion.Group;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.trial.Proportion;
import dev.filial.core.trial.TwoProportions;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Whether seed came up better one way than another: two treatments, media, species, or two sowings,
 * lots or crosses held against each other.
 */
public final class ComparisonQuestion {

  private final RegisterView view;
  private final @Nullable Code within;
  private final double certainty;

  private ComparisonQuestion(RegisterView view, @Nullable Code within, double certainty) {
    this.view = view;
    this.within = within;
    this.certainty = certainty;
  }

  /** Asks {@code view}, with a certainty of 0.95. */
  public static ComparisonQuestion of(RegisterView view) {
    return new ComparisonQuestion(view, null, 0.95);
  }

  /** The same among the sowings of one cross, packet or lot only; null for all. */
  public ComparisonQuestion within(@Nullable Code only) {
    return new ComparisonQuestion(view, only, certainty);
  }

  /**
   * The same with that certainty of the intervals, between 0 and 1.
   *
   * @throws IllegalArgumentException if it is not
   */
  public ComparisonQuestion withCertainty(double sure) {
    if (!(sure > 0 && sure < 1)) {
      throw new IllegalArgumentException(
          "a certainty of " + sure + "; it lies between 0 and 1, as 0.95");
    }
    return new ComparisonQuestion(view, within, sure);
  }

  /**
   * Two sides held against each other.
   *
   * @param one the first
   * @param other the second
   * @param certainty how sure the intervals are
   * @param difference the share of the first less that of the second, −1 to 1
   * @param lower the lower end of its interval
   * @param upper the upper end
   * @param method the test that was taken
   * @param leastExpected the smallest number expected in any cell if both were alike, which decides
   *     that
   * @param chiSquare the chi-square; null for the exact test
   * @param p the chance that two that are truly alike would differ as much, 0 to 1
   * @param leftOut the sowings of either side that are in no percentage
   * @param notes what to bear in mind, a sentence each
   */
  public record Comparison(
      Group one,
      Group other,
      double certainty,
      double difference,
      double lower,
      double upper,
      TwoProportions.Method method,
      double leastExpected,
      @Nullable Double chiSquare,
      double p,
      List<GerminationQuestion.LeftOut> leftOut,
      List<String> notes) {}

  /**
   * Holds the sowings of two things against each other: of two sowings, pots, lots, crosses or
   * packets.
   *
   * @throws RegisterRefusal if one is not in the register, nothing of it was sown and counted
   *     exactly, or a sowing is of both
   */
  public Comparison ask(Code one, Code other) {
    return compare(
        Things.required(view, one).code().text(),
        SowingsMeant.of(view, one),
        Things.required(view, other).code().text(),
        SowingsMeant.of(view, other),
        false);
  }

  /**
   * Holds two groups of sowings against each other: two treatments, two media.
   *
   * @param by what they have in common
   * @param one the label of the first, or a part of it that no other has
   * @param other that of the second
   * @throws RegisterRefusal if there is no such group, naming those there are, or several fit; or
   *     as {@link #ask(Code, Code)}
   */
  public Comparison ask(By by, String one, String other) {
    List<Sown> sowings = SowingsMeant.of(view, within);
    SowingLabels labels = SowingLabels.of(view, by);
    Map<SowingLabels.Label, List<Sown>> sorted = new TreeMap<>();
    sowings.forEach(
        sown -> sorted.computeIfAbsent(labels.of(sown), any -> new ArrayList<>()).add(sown));
    Map<String, List<Sown>> groups = new LinkedHashMap<>();
    sorted.forEach((label, in) -> groups.put(label.text(), in));
    String first = chosen(groups.keySet(), one);
    String second = chosen(groups.keySet(), other);
    return compare(
        first,
        groups.getOrDefault(first, List.of()),
        second,
        groups.getOrDefault(second, List.of()),
        true);
  }

  private static String chosen(Set<String> labels, String typed) {
    String sought = typed.strip().toLowerCase(Locale.ROOT);
    List<String> part = new ArrayList<>();
    for (String label : labels) {
      String lower = label.toLowerCase(Locale.ROOT);
      if (lower.equals(sought)) {
        return label;
      }
      if (!sought.isEmpty() && lower.contains(sought)) {
        part.add(label);
      }
    }
    if (part.size() == 1) {
      return part.get(0);
    }
    throw new RegisterRefusal(
        (part.isEmpty()
                ? "no sowing has \"" + typed + "\""
                : "\"" + typed + "\" may be several of them")
            + "; there are: "
            + String.join("; ", part.isEmpty() ? labels : part));
  }

  private Comparison compare(
      String oneLabel, List<Sown> one, String otherLabel, List<Sown> other, boolean acrossCrosses) {
    Set<Code> shared = new HashSet<>(one.stream().map(Sown::sowing).toList());
    shared.retainAll(other.stream().map(Sown::sowing).collect(Collectors.toSet()));
    if (!shared.isEmpty()) {
      throw new RegisterRefusal(
          oneLabel
              + " and "
              + otherLabel
              + " have "
              + GerminationQuestion.codes(shared.stream().sorted().toList())
              + " in common; name two that share no sowing");
    }
    List<GerminationQuestion.LeftOut> leftOut = new ArrayList<>();
    Group first = group(oneLabel, one, leftOut);
    Group second = group(otherLabel, other, leftOut);
    TwoProportions both =
        new TwoProportions(
            new Proportion(first.up(), first.seeds()), new Proportion(second.up(), second.seeds()));
    TwoProportions.Test test = both.test();
    Proportion.Interval ends = both.interval(certainty);
    return new Comparison(
        first,
        second,
        certainty,
        both.difference(),
        ends.lower(),
        ends.upper(),
        test.method(),
        both.leastExpected(),
        test.method() == TwoProportions.Method.CHI_SQUARE ? test.statistic() : null,
        test.p(),
        List.copyOf(leftOut),
        notes(first, second, acrossCrosses));
  }

  private Group group(String label, List<Sown> sowings, List<GerminationQuestion.LeftOut> leftOut) {
    List<Emergence> read = new ArrayList<>();
    Map<Emergence.Doubt, List<Code>> doubts = new TreeMap<>();
    for (Sown sown : sowings) {
      Emergence one = Emergence.of(view, sown);
      Emergence.Doubt doubt = one.doubt();
      if (doubt == null) {
        read.add(one);
      } else {
        doubts.computeIfAbsent(doubt, any -> new ArrayList<>()).add(sown.sowing());
      }
    }
    List<GerminationQuestion.LeftOut> out = GerminationQuestion.leftOut(doubts);
    if (read.isEmpty()) {
      throw new RegisterRefusal(
          "no sowing of "
              + label
              + " can be reckoned with: "
              + out.stream()
                  .map(one -> GerminationQuestion.codes(one.codes()) + ", " + one.why())
                  .collect(Collectors.joining("; ")));
    }
    leftOut.addAll(out);
    return GerminationQuestion.group(label, read, certainty);
  }

  private static List<String> notes(Group one, Group other, boolean acrossCrosses) {
    List<String> notes = new ArrayList<>();
    for (Group side : List.of(one, other)) {
      if (side.differ()) {
        notes.add(
            "The sowings within "
                + side.label()
                + " differ more than by chance already, so the test finds differences too easily"
                + " and the interval is too narrow.");
      }
    }
    if (acrossCrosses && !families(one).equals(families(other))) {
      notes.add(
          "The two sides are not of the same crosses and packets, so it may be the seed that makes"
              + " the difference.");
    }
    if (one.sowings().size() + other.sowings().size() == 2) {
      notes.add(
          "One sowing stands against one: what else was different between the two pots is in the"
              + " difference too.");
    }
    return List.copyOf(notes);
  }

  private static Set<Code> families(Group group) {
    Set<Code> families = new LinkedHashSet<>();
    group.sowings().forEach(sowing -> families.add(sowing.whole()));
    return families;
  }
}
