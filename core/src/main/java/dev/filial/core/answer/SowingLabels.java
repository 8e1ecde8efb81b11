package dev.filial.core.answer;

import dev.filial.core.ancestry.ExpectedShares;
import dev.filial.core.answer.GerminationQuestion.By;
import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Treated;
import java.util.ArrayList;
import java.util.Collection;
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
  private final Map<Code, String> species;
  private final Map<String, String> spelt = new HashMap<>();
  private final Map<String, Integer> met = new HashMap<>();

  private SowingLabels(RegisterView view, By by, Map<Code, String> species) {
    this.view = view;
    this.by = by;
    this.species = species;
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

  /** Makes ready to label those sowings; for species one pass over the pedigree behind them. */
  static SowingLabels of(RegisterView view, By by, Collection<Sown> sowings) {
    return new SowingLabels(view, by, by == By.SPECIES ? species(view, sowings) : Map.of());
  }

  /** The label of a sowing. */
  Label of(Sown sown) {
    return switch (by) {
      case SOWING -> inOrder(sown.sowing().text());
      case LOT -> inOrder(sown.lot().text());
      case CROSS -> inOrder(cross(sown.sowing().whole()));
      case SPECIES -> known(species.getOrDefault(sown.sowing().whole(), ""));
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

  private static Map<Code, String> species(RegisterView view, Collection<Sown> sowings) {
    Set<Code> families = new LinkedHashSet<>();
    for (Sown sown : sowings) {
      if (view.item(sown.sowing().whole()).isPresent()) {
        families.add(sown.sowing().whole());
      }
    }
    return species(view, families);
  }

  /** By each cross or packet, the species in it by name; empty text where none is known. */
  static Map<Code, String> species(RegisterView view, Set<Code> families) {
    RegisterPedigree behind = RegisterPedigree.of(view, families, false);
    Pedigree pedigree = behind.pedigree();
    ExpectedShares shares = ExpectedShares.of(pedigree);
    Map<Code, String> labels = new HashMap<>();
    for (Code family : families) {
      double[] row = shares.row(pedigree.indexOf(family.text()));
      List<String> taxa = new ArrayList<>();
      for (int i = 0; i < shares.taxa().size(); i++) {
        if (row[i] > 0) {
          taxa.add(shares.taxa().get(i));
        }
      }
      if (row[row.length - 1] > 0 && !taxa.isEmpty()) {
        taxa.add("?");
      }
      labels.put(family, String.join(" × ", taxa));
    }
    return labels;
  }
}
