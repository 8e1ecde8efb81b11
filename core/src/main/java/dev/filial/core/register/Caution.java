package dev.filial.core.register;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What can hurt somebody in what an entry records, or bring them before the law.
 *
 * <p>Treatments are known by their kind, and by the words in which a grower describes a sowing.
 * What is not known here by name is not thereby harmless. Common practice, no source.
 */
public enum Caution {
  /** Peroxide, bleach, permanganate, fungicides: skin, eyes, and never mixed. */
  CHEMICAL,
  /** Something against insects or mites. */
  INSECTICIDE,
  /** Hormones, and colchicine, which is a poison. */
  HORMONE,
  /** Hot water, an oven, steam. */
  HOT,
  /** Lamps and heat mats near water. */
  ELECTRIC,
  /** Plants or seed that change hands, perhaps across a border. */
  BORDER;

  /** The beginnings of words that tell of it; one with a space at its end is the whole word. */
  private List<String> words() {
    return switch (this) {
      case CHEMICAL ->
          List.of(
              "peroxide",
              "h2o2",
              "bleach",
              "hypochlorite",
              "chlorine",
              "permanganate",
              "fungicid",
              "sulphur",
              "sulfur",
              "captan",
              "thiram",
              "mancozeb",
              "propamocarb",
              "copper",
              "disinfect");
      case INSECTICIDE ->
          List.of("insecticid", "acaricid", "pyrethr", "neonicotin", "imidacloprid");
      case HORMONE -> List.of("colchicin", "gibberell", "auxin");
      case HOT -> List.of("boiling", "hot water", "oven", "microwave", "steam");
      case ELECTRIC ->
          List.of(
              "bottom heat",
              "heat mat",
              "heated",
              "lamp",
              "led ",
              "leds ",
              "grow light",
              "fluorescent",
              "propagator");
      case BORDER -> List.of();
    };
  }

  /** What the statement calls for; empty for most. */
  public static Set<Caution> of(Statement statement) {
    Set<Caution> found = EnumSet.noneOf(Caution.class);
    if (statement instanceof Treated treated) {
      byKind(treated.treatment(), found);
      byWords(found, List.of(), treated.product(), treated.remark());
    } else if (statement instanceof Sown sown) {
      byWords(
          found, sown.treatments(), sown.medium(), sown.cover(), sown.container(), sown.place());
      if (sown.bottomHeat() != null || sown.lightHours() != null) {
        found.add(ELECTRIC);
      }
    } else if (statement instanceof Propagated ramet && ramet.doubled()) {
      found.add(HORMONE);
    } else if (changesHands(statement)) {
      found.add(BORDER);
    }
    return found;
  }

  private static boolean changesHands(Statement statement) {
    return (statement instanceof FateRecorded fate && fate.fate() == Fate.GIVEN)
        || statement instanceof Promised
        || (statement instanceof PlantAcquired plant && plant.provenance().donor() != null)
        || (statement instanceof SeedAcquired seed && seed.provenance().donor() != null);
  }

  private static void byKind(Treatment treatment, Set<Caution> found) {
    switch (treatment) {
      case OXIDISER, FUNGICIDE -> found.add(CHEMICAL);
      case INSECTICIDE -> found.add(INSECTICIDE);
      case HORMONE -> found.add(HORMONE);
      case HEAT -> found.add(HOT);
      case SOAK, SCARIFICATION, COLD, SMOKE, FEED, OTHER -> {}
    }
  }

  private static void byWords(
      Set<Caution> found, List<String> treatments, @Nullable String... more) {
    StringBuilder said = new StringBuilder();
    treatments.forEach(text -> said.append(text).append('\n'));
    for (String text : more) {
      if (text != null) {
        said.append(text).append('\n');
      }
    }
    String text = said.toString().toLowerCase(Locale.ROOT);
    for (Caution caution : values()) {
      for (String word : caution.words()) {
        if (holds(text, word)) {
          found.add(caution);
        }
      }
    }
  }

  private static boolean holds(String text, String word) {
    String beginning = word.strip();
    int at = text.indexOf(beginning);
    while (at >= 0) {
      int end = at + beginning.length();
      boolean whole = word.equals(beginning) || !Character.isLetter(text.charAt(end));
      if (whole && (at == 0 || !Character.isLetter(text.charAt(at - 1)))) {
        return true;
      }
      at = text.indexOf(beginning, at + 1);
    }
    return false;
  }
}
