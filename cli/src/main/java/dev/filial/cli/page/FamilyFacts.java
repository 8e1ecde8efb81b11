package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.FamilyQuestion.Family;
import dev.filial.core.answer.FamilyQuestion.Fruit;
import dev.filial.core.answer.FamilyQuestion.Lot;
import dev.filial.core.answer.FamilyQuestion.Pollination;
import dev.filial.core.answer.FamilyQuestion.Pot;
import dev.filial.core.answer.FamilyQuestion.Sowing;
import dev.filial.core.answer.PlantsBehindQuestion.Parent;
import dev.filial.core.answer.PlantsBehindQuestion.Plant;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Provenance;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a page that tell what a family is: its parents, how it was made, how its flowers
 * fared; and of its seed, sowings and pots what there was and what is left.
 */
final class FamilyFacts {

  private final PageWriter page;
  private final Markup html;
  private final Family family;
  private final PlantsBehind behind;

  FamilyFacts(PageWriter page, Family family, PlantsBehind behind) {
    this.page = page;
    this.html = page.html();
    this.family = family;
    this.behind = behind;
  }

  // --- what it is ---

  /**
   * Writes what it is.
   *
   * @param cytoplasm its seed-parent line, in words
   * @param sets its chromosome sets; 0 where they differ
   */
  void writeWhat(String cytoplasm, int sets) {
    page.section("what", "What it is");
    List<Parent> parents =
        behind.parents().stream().filter(one -> one.offspring().equals(behind.name())).toList();
    if (!parents.isEmpty()) {
      parents(parents);
    }
    html.open("dl");
    page.fact("taxon or parents", parents.isEmpty() ? family.what() : null);
    page.fact("seed-parent line", cytoplasm.replace("<-", "←"));
    page.fact(
        "chromosome sets",
        sets == 0 ? "differ between the ways it may have come about" : "" + sets);
    page.fact(family.pollination() == null ? "since" : "pollinated", family.since());
    Pollination made = family.pollination();
    if (made != null) {
      page.fact("flowers tried", made.flowers() == null ? "not counted" : made.flowers());
      page.fact("protection", made.protection());
      page.fact("pollen", made.stored() ? "out of store" : null);
      page.fact("where", made.place());
      page.fact("remark", made.remark());
    }
    fruit(family.fruit());
    Provenance from = family.provenance();
    if (from != null) {
      page.fact("from", from.donor());
      page.fact("its code there", from.donorCode());
      page.fact("field number", from.fieldNumber());
      page.fact("locality", from.locality());
    }
    page.fact(
        "written by",
        family.by() + (family.guess() == null ? "" : ", as a guess of " + family.guess()));
    html.close().line();
    if (!family.doubts().isEmpty()) {
      html.element("h3", "Doubts").open("ul");
      family.doubts().forEach(page::item);
      html.close().line();
    }
    page.endSection();
  }

  private void parents(List<Parent> parents) {
    page.table(
        "what",
        parents.stream().allMatch(Parent::isCertain)
            ? List.of(Column.words("parent"), Column.words("plant"), Column.words("what it is"))
            : List.of(
                Column.words("parent"),
                Column.words("plant"),
                Column.words("what it is"),
                Column.numbers("of the seed"),
                Column.words("way")));
    for (Parent parent : parents) {
      html.open("tr")
          .element("th", parent.role().text().replace(' ', '\u00A0'), "scope", "row")
          .open("td");
      if (parent.parent() == null) {
        html.text("nobody knows which");
      } else {
        page.code(parent.parent());
      }
      html.close().open("td");
      plant(parent.parent());
      html.close();
      if (!parents.stream().allMatch(Parent::isCertain)) {
        html.element("td", parent.share().toPercent(1).replace(" %", "\u00A0%"), "class", "number")
            .element("td", String.join(", ", parent.ways()));
      }
      html.close().line();
    }
    page.endTable();
  }

