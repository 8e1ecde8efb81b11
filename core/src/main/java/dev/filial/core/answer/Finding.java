package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.CodeException;
import dev.filial.core.name.GrowersMark;
import dev.filial.core.name.Slip;
import dev.filial.core.name.Slips;
import dev.filial.core.name.SmudgedCode;
import dev.filial.core.name.TravellingCode;
import dev.filial.core.name.WrongLetterException;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What somebody means by what they read off a tag or know by name: a code, the grower's mark before
 * it or not, also as a bar code holds it; a plant's own name or the beginning of one; the code it
 * had where it came from; or a smudged code with {@code _} for each character that cannot be read.
 */
public final class Finding {

  /** How many possibilities are named. */
  private static final int NAMED = 8;

  /** How many names of the same beginning are looked at. */
  private static final int LOOKED_AT = 1000;

  private final RegisterView view;

  private Finding(RegisterView view) {
    this.view = view;
  }

  /** Looks things up in {@code view}. */
  public static Finding in(RegisterView view) {
    return new Finding(view);
  }

  /**
   * One thing that a text may mean.
   *
   * @param code its code
   * @param kind what sort of thing it is, in a grower's words
   * @param what what it is: a taxon or its parents
   * @param names its own names
   * @param why how the text leads to it
   */
  public record Match(Code code, String kind, String what, List<String> names, String why) {}

  /**
   * The one thing meant; of a record that was joined with another, the other.
   *
   * @throws RegisterRefusal if nothing is, or several may be; the message names those near it
   */
  public Item one(String text) {
    return Things.required(view, code(text));
  }

  /**
   * The code of the one thing meant, as it was typed even if that record was joined with another.
   *
   * @throws RegisterRefusal if nothing is, or several may be; the message names those near it
   */
  public Code code(String text) {
    String typed = text.strip();
    Optional<Code> coded = existing(typed);
    if (coded.isPresent()) {
      // Before any name: a plant called by an old notebook's code must not hide another's own.
      return coded.get();
    }
    List<Code> called = called(typed);
    if (called.size() == 1) {
      return called.get(0);
    }
    if (typed.contains("_")) {
      List<Match> begun = named(typed);
      return only(text, begun.isEmpty() ? smudged(typed) : begun);
    }
    Code code;
    try {
      code = typedCode(typed);
    } catch (WrongLetterException e) {
      String wrong = String.valueOf(e.getMessage());
      String near = near(typed);
      boolean goesOn = !near.isEmpty() && wrong.endsWith(".");
      throw new RegisterRefusal((goesOn ? wrong.substring(0, wrong.length() - 1) : wrong) + near);
    } catch (CodeException e) {
      List<Match> named = named(typed);
      if (named.isEmpty()) {
        named = byDonorsCode(typed);
      }
      if (named.isEmpty()) {
        throw new RegisterRefusal(
            looksLikeCode(typed)
                ? String.valueOf(e.getMessage())
                : "nothing here is called \""
                    + text
                    + "\"; type a code, or the beginning of a name");
      }
      return only(text, named);
    }
    if (view.item(code).isEmpty()) {
      boolean firstLot = code.isLot() && code.part().number() == 1;
      throw absent(code, firstLot ? code.whole().text() + " has no seed lot yet" : null);
    }
    return code;
  }

  /**
   * All that the text may mean, the likeliest first: for one who holds a tag they cannot quite
   * read, or half remembers a plant. Codes and names come before things of which something else
   * says so: taxon, parents, field number or place, and what was remarked.
   */
  public List<Match> all(String text) {
    String typed = text.strip();
    Map<Code, Match> found = new LinkedHashMap<>();
    boolean certain = false;
    if (typed.contains("_") && looksSmudged(typed)) {
      smudged(typed).forEach(match -> found.putIfAbsent(match.code(), match));
    } else {
      try {
        Optional<Item> item = view.resolved(typedCode(typed));
        item.ifPresent(there -> found.put(there.code(), match(there, "as typed")));
        certain = item.isPresent();
      } catch (CodeException e) {
        certain = false; // not a code as it stands: a name, or a code one slip away
      }
    }
    named(typed).forEach(match -> found.putIfAbsent(match.code(), match));
    if (!certain && looksLikeCode(typed)) {
      slips(typed).forEach(match -> found.putIfAbsent(match.code(), match));
    }
    if (found.isEmpty() && !typed.isEmpty()) {
      byDonorsCode(typed).forEach(match -> found.putIfAbsent(match.code(), match));
      for (ListQuestion.Line line : ListQuestion.of(view).withGone(true).withText(typed).ask()) {
        found.putIfAbsent(
            line.code(),
            new Match(line.code(), line.kind(), line.what(), line.names(), "by words"));
      }
      matches(WrittenOf.in(view).withRemark(typed))
          .forEach(match -> found.putIfAbsent(match.code(), match));
    }
    return List.copyOf(found.values());
  }

