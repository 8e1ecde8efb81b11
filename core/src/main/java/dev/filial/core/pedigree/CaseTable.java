package dev.filial.core.pedigree;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The cases of the plants that are no plain crosses, rows laid end to end. */
final class CaseTable {

  private final int[] start;
  private final Case[] cases;
  private final Descent[] descents;

  private CaseTable(int[] start, Case[] cases, Descent[] descents) {
    this.start = start;
    this.cases = cases;
    this.descents = descents;
  }

  List<Case> cases(int row) {
    return List.of(Arrays.copyOfRange(cases, start[row], start[row + 1]));
  }

  List<Descent> descents(int row) {
    return List.of(Arrays.copyOfRange(descents, start[row], start[row + 1]));
  }

  int count(int row) {
    return start[row + 1] - start[row];
  }

  Descent descent(int row, int k) {
    return descents[start[row] + k];
  }

  /** Gathers rows. */
  static final class Builder {
    private final List<Case> cases = new ArrayList<>();
    private final List<Descent> descents = new ArrayList<>();
    private int[] start = new int[16];
    private int rows;

    int add(List<Case> rowCases, List<Descent> rowDescents) {
      cases.addAll(rowCases);
      descents.addAll(rowDescents);
      if (rows + 1 == start.length) {
        start = Arrays.copyOf(start, start.length * 2);
      }
      start[++rows] = cases.size();
      return rows - 1;
    }

    CaseTable build() {
      return new CaseTable(
          Arrays.copyOf(start, rows + 1),
          cases.toArray(new Case[0]),
          descents.toArray(new Descent[0]));
    }
  }
}
