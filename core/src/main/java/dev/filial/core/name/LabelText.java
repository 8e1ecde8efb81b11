package dev.filial.core.name;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What to write on a label, line by line.
 *
 * @param front the lines of the front, at most as many as the layout has, without empty ones at the
 *     end
 * @param back the lines of the back, empty if the front holds everything or there is no back
 * @param buriedEnd the code again, for the end that is in the soil and does not fade
 * @param leftOut whole facts that there was no room for, in order of importance
 * @param cut what was lost of the parents or the taxon; null when they stand there in full
 */
public record LabelText(
    List<String> front,
    List<String> back,
    String buriedEnd,
    List<String> leftOut,
    @Nullable Cut cut) {

  /**
   * Parents or a taxon that had to be cut.
   *
   * @param of the shortest way to say them
   * @param lost the end of it that does not stand on the label: all of it, where none does
   */
  public record Cut(String of, String lost) {}

  /** Takes the lines over. */
  public LabelText {
    front = List.copyOf(front);
    back = List.copyOf(back);
    leftOut = List.copyOf(leftOut);
  }

  /** What does not stand on the label, each in words: what was cut off first, then whole facts. */
  public List<String> missing() {
    List<String> missing = new ArrayList<>();
    if (cut != null) {
      missing.add(cut.lost().equals(cut.of()) ? cut.of() : cut.lost() + ", the end of " + cut.of());
    }
    missing.addAll(leftOut);
    return List.copyOf(missing);
  }

  /** All lines, front first. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(front);
    lines.addAll(back);
    return List.copyOf(lines);
  }
}
