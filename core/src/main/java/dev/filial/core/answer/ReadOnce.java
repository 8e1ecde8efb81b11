package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Entry;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Taxon;
import dev.filial.core.register.TraitDeclared;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/**
 * A register of which each entry is read once, for questions that come back to the same entries for
 * every trait. It keeps what it read, and serves only as long as nothing is written.
 */
final class ReadOnce implements RegisterView {

  private final RegisterView view;
  private final Map<Long, Optional<Statement>> effective = new HashMap<>();
  private final Map<Subject, List<Long>> entriesOn = new HashMap<>();

  ReadOnce(RegisterView view) {
    this.view = view;
  }

  @Override
  public long size() {
    return view.size();
  }

  @Override
  public Optional<Entry> entry(long number) {
    return view.entry(number);
  }

  @Override
  public Optional<Statement> effective(long number) {
    return effective.computeIfAbsent(number, view::effective);
  }

  @Override
  public List<Long> entriesOn(Subject subject) {
    return entriesOn.computeIfAbsent(subject, view::entriesOn);
  }

  @Override
  public List<Long> entriesMentioning(Subject subject) {
    return view.entriesMentioning(subject);
  }

  @Override
  public OptionalLong firstMention(Subject subject) {
    return view.firstMention(subject);
  }

  @Override
  public List<String> keys(Subject.Kind kind) {
    return view.keys(kind);
  }

  @Override
  public Optional<Item> taken(Code code) {
    return view.taken(code);
  }

  @Override
  public Optional<Taxon> taxon(String key) {
    return view.taxon(key);
  }

  @Override
  public Optional<TraitDeclared> trait(String key) {
    return view.trait(key);
  }

  @Override
  public List<Code> codesUnder(Code whole) {
    return view.codesUnder(whole);
  }

  @Override
  public Map<String, List<Code>> named(String beginning, int most) {
    return view.named(beginning, most);
  }

  @Override
  public List<Code> called(String name) {
    return view.called(name);
  }

  @Override
  public List<Code> codesBeginning(String text, int most) {
    return view.codesBeginning(text, most);
  }

  @Override
  public long lastNumber(int year) {
    return view.lastNumber(year);
  }

  @Override
  public long lastSuffix(Code whole, Item.Kind kind) {
    return view.lastSuffix(whole, kind);
  }

  @Override
  public List<Item> items(Set<Item.Kind> kinds) {
    return view.items(kinds);
  }

  @Override
  public List<Taxon> taxa() {
    return view.taxa();
  }

  @Override
  public List<TraitDeclared> traits() {
    return view.traits();
  }

  @Override
  public boolean isAllDiploid() {
    return view.isAllDiploid();
  }

  @Override
  public Map<Code, Item> lineage(Collection<Code> roots) {
    return view.lineage(roots);
  }
}
