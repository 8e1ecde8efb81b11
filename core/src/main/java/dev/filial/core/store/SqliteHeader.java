package dev.filial.core.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** The first hundred bytes of a SQLite file, https://www.sqlite.org/fileformat.html. */
final class SqliteHeader {

  private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
  private static final int APPLICATION_ID = 68;

  private SqliteHeader() {}

  static boolean isRegister(byte[] header) {
    return header.length == 100
        && Arrays.equals(header, 0, MAGIC.length, MAGIC, 0, MAGIC.length)
        && ByteBuffer.wrap(header).getInt(APPLICATION_ID) == SqliteSchema.APPLICATION_ID;
  }
}
