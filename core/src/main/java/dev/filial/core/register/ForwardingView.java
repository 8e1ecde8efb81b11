package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.ObjLongConsumer;

/** Reads through to another view; what is to be read otherwise is overridden. */
public abstract class ForwardingView implements RegisterView {

  /** For whoever says what is read. */
  protected ForwardingView() {}

  /** The view that is read. */
  protected abstract RegisterView view();

  @Override
  public long size() {
    return view().size();
  }

  @Override
  public Optional<Entry> entry(long number) {
    return view().entry(number);
  }

  @Override
  public Optional<Statement> effective(long number) {
    return view().effective(number);
  }

  @Override
  public List<Long> entriesOf(Set<Class<? extends Statement>> kinds) {
    return view().entriesOf(kinds);
  }

  @Override
  public void readAll(Set<Class<? extends Statement>> kinds, ObjLongConsumer<Statement> taker) {
    view().readAll(kinds, taker);
  }

  @Override
  public List<Long> entriesOn(Subject subject) {
    return view().entriesOn(subject);
  }

  @Override
  public List<Long> entriesMentioning(Subject subject) {
    return view().entriesMentioning(subject);
  }

  @Override
  public OptionalLong firstMention(Subject subject) {
    return view().firstMention(subject);
  }

  @Override
  public List<String> keys(Subject.Kind kind) {
    return view().keys(kind);
  }

  @Override
  public Optional<Item> taken(Code code) {
    return view().taken(code);
  }

  @Override
  public Optional<Taxon> taxon(String key) {
    return view().taxon(key);
  }

  @Override
  public Optional<TraitDeclared> trait(String key) {
    return view().trait(key);
  }

  @Override
  public List<Code> codesUnder(Code whole) {
    return view().codesUnder(whole);
  }

  @Override
  public Map<String, List<Code>> named(String beginning, int most) {
    return view().named(beginning, most);
  }

  @Override
  public List<Code> called(String name) {
    return view().called(name);
  }

  @Override
  public List<Code> codesBeginning(String text, int most) {
    return view().codesBeginning(text, most);
  }

  @Override
  public long lastNumber(int year) {
    return view().lastNumber(year);
  }

  @Override
  public long lastSuffix(Code whole, Item.Kind kind) {
    return view().lastSuffix(whole, kind);
  }

  @Override
  public List<Item> items(Set<Item.Kind> kinds) {
    return view().items(kinds);
  }

  @Override
  public List<Taxon> taxa() {
    return view().taxa();
  }

  @Override
  public List<TraitDeclared> traits() {
    return view().traits();
  }

  @Override
  public boolean isAllDiploid() {
    return view().isAllDiploid();
  }

  @Override
  public Map<Code, Item> itemsOf(Collection<Code> codes) {
    return view().itemsOf(codes);
  }

  @Override
  public Map<Code, Item> lineage(Collection<Code> roots) {
    return view().lineage(roots);
  }
}
