package dev.filial.core.pedigree;

/**
 * What the two numbers kept for a plant mean. Kept as bytes: there are as many as plants.
 *
 * <p>{@code FOUNDER}: first is its row among the founders. {@code RAMET}: first is the plant it was
 * taken from, second is 1 if doubled. {@code CASES}: first is its row in the table of cases. From
 * {@code SIMPLE} on: first and second are seed and pollen parent of one certain cross to which both
 * gave as many sets; the route is what is above {@code SIMPLE}.
 */
final class Kind {
  static final byte FOUNDER = 0;
  static final byte RAMET = 1;
  static final byte CASES = 2;
  static final byte SIMPLE = 3;

  private static final Route[] ROUTES = Route.values();

  private Kind() {}

  // The ordinal lives only as long as the arrays do; it is never written anywhere.
  @SuppressWarnings("EnumOrdinal")
  static byte simple(Route route) {
    return (byte) (SIMPLE + route.ordinal());
  }

  static Route route(byte kind) {
    return ROUTES[kind - SIMPLE];
  }
}
