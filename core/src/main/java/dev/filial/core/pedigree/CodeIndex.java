package dev.filial.core.pedigree;

import java.util.Arrays;

/**
 * Finds a plant's number by its code: open addressing over one array of primitives.
 *
 * <p>Each slot holds the code's hash above the plant's number + 1, so a probe that does not match
 * costs no visit to the strings. A {@code HashMap} of a million codes takes five times the memory
 * and the time.
 */
final class CodeIndex {

  /** Returned when no plant has the code. */
  static final int ABSENT = -1;

  private static final int GOLDEN = 0x9E3779B9;

  private final String[] codes;
  private final long[] slots;
  private final int shift;

  private CodeIndex(String[] codes, long[] slots) {
    this.codes = codes;
    this.slots = slots;
    this.shift = Integer.numberOfLeadingZeros(slots.length - 1);
  }

  /**
   * Indexes the codes by their place in the array, which must not change afterwards.
   *
   * @throws PedigreeException if a code occurs twice
   */
  static CodeIndex of(String[] codes) {
    int capacity = Integer.highestOneBit(Math.max(2, codes.length)) << 2;
    if (codes.length >= 1 << 28) {
      throw new PedigreeException(codes.length + " plants are more than one pedigree can hold");
    }
    CodeIndex index = new CodeIndex(codes, new long[capacity]);
    for (int i = 0; i < codes.length; i++) {
      index.insert(codes[i], i);
    }
    return index;
  }

  private void insert(String code, int plant) {
    int hash = code.hashCode();
    int slot = (hash * GOLDEN) >>> shift;
    while (slots[slot] != 0) {
      long held = slots[slot];
      if ((int) (held >>> 32) == hash && codes[(int) held - 1].equals(code)) {
        throw new PedigreeException(
            "two plants have the code " + code + "; give one of them another code");
      }
      slot = (slot + 1) & (slots.length - 1);
    }
    slots[slot] = ((long) hash << 32) | (plant + 1);
  }

  /** The place of the code, or {@link #ABSENT}. */
  int find(String code) {
    int hash = code.hashCode();
    int slot = (hash * GOLDEN) >>> shift;
    while (slots[slot] != 0) {
      long held = slots[slot];
      if ((int) (held >>> 32) == hash && codes[(int) held - 1].equals(code)) {
        return (int) held - 1;
      }
      slot = (slot + 1) & (slots.length - 1);
    }
    return ABSENT;
  }

  /** The same index after every plant {@code i} became number {@code newPlace[i]}. */
  CodeIndex reordered(String[] newCodes, int[] newPlace) {
    long[] moved = Arrays.copyOf(slots, slots.length);
    for (int slot = 0; slot < moved.length; slot++) {
      long held = moved[slot];
      if (held != 0) {
        moved[slot] = (held & 0xFFFFFFFF00000000L) | (newPlace[(int) held - 1] + 1);
      }
    }
    return new CodeIndex(newCodes, moved);
  }
}
