package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static dev.filial.core.answer.InventedBench.weighted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Joined;
import dev.filial.core.register.Pollen;
import java.util.List;
import org.junit.jupiter.api.Test;

class TreeQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(Determination.of(LAUI), "KB 12", "Rosa");
  private final Code agavoides = bench.plant("Echeveria cf. agavoides");
  private final Code f1 = bench.seedling(bench.cross(laui, agavoides));

  private static String text(TreeQuestion.Line line) {
    return "  ".repeat(line.depth())
        + (line.role() + " " + line.name() + " " + line.what()).strip()
        + (line.seenAbove() ? " ^" : "")
        + (line.cut() ? " ..." : "");
  }

  private List<String> tree(TreeQuestion question, Code code) {
    return question.ask(code).lines().stream().map(TreeQuestionTest::text).toList();
  }

  private List<String> tree(Code code) {
    return tree(TreeQuestion.of(bench.store), code);
  }

  @Test
  void parentsStandUnderTheirChildTheSeedParentFirst() {
    assertThat(tree(f1))
        .containsExactly(
            f1.text(),
            "  seed parent " + laui.text() + " Echeveria laui KB 12",
            "  pollen parent " + agavoides.text() + " Echeveria agavoides (cf.)");
    TreeQuestion.Tree tree = TreeQuestion.of(bench.store).ask(f1);
    assertThat(tree.lines().get(1).names()).containsExactly("Rosa");
    assertThat(tree.notes()).singleElement().asString().contains("determined only as");
  }

  @Test
  void aSelfedPlantIsOneParentAndOneSeenAboveIsNotOpenedAgain() {
    Code f2 = bench.seedling(bench.selfed(f1));
    Code back = bench.cross(f2, f1);

    assertThat(tree(back))
        .containsExactly(
            back.text(),
            "  seed parent " + f2.text(),
            "    selfed " + f1.text(),
            "      seed parent " + laui.text() + " Echeveria laui KB 12",
            "      pollen parent " + agavoides.text() + " Echeveria agavoides (cf.)",
            "  pollen parent " + f1.text() + " ^");
  }

  @Test
  void whatWasCutOffDeepDownIsOpenedWhereThereIsRoom() {
    Code f2 = bench.seedling(bench.selfed(f1));
    Code back = bench.cross(f2, f1);

    assertThat(tree(TreeQuestion.of(bench.store).withGenerations(2), back))
        .containsExactly(
            back.text(),
            "  seed parent " + f2.text(),
            "    selfed " + f1.text() + " ...",
            "  pollen parent " + f1.text(),
            "    seed parent " + laui.text() + " Echeveria laui KB 12",
            "    pollen parent " + agavoides.text() + " Echeveria agavoides (cf.)");
    assertThatThrownBy(() -> TreeQuestion.of(bench.store).withGenerations(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1 generation or more");
  }

  @Test
  void offsetsDoubledOnesAndJoinedRecordsAreToldApart() {
    Code offset = bench.offset(laui, false);
    Code doubled = bench.offset(laui, true);
    Code again = bench.plant("Echeveria sp.");
    bench.say(new Joined(laui, again, "same label"));

    assertThat(tree(offset).get(1)).startsWith("  offset of " + laui.text());
    assertThat(tree(doubled).get(1)).startsWith("  doubled offset of " + laui.text());
    assertThat(tree(bench.cross(again, agavoides)).subList(1, 3))
        .containsExactly(
            "  seed parent " + again.text(),
            "    the same plant as " + laui.text() + " Echeveria laui KB 12");
  }

  @Test
  void eachWayAPlantMayHaveComeAboutHasItsShare() {
    Code colorata = bench.plant(COLORATA);
    Code open =
        bench
            .pollination(colorata, new Pollen.Open(weighted(laui, 1), Fraction.parse("1/4")))
            .made();

    assertThat(tree(open))
        .containsExactly(
            open.text(),
            "  75 % open pollination: seed parent " + colorata.text() + " " + COLORATA,
            "  75 % open pollination: pollen parent " + laui.text() + " Echeveria laui KB 12",
            "  25 % open pollination: seed parent " + colorata.text() + " " + COLORATA,
            "  25 % open pollination: pollen parent unknown");
  }

  @Test
  void anUnnumberedParentIsNamedByItsPot() {
    Code pot = bench.pot(bench.cross(laui, agavoides));
    Code next = bench.cross(pot, bench.plant(AGAVOIDES));

    assertThat(tree(next).get(1))
        .isEqualTo("  seed parent one of " + pot.text() + " (seed parent of " + next.text() + ")");
  }
}
