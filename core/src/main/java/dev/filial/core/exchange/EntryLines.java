package dev.filial.core.exchange;

import dev.filial.core.register.Entry;
import dev.filial.core.register.JsonWords;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A book as text: one entry a line, each a JSON object of {@code number}, {@code time}, {@code by},
 * {@code body} and {@code digest}. The body is JSON too, and stands as a text, character for
 * character as it was written, so that the digests can be checked.
 */
public final class EntryLines {

  private static final JsonMapper MAPPER = JsonMapper.shared();

  private EntryLines() {}

  /** Writes entries, one a line. */
  public static void write(Iterable<Entry> entries, Writer out) throws IOException {
    for (Entry entry : entries) {
      ObjectNode line = MAPPER.createObjectNode();
      line.put("number", entry.number());
      line.put("time", entry.time().toString());
      line.put("by", entry.by());
      line.put("body", entry.body());
      line.put("digest", entry.digest());
      out.write(MAPPER.writeValueAsString(line));
      out.write('\n');
    }
  }

  /**
   * Reads entries back, as they stand: digests are not checked. Empty lines are passed over.
   *
   * @throws IllegalArgumentException if a line holds no entry, or the numbers do not go upwards;
   *     the message names the line
   */
  public static List<Entry> read(BufferedReader in) throws IOException {
    List<Entry> entries = new ArrayList<>();
    long last = 0;
    int number = 0;
    for (Iterator<String> lines = in.lines().iterator(); lines.hasNext(); ) {
      String line = lines.next();
      number++;
      if (line.isBlank()) {
        continue;
      }
      Entry entry;
      try {
        entry = entry(MAPPER.readTree(line));
      } catch (JacksonException e) {
        throw new IllegalArgumentException(
            "line " + number + " is no JSON: " + JsonWords.of(e.getOriginalMessage()), e);
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException("line " + number + ": " + e.getMessage(), e);
      }
      if (entry.number() <= last) {
        throw new IllegalArgumentException(
            "line "
                + number
                + ": entry "
                + entry.number()
                + " stands after entry "
                + last
                + "; put the lines in order of their numbers, each number once");
      }
      last = entry.number();
      entries.add(entry);
    }
    return entries;
  }

  private static Entry entry(JsonNode line) {
    JsonNode number = line.path("number");
    if (!number.isIntegralNumber() || number.longValue() < 1) {
      throw new IllegalArgumentException("its \"number\" is no number of an entry");
    }
    return new Entry(
        number.longValue(),
        time(text(line, "time")),
        text(line, "by"),
        text(line, "body"),
        text(line, "digest"));
  }

  private static Instant time(String text) {
    try {
      return Instant.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(
          "its \"time\" is \"" + text + "\", which is no time as 2026-03-04T10:00:00Z", e);
    }
  }

  private static String text(JsonNode line, String name) {
    JsonNode value = line.path(name);
    if (!value.isString()) {
      throw new IllegalArgumentException("it has no text \"" + name + "\", as an entry has");
    }
    return value.stringValue();
  }
}
