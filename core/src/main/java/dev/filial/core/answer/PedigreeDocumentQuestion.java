package dev.filial.core.answer;

import dev.filial.core.exchange.PedigreeDocument;
import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;

/**
 * The pedigree of a register, or that behind some of its plants, as a document for other programs.
 * What is here is shown with all behind it, dead or alive. A cross or a packet of which no seedling
 * was numbered stands for one seedling of it.
 */
public final class PedigreeDocumentQuestion {

  private final RegisterView view;
  private final Chosen chosen;

  private PedigreeDocumentQuestion(RegisterView view, Chosen chosen) {
    this.view = view;
    this.chosen = chosen;
  }

  /** Asks {@code view} for what stands behind what was chosen. */
  public static PedigreeDocumentQuestion of(RegisterView view, Chosen chosen) {
    return new PedigreeDocumentQuestion(view, chosen);
  }

  /**
   * The document. All of it is in memory at once.
   *
   * @throws RegisterRefusal if the register has no grower's mark, or nothing was chosen
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  public PedigreeDocument ask() {
    OutwardCodes outward = OutwardCodes.of(view);
    List<Code> roots = roots();
    if (roots.isEmpty()) {
      throw new RegisterRefusal("there is no plant to show the pedigree of; record one first");
    }
    OutwardPedigree behind = OutwardPedigree.of(view, outward, roots);
    return PedigreeDocument.of(behind.pedigree(), plant -> node(behind, plant));
  }

  private List<Code> roots() {
    if (!chosen.only().isEmpty()) {
      return chosen.only().stream()
          .filter(chosen::isOfYear)
          .map(code -> Things.required(view, code).code())
          .distinct()
          .sorted()
          .toList();
    }
    ChosenCodes found =
        ChosenCodes.of(
            view,
            chosen,
            EnumSet.of(
                Item.Kind.PLANT,
                Item.Kind.SEEDLING,
                Item.Kind.CROSS,
                Item.Kind.SEED,
                Item.Kind.MIXTURE),
            true);
    List<Code> roots = new ArrayList<>();
    for (List<Code> chunk : ChosenCodes.chunks(found.codes())) {
      Map<Code, Item> items = view.itemsOf(chunk);
      for (Code code : chunk) {
        Item item = items.get(code);
        boolean family = item != null && item.kind().isFamily();
        if (!family || view.lastSuffix(code, Item.Kind.SEEDLING) == 0) {
          roots.add(code);
        }
      }
    }
    return roots;
  }

  private static PedigreeDocument.Node node(OutwardPedigree behind, String plant) {
    Item item = behind.item(plant).orElse(null);
    return new PedigreeDocument.Node(
        behind.code(plant),
        item == null
            ? "unnumbered plant"
            : item.kind().isPlant()
                ? item.kind().word()
                : "one seedling of a " + item.kind().word(),
        item == null ? "" : String.join("; ", item.names()),
        behind.formula(plant),
        behind.generation(plant),
        item == null || !item.kind().isPlant() ? "" : Describing.fate(item),
        behind.doubts(plant));
  }
}
