package dev.filial.core.answer;

import dev.filial.core.exchange.Accession;
import dev.filial.core.exchange.Accession.Arrival;
import dev.filial.core.exchange.Accession.Behind;
import dev.filial.core.exchange.Accession.Kind;
import dev.filial.core.exchange.Accession.Named;
import dev.filial.core.exchange.Accession.State;
import dev.filial.core.exchange.Accession.Status;
import dev.filial.core.exchange.Taker;
import dev.filial.core.name.Code;
import dev.filial.core.name.Qualifier;
import dev.filial.core.name.TaxonName;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Item;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterView;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Plants and seed lots as they are handed on to others: with the grower's mark before every code,
 * the donor's own code beside it, and all that is doubtful said. Who gave a plant and where it was
 * collected are told only where that is asked for.
 */
public final class AccessionsQuestion {

  private final RegisterView view;
  private final Chosen chosen;
  private final boolean seedLots;
  private final boolean elsewhere;
  private final boolean localities;
  private final boolean people;

  private AccessionsQuestion(
      RegisterView view,
      Chosen chosen,
      boolean seedLots,
      boolean elsewhere,
      boolean localities,
      boolean people) {
    this.view = view;
    this.chosen = chosen;
    this.seedLots = seedLots;
    this.elsewhere = elsewhere;
    this.localities = localities;
    this.people = people;
  }

  /** Asks {@code view} for the plants among what was chosen. */
  public static AccessionsQuestion of(RegisterView view, Chosen chosen) {
    return new AccessionsQuestion(view, chosen, false, false, false, false);
  }

  /** The same, with seed lots. */
  public AccessionsQuestion withSeedLots(boolean also) {
    return new AccessionsQuestion(view, chosen, also, elsewhere, localities, people);
  }

  /** The same, with plants that never stood here, where what is gone is wanted too. */
  public AccessionsQuestion withNeverHeld(boolean also) {
    return new AccessionsQuestion(view, chosen, seedLots, also, localities, people);
  }

  /** The same, telling where plants were collected. */
  public AccessionsQuestion withLocalities(boolean told) {
    return new AccessionsQuestion(view, chosen, seedLots, elsewhere, told, people);
  }

  /** The same, telling who gave plants. */
  public AccessionsQuestion withPeople(boolean told) {
    return new AccessionsQuestion(view, chosen, seedLots, elsewhere, localities, told);
  }

  /**
   * How many there were.
   *
   * @param rows how many were handed on
   * @param gone how many were left out because they died, left or were used up
   * @param neverHeld how many were left out because they never stood here
   */
  public record Told(int rows, int gone, int neverHeld) {}

  /**
   * Hands them to {@code taker} in order of their codes. Only some thousand of them are in memory
   * at a time.
   *
   * @throws IOException if the taker cannot take one
   * @throws dev.filial.core.register.RegisterRefusal if the register has no grower's mark
   */
  public Told each(Taker<Accession> taker) throws IOException {
    OutwardCodes outward = OutwardCodes.of(view);
    Set<Item.Kind> kinds = EnumSet.of(Item.Kind.PLANT, Item.Kind.SEEDLING);
    if (seedLots) {
      kinds.add(Item.Kind.LOT);
    }
    ChosenCodes codes = ChosenCodes.of(view, chosen, kinds, elsewhere);
    Telling telling = new Telling(outward, codes);
    new OutwardChunks(view, outward)
        .each(codes.codes(), (code, behind) -> taker.take(telling.of(code, behind)));
    return new Told(codes.codes().size(), codes.gone(), codes.neverHeld());
  }

  /** Tells of one after the other, remembering what many have in common. */
  private final class Telling {
    private final OutwardCodes outward;
    private final ChosenCodes chosenCodes;
    private final Map<String, TaxonName> accepted = new HashMap<>();
    private long lastEntry;
    private Provenance last = Provenance.UNKNOWN;

