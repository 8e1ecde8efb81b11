package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.VerbTable;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.TypedLines;
import dev.filial.core.answer.Finding;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Taxon;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the Tab key proposes: verbs, options and their values, and out of the register codes and
 * names, taxa, traits and their states, places.
 */
final class Proposals implements TypedLines.Completion {

  private static final int MOST = 100;

  private final VerbTable verbs;
  private final OpenRegister register;
  private final Bench bench;

  Proposals(VerbTable verbs, OpenRegister register, Bench bench) {
    this.verbs = verbs;
    this.register = register;
    this.bench = bench;
  }

  @Override
  public List<String> proposals(List<String> before, String begun) {
    if (before.isEmpty()) {
      List<String> first = new ArrayList<>(verbs.names());
      first.addAll(List.of("on", "done"));
      return beginning(first, begun);
    }
    Optional<Words> words = verbs.words(before.get(0));
    if (words.isEmpty()) {
      return List.of();
    }
    List<String> following = before.subList(1, before.size());
    if (begun.startsWith("-")) {
      return beginning(
          words.get().fields().stream()
              .filter(Words.Field::isOption)
              .map(Words.Field::name)
              .toList(),
          begun);
    }
    return words
        .get()
        .expected(following)
        .map(field -> values(field, following, begun))
        .orElse(List.of());
  }

  /** What can stand in one field, the values of those before it being known. */
  List<String> values(Words.Field field, List<String> before, String begun) {
    if (!field.candidates().isEmpty()) {
      return beginning(field.candidates(), begun);
    }
    return register.read(bench, view -> inRegister(view, field.label(), before, begun));
  }

  private static List<String> inRegister(
      RegisterView view, String label, List<String> before, String begun) {
    return switch (label) {
      case "TAXON" -> beginning(taxa(view), begun);
      case "TRAIT" -> beginning(view.traits().stream().map(TraitDeclared::trait).toList(), begun);
      case "VALUE", "STATE" -> beginning(states(view, before), begun);
      case "STATE=COUNT" ->
          beginning(states(view, before).stream().map(state -> state + "=").toList(), begun);
      case "PLACE" -> beginning(places(view), begun);
      case "DATE" -> beginning(List.of("today", "yesterday"), begun);
      case "COUNT", "COUNTS", "TEXT", "NUMBER", "SHARE", "JSON", "SETS" -> List.of();
      default -> Finding.in(view).beginning(begun, MOST);
    };
  }

  private static Set<String> taxa(RegisterView view) {
    Set<String> names = new TreeSet<>();
    view.taxa().stream().map(Taxon::name).forEach(names::add);
    for (Item item : view.items(Set.of(Item.Kind.PLANT, Item.Kind.SEED))) {
      String taxon = item.determination().taxon();
      if (taxon != null) {
        names.add(taxon);
      }
    }
    return names;
  }

  /** The states of the trait that was named before, whichever word that is. */
  private static List<String> states(RegisterView view, List<String> before) {
    for (int i = before.size() - 1; i >= 0; i--) {
      Optional<TraitDeclared> trait = view.trait(before.get(i).strip().toLowerCase(Locale.ROOT));
      if (trait.isPresent()) {
        return trait.get().states();
      }
    }
    return List.of();
  }

  private static Set<String> places(RegisterView view) {
    Set<String> places = new TreeSet<>(view.keys(dev.filial.core.register.Subject.Kind.PLACE));
    for (Item item : view.items(Set.of(Item.Kind.values()))) {
      if (item.place() != null) {
        places.add(item.place());
      }
    }
    return places;
  }

  private static List<String> beginning(Collection<String> texts, String begun) {
    String typed = begun.toLowerCase(Locale.ROOT);
    return texts.stream()
        .filter(text -> text.toLowerCase(Locale.ROOT).startsWith(typed))
        .limit(MOST)
        .toList();
  }
}
