package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.SheetQuestion;
import dev.filial.core.answer.SheetQuestion.Sheet;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** What is on a bench sheet: the same words print it and fill it in. */
final class SheetOptions {

  /** What a sheet can be of. */
  enum Kind {
    POTS,
    SOWINGS,
    CROSSES,
    PLANTS,
    SEEDLINGS;

    Item.Kind kind() {
      return switch (this) {
        case POTS -> Item.Kind.GROUP;
        case SOWINGS -> Item.Kind.SOWING;
        case CROSSES -> Item.Kind.CROSS;
        case PLANTS -> Item.Kind.PLANT;
        case SEEDLINGS -> Item.Kind.SEEDLING;
      };
    }
  }

  private final Supplier<List<String>> text;
  private final Supplier<List<Kind>> kinds;
  private final Supplier<Optional<Long>> upTo;

  /** Adds the options. */
  SheetOptions(Words words) {
    text =
        words.arguments(
            "WORD",
            "Only what has each of these words, or pieces of words, in its code, name, taxon,"
                + " parents or place, as in filial list.",
            false,
            Reading.TEXT);
    kinds =
        words.repeatedOption(
            "--kind",
            "WHAT",
            "Only pots, sowings, crosses, plants or seedlings; may be given several times. Otherwise"
                + " pots, sowings without pots, and crosses whose fruit is awaited.",
            Reading.oneOf(Kind.class));
    upTo =
        words.option(
            "--upto",
            "ENTRY",
            "As the sheet was when this was the last entry; it stands at the foot of the sheet.",
            EntryNumber.READING);
  }

  Sheet in(RegisterView view) {
    SheetQuestion question = SheetQuestion.of(view);
    if (!kinds.get().isEmpty()) {
      Set<Item.Kind> only = EnumSet.noneOf(Item.Kind.class);
      kinds.get().forEach(kind -> only.add(kind.kind()));
      question = question.withKinds(only);
    }
    if (upTo.get().isPresent()) {
      question = question.upTo(upTo.get().get());
    }
    String words = words();
    return question.withText(words.isBlank() ? null : words).ask();
  }

  private String words() {
    return String.join(" ", text.get());
  }

  /** How the sheet is typed in again. */
  String filling(Sheet sheet) {
    StringBuilder line = new StringBuilder("filial fill");
    text.get()
        .forEach(word -> line.append(' ').append(dev.filial.cli.frame.CommandLine.quoted(word)));
    kinds
        .get()
        .forEach(
            kind -> line.append(" --kind ").append(kind.name().toLowerCase(java.util.Locale.ROOT)));
    return line.append(" --upto ").append(sheet.upTo()).toString();
  }
}
