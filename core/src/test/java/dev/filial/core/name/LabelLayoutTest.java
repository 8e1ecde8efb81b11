package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class LabelLayoutTest {
  private static final LocalDate FOURTH_OF_MARCH = LocalDate.of(2026, 3, 4);
  private static final List<String> PARENTS =
      List.of("Echeveria agavoides × E. laui", "agavoides × laui");

  @Test
  void everythingStandsOnTheTagIfThereIsRoom() {
    LabelText text =
        LabelLayout.STANDARD.fit(
            LabelFacts.of("26-013E")
                .withParentsOrTaxon(PARENTS)
                .withDate(TagDate.of(FOURTH_OF_MARCH))
                .withGeneration("F1")
                .withRemarks(List.of("red edge")));
    assertThat(text.front()).containsExactly("26-013E  4 MAR 26  F1", "red edge");
    assertThat(text.back()).containsExactly("Echeveria agavoides", "× E. laui");
    assertThat(text.buriedEnd()).isEqualTo("26-013E");
    assertThat(text.leftOut()).isEmpty();
  }

  @Test
  void theParentsAreSaidShorterBeforeAnythingIsLeftOut() {
    LabelText text =
        new LabelLayout(24, 2, 1, false)
            .fit(
                LabelFacts.of("26-013E")
                    .withParentsOrTaxon(PARENTS)
                    .withDate(TagDate.of(FOURTH_OF_MARCH))
                    .withGeneration("F1"));
    assertThat(text.front()).containsExactly("26-013E  4 MAR 26  F1", "agavoides × laui");
    assertThat(text.leftOut()).isEmpty();
  }

  @Test
  void whatMattersLeastIsLeftOutFirstAndNamed() {
    LabelText text =
        new LabelLayout(24, 2, 1, false)
            .fit(
                LabelFacts.of("26-013E")
                    .withParentsOrTaxon(PARENTS)
                    .withFieldNumber("XY 1234")
                    .withDate(TagDate.of(FOURTH_OF_MARCH))
                    .withGeneration("F1")
                    .withRemarks(List.of("from the left pan", "!")));
    assertThat(text.front()).containsExactly("26-013E  XY 1234  F1  !", "agavoides × laui");
    assertThat(text.leftOut()).containsExactly("4 MAR 26", "from the left pan");
  }

  @Test
  void parentsThatFitNowhereAreCutWhereItShows() {
    LabelText text =
        new LabelLayout(10, 2, 1, false)
            .fit(LabelFacts.of("26-013E").withParentsOrTaxon(List.of("agavoidesoides × laui")));
    assertThat(text.front()).containsExactly("26-013E", "agavoides…");
    assertThat(
            new LabelLayout(10, 1, 1, false)
                .fit(LabelFacts.of("26-013E").withParentsOrTaxon(List.of("agavoides")))
                .front())
        .containsExactly("26-013E");
  }

  @Test
  void aCodeIsNeverCut() {
    assertThatThrownBy(() -> new LabelLayout(10, 2, 2, false).fit(LabelFacts.of("KB 26-013E-7")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("KB 26-013E-7 needs 12 columns")
        .hasMessageContaining("has 10");
  }

  @Test
  void asciiWritesAnXAndNoMarks() {
    LabelText text =
        LabelLayout.STANDARD
            .inAscii()
            .fit(
                LabelFacts.of("26-013E")
                    .withParentsOrTaxon(List.of("×gilva × laui"))
                    .withRemarks(List.of("Größe “mañana” 🌵")));
    assertThat(text.lines())
        .containsExactly("26-013E  x gilva x laui", "Grosse \"manana\" ?")
        .allMatch(line -> line.chars().allMatch(c -> c < 128));
  }

  @Test
  void accentsAndEmojiTakeTheColumnsThatAReaderSees() {
    assertThat(Columns.width("e\u0301")).isEqualTo(1);
    assertThat(Columns.width("Meyrán × l")).isEqualTo(10);
    assertThat(Columns.width("🌵")).isEqualTo(2);
    assertThat(Columns.width("👩‍🌾")).isEqualTo(2);
    assertThat(Columns.width("花")).isEqualTo(2);
    String remark = "e\u0301".repeat(15);
    LabelText text =
        new LabelLayout(24, 1, 1, false).fit(LabelFacts.of("26-013E").withRemarks(List.of(remark)));
    assertThat(text.front()).containsExactly("26-013E  " + remark);
  }

  @Test
  void theDateIsEnglishWhateverTheComputerSpeaks() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(TagDate.of(FOURTH_OF_MARCH).text()).isEqualTo("4 MAR 26");
      assertThat(TagDate.of(LocalDate.of(2009, 12, 31)).text()).isEqualTo("31 DEC 09");
      assertThat(new TagDate(2026, 3, 0).text()).isEqualTo("MAR 26");
      assertThat(new TagDate(2026, 0, 0).text()).isEqualTo("2026");
      assertThatThrownBy(() -> new TagDate(2026, 0, 4)).hasMessageContaining("no such date");
      assertThat(Code.of(26, 13).text()).isEqualTo("26-013E");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void roomThatNoLabelHasIsRefused() {
    assertThatThrownBy(() -> new LabelLayout(6, 2, 2, false)).hasMessageContaining("columns");
    assertThatThrownBy(() -> new LabelLayout(24, 0, 2, false)).hasMessageContaining("lines");
    assertThatThrownBy(() -> new LabelLayout(24, 2, 3, false)).hasMessageContaining("side");
    assertThatThrownBy(() -> LabelFacts.of(" ")).hasMessageContaining("needs a code");
  }

  @Property
  void noLineIsTooLongAndNoCodeIsCut(
      @ForAll("facts") LabelFacts facts,
      @ForAll @IntRange(min = 14, max = 40) int columns,
      @ForAll @IntRange(min = 1, max = 4) int lines,
      @ForAll @IntRange(min = 1, max = 2) int sides,
      @ForAll boolean ascii) {
    LabelText text = new LabelLayout(columns, lines, sides, ascii).fit(facts);
    assertThat(text.front()).hasSizeBetween(1, lines);
    assertThat(text.back()).hasSizeLessThanOrEqualTo(sides == 2 ? lines : 0);
    assertThat(text.front().get(0)).startsWith(facts.code());
    assertThat(text.buriedEnd()).isEqualTo(facts.code());
    assertThat(text.lines()).allSatisfy(l -> assertThat(Columns.width(l)).isBetween(0, columns));
    assertThat(text.lines()).allMatch(l -> !ascii || l.chars().allMatch(c -> c < 128));
  }

  @Property
  void everyFactIsOnTheLabelOrNamedAsLeftOut(@ForAll("facts") LabelFacts facts) {
    LabelText text = LabelLayout.STANDARD.fit(facts);
    List<String> due = new ArrayList<>();
    facts.fieldNumber().ifPresent(due::add);
    facts.date().ifPresent(date -> due.add(date.text()));
    facts.generation().ifPresent(due::add);
    due.addAll(facts.remarks());
    Set<String> leftOut = Set.copyOf(text.leftOut());
    assertThat(due)
        .allMatch(
            fact ->
                leftOut.contains(fact) || text.lines().stream().anyMatch(l -> l.contains(fact)));
  }

  @Property
  void lessImportantFactsNeverCostAnotherItsPlace(@ForAll("facts") LabelFacts facts) {
    LabelText bare = LabelLayout.STANDARD.fit(facts.withRemarks(List.of()));
    LabelText full = LabelLayout.STANDARD.fit(facts);
    int before = bare.leftOut().size();
    assertThat(full.leftOut()).hasSizeGreaterThanOrEqualTo(before);
    assertThat(full.leftOut().subList(0, before)).isEqualTo(bare.leftOut());
  }

  @Provide
  static Arbitrary<LabelFacts> facts() {
    Arbitrary<String> words =
        Arbitraries.of(
            "F2",
            "red edge",
            "from the left pan of the bench",
            "🌵",
            "Meyrán",
            "XY 1234",
            "e\u0301");
    Arbitrary<String> parents =
        Arbitraries.of(
            "Echeveria agavoides × E. laui", "agavoides × laui", "ag × la", "agavoidesoidesoides");
    Arbitrary<TagDate> dates =
        Arbitraries.integers()
            .between(0, 3000)
            .map(day -> TagDate.of(FOURTH_OF_MARCH.plusDays(day)));
    return Combinators.combine(
            Arbitraries.of("26-013E", "KB 26-013E-7"),
            parents.list().uniqueElements().ofMaxSize(3),
            words.optional(),
            dates.optional(),
            words.optional(),
            words.list().uniqueElements().ofMaxSize(4))
        .as(LabelFacts::new);
  }

  @Test
  void factsKeepWhatTheyAreGiven() {
    LabelFacts facts = LabelFacts.of("26-013E").withFieldNumber("XY 1").withGeneration("F2");
    assertThat(facts.fieldNumber()).isEqualTo(Optional.of("XY 1"));
    assertThat(facts.generation()).contains("F2");
  }
}
