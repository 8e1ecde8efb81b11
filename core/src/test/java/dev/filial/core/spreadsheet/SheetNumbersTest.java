package dev.filial.core.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.spreadsheet.Mapping.DecimalSign;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Numbers with a comma or a point; one that may be two is refused. */
class SheetNumbersTest {

  private static final SheetNumbers UNSTATED = new SheetNumbers(Optional.empty());
  private static final SheetNumbers COMMA = new SheetNumbers(Optional.of(DecimalSign.COMMA));
  private static final SheetNumbers POINT = new SheetNumbers(Optional.of(DecimalSign.POINT));

  @Test
  void aCommaIsReadWhereItCanOnlyBeOneThing() {
    assertThat(UNSTATED.number("12,5")).isEqualByComparingTo("12.5");
    assertThat(UNSTATED.number("12.5")).isEqualByComparingTo("12.5");
    assertThat(UNSTATED.number("0,125")).isEqualByComparingTo("0.125");
    assertThatThrownBy(() -> UNSTATED.number("1,250"))
        .hasMessageContaining("may be 1250 or 1.250")
        .hasMessageContaining("decimal = comma");
  }

  @Test
  void theMappingDecidesWhatIsTenthsAndWhatThousands() {
    assertThat(COMMA.number("1,250")).isEqualByComparingTo("1.25");
    assertThat(COMMA.number("1.250")).isEqualByComparingTo("1250");
    assertThat(COMMA.number("1.250,5")).isEqualByComparingTo("1250.5");
    assertThat(POINT.number("1,250")).isEqualByComparingTo("1250");
    assertThat(POINT.number("-3.5")).isEqualByComparingTo("-3.5");
    assertThatThrownBy(() -> COMMA.number("12.5")).hasMessageContaining("is no number");
    assertThatThrownBy(() -> POINT.number("12,5")).hasMessageContaining("is no number");
    assertThatThrownBy(() -> POINT.number("3 mm")).hasMessageContaining("is no number");
  }

  @Test
  void countsAreCountedOrGuessed() {
    assertThat(UNSTATED.count("80")).hasToString("80");
    assertThat(UNSTATED.count("80,0")).hasToString("80");
    assertThat(UNSTATED.count("ca. 80")).hasToString("~80");
    assertThat(UNSTATED.count("~80")).hasToString("~80");
    assertThat(UNSTATED.count("viele")).hasToString("many");
    assertThat(UNSTATED.count("Few")).hasToString("few");
    assertThat(COMMA.count("1.200")).hasToString("1200");
  }

  @Test
  void whatIsNoCountIsRefused() {
    assertThatThrownBy(() -> UNSTATED.count("-3"))
        .hasMessageContaining("-3 is not a count: it must lie between 0");
    assertThatThrownBy(() -> UNSTATED.count("2,5")).hasMessageContaining("not a whole number");
    assertThatThrownBy(() -> UNSTATED.count("a dozen")).hasMessageContaining("is not a count");
    assertThatThrownBy(() -> UNSTATED.count("1.200")).hasMessageContaining("may be 1200 or 1.200");
  }
}
