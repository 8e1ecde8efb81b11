package dev.filial.core.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A file that is filled under a passing name, and has its own only when it is whole and on the
 * disk: nobody ever finds half of it under the name that was asked for, and it never takes the
 * place of another file.
 *
 * <p>Closing it takes away what was not published, and so does the end of the program when it is
 * broken off from outside. Only a program that is killed, or a machine that stops, leaves the
 * passing file behind: {@code .filial-} with numbers, in the folder of the one it was to be.
 */
public final class PassingFile implements AutoCloseable {

  private final Path named;
  private final Path folder;
  private final Path making;
  private final Thread broken = new Thread(this::breakOff, "unfinished file");
  private volatile boolean isBrokenOff;

  private PassingFile(Path named, Path folder) {
    this.named = named;
    this.folder = folder;
    this.making =
        folder.resolve(
            ".filial-" + ProcessHandle.current().pid() + "-" + System.nanoTime() + ".new");
  }

  /**
   * One in the folder of {@code file}; nothing is made there yet.
   *
   * @param file the name it is to have
   * @throws NoSuchFileException if there is no such folder
   * @throws IOException if the program is being broken off
   */
  public static PassingFile beside(Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new NoSuchFileException(file.toString());
    }
    PassingFile passing = new PassingFile(file, folder);
    try {
      Runtime.getRuntime().addShutdownHook(passing.broken);
    } catch (IllegalStateException e) {
      throw new IOException("the program is being broken off", e);
    }
    return passing;
  }

  /** Where it lies until it is whole. */
  public Path path() {
    return making;
  }

  /**
   * Makes it, to be written from the beginning.
   *
   * @throws IOException if it cannot be made; the message names the file that was asked for
   */
  public OutputStream stream() throws IOException {
    OutputStream stream;
    try {
      stream = Files.newOutputStream(making, StandardOpenOption.CREATE_NEW);
    } catch (AccessDeniedException e) {
      throw new AccessDeniedException(named.toString());
    } catch (FileSystemException e) {
      throw told(e);
    }
    if (isBrokenOff) {
      // Too late for whoever takes it away.
      discard(making);
    }
    return stream;
  }

  /**
   * Gives it that name, in the folder where it lies, once all of it is on the disk.
   *
   * @throws FileAlreadyExistsException if there is a file of that name by now; another may be tried
   * @throws IOException if it cannot be done; the message names the file
   */
  public void publish(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(making, StandardOpenOption.WRITE)) {
      channel.force(true);
    } catch (FileSystemException e) {
      throw told(e);
    }
    try {
      // A link, since a move may silently replace what somebody else made in the meantime.
      Files.createLink(file, making);
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (FileSystemException | UnsupportedOperationException e) {
      move(file); // a file system without links
    }
    discard(making);
    settle(folder);
  }

  private void move(Path file) throws IOException {
    try {
      Files.move(making, file);
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (FileSystemException e) {
      throw told(e);
    }
  }

  /** By the name that was asked for; nobody knows the passing one. */
  private FileSystemException told(FileSystemException cause) {
    FileSystemException told = new FileSystemException(named.toString(), null, cause.getReason());
    told.addSuppressed(cause);
    return told;
  }

  /** Has the folder written out, so that the name outlives a power cut, where systems allow it. */
  private static void settle(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Windows opens no folders; there the name is written out in its own time.
      return;
    }
  }

  private void breakOff() {
    isBrokenOff = true;
    discard(making);
  }

  /** Takes away what was not published. */
  @Override
  public void close() {
    try {
      boolean unused = Runtime.getRuntime().removeShutdownHook(broken);
    } catch (IllegalStateException e) {
      return; // it is being broken off, and the hook does it
    }
    discard(making);
  }

  private static void discard(Path unfinished) {
    delete(unfinished);
    // SQLite's, of a register that was not finished.
    delete(unfinished.resolveSibling(unfinished.getFileName() + "-journal"));
  }

  private static void delete(Path left) {
    try {
      Files.deleteIfExists(left);
    } catch (IOException e) {
      // What is left over carries a name of its own and is in nobody's way.
      return;
    }
  }
}
