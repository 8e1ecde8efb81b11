package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.page.PagePhoto;
import dev.filial.cli.page.SmallPicture;
import dev.filial.core.answer.PicturesQuestion;
import dev.filial.core.answer.PicturesQuestion.Picture;
import dev.filial.core.answer.PicturesQuestion.State;
import dev.filial.core.name.Code;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;

/** The photographs of a thing for its page, where they are asked for. */
final class PhotosOnPage {

  /** How a page has photographs. */
  enum How {
    /** In the page itself, made small. */
    SMALL,
    /** Where they lie: the page leads there. */
    LINKED
  }

  private final Supplier<Optional<How>> how;
  private final OpenRegister register;

  /** Declares the option. */
  PhotosOnPage(Words words, OpenRegister register) {
    this.register = register;
    how =
        words.option(
            "--photos",
            "HOW",
            "Have its photographs too: small puts them into the page itself, made small and without"
                + " what the camera noted beside them; linked leads to their files.",
            Reading.oneOf(How.class));
  }

  /**
   * Finds those of a page, each compared with its digest before it is shown; of several things in
   * order, each photograph once.
   *
   * @param page where the page will lie
   */
  MadePage.Photos on(Path page, Bench bench) {
    How asked = how.get().orElse(null);
    if (asked == null) {
      return (view, codes) -> null;
    }
    Path folder = Objects.requireNonNull(register.existingFile(bench).toAbsolutePath().getParent());
    return (view, codes) -> {
      PicturesQuestion question = PicturesQuestion.of(view, folder);
      Map<String, PagePhoto> photos = new LinkedHashMap<>();
      for (Code code : codes) {
        for (Picture picture : question.of(code)) {
          if (!photos.containsKey(picture.path())) {
            Path file = question.file(picture).orElse(null);
            photos.put(picture.path(), photo(picture, file, asked, page));
          }
        }
      }
      return List.copyOf(photos.values());
    };
  }

  private static PagePhoto photo(Picture picture, @Nullable Path file, How how, Path page) {
    SmallPicture small = null;
    String link = null;
    String trouble = trouble(picture.state());
    if (trouble == null && file != null) {
      if (how == How.LINKED) {
        link = link(page, file);
      } else {
        small = small(file);
        trouble = small == null ? "it is of a kind or a size that cannot be made small here" : null;
      }
    }
    String of = picture.codes().stream().map(Code::text).collect(Collectors.joining(", "));
    String caption =
        Stream.of(picture.date(), picture.remark())
            .filter(Objects::nonNull)
            .map(Object::toString)
            .collect(Collectors.joining(", "));
    return new PagePhoto(picture.path(), caption, of, link, small, trouble);
  }

  private static @Nullable SmallPicture small(Path file) {
    try {
      return SmallPicture.of(file).orElse(null);
    } catch (IOException e) {
      return null; // gone or shut since its digest was taken
    }
  }

  private static @Nullable String trouble(State state) {
    return switch (state) {
      case THERE -> null;
      case CHANGED -> "the file there is another than the one that was attached";
      case MISSING -> "it is not there";
      case UNREADABLE -> "it cannot be read";
      case OUTSIDE -> "its name leads out of the register's folder, and is not followed";
    };
  }

  /** From a page to a file, as a page writes it: by way of the folders they have in common. */
  static String link(Path page, Path file) {
    Path target = file.toAbsolutePath().normalize();
    Path folder = Objects.requireNonNull(page.toAbsolutePath().normalize().getParent());
    if (!Objects.equals(folder.getRoot(), target.getRoot())) {
      return target.toUri().toASCIIString(); // on another drive
    }
    // A dot first, so that a colon in a name is not taken for the end of a protocol's.
    return StreamSupport.stream(folder.relativize(target).spliterator(), false)
        .map(PhotosOnPage::encoded)
        .collect(Collectors.joining("/", "./", ""));
  }

  private static String encoded(Path name) {
    try {
      return new URI(null, null, "/" + name, null).toASCIIString().substring(1);
    } catch (URISyntaxException e) {
      throw new IllegalStateException("a path that begins with a slash is one", e);
    }
  }
}
