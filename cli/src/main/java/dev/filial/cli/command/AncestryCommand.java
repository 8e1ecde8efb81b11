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
import dev.filial.core.answer.LikelyShares;
import dev.filial.core.answer.LikelyShares.Likely;
import dev.filial.core.answer.SpreadQuestion;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial ancestry}. */
public final class AncestryCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<Optional<Level>> by;
  private final BooleanSupplier species;
  private final SpreadOptions spread;
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
    spread = new SpreadOptions(words);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "The share of a species is what its pedigree leads one to expect; beside it stands"
                + " between what shares nine of ten such seedlings lie, since a gamete carries now"
                + " more of one grandparent, now more of the other.")
        .example("filial ancestry 24-007-1")
        .example("filial ancestry 26-013 --spread --less-than 10%");
  }

  /**
   * The answer.
   *
   * @param ancestry who is in the plant
   * @param inFull whether all figures of the spread are told
   * @param drawing whether it is drawn
   */
  record Told(Ancestry ancestry, boolean inFull, boolean drawing) implements Answer {
    @Override
    public Object json() {
      return ancestry;
    }

    @Override
    public void show(Screen screen) {
      screen.say(ancestry.code().text() + ": " + ancestry.generationInWords() + ".");
      screen.table(shares(ancestry));
      if (ancestry.likely() != null) {
        LikelyTold.show(screen, ancestry.likely());
        if (inFull) {
          LikelyTold.figures(screen, ancestry.likely());
        }
        if (drawing) {
          LikelyTold.draw(screen, ancestry.likely());
        }
      }
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

    private static Table shares(Ancestry ancestry) {
      LikelyShares likely =
          ancestry.likely() != null && LikelyTold.varies(ancestry.likely())
              ? ancestry.likely()
              : null;
      Table table = new Table().column("taxon").numbers("share").numbers("");
      if (likely != null) {
        table.column("likely between");
      }
      for (int i = 0; i < ancestry.taxa().size(); i++) {
        TaxonShare one = ancestry.taxa().get(i);
        row(table, one.taxon(), one.share(), likely == null ? null : likely.taxa().get(i));
      }
      if (!ancestry.unknown().isZero()) {
        row(table, "unknown", ancestry.unknown(), likely == null ? null : likely.unknown());
      }
      return table;
    }

    private static void row(Table table, String taxon, Fraction share, @Nullable Likely likely) {
      if (likely == null) {
        table.row(taxon, share, share.toPercent(2));
      } else {
        table.row(taxon, share, share.toPercent(2), LikelyTold.range(likely));
      }
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
    SpreadQuestion wanted = spread.question();
    return register.read(
        bench,
        view ->
            new Told(
                AncestryQuestion.of(view)
                    .withGenerationBy(by.get().orElse(Level.TAXON))
                    .withCountingIntoSpecies(species.getAsBoolean())
                    .withSpread(wanted)
                    .ask(Finding.in(view).one(plant.get()).code()),
                spread.isToldInFull(),
                spread.isDrawn()));
  }
}
