package dev.filial.core.answer;

import dev.filial.core.exchange.Accession.Behind;
import dev.filial.core.exchange.CrossMade;
import dev.filial.core.exchange.Taker;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Item;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Protection;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Crosses as they are handed on to others, with the grower's mark before every code. */
public final class CrossesMadeQuestion {

  private final RegisterView view;
  private final Chosen chosen;

  private CrossesMadeQuestion(RegisterView view, Chosen chosen) {
    this.view = view;
    this.chosen = chosen;
  }

  /** Asks {@code view} for the crosses among what was chosen. */
  public static CrossesMadeQuestion of(RegisterView view, Chosen chosen) {
    return new CrossesMadeQuestion(view, chosen);
  }

  /**
   * Hands them to {@code taker} in order of their codes.
   *
   * @return how many
   * @throws IOException if the taker cannot take one
   * @throws dev.filial.core.register.RegisterRefusal if the register has no grower's mark
   */
  public int each(Taker<CrossMade> taker) throws IOException {
    OutwardCodes outward = OutwardCodes.of(view);
    ChosenCodes codes = ChosenCodes.of(view, chosen, EnumSet.of(Item.Kind.CROSS), false);
    new OutwardChunks(view, outward)
        .each(codes.codes(), (code, behind) -> taker.take(cross(outward, code, behind)));
    return codes.codes().size();
  }

  private CrossMade cross(OutwardCodes outward, Code code, Optional<OutwardPedigree> behind) {
    Pollinated said = null;
    Count seeds = null;
    for (long entry : view.entriesOn(Subject.of(code))) {
      Statement statement = view.effective(entry).orElse(null);
      if (statement instanceof Pollinated pollinated && pollinated.code().equals(code)) {
        said = pollinated;
      } else if (statement instanceof Harvested harvest) {
        seeds = seeds == null ? harvest.seeds() : seeds.plus(harvest.seeds());
      }
    }
    List<String> doubts = new ArrayList<>();
    behind.ifPresentOrElse(
        pedigree -> doubts.addAll(pedigree.doubts(code.text())),
        () -> doubts.add("its pedigree cannot be computed with"));
    return new CrossMade(
        outward.of(code),
        behind.map(pedigree -> pedigree.formula(code.text())).orElse(""),
        said == null ? "" : pollination(said),
        said == null ? null : said.date(),
        said == null || said.flowers() == null ? "" : said.flowers().toString(),
        said == null ? List.of() : said.protection().stream().map(this::word).toList(),
        text(seeds),
        view.lastSuffix(code, Item.Kind.SEEDLING),
        behind.map(pedigree -> pedigree.behind(code.text())).orElse(Behind.UNKNOWN),
        doubts);
  }

  private static String text(@Nullable Count count) {
    return count == null ? "" : count.toString();
  }

  private String word(Protection protection) {
    return protection.name().toLowerCase(Locale.ROOT);
  }

  private static String pollination(Pollinated cross) {
    Pollen pollen = cross.pollen();
    String how =
        pollen instanceof Pollen.OnePlant
            ? "by hand"
            : pollen instanceof Pollen.Itself
                ? "selfed"
                : pollen instanceof Pollen.Mix ? "by hand, pollen mixed" : "open";
    return how + (cross.storedPollen() ? ", stored pollen" : "");
  }
}
