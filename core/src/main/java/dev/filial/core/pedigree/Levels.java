package dev.filial.core.pedigree;

import java.util.Arrays;

/**
 * The order in which parents stand before their offspring, level by level: founders are level 0,
 * and any other plant stands one above the highest of its parents.
 *
 * <p>A depth-first search on a stack of its own (a selfing line of a hundred thousand generations
 * is no deeper a recursion than any other), then a counting sort by level: time and memory linear
 * in plants and parents.
 */
final class Levels {

  private static final int NONE = -1;
  private static final int UNSEEN = -1;
  private static final int OPEN = -2;

  /** The plants in the new order. */
  final int[] order;

  /** Where each level starts in the order; one entry more than there are levels. */
  final int[] start;

  private Levels(int[] order, int[] start) {
    this.order = order;
    this.start = start;
  }

  /**
   * Sorts the draft.
   *
   * @throws PedigreeException if a plant is among its own ancestors
   */
  static Levels of(Draft draft) {
    int n = draft.codes.length;
    int[] level = new int[n];
    Arrays.fill(level, UNSEEN);
    int[] stack = new int[1024];
    int[] cursor = new int[1024];
    int highest = -1;
    for (int root = 0; root < n; root++) {
      if (level[root] != UNSEEN) {
        continue;
      }
      int depth = 0;
      stack[0] = root;
      cursor[0] = 0;
      level[root] = OPEN;
      while (depth >= 0) {
        int plant = stack[depth];
        int unseen = -1;
        int count = draft.parentCount(plant);
        int k = cursor[depth];
        while (k < count && unseen < 0) {
          int parent = draft.parent(plant, k++);
          if (parent >= 0 && level[parent] < 0) {
            if (level[parent] == OPEN) {
              throw Loop.explain(draft, Arrays.copyOf(stack, depth + 1));
            }
            unseen = parent;
          }
        }
        cursor[depth] = k;
        if (unseen >= 0) {
          if (++depth == stack.length) {
            stack = Arrays.copyOf(stack, depth * 2);
            cursor = Arrays.copyOf(cursor, depth * 2);
          }
          stack[depth] = unseen;
          cursor[depth] = 0;
          level[unseen] = OPEN;
        } else {
          level[plant] = levelAbove(draft, level, plant, count);
          highest = Math.max(highest, level[plant]);
          depth--;
        }
      }
    }
    return counted(draft, level, highest + 1);
  }

  private static int levelAbove(Draft draft, int[] level, int plant, int count) {
    int highest = -1;
    for (int k = 0; k < count; k++) {
      int parent = draft.parent(plant, k);
      if (parent >= 0) {
        highest = Math.max(highest, level[parent]);
      }
    }
    // A seedling of two unknown parents stands above the founders although it has none recorded.
    return count == 0 ? 0 : Math.max(highest + 1, 1);
  }

  private static Levels counted(Draft draft, int[] level, int levels) {
    int[] start = new int[levels + 1];
    for (int one : level) {
      start[one + 1]++;
    }
    for (int l = 0; l < levels; l++) {
      start[l + 1] += start[l];
    }
    return new Levels(ordered(draft, level, Arrays.copyOf(start, levels)), start);
  }

  /**
   * The plants by level, and within a level in the order of their seed parents: a pass over a level
   * then reads the seed parents' rows one after the other, and only the pollen parents' at random.
   *
   * @param free the next free place of each level
   */
  private static int[] ordered(Draft draft, int[] level, int[] free) {
    int n = level.length;
    int[] order = new int[n];
    int[] firstChild = new int[n];
    int[] nextChild = new int[n];
    Arrays.fill(firstChild, NONE);
    for (int i = n - 1; i >= 0; i--) {
      int seed = draft.parentCount(i) == 0 ? NONE : draft.parent(i, 0);
      if (seed >= 0) {
        nextChild[i] = firstChild[seed];
        firstChild[seed] = i;
      }
    }
    for (int i = 0; i < n; i++) {
      if (draft.parentCount(i) == 0 || draft.parent(i, 0) < 0) {
        order[free[level[i]]++] = i;
      }
    }
    // Every plant is placed before its place is come to: its seed parent is of a lower level.
    for (int at = 0; at < n; at++) {
      for (int child = firstChild[order[at]]; child != NONE; child = nextChild[child]) {
        order[free[level[child]]++] = child;
      }
    }
    return order;
  }
}
