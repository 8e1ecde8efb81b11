package dev.filial.core.answer;

import dev.filial.core.answer.GerminationQuestion.By;
import dev.filial.core.name.Code;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Treated;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What sowings have in common by which they are put together. */
final class SowingLabels {

  /** Where nothing was written down, which is not the same as that nothing was done. */
  static final String NOT_SAID = "not said";

  private final RegisterView view;
  private final By by;
  private final TaxaBehind taxa;
  private final Map<String, String> spelt = new HashMap<>();
  private final Map<String, Integer> met = new HashMap<>();

  private SowingLabels(RegisterView view, By by) {
    this.view = view;
    this.by = by;
    this.taxa = TaxaBehind.in(view);
  }

  /**
   * A label.
   *
   * @param order where it stands: lower first
   * @param text what it says
   */
  record Label(int order, String text) implements Comparable<Label> {
    @Override
    public int compareTo(Label other) {
      int byOrder = Integer.compare(order, other.order);
      return byOrder != 0 ? byOrder : text.compareTo(other.text);
    }
  }

  /** Labels sowings of {@code view}. */
  static SowingLabels of(RegisterView view, By by) {
    return new SowingLabels(view, by);
  }

  /** The label of a sowing. */
  Label of(Sown sown) {
    return switch (by) {
      case SOWING -> inOrder(sown.sowing().text());
      case LOT -> inOrder(sown.lot().text());
      case CROSS -> inOrder(cross(sown.sowing().whole()));
      case SPECIES -> known(species(taxa, sown.sowing().whole()));
      case MEDIUM -> known(sown.medium() == null ? "" : inOneSpelling(sown.medium()));
      case TREATMENT -> known(String.join(" + ", treatments(sown)));
      case AGE ->
          SeedAge.of(view, sown)
              .flatMap(SeedAge::span)
              .map(span -> new Label(span.order(), span.text()))
              .orElse(new Label(Integer.MAX_VALUE, "not known"));
    };
  }

  /** In the order in which they are met. */
  private Label inOrder(String text) {
    return new Label(met.computeIfAbsent(text, any -> met.size()), text);
  }

  private static Label known(String text) {
    return text.isEmpty() ? new Label(Integer.MAX_VALUE, NOT_SAID) : new Label(0, text);
  }

  /** As it was first spelt, in whatever case. */
  private String inOneSpelling(String text) {
    String stripped = text.strip();
    return spelt.computeIfAbsent(stripped.toLowerCase(Locale.ROOT), any -> stripped);
  }

  private String cross(Code family) {
    return family.text()
        + view.item(family).map(item -> " " + Describing.of(view, item)).orElse("");
  }

  /**
   * What was done to the seed up to the day it was sown: as its sowing says, and what was entered
   * of its lot, the lot that was split from, the sowing or its pots. What came later was done to
   * seedlings.
   */
  private Set<String> treatments(Sown sown) {
    Set<String> all = new TreeSet<>();
    sown.treatments().forEach(text -> all.add(inOneSpelling(text)));
    PartialDate until = sown.date();
    if (until == null) {
      return all;
    }
    add(sown.sowing(), until, all);
    for (Sown.Filled filled : sown.groups()) {
      add(filled.group(), until, all);
    }
    Set<Code> walked = new LinkedHashSet<>();
    Code lot = sown.lot();
    while (walked.add(lot)) {
      add(lot, until, all);
      Optional<Statement> first = view.item(lot).flatMap(item -> view.effective(item.entry()));
      if (first.isPresent() && first.get() instanceof LotSplit split) {
        lot = split.from();
        if (split.date() != null) {
          until = split.date().latest().isBefore(until.latest()) ? split.date() : until;
        }
      }
    }
    return all;
  }

  private void add(Code code, PartialDate until, Set<String> all) {
    for (long entry : view.entriesOn(Subject.of(code))) {
      if (view.effective(entry).orElse(null) instanceof Treated treated
          && treated.codes().contains(code)
          && treated.date() != null
          && !treated.date().latest().isAfter(until.latest())) {
        List<String> words = new ArrayList<>();
        words.add(treated.treatment().name().toLowerCase(Locale.ROOT));
        if (treated.product() != null) {
          words.add(treated.product());
        }
        if (treated.dilution() != null) {
          words.add(treated.dilution());
        }
        all.add(inOneSpelling(String.join(", ", words)));
      }
    }
  }

  /** The species in a cross or packet by name; empty text where none is known. */
  static String species(TaxaBehind taxa, Code family) {
    TaxaBehind.Taxa behind = taxa.of(family);
    return behind.names().isEmpty()
        ? ""
        : String.join(" × ", behind.names()) + (behind.unknown() ? " × ?" : "");
  }
}
