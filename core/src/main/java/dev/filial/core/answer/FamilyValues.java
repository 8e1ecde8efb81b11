package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What the numbered seedlings of a family were last measured or scored, those left out that were
 * picked for it, because they are no sample of their family.
 *
 * @param values the values
 * @param picked how many were left out for having been picked
 * @param unmeasured how many are here and were never measured
 * @param first the earliest day of the measurements; null if one of them has none
 * @param last the latest day
 */
record FamilyValues(
    List<Double> values,
    long picked,
    long unmeasured,
    @Nullable PartialDate first,
    @Nullable PartialDate last) {

  /** Of a cross, packet or mixture. */
  static FamilyValues of(RegisterView view, LastSeen seen, Code family) {
    List<Double> values = new ArrayList<>();
    long picked = 0;
    long unmeasured = 0;
    PartialDate first = null;
    PartialDate last = null;
    boolean dated = true;
    for (Code code : view.codesUnder(family)) {
      Optional<Item> item = code.isSeedling() ? view.item(code) : Optional.empty();
      if (item.isEmpty()) {
        continue;
      }
      List<LastSeen.Look> looks = seen.all(code);
      if (looks.isEmpty()) {
        unmeasured += item.get().fate().isHere() && item.get().sameAs() == null ? 1 : 0;
      } else if (seen.isPicked(item.get())) {
        picked++;
      } else {
        LastSeen.Look look = looks.get(looks.size() - 1);
        values.add(number(look.value()));
        PartialDate day = look.date();
        dated &= day != null;
        if (day != null && (first == null || day.earliest().isBefore(first.earliest()))) {
          first = day;
        }
        if (day != null && (last == null || day.latest().isAfter(last.latest()))) {
          last = day;
        }
      }
    }
    return new FamilyValues(
        List.copyOf(values), picked, unmeasured, dated ? first : null, dated ? last : null);
  }

  /** What a plant was last measured; empty if it never was. */
  static OptionalDouble measured(LastSeen seen, Code plant) {
    return seen.value(plant)
        .map(value -> OptionalDouble.of(number(value)))
        .orElse(OptionalDouble.empty());
  }

  private static double number(String value) {
    return new BigDecimal(value.strip()).doubleValue();
  }
}
