package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Counted;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Introduction;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.Moved;
import dev.filial.core.register.Named;
import dev.filial.core.register.Noted;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Observed;
import dev.filial.core.register.Photographed;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.PollenKept;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Potted;
import dev.filial.core.register.Promised;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.SeedKept;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TagLost;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.Tended;
import dev.filial.core.register.Treated;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Things found by what was written of them: the code they had where they came from, and remarks.
 * Neither is kept in order, so the entries that can hold it are read, each time.
 */
final class WrittenOf {

  private static final Set<Class<? extends Statement>> ACQUIRED =
      Set.of(PlantAcquired.class, SeedAcquired.class);

  /** What can be remarked on things that have a code. */
  private static final Set<Class<? extends Statement>> REMARKED =
      Set.of(
          Counted.class,
          FateRecorded.class,
          Flowered.class,
          FruitRecorded.class,
          GenotypeStated.class,
          Harvested.class,
          LotSplit.class,
          LotsMerged.class,
          Moved.class,
          Named.class,
          Noted.class,
          Numbered.class,
          Observed.class,
          Photographed.class,
          PlantAcquired.class,
          PollenKept.class,
          Pollinated.class,
          Potted.class,
          Promised.class,
          Propagated.class,
          SeedAcquired.class,
          SeedKept.class,
          Sown.class,
          TagLost.class,
          Tallied.class,
          Tended.class,
          Treated.class);

  private final RegisterView view;

  private WrittenOf(RegisterView view) {
    this.view = view;
  }

  static WrittenOf in(RegisterView view) {
    return new WrittenOf(view);
  }

  /** What had that code where it came from, in either case; with how it was found. */
  Map<Code, String> withDonorsCode(String code) {
    Map<Code, String> found = new LinkedHashMap<>();
    view.readAll(
        ACQUIRED,
        (statement, entry) -> {
          String theirs = Provenance.of(statement).donorCode();
          if (theirs != null && theirs.strip().equalsIgnoreCase(code.strip())) {
            // A packet before the seed in it, which has a code of its own.
            found.put(Introduction.codes(statement).get(0), "the code it came with");
          }
        });
    return found;
  }

  /** What a remark was written of that holds all of these words, in either case. */
  Map<Code, String> withRemark(String text) {
    List<String> words = List.of(text.strip().toLowerCase(Locale.ROOT).split("\\s+", -1));
    Map<Code, String> found = new LinkedHashMap<>();
    view.readAll(
        REMARKED,
        (statement, entry) -> {
          if (holds(remark(statement), words)) {
            for (Subject subject : statement.subjects()) {
              if (subject.kind() == Subject.Kind.CODE) {
                found.putIfAbsent(Code.parse(subject.key()), "by a remark, entry " + entry);
              }
            }
          }
        });
    return found;
  }

  private static @Nullable String remark(Statement statement) {
    return statement instanceof Noted note ? note.text() : statement.remark();
  }

  private static boolean holds(@Nullable String remark, List<String> words) {
    return remark != null && words.stream().allMatch(remark.toLowerCase(Locale.ROOT)::contains);
  }
}
