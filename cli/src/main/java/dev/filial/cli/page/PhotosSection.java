package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The part of a page that shows photographs, or leads to them. */
final class PhotosSection {

  private PhotosSection() {}

  /**
   * Writes it.
   *
   * @param photos what is there; null if nobody asked for them, which writes nothing
   */
  static void write(PageWriter page, @Nullable List<PagePhoto> photos) {
    if (photos == null) {
      return;
    }
    Markup html = page.html();
    page.section("photographs", "Photographs");
    if (photos.isEmpty()) {
      html.element("p", "None is attached.").line();
      page.endSection();
      return;
    }
    html.open("ul", "class", "photos").line();
    photos.forEach(photo -> photo(page, photo));
    html.close().line();
    page.endSection();
  }

  private static void photo(PageWriter page, PagePhoto photo) {
    Markup html = page.html();
    html.open("li");
    SmallPicture small = photo.small();
    if (small != null) {
      html.empty(
          "img",
          "src",
          small.source(),
          "alt",
          "Photograph of " + photo.of(),
          "width",
          Integer.toString(small.width()),
          "height",
          Integer.toString(small.height()));
    }
    if (photo.link() != null) {
      html.open("a", "href", photo.link()).element("bdi", photo.name()).close();
    } else if (small == null) {
      html.element("bdi", photo.name());
    }
    if (!photo.caption().isEmpty()) {
      html.text(" ").open("span", "class", "said");
      page.words(photo.caption());
      html.close();
    }
    if (photo.trouble() != null) {
      html.text(" ").element("span", "(" + photo.trouble() + ")");
    }
    html.close().line();
  }
}
