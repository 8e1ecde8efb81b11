package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Seedling;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A pedigree in which founders that are likely kin are: the seedlings of one acquired packet are
 * full sibs, by two parents nobody saw; plants acquired apart under one field number, or under
 * numbers of one population, are what is asked for.
 *
 * @param pedigree the pedigree with those parents added
 * @param packets the packets whose seedlings were made sibs, as far as there are two
 * @param fieldNumbers the field numbers, or the first ones of populations, that several
 *     acquisitions bear
 */
record KinPedigree(Pedigree pedigree, List<Code> packets, List<String> fieldNumbers) {

  static KinPedigree of(RegisterView view, RegisterPedigree plain, FieldNumberKin apart) {
    Pedigree before = plain.pedigree();
    Acquisitions acquisitions = new Acquisitions(view, plain);
    List<PlantRecord> records = new ArrayList<>();
    Set<String> added = new HashSet<>();
    boolean changed = false;
    for (int i = 0; i < before.size(); i++) {
      Founder founder = before.founder(i);
      String[] parents =
          founder == null ? null : acquisitions.parents(before.code(i), founder, apart);
      if (founder == null || parents == null) {
        records.add(before.plantRecord(i));
        continue;
      }
      changed = true;
      for (String parent : parents) {
        if (added.add(parent)) {
          records.add(new PlantRecord(parent, founder));
        }
      }
      records.add(new PlantRecord(before.code(i), Seedling.cross(parents[0], parents[1])));
    }
    return new KinPedigree(
        changed ? Pedigree.of(records) : before,
        acquisitions.packetsOfSeveral(),
        acquisitions.numbersOfSeveral());
  }

  /** What came in together: a packet, or a plant by itself. */
  private static final class Acquisitions {
    private final RegisterView view;
    private final RegisterPedigree plain;
    private final Map<Code, Integer> seedlings = new HashMap<>();
    private final Map<String, Set<String>> bearing = new HashMap<>();

    Acquisitions(RegisterView view, RegisterPedigree plain) {
      this.view = view;
      this.plain = plain;
      Pedigree pedigree = plain.pedigree();
      for (int i = 0; i < pedigree.size(); i++) {
        Founder founder = pedigree.founder(i);
        if (founder != null) {
          String code = pedigree.code(i);
          packet(code).ifPresent(packet -> seedlings.merge(packet, 1, Integer::sum));
          String number = fieldNumber(founder);
          if (number != null) {
            bearing.computeIfAbsent(number, any -> new HashSet<>()).add(name(code));
          }
        }
      }
    }

    /**
     * The first number of the population, with its taxon: two collectors may have used one number,
     * hardly for one taxon.
     */
    private @Nullable String fieldNumber(Founder founder) {
      if (founder.fieldNumber() == null) {
        return null;
      }
      String number = view.population(founder.fieldNumber()).first();
      return (founder.makeup().shares().isEmpty()
              ? number
              : founder.makeup().shares().firstKey() + " " + number)
          + sets(founder);
    }

    /** Plants of unlike ploidy have no parents in common that gave half of their sets to each. */
    private static String sets(Founder founder) {
      return founder.ploidy() == 2 ? "" : " " + founder.ploidy() + "x";
    }

    /** The acquired packet that a founder was raised from. */
    private Optional<Code> packet(String code) {
      return plain.family(code).map(Item::code);
    }

    private String name(String code) {
      return packet(code).map(Code::text).orElse(code);
    }

    /** The names of the parents a founder gets; null if it stays one. */
    String @Nullable [] parents(String code, Founder founder, FieldNumberKin apart) {
      if (founder.ploidy() % 2 == 1) {
        return null;
      }
      String number = fieldNumber(founder);
      boolean akin =
          apart != FieldNumberKin.UNRELATED
              && number != null
              && bearing.getOrDefault(number, Set.of()).size() > 1;
      Optional<Code> packet = packet(code);
      if (!akin && packet.map(seedlings::get).orElse(1) < 2) {
        return null;
      }
      String source = name(code) + sets(founder);
      String seed = akin ? "a plant of " + number : "seed parent of " + source;
      String pollen =
          akin && apart == FieldNumberKin.FULL_SIBS
              ? "another plant of " + number
              : "pollen parent of " + source;
      return new String[] {seed, pollen};
    }

    List<Code> packetsOfSeveral() {
      List<Code> several = new ArrayList<>();
      seedlings.forEach(
          (packet, count) -> {
            if (count > 1) {
              several.add(packet);
            }
          });
      several.sort((one, other) -> one.text().compareTo(other.text()));
      return several;
    }

    List<String> numbersOfSeveral() {
      return bearing.entrySet().stream()
          .filter(entry -> entry.getValue().size() > 1)
          .map(Map.Entry::getKey)
          .sorted()
          .toList();
    }
  }
}
