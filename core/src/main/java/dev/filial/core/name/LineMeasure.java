package dev.filial.core.name;

/** How wide a text is, in whatever unit the room of a line is given in. */
public interface LineMeasure {

  /** The width of the text; 0 for none, and never less for a text that goes on. */
  double width(String text);

  /** The longest beginning of the text that takes at most {@code room}, no character parted. */
  String start(String text, double room);
}
