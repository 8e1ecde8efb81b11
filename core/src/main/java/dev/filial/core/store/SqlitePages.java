package dev.filial.core.store;

import dev.filial.core.register.Entry;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds rows of the entry table in the bytes of a file, by the record format of SQLite (sections
 * 1.6, 2.1 and 2.3 of https://www.sqlite.org/fileformat2.html) and without what leads to them: no
 * schema, no tree, no cell pointers are needed.
 *
 * <p>At every byte a cell of a table leaf is tried: the length of its payload, the row's number,
 * and a record of five columns of which the first is null (it is the row's number), the others are
 * texts and the last has 64 bytes. Lengths that do not add up, a time that is none, or a page
 * number outside the file end the attempt, so that a match by chance is as good as impossible.
 */
final class SqlitePages {

  private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

  /** What SQLite takes where nothing is asked, and so what a register is made with. */
  private static final int USUAL_PAGE = 4096;

  private static final int COLUMNS = 5;
  private static final int DIGEST_LENGTH = 64;

  private final FileChannel file;
  private final int pageSize;
  private final int usable;
  private final long pages;

  private SqlitePages(FileChannel file) throws IOException {
    this.file = file;
    ByteBuffer header = ByteBuffer.allocate(100);
    fill(header, 0);
    boolean known = header.slice(0, MAGIC.length).equals(ByteBuffer.wrap(MAGIC));
    int stated = header.getShort(16) == 1 ? 65536 : header.getShort(16) & 0xFFFF;
    boolean possible = known && stated >= 512 && Integer.bitCount(stated) == 1;
    pageSize = possible ? stated : USUAL_PAGE;
    int reserved = header.get(20) & 0xFF;
    usable = possible && reserved <= 32 ? pageSize - reserved : pageSize;
    pages = (file.size() + pageSize - 1) / pageSize;
  }

  /** Every row found, in the order of the file; a number may occur more than once. */
  static List<Entry> entries(Path path) throws IOException {
    try (FileChannel file = FileChannel.open(path, StandardOpenOption.READ)) {
      return new SqlitePages(file).search();
    }
  }

  private List<Entry> search() throws IOException {
    List<Entry> found = new ArrayList<>();
    for (long number = 1; number <= pages; number++) {
      byte[] page = page(number);
      for (int at = 0; at < usable; at++) {
        cell(page, at).ifPresent(found::add);
      }
    }
    return found;
  }

  /** A page, with zeros for what is cut off. */
  private byte[] page(long number) throws IOException {
    byte[] page = new byte[pageSize];
    fill(ByteBuffer.wrap(page), (number - 1) * pageSize);
    return page;
  }

  private void fill(ByteBuffer buffer, long from) throws IOException {
    long at = from;
    while (buffer.hasRemaining()) {
      int read = file.read(buffer, at);
      if (read < 0) {
        return;
      }
      at += read;
    }
  }

  /** The entry whose cell begins there, if one does. */
  private Optional<Entry> cell(byte[] page, int at) throws IOException {
    Cursor cursor = new Cursor(page, at, usable);
    long length = cursor.varint();
    long number = cursor.varint();
    if (length < DIGEST_LENGTH || length > Integer.MAX_VALUE - 8 || number < 1) {
      return Optional.empty();
    }
    int payloadAt = cursor.at;
    long headerLength = cursor.varint();
    if (headerLength < COLUMNS + 1 || headerLength > 40 || cursor.varint() != 0) {
      return Optional.empty();
    }
    int[] lengths = new int[COLUMNS - 1];
    long sum = headerLength;
    for (int i = 0; i < lengths.length; i++) {
      long type = cursor.varint();
      if (type < 13 || type % 2 == 0 || type > 2L * length + 13) {
        return Optional.empty();
      }
      lengths[i] = (int) ((type - 13) / 2);
      sum += lengths[i];
    }
    if (sum != length
        || cursor.at - payloadAt != headerLength
        || lengths[lengths.length - 1] != DIGEST_LENGTH) {
      return Optional.empty();
    }
    return payload(page, payloadAt, (int) length)
        .flatMap(payload -> entry(number, payload, (int) headerLength, lengths));
  }

  /** The bytes of a record, those that did not fit into the page gathered from further ones. */
  private Optional<byte[]> payload(byte[] page, int at, int length) throws IOException {
    int most = usable - 35;
    int local = length;
    if (length > most) {
      int least = (usable - 12) * 32 / 255 - 23;
      int fitting = least + (length - least) % (usable - 4);
      local = fitting <= most ? fitting : least;
    }
    int end = at + local;
    if (end > usable || (local < length && end + 4 > usable)) {
      return Optional.empty();
    }
    ByteArrayOutputStream payload = new ByteArrayOutputStream(Math.min(length, 1 << 16));
    payload.write(page, at, local);
    long next = local < length ? ByteBuffer.wrap(page).getInt(end) & 0xFFFF_FFFFL : 0;
    while (payload.size() < length) {
      if (next < 2 || next > pages) {
        return Optional.empty();
      }
      byte[] further = page(next);
      payload.write(further, 4, Math.min(usable - 4, length - payload.size()));
      next = ByteBuffer.wrap(further).getInt(0) & 0xFFFF_FFFFL;
    }
    return Optional.of(payload.toByteArray());
  }

  private static Optional<Entry> entry(long number, byte[] payload, int at, int[] lengths) {
    String[] texts = new String[lengths.length];
    int from = at;
    for (int i = 0; i < texts.length; i++) {
      texts[i] = new String(payload, from, lengths[i], StandardCharsets.UTF_8);
      from += lengths[i];
    }
    try {
      return Optional.of(new Entry(number, Instant.parse(texts[0]), texts[1], texts[2], texts[3]));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** Reads numbers of variable length, seven bits a byte, the highest first. */
  private static final class Cursor {
    private final byte[] page;
    private final int end;
    private int at;

    Cursor(byte[] page, int at, int end) {
      this.page = page;
      this.at = at;
      this.end = end;
    }

    /** The next number; -1 at the end of the page. */
    long varint() {
      long value = 0;
      for (int i = 0; i < 9; i++) {
        if (at >= end) {
          return -1;
        }
        byte next = page[at++];
        if (i == 8) {
          return value << 8 | (next & 0xFF);
        }
        value = value << 7 | (next & 0x7F);
        if (next >= 0) {
          return value;
        }
      }
      return value;
    }
  }
}
