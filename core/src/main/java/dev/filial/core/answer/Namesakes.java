package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Names;
import dev.filial.core.register.RegisterView;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Who has a name already: two plants of one name can each be told only by their codes. */
public final class Namesakes {

  /** Names longer than the one asked for that are looked through before it is taken as new. */
  private static final int LOOKED_THROUGH = 100;

  private Namesakes() {}

  /**
   * The things of {@code view} called so, in either case, except {@code bearer} itself.
   *
   * @return their codes, in order; of a name that very many others begin with, perhaps not all
   */
  public static List<Code> of(RegisterView view, String name, Code bearer) {
    Set<Code> codes = new TreeSet<>();
    for (Map.Entry<String, List<Code>> named : view.named(name, LOOKED_THROUGH).entrySet()) {
      if (Names.folded(named.getKey()).equals(Names.folded(name))) {
        codes.addAll(named.getValue());
      }
    }
    codes.remove(bearer);
    return List.copyOf(codes);
  }

  /** A sentence about those who share {@code name} with {@code bearer}; empty when nobody does. */
  public static Optional<String> note(RegisterView view, String name, Code bearer) {
    List<Code> others = of(view, name, bearer);
    return others.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "\""
                + name
                + "\" is also what "
                + others.stream().map(Code::text).collect(Collectors.joining(", "))
                + " is called; from now on each is to be named by its code");
  }
}
