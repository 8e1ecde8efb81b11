package dev.filial.core.register;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Objects;

/**
 * A picture kept outside the register.
 *
 * @param path where it lies
 * @param sha256 the SHA-256 of its bytes, 64 hexadecimal digits
 */
public record Photograph(String path, String sha256) {
  /**
   * Checks the digest's form.
   *
   * @throws IllegalArgumentException if it is not 64 hexadecimal digits
   */
  public Photograph {
    Require.text("path", path);
    Objects.requireNonNull(sha256, "sha256");
    if (!sha256.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException(
          "\"" + sha256 + "\" is not a SHA-256 digest: 64 of the digits 0-9 and a-f");
    }
  }

  /**
   * The picture in {@code file}, which is read through once for its digest.
   *
   * @param path where the register is to say that it lies
   * @throws IOException if it cannot be read
   */
  public static Photograph of(Path file, String path) throws IOException {
    MessageDigest digest;
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
    try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
      in.transferTo(OutputStream.nullOutputStream());
    }
    return new Photograph(path, HexFormat.of().formatHex(digest.digest()));
  }
}
