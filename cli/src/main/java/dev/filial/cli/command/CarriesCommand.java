package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.LikelyCross;
import dev.filial.core.answer.LikelyGenes;
import dev.filial.core.answer.LikelyGenesQuestion;
import dev.filial.core.answer.NotReckoned;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial carries}. */
public final class CarriesCommand implements BenchCommand {

  /** More genotypes than these are summed up. */
  private static final int MOST_ROWS = 12;

  private final Supplier<List<String>> plants;
  private final WeighingOptions weighing;
  private final Supplier<Optional<Fraction>> sure;
  private final BooleanSupplier why;
  private final OpenRegister register;

  /** Declares its words. */
  public CarriesCommand(Words words) {
    plants =
        words.arguments(
            "PLANT",
            "A plant, or a cross, a lot or a pot, meaning one seedling of it. Of two plants, seed"
                + " parent first, what both carry and what their cross would throw.",
            true,
            Reading.THING);
    weighing = new WeighingOptions(words).withDraws(words);
    sure =
        words.option(
            "--sure",
            "SHARE",
            "Of one plant: how sure a test cross is to make you; 95% if not given.",
            RecordReadings.SHARE);
    why = words.flag("--why", "Say which entries moved the odds, and by how much.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says what a plant most likely carries, by everything that was seen: of itself and its"
                + " offsets, of its parents and theirs, of its seedlings and their seedlings, counted"
                + " or numbered.")
        .describe(
            "Several traits named together are answered together; traits that are not named are"
                + " answered one after the other. A plant that was picked for a trait tells nothing of"
                + " its parents by it, unless its pot was tallied.")
        .example("filial carries 24-001-3 --trait tips")
        .example("filial carries 24-001-1 --trait tips --why")
        .example("filial carries 24-001-3 24-001-2 --trait tips");
  }

  /**
   * The answer of one plant.
   *
   * @param genes trait after trait, or all that were named together
   * @param unanswered traits of which there are no odds, and why
   * @param why whether reasons were asked for
   */
  record Told(List<LikelyGenes> genes, List<String> unanswered, boolean why) implements Answer {
    /** The answers, and what has none. */
    record Answers(List<LikelyGenes> genes, List<String> unanswered) {}

    @Override
    public Object json() {
      return new Answers(genes, unanswered);
    }

    @Override
    public void show(Screen screen) {
      for (int i = 0; i < genes.size(); i++) {
        if (i > 0) {
          screen.blank();
        }
        show(screen, genes.get(i));
      }
      unanswered.forEach(screen::say);
      LikelyGenes first = genes.get(0);
      screen.next(
          "what a cross with it would throw: filial carries "
              + first.plant()
              + " POLLEN_PARENT --trait "
              + CommandLine.quoted(first.traits().get(0)));
    }

    private void show(Screen screen, LikelyGenes one) {
      for (LikelyGenes.Way way : one.ways()) {
        if (way.assuming() != null) {
          screen.say("If " + way.assuming() + ":");
        }
        LikelyGenes.Genes likeliest = way.genotypes().get(0);
        screen.say(
            one.plant()
                + " "
                + LikelyWords.surely(likeliest.chance())
                + " carries "
                + likeliest.genes()
                + (likeliest.chance() < 1
                    ? ": " + LikelyWords.percent(likeliest.chance(), likeliest.error())
                    : "")
                + ", by "
                + way.findings()
                + (way.findings() == 1 ? " entry" : " entries")
                + " on "
                + String.join(" and ", one.traits())
                + ".");
        if (way.genotypes().size() > 1) {
          screen.table(table(way.genotypes()));
        }
        carried(screen, way);
        for (LikelyGenes.OfTrait trait : way.traits()) {
          ofTrait(screen, way, trait);
        }
      }
      if (why) {
        LikelyWords.why(
            screen, one.why(), "the odds of " + one.ways().get(0).genotypes().get(0).genes());
      }
      one.notes().forEach(note -> screen.field("note", note));
    }

    private static Table table(List<LikelyGenes.Genes> genotypes) {
      Table table = new Table().column("genes").numbers("chance");
      double rest = 0;
      for (int i = 0; i < genotypes.size(); i++) {
        LikelyGenes.Genes one = genotypes.get(i);
        if (i < MOST_ROWS) {
          table.row(one.genes(), LikelyWords.percent(one.chance(), one.error()));
        } else {
          rest += one.chance();
        }
      }
      if (genotypes.size() > MOST_ROWS) {
        table.row((genotypes.size() - MOST_ROWS) + " others", LikelyWords.percent(rest));
      }
      return table;
    }

    private static void carried(Screen screen, LikelyGenes.Way way) {
      List<String> parts = new ArrayList<>();
      for (LikelyGenes.Carried allele : way.carried()) {
        parts.add(allele.allele() + " " + LikelyWords.percent(allele.chance()));
      }
      screen.field("has at least one", String.join(", ", parts));
    }

