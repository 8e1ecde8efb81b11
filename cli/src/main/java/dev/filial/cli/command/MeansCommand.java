package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.FamilyMeansQuestion;
import dev.filial.core.answer.FamilyMeansQuestion.Family;
import dev.filial.core.answer.FamilyMeansQuestion.Means;
import dev.filial.core.answer.FamilyMeansQuestion.Parent;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial means}. */
public final class MeansCommand implements BenchCommand {

  private final Supplier<String> trait;
  private final Supplier<List<String>> what;
  private final Supplier<Optional<Double>> sure;
  private final CsvText.Option csv;
  private final OpenRegister register;

  /** Declares its words. */
  public MeansCommand(Words words) {
    trait = words.argument("TRAIT", "A trait that is scored or measured, as it was declared.");
    what =
        words.arguments(
            "FAMILY",
            "Crosses or packets of seed; otherwise all of which seedlings were measured.",
            false,
            Reading.THING);
    sure =
        words.option(
            "--sure", "SHARE", "How sure the range is to be; 95% if not given.", Certainty.READING);
    csv = new CsvText.Option(words);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says what the numbered seedlings of a family are on the average and how they are spread,"
                + " by what was last scored or measured of each, and how that stands to the mean of"
                + " their parents. Seedlings picked for the trait are left out. What to expect of the"
                + " next family is said by: filial forecast.")
        .example("filial means farina")
        .example("filial means farina 24-007");
  }

  /**
   * The answer.
   *
   * @param found what was found
   * @param csv whether it is written for a spreadsheet
   */
  record Told(Means found, boolean csv) implements CsvOrTable {
    @Override
    public void lay(Screen screen) {
      if (found.families().isEmpty()) {
        screen.say("No seedling of a family was measured for " + found.trait() + ".");
      } else {
        screen.say(
            found.trait()
                + (found.unit() == null ? "" : " in " + found.unit())
                + ", ranges with a certainty of "
                + ChanceWords.certainty(found.certainty())
                + ":");
      }
      Table table =
          new Table()
              .column("family")
              .column("what it is")
              .numbers("of")
              .numbers("mean")
              .numbers("likely between")
              .numbers("deviation")
              .numbers("from")
              .numbers("to");
      for (Family family : found.families()) {
        table.row(
            family.family().text(),
            family.what(),
            family.number(),
            ChanceWords.number(family.mean()),
            range(family.lower(), family.upper()),
            number(family.deviation()),
            ChanceWords.number(family.least()),
            ChanceWords.number(family.most()));
      }
      screen.table(table);
      for (Family family : found.families()) {
        screen.field(family.family().text(), parents(family));
        if (family.unmeasured() > 0) {
          screen.field("", family.unmeasured() + " seedlings not measured");
        }
      }
      RankCommand.notMeasured(screen, found.unmeasured());
      found.notes().forEach(note -> screen.field("note", note));
    }

    private static String parents(Family family) {
      if (family.midParent() == null || family.difference() == null) {
        return "no mean of its parents: " + family.noMidParent();
      }
      StringBuilder told = new StringBuilder("parents' mean ");
      told.append(ChanceWords.number(family.midParent())).append(": ");
      for (int i = 0; i < family.parents().size(); i++) {
        Parent parent = family.parents().get(i);
        told.append(i == 0 ? "" : " and ").append(parent.code().text()).append(' ');
        told.append(number(parent.value()));
        told.append(
            parent.times() == 1 ? " (measured once)" : " (the last of " + parent.times() + ")");
      }
      told.append("; the family is off it by ").append(ChanceWords.number(family.difference()));
      String range = range(family.differenceLower(), family.differenceUpper());
      return told + (range.isEmpty() ? "" : ", likely between " + range);
    }

    private static String number(@Nullable Double value) {
      return value == null ? "" : ChanceWords.number(value);
    }

    private static String range(@Nullable Double lower, @Nullable Double upper) {
      return lower == null || upper == null ? "" : number(lower) + " and " + number(upper);
    }

    @Override
    public String rows() {
      CsvText rows =
          new CsvText()
              .row(
                  "family",
                  "what",
                  "number",
                  "mean",
                  "deviation",
                  "least",
                  "most",
                  "lower",
                  "upper",
                  "parents_mean",
                  "difference",
                  "difference_lower",
                  "difference_upper");
      for (Family family : found.families()) {
        rows.row(
            family.family().text(),
            family.what(),
            family.number(),
            family.mean(),
            family.deviation(),
            family.least(),
            family.most(),
            family.lower(),
            family.upper(),
            family.midParent(),
            family.difference(),
            family.differenceLower(),
            family.differenceUpper());
      }
      return rows.text();
    }
  }

  @Override
  public Answer run(Bench bench) {
    boolean rows = csv.isAsked();
    return register.read(
        bench,
        view ->
            new Told(
                FamilyMeansQuestion.of(view)
                    .withCertainty(sure.get().orElse(Certainty.USUAL))
                    .ask(trait.get(), RankCommand.meant(view, what.get())),
                rows));
  }
}
