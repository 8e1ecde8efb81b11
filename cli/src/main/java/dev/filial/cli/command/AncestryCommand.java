package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.ancestry.Level;
import dev.filial.core.answer.AncestryQuestion;
import dev.filial.core.answer.AncestryQuestion.Ancestry;
import dev.filial.core.answer.AncestryQuestion.Possibility;
import dev.filial.core.answer.AncestryQuestion.TaxonShare;
import dev.filial.core.answer.Finding;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial ancestry}. */
public final class AncestryCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<Optional<Level>> by;
  private final BooleanSupplier species;
  private final OpenRegister register;

  /** Declares its words. */
  public AncestryCommand(Words words) {
    plant =
        words.argument(
            "PLANT",
            "A code or a name; a cross, a seed lot or a pot stands for one seedling of it.",
            Reading.THING);
    by =
        words.option(
            "--generation-by",
            "WHAT",
            "Count the generation over taxon, cultivar, field-number or plant; otherwise over"
                + " taxon.",
            Reading.oneOf(Level.class));
    species = words.flag("--species", "Count subspecies and varieties into their species.");
    register = OpenRegister.toRead(words);
    words.example("filial ancestry 24-007-1");
  }

  /**
   * The answer.
   *
   * @param ancestry who is in the plant
   */
  record Told(Ancestry ancestry) implements Answer {
    @Override
    public Object json() {
      return ancestry;
    }

    @Override
    public void show(Screen screen) {
      screen.say(ancestry.code().text() + ": " + ancestry.generationInWords() + ".");
      screen.table(shares(ancestry.taxa(), ancestry.unknown()));
      if (!ancestry.possibilities().isEmpty()) {
        screen.say("Expected over the ways it may have come about:");
        Table ways = new Table().numbers("share").column("way").column("what it would be");
        for (Possibility one : ancestry.possibilities()) {
          ways.row(one.share().toPercent(1), way(one), sum(one.taxa(), one.unknown()));
        }
        screen.table(ways);
      }
      screen.field("seed-parent line", ancestry.cytoplasm());
      if (ancestry.ancestors() > 0) {
        screen.field("plants behind it", ancestry.ancestors());
      }
      if (ancestry.ploidy() != 2 && ancestry.ploidy() != 0) {
        screen.field("chromosome sets", ancestry.ploidy());
      }
      for (String note : ancestry.notes()) {
        screen.field("note", note);
      }
    }

    private static Table shares(List<TaxonShare> taxa, Fraction unknown) {
      Table table = new Table().column("taxon").numbers("share").numbers("");
      for (TaxonShare one : taxa) {
        table.row(one.taxon(), one.share(), one.share().toPercent(2));
      }
      if (!unknown.isZero()) {
        table.row("unknown", unknown, unknown.toPercent(2));
      }
      return table;
    }

    private static String way(Possibility one) {
      String parents =
          one.copy()
              ? "again " + one.seed()
              : (one.seed() == null ? "?" : one.seed())
                  + " × "
                  + (one.pollen() == null ? "?" : one.pollen());
      return one.route() + ", " + parents;
    }

    private static String sum(List<TaxonShare> taxa, Fraction unknown) {
      StringBuilder text = new StringBuilder();
      for (TaxonShare one : taxa) {
        text.append(text.isEmpty() ? "" : " + ")
            .append(one.share())
            .append(' ')
            .append(one.taxon());
      }
      if (!unknown.isZero()) {
        text.append(text.isEmpty() ? "" : " + ").append(unknown).append(" unknown");
      }
      return text.toString();
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(
        bench,
        view ->
            new Told(
                AncestryQuestion.of(view)
                    .withGenerationBy(by.get().orElse(Level.TAXON))
                    .withCountingIntoSpecies(species.getAsBoolean())
                    .ask(Finding.in(view).one(plant.get()).code())));
  }
}
