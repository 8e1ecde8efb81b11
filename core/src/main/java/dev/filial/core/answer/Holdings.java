package dev.filial.core.answer;

import dev.filial.core.register.Count;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What stands under a cross or a packet of seed: its seed lots, and the pots and sowings in which
 * its seedlings stand. Growers leave the suffix unsaid as long as there is only one.
 */
public final class Holdings {

  private static final int NAMED = 8;

  private final RegisterView view;

  private Holdings(RegisterView view) {
    this.view = view;
  }

  /** Reads what {@code view} holds. */
  public static Holdings in(RegisterView view) {
    return new Holdings(view);
  }

  /**
   * The seed lots that may be meant: {@code thing} itself if it is one, else those of the cross or
   * packet in which seed is left, in order of their number.
   */
  public List<Item> lots(Item thing) {
    return thing.kind() == Item.Kind.LOT
        ? List.of(thing)
        : under(thing).stream()
            .filter(item -> item.kind() == Item.Kind.LOT && isHere(item))
            .toList();
  }

  /**
   * The pots and sowings that may be meant: {@code thing} itself if it is one, else those of the
   * cross or packet in which something stands. A sowing that was divided into pots is left out, for
   * its seedlings stand in these.
   */
  public List<Item> pots(Item thing) {
    return isPot(thing)
        ? List.of(thing)
        : under(thing).stream()
            .filter(item -> isPot(item) && isHere(item) && !isDivided(view, item))
            .toList();
  }

  /**
   * The cross meant: {@code thing} itself.
   *
   * @throws RegisterRefusal if it is something else; of a plant the message names the crosses that
   *     it bears seed of
   */
  public Item cross(Item thing) {
    if (thing.kind() == Item.Kind.CROSS) {
      return thing;
    }
    List<Item> borne =
        thing.kind().isPlant() || thing.kind() == Item.Kind.GROUP
            ? Offspring.of(view, List.of(thing.code())).stream()
                .flatMap(code -> view.item(code).stream())
                .filter(item -> item.kind() == Item.Kind.CROSS && isBorneBy(thing, item))
                .toList()
            : List.of();
    String named =
        borne.stream()
            .limit(NAMED)
            .map(item -> item.code().text())
            .collect(Collectors.joining(", "));
    throw new RegisterRefusal(
        thing.code().text()
            + " is a "
            + thing.kind().word()
            + ", not a cross; name the cross"
            + (borne.isEmpty() ? "" : ": it bears seed of " + named));
  }

  private static boolean isBorneBy(Item plant, Item cross) {
    return !cross.descent().isEmpty() && cross.descent().get(0).seed().equals(plant.code());
  }

  /**
   * The one seed lot meant.
   *
   * @throws RegisterRefusal if there is none or several, naming them
   */
  public Item lot(Item thing) {
    requireFamilyOr(thing, Item.Kind.LOT);
    List<Item> lots = lots(thing);
    if (lots.isEmpty()) {
      List<Item> gone = under(thing).stream().filter(item -> item.kind() == Item.Kind.LOT).toList();
      throw new RegisterRefusal(
          gone.isEmpty()
              ? thing.code().text() + " has no seed yet; record its harvest first"
              : "no seed of "
                  + thing.code().text()
                  + " is left ("
                  + list(gone)
                  + "); name the lot if that is not so");
    }
    return only(thing, lots, "seed lots");
  }

  /**
   * The one pot or sowing meant.
   *
   * @throws RegisterRefusal if there is none or several, naming them
   */
  public Item pot(Item thing) {
    requireFamilyOr(thing, Item.Kind.GROUP);
    List<Item> pots = pots(thing);
    if (pots.isEmpty()) {
      throw new RegisterRefusal(
          "nothing of " + thing.code().text() + " stands in a pot; record its sowing first");
    }
    return only(thing, pots, "pots");
  }

  /**
   * What seedlings are taken from: the one pot or sowing meant, or the cross or packet itself where
   * no sowing of it was ever recorded.
   *
   * @throws RegisterRefusal if there are several, naming them, or all are empty
   */
  public Item stock(Item thing) {
    // The whole code is where seedlings come from that were raised before anybody kept a book.
    boolean neverSown = thing.kind().isFamily() && under(thing).stream().noneMatch(Holdings::isPot);
    return neverSown ? thing : pot(thing);
  }

  /** Names things with how many there are: {@code 26-013E H1 (80), 26-013E H2 (~40)}. */
  public static String list(List<Item> items) {
    String named =
        items.stream()
            .limit(NAMED)
            .map(
                item -> item.code().text() + " (" + (isHere(item) ? count(item) : gone(item)) + ")")
            .collect(Collectors.joining(", "));
    return items.size() > NAMED ? named + " and " + (items.size() - NAMED) + " more" : named;
  }

  private static Item only(Item thing, List<Item> items, String what) {
    if (items.size() > 1) {
      throw new RegisterRefusal(
          thing.code().text()
              + " has "
              + items.size()
              + " "
              + what
              + ": "
              + list(items)
              + "; name one of them");
    }
    return items.get(0);
  }

  private static void requireFamilyOr(Item thing, Item.Kind kind) {
    boolean fits = kind == Item.Kind.LOT ? thing.kind() == kind : isPot(thing);
    if (!fits && !thing.kind().isFamily()) {
      throw new RegisterRefusal(
          thing.code().text()
              + " is a "
              + thing.kind().word()
              + ", not a "
              + (kind == Item.Kind.LOT ? "seed lot" : "pot or a sowing")
              + "; name one, or the cross it belongs to");
    }
  }

  private List<Item> under(Item thing) {
    return view.codesUnder(thing.code().whole()).stream()
        .sorted()
        .flatMap(code -> view.item(code).stream())
        .filter(item -> !item.code().isWhole())
        .toList();
  }

  /** Whether it is a sowing whose seedlings stand in pots of their own. */
  static boolean isDivided(RegisterView view, Item item) {
    return item.kind() == Item.Kind.SOWING
        && view.effective(item.entry()).orElseThrow() instanceof Sown sown
        && !sown.groups().isEmpty();
  }

  private static boolean isPot(Item item) {
    return item.kind() == Item.Kind.GROUP || item.kind() == Item.Kind.SOWING;
  }

  /**
   * Whether it stands or is kept here. A pot of which nothing came up yet does; one that was
   * emptied is used up, or dead.
   */
  static boolean isHere(Item item) {
    boolean emptyPacket = item.kind() == Item.Kind.LOT && Count.of(0).equals(item.count());
    return item.fate().isHere() && !item.neverHeld() && !emptyPacket;
  }

  private static String count(Item item) {
    return item.count() == null ? "not counted" : item.count().toString();
  }

  private static String gone(Item item) {
    return switch (item.fate()) {
      case USED_UP -> "used up";
      case GIVEN -> "given away";
      case DISCARDED -> "discarded";
      case DEAD -> "dead";
      case ALIVE, KEPT -> "empty";
    };
  }
}
