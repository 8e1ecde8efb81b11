package dev.filial.core.pedigree;

/** Where a plant comes from: acquired, raised from seed, or taken from another plant. */
public sealed interface Origin permits Founder, Seedling, Ramet {}
