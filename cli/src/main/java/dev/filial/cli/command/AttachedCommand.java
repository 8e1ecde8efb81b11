package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.ancestry.DonorSegment;
import dev.filial.core.answer.Attached;
import dev.filial.core.answer.Attached.Goal;
import dev.filial.core.answer.Attached.Piece;
import dev.filial.core.answer.AttachedQuestion;
import dev.filial.core.answer.Finding;
import dev.filial.core.number.Decimal;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code filial attached}. */
public final class AttachedCommand implements BenchCommand {

  private static final Pattern BACKCROSSES = Pattern.compile("(?:[Bb][Cc]\\s*)?(\\d{1,9})");

  private final Supplier<String> what;
  private final Supplier<Optional<BigDecimal>> left;
  private final Supplier<Optional<BigDecimal>> right;
  private final Supplier<Optional<Fraction>> chance;
  private final Supplier<Optional<BigDecimal>> atMost;
  private final OpenRegister register;

  /** Declares its words. */
  public AttachedCommand(Words words) {
    what =
        words.argument(
            "BACKCROSSES",
            "How many backcrosses the gene was held through, as 6 or BC6; or a plant, a cross or a"
                + " pot, whose pedigree says it.",
            Reading.THING);
    left =
        words.option(
            "--left",
            "CM",
            "How far the gene is from one end of its chromosome, in centimorgans; with --right. If"
                + " neither is given, it lies in the middle of a chromosome of middling length.",
            RecordReadings.NUMBER);
    right =
        words.option("--right", "CM", "How far it is from the other end.", RecordReadings.NUMBER);
    chance =
        words.option(
            "--chance",
            "SHARE",
            "How likely the piece lies within the range shown; 90% if not given.",
            RecordReadings.SHARE);
    atMost =
        words.option(
            "--at-most",
            "CM",
            "Say also how many backcrosses it takes to a piece of at most so many centimorgans.",
            RecordReadings.NUMBER);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "You cross back to the recurrent parent and keep, each time, a seedling with the gene"
                + " you want of the donor. A piece of the donor's chromosome comes along with it."
                + " This says how long that piece still is, and how many backcrosses make it short.")
        .describe(
            "Crossovers are taken to fall independently (Haldane). How long the chromosomes of a"
                + " genus are is stated with: filial profile GENUS --map 27x100")
        .example("filial attached 6 --left 50 --right 50 --at-most 20")
        .example("filial attached 26-013-1 --left 20 --right 80");
  }

  /**
   * The answer.
   *
   * @param attached what was found
   */
  record Told(Attached attached) implements Answer {
    @Override
    public Object json() {
      return attached;
    }

    @Override
    public void show(Screen screen) {
      screen.say(sentence());
      if (attached.goal() != null) {
        screen.say(sentence(attached.goal()));
      }
      Piece last = attached.last();
      if (attached.backcrosses() > 0) {
        screen.table(table());
      }
      if (attached.plant() != null && attached.generation() != null) {
        screen.field(attached.plant().text(), attached.generation());
      }
      screen.field(
          "chromosome",
          centimorgans(attached.left() + attached.right())
              + ", the gene "
              + centimorgans(attached.left())
              + " from one end and "
              + centimorgans(attached.right())
              + " from the other");
      if (attached.backcrosses() > 0) {
        screen.field(
            "loose elsewhere",
            centimorgans(last.elsewhere())
                + " more of the donor on the same chromosome, on the average");
      }
      attached.notes().forEach(note -> screen.field("note", note));
    }

    private Table table() {
      Table table =
          new Table()
              .numbers("backcrosses")
              .numbers("on average")
              .numbers(ChanceWords.certainty(attached.chance()) + " between")
              .numbers("still whole");
      for (Piece piece : attached.pieces()) {
        table.row(
            piece.backcrosses(),
            centimorgans(piece.mean()),
            number(piece.least()) + " and " + centimorgans(piece.most()),
            percent(piece.whole()));
      }
      return table;
    }

    private String sentence() {
      Piece last = attached.last();
      String where = attached.plant() == null ? "" : "In " + attached.plant().text() + ", ";
      if (attached.backcrosses() == 0) {
        return (where.isEmpty() ? "In an F1" : where + "an F1,")
            + " the whole chromosome that the gene came on is still the donor's: "
            + centimorgans(last.mean())
            + ".";
      }
      return (where.isEmpty() ? "After " : where + "after ")
          + times(attached.backcrosses())
          + ", a piece of about "
          + centimorgans(last.mean())
          + " of the donor still hangs on around the gene, likely between "
          + number(last.least())
          + " and "
          + centimorgans(last.most())
          + ".";
    }

    private String sentence(Goal goal) {
      String length = "at most " + centimorgans(goal.length());
      if (goal.onAverage() == null) {
        return "To a piece of "
            + length
            + " it takes more than "
            + times(DonorSegment.MOST_BACKCROSSES)
            + "; look for a seedling that is crossed over close to the gene.";
      }
      return "To a piece of "
          + length
          + " it takes "
          + times(goal.onAverage())
          + " on the average, and "
          + (goal.surely() == null
              ? "more than " + times(DonorSegment.MOST_BACKCROSSES)
              : times(goal.surely()))
          + " to be "
          + ChanceWords.certainty(attached.chance())
          + " sure of it.";
    }

    private static String times(int backcrosses) {
      return backcrosses + (backcrosses == 1 ? " backcross" : " backcrosses");
    }

    private static String centimorgans(double length) {
      return number(length) + " cM";
    }

    /** Two digits or the whole number: nobody measures a map closer. */
    private static String number(double length) {
      BigDecimal exact = new BigDecimal(length);
      BigDecimal rounded =
          length >= 10
              ? exact.setScale(0, RoundingMode.HALF_UP)
              : exact.round(new MathContext(2, RoundingMode.HALF_UP));
      return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String percent(double chance) {
      if (chance > 0 && chance < 0.001) {
        return "below 0.1 %";
      }
      return Decimal.percent(chance, 1);
    }
  }

  @Override
  public Answer run(Bench bench) {
    AttachedQuestion question = question();
    Matcher number = BACKCROSSES.matcher(what.get());
    if (number.matches()) {
      return new Told(question.ask(Integer.parseInt(number.group(1))));
    }
    return register.read(
        bench, view -> new Told(question.ask(view, Finding.in(view).one(what.get()).code())));
  }

  private AttachedQuestion question() {
    if (left.get().isPresent() != right.get().isPresent()) {
      throw Trouble.usage(
          "--left and --right go together",
          "Give "
              + (left.get().isPresent() ? "--right" : "--left")
              + " too, as 0 if the gene lies at that end, or leave both out.");
    }
    AttachedQuestion question = AttachedQuestion.aboutAnyGene();
    if (left.get().isPresent() && right.get().isPresent()) {
      question =
          question.withGeneAt(left.get().get().doubleValue(), right.get().get().doubleValue());
    }
    if (chance.get().isPresent()) {
      question = question.withChance(chance.get().get().toDouble());
    }
    if (atMost.get().isPresent()) {
      question = question.withGoal(atMost.get().get().doubleValue());
    }
    return question;
  }
}
