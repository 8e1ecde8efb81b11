package dev.filial.core.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.exchange.Accession.Arrival;
import dev.filial.core.exchange.Accession.Behind;
import dev.filial.core.exchange.Accession.Kind;
import dev.filial.core.exchange.Accession.Named;
import dev.filial.core.exchange.Accession.State;
import dev.filial.core.exchange.Accession.Status;
import dev.filial.core.name.TaxonName;
import dev.filial.core.register.PartialDate;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Passport descriptors of genebanks, MCPD V.2.1. */
class PassportTableTest {

  private static Accession accession(Named named, Status status, List<String> doubts) {
    return new Accession(
        "KB 24-001A",
        List.of("KB 24-009X", "KB 25-001C"),
        Kind.PLANT,
        named,
        new Arrival(PartialDate.parse("2024-05"), "Lena", "L; 7", "XM 014", null),
        Behind.UNKNOWN,
        new State(true, "alive", null, ""),
        status,
        doubts);
  }

  private static Named named(String taxon) {
    return new Named(TaxonName.parse(taxon), null, null, taxon, List.of("Rosa", "A; B"));
  }

  private static String cell(Accession accession, String column) {
    PassportTable table = new PassportTable("DEU999", null);
    return table.row(accession).get(table.columns().indexOf(column));
  }

  @Test
  void theColumnsAreTheStandardsInItsOrder() throws Exception {
    try (InputStream in =
        Objects.requireNonNull(getClass().getResourceAsStream("mcpd-2.1-fields.txt"))) {
      List<String> fields =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.startsWith("#"))
              .flatMap(line -> Arrays.stream(line.split(" ")))
              .toList();
      assertThat(new PassportTable(null, null).columns()).isEqualTo(fields).hasSize(41);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "2024, 2024----",
    "2024-05, 202405--",
    "2024-05-04, 20240504",
    "2024-12-31, 20241231"
  })
  void whatIsNotKnownOfADateIsHyphens(String known, String written) {
    assertThat(PassportTable.date(PartialDate.parse(known))).isEqualTo(written);
  }

  @Test
  void aDayNobodyKnowsIsEmpty() {
    assertThat(PassportTable.date(null)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "WILD, 100",
    "BRED, 400",
    "HYBRID, 412",
    "SEGREGATING, 415",
    "SELECTED, 416",
    "CULTIVAR, 500",
    "UNCERTAIN, 999",
    "UNKNOWN, ''"
  })
  void theKindOfMaterialHasANumber(Status status, String code) {
    assertThat(cell(accession(named("Echeveria laui"), status, List.of()), "SAMPSTAT"))
        .isEqualTo(code);
  }

  @Test
  void severalValuesArePartedByASemicolonAndNoValueHoldsOne() {
    Accession accession =
        accession(named("Echeveria laui"), Status.UNKNOWN, List.of("open pollinated", "a guess"));
    assertThat(cell(accession, "ACCENAME")).isEqualTo("Rosa;A, B");
    assertThat(cell(accession, "OTHERNUMB")).isEqualTo(":KB 24-009X;:KB 25-001C");
    assertThat(cell(accession, "REMARKS")).isEqualTo("open pollinated;a guess");
  }

  @Test
  void theDonorsOwnCodeStandsBesideOurs() {
    Accession accession = accession(named("Echeveria laui"), Status.WILD, List.of());
    assertThat(cell(accession, "ACCENUMB")).isEqualTo("KB 24-001A");
    assertThat(cell(accession, "DONORNUMB")).isEqualTo("L; 7");
    assertThat(cell(accession, "COLLNUMB")).isEqualTo("XM 014");
    assertThat(cell(accession, "INSTCODE")).isEqualTo("DEU999");
    assertThat(cell(accession, "ACQDATE")).isEqualTo("202405--");
    assertThat(cell(accession, "REMARKS")).isEqualTo("wild by its field number");
  }

  @Test
  void aNameIsTakenApart() {
    Accession accession =
        accession(
            named("Echeveria agavoides Lem. var. corderoyi (Baker) Poelln."),
            Status.UNKNOWN,
            List.of());
    assertThat(cell(accession, "GENUS")).isEqualTo("Echeveria");
    assertThat(cell(accession, "SPECIES")).isEqualTo("agavoides");
    assertThat(cell(accession, "SPAUTHOR")).isEqualTo("Lem.");
    assertThat(cell(accession, "SUBTAXA")).isEqualTo("var. corderoyi");
    assertThat(cell(accession, "SUBTAUTHOR")).isEqualTo("(Baker) Poelln.");
    assertThat(cell(accession(named("Echeveria sp."), Status.UNKNOWN, List.of()), "SPECIES"))
        .isEqualTo("sp.");
  }

  @Test
  void aDoubtfulNameIsRemarkedOnOnce() {
    Named doubted =
        new Named(TaxonName.parse("Echeveria laui"), "cf. laui", null, "Echeveria laui", List.of());
    List<String> doubts = List.of("determined only as cf. laui");
    assertThat(cell(accession(doubted, Status.UNKNOWN, doubts), "REMARKS"))
        .isEqualTo("determined only as cf. laui");
  }

  @Test
  void anOccurrenceHasItsDoubtWhereTheStandardWantsIt() {
    Named doubted =
        new Named(TaxonName.parse("Echeveria laui"), "cf. laui", null, "Echeveria laui", List.of());
    OccurrenceTable table = new OccurrenceTable(null);
    List<String> row = table.row(accession(doubted, Status.UNKNOWN, List.of("a guess")));
    assertThat(row).hasSameSizeAs(table.columns());
    assertThat(row.get(table.columns().indexOf("identificationQualifier"))).isEqualTo("cf. laui");
    assertThat(row.get(table.columns().indexOf("identificationRemarks"))).isEqualTo("a guess");
    assertThat(row.get(table.columns().indexOf("scientificName"))).isEqualTo("Echeveria laui");
    assertThat(row.get(table.columns().indexOf("taxonRank"))).isEqualTo("species");
    assertThat(row.get(table.columns().indexOf("eventDate"))).isEqualTo("2024-05");
    assertThat(row.get(table.columns().indexOf("basisOfRecord"))).isEqualTo("LivingSpecimen");
  }
}
