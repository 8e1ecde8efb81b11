package dev.filial.core.plan;

/** Which of the candidates set seed on which. */
@FunctionalInterface
public interface SeedSetting {

  /** Whether pollen of one sets seed on the other; numbers of two different candidates. */
  boolean sets(int seed, int pollen);
}
