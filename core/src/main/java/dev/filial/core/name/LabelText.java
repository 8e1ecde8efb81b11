package dev.filial.core.name;

import java.util.ArrayList;
import java.util.List;

/**
 * What to write on a label, line by line.
 *
 * @param front the lines of the front, at most as many as the layout has, without empty ones at the
 *     end
 * @param back the lines of the back, empty if the front holds everything or there is no back
 * @param buriedEnd the code again, for the end that is in the soil and does not fade
 * @param leftOut what there was no room for, in order of importance
 */
public record LabelText(
    List<String> front, List<String> back, String buriedEnd, List<String> leftOut) {

  /** Takes the lines over. */
  public LabelText {
    front = List.copyOf(front);
    back = List.copyOf(back);
    leftOut = List.copyOf(leftOut);
  }

  /** All lines, front first. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(front);
    lines.addAll(back);
    return List.copyOf(lines);
  }
}
