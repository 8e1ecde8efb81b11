package dev.filial.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.answer.NotationReading.Explained;
import dev.filial.core.name.NotationException;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class NotationReadingTest {

  private static String shares(Explained explained) {
    return explained.shares().stream()
        .map(one -> one.share() + " " + one.taxon())
        .collect(Collectors.joining(", "));
  }

  @Test
  void aBackcrossIsWrittenOutCountedAndDrawn() {
    Explained explained = NotationReading.of("A*3/B");

    assertThat(explained.notation()).isEqualTo("A/3/A//A/B");
    assertThat(explained.abbreviated()).isEqualTo("A*3/B");
    assertThat(shares(explained)).isEqualTo("7/8 A, 1/8 B");
    assertThat(explained.generation()).isEqualTo("BC2");
    assertThat(explained.generationInWords())
        .contains("BC2 to A")
        .contains("whether to the same plant is not known");
    assertThat(explained.crosses()).isEqualTo(3);
    assertThat(explained.generations()).isEqualTo(3);
    assertThat(explained.tree().get(1))
        .extracting(TreeQuestion.Line::depth, TreeQuestion.Line::role, TreeQuestion.Line::name)
        .containsExactly(1, "seed parent", "A");
  }

  @Test
  void whetherAnF2WasSelfedCannotBeReadFromIt() {
    assertThat(NotationReading.of("A/B//A/B").generationInWords())
        .startsWith("F2 of A × B")
        .contains("whether selfed or sib crossed is not known");
  }

  @Test
  void theWheatScoutHasAQuarterOfHopeCrossedWithTurkeyRed() {
    // Nebred//Hope/Turkey Red/3/Cheyenne/Ponca: the wheat pedigree catalogue published with the
    // 1968 notation.
    assertThat(shares(NotationReading.of("Nebred//Hope/Turkey Red/3/Cheyenne/Ponca")))
        .isEqualTo("1/4 Cheyenne, 1/4 Nebred, 1/4 Ponca, 1/8 Hope, 1/8 Turkey Red");
  }

  @Test
  void aSingleNameIsAPedigreeToo() {
    assertThat(NotationReading.of("Grey Lady"))
        .extracting(Explained::crosses, Explained::generation)
        .containsExactly(0, "pure");
  }

  @Test
  void aMistakeIsPointedAtAndALimitIsStated() {
    assertThatThrownBy(() -> NotationReading.of("A/B/C")).isInstanceOf(NotationException.class);
    assertThatThrownBy(
            () ->
                NotationReading.of(
                    "A*" + 999 + "/" + "B//C*999/D/3/E*999/F/4/G*999/H" + "/5/I*999/J/6/K*999/L"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at most 5000 are explained");
  }
}
