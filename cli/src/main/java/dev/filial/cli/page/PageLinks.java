package dev.filial.cli.page;

import org.jspecify.annotations.Nullable;

/**
 * Where other pages lie, for pages that are kept side by side in one folder. A page that is written
 * alone links nowhere, since nobody knows what lies beside it.
 */
public interface PageLinks {

  /** Of a page that is written alone. */
  PageLinks NONE = code -> null;

  /**
   * The link to a thing's page, relative to the page it stands on; null if there is none.
   *
   * @param code the thing's code, as it is written
   */
  @Nullable String to(String code);

  /** The link to the page of the whole register; null if there is none. */
  default @Nullable String index() {
    return null;
  }
}
