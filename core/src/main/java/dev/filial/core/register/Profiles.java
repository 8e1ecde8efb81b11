package dev.filial.core.register;

import dev.filial.core.number.Fraction;
import dev.filial.core.register.ProfileStated.Pairing;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Puts together what was stated of one taxon in several entries and under several names. */
final class Profiles {

  private final Map<String, Map<String, Fraction>> frequencies = new LinkedHashMap<>();
  private @Nullable Pairing pairing;
  private @Nullable Fraction doubleReduction;
  private List<BigDecimal> chromosomes = List.of();
  private @Nullable String remark;

  private Profiles() {}

  static Optional<ProfileStated> of(RegisterView view, String name) {
    Taxon accepted = view.accepted(name);
    TreeSet<Long> entries = new TreeSet<>();
    for (String key : NameChains.keys(view, accepted.key())) {
      // A name that was moved on since is listed still, and read as another now.
      String read = view.taxon(key).map(taxon -> view.accepted(taxon.name()).key()).orElse(key);
      if (read.equals(accepted.key())) {
        entries.addAll(view.entriesOn(new Subject(Subject.Kind.TAXON, key)));
      }
    }
    Profiles merged = new Profiles();
    boolean any = false;
    for (long entry : entries) {
      if (view.effective(entry).orElse(null) instanceof ProfileStated profile) {
        merged.add(profile);
        any = true;
      }
    }
    return any ? Optional.of(merged.under(accepted.name())) : Optional.empty();
  }

  private void add(ProfileStated later) {
    later.frequencies().forEach((locus, alleles) -> frequencies.put(locus.strip(), alleles));
    if (later.pairing() != null) {
      pairing = later.pairing();
      doubleReduction = later.doubleReduction();
    }
    if (!later.chromosomes().isEmpty()) {
      chromosomes = later.chromosomes();
    }
    remark = later.remark() == null ? remark : later.remark();
  }

  private ProfileStated under(String name) {
    return new ProfileStated(name, frequencies, pairing, doubleReduction, chromosomes, remark);
  }
}
