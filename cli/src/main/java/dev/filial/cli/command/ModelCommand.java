package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.TableReading;
import dev.filial.core.heredity.Interaction;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.ModelDeclared;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** {@code filial model}. */
public final class ModelCommand implements BenchCommand {

  /** A state that shows only so often, and what shows else; null for the only other state. */
  private record Showing(String state, Fraction share, @Nullable String otherwise) {

    static Showing read(String text, Bench bench) {
      int equals = text.indexOf('=');
      int comma = text.indexOf(',', Math.max(0, equals));
      String share = text.substring(equals + 1, comma < 0 ? text.length() : comma);
      if (equals < 1 || (comma >= 0 && text.substring(comma + 1).isBlank())) {
        throw new IllegalArgumentException(
            "\"" + text + "\" does not say how often which state shows; write red=80%,plain");
      }
      return new Showing(
          text.substring(0, equals).strip(),
          RecordReadings.SHARE.read(share.strip(), bench),
          comma < 0 ? null : text.substring(comma + 1).strip());
    }
  }

  private static final Reading<Interaction> RATIO =
      new Reading<>() {
        @Override
        public Interaction read(String text, Bench bench) {
          return Interaction.ofRatio(text)
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "\"" + text + "\" is none of " + String.join(", ", candidates())));
        }

        @Override
        public List<String> candidates() {
          return Arrays.stream(Interaction.values()).map(Interaction::ratio).toList();
        }
      };

  private final Supplier<String> trait;
  private final Supplier<List<ModelDeclared.Row>> rows;
  private final Supplier<Optional<String>> dominant;
  private final Supplier<Optional<String>> intermediate;
  private final Supplier<Optional<Interaction>> ratio;
  private final GeneNames genes;
  private final Supplier<Optional<String>> states;
  private final Supplier<List<String>> lethal;
  private final Supplier<List<Showing>> shows;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public ModelCommand(Words words) {
    trait = words.argument("TRAIT", "A trait with states, declared with: filial trait.");
    rows =
        words.arguments(
            "GENES=STATE",
            "What plants that carry these genes show, or GENES=dies. The first row that a plant fits"
                + " holds; the last may be \"*=STATE\", for all others.",
            false,
            TableRow.READING);
    dominant =
        words.option(
            "--dominant",
            "GENE",
            "In short: what shows is the state of the most dominant allele a plant carries, the"
                + " states being in the order of the alleles.",
            RecordReadings.LINE);
    intermediate =
        words.option(
            "--intermediate",
            "GENE",
            "In short: three states, of the first allele alone, of both, of the second alone.",
            RecordReadings.LINE);
    ratio =
        words.option(
            "--ratio",
            "RATIO",
            "In short: two genes that throw this ratio in the F2, with --genes. "
                + Arrays.stream(Interaction.values())
                    .map(interaction -> interaction.ratio() + " " + interaction.words())
                    .collect(Collectors.joining("; "))
                + ".",
            RATIO);
    genes =
        new GeneNames(
            words,
            "The genes that are meant. In rows they are found by the letters of their alleles, and"
                + " need naming only where two genes have the same letter.");
    states =
        words.option(
            "--states",
            "A,B,...",
            "The states in the order of the alleles or of the ratio, where the trait has them in"
                + " another.",
            RecordReadings.LINE);
    lethal =
        words.repeatedOption(
            "--lethal",
            "GENES",
            "Plants that carry these die young; may be repeated.",
            RecordReadings.LINE);
    shows =
        words.repeatedOption(
            "--shows",
            "STATE=SHARE,OTHER",
            "A state that does not always show: red=80%,plain is red in 80 of 100 that should be,"
                + " and plain else. Of a trait with two states OTHER may be left out.",
            Showing::read);
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Says how a trait is inherited: what plants show by what they carry. R_ stands for"
                + " plants with one R at least, rr for those with nothing but r, \"R_ ww\" for both"
                + " at once. A row may say how often each state shows: R_=red:80%,plain.")
        .describe(
            "The genes are declared first, with: filial gene. A trait has one model; one that was"
                + " wrong is put right with: filial amend.")
        .example("filial model flowers P_=pink \"*=orange\"")
        .example("filial model flowers --dominant flower --shows pink=90%");
  }

  @Override
  public Answer run(Bench bench) {
    long ways =
        Stream.of(
                !rows.get().isEmpty(),
                dominant.get().isPresent(),
                intermediate.get().isPresent(),
                ratio.get().isPresent())
            .filter(given -> given)
            .count();
    if (ways != 1) {
      throw Trouble.usage(
          ways == 0
              ? "what do plants show?"
              : "rows, --dominant, --intermediate and --ratio say the same thing in different ways",
          "Give rows as \"R_=red\" \"*=green\", or one of --dominant, --intermediate, --ratio.");
    }
    return register.write(bench, this::record);
  }

  private Answer record(Writing writing) {
    List<LocusDeclared> named = genes.in(writing.view());
    TableReading reading =
        TableReading.of(writing.view(), trait.get())
            .withGenes(named.stream().map(LocusDeclared::locus).toList())
            .withDying(lethal.get());
    if (states.get().isPresent()) {
      reading = reading.withStates(GeneNames.parts(states.get().get()));
    }
    TraitModel model = table(reading, named, writing);
    for (Showing one : shows.get()) {
      model = withShowing(model, reading, one);
    }
    String first = model.loci().stream().findFirst().map(ModelCommand::example).orElse("GENES");
    return Recorded.of(
        writing,
        writing.append(ModelDeclared.of(model, remark.get().orElse(null))),
        null,
        "say what a plant carries, if you know: filial genotype PLANT " + first);
  }

  private TraitModel table(TableReading reading, List<LocusDeclared> named, Writing writing) {
    if (ratio.get().isPresent()) {
      if (named.size() != 2) {
        throw Trouble.usage(
            "which two genes throw " + ratio.get().get().ratio() + "?", "Name them: --genes A,B");
      }
      return reading.interaction(ratio.get().get(), named.get(0), named.get(1));
    }
    if (dominant.get().isPresent()) {
      return reading.dominant(GeneNames.required(writing.view(), dominant.get().get()));
    }
    return intermediate.get().isPresent()
        ? reading.intermediate(GeneNames.required(writing.view(), intermediate.get().get()))
        : reading.rows(rows.get());
  }

  private static TraitModel withShowing(TraitModel model, TableReading reading, Showing one) {
    String state = reading.state(one.state());
    List<String> others =
        reading.trait().states().stream().filter(other -> !other.equals(state)).toList();
    if (one.otherwise() == null && others.size() != 1) {
      throw Trouble.usage(
          "what shows where " + state + " does not?",
          "Say it after a comma: --shows " + state + "=" + one.share() + ",STATE");
    }
    return model.withPenetrance(
        state,
        one.share(),
        one.otherwise() == null ? others.get(0) : reading.state(one.otherwise()));
  }

  /** What a plant with two different alleles is written as. */
  private static String example(Locus locus) {
    String one = locus.alleles().get(0);
    String other = locus.alleles().get(1);
    return locus.isCytoplasmic()
        ? one
        : one.length() + other.length() == 2 ? one + other : one + "/" + other;
  }
}
