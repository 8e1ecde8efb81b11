package dev.filial.core.register;

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
}
