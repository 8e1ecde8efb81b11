package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.CharRange;
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

  @Test
  void theClassStandsBehindTheLastParentAndNotBetweenTheTwo() {
    LabelText text =
        LabelRoom.of(8, 2, 1, UNEVEN)
            .withCodeApart()
            .fit(
                LabelFacts.of("26-013E")
                    .withParentsOrTaxon(List.of("Lilo × strictiflora"))
                    .withGeneration("BC2"));

    assertThat(text.front()).containsExactly("Lilo", "× strictiflora");
    assertThat(text.leftOut()).containsExactly("BC2");
    assertThat(
            LabelRoom.of(9.5, 2, 1, UNEVEN)
                .withCodeApart()
                .fit(
                    LabelFacts.of("26-013E")
                        .withParentsOrTaxon(List.of("Lilo-lilo × strictiflora"))
                        .withGeneration("BC2"))
                .front())
        .containsExactly("Lilo-lilo", "× strictiflora  BC2");
  }

  @Test
  void parentsTooLongForASideAreCutOnItAndNotContinuedOnTheOther() {
    LabelText text =
        LabelRoom.of(6, 2, 2, UNEVEN)
            .fit(
                LabelFacts.of("26-013E")
                    .withParentsOrTaxon(List.of("affinis × (laui × agavoides)"))
                    .withGeneration("F1"));

    assertThat(text.front()).containsExactly("26-013E  F1");
    assertThat(text.back()).containsExactly("affinis", "× (laui × a…");
    assertThat(text.missing())
        .containsExactly("gavoides), the end of affinis × (laui × agavoides)");
  }

  /** Parents are written with p to r, × and commas, all else without; so each can be told. */
  @Property
  void nothingStandsBetweenThePiecesOfTheParentsAndAllAreOnOneSide(
      @ForAll @Size(min = 1, max = 3)
          List<
                  @Size(min = 1, max = 6) List<
                      @CharRange(from = 'p', to = 'r') @StringLength(min = 1, max = 9) String>>
              ways,
      @ForAll @Size(max = 6) List<Boolean> crossed,
      @ForAll @Size(max = 3)
          List<@CharRange(from = 'a', to = 'd') @StringLength(min = 1, max = 9) String> remarks,
      @ForAll @DoubleRange(min = 4, max = 14) double width,
      @ForAll @IntRange(min = 1, max = 4) int lines,
      @ForAll @IntRange(min = 1, max = 2) int sides,
      @ForAll boolean codeApart) {
    List<String> said = ways.stream().map(words -> joined(words, crossed)).toList();
    LabelRoom room = LabelRoom.of(width, lines, sides, UNEVEN);
    LabelText text =
        (codeApart ? room.withCodeApart() : room)
            .fit(
                LabelFacts.of("26-013E")
                    .withParentsOrTaxon(said)
                    .withGeneration("F1")
                    .withDate(new TagDate(2026, 3, 4))
                    .withRemarks(remarks));

    List<String> shown =
        Stream.of(text.front(), text.back())
            .map(side -> Pattern.compile("[pqr].*[pqr]|[pqr]").matcher(String.join(" ", side)))
            .filter(Matcher::find)
            .map(Matcher::group)
            .toList();
    assertThat(shown).hasSizeLessThanOrEqualTo(1);
    assertThat(shown).allMatch(start -> said.stream().anyMatch(way -> way.startsWith(start)));
    boolean cut = text.lines().stream().anyMatch(line -> line.contains("…"));
    assertThat(shown).allMatch(start -> cut || said.contains(start));
    assertThat(text.cut() != null).isEqualTo(cut || shown.isEmpty());
    if (text.cut() != null) {
      String shortest = said.get(said.size() - 1);
      assertThat(text.cut().of()).isEqualTo(shortest);
      assertThat(shortest).endsWith(text.cut().lost());
      String left = shortest.substring(0, shortest.length() - text.cut().lost().length());
      assertThat(shown).allMatch(left::startsWith);
      assertThat(left.isBlank()).isEqualTo(shown.isEmpty());
      assertThat(text.missing()).hasSize(text.leftOut().size() + 1);
    }
  }

  /** The words with × or a comma between them, by turns as told. */
  private static String joined(List<String> words, List<Boolean> crossed) {
    StringBuilder joined = new StringBuilder(words.get(0));
    for (int i = 1; i < words.size(); i++) {
      boolean sign = i <= crossed.size() && crossed.get(i - 1);
      joined.append(sign ? " × " : ", ").append(words.get(i));
    }
    return joined.toString();
  }
}
