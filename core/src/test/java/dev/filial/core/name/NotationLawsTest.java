package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Notation.Style;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class NotationLawsTest {

  @Property
  void aPedigreeWrittenOutIsReadBack(@ForAll("pedigrees") Notation pedigree, @ForAll Style style) {
    Notation written = pedigree.asWritten();
    assertThat(Notation.parse(pedigree.text(style))).isEqualTo(written);
    assertThat(written.asWritten()).isEqualTo(written);
    assertThat(written.text(style)).isEqualTo(pedigree.text(style));
    assertThat(pedigree.length(style)).isEqualTo(pedigree.text(style).length());
    assertThat(written.sources()).containsExactlyInAnyOrderElementsOf(pedigree.sources());
    assertThat(written.generations()).isEqualTo(pedigree.generations());
  }

  @Property
  void shorthandIsNeverLonger(@ForAll("pedigrees") Notation pedigree) {
    assertThat(pedigree.text(Style.BACKCROSS_STAR_FIRST))
        .hasSizeLessThanOrEqualTo(pedigree.text().length());
  }

  @Property
  void anythingTypedIsReadOrRefusedInWords(@ForAll("scribbles") String text) {
    try {
      Notation pedigree = Notation.parse(text);
      assertThat(Notation.parse(pedigree.text())).isEqualTo(pedigree);
    } catch (NotationException e) {
      assertThat(e.column()).isBetween(1, text.codePointCount(0, text.length()) + 1);
      assertThat(e).hasMessageContaining("^");
    }
  }

  @Provide
  static Arbitrary<String> scribbles() {
    Arbitrary<String> pieces =
        Arbitraries.of(
            "A", "B", "/", "//", "/3/", "/4/", "*", "2", "3", "*2", " ", "\"", "\"A\"", "(", "🌵",
            "0", "\u00a0", "\u0001");
    return pieces.list().ofMaxSize(12).map(list -> String.join("", list));
  }

  /** Crosses of any two earlier nodes; often one that was just made, so that they get deep. */
  @Provide
  static Arbitrary<Notation> pedigrees() {
    Arbitrary<String> names =
        Arbitraries.of(
            "A", "B", "A", "B", "C D", "7/8", "55", "7C", "x \"y\"", "A  B", "🌵", "*", "(a)");
    Arbitrary<List<Integer>> picks = Arbitraries.integers().between(0, 1000).list().ofMaxSize(24);
    return Combinators.combine(names.list().ofMinSize(1).ofMaxSize(5), picks)
        .as(NotationLawsTest::grown);
  }

  private static Notation grown(List<String> names, List<Integer> picks) {
    Notation.Builder builder = new Notation.Builder();
    List<Integer> sources = new ArrayList<>();
    names.forEach(name -> sources.add(builder.source(name)));
    int last = sources.get(0);
    for (int source : sources.subList(1, sources.size())) {
      last = builder.cross(last, source);
    }
    for (int pick : picks) {
      int other = sources.get(pick / 4 % sources.size());
      last =
          switch (pick % 4) {
            case 0 -> builder.cross(last, other);
            case 1 -> builder.cross(other, last);
            case 2 -> builder.cross(last, builder.source(names.get(0)));
            default -> pick % 16 == 3 ? builder.cross(last, last) : builder.cross(last, other);
          };
    }
    return builder.build();
  }
}