  private void plant(@Nullable String name) {
    for (Plant plant : behind.plants()) {
      if (plant.name().equals(name)) {
        plant.names().forEach(own -> html.element("bdi", own).text(" "));
        page.words(
            (plant.names().isEmpty() ? "" : "· ")
                + (plant.what().isEmpty() ? plant.generationInWords() : plant.what()));
      }
    }
  }

  private void fruit(@Nullable Fruit fruit) {
    if (fruit != null) {
      page.fact("set fruit", fruit.set());
      page.fact("failed", fruit.failed());
      page.fact("dropped unripe", fruit.aborted());
      page.fact("eaten", fruit.eaten());
    }
  }

  // --- its seed, sowings and pots ---

  /** Writes what there was and is of it. */
  void writeSeed() {
    page.section("seed", "Its seed, sowings and pots");
    if (family.lots().isEmpty() && family.sowings().isEmpty() && family.pots().isEmpty()) {
      html.element("p", "Nothing recorded.").line();
    }
    if (!family.lots().isEmpty()) {
      html.element("h3", "Seed lots", "id", "lots").line();
      page.table(
          "lots",
          List.of(
              Column.words("lot"),
              Column.words("how"),
              Column.words("day"),
              Column.numbers("fruits"),
              Column.numbers("seeds"),
              Column.numbers("left"),
              Column.words("state"),
              Column.words("where")));
      family.lots().forEach(this::lot);
      page.endTable();
    }
    if (!family.sowings().isEmpty()) {
      html.element("h3", "Sowings", "id", "sowings").line();
      boolean treated = family.sowings().stream().anyMatch(one -> !one.treatments().isEmpty());
      List<Column> columns =
          new ArrayList<>(
              List.of(
                  Column.words("sowing"),
                  Column.words("day"),
                  Column.words("of lot"),
                  Column.numbers("seeds"),
                  Column.words("on")));
      if (treated) {
        columns.add(Column.words("treated"));
      }
      columns.add(Column.words("into"));
      page.table("sowings", columns);
      family.sowings().forEach(one -> sowing(one, treated));
      page.endTable();
    }
    if (!family.pots().isEmpty()) {
      html.element("h3", "Pots", "id", "pots").line();
      page.table(
          "pots",
          List.of(
              Column.words("pot"),
              Column.words("since"),
              Column.numbers("stand in it"),
              Column.words("state"),
              Column.words("where")));
      family.pots().forEach(this::pot);
      page.endTable();
    }
    page.endSection();
  }

  private void head(Code code) {
    html.open("tr").open("th", "scope", "row");
    page.code(code.text());
    html.close();
  }

  private void lot(Lot lot) {
    head(lot.code());
    page.cell(lot.how());
    day(lot.date());
    page.number(lot.fruits());
    page.number(lot.seeds());
    page.number(counted(lot.left()));
    page.cell(lot.fate());
    page.cell(lot.place());
    html.close().line();
  }

  private void sowing(Sowing sowing, boolean treated) {
    head(sowing.code());
    day(sowing.date());
    html.element("td", suffix(sowing.lot()), "class", "day");
    page.number(sowing.seeds());
    page.cell(sowing.medium());
    if (treated) {
      page.cell(String.join(", ", sowing.treatments()));
    }
    page.cell(sowing.pots().stream().map(FamilyFacts::suffix).collect(Collectors.joining(", ")));
    html.close().line();
  }

  private void pot(Pot pot) {
    head(pot.code());
    day(pot.since());
    page.number(counted(pot.left()));
    page.cell(pot.fate());
    page.cell(pot.place());
    html.close().line();
  }

  /** What stands behind the code of the family, which the page is about. */
  static String suffix(Code code) {
    return code.text().substring(code.whole().text().length()).strip();
  }

  private void day(@Nullable Object date) {
    html.element("td", date == null ? "not known" : date.toString(), "class", "day");
  }

  private static String counted(@Nullable Count count) {
    return count == null || count.equals(Count.unknown()) ? "not counted" : count.toString();
  }
}
