package dev.filial.cli.page;

import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterView;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What every page of one thing has beside what it tells of it: whose register it is of, and when,
 * where other pages lie, and photographs.
 *
 * @param grower whose register it is
 * @param entries how many entries the register had
 * @param links where other pages lie
 * @param photos the photographs of it; null if the page is to have none
 */
public record PageFrame(
    String grower, long entries, PageLinks links, @Nullable List<PagePhoto> photos) {

  /** Of a page written of this register, without photographs. */
  static PageFrame of(RegisterView view, PageLinks links) {
    return new PageFrame(
        view.opening().map(RegisterOpened::grower).orElse("an unnamed grower"),
        view.size(),
        links,
        null);
  }

  /** The same with these photographs; null for none. */
  PageFrame withPhotos(@Nullable List<PagePhoto> shown) {
    return new PageFrame(grower, entries, links, shown);
  }
}
