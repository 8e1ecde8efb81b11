package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.label.LabelStyle;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.WhereQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** What labels are printed for: things by their codes, or all that stands in a place. */
final class ThingsToLabel {

  private static final Set<Item.Kind> GROWING =
      Set.of(Item.Kind.SOWING, Item.Kind.GROUP, Item.Kind.PLANT, Item.Kind.SEEDLING);

  private final Supplier<List<String>> what;
  private final Supplier<Optional<LabelStyle>> style;
  private final Supplier<Optional<String>> place;

  /** Adds the words. */
  ThingsToLabel(Words words) {
    what =
        words.arguments(
            "WHAT",
            "Codes or names of plants, pots, sowings or seed lots; a cross or a packet of seed"
                + " stands for all that came of it and is here.",
            false,
            Reading.THING);
    style =
        words.option(
            "--for",
            "KIND",
            "packets or tags; otherwise packets where there is nothing but seed.",
            Reading.oneOf(LabelStyle.class));
    place =
        words.option(
            "--in",
            "PLACE",
            "All that stands in this bag, tray or other place.",
            RecordReadings.LINE);
  }

  /**
   * What was found.
   *
   * @param style the sort of label for them
   * @param codes what they are for, each once
   * @param passedOver what came of a cross and takes the other sort of label
   */
  record Found(LabelStyle style, List<Code> codes, List<Code> passedOver) {}

  /**
   * Looks them up.
   *
   * @throws Trouble if nothing was named, or there is nothing that takes such a label
   */
  Found find(RegisterView view) {
    if (what.get().isEmpty() && place.get().isEmpty()) {
      throw Trouble.usage(
          "WHAT is missing", "Name what labels are for, or where it stands: --in PLACE");
    }
    Set<Code> named = new LinkedHashSet<>();
    Set<Code> cameOf = new LinkedHashSet<>();
    for (String text : what.get()) {
      Item item = Finding.in(view).one(text);
      List<Code> under = item.kind().isFamily() ? standing(view, item.code()) : List.of();
      cameOf.addAll(under);
      if (under.isEmpty()) {
        named.add(item.code());
      }
    }
    place.get().ifPresent(in -> cameOf.addAll(inPlace(view, in)));
    LabelStyle sort = style.get().orElseGet(() -> usual(named, cameOf));
    Set<Code> codes = new LinkedHashSet<>(named);
    List<Code> passedOver = new ArrayList<>();
    for (Code code : cameOf) {
      if (code.isLot() == (sort == LabelStyle.PACKETS)) {
        codes.add(code);
      } else if (!named.contains(code)) {
        passedOver.add(code);
      }
    }
    if (codes.isEmpty()) {
      boolean packets = sort == LabelStyle.PACKETS;
      throw Trouble.refused(
          packets ? "there is no seed in store of that" : "nothing of that grows yet",
          packets ? "For what grows of it: --for tags" : "For the seed of it: --for packets");
    }
    return new Found(sort, List.copyOf(codes), passedOver);
  }

  /** What was mixed with other seed stands under the mixture's code, and is labelled by that. */
  private static List<Code> standing(RegisterView view, Code family) {
    return WhereQuestion.of(view).ofThing(family).lines().stream()
        .filter(line -> !line.mixed())
        .map(WhereQuestion.Line::code)
        .toList();
  }

  private List<Code> inPlace(RegisterView view, String in) {
    Optional<LabelStyle> asked = style.get();
    Set<Item.Kind> kinds = new HashSet<>();
    if (asked.isEmpty() || asked.get() == LabelStyle.PACKETS) {
      kinds.add(Item.Kind.LOT);
    }
    if (asked.isEmpty() || asked.get() == LabelStyle.TAGS) {
      kinds.addAll(GROWING);
    }
    return WhereQuestion.of(view).codesIn(in, kinds);
  }

  private static LabelStyle usual(Set<Code> named, Set<Code> cameOf) {
    boolean seedOnly =
        named.stream().allMatch(Code::isLot) && cameOf.stream().allMatch(Code::isLot);
    return seedOnly ? LabelStyle.PACKETS : LabelStyle.TAGS;
  }
}
