package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.DayOption;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Holdings;
import dev.filial.core.answer.MixtureShares;
import dev.filial.core.answer.NextCode;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Item;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.PartialDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial mix}. */
public final class MixCommand implements BenchCommand {

  private record Ingredient(String lot, Optional<Fraction> share) {}

  private static final Reading<Ingredient> INGREDIENT =
      (text, bench) -> {
        int equals = text.lastIndexOf('=');
        return equals < 0
            ? new Ingredient(text, Optional.empty())
            : new Ingredient(
                text.substring(0, equals), Optional.of(Fraction.parse(text.substring(equals + 1))));
      };

  private final Supplier<List<Ingredient>> lots;
  private final Supplier<Optional<String>> place;
  private final Supplier<Optional<String>> code;
  private final DayOption day;
  private final OpenRegister register;

  /** Declares its words. */
  public MixCommand(Words words) {
    lots =
        words.arguments(
            "LOT[=SHARE]",
            "A seed lot that goes in whole, and perhaps the share of the mixture it makes up, as"
                + " \"26-012 H1\"=1/4 or =25%.",
            true,
            INGREDIENT);
    place = words.option("--place", "TEXT", "Where the mixed packet is kept.");
    code =
        words.option("--code", "CODE", "The code of the mixture, if the packet bears one already.");
    day = new DayOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Puts the seed of several lots in one packet. A seedling of it came of any of them, in"
                + " proportion to their shares. Where none is stated they follow from the numbers"
                + " of seeds if all were counted; otherwise the lots count alike.")
        .describe("Split a lot first if only part of it goes in.")
        .example("filial mix \"26-012 H1\" \"26-013 H2\"")
        .example("filial mix \"26-012 H1\"=1/4 \"26-013 H2\"=3/4");
  }

  @Override
  public Answer run(Bench bench) {
    List<Ingredient> given = lots.get();
    long stated = given.stream().filter(one -> one.share().isPresent()).count();
    if (stated != 0 && stated != given.size()) {
      throw Trouble.usage(
          "some lots have a share and some have none",
          "Give each its share, together 1, or none at all.");
    }
    PartialDate date = day.of(bench);
    return register.write(bench, writing -> record(given, stated != 0, date, writing));
  }

  private Answer record(
      List<Ingredient> given, boolean stated, PartialDate date, OpenRegister.Writing writing) {
    Holdings holdings = Holdings.in(writing.view());
    List<Item> items = given.stream().map(one -> holdings.lot(writing.find(one.lot()))).toList();
    MixtureShares assumed = stated ? null : MixtureShares.of(items);
    List<LotsMerged.Part> parts = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      Item lot = items.get(i);
      Fraction share =
          assumed == null ? given.get(i).share().orElseThrow() : assumed.shares().get(i);
      Count taken = lot.count() == null ? Count.unknown() : lot.count();
      parts.add(new LotsMerged.Part(lot.code(), taken, share));
    }
    Code mixture = StatedCode.orWhole(code.get(), NextCode.in(writing.view()).ofYear(date.year()));
    LotsMerged merged = new LotsMerged(mixture, parts, date, place.get().orElse(null), null);
    Recorded recorded =
        Recorded.of(
                writing,
                writing.append(merged),
                mixture,
                "when you sow it: filial sow " + mixture.text() + " COUNT")
            .withTag(writing, mixture.lot(1));
    return assumed == null ? recorded : recorded.withWarning(basis(assumed));
  }

  private static String basis(MixtureShares assumed) {
    return assumed.counted()
        ? "the shares follow from the numbers of seeds counted; state them if the lots went in"
            + " otherwise."
        : "not every lot was counted, so the lots are taken to make up equal shares; state them,"
            + " as LOT=1/4, if you know better.";
  }
}
