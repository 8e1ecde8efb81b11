package dev.filial.core.answer;

import java.util.List;

/**
 * The coancestries of several plants with each other.
 *
 * @param plants the plants, in the order asked
 * @param coancestry a row for each plant
 * @param mean over all pairs of different plants; 0 of a single one
 * @param notes what the answer leans on, a sentence each
 */
public record KinTable(
    List<String> plants, List<List<Double>> coancestry, double mean, List<String> notes) {

  /** Copies the lists. */
  public KinTable {
    plants = List.copyOf(plants);
    coancestry = List.copyOf(coancestry);
    notes = List.copyOf(notes);
  }
}
