package dev.filial.core.register;

import java.util.Optional;

/**
 * What one entry says, before and after.
 *
 * @param entry its number
 * @param before what it said until now; empty when it is new or was struck
 * @param after what it says from now on; empty when it is struck
 */
public record Change(long entry, Optional<Statement> before, Optional<Statement> after) {}
