package dev.filial.cli.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.cli.screen.Terminal;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class WordsTest {

  private final Bench bench =
      new Bench(
          Terminal.of(
              new PrintWriter(Writer.nullWriter()),
              new PrintWriter(Writer.nullWriter()),
              new BufferedReader(Reader.nullReader()),
              "",
              null,
              Map.of()),
          Map.of(),
          Clock.fixed(Instant.parse("2026-06-15T10:00:00Z"), ZoneOffset.UTC),
          Path.of("/bench"));

  private final Words words = new Words();
  private final Supplier<String> seed = words.argument("SEED", "Seed parent.");
  private final Supplier<Optional<String>> pollen =
      words.optionalArgument("POLLEN", "Pollen parent.");
  private final Supplier<List<String>> remarks =
      words.arguments("REMARK", "Remarks.", false, Reading.TEXT);
  private final Supplier<Optional<LocalDate>> day =
      words.option("--on", "DAY", "When.", Reading.DAY);
  private final Supplier<List<Integer>> flowers =
      words.repeatedOption("--flowers", "N", "Flowers.", Reading.WHOLE_NUMBER);
  private final BooleanSupplier bagged = words.flag("--bagged", "Bagged.");

  private void read(String... typed) {
    words.read(List.of(typed), bench);
  }

  @Test
  void optionsStandAnywhereAmongTheArguments() {
    read("--bagged", "26-001A", "--on=2026-03-04", "26-002C", "--flowers", "3", "--flowers=4", "x");

    assertThat(seed.get()).isEqualTo("26-001A");
    assertThat(pollen.get()).contains("26-002C");
    assertThat(remarks.get()).containsExactly("x");
    assertThat(day.get()).contains(LocalDate.of(2026, 3, 4));
    assertThat(flowers.get()).containsExactly(3, 4);
    assertThat(bagged.getAsBoolean()).isTrue();
  }

  @Test
  void whatIsNotGivenIsAbsent() {
    read("26-001A");

    assertThat(pollen.get()).isEmpty();
    assertThat(remarks.get()).isEmpty();
    assertThat(day.get()).isEmpty();
    assertThat(bagged.getAsBoolean()).isFalse();
    assertThat(words.json()).isFalse();
  }

  @Test
  void afterTwoHyphensEverythingIsAnArgument() {
    read("26-001A", "--", "--bagged", "--");

    assertThat(pollen.get()).contains("--bagged");
    assertThat(remarks.get()).containsExactly("--");
    assertThat(bagged.getAsBoolean()).isFalse();
  }

  @Test
  void aHyphenBeforeADigitAndAHyphenAloneAreArguments() {
    read("-7", "-");

    assertThat(seed.get()).isEqualTo("-7");
    assertThat(pollen.get()).contains("-");
  }

  @Test
  void aNameThatBeginsWithAnAtSignIsJustAName() {
    read("@Echeveria");

    assertThat(seed.get()).isEqualTo("@Echeveria");
  }

  @Test
  void whatIsMissingIsNamedWithAllElseThatIs() {
    Words cross = new Words();
    cross.argument("SEED", "");
    cross.argument("POLLEN", "");
    cross.requiredOption("--on", "DAY", "", Reading.DAY);

    assertThatThrownBy(() -> cross.read(List.of(), bench))
        .hasMessage("SEED, POLLEN and --on are missing");
    assertThatThrownBy(() -> cross.read(List.of("a", "b"), bench)).hasMessage("--on is missing");
  }

  @Test
  void helpIsGivenThoughSomethingIsMissing() {
    read("--help");

    assertThat(words.help()).isTrue();
  }

  @Test
  void anUnknownOptionIsRefusedWithTheNearest() {
    assertThatThrownBy(() -> read("26-001A", "--baged"))
        .isInstanceOfSatisfying(
            Trouble.class,
            trouble -> {
              assertThat(trouble).hasMessage("there is no option --baged");
              assertThat(trouble.remedy()).isEqualTo("Did you mean --bagged?");
              assertThat(trouble.status()).isEqualTo(Status.USAGE);
            });
  }

  @Test
  void anOptionWithoutItsValueIsRefusedAndDoesNotSwallowTheNextOption() {
    assertThatThrownBy(() -> read("26-001A", "--on", "--bagged"))
        .hasMessage("--on wants a DAY after it");
    assertThatThrownBy(() -> read("26-001A", "--on")).hasMessage("--on wants a DAY after it");
  }

  @Test
  void anOptionGivenTwiceIsRefused() {
    assertThatThrownBy(() -> read("a", "--on=today", "--on=yesterday"))
        .hasMessage("--on is given twice");
  }

  @Test
  void aFlagTakesNoValue() {
    assertThatThrownBy(() -> read("a", "--bagged=yes")).hasMessage("--bagged takes no value");
  }

  @Test
  void anArgumentTooManyIsRefusedWithAWordAboutQuotes() {
    Words one = new Words();
    one.argument("PLANT", "");

    assertThatThrownBy(() -> one.read(List.of("Echeveria", "laui"), bench))
        .isInstanceOfSatisfying(
            Trouble.class,
            trouble -> {
              assertThat(trouble).hasMessage("\"laui\" is one argument too many");
              assertThat(trouble.remedy()).contains("quotes");
            });
  }

  @Test
  void aValueThatCannotBeReadNamesItsOption() {
    assertThatThrownBy(() -> read("a", "--flowers", "some"))
        .hasMessage("--flowers: \"some\" is not a whole number, 0 or more");
  }

  @Test
  void anAccentIsOneLetterHoweverItWasTyped() {
    read("e\u0301le\u0301gant");
    assertThat(seed.get()).isEqualTo("\u00e9l\u00e9gant");
  }

  @Test
  void aLetterThatWasLostOnItsWayIsNotWrittenDown() {
    assertThatThrownBy(() -> read("Gr\uFFFDne"))
        .hasMessageContaining("has a letter in it that could not be read")
        .hasMessageContaining("LC_ALL=C.UTF-8");
  }

  @Test
  void theUsageLineHasArgumentsFirstAndWhatEveryVerbHasLast() {
    assertThat(words.usage("cross"))
        .isEqualTo(
            "filial cross SEED [POLLEN] [REMARK...] [--on DAY] [--flowers N...] [--bagged] [--json]"
                + " [--help]");
  }
}
