package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Task;
import dev.filial.core.answer.WorkQuestion;
import dev.filial.core.answer.WorkQuestion.Report;
import dev.filial.core.name.Code;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial due}. */
public final class DueCommand implements BenchCommand {

  /** As many as fit on a page; what is written under --json has all. */
  private static final int NAMED = 24;

  private final Supplier<Optional<LocalDate>> day;
  private final Supplier<Optional<Integer>> within;
  private final BooleanSupplier all;
  private final OpenRegister register;

  /** Declares its words. */
  public DueCommand(Words words) {
    day = words.option("--on", "DAY", "Another day than today, as tomorrow or 4 mar.", Reading.DAY);
    within =
        words.option(
            "--within", "DAYS", "Also what will be due within so many days.", Reading.WHOLE_NUMBER);
    all =
        words.flag(
            "--all",
            "Also what was due so long ago that it was given up, or never written down: counts for"
                + " over 8 weeks, bags, treatments and fruit for over a year.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "The work list of a day: closed sowings to open or look into, sowings to count or of"
                + " which nothing came up, treatments to repeat, fruit that should be ripe,"
                + " promises, seed and pollen that get old, tags that fade. After how many days"
                + " each is due is said with: filial interval")
        .example("filial due")
        .example("filial due --within 14");
  }

  @Override
  public Answer run(Bench bench) {
    LocalDate asked = day.get().orElseGet(bench::today);
    return register.read(
        bench,
        view ->
            told(
                WorkQuestion.of(view, asked)
                    .withDaysAhead(within.get().orElse(0))
                    .withLongOverdue(all.getAsBoolean())
                    .ask()));
  }

  private static Answer told(Report report) {
    return Answer.of(report, screen -> show(screen, report));
  }

  private static String codes(List<Code> codes) {
    List<Code> named = codes.subList(0, Math.min(NAMED, codes.size()));
    int more = codes.size() - named.size();
    return CodeList.text(named) + (more == 0 ? "" : " and " + more + " more");
  }

  private static void show(Screen screen, Report report) {
    String by = report.until().equals(report.day()) ? "on " + report.day() : "by " + report.until();
    if (report.tasks().isEmpty()) {
      screen.say("Nothing is due " + by + ".");
    } else {
      int tasks = report.tasks().size();
      screen.say(tasks + (tasks == 1 ? " thing is due " : " things are due ") + by + ":");
      Table table =
          new Table().column("what").column("with").column("since").column("where").column("why");
      for (Task task : report.tasks()) {
        table.row(
            task.work().words(),
            codes(task.codes()),
            task.due(),
            task.place() == null ? "" : task.place(),
            task.why());
      }
      screen.table(table);
    }
    if (report.longOverdue() > 0) {
      screen.field(
          "note",
          "what was due for "
              + report.longOverdue()
              + " more was due so long ago that it is left out: filial due --all shows it");
    }
  }
}
