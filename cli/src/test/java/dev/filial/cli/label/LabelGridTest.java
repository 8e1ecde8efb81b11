package dev.filial.cli.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.cli.label.LabelGrid.Asked;
import dev.filial.cli.label.LabelGrid.Gap;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Where labels lie on the paper. */
class LabelGridTest {

  private static final Gap NO_GAP = new Gap(0, 0);

  @Test
  void aSheetOfLabelsThatTouchIsFilledToItsEdges() {
    // 3 × 70 = 210 and 8 × 37.125 = 297: the whole of an A4.
    LabelGrid grid =
        LabelGrid.of(Size.A4, new Size(70, 37.125), NO_GAP, new Asked(null, null, 0.0, 0.0));

    assertThat(grid.columns()).isEqualTo(3);
    assertThat(grid.rows()).isEqualTo(8);
    assertThat(grid.x(5)).isEqualTo(140);
    assertThat(grid.y(23)).isCloseTo(7 * 37.125, within(1e-9));
  }

  @Test
  void whereNothingIsSaidTheEdgesThatPrintersLeaveWhiteAreKeptClear() {
    // 210 - 16 = 194 = 3 × 60 + 14; 297 - 16 = 281 = 9 × 30 + 11.
    LabelGrid grid = LabelGrid.of(Size.A4, new Size(60, 30), NO_GAP, Asked.NOTHING);

    assertThat(grid.columns()).isEqualTo(3);
    assertThat(grid.rows()).isEqualTo(9);
    assertThat(grid.marginLeft()).isEqualTo(15);
    assertThat(grid.marginTop()).isEqualTo(13.5);
  }

  @Test
  void aRollWhoseLabelIsThePaperTakesOne() {
    LabelGrid grid = LabelGrid.of(new Size(50, 25), new Size(50, 25), NO_GAP, Asked.NOTHING);

    assertThat(grid.perSheet()).isEqualTo(1);
    assertThat(grid.x(0)).isZero();
    assertThat(grid.y(0)).isZero();
  }

  @Test
  void marginsAndGapsAreCountedIn() {
    LabelGrid grid =
        LabelGrid.of(Size.A4, new Size(48.5, 25.4), new Gap(2, 1.5), new Asked(4, 10, 4.5, 13.0));

    assertThat(grid.x(0)).isEqualTo(4.5);
    assertThat(grid.x(1)).isEqualTo(55);
    assertThat(grid.y(4)).isEqualTo(39.9);
    assertThat(grid.x(4)).isEqualTo(4.5);
  }

  @Test
  void tooManyColumnsAreRefusedWithTheNumbers() {
    assertThatThrownBy(
            () ->
                LabelGrid.of(
                    Size.A4, new Size(70, 37), new Gap(2, 0), new Asked(3, null, 5.0, null)))
        .hasMessage(
            "3 columns of 70 mm with 2 mm between them take 214 mm and the left margin 5, and the"
                + " paper is 210 mm wide; 2 fit");
    assertThatThrownBy(
            () -> LabelGrid.of(Size.A4, new Size(70, 37), NO_GAP, new Asked(null, 9, null, null)))
        .hasMessage("9 rows of 37 mm take 333 mm, and the paper is 297 mm high; 8 fit");
  }

  @Test
  void aLabelLargerThanThePaperIsRefused() {
    assertThatThrownBy(() -> LabelGrid.of(Size.A5, new Size(150, 20), NO_GAP, Asked.NOTHING))
        .hasMessage("1 column of 150 mm takes 150 mm, and the paper is 148 mm wide; none fits");
  }

  @Test
  void noColumnsAreNoGrid() {
    assertThatThrownBy(
            () -> LabelGrid.of(Size.A4, new Size(60, 30), NO_GAP, new Asked(0, null, null, null)))
        .hasMessage("0 columns hold no label; 3 fit");
  }

  @Test
  void usedPlacesOfTheFirstSheetCountAsLabels() {
    LabelGrid grid = LabelGrid.of(Size.A4, new Size(60, 30), NO_GAP, Asked.NOTHING);

    assertThat(grid.sheets(27, 0)).isEqualTo(1);
    assertThat(grid.sheets(27, 1)).isEqualTo(2);
    assertThat(grid.sheets(1, 26)).isEqualTo(1);
    assertThat(grid.sheets(1000, 0)).isEqualTo(38);
  }

  @Property
  void everyLabelLiesOnThePaperAndNoneOnAnother(
      @ForAll @DoubleRange(min = 5, max = 120) double width,
      @ForAll @DoubleRange(min = 5, max = 120) double height,
      @ForAll @DoubleRange(max = 10) double across,
      @ForAll @DoubleRange(max = 10) double down,
      @ForAll @IntRange(max = 10_000) int place) {
    LabelGrid grid =
        LabelGrid.of(Size.A4, new Size(width, height), new Gap(across, down), Asked.NOTHING);
    int here = place % grid.perSheet();
    int there = (place / grid.perSheet()) % grid.perSheet();

    assertThat(grid.x(here)).isBetween(-1e-4, 210 - width + 1e-4);
    assertThat(grid.y(here)).isBetween(-1e-4, 297 - height + 1e-4);
    Assume.that(here != there);
    assertThat(
            Math.abs(grid.x(here) - grid.x(there)) >= width - 1e-4
                || Math.abs(grid.y(here) - grid.y(there)) >= height - 1e-4)
        .isTrue();
  }

  @Property
  void oneMoreColumnThanIsTakenWouldNotFit(
      @ForAll @DoubleRange(min = 5, max = 200) double width,
      @ForAll @DoubleRange(max = 10) double gap,
      @ForAll @DoubleRange(max = 9) double margin) {
    LabelGrid grid =
        LabelGrid.of(
            Size.A4, new Size(width, 20), new Gap(gap, 0), new Asked(null, null, margin, null));

    int more = grid.columns() + 1;
    assertThat(margin + more * width + (more - 1) * gap).isGreaterThan(210);
  }
}
