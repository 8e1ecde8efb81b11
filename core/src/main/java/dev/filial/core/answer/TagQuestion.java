package dev.filial.core.answer;

import dev.filial.core.ancestry.GenerationClassifier;
import dev.filial.core.name.Code;
import dev.filial.core.name.GrowersMark;
import dev.filial.core.name.LabelFacts;
import dev.filial.core.name.LabelLayout;
import dev.filial.core.name.LabelText;
import dev.filial.core.name.TravellingCode;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What to write on a tag or a packet. */
public final class TagQuestion {

  private final RegisterView view;
  private final LabelLayout layout;
  private final boolean travelling;

  private TagQuestion(RegisterView view, LabelLayout layout, boolean travelling) {
    this.view = view;
    this.layout = layout;
    this.travelling = travelling;
  }

  /** Asks {@code view} for a tag that stays at home, of the standard size. */
  public static TagQuestion of(RegisterView view) {
    return new TagQuestion(view, LabelLayout.STANDARD, false);
  }

  /** The same on another size of tag. */
  public TagQuestion withLayout(LabelLayout other) {
    return new TagQuestion(view, other, travelling);
  }

  /** The same for what leaves the house: with the grower's mark before the code. */
  public TagQuestion withMark(boolean leaves) {
    return new TagQuestion(view, layout, leaves);
  }

  /**
   * The text of a tag.
   *
   * @param code what it belongs to
   * @param text its lines
   * @param machineReadable mark and code with their ISO/IEC 7064 MOD 37,36 character, for a label
   *     that a machine reads; empty when the register has no mark
   */
  public record Tag(Code code, LabelText text, String machineReadable) {}

  /**
   * The tag of one thing.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   */
  public Tag ask(Code code) {
    Item item = Things.required(view, code);
    Optional<TravellingCode> mark =
        view.opening()
            .map(opening -> new TravellingCode(new GrowersMark(opening.mark()), item.code()));
    String written =
        travelling ? mark.map(TravellingCode::text).orElse(item.code().text()) : item.code().text();
    LabelFacts facts = LabelFacts.of(written).withParentsOrTaxon(parentsOrTaxon(item));
    String field = fieldNumber(item);
    if (field != null) {
      facts = facts.withFieldNumber(field);
    }
    Optional<LocalDate> sown = sown(item);
    if (sown.isPresent()) {
      facts = facts.withSown(sown.get());
    }
    String generation = generation(item);
    if (!generation.isEmpty()) {
      facts = facts.withGeneration(generation);
    }
    facts = facts.withRemarks(item.names());
    return new Tag(
        item.code(), layout.fit(facts), mark.map(TravellingCode::machineReadable).orElse(""));
  }

  private @Nullable String fieldNumber(Item item) {
    return item.fieldNumber() != null
        ? item.fieldNumber()
        : view.item(item.code().whole()).map(Item::fieldNumber).orElse(null);
  }

  private List<String> parentsOrTaxon(Item item) {
    Item origin = item.code().isWhole() ? item : view.item(item.code().whole()).orElse(item);
    List<String> ways = new ArrayList<>();
    if (origin.descent().isEmpty()) {
      ways.add(Describing.of(view, origin));
      String taxon = origin.determination().taxon();
      if (taxon != null) {
        ways.add(Describing.shortName(view, taxon));
      }
      return ways.stream().distinct().toList();
    }
    Descent first = origin.descent().get(0);
    if (first.form() == Descent.Form.SEXUAL && origin.descent().size() == 1) {
      String seed = shortName(first.seed());
      ways.add(
          first.seed().equals(first.pollen())
              ? seed + " selfed"
              : seed + " × " + (first.pollen() == null ? "?" : shortName(first.pollen())));
    }
    ways.add(Describing.of(view, origin));
    return ways.stream().distinct().toList();
  }

  private String shortName(Code parent) {
    Optional<Item> item = view.resolved(parent);
    if (item.isPresent() && !item.get().names().isEmpty()) {
      return item.get().names().get(0);
    }
    String taxon = item.map(found -> found.determination().taxon()).orElse(null);
    return taxon == null ? parent.text() : Describing.shortName(view, taxon);
  }

  private Optional<LocalDate> sown(Item item) {
    if (item.code().isWhole()) {
      return Optional.empty();
    }
    for (long entry : view.entriesOn(Subject.of(item.code()))) {
      Statement statement = view.effective(entry).orElseThrow();
      if (statement instanceof Sown sowing
          && sowing.date() != null
          && sowing.date().day() != 0
          && !sowing.lot().equals(item.code())) {
        return Optional.of(sowing.date().earliest());
      }
    }
    return Optional.empty();
  }

  /** The generation where it is short and not merely "pure". */
  private String generation(Item item) {
    if (item.kind() == Item.Kind.PLANT && item.descent().isEmpty()) {
      return item.determination().generation() == null ? "" : item.determination().generation();
    }
    RegisterPedigree behind = RegisterPedigree.of(view, List.of(item.code()), false);
    String label = GenerationClassifier.of(behind.pedigree()).classOf(item.code().text()).label();
    return label.matches("(F|BC)\\d.*") ? label : "";
  }
}
