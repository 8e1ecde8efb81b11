package dev.filial.core.answer;

import dev.filial.core.register.Sown;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What to mind when a sowing is treated or heated, by the words in which the grower describes it.
 *
 * <p>Common practice, no source; it replaces neither the product's label nor the law, and a
 * treatment that is not known here by name is not thereby harmless.
 */
public final class Precautions {

  private static final Pattern CHEMICAL =
      Pattern.compile(
          "\\b(?:(?:hydrogen )?peroxide|h2o2|bleach|hypochlorite|chlorine|permanganate"
              + "|fungicid|sulphur|sulfur|captan|thiram|mancozeb|propamocarb|copper|disinfect)");
  private static final Pattern ELECTRIC =
      Pattern.compile(
          "\\b(?:bottom heat|heat mat|heat|lamp|leds?\\b|grow light|fluorescent|propagator)");

  private Precautions() {}

  /** What to mind with this sowing, each once, a sentence; empty when nothing in it asks for it. */
  public static List<String> of(Sown sowing) {
    String words =
        Stream.concat(
                sowing.treatments().stream(),
                Stream.of(sowing.medium(), sowing.cover(), sowing.container(), sowing.place()))
            .map(text -> text == null ? "" : text)
            .collect(Collectors.joining("\n"))
            .toLowerCase(Locale.ROOT);
    List<String> found = new ArrayList<>();
    if (CHEMICAL.matcher(words).find()) {
      found.add(
          "oxidisers and fungicides want gloves and eye protection, and are never mixed with each"
              + " other; the product's label and local law decide.");
    }
    if (ELECTRIC.matcher(words).find()) {
      found.add(
          "bottom heat and lamps stand near water here: use only what is made for damp places,"
              + " behind a residual-current device, and keep the plugs dry.");
    }
    return List.copyOf(found);
  }
}
