package dev.filial.core.store;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Where what was derived from the entries departs from what they give when read again. */
final class Differences {

  /** After so many, more of the same help nobody. */
  private static final int MOST = 20;

  private Differences() {}

  /** What {@code kept} holds that {@code read} does not give, or the other way about. */
  static List<String> between(RegisterView read, RegisterView kept) {
    List<String> faults = new ArrayList<>();
    Set<Subject> subjects = new LinkedHashSet<>();
    for (long number = 1; number <= read.size(); number++) {
      Optional<Statement> said = read.effective(number);
      if (!said.equals(kept.effective(number))) {
        faults.add("what entry " + number + " says now was not kept as the amendments give it");
      }
      said.ifPresent(
          statement -> {
            subjects.addAll(statement.subjects());
            subjects.addAll(statement.mentions());
          });
      if (faults.size() >= MOST) {
        return faults;
      }
    }
    compare("coded thing", items(read), items(kept), faults);
    compare(
        "taxon",
        index(read.taxa(), taxon -> taxon.key()),
        index(kept.taxa(), taxon -> taxon.key()),
        faults);
    compare(
        "trait",
        index(read.traits(), trait -> trait.trait()),
        index(kept.traits(), trait -> trait.trait()),
        faults);
    for (Subject subject : subjects) {
      if (faults.size() >= MOST) {
        return faults;
      }
      if (subject.kind() == Subject.Kind.CODE) {
        Code code = Code.parse(subject.key());
        if (!read.taken(code).equals(kept.taken(code))
            || !read.codesUnder(code.whole()).equals(kept.codesUnder(code.whole()))) {
          faults.add(subject.key() + " was not kept as the entries give it");
        }
      }
      if (!read.entriesOn(subject).equals(kept.entriesOn(subject))
          || !read.entriesMentioning(subject).equals(kept.entriesMentioning(subject))) {
        faults.add("the entries about " + subject.key() + " were not kept as the book gives them");
      }
    }
    return faults;
  }

  private static Map<Code, Item> items(RegisterView view) {
    return index(view.items(EnumSet.allOf(Item.Kind.class)), Item::code);
  }

  private static <K, V> Map<K, V> index(List<V> values, java.util.function.Function<V, K> key) {
    Map<K, V> map = new HashMap<>(values.size() * 2);
    values.forEach(value -> map.put(key.apply(value), value));
    return map;
  }

  private static <K, V> void compare(
      String what, Map<K, V> read, Map<K, V> kept, List<String> faults) {
    Set<K> keys = new LinkedHashSet<>(read.keySet());
    keys.addAll(kept.keySet());
    for (K key : keys) {
      if (faults.size() >= MOST) {
        return;
      }
      if (!Objects.equals(read.get(key), kept.get(key))) {
        faults.add(what + " " + key + " was not kept as the entries give it");
      }
    }
  }
}
