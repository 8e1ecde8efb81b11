package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TravellingCodeTest {
  private static final GrowersMark KB = new GrowersMark("kb");

  @ParameterizedTest
  @CsvSource({
    // Published examples of identifier schemes that use ISO/IEC 7064 MOD 37,36.
    "A12425GABC1234002, M",
    "123AB, X",
    "DADPIDA3897722461, J",
    "779185342C2390308610, 5"
  })
  void publishedExamplesHaveTheirCheckCharacter(String text, char check) {
    assertThat(Mod37_36.checkCharacter(text)).isEqualTo(check);
    assertThat(Mod37_36.isValid(text + check)).isTrue();
    assertThat(Mod37_36.isValid(text + (check == '0' ? '1' : '0'))).isFalse();
  }

  @Property
  void everyWrongCharacterIsDetected(
      @ForAll("machineTexts") String text,
      @ForAll @IntRange(max = 15) int at,
      @ForAll @IntRange(min = 1, max = 35) int step) {
    String checked = text + Mod37_36.checkCharacter(text);
    String all = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    StringBuilder wrong = new StringBuilder(checked);
    int place = at % checked.length();
    wrong.setCharAt(place, all.charAt((all.indexOf(checked.charAt(place)) + step) % 36));
    assertThat(Mod37_36.isValid(checked)).isTrue();
    assertThat(Mod37_36.isValid(wrong.toString())).isFalse();
  }

  @Provide
  static Arbitrary<String> machineTexts() {
    return Arbitraries.strings().withCharRange('0', '9').withCharRange('A', 'Z').ofMinLength(1);
  }

  @Test
  void whatHasOtherCharactersCannotBeChecked() {
    assertThatThrownBy(() -> Mod37_36.checkCharacter("KB 26")).hasMessageContaining("character 3");
    assertThatThrownBy(() -> Mod37_36.checkCharacter("")).hasMessageContaining("needs a text");
    assertThat(Mod37_36.isValid("KB 26")).isFalse();
    assertThat(Mod37_36.isValid("7")).isFalse();
  }

  @Test
  void aMarkStandsBeforeWhatLeavesTheHouse() {
    TravellingCode travelling = new TravellingCode(KB, Code.parse("26-013E-7"));
    assertThat(travelling.text()).isEqualTo("KB 26-013E-7");
    assertThat(travelling.machineReadable()).startsWith("KB26013E7").hasSize(10);
  }

  @ParameterizedTest
  @ValueSource(strings = {"KB 26-013E-7", "kb26-013e 7", "KB-26013-7", " kb  26-13-7"})
  void aTravellingCodeIsReadHoweverItIsTyped(String typed) {
    assertThat(TravellingCode.parse(typed))
        .isEqualTo(new TravellingCode(KB, Code.of(26, 13).seedling(7)));
  }

  @Test
  void atHomeTheMarkMayBeLeftOut() {
    assertThat(TravellingCode.parse("26-013", KB).text()).isEqualTo("KB 26-013E");
    assertThat(TravellingCode.parse("MW 26-013", KB).text()).isEqualTo("MW 26-013E");
    assertThatThrownBy(() -> TravellingCode.parse("26-013E"))
        .isInstanceOf(CodeException.class)
        .hasMessageContaining("as KB 26-013E");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "K", "KABCD", "K1", "K B", "ÄB"})
  void aMarkIsTwoToFourLetters(String letters) {
    assertThatThrownBy(() -> new GrowersMark(letters))
        .isInstanceOf(CodeException.class)
        .hasMessageContaining("two to four letters");
  }

  @Test
  void aMisreadBarCodeIsRefused() {
    String machine = new TravellingCode(KB, Code.of(26, 13)).machineReadable();
    assertThatThrownBy(() -> TravellingCode.parseMachineReadable(machine.replace('6', '8')))
        .hasMessageContaining("Scan it again");
    assertThatThrownBy(() -> TravellingCode.parseMachineReadable("123ABX"))
        .hasMessageContaining("not a plant's code");
  }

  @Property
  void whatIsPrintedIsReadBack(@ForAll("travelling") TravellingCode code) {
    assertThat(TravellingCode.parse(code.text())).isEqualTo(code);
    assertThat(code.machineReadable()).matches("[0-9A-Z]+");
    assertThat(TravellingCode.parseMachineReadable(code.machineReadable())).isEqualTo(code);
  }

  @Provide
  static Arbitrary<TravellingCode> travelling() {
    Arbitrary<String> marks =
        Arbitraries.strings().withCharRange('A', 'Z').ofMinLength(2).ofMaxLength(4);
    return CodeTest.codes()
        .flatMap(code -> marks.map(mark -> new TravellingCode(new GrowersMark(mark), code)));
  }
}
