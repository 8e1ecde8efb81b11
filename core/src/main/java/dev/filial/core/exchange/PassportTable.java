package dev.filial.core.exchange;

import dev.filial.core.exchange.Accession.Kind;
import dev.filial.core.exchange.Accession.Status;
import dev.filial.core.name.Rank;
import dev.filial.core.name.TaxonName;
import dev.filial.core.register.PartialDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Plants and seed lots in the form in which genebanks hand them on: the Multi-Crop Passport
 * Descriptors of FAO and Bioversity International, V.2.1 of 2015, one column a descriptor and in
 * its order. What the register does not know stays empty.
 *
 * <p>The descriptors' names and their order, how several values are parted (a semicolon without a
 * space) and how dates are written are the standard's; what the numbers of SAMPSTAT and STORAGE
 * mean is from memory.
 */
public final class PassportTable implements TableForm<Accession> {

  private static final List<String> COLUMNS =
      List.of(
          "PUID",
          "INSTCODE",
          "ACCENUMB",
          "COLLNUMB",
          "COLLCODE",
          "COLLNAME",
          "COLLINSTADDRESS",
          "COLLMISSID",
          "GENUS",
          "SPECIES",
          "SPAUTHOR",
          "SUBTAXA",
          "SUBTAUTHOR",
          "CROPNAME",
          "ACCENAME",
          "ACQDATE",
          "ORIGCTY",
          "COLLSITE",
          "DECLATITUDE",
          "LATITUDE",
          "DECLONGITUDE",
          "LONGITUDE",
          "COORDUNCERT",
          "COORDDATUM",
          "GEOREFMETH",
          "ELEVATION",
          "COLLDATE",
          "BREDCODE",
          "BREDNAME",
          "SAMPSTAT",
          "ANCEST",
          "COLLSRC",
          "DONORCODE",
          "DONORNAME",
          "DONORNUMB",
          "OTHERNUMB",
          "DUPLSITE",
          "DUPLINSTNAME",
          "STORAGE",
          "MLSSTAT",
          "REMARKS");

  private final @Nullable String institute;
  private final @Nullable String breeder;

  /**
   * The form.
   *
   * @param institute the FAO WIEWS code of the institute that holds the accessions, as {@code
   *     DEU999}; null for a grower, who has none
   * @param breeder who bred what was raised here, or null when that is not to be told
   */
  public PassportTable(@Nullable String institute, @Nullable String breeder) {
    this.institute = institute;
    this.breeder = breeder;
  }

  @Override
  public List<String> columns() {
    return COLUMNS;
  }

  @Override
  public List<String> row(Accession accession) {
    Map<String, String> cells = new LinkedHashMap<>();
    COLUMNS.forEach(column -> cells.put(column, ""));
    Accession.Arrival arrival = accession.arrival();
    put(cells, "INSTCODE", institute);
    put(cells, "ACCENUMB", accession.code());
    put(cells, "COLLNUMB", arrival.fieldNumber());
    put(cells, "COLLSITE", arrival.locality());
    name(cells, accession.named());
    List<String> names = new ArrayList<>();
    if (accession.named().cultivar() != null) {
      names.add(accession.named().cultivar());
    }
    names.addAll(accession.named().own());
    put(cells, "ACCENAME", Cells.several(names, ";"));
    put(cells, "ACQDATE", date(arrival.day()));
    if (accession.behind().raised()) {
      put(cells, "BREDCODE", institute);
      put(cells, "BREDNAME", institute == null ? breeder : null);
      put(cells, "ANCEST", accession.behind().pedigree());
    }
    put(cells, "SAMPSTAT", status(accession.status()));
    put(cells, "DONORNAME", arrival.donor());
    put(cells, "DONORNUMB", arrival.donorCode());
    // A number whose institute is not known has the colon before it alone.
    put(
        cells,
        "OTHERNUMB",
        Cells.several(accession.otherCodes().stream().map(code -> ":" + code).toList(), ";"));
    if (accession.state().here()) {
      put(cells, "STORAGE", accession.kind() == Kind.SEED_LOT ? "10" : "20");
    }
    put(cells, "REMARKS", Cells.several(remarks(accession), ";"));
    return List.copyOf(cells.values());
  }

  /** {@code YYYYMMDD}, hyphens for what is not known of it; empty when nothing is. */
  static String date(@Nullable PartialDate date) {
    if (date == null) {
      return "";
    }
    return date.year() + part(date.month()) + part(date.day());
  }

  private static String part(int number) {
    return number == 0 ? "--" : (number < 10 ? "0" : "") + number;
  }

  private static void name(Map<String, String> cells, Accession.Named named) {
    TaxonName taxon = named.taxon();
    if (taxon == null) {
      return;
    }
    put(cells, "GENUS", (taxon.hybridGenus() ? "×" : "") + taxon.genus());
    put(cells, "SPECIES", taxon.isUndetermined() ? "sp." : "");
    List<String> below = new ArrayList<>();
    for (TaxonName.Epithet epithet : taxon.epithets()) {
      String text = (epithet.hybrid() ? "×" : "") + epithet.text();
      if (epithet.rank() == Rank.SPECIES) {
        put(cells, "SPECIES", text);
        put(cells, "SPAUTHOR", epithet.author());
      } else {
        below.add((epithet.hybrid() ? "notho" : "") + epithet.rank().term() + " " + epithet.text());
        put(cells, "SUBTAUTHOR", epithet.author());
      }
    }
    put(cells, "SUBTAXA", String.join(" ", below));
  }

  /** The codes of SAMPSTAT, from memory. */
  private static String status(Status status) {
    return switch (status) {
      case WILD -> "100";
      case BRED -> "400";
      case HYBRID -> "412";
      case SEGREGATING -> "415";
      case SELECTED -> "416";
      case CULTIVAR -> "500";
      case UNCERTAIN -> "999";
      case UNKNOWN -> "";
    };
  }

  private static List<String> remarks(Accession accession) {
    List<String> remarks = new ArrayList<>();
    Accession.Named named = accession.named();
    if (named.taxon() == null && !named.formula().isEmpty()) {
      remarks.add(named.formula());
    }
    if (!accession.behind().generation().isEmpty() && accession.behind().raised()) {
      remarks.add("generation " + accession.behind().generation());
    }
    if (accession.status() == Status.WILD) {
      remarks.add("wild by its field number");
    }
    if (accession.kind() == Kind.OFFSET && !accession.behind().sameAs().isEmpty()) {
      remarks.add("offset of " + String.join(", ", accession.behind().sameAs()));
    }
    if (!accession.state().here()) {
      PartialDate until = accession.state().until();
      remarks.add(accession.state().words() + (until == null ? "" : " " + until));
    }
    remarks.addAll(accession.doubts());
    return remarks;
  }

  private static void put(Map<String, String> cells, String column, @Nullable String text) {
    if (text != null && !text.isEmpty()) {
      cells.put(column, text);
    }
  }
}
