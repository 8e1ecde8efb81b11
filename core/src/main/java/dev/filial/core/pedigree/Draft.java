package dev.filial.core.pedigree;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A pedigree on its way from records to arrays: who is whose parent by number, in the order of the
 * records, before anything is sorted.
 *
 * <p>What {@code first} and {@code second} mean hangs on the kind; see {@link Kind}.
 */
final class Draft {

  final String[] codes;
  final CodeIndex index;
  final byte[] kind;
  final int[] first;
  final int[] second;
  final IntRows parents = new IntRows();

  private Draft(String[] codes) {
    this.codes = codes;
    this.index = CodeIndex.of(codes);
    this.kind = new byte[codes.length];
    this.first = new int[codes.length];
    this.second = new int[codes.length];
  }

  /** Drafts the records, whose order does not matter. */
  static Draft of(PlantRecord[] records) {
    String[] codes = new String[records.length];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = records[i].code();
    }
    Draft draft = new Draft(codes);
    for (int i = 0; i < codes.length; i++) {
      draft.place(i, records[i].origin());
    }
    return draft;
  }

  /** Drafts plain crosses; a plant without parents is a founder. */
  static Draft ofParents(String[] codes, @Nullable String[] seed, @Nullable String[] pollen) {
    Draft draft = new Draft(codes);
    for (int i = 0; i < codes.length; i++) {
      if (seed[i] == null && pollen[i] == null) {
        draft.kind[i] = Kind.FOUNDER;
        draft.first[i] = i;
      } else {
        draft.placeCross(i, seed[i], pollen[i]);
      }
    }
    return draft;
  }

  private void place(int plant, Origin origin) {
    if (origin instanceof Seedling seedling) {
      Case only = seedling.cases().get(0);
      if (seedling.cases().size() == 1
          && only instanceof Case.Sexual cross
          && cross.seed().sets() == 0
          && cross.pollen().sets() == 0) {
        kind[plant] = Kind.simple(cross.route());
        first[plant] = resolve(plant, cross.seed().parent());
        second[plant] = resolve(plant, cross.pollen().parent());
      } else {
        placeCases(plant, seedling);
      }
    } else if (origin instanceof Ramet ramet) {
      kind[plant] = Kind.RAMET;
      first[plant] = resolve(plant, ramet.of());
      second[plant] = ramet.doubled() ? 1 : 0;
    } else {
      kind[plant] = Kind.FOUNDER;
      first[plant] = plant;
    }
  }

  private void placeCross(int plant, @Nullable String seed, @Nullable String pollen) {
    first[plant] = resolve(plant, seed);
    second[plant] = resolve(plant, pollen);
    kind[plant] =
        Kind.simple(
            pollen == null
                ? Route.OPEN_POLLINATION
                : first[plant] == second[plant] ? Route.SELFING : Route.CROSS);
  }

  /** The row keeps the order of the cases, two numbers for a sexual one and one for a copy. */
  private void placeCases(int plant, Seedling seedling) {
    kind[plant] = Kind.CASES;
    first[plant] = parents.begin();
    for (Case one : seedling.cases()) {
      if (one instanceof Case.Sexual cross) {
        parents.add(resolve(plant, cross.seed().parent()));
        parents.add(resolve(plant, cross.pollen().parent()));
      } else if (one instanceof Case.Copy copy) {
        parents.add(resolve(plant, copy.of()));
      }
    }
  }

  private int resolve(int plant, @Nullable String parent) {
    if (parent == null) {
      return Pedigree.UNKNOWN;
    }
    int found = index.find(parent);
    if (found == CodeIndex.ABSENT) {
      throw new PedigreeException(
          codes[plant]
              + " has "
              + parent
              + " as a parent, but no plant of that code is recorded; add "
              + parent
              + ", or correct the code");
    }
    return found;
  }

  /** How many parents the plant has, unknown ones counted. */
  int parentCount(int plant) {
    return switch (kind[plant]) {
      case Kind.FOUNDER -> 0;
      case Kind.RAMET -> 1;
      case Kind.CASES -> parents.length(first[plant]);
      default -> 2;
    };
  }

  /** The plant's {@code k}-th parent, or {@link Pedigree#UNKNOWN}. */
  int parent(int plant, int k) {
    if (kind[plant] == Kind.CASES) {
      return parents.get(first[plant], k);
    }
    return k == 0 ? first[plant] : second[plant];
  }

  /** Rows of numbers laid end to end. */
  static final class IntRows {
    private int[] values = new int[16];
    private int[] starts = new int[16];
    private int rows;
    private int size;

    int begin() {
      if (rows == starts.length) {
        starts = Arrays.copyOf(starts, rows * 2);
      }
      starts[rows] = size;
      return rows++;
    }

    void add(int value) {
      if (size == values.length) {
        values = Arrays.copyOf(values, size * 2);
      }
      values[size++] = value;
    }

    int length(int row) {
      return (row + 1 < rows ? starts[row + 1] : size) - starts[row];
    }

    int get(int row, int k) {
      return values[starts[row] + k];
    }
  }
}
