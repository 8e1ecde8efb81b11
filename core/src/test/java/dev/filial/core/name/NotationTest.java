package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.filial.core.name.Notation.Node.Cross;
import dev.filial.core.name.Notation.Node.Source;
import dev.filial.core.name.Notation.Style;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NotationTest {

  private static Notation parse(String text) {
    return Notation.parse(text);
  }

  @Test
  void theSeedParentStandsLeft() {
    assertThat(parse("A/B").nodes())
        .containsExactly(new Source("A"), new Source("B"), new Cross(0, 1));
    assertThat(parse("A/B//C").nodes())
        .containsExactly(
            new Source("A"), new Source("B"), new Cross(0, 1), new Source("C"), new Cross(2, 3));
    assertThat(parse("A//B/C").nodes())
        .containsExactly(
            new Source("A"), new Source("B"), new Source("C"), new Cross(1, 2), new Cross(0, 3));
  }

  @Test
  void aLoneNameIsAPedigree() {
    assertThat(parse("Turkey  Red").nodes()).containsExactly(new Source("Turkey Red"));
    assertThat(parse("Turkey Red").generations()).isZero();
  }

  @Test
  void aRepeatedNameIsOneSourceAndNotOnePlant() {
    Notation backcross = parse("A/B//A");
    assertThat(backcross.nodes()).filteredOn(new Source("A")::equals).hasSize(2);
    assertThat(backcross.sources()).containsExactly("A", "B");
  }

  @ParameterizedTest
  @CsvSource({
    // The number counts every use of the recurrent parent, before or after the asterisk.
    "A/B*3, A/B//B/3/B",
    "A/3*B, A/B//B/3/B",
    "B/A*3, B/A//A/3/A",
    "B/3*A, B/A//A/3/A",
    "A*3/B, A/3/A//A/B",
    "3*A/B, A/3/A//A/B",
    "A*2/B, A//A/B",
    "A*3//B/C, A/4/A/3/A//B/C",
    "A/B//C*2, A/B//C/3/C",
    "A/B*2//C, A/B//B/3/C",
    "A*2/B//C*2/D, A//A/B/3/C//C/D",
    "A//B*2/C, A/3/B//B/C",
    "A*2//B*2/C, A/4/A/3/B//B/C",
    "7C*2/A, 7C//7C/A",
    "2*7C/A, 7C//7C/A"
  })
  void anAsteriskCountsTheUsesOfTheRecurrentParent(String shorthand, String writtenOut) {
    assertThat(parse(shorthand)).isEqualTo(parse(writtenOut));
    assertThat(parse(shorthand).text()).isEqualTo(writtenOut);
  }

  @Test
  void backcrossesAreWrittenShortOnRequest() {
    Notation right = parse("A/B//B/3/B");
    assertThat(right.text(Style.BACKCROSS_STAR_FIRST)).isEqualTo("A/B*3");
    assertThat(right.text(Style.BACKCROSS_NUMBER_FIRST)).isEqualTo("A/3*B");
    assertThat(right.text()).isEqualTo("A/B//B/3/B");
    Notation left = parse("A/3/A//A/B");
    assertThat(left.text(Style.BACKCROSS_STAR_FIRST)).isEqualTo("A*3/B");
    assertThat(left.text(Style.BACKCROSS_NUMBER_FIRST)).isEqualTo("A*3/B");
    assertThat(parse("A*3//B/C/3/D").text(Style.BACKCROSS_STAR_FIRST)).isEqualTo("A*3//B/C/3/D");
    assertThat(parse("A/B").text(Style.BACKCROSS_STAR_FIRST)).isEqualTo("A/B");
  }

  @Test
  void crossesWithinABackcrossMayBeCountedByThoseWhoNumberTheNext() {
    // A*3/B is three crosses: the next may be called the second mark or the fourth cross.
    assertThat(parse("A*3/B/4/C")).isEqualTo(parse("A*3/B//C"));
    assertThat(parse("A*3/B/4/C").text(Style.BACKCROSS_STAR_FIRST)).isEqualTo("A*3/B//C");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      textBlock =
          """
          A / B // C / 3 / D   | A/B//C/3/D
          ' A/B '              | A/B
          A/1/B/2/C            | A/B//C
          "7/8 hybrid"/B       | "7/8 hybrid"/B
          "A"/"B C"            | A/B C
          "55"/B               | "55"/B
          "A (one)"*2/B        | "A (one)"//"A (one)"/B
          """)
  void spacesAndQuotesAreReadAndWrittenWhereNeeded(String text, String written) {
    assertThat(parse(text).text()).isEqualTo(written);
  }

  @Test
  void aCultivarKeepsItsSingleQuotesAndADoubleQuoteIsDoubled() {
    assertThat(parse("E. laui 'Red'/E. sp.").sources()).containsExactly("E. laui 'Red'", "E. sp.");
    assertThat(parse("\"say \"\"yes\"\"\"/B").sources()).containsExactly("say \"yes\"", "B");
    assertThat(parse("\"say \"\"yes\"\"\"/B").text()).isEqualTo("\"say \"\"yes\"\"\"/B");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      textBlock =
          """
          ''          |  1 | a pedigree is missing
          A/B/C       |  4 | Write // for the later one: A/B//… if this was, A//B/… if the other was
          A/B//C//D   |  7 | Write /3/ for the later one
          A//B        |  2 | Write /, or put in what is missing
          A/3/B       |  2 | joins has no cross behind it
          A/B/4/C     |  4 | at most one cross
          A/          |  3 | behind the last slash
          /A          |  1 | before this slash
          A/ /B       |  4 | written together
          A///B       |  4 | Write /3/ for a third cross
          A//3/B      |  4 | number alone
          55/B        |  1 | "55"
          (A/B)//C    |  1 | no brackets
          A/"B        |  3 | not closed
          A/"B"C      |  6 | a slash belongs behind
          A/B "C"     |  5 | a quote begins before a name
          A*3         |  2 | needs what the recurrent parent was crossed with
          A*/B        |  3 | a number belongs behind the asterisk
          A*1/B       |  3 | Leave it out for a single cross
          A*1000/B    |  3 | 2 to 999
          A*2/B*2     |  6 | both parents
          2*A*2/B     |  4 | one asterisk
          A/*B        |  3 | an asterisk stands at a name
          A*2 B/C     |  5 | a slash belongs here
          A/"" /B     |  3 | a source needs a name
          A/0/B       |  2 | counted from 1
          🌵🌵/A/B    |  5 | Write //
          """)
  void whatCannotBeReadIsToldWhereAndWhatToWrite(String text, int column, String remedy) {
    NotationException error = catchThrowableOfType(NotationException.class, () -> parse(text));
    assertThat(error).hasMessageStartingWith("column " + column).hasMessageContaining(remedy);
    assertThat(error.column()).isEqualTo(column);
  }

  @Test
  void theMessageShowsTheTextWithACaretUnderThePlace() {
    assertThatThrownBy(() -> parse("Red Edge/Blue/Grey"))
        .hasMessageEndingWith("\n  Red Edge/Blue/Grey\n               ^");
  }

  @Test
  void inALongTextOnlyThePlaceIsShown() {
    String text = "A/" + "B".repeat(500) + "/C" + "D".repeat(500);
    NotationException error = catchThrowableOfType(NotationException.class, () -> parse(text));
    assertThat(error.column()).isEqualTo(503);
    String[] lines = error.getMessage().split("\n", -1);
    assertThat(lines[1]).hasSizeLessThan(80).startsWith("  …B").endsWith("D…");
    assertThat(lines[1].charAt(lines[2].indexOf('^'))).isEqualTo('/');
  }

  @Test
  void aPlantThatIsParentTwiceIsWrittenTwice() {
    Notation.Builder builder = new Notation.Builder();
    int a = builder.source("A");
    int b = builder.source("B");
    int f1 = builder.cross(a, b);
    builder.cross(f1, f1);
    Notation selfing = builder.build();
    assertThat(selfing.text()).isEqualTo("A/B//A/B");
    assertThat(selfing).isNotEqualTo(parse("A/B//A/B"));
    assertThat(selfing.asWritten()).isEqualTo(parse("A/B//A/B"));
  }

  @Test
  void eightySelfingsAreRefusedInWordsAndNotTried() {
    Notation.Builder builder = new Notation.Builder();
    int plant = builder.source("A");
    for (int generation = 0; generation < 80; generation++) {
      plant = builder.cross(plant, plant);
    }
    Notation selfed = builder.build();
    assertThatThrownBy(selfed::text).hasMessageContaining("parents several times");
    assertThatThrownBy(selfed::asWritten).hasMessageContaining("20000000");
    assertThat(selfed).hasToString("a pedigree of 81 nodes");
    assertThat(selfed.generations()).isEqualTo(80);
  }

  @Test
  void whatIsNoPedigreeIsRefused() {
    assertThatThrownBy(() -> new Notation(List.of())).hasMessageContaining("at least one source");
    assertThatThrownBy(() -> new Notation(List.of(new Source("A"), new Cross(0, 1))))
        .hasMessageContaining("not before it");
    assertThatThrownBy(() -> new Notation(List.of(new Source("A"), new Source("B"))))
        .hasMessageContaining("parent of none");
    assertThatThrownBy(() -> new Notation.Builder().build())
        .hasMessageContaining("at least one source");
    assertThatThrownBy(() -> new Notation.Builder().cross(0, 0))
        .hasMessageContaining("not before it");
    assertThatThrownBy(() -> new Source(" ")).hasMessageContaining("needs a name");
    assertThatThrownBy(() -> new Source("A\nB")).hasMessageContaining("line breaks");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aHundredThousandGenerationsAreReadAndWritten(boolean growsToTheLeft) {
    int generations = 100_000;
    Notation.Builder builder = new Notation.Builder();
    int plant = builder.source("P0");
    if (growsToTheLeft) {
      for (int i = 1; i <= generations; i++) {
        plant = builder.cross(plant, builder.source("P" + i));
      }
    } else {
      for (int i = 1; i <= generations; i++) {
        plant = builder.cross(builder.source("P" + i), plant);
      }
    }
    Notation deep = builder.build();
    String text = deep.text();
    assertThat(parse(text)).isEqualTo(deep.asWritten());
    assertThat(parse(text).text(Style.BACKCROSS_STAR_FIRST)).isEqualTo(text);
    assertThat(deep.generations()).isEqualTo(generations);
  }

  @Test
  void aBackcrossLongerThanAnAsteriskCanSayIsStillReadBack() {
    StringBuilder text = new StringBuilder("A/B");
    for (int i = 2; i <= 1500; i++) {
      text.append(NotationWriter.mark(i)).append('B');
    }
    Notation backcross = parse(text.toString());
    String shorthand = backcross.text(Style.BACKCROSS_STAR_FIRST);
    assertThat(shorthand).startsWith("A/B*999//B/3/B");
    assertThat(parse(shorthand)).isEqualTo(backcross);
  }
}
