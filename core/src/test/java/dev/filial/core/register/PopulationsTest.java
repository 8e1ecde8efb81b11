package dev.filial.core.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class PopulationsTest {

  private final Bench bench = new Bench();

  private long say(String... numbers) {
    return bench.say(new PopulationDeclared(List.of(numbers), null));
  }

  @Test
  void aNumberThatNobodySpokeOfIsAPopulationByItself() {
    assertThat(bench.book.population(" OM 112 ")).containsExactly("OM 112");
  }

  @Test
  void whatIsOnePopulationWithOneIsSoWithAllOverAnyNumberOfEntries() {
    say("OM 112", "JB 7");
    say("JB 8", "JB 9");
    assertThat(bench.book.population("OM 112")).containsExactly("JB 7", "OM 112");

    say("JB 9", " JB 7");
    assertThat(bench.book.population("OM 112"))
        .isEqualTo(bench.book.population("JB 8"))
        .containsExactly("JB 7", "JB 8", "JB 9", "OM 112");
  }

  @Test
  void spacesAndCapitalsWithinANumberCountUntilTheyAreSaidToBeOne() {
    assertThat(bench.book.population("OM112")).containsExactly("OM112");

    say("OM 112", "OM112");

    assertThat(bench.book.population("OM112")).containsExactly("OM 112", "OM112");
    assertThat(bench.book.population("om112")).containsExactly("om112");
  }

  @Test
  void strikingTheEntryPartsThemAgain() {
    long entry = say("OM 112", "JB 7");
    say("JB 7", "JB 8");

    bench.say(new Amended(entry, null, "another slope"));

    assertThat(bench.book.population("OM 112")).containsExactly("OM 112");
    assertThat(bench.book.population("JB 8")).containsExactly("JB 7", "JB 8");
  }

  @Test
  void amendingItJoinsOthersInItsPlace() {
    long entry = say("OM 112", "JB 7");

    bench.say(
        new Amended(entry, new PopulationDeclared(List.of("OM 112", "JB 8"), null), "misread"));

    assertThat(bench.book.population("OM 112")).containsExactly("JB 8", "OM 112");
    assertThat(bench.book.population("JB 7")).containsExactly("JB 7");
  }

  @Test
  void itTakesTwoNumbersAndEachOnce() {
    assertThatThrownBy(() -> say("OM 112")).hasMessageContaining("two field numbers or more");
    assertThatThrownBy(() -> say("OM 112", "OM 112 "))
        .hasMessageContaining("OM 112 is named twice");
    assertThatThrownBy(() -> say("OM 112", " ")).hasMessageContaining("is empty");
  }
}
