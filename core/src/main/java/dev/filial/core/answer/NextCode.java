package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;

/** The next code of each sort that nothing has. */
public final class NextCode {

  private final RegisterView view;

  private NextCode(RegisterView view) {
    this.view = view;
  }

  /** Reads what {@code view} has given out. */
  public static NextCode in(RegisterView view) {
    return new NextCode(view);
  }

  /** For a cross or an acquisition of calendar year {@code year}. */
  public Code ofYear(int year) {
    int two = Math.floorMod(year, 100);
    return Code.of(two, view.lastNumber(two) + 1);
  }

  /** For a numbered seedling of {@code whole}. */
  public Code seedling(Code whole) {
    return whole.whole().seedling(next(whole, Item.Kind.SEEDLING));
  }

  /** For a pot of seedlings of {@code whole}. */
  public Code group(Code whole) {
    return whole.whole().group(next(whole, Item.Kind.GROUP));
  }

  /** For a seed lot of {@code whole}. */
  public Code lot(Code whole) {
    return whole.whole().lot(next(whole, Item.Kind.LOT));
  }

  /** For a sowing of {@code whole}. */
  public Code sowing(Code whole) {
    return whole.whole().sowing(next(whole, Item.Kind.SOWING));
  }

  private int next(Code whole, Item.Kind kind) {
    return Math.toIntExact(view.lastSuffix(whole.whole(), kind) + 1);
  }
}
