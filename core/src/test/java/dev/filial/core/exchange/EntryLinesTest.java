package dev.filial.core.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.register.Entry;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.time.Instant;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EntryLinesTest {

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");

  private static String written(List<Entry> entries) throws IOException {
    StringWriter out = new StringWriter();
    EntryLines.write(entries, out);
    return out.toString();
  }

  private static List<Entry> read(String text) throws IOException {
    return EntryLines.read(new BufferedReader(new StringReader(text)));
  }

  @Test
  void anEntryIsOneLineOfItsFiveParts() throws Exception {
    Entry entry = Entry.seal(1, NOON, "Klara", "{\"kind\":\"note\"}", Entry.NO_DIGEST);
    assertThat(written(List.of(entry)))
        .isEqualTo(
            "{\"number\":1,\"time\":\"2026-03-04T12:00:00Z\",\"by\":\"Klara\","
                + "\"body\":\"{\\\"kind\\\":\\\"note\\\"}\",\"digest\":\""
                + entry.digest()
                + "\"}\n");
  }

  @Property
  void whateverAnEntrySaysComesBackSealed(
      @ForAll @LongRange(min = 1) long number, @ForAll String by, @ForAll String body)
      throws IOException {
    Entry entry = Entry.seal(number, NOON, by, body, Entry.NO_DIGEST);
    String text = written(List.of(entry));
    assertThat(text.lines()).hasSize(1);
    assertThat(read(text)).containsExactly(entry);
    assertThat(read("\n" + text + "\n").get(0).isIntact(Entry.NO_DIGEST)).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "{\"number\": | line 2 is no JSON",
        "[1, 2] | line 2: its \"number\" is no number of an entry",
        "{\"number\":-3} | line 2: its \"number\" is no number of an entry",
        "{\"number\":2} | line 2: it has no text \"time\"",
        "{\"number\":2,\"time\":\"noon\"} | line 2: its \"time\" is \"noon\", which is no time",
        "{\"number\":1,\"time\":\"2026-03-04T12:00:00Z\",\"by\":\"K\",\"body\":\"\",\"digest\":\"\"}"
            + " | line 2: entry 1 stands after entry 1",
      })
  void aLineThatIsNoEntryIsNamed(String line, String message) throws Exception {
    String good = written(List.of(Entry.seal(1, NOON, "Klara", "{}", Entry.NO_DIGEST)));
    assertThatThrownBy(() -> read(good + line))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(message);
  }

  @Test
  void whatIsBrokenIsSaidWithoutTheReadersOwnInsides() {
    for (String line : List.of("{\"number\":", "[".repeat(2000), "{\"a\":1,}", "{'a'")) {
      assertThatThrownBy(() -> read(line))
          .hasMessageStartingWith("line 1 is no JSON: ")
          .hasMessageNotContainingAny("Source", "Stream", "`");
    }
  }
}