  /**
   * Codes and own names that begin so, in either case, for the Tab key: at most {@code most} of
   * each, in order.
   */
  public List<String> beginning(String text, int most) {
    String typed = text.stripLeading();
    List<String> found = new ArrayList<>();
    view.codesBeginning(typed.toUpperCase(Locale.ROOT), most).stream()
        .filter(code -> view.item(code).isPresent())
        .forEach(code -> found.add(code.text()));
    if (!typed.isEmpty()) {
      found.addAll(view.named(typed, most).keySet());
    }
    return List.copyOf(found);
  }

  /** Reads a code, with the mark of this register or without. */
  private Code typedCode(String typed) {
    try {
      return Code.parse(typed);
    } catch (WrongLetterException e) {
      throw e;
    } catch (CodeException plain) {
      Optional<GrowersMark> home = view.opening().map(RegisterOpened::mark).map(GrowersMark::new);
      if (home.isEmpty() || !beginsWithMark(typed, home.get())) {
        throw plain;
      }
      return scanned(typed, home.get())
          .orElseGet(() -> TravellingCode.parse(typed, home.get()).code());
    }
  }

  private static boolean beginsWithMark(String typed, GrowersMark home) {
    int end = home.letters().length();
    // "KB 26-013E", "KB-26-013E" and "KB26013E7", but not a plant called "KB pink".
    return typed.length() > end
        && typed.substring(0, end).equalsIgnoreCase(home.letters())
        && (Character.isDigit(typed.charAt(end)) || " -".indexOf(typed.charAt(end)) >= 0);
  }

  /** What a bar code reader types: mark and code without a gap, a check character at the end. */
  private static Optional<Code> scanned(String typed, GrowersMark home) {
    try {
      TravellingCode code = TravellingCode.parseMachineReadable(typed);
      return code.mark().equals(home) ? Optional.of(code.code()) : Optional.empty();
    } catch (CodeException e) {
      return Optional.empty();
    }
  }

