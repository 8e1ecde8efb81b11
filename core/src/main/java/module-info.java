/**
 * The cross register of a grower who hybridises plants by hand, and what can be computed from it.
 *
 * <p>The packages stand on floors, each importing only what is below it: {@code number} and {@code
 * name}; {@code pedigree}; {@code ancestry}; {@code register}; {@code store}; {@code answer}.
 */
@org.jspecify.annotations.NullMarked
module dev.filial.core {
  requires static transitive org.jspecify;
  requires transitive org.jgrapht.core;

  exports dev.filial.core.ancestry;
  exports dev.filial.core.name;
  exports dev.filial.core.number;
  exports dev.filial.core.pedigree;
}
