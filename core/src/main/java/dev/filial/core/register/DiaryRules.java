package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The rules of what is kept from day to day: flowers, pollen, the seed tin, care and places. */
final class DiaryRules {

  private final RegisterView book;
  private final List<String> warnings;
  private final StockRules stock;

  DiaryRules(RegisterView book, List<String> warnings, StockRules stock) {
    this.book = book;
    this.warnings = warnings;
    this.stock = stock;
  }

  /**
   * Checks the statement if it is one of these.
   *
   * @return whether it is
   * @throws RegisterRefusal if it cannot stand
   */
  boolean check(long number, Statement statement) {
    if (statement instanceof Flowered flowered) {
      flowered.codes().forEach(code -> References.parent(book, code));
      flowered.codes().forEach(code -> requireThere(flowered.date(), code));
      flowered.codes().forEach(code -> stock.warnIfGone(code, flowered.date(), "it flowered"));
    } else if (statement instanceof PollenKept pollen) {
      checkPollen(number, pollen);
    } else if (statement instanceof SeedKept kept) {
      for (Code lot : kept.lots()) {
        References.thing(book, lot);
        stock.requireNotBefore(kept.date(), lot, "the seed was harvested or came");
      }
    } else if (statement instanceof Promised promised) {
      promised.codes().forEach(code -> stock.checkFate(code, promised.date()));
      promised.codes().forEach(code -> warnIfTooMuchPromised(code, promised.count()));
    } else if (statement instanceof Treated treated) {
      treated.codes().forEach(code -> requireStanding(treated.date(), code, "treat"));
    } else if (statement instanceof Tended tended) {
      tended.codes().forEach(code -> checkCare(tended, code));
    } else if (statement instanceof Photographed photographed) {
      photographed.codes().forEach(code -> References.thing(book, code));
      photographed.codes().forEach(code -> warnIfThereAlready(number, code, photographed));
    } else if (statement instanceof PlaceDeclared place) {
      Places.of(book).requireNoCircle(place.place());
      if (place.date() != null) {
        Places.of(book).on(place.date().latest()).requireNoCircle(place.place());
      }
    } else {
      return statement instanceof IntervalStated;
    }
    return true;
  }

  private void checkCare(Tended tended, Code code) {
    Item item = requireStanding(tended.date(), code, "tend");
    boolean bag = tended.care() == Tended.Care.LOOKED_INTO || tended.care() == Tended.Care.OPENED;
    if (bag && item.kind().isPlant()) {
      throw new RegisterRefusal(
          code.text()
              + " is a "
              + item.kind().word()
              + "; what is looked into or opened is a sowing or a pot");
    }
  }

  /** Seed, a sowing, a pot or a plant; of a family its seed or its pots are to be named. */
  private Item requireStanding(@Nullable PartialDate date, Code code, String verb) {
    Item item = References.thing(book, code);
    if (item.kind().isFamily()) {
      throw new RegisterRefusal(
          code.text()
              + " is a "
              + item.kind().word()
              + "; "
              + verb
              + " its seed ("
              + code.lot(1).text()
              + "), its pots or its seedlings");
    }
    requireThere(date, code);
    return item;
  }

  /** A plant may have been seen where it stood before it came. */
  private void requireThere(@Nullable PartialDate date, Code code) {
    if (References.thing(book, code).kind() != Item.Kind.PLANT) {
      stock.requireNotBefore(date, code, "it came about");
    }
  }

  private void checkPollen(long number, PollenKept pollen) {
    References.parent(book, pollen.plant());
    requireThere(pollen.date(), pollen.plant());
    PollenStore.of(book, pollen.plant()).requirePlaced(number);
  }

  private void warnIfTooMuchPromised(Code code, @Nullable Count count) {
    Count left = References.thing(book, code).count();
    Count open = Promises.open(book, code);
    if (count != null
        && left != null
        && left.isExact()
        && open.isExact()
        && open.size().orElseThrow() > left.size().orElseThrow()) {
      warnings.add(open + " of " + code.text() + " are promised in all, and " + left + " are left");
    }
  }

  private void warnIfThereAlready(long number, Code code, Photographed photographed) {
    for (long entry : book.entriesOn(Subject.of(code))) {
      if (entry < number
          && book.effective(entry).orElse(null) instanceof Photographed before
          && before.photograph().equals(photographed.photograph())) {
        warnings.add(
            code.text()
                + " has that picture already, as "
                + before.photograph().path()
                + " of entry "
                + entry);
        return;
      }
    }
  }
}
