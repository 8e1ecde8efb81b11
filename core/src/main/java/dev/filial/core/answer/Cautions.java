package dev.filial.core.answer;

import dev.filial.core.register.Caution;
import dev.filial.core.register.Entry;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * What to mind with something that is recorded: said once for each kind of thing, by the first
 * entry of a register that calls for it.
 *
 * <p>Common practice, no source; it replaces neither the product's label nor the law nor a licensed
 * adviser.
 */
public final class Cautions {

  private Cautions() {}

  /** What to mind with this entry that no earlier one called for, a sentence each. */
  public static List<String> of(RegisterView view, Entry entry, Statement statement) {
    List<String> sentences = new ArrayList<>();
    for (Caution caution : Caution.of(statement)) {
      OptionalLong calling = view.firstMention(Subject.of(caution));
      if (calling.isEmpty() || calling.getAsLong() >= entry.number()) {
        sentences.add(sentence(caution));
      }
    }
    return List.copyOf(sentences);
  }

  /** All that there is to mind, kind by kind. */
  public static List<String> all() {
    List<String> sentences = new ArrayList<>();
    for (Caution caution : Caution.values()) {
      sentences.add(sentence(caution));
    }
    return List.copyOf(sentences);
  }

  /** What to mind with that kind of thing, a sentence. */
  public static String of(Caution caution) {
    return sentence(caution);
  }

  private static String sentence(Caution caution) {
    return switch (caution) {
      case CHEMICAL ->
          "oxidisers and fungicides want gloves and eye protection, and are never mixed with each"
              + " other; the product's label and local law decide.";
      case INSECTICIDE ->
          "what kills insects and mites wants gloves and fresh air, and is kept from bees and ponds;"
              + " the product's label and local law decide, and some may be used by licensed people"
              + " only.";
      case HORMONE ->
          "hormones are weighed and mixed with gloves, and colchicine is a poison that goes through"
              + " the skin: leave it to those who are trained and allowed to use it; the product's"
              + " label and local law decide.";
      case HOT -> "hot water, steam and ovens scald; hold seed in tongs or a net, not in the hand.";
      case ELECTRIC ->
          "bottom heat and lamps stand near water here: use only what is made for damp places,"
              + " behind a residual-current device, and keep the plugs dry.";
      // From memory, and said so broadly that it stays true: which plants are listed and what a
      // country asks for changes from year to year, so the reader is sent to those who know.
      case BORDER ->
          "across a border, nearly all cacti and many other succulents, and the seed of some, need"
              + " papers under the convention on trade in endangered species (CITES), nursery"
              + " raised or not, and most countries want a plant health certificate for plants and"
              + " many for seed; ask the authorities of both countries before anything is sent.";
    };
  }
}
