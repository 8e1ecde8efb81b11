package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.ModelDeclared;
import java.util.LinkedHashMap;
import java.util.Map;

/** A row of the table of a trait as it is typed. */
final class TableRow {

  /** What stands for the state of a plant that does not live to show one. */
  static final String DIES = "dies";

  /** Reads {@code GENES=STATE}, {@code GENES=STATE:80%,STATE} or {@code GENES=dies}. */
  static final Reading<ModelDeclared.Row> READING = (text, bench) -> read(text);

  private TableRow() {}

  private static ModelDeclared.Row read(String text) {
    int equals = text.indexOf('=');
    if (equals < 1 || equals == text.length() - 1) {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" does not say what plants show; write \"R_=red\", and \"*=green\" for all others");
    }
    Map<String, Fraction> chances = new LinkedHashMap<>(Chances.read(text.substring(equals + 1)));
    Fraction lost = chances.getOrDefault(DIES, Fraction.ZERO);
    chances.remove(DIES);
    Fraction alive = Fraction.ONE.minus(lost);
    // Of those that live, so often.
    chances.replaceAll((state, share) -> share.dividedBy(alive));
    String genes = text.substring(0, equals).strip();
    return lost.isOne()
        ? ModelDeclared.Row.lethal(genes)
        : new ModelDeclared.Row(genes, chances, lost);
  }
}
