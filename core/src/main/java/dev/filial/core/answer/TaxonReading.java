package dev.filial.core.answer;

import dev.filial.core.name.TaxonName;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Taxon;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Reads names of taxa as they are written on labels, knowing those that the register has already:
 * {@code E. laui} is Echeveria laui where Echeveria is the only genus here that begins so, and a
 * new name one letter away from a known one is probably a slip of the pencil.
 *
 * <p>A name that is in use is recognised by looking it up. Only an abbreviation or a new name has
 * the taxa of all acquired plants gathered, which takes time in proportion to their number.
 */
public final class TaxonReading {

  private static final Pattern ABBREVIATED =
      Pattern.compile("([×xX]\\s*)?(\\p{Lu}\\p{Ll}{0,2})\\.\\s*(.+)", Pattern.DOTALL);

  private final RegisterView view;
  private @Nullable Map<String, TaxonName> known;

  private TaxonReading(RegisterView view) {
    this.view = view;
  }

  /** Reads names as {@code view} knows them. */
  public static TaxonReading in(RegisterView view) {
    return new TaxonReading(view);
  }

  /**
   * The name written so, its genus in full.
   *
   * @throws dev.filial.core.name.NameException if it is no name
   * @throws RegisterRefusal if its genus is abbreviated and none, or several, of this register's
   *     can be meant
   */
  public TaxonName read(String written) {
    Matcher abbreviated = ABBREVIATED.matcher(written.strip());
    if (!abbreviated.matches()) {
      return TaxonName.parse(written);
    }
    String initials = abbreviated.group(2);
    boolean hybrid = abbreviated.group(1) != null;
    List<TaxonName> possible = new ArrayList<>();
    for (String genus : generaBeginning(initials, hybrid)) {
      possible.add(TaxonName.parse((hybrid ? "×" : "") + genus + " " + abbreviated.group(3)));
    }
    List<TaxonName> inUse =
        possible.stream().filter(name -> known().containsKey(key(name))).toList();
    List<TaxonName> meant = inUse.isEmpty() ? possible : inUse;
    if (meant.size() == 1) {
      return meant.get(0);
    }
    throw new RegisterRefusal(
        meant.isEmpty()
            ? "no genus in this register begins with " + initials + "; write the genus in full"
            : "\""
                + written.strip()
                + "\" may be "
                + meant.stream().map(TaxonName::text).collect(Collectors.joining(" or "))
                + "; write the genus in full");
  }

  /**
   * A known name that {@code name} is one slip away from: one letter wrong, missing, too many, or
   * two neighbours swapped. Empty when the name is in use itself, or like none.
   */
  public Optional<String> oneSlipFrom(TaxonName name) {
    String key = key(name);
    Subject taxon = new Subject(Subject.Kind.TAXON, key);
    if (view.taxon(key).isPresent() || view.firstMention(taxon).isPresent()) {
      return Optional.empty();
    }
    return known().entrySet().stream()
        .filter(other -> OneSlip.apart(key, other.getKey()))
        .map(other -> other.getValue().withoutAuthors().text())
        .findFirst();
  }

  private Set<String> generaBeginning(String initials, boolean hybrid) {
    return known().values().stream()
        .filter(name -> name.hybridGenus() == hybrid)
        .map(TaxonName::genus)
        .filter(genus -> genus.startsWith(initials))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private Map<String, TaxonName> known() {
    if (known == null) {
      Map<String, TaxonName> names = new LinkedHashMap<>();
      for (Taxon taxon : view.taxa()) {
        add(names, taxon.name());
      }
      for (Item item : view.items(Set.of(Item.Kind.PLANT, Item.Kind.SEED))) {
        Determination said = item.determination();
        if (said.taxon() != null) {
          add(names, said.taxon());
        }
        said.makeup().keySet().forEach(name -> add(names, name));
      }
      known = names;
    }
    return known;
  }

  private static void add(Map<String, TaxonName> names, String written) {
    TaxonName name = TaxonName.parse(written).unqualified();
    names.putIfAbsent(name.key(), name);
  }

  private static String key(TaxonName name) {
    return name.unqualified().key();
  }
}