  /** The code typed, if it is one and something has it. */
  private Optional<Code> existing(String typed) {
    if (!looksLikeCode(typed)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Code.parse(typed)).filter(code -> view.item(code).isPresent());
    } catch (CodeException e) {
      return Optional.empty();
    }
  }

  private static boolean looksLikeCode(String typed) {
    return typed.length() > 2
        && Character.isDigit(typed.charAt(0))
        && Character.isDigit(typed.charAt(1));
  }

  private static boolean looksSmudged(String typed) {
    try {
      return SmudgedCode.parse(typed).combinations() >= 1;
    } catch (CodeException e) {
      return false;
    }
  }

  /**
   * What bears exactly that name, in either case, each plant once however often it was recorded.
   */
  private List<Code> called(String typed) {
    Set<Code> codes = new LinkedHashSet<>();
    for (Map.Entry<String, List<Code>> named : view.named(typed, LOOKED_AT).entrySet()) {
      if (named.getKey().strip().equalsIgnoreCase(typed)) {
        codes.addAll(named.getValue());
      }
    }
    Set<Code> plants = new LinkedHashSet<>();
    for (Code code : codes) {
      Optional<Item> item = view.resolved(code);
      if (item.isPresent()) {
        plants.add(item.get().code());
      }
    }
    return List.copyOf(plants);
  }

  private List<Match> named(String typed) {
    List<Match> matches = new ArrayList<>();
    if (typed.isEmpty()) {
      return matches;
    }
    for (Map.Entry<String, List<Code>> name : view.named(typed, LOOKED_AT).entrySet()) {
      for (Code code : name.getValue()) {
        view.resolved(code).ifPresent(item -> matches.add(match(item, "called " + name.getKey())));
      }
    }
    return matches;
  }

  private List<Match> byDonorsCode(String typed) {
    return matches(WrittenOf.in(view).withDonorsCode(typed));
  }

  private List<Match> matches(Map<Code, String> why) {
    List<Match> matches = new ArrayList<>();
    why.forEach(
        (code, words) -> view.resolved(code).ifPresent(item -> matches.add(match(item, words))));
    return matches;
  }

  /**
   * What fits the smudged tag, in order; cost in proportion to the codes of the years it may be.
   */
  private List<Match> smudged(String typed) {
    SmudgedCode tag = SmudgedCode.parse(typed);
    String readable = tag.toString();
    int end = 0;
    while (end < 2 && readable.charAt(end) != '_') {
      end++;
    }
    return view.codesBeginning(readable.substring(0, end), Integer.MAX_VALUE).stream()
        .filter(tag::matches)
        .sorted()
        .flatMap(code -> view.item(code).stream())
        .map(item -> match(item, "fits the smudged tag"))
        .toList();
  }

  private List<Match> slips(String typed) {
    Predicate<Code> registered = code -> view.item(code).isPresent();
    List<Slip> slips;
    try {
      slips = Slips.near(Code.parse(typed), registered);
    } catch (WrongLetterException e) {
      slips = Slips.near(typed, registered);
    } catch (CodeException e) {
      return List.of();
    }
    return slips.stream()
        .map(slip -> match(view.item(slip.code()).orElseThrow(), slip.kind().words()))
        .toList();
  }

  private Match match(Item item, String why) {
    return new Match(item.code(), item.kind().word(), Describing.of(view, item), item.names(), why);
  }

  private Code only(String text, List<Match> matches) {
    List<Code> codes = matches.stream().map(Match::code).distinct().toList();
    if (codes.size() == 1) {
      return codes.get(0);
    }
    if (codes.isEmpty()) {
      throw new RegisterRefusal(
          "nothing in this register fits \"" + text + "\"; look again at what can be read");
    }
    throw new RegisterRefusal(
        "\"" + text + "\" may be " + list(matches) + "; type more of it, or one of these codes");
  }

  private static String list(List<Match> matches) {
    String named =
        matches.stream()
            .limit(NAMED)
            .map(match -> match.code().text() + " (" + match.what() + ")")
            .collect(Collectors.joining(", "));
    return matches.size() > NAMED ? named + " and " + (matches.size() - NAMED) + " more" : named;
  }

  private RegisterRefusal absent(Code code, @Nullable String reason) {
    if (view.taken(code).isPresent()) {
      return new RegisterRefusal(
          code.text() + " was struck with entry " + view.taken(code).orElseThrow().entry());
    }
    if (code.isSeedling() && view.item(code.whole()).isPresent()) {
      long last = view.lastSuffix(code.whole(), Item.Kind.SEEDLING);
      return new RegisterRefusal(
          code.text()
              + " was never given out: "
              + (last == 0
                  ? "no seedling of " + code.whole().text() + " has a number yet"
                  : "the seedlings of " + code.whole().text() + " go up to " + last));
    }
    List<Code> under =
        view.codesUnder(code.whole()).stream().filter(other -> !other.isWhole()).toList();
    boolean alone = under.isEmpty() && !code.isWhole() && view.item(code.whole()).isPresent();
    String also =
        under.isEmpty()
            ? (alone ? "; nothing stands under " + code.whole().text() : "") + near(code.text())
            : "; under it stand "
                + under.stream().limit(NAMED).map(Code::text).collect(Collectors.joining(", "));
    String remedy =
        reason == null && also.isEmpty() ? "; record it first, or look at the tag again" : "";
    return new RegisterRefusal(
        (reason == null ? code.text() + " is not in this register" : reason) + also + remedy);
  }

  private String near(String typed) {
    List<Match> slips = slips(typed);
    return slips.isEmpty() ? "" : "; one slip away: " + list(slips);
  }
}
