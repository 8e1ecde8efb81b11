package dev.filial.core.register;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
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

  private static final Instant YEAR_1000 = Instant.parse("1000-01-01T00:00:00Z");
  private static final Instant YEAR_10000 = Instant.parse("+10000-01-01T00:00:00Z");

  /** Nothing is ever fed to this one. */
  private static final MessageDigest UNUSED_SHA_256 = sha256();

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

  /**
   * Whether these texts are an entry as it was sealed. It spares reading the time, which takes as
   * long as all the rest; what was written otherwise than it is sealed is not recognised.
   *
   * @param time as {@link #timeText} has it
   * @param previous the digest of the entry before it
   */
  public static boolean isSealed(
      long number, String time, String by, String body, String digest, String previous) {
    return digest.equals(digest(number, time, by, body, previous));
  }

  /** When it was written, as the digest and every copy of the entry have it: ISO 8601. */
  public String timeText() {
    return text(time);
  }

  // By hand where it can be: a long table has a million of them, and a formatter takes its time.
  private static String text(Instant time) {
    if (time.getNano() != 0 || time.isBefore(YEAR_1000) || !time.isBefore(YEAR_10000)) {
      return time.toString();
    }
    LocalDateTime utc = LocalDateTime.ofEpochSecond(time.getEpochSecond(), 0, ZoneOffset.UTC);
    StringBuilder text = new StringBuilder(20).append(utc.getYear());
    twoDigits(text.append('-'), utc.getMonthValue());
    twoDigits(text.append('-'), utc.getDayOfMonth());
    twoDigits(text.append('T'), utc.getHour());
    twoDigits(text.append(':'), utc.getMinute());
    twoDigits(text.append(':'), utc.getSecond());
    return text.append('Z').toString();
  }

  private static void twoDigits(StringBuilder text, int number) {
    text.append((char) ('0' + number / 10)).append((char) ('0' + number % 10));
  }

  /** What the entry says. */
  public Statement statement() {
    return EntryJson.read(body);
  }

  private static String digest(long number, Instant time, String by, String body, String previous) {
    return digest(number, text(time), by, body, previous);
  }

  private static String digest(long number, String time, String by, String body, String previous) {
    ByteArrayOutputStream all = new ByteArrayOutputStream(body.length() + 256);
    // Each part is led by its length, so that no two contents run together to the same bytes.
    for (String part : new String[] {previous, Long.toString(number), time, by, body}) {
      byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
      all.writeBytes(Integer.toString(bytes.length).getBytes(StandardCharsets.US_ASCII));
      all.write(':');
      all.writeBytes(bytes);
    }
    try {
      // Copied, since finding one anew takes as long as using it.
      MessageDigest sha256 = (MessageDigest) UNUSED_SHA_256.clone();
      return HexFormat.of().formatHex(sha256.digest(all.toByteArray()));
    } catch (CloneNotSupportedException e) {
      throw new IllegalStateException("the SHA-256 of this Java cannot be copied", e);
    }
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
