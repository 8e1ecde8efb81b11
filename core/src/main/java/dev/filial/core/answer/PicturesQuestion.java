package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Observed;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Photograph;
import dev.filial.core.register.Photographed;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which pictures the register speaks of, and whether each still lies where it was and is as it was.
 *
 * <p>Only the files that entries name are read, each once from end to end. A name with no folder
 * before it that an absolute path would have is taken from the register's folder, and never leads
 * out of it.
 */
public final class PicturesQuestion {

  /** How a picture was found. */
  public enum State {
    /** It is there, byte for byte. */
    THERE,
    /** There is a file of that name with another content. */
    CHANGED,
    /** There is no file of that name. */
    MISSING,
    /** There is something of that name that cannot be read, or is no file. */
    UNREADABLE,
    /** Its name leads out of the register's folder by .., and is not followed. */
    OUTSIDE
  }

  /**
   * A picture.
   *
   * @param entry the entry that speaks of it
   * @param codes what is on it
   * @param date the day, or null when not known
   * @param path where it lies, as the entry says
   * @param sha256 its digest, as the entry says
   * @param state how it was found
   * @param remark what else the entry says, or null
   */
  public record Picture(
      long entry,
      List<Code> codes,
      @Nullable PartialDate date,
      String path,
      String sha256,
      State state,
      @Nullable String remark) {}

  private final RegisterView view;
  private final Path folder;

  private PicturesQuestion(RegisterView view, Path folder) {
    this.view = view;
    this.folder = folder.toAbsolutePath().normalize();
  }

  /**
   * Asks {@code view}.
   *
   * @param folder the folder in which the register lies
   */
  public static PicturesQuestion of(RegisterView view, Path folder) {
    return new PicturesQuestion(view, folder);
  }

  /** All pictures, in order of entry. Cost: all observations, and all pictures. */
  public List<Picture> all() {
    List<Picture> found = new ArrayList<>();
    view.entriesOf(Set.of(Photographed.class, Observed.class)).forEach(entry -> add(entry, found));
    return List.copyOf(found);
  }

  /** The pictures of one thing, in order of entry. */
  public List<Picture> of(Code code) {
    List<Picture> found = new ArrayList<>();
    view.entriesOn(Subject.of(code)).forEach(entry -> add(entry, found));
    return List.copyOf(found);
  }

  /**
   * Where the file of a picture lies.
   *
   * @return it; empty if its name leads out of the register's folder by .., or is no file's name on
   *     this system
   */
  public Optional<Path> file(Picture picture) {
    return named(picture.path())
        .filter(this::isFollowed)
        .map(name -> folder.resolve(name).normalize());
  }

  private static Optional<Path> named(String path) {
    try {
      return Optional.of(Path.of(path));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private boolean isFollowed(Path named) {
    return named.isAbsolute() || folder.resolve(named).normalize().startsWith(folder);
  }

  private void add(long entry, List<Picture> found) {
    Statement said = view.effective(entry).orElse(null);
    if (said instanceof Photographed picture) {
      found.add(
          picture(entry, picture.codes(), said.date(), picture.photograph(), picture.remark()));
    } else if (said instanceof Observed seen && seen.photograph() != null) {
      found.add(
          picture(
              entry,
              List.of(seen.code()),
              said.date(),
              seen.photograph(),
              seen.trait() + " " + seen.value()));
    }
  }

  private Picture picture(
      long entry,
      List<Code> codes,
      @Nullable PartialDate date,
      Photograph photograph,
      @Nullable String remark) {
    return new Picture(
        entry, codes, date, photograph.path(), photograph.sha256(), state(photograph), remark);
  }

  private State state(Photograph photograph) {
    Path named = named(photograph.path()).orElse(null);
    if (named == null) {
      return State.MISSING; // no file on this system can have that name
    }
    if (!isFollowed(named)) {
      return State.OUTSIDE;
    }
    Path file = folder.resolve(named).normalize();
    if (!Files.exists(file)) {
      return State.MISSING;
    }
    if (!Files.isRegularFile(file)) {
      return State.UNREADABLE; // a folder, or a device that may never end
    }
    try {
      return Photograph.of(file, photograph.path()).sha256().equals(photograph.sha256())
          ? State.THERE
          : State.CHANGED;
    } catch (AccessDeniedException e) {
      return State.UNREADABLE;
    } catch (IOException e) {
      return Files.exists(file) ? State.UNREADABLE : State.MISSING;
    }
  }
}
