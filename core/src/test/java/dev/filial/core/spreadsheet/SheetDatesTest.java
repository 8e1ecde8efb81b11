package dev.filial.core.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.spreadsheet.Mapping.DayOrder;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dates as spreadsheets write them; one that may be two is refused. */
class SheetDatesTest {

  private static final SheetDates UNSTATED = new SheetDates(Optional.empty(), 2026);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2025-03-04|2025-03-04",
        "2025-03|2025-03",
        "2025|2025",
        "04.03.2025|2025-03-04",
        "4.3.25|2025-03-04",
        "4. 3. 2025|2025-03-04",
        "4.3.98|1998-03-04",
        "2025/3/4|2025-03-04",
        "3/2025|2025-03",
        "13/4/2025|2025-04-13",
        "4/13/2025|2025-04-13",
        "5/5/2025|2025-05-05",
        "4-Mar-25|2025-03-04",
        "4. März 2025|2025-03-04",
        "Mrz 2025|2025-03",
        "Dezember 2024|2024-12",
        "2025-03-04 00:00:00|2025-03-04",
        "2025-03-04T00:00Z|2025-03-04",
        "04.03.2025 00:00|2025-03-04",
      })
  void theDateIsRead(String written, String date) {
    assertThat(UNSTATED.read(written)).hasToString(date);
  }

  @Test
  void theMappingDecidesWhichPartIsTheDay() {
    assertThatThrownBy(() -> UNSTATED.read("03/04/2025"))
        .hasMessageContaining("may be 2025-04-03 or 2025-03-04")
        .hasMessageContaining("dates = day month year");
    assertThat(new SheetDates(Optional.of(DayOrder.DAY_MONTH_YEAR), 2026).read("03/04/2025"))
        .hasToString("2025-04-03");
    assertThat(new SheetDates(Optional.of(DayOrder.MONTH_DAY_YEAR), 2026).read("03/04/2025"))
        .hasToString("2025-03-04");
    assertThat(new SheetDates(Optional.of(DayOrder.YEAR_MONTH_DAY), 2026).read("25/04/03"))
        .hasToString("2025-04-03");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "31.02.2025|no such date",
        "4.13.2025|no such date",
        "45720|a spreadsheet's own number for a day",
        "spring|is no date; write 2025-03-04",
        "4.0.2025|there is no month 0",
        "2025-13-01|no such date",
      })
  void whatIsNoDateIsRefused(String written, String why) {
    assertThatThrownBy(() -> UNSTATED.read(written))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(why);
  }
}
