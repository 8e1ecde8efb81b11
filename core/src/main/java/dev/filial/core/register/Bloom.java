package dev.filial.core.register;

/** How a plant's flowers stood on a day. */
public enum Bloom {
  /** At least one flower was open. */
  OPEN,
  /** The last one had faded. */
  OVER
}