    Telling(OutwardCodes outward, ChosenCodes chosenCodes) {
      this.outward = outward;
      this.chosenCodes = chosenCodes;
    }

    Accession of(Code code, Optional<OutwardPedigree> behind) {
      Item item =
          behind
              .flatMap(pedigree -> pedigree.item(code.text()))
              .orElseGet(() -> Things.required(view, code));
      Item origin =
          behind
              .map(pedigree -> pedigree.origin(item))
              .orElseGet(() -> Describing.origin(view, item));
      Determination said = Describing.determination(item, origin);
      Named named = named(item, said, behind);
      List<String> doubts = new ArrayList<>();
      if (behind.isPresent()) {
        doubts.addAll(behind.get().doubts(code.text()));
      } else {
        doubts.add("its pedigree cannot be computed with");
      }
      if (item.kind() == Item.Kind.LOT && item.count() != null && !item.count().isExact()) {
        doubts.add("number not counted");
      }
      return new Accession(
          outward.of(code),
          chosenCodes.joined().getOrDefault(code, List.of()).stream().map(outward::of).toList(),
          kind(item),
          named,
          arrival(item, origin, behind),
          behind.map(pedigree -> pedigree.behind(code.text())).orElse(Behind.UNKNOWN),
          new State(
              item.fate().isHere() && !item.neverHeld(),
              Describing.fate(item),
              item.until(),
              item.count() == null ? "" : item.count().toString()),
          behind
              .map(pedigree -> pedigree.status(item, named.cultivar() != null))
              .orElse(Status.UNKNOWN),
          doubts);
    }

    private Kind kind(Item item) {
      if (item.kind() == Item.Kind.LOT) {
        return Kind.SEED_LOT;
      }
      if (item.kind() == Item.Kind.SEEDLING) {
        return Kind.SEEDLING;
      }
      boolean offset =
          item.descent().size() == 1
              && item.descent().get(0).form() != Descent.Form.SIBLING
              && item.descent().get(0).share().isOne();
      return offset ? Kind.OFFSET : Kind.PLANT;
    }

    private Named named(Item item, Determination said, Optional<OutwardPedigree> behind) {
      String code = item.code().text();
      String formula = behind.map(pedigree -> pedigree.formula(code)).orElse("");
      if (said.taxon() != null && said.makeup().isEmpty()) {
        TaxonName name = accepted(said.taxon());
        String cultivar = said.cultivar() == null ? name.cultivar().orElse(null) : said.cultivar();
        String doubt =
            TaxonName.parse(said.taxon())
                .qualifier()
                .map(Qualifier::text)
                .map(sign -> sign + " " + name.shortName())
                .orElse(null);
        return new Named(name, doubt, cultivar, name.withoutAuthors().text(), item.names());
      }
      String only = behind.map(pedigree -> pedigree.onlyTaxon(code)).orElse(null);
      return new Named(
          only == null ? null : accepted(only), null, said.cultivar(), formula, item.names());
    }

    private TaxonName accepted(String written) {
      return accepted.computeIfAbsent(
          written, name -> TaxonName.parse(view.accepted(name).name()).unqualified());
    }

    private Arrival arrival(Item item, Item origin, Optional<OutwardPedigree> behind) {
      Provenance provenance = origin.descent().isEmpty() ? provenance(origin) : Provenance.UNKNOWN;
      return new Arrival(
          item.since(),
          people ? provenance.donor() : null,
          provenance.donorCode(),
          // An offset is the plant that was collected, too.
          behind
              .map(pedigree -> pedigree.fieldNumber(item.code().text()))
              .orElse(origin.fieldNumber()),
          localities ? provenance.locality() : null);
    }

    private Provenance provenance(Item origin) {
      if (origin.entry() != lastEntry) {
        lastEntry = origin.entry();
        last = Provenance.of(view.effective(origin.entry()).orElse(null));
      }
      return last;
    }
  }
}
