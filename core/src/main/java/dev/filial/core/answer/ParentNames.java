package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the parents of things are called. Remembers what it looked up. */
public final class ParentNames {

  private final RegisterView view;
  private final Map<Code, List<String>> known = new HashMap<>();

  /** What each parent is called: one plant may be a parent of many. */
  private final Map<Code, List<String>> called = new HashMap<>();

  private ParentNames(RegisterView view) {
    this.view = view;
  }

  /** Of the things in {@code view}. */
  public static ParentNames in(RegisterView view) {
    return new ParentNames(view);
  }

  /**
   * The names of all that may be a parent of a thing, or that it is an offset of: their own names,
   * and what they were acquired as, under the accepted name and as it came. A thing that stands
   * under the code of a cross has the parents of that. Nothing if no parent bears any name.
   */
  public List<String> of(Code code) {
    return known.computeIfAbsent(
        code.whole(), whole -> view.item(whole).map(this::ofParents).orElse(List.of()));
  }

  private List<String> ofParents(Item item) {
    Set<String> names = new LinkedHashSet<>();
    for (Descent descent : item.descent()) {
      names.addAll(called(descent.seed()));
      if (descent.pollen() != null) {
        names.addAll(called(descent.pollen()));
      }
    }
    return List.copyOf(names);
  }

  private List<String> called(Code parent) {
    return called.computeIfAbsent(
        parent, code -> view.resolved(code).map(this::names).orElse(List.of()));
  }

  private List<String> names(Item item) {
    List<String> its = new ArrayList<>(item.names());
    if (item.determination().taxon() != null) {
      its.add(Describing.of(view, item));
      its.add(item.determination().taxon());
    } else if (item.determination().cultivar() != null) {
      its.add(Describing.of(view, item));
    }
    return its;
  }
}
