package dev.filial.core.spreadsheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a column of the table may say of its row, and the headers growers write over it. */
public enum Field {
  /** Our own code. */
  CODE("its code in this register; without, each row gets the next free one", "code"),
  /** A number of the grower's own. */
  OLD_CODE(
      "your own number for it until now; kept as a name, and no two rows may have the same",
      "no",
      "nr",
      "number",
      "nummer",
      "id",
      "label",
      "etikett",
      "old code",
      "accession",
      "accession number",
      "inventarnummer",
      "pflanzennummer",
      "plant no",
      "plant number",
      "kreuzungsnummer",
      "cross no",
      "cross number",
      "lfd nr",
      "laufende nummer"),
  /** The name on the label. */
  TAXON(
      "the name on its label; ? or nothing where nobody knows",
      "taxon",
      "species",
      "art",
      "name on label",
      "botanical name",
      "botanischer name",
      "scientific name",
      "wissenschaftlicher name",
      "pflanze",
      "plant",
      "sorte botanisch",
      "plant name",
      "pflanzenname",
      "name"),
  /** Doubt about the name. */
  CF_OR_AFF(
      "cf. or aff. where the name is in doubt, with the epithet it stands before: cf. agavoides",
      "cf or aff"),
  /** Shares of taxa. */
  MAKEUP(
      "the shares of a hybrid's taxa: Echeveria laui 0.75; Echeveria agavoides 0.25",
      "shares",
      "make up",
      "makeup"),
  /** A cultivar. */
  CULTIVAR("the cultivar", "cultivar", "sorte", "variety", "kultivar"),
  /** A stated generation. */
  GENERATION("F1, F2 or BC1, as it was said; pure says nothing", "generation", "filial"),
  /** Chromosome sets. */
  PLOIDY("chromosome sets, 1 to 32", "ploidy", "ploidie"),
  /** A name of its own. */
  NAME(
      "a name of its own; several parted by semicolons",
      "own name",
      "own names",
      "eigenname",
      "nickname",
      "rufname",
      "pet name"),
  /** Who gave it. */
  DONOR(
      "who gave or sold it",
      "from",
      "von",
      "donor",
      "source",
      "quelle",
      "herkunft",
      "bezugsquelle",
      "supplier",
      "lieferant",
      "bought from",
      "gekauft bei",
      "erhalten von",
      "spender",
      "nursery",
      "gärtnerei"),
  /** The giver's code. */
  DONOR_CODE(
      "the giver's own code",
      "donor code",
      "donor's code",
      "their code",
      "fremdnummer",
      "nummer des gebers",
      "catalogue number",
      "katalognummer"),
  /** A collector's number. */
  FIELD_NUMBER(
      "the collector's field number",
      "field number",
      "field no",
      "feldnummer",
      "sammelnummer",
      "fn",
      "collection number"),
  /** Where it was gathered. */
  LOCALITY(
      "where it was collected", "locality", "fundort", "location", "habitat", "standort natur"),
  /** The day. */
  DATE(
      "the day, month or year it came, was pollinated, sown, counted or measured",
      "date",
      "datum",
      "day",
      "tag",
      "acquired",
      "erworben",
      "bought",
      "gekauft",
      "since",
      "seit",
      "pollinated",
      "bestäubt",
      "bestäubt am",
      "sown",
      "gesät",
      "gesät am",
      "aussaat",
      "aussaatdatum",
      "sowing date",
      "measured",
      "gemessen",
      "counted",
      "gezählt",
      "year",
      "jahr",
      "acquired on",
      "erworben am",
      "kaufdatum",
      "received",
      "received on",
      "erhalten am",
      "bekommen am",
      "gekauft am",
      "cross date",
      "kreuzungsdatum"),
  /** Where it stands. */
  PLACE(
      "where it stands or is kept",
      "place",
      "platz",
      "stands",
      "standort",
      "ort",
      "shelf",
      "regal",
      "bench",
      "stellplatz"),
  /** A plant that never stood here. */
  ELSEWHERE(
      "yes where it never stood here, only its pollen came",
      "elsewhere",
      "not here",
      "nicht hier",
      "auswärts"),
  /** How many seeds. */
  SEEDS(
      "how many seeds came, were harvested or were sown",
      "seeds",
      "samen",
      "korn",
      "körner",
      "seed count",
      "samenzahl",
      "anzahl",
      "count",
      "quantity",
      "menge",
      "stück",
      "anzahl samen",
      "number of seeds",
      "seeds harvested",
      "samen geerntet",
      "harvested",
      "geerntet",
      "seeds sown",
      "gesäte samen"),
  /** The plant that bears the fruit. */
  SEED_PARENT(
      "the plant that bears the fruit, by code, name or your old number",
      "seed parent",
      "mother",
      "mutter",
      "mutterpflanze",
      "female",
      "pod parent",
      "samenelter",
      "weiblich",
      "mom",
      "samenpflanze"),
  /** The plant that gave the pollen. */
  POLLEN_PARENT(
      "the plant whose pollen it was; self or open where that is so",
      "pollen parent",
      "father",
      "vater",
      "vaterpflanze",
      "male",
      "pollenelter",
      "männlich",
      "dad",
      "pollen",
      "pollenspender",
      "pollen donor"),
  /** Flowers tried. */
  FLOWERS(
      "how many flowers were pollinated",
      "flowers",
      "blüten",
      "pollinated flowers",
      "bestäubte blüten",
      "anzahl blüten"),
  /** How they were protected. */
  PROTECTION(
      "emasculated, bagged, isolated or none; several with a comma",
      "protection",
      "schutz",
      "bagged",
      "eingetütet",
      "isolation"),
  /** Flowers that set. */
  SET("how many flowers set fruit", "set", "fruit set", "angesetzt", "fruchtansatz", "ansatz"),
  /** Flowers that failed. */
  FAILED("how many flowers failed", "failed", "fehlgeschlagen", "abgefallen"),
  /** The day of that. */
  FRUIT_DATE("the day that was seen; without, that of the harvest", "fruit date", "ansatzdatum"),
  /** Fruits harvested. */
  FRUITS(
      "from how many fruits the seed is",
      "fruits",
      "capsules",
      "kapseln",
      "früchte",
      "pods",
      "fruit",
      "frucht"),
  /** The day of the harvest. */
  HARVEST_DATE(
      "the day of the harvest",
      "harvest date",
      "erntedatum",
      "harvested on",
      "geerntet am",
      "ernte",
      "harvest"),
  /** Where the seed is kept. */
  SEED_PLACE("where the seed is kept", "seed place", "samenplatz", "seed kept", "samenlager"),
  /** What was sown. */
  LOT(
      "the seed that was sown: the code of its lot, or of the cross or packet where there is one lot",
      "lot",
      "seed lot",
      "samen von",
      "cross",
      "kreuzung",
      "seed of",
      "packet",
      "portion",
      "code",
      "charge"),
  /** What on. */
  MEDIUM("what it was sown on", "medium", "substrate", "substrat", "erde", "soil"),
  /** What in. */
  CONTAINER("pot, tray, bag", "container", "gefäß", "schale", "tray", "pot type", "topf"),
  /** How many came up, in all. */
  CAME_UP(
      "how many had come up by then, in all",
      "came up",
      "germinated",
      "gekeimt",
      "keimlinge",
      "up",
      "aufgelaufen",
      "seedlings",
      "sämlinge"),
  /** How many stand there. */
  ALIVE("how many stand there now", "alive", "lebend", "am leben", "left", "übrig", "living"),
  /** The day they were counted. */
  COUNT_DATE("the day they were counted", "count date", "counted on", "gezählt am", "zähldatum"),
  /** What was counted. */
  POT(
      "the sowing or pot that was counted, by its code",
      "pot",
      "sowing",
      "topf",
      "aussaat",
      "tray",
      "schale",
      "code"),
  /** What was measured. */
  PLANT(
      "the plant, by code, name or your old number",
      "plant",
      "pflanze",
      "code",
      "seedling",
      "sämling",
      "no",
      "nr",
      "nummer",
      "id"),
  /** Which trait. */
  TRAIT("which trait", "trait", "merkmal", "eigenschaft", "character"),
  /** What it showed. */
  VALUE("the state, score or measurement", "value", "wert", "messwert", "score", "note"),
  /** Anything else. */
  REMARK(
      "anything else",
      "remark",
      "remarks",
      "bemerkung",
      "bemerkungen",
      "note",
      "notes",
      "notiz",
      "notizen",
      "comment",
      "comments",
      "kommentar",
      "anmerkung");

  private final String meaning;

  @SuppressWarnings("ImmutableEnumChecker") // made by List.of
  private final List<String> headers;

  Field(String meaning, String... headers) {
    this.meaning = meaning;
    this.headers = List.of(headers);
  }

  /** As a mapping names it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** What it says of a row. */
  public String meaning() {
    return meaning;
  }

  /** Headers that growers write over such a column, in small letters, the usual ones first. */
  List<String> headers() {
    return headers;
  }

  /** The field of that word. */
  static Optional<Field> of(String word) {
    return Arrays.stream(values()).filter(field -> field.word().equals(word)).findFirst();
  }
}
