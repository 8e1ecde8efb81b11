package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which stored pollen brings a plant that is not in flower to a wanted seed parent. Pollen of the
 * seed parent's own clone is left out unless it is asked for.
 */
public final class BridgeQuestion {

  private final RegisterView view;
  private final LocalDate day;
  private final boolean oneClone;

  private BridgeQuestion(RegisterView view, LocalDate day, boolean oneClone) {
    this.view = view;
    this.day = day;
    this.oneClone = oneClone;
  }

  /** Asks {@code view} about a pollination on that day. */
  public static BridgeQuestion of(RegisterView view, LocalDate day) {
    return new BridgeQuestion(view, day, false);
  }

  /** The same, with the seed parent's own pollen. */
  public BridgeQuestion withOneClone(boolean also) {
    return new BridgeQuestion(view, day, also);
  }

  /**
   * Stored pollen that can be used.
   *
   * @param pollen the pollen
   * @param inFlower whether its plant is in flower on that day all the same, so that fresh pollen
   *     can be had
   * @param tries crosses made already with the wanted seed parent bearing
   */
  public record Line(PollenQuestion.Line pollen, boolean inFlower, Tries tries) {}

  /**
   * The answer.
   *
   * @param seedParent the wanted seed parent
   * @param what its taxon or parents
   * @param day the day of the pollination
   * @param inFlower whether it is in flower on that day, by what was seen
   * @param flowerings when it flowered, as far as that was seen, the earliest first
   * @param lines the pollen: first what no fresh flower can give, of that what is not old, then the
   *     younger first
   * @param leftOut how many papers of its own clone were left out
   */
  public record Bridge(
      Code seedParent,
      String what,
      LocalDate day,
      boolean inFlower,
      List<BloomSpan> flowerings,
      List<Line> lines,
      int leftOut) {}

  /**
   * For that seed parent.
   *
   * @throws RegisterRefusal if the register has no such code, it is no plant or pot, or it is not
   *     here on that day
   */
  public Bridge ask(Code seedParent) {
    Item item = Things.required(view, seedParent);
    if (!item.kind().isPlant() && item.kind() != Item.Kind.GROUP) {
      throw new RegisterRefusal(
          item.code().text()
              + " is a "
              + item.kind().word()
              + "; a seed parent is a plant, or one out of a pot");
    }
    if (!Blooms.isHere(item, day)) {
      throw new RegisterRefusal(
          item.code().text() + " is not here on " + day + "; name a seed parent that is");
    }
    Blooms blooms = Blooms.in(view);
    Crossed crossed = new Crossed(view);
    List<Line> lines = new ArrayList<>();
    int leftOut = 0;
    for (PollenQuestion.Line pollen : PollenQuestion.of(view, day).ask()) {
      if (pollen.gathered() != null && pollen.gathered().earliest().isAfter(day)) {
        continue;
      }
      if (!oneClone && crossed.isOneClone(item.code(), pollen.plant())) {
        leftOut++;
        continue;
      }
      lines.add(
          new Line(
              pollen,
              isInFlower(blooms, pollen.plant()),
              crossed.tries(item.code(), pollen.plant())));
    }
    lines.sort(
        Comparator.comparing(Line::inFlower)
            .thenComparing(line -> line.pollen().old())
            .thenComparing(
                line -> line.pollen().age() == null ? Long.MAX_VALUE : line.pollen().age()));
    List<BloomSpan> flowerings = blooms.of(item).map(Blooms.Bloomer::spans).orElse(List.of());
    return new Bridge(
        item.code(),
        Describing.of(view, item),
        day,
        flowerings.stream().anyMatch(span -> span.covers(day)),
        flowerings,
        List.copyOf(lines),
        leftOut);
  }

  private boolean isInFlower(Blooms blooms, Code plant) {
    return view.item(plant)
        .filter(item -> Blooms.isHere(item, day))
        .flatMap(blooms::of)
        .flatMap(bloomer -> bloomer.on(day))
        .isPresent();
  }
}
