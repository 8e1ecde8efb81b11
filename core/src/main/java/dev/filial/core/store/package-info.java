/**
 * The register kept: {@link dev.filial.core.store.RegisterStore}, on disk as one SQLite file and in
 * memory behind the same interface.
 *
 * <p>Knows how to keep entries and what is derived from them, and no rule of the trade: what an
 * entry changes is worked out by {@code register}. May import everything below it; nothing of
 * {@code answer}.
 */
package dev.filial.core.store;
