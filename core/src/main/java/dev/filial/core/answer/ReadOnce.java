package dev.filial.core.answer;

import dev.filial.core.register.ForwardingView;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A register of which each entry is read once, for questions that come back to the same entries for
 * every trait. It keeps what it read, and serves only as long as nothing is written.
 */
final class ReadOnce extends ForwardingView {

  private final RegisterView view;
  private final Map<Long, Optional<Statement>> effective = new HashMap<>();
  private final Map<Subject, List<Long>> entriesOn = new HashMap<>();

  ReadOnce(RegisterView view) {
    this.view = view;
  }

  @Override
  protected RegisterView view() {
    return view;
  }

  @Override
  public Optional<Statement> effective(long number) {
    return effective.computeIfAbsent(number, view::effective);
  }

  @Override
  public List<Long> entriesOn(Subject subject) {
    return entriesOn.computeIfAbsent(subject, view::entriesOn);
  }
}
