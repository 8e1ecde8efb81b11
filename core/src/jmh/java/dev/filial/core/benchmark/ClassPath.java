package dev.filial.core.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the class path it was started with into a directory, for what is run next. */
public final class ClassPath {

  private ClassPath() {}

  /** Writes into the directory named first. */
  public static void main(String[] args) throws IOException {
    Files.writeString(Path.of(args[0]).resolve("classpath"), System.getProperty("java.class.path"));
  }
}
