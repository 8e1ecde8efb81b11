/**
 * Who came from whom: the directed acyclic graph of plants, as immutable arrays for arithmetic and
 * as a JGraphT graph on request.
 *
 * <p>A program describes its plants as {@link dev.filial.core.pedigree.PlantRecord}s, in any order,
 * and builds a {@link dev.filial.core.pedigree.Pedigree} from them; no register is needed.
 *
 * <p>May import {@code dev.filial.core.number} and {@code dev.filial.core.name}, and JGraphT.
 */
package dev.filial.core.pedigree;
