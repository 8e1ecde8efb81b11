package dev.filial.cli.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.register.PartialDate;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DateWordsTest {

  private final DateWords dates = new DateWords(LocalDate.of(2026, 6, 15));

  @ParameterizedTest
  @CsvSource({
    "today, 2026-06-15",
    "Yesterday, 2026-06-14",
    "4 mar, 2026-03-04",
    "4 March, 2026-03-04",
    "4mar, 2026-03-04",
    "4-mar, 2026-03-04",
    "4. mar, 2026-03-04",
    "mar 4, 2026-03-04",
    "4 sept, 2025-09-04",
    "15 jun, 2026-06-15",
    "15 aug, 2025-08-15",
    "4 mar 26, 2026-03-04",
    "4 MAR 26, 2026-03-04",
    "4 dec 26, 2026-12-04",
    "4 mar 27, 1927-03-04",
    "4 mar 2019, 2019-03-04",
    "mar 4 2019, 2019-03-04",
    "29 feb 24, 2024-02-29",
    "2026-03-04, 2026-03-04",
    "2026-3-4, 2026-03-04"
  })
  void daysAsPeopleWriteThem(String text, LocalDate day) {
    assertThat(dates.day(text)).isEqualTo(day);
  }

  @Test
  void aDayWithoutAYearIsNeverInTheFuture() {
    for (LocalDate day = LocalDate.of(2025, 8, 15);
        !day.isAfter(LocalDate.of(2026, 6, 15));
        day = day.plusDays(1)) {
      String month = day.getMonth().name();
      assertThat(dates.day(day.getDayOfMonth() + " " + month)).isEqualTo(day);
    }
  }

  @Test
  void figuresThatCouldBeTwoDaysAreRefusedWithBothAndTheRemedy() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dates.day("4/3"))
        .withMessage(
            "\"4/3\" could be 4 March or 3 April; write the month as a word, as in 4 mar, or"
                + " 2026-03-04");
  }

  @ParameterizedTest
  @ValueSource(strings = {"4/3/26", "4.3.26", "04-03-2026", "4.3", "13/4", "3 4"})
  void figuresAloneAreRefused(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dates.day(text))
        .withMessageContaining("write the month as a word");
  }

  @ParameterizedTest
  @CsvSource({
    "31 apr, April has 30 days",
    "30 feb, February has 29 days",
    "29 feb 2025, February has 28 days",
    "0 may, May has 31 days",
    "2026-02-30, February has 28 days",
    "2026-13-01, months go from 01 to 12"
  })
  void daysThatAreNotThereAreRefused(String text, String reason) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dates.day(text))
        .withMessageContaining(reason);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "soon", "ma 4", "4 ma", "mar", "4 mar 126", "mar 4 apr", "4 5 mar 6"})
  void whatIsNoDayIsRefusedWithWhatToWrite(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dates.day(text))
        .withMessageContaining("write today, yesterday, 4 mar, 4 mar 26 or 2026-06-15");
  }

  @ParameterizedTest
  @CsvSource({
    "2024, 2024, 2024-01-01, 2024-12-31",
    "2024-02, 2024-02, 2024-02-01, 2024-02-29",
    "may 2024, 2024-05, 2024-05-01, 2024-05-31",
    "4 may 24, 2024-05-04, 2024-05-04, 2024-05-04"
  })
  void aPartialDateKeepsHowMuchIsKnown(String text, String iso, LocalDate first, LocalDate last) {
    PartialDate date = dates.partial(text);

    assertThat(date).hasToString(iso);
    assertThat(date.earliest()).isEqualTo(first);
    assertThat(date.latest()).isEqualTo(last);
  }

  @Test
  void aDayThatIsStillToComeThisYearIsAskedForWithItsYear() {
    assertThat(dates.day("20 aug")).isEqualTo("2025-08-20");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dates.day("16 jun"))
        .withMessage(
            "\"16 jun\" is nearly a year ago or more; say the year if that is meant: 2025-06-16");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dates.day("29 feb"))
        .withMessageEndingWith("2024-02-29");
    assertThat(dates.day("29 feb 24")).isEqualTo("2024-02-29");
  }

  @Test
  void aYearOfTheLastCenturysTwentiesIsLookedAtAgain() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dates.partial("1926-01-01"))
        .withMessage("\"1926-01-01\" is a hundred years ago; look at the year again");
    assertThat(dates.partial("1927")).hasToString("1927");
  }

  @Test
  void figuresAloneAreProposedWithTheYearThatWasTyped() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dates.day("4/3/2024"))
        .withMessageEndingWith("as in 4 mar, or 2024-03-04");
  }

  @Test
  void aMonthAndTwoFiguresCouldBeADayOrAMonth() {
    assertThat(dates.day("may 24")).isEqualTo("2026-05-24");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dates.partial("may 24"))
        .withMessage(
            "\"may 24\" could be a day or a month; write 24 may for the day, may 2024 for the"
                + " month");
  }
}
