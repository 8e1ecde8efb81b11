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
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What somebody means by what they read off a tag or know by name: a code, the grower's mark before
 * it or not, a plant's own name or the beginning of one, or a smudged code with {@code _} for each
 * character that cannot be read.
 */
public final class Finding {

  /** How many possibilities are named. */
  private static final int NAMED = 8;

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
   * The one thing meant.
   *
   * @throws RegisterRefusal if nothing is, or several may be; the message names those near it
   */
  public Item one(String text) {
    String typed = text.strip();
    if (typed.contains("_")) {
      return only(text, smudged(typed));
    }
    Optional<Item> byName = exactName(typed);
    if (byName.isPresent()) {
      return byName.get();
    }
    Code code;
    try {
      code = code(typed);
    } catch (WrongLetterException e) {
      throw new RegisterRefusal(e.getMessage() + near(typed));
    } catch (CodeException e) {
      List<Match> named = named(typed);
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
    Optional<Item> found = view.resolved(code);
    if (found.isEmpty() && code.isLot() && code.part().number() == 1) {
      throw absent(code, code.whole().text() + " has no seed lot yet");
    }
    return found.orElseThrow(() -> absent(code, null));
  }

  /**
   * All that the text may mean, the likeliest first: for one who holds a tag they cannot quite
   * read.
   */
  public List<Match> all(String text) {
    String typed = text.strip();
    if (typed.contains("_")) {
      return smudged(typed);
    }
    Set<Match> found = new LinkedHashSet<>();
    try {
      Code code = code(typed);
      view.resolved(code).ifPresent(item -> found.add(match(item, "as typed")));
    } catch (CodeException e) {
      // Not a code as it stands: a name, or a code one slip away.
      found.addAll(named(typed));
    }
    found.addAll(named(typed));
    if (found.isEmpty() || looksLikeCode(typed)) {
      slips(typed).forEach(found::add);
    }
    return List.copyOf(found);
  }

  /** Reads a code, with the mark of this register or without. */
  private Code code(String typed) {
    try {
      return Code.parse(typed);
    } catch (WrongLetterException e) {
      throw e;
    } catch (CodeException plain) {
      Optional<GrowersMark> home = view.opening().map(RegisterOpened::mark).map(GrowersMark::new);
      String first = typed.split("\\s+", 2)[0];
      if (home.isEmpty() || !first.equalsIgnoreCase(home.get().letters())) {
        throw plain;
      }
      return TravellingCode.parse(typed, home.get()).code();
    }
  }

  private static boolean looksLikeCode(String typed) {
    return typed.length() > 2
        && Character.isDigit(typed.charAt(0))
        && Character.isDigit(typed.charAt(1));
  }

  private Optional<Item> exactName(String typed) {
    Set<Code> codes = new LinkedHashSet<>();
    view.named(typed, NAMED)
        .forEach(
            (name, named) -> {
              if (name.strip().equalsIgnoreCase(typed)) {
                codes.addAll(named);
              }
            });
    return codes.size() == 1 ? view.resolved(codes.iterator().next()) : Optional.empty();
  }

  private List<Match> named(String typed) {
    List<Match> matches = new ArrayList<>();
    if (typed.isEmpty()) {
      return matches;
    }
    for (Map.Entry<String, List<Code>> name : view.named(typed, 10 * NAMED).entrySet()) {
      for (Code code : name.getValue()) {
        view.resolved(code).ifPresent(item -> matches.add(match(item, "called " + name.getKey())));
      }
    }
    return matches;
  }

  private List<Match> smudged(String typed) {
    return SmudgedCode.parse(typed).candidates(code -> view.item(code).isPresent()).stream()
        .map(code -> match(view.item(code).orElseThrow(), "fits the smudged tag"))
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

  private Item only(String text, List<Match> matches) {
    List<Code> codes = matches.stream().map(Match::code).distinct().toList();
    if (codes.size() == 1) {
      return Things.required(view, codes.get(0));
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

  private RegisterRefusal absent(Code code, @org.jspecify.annotations.Nullable String reason) {
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
    List<Code> under = view.codesUnder(code.whole());
    String also =
        under.isEmpty()
            ? near(code.text())
            : "; under it stand "
                + under.stream().limit(NAMED).map(Code::text).collect(Collectors.joining(", "));
    return new RegisterRefusal(
        (reason == null ? code.text() + " is not in this register" : reason) + also);
  }

  private String near(String typed) {
    List<Match> slips = slips(typed);
    return slips.isEmpty() ? "" : "; one slip away: " + list(slips);
  }
}
