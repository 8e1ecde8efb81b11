package dev.filial.core.name;

/** The ranks of names, from the genus down; each with the term that is written before it. */
public enum Rank {
  /** Genus, a name of one word. */
  GENUS(""),
  /** Species, or a hybrid at that rank (nothospecies). */
  SPECIES(""),
  /** Subspecies. */
  SUBSPECIES("subsp."),
  /** Variety, in the botanical sense. */
  VARIETY("var."),
  /** Subvariety. */
  SUBVARIETY("subvar."),
  /** Form. */
  FORM("f."),
  /** Subform. */
  SUBFORM("subf."),
  /** Cultivar, in single quotes. */
  CULTIVAR("");

  private final String term;

  Rank(String term) {
    this.term = term;
  }

  /** The term written before an epithet of this rank, empty where none is. */
  public String term() {
    return term;
  }

  /** Whether this is a rank below the species, cultivars left aside. */
  public boolean isInfraspecific() {
    return !term.isEmpty();
  }
}
