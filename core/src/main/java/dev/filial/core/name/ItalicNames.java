package dev.filial.core.name;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which words of a text are set in italics: those of scientific names, whatever sentence they stand
 * in.
 *
 * <p>Names of genera, species and what stands below them are italic, cultivars in their quotes,
 * terms of rank, cf., aff. and sp., hybrid signs and authors are not. That is what books and
 * journals do; the International Code of Nomenclature prints names so and leaves it to editors (its
 * preface, from memory).
 *
 * <p>Only names that are given are looked for, since a text by itself does not tell a genus from
 * any other word that begins a sentence.
 */
public final class ItalicNames {

  /** Of a text without any name. */
  public static final ItalicNames NONE = new ItalicNames(Set.of(), Set.of(), false);

  private static final Pattern QUOTED = Pattern.compile("(?<![\\p{L}\\p{N}])'[^']*'|‘[^’]*’");
  private static final Pattern WORD = Pattern.compile("[\\p{L}][\\p{L}\\p{M}-]*");
  private static final Pattern RANK =
      Pattern.compile("(notho)?(subsp|ssp|var|subvar|f|subf|forma)");
  private static final Pattern DOUBT = Pattern.compile("cf|aff");

  /** What may stand between two words of one name. */
  private static final Pattern WITHIN = Pattern.compile("\\.?[ \u00A0]+(× ?)?");

  private static final char CUT = '…';

  private final Set<String> genera;
  private final Set<String> epithets;
  private final boolean alone;

  private ItalicNames(Set<String> genera, Set<String> epithets, boolean alone) {
    this.genera = Set.copyOf(genera);
    this.epithets = Set.copyOf(epithets);
    this.alone = alone;
  }

  /**
   * A piece of a text.
   *
   * @param text as it stands there
   * @param italic whether it is of a scientific name
   */
  public record Run(String text, boolean italic) {}

  /**
   * Looks for these names.
   *
   * @param names names of taxa, with or without authors, and with or without something behind them,
   *     as a field number; what is no name is passed over
   */
  public static ItalicNames of(Collection<String> names) {
    Set<String> genera = new HashSet<>();
    Set<String> epithets = new HashSet<>();
    for (String name : new HashSet<>(names)) {
      begunBy(name)
          .ifPresent(
              taxon -> {
                genera.add(taxon.genus());
                taxon.epithets().forEach(epithet -> epithets.add(epithet.text()));
              });
    }
    return genera.isEmpty() ? NONE : new ItalicNames(genera, epithets, false);
  }

  /** The same where epithets also stand by themselves, as on a tag: {@code agavoides × laui}. */
  public ItalicNames alsoEpithetsAlone() {
    return new ItalicNames(genera, epithets, true);
  }

  /** The longest beginning of the text that is a name. */
  private static Optional<TaxonName> begunBy(String text) {
    String start = text.strip();
    while (!start.isEmpty() && !Character.isDigit(start.charAt(0))) {
      try {
        return Optional.of(TaxonName.parse(start));
      } catch (NameException e) {
        start = start.substring(0, Math.max(0, start.lastIndexOf(' '))).strip();
      }
    }
    return Optional.empty();
  }

  /** The text in pieces, one after the other; together they are the text. */
  public List<Run> runs(String text) {
    if (genera.isEmpty() || text.isEmpty()) {
      return text.isEmpty() ? List.of() : List.of(new Run(text, false));
    }
    boolean[] italic = new boolean[text.length()];
    int from = 0;
    Matcher quoted = QUOTED.matcher(text);
    while (quoted.find()) {
      mark(text, from, quoted.start(), italic);
      from = quoted.end();
    }
    mark(text, from, text.length(), italic);
    return cut(text, italic);
  }

  private static List<Run> cut(String text, boolean[] italic) {
    List<Run> runs = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= text.length(); i++) {
      if (i == text.length() || italic[i] != italic[start]) {
        runs.add(new Run(text.substring(start, i), italic[start]));
        start = i;
      }
    }
    return runs;
  }

  /** Goes through the words of a part that holds no quotes. */
  private void mark(String text, int from, int to, boolean[] italic) {
    Matcher word = WORD.matcher(text).region(from, to);
    int last = -1;
    boolean within = false;
    while (word.find()) {
      String here = word.group();
      int end = isInitial(text, word) ? word.end() + 1 : word.end();
      boolean joined = last >= 0 && WITHIN.matcher(text.substring(last, word.start())).matches();
      within = within && joined;
      if (isGenus(text, word, to) || (isEpithet(text, word) && (within || alone))) {
        boolean plain = joined && isBlank(text, last, word.start());
        for (int i = plain && italic[last - 1] ? last : word.start(); i < end; i++) {
          italic[i] = true;
        }
        within = true;
      } else if (RANK.matcher(here).matches()) {
        within = isStopped(text, word) || here.equals("forma");
      } else if (!DOUBT.matcher(here).matches()) {
        within = false;
      }
      last = end;
    }
  }

  private static boolean isBlank(String text, int from, int to) {
    return text.substring(from, to).isBlank();
  }

  private static boolean isStopped(String text, Matcher word) {
    return word.end() < text.length() && text.charAt(word.end()) == '.';
  }

  private boolean isGenus(String text, Matcher word, int to) {
    if (genera.contains(word.group())) {
      return true;
    }
    if (!isInitial(text, word)) {
      return false;
    }
    // An author may have the same initial: only what an epithet follows is a genus.
    Matcher next = WORD.matcher(text).region(word.end(), to);
    while (next.find()) {
      if (epithets.contains(next.group())) {
        return true;
      }
      if (!DOUBT.matcher(next.group()).matches()) {
        return false;
      }
    }
    return false;
  }

  private boolean isInitial(String text, Matcher word) {
    return word.group().codePointCount(0, word.group().length()) == 1
        && isStopped(text, word)
        && genera.stream().anyMatch(genus -> genus.startsWith(word.group()));
  }

  private boolean isEpithet(String text, Matcher word) {
    return epithets.contains(word.group())
        || (word.end() < text.length()
            && text.charAt(word.end()) == CUT
            && epithets.stream().anyMatch(epithet -> epithet.startsWith(word.group())));
  }
}
