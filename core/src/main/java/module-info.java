/**
 * The cross register of a grower who hybridises plants by hand, and what can be computed from it.
 *
 * <p>The packages stand on floors, each importing only what is below it: {@code number} and {@code
 * name}; {@code pedigree}, {@code heredity} and {@code trial}; {@code ancestry} and {@code
 * inference}; {@code register} and {@code plan}; {@code store} and {@code exchange}; {@code
 * answer}; {@code spreadsheet}.
 */
@org.jspecify.annotations.NullMarked
module dev.filial.core {
  requires static transitive org.jspecify;
  requires transitive org.jgrapht.core;
  requires org.jgrapht.io;
  requires com.fasterxml.jackson.annotation;
  requires tools.jackson.core;
  requires tools.jackson.databind;
  requires tools.jackson.dataformat.csv;
  requires commons.math3;
  requires org.apache.commons.rng.api;
  requires org.apache.commons.rng.core;
  requires org.apache.commons.rng.sampling;
  requires java.sql;
  requires static org.xerial.sqlitejdbc;

  exports dev.filial.core.ancestry;
  exports dev.filial.core.answer;
  exports dev.filial.core.exchange;
  exports dev.filial.core.heredity;
  exports dev.filial.core.inference;
  exports dev.filial.core.name;
  exports dev.filial.core.number;
  exports dev.filial.core.pedigree;
  exports dev.filial.core.plan;
  exports dev.filial.core.register;
  exports dev.filial.core.spreadsheet;
  exports dev.filial.core.store;
  exports dev.filial.core.trial;

  opens dev.filial.core.register to
      tools.jackson.databind;
}
