package dev.filial.core.register;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;

/**
 * One numbered entry of the book, as it was written and as it stays.
 *
 * @param number 1 for the first, then upwards without a gap
 * @param time when it was written
 * @param by who wrote it
 * @param body what it says, as JSON
 * @param digest SHA-256 over all of this and the digest of the entry before it, as 64 hexadecimal
 *     digits: a byte changed anywhere earlier in the book shows here
 */
public record Entry(long number, Instant time, String by, String body, String digest) {

  /** Stands before the first entry. */
  public static final String NO_DIGEST = "0".repeat(64);

  /**
   * Seals an entry onto the book.
   *
   * @param previous the digest of the entry before it, or {@link #NO_DIGEST}
   */
  public static Entry seal(long number, Instant time, String by, String body, String previous) {
    return new Entry(number, time, by, body, digest(number, time, by, body, previous));
  }

  /** Whether the digest fits the content and the digest of the entry before it. */
  public boolean isIntact(String previous) {
    return digest.equals(digest(number, time, by, body, previous));
  }

  /** What the entry says. */
  public Statement statement() {
    return EntryJson.read(body);
  }

  private static String digest(long number, Instant time, String by, String body, String previous) {
    MessageDigest sha256;
    try {
      sha256 = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
    // Each part is led by its length, so that no two contents run together to the same bytes.
    for (String part : new String[] {previous, Long.toString(number), time.toString(), by, body}) {
      byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
      sha256.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
      sha256.update(bytes);
    }
    return HexFormat.of().formatHex(sha256.digest());
  }
}
