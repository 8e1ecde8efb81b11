package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** Text fitted where letters are not all of one width. */
class LabelRoomTest {

  /** An m is as wide as three other letters. */
  private static final LineMeasure UNEVEN =
      new LineMeasure() {
        @Override
        public double width(String text) {
          return text.chars().mapToDouble(c -> c == 'm' ? 1.5 : 0.5).sum();
        }

        @Override
        public String start(String text, double room) {
          int end = text.length();
          while (end > 0 && width(text.substring(0, end)) > room) {
            end--;
          }
          return text.substring(0, end);
        }
      };

  private static final LabelFacts FACTS =
      LabelFacts.of("26-013E")
          .withParentsOrTaxon(List.of("agavoides × laui"))
          .withGeneration("F1")
          .withFieldNumber("XM 014");

  @Test
  void aCodeThatStandsApartTakesNoLine() {
    LabelText text = LabelRoom.of(8, 2, 1, UNEVEN).withCodeApart().fit(FACTS);

    assertThat(text.front()).containsExactly("agavoides × laui", "XM 014  F1");
    assertThat(text.buriedEnd()).isEqualTo("26-013E");
    assertThat(text.leftOut()).isEmpty();
  }

  @Test
  void wideLettersTakeMoreRoomThanNarrowOnes() {
    LabelRoom room = LabelRoom.of(6, 1, 1, UNEVEN).withCodeApart();

    assertThat(room.fit(FACTS.withParentsOrTaxon(List.of("lilo lilo li"))).front())
        .containsExactly("lilo lilo li");
    assertThat(room.fit(FACTS.withParentsOrTaxon(List.of("mmmmm"))).front())
        .containsExactly("mmm…");
  }

  @Test
  void aLabelWithoutRoomForALineIsRefused() {
    assertThatThrownBy(() -> LabelRoom.of(0, 1, 1, UNEVEN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> LabelRoom.of(5, 0, 1, UNEVEN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property
  void noLineIsWiderThanTheRoomAndAFactIsWholeOrNamedAsLeftOut(
      @ForAll @Size(max = 4) List<@AlphaChars @StringLength(min = 1, max = 12) String> remarks,
      @ForAll @AlphaChars @StringLength(min = 1, max = 40) String parents,
      @ForAll @DoubleRange(min = 1, max = 20) double width,
      @ForAll @IntRange(min = 1, max = 4) int lines,
      @ForAll @IntRange(min = 1, max = 2) int sides) {
    LabelText text =
        LabelRoom.of(width, lines, sides, UNEVEN)
            .withCodeApart()
            .fit(
                LabelFacts.of("26-013E").withParentsOrTaxon(List.of(parents)).withRemarks(remarks));

    assertThat(text.lines()).allMatch(line -> UNEVEN.width(line) <= width);
    String all = String.join("  ", text.lines());
    for (String remark : remarks) {
      assertThat(all.contains(remark) || text.leftOut().contains(remark)).isTrue();
    }
  }
}
