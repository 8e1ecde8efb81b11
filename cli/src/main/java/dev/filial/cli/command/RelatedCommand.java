package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.ancestry.FounderContributions.Contribution;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.Inbred;
import dev.filial.core.answer.KinTable;
import dev.filial.core.answer.KinshipQuestion;
import dev.filial.core.answer.Related;
import dev.filial.core.answer.Related.IfAkin;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** {@code filial related}. */
public final class RelatedCommand implements BenchCommand {

  private final Supplier<List<String>> plants;
  private final OpenRegister register;

  /** Declares its words. */
  public RelatedCommand(Words words) {
    plants =
        words.arguments(
            "PLANT",
            "Two plants or more; of one, how inbred it is. A cross, a lot or a pot stands for one"
                + " seedling of it, named twice for two of them.",
            true,
            Reading.THING);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says how closely plants are related: the coancestry is the chance that an allele drawn"
                + " from one and an allele drawn from the other are copies of one and the same. Of"
                + " plants of two chromosome sets it is how inbred their seedlings would be, 25 % for"
                + " full sibs. Plants whose parents"
                + " nobody recorded are taken as unrelated, seedlings of one packet as full sibs.")
        .example("filial related 22-009-1 24-007-1")
        .example("filial related 22-009-1 22-009-2 24-007-1 24-009-1");
  }

  /**
   * Two plants.
   *
   * @param related how they are related
   */
  record Pair(Related related) implements Answer {
    @Override
    public Object json() {
      return related;
    }

    @Override
    public void show(Screen screen) {
      screen.say(
          related.one()
              + " and "
              + related.other()
              + " are "
              + related.kin()
              + (related.samePlant()
                  ? "."
                  : ": a coancestry of " + ShareWords.text(related.coancestry()) + "."));
      if (!related.through().isEmpty()) {
        screen.field("both descend from", String.join(", ", related.through()));
      }
      if (related.inbreedingOfSeedlings() != null) {
        screen.field(
            "their seedlings",
            (related.samePlant() ? "by selfing, " : "")
                + "inbred by "
                + ShareWords.text(related.inbreedingOfSeedlings())
                + (related.isClose() ? ": a close cross" : ""));
      }
      inbred(screen, related.one(), related.inbreedingOfOne());
      if (!related.other().contains(related.one())) {
        inbred(screen, related.other(), related.inbreedingOfOther());
      }
      for (IfAkin one : related.ifAkin()) {
        screen.field(
            "if " + one.kin().text(),
            "were plants of one field number "
                + one.kin().text()
                + ", a coancestry of "
                + ShareWords.text(one.coancestry()));
      }
      related.notes().forEach(note -> screen.field("note", note));
    }

    private static void inbred(Screen screen, String plant, double inbreeding) {
      if (inbreeding > 0) {
        screen.field(plant + " itself", "inbred by " + ShareWords.text(inbreeding));
      }
    }
  }

  /**
   * One plant.
   *
   * @param inbred how inbred it is
   */
  record One(Inbred inbred) implements Answer {
    @Override
    public Object json() {
      return inbred;
    }

    @Override
    public void show(Screen screen) {
      screen.say(
          inbred.code()
              + (inbred.inbreeding() == 0
                  ? " is not inbred, as far as is recorded."
                  : " is inbred by "
                      + ShareWords.text(inbred.inbreeding())
                      + ": of so many of its loci both alleles are copies of one."));
      screen.table(founders(inbred.founders(), inbred.unknown()));
      inbred.notes().forEach(note -> screen.field("note", note));
    }
  }

  static Table founders(List<Contribution> founders, double unknown) {
    Table table = new Table().column("founder").numbers("share");
    for (Contribution founder : founders) {
      table.row(founder.code(), ShareWords.text(founder.share()));
    }
    if (unknown > 0) {
      table.row("parents nobody knows", ShareWords.text(unknown));
    }
    return table;
  }

  /**
   * Several plants.
   *
   * @param table their coancestries
   */
  record Several(KinTable table) implements Answer {
    @Override
    public Object json() {
      return table;
    }

    @Override
    public void show(Screen screen) {
      screen.say(
          "Coancestries of "
              + table.plants().size()
              + " plants, in %; a plant with itself 50, more if it is inbred. Two different ones"
              + " have "
              + ShareWords.text(table.mean())
              + " on the average.");
      Table shown = new Table().column("");
      for (int i = 0; i < table.plants().size(); i++) {
        shown.numbers(String.valueOf(i + 1));
      }
      for (int i = 0; i < table.plants().size(); i++) {
        List<Object> cells = new ArrayList<>();
        cells.add((i + 1) + " " + table.plants().get(i));
        for (double one : table.coancestry().get(i)) {
          cells.add(ShareWords.bare(one));
        }
        shown.row(cells.toArray());
      }
      screen.table(shown);
      table.notes().forEach(note -> screen.field("note", note));
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    Finding finding = Finding.in(view);
    List<Code> codes = new ArrayList<>();
    for (String plant : plants.get()) {
      codes.add(finding.one(plant).code());
    }
    KinshipQuestion kinship = KinshipQuestion.of(view);
    if (codes.size() == 1) {
      return new One(kinship.of(codes.get(0)));
    }
    if (codes.size() == 2) {
      return new Pair(kinship.between(codes.get(0), codes.get(1)));
    }
    return new Several(kinship.among(codes));
  }
}