    private static void ofTrait(Screen screen, LikelyGenes.Way way, LikelyGenes.OfTrait trait) {
      String name = way.traits().size() > 1 ? " for " + trait.trait() : "";
      if (trait.breedsTrue() != null) {
        screen.field("breeds true" + name, LikelyWords.percent(trait.breedsTrue()));
      }
      LikelyGenes.Test test = trait.test();
      if (test == null) {
        return;
      }
      screen.field("to settle it" + name, SettlingWords.of(test));
    }
  }

  /**
   * The answer of two plants.
   *
   * @param crosses trait after trait, or all that were named together
   * @param why whether reasons were asked for
   */
  record Crossed(List<LikelyCross> crosses, boolean why) implements Answer {
    @Override
    public Object json() {
      return crosses;
    }

    @Override
    public void show(Screen screen) {
      for (int i = 0; i < crosses.size(); i++) {
        if (i > 0) {
          screen.blank();
        }
        show(screen, crosses.get(i));
      }
    }

    private void show(Screen screen, LikelyCross cross) {
      for (LikelyCross.Way way : cross.ways()) {
        if (way.assuming() != null) {
          screen.say("If " + way.assuming() + ":");
        }
        for (LikelyCross.OfTrait trait : way.traits()) {
          screen.say(
              "A seedling of "
                  + cross.seed()
                  + (cross.seed().equals(cross.pollen()) ? " selfed" : " × " + cross.pollen())
                  + " will show, of "
                  + trait.trait()
                  + ":");
          Table table = new Table().column(trait.trait()).numbers("chance");
          trait
              .shows()
              .forEach(state -> table.row(state.state(), LikelyWords.percent(state.chance())));
          screen.table(table);
        }
        screen.say("Because together they carry:");
        Table table =
            cross.seed().equals(cross.pollen())
                ? new Table().column("selfed").numbers("chance")
                : new Table().column("seed parent").column("pollen parent").numbers("chance");
        way.parents().stream()
            .limit(MOST_ROWS)
            .forEach(
                pair -> {
                  String chance = LikelyWords.percent(pair.chance());
                  if (cross.seed().equals(cross.pollen())) {
                    table.row(pair.seed(), chance);
                  } else {
                    table.row(pair.seed(), pair.pollen(), chance);
                  }
                });
        if (way.parents().size() > MOST_ROWS) {
          screen.table(table).say("… and " + (way.parents().size() - MOST_ROWS) + " less likely.");
        } else {
          screen.table(table);
        }
      }
      if (why) {
        LikelyCross.OfTrait trait = cross.ways().get(0).traits().get(0);
        LikelyWords.why(
            screen,
            cross.why(),
            "the chance of "
                + trait.trait()
                + " "
                + trait.shows().get(trait.shows().size() - 1).state());
      }
      screen.field(
          "note",
          "Seedlings of one cross share its parents' genes: these are the odds of one seedling,"
              + " and a family will be as one of the pairs above.");
      cross.notes().forEach(note -> screen.field("note", note));
    }
  }

  @Override
  public Answer run(Bench bench) {
    if (plants.get().size() > 2) {
      throw Trouble.usage(
          "carries takes one plant, or the two of a cross", "Ask for the others one by one.");
    }
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    List<Code> codes = new ArrayList<>();
    for (String plant : plants.get()) {
      codes.add(Finding.in(view).one(plant).code());
    }
    List<List<String>> sets = weighing.sets(view);
    if (codes.size() == 1) {
      List<LikelyGenes> all = new ArrayList<>();
      List<String> unanswered = new ArrayList<>();
      for (List<String> traits : sets) {
        try {
          all.add(question(view, traits).ask(codes.get(0)));
        } catch (NotReckoned e) {
          // One trait that cannot be answered does not take the others with it.
          unanswered.add("Of " + String.join(" and ", traits) + ": " + e.getMessage() + ".");
          if (unanswered.size() == sets.size()) {
            throw e;
          }
        }
      }
      return new Told(all, unanswered, why.getAsBoolean());
    }
    List<LikelyCross> all = new ArrayList<>();
    for (List<String> traits : sets) {
      all.add(question(view, traits).ask(codes.get(0), codes.get(1)));
    }
    return new Crossed(all, why.getAsBoolean());
  }

  private LikelyGenesQuestion question(RegisterView view, List<String> traits) {
    LikelyGenesQuestion question =
        LikelyGenesQuestion.of(view, traits).weighing(weighing.weighing(view));
    if (sure.get().isPresent()) {
      question = question.settling(sure.get().get().toDouble());
    }
    return why.getAsBoolean() ? question.saysWhy() : question;
  }
}
