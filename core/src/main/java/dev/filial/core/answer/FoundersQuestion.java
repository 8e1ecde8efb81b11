package dev.filial.core.answer;

import dev.filial.core.ancestry.CoancestryMatrix;
import dev.filial.core.ancestry.FounderContributions;
import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;

/**
 * Which acquired plants stand behind a collection, and by how much. Kin are taken as {@link
 * KinshipQuestion} takes them: of one packet's seedlings the founders are its two parents, which
 * nobody saw.
 */
public final class FoundersQuestion {

  private final RegisterView view;

  private FoundersQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static FoundersQuestion of(RegisterView view) {
    return new FoundersQuestion(view);
  }

  /**
   * Who founded all plants that stand here under a number of their own.
   *
   * @throws RegisterRefusal if there is none
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  public Founded ask() {
    List<Code> here = new ArrayList<>();
    for (Item item : view.items(EnumSet.of(Item.Kind.PLANT, Item.Kind.SEEDLING))) {
      if (item.fate().isHere() && !item.neverHeld() && item.sameAs() == null) {
        here.add(item.code());
      }
    }
    return ask(here);
  }

  /**
   * Who founded these plants; offsets of one genotype count once.
   *
   * @throws RegisterRefusal if the register has no such code, or none is given
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  public Founded ask(List<Code> codes) {
    if (codes.isEmpty()) {
      throw new RegisterRefusal(
          "no plant stands here under a number of its own; enter one, or number seedlings");
    }
    KinBehind behind = KinBehind.of(view, codes);
    int[] genotypes =
        Arrays.stream(behind.plants()).map(behind.pedigree()::genet).distinct().toArray();
    Double mean =
        genotypes.length <= CoancestryMatrix.MOST
            ? (Double) behind.coancestry().matrix(genotypes).mean()
            : null;
    return new Founded(
        FounderContributions.of(behind.pedigree(), behind.plants()), mean, behind.kinNotes());
  }
}
