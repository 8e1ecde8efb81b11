package dev.filial.core.exchange;

import dev.filial.core.exchange.Accession.Kind;
import dev.filial.core.name.Rank;
import dev.filial.core.name.TaxonName;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/**
 * Plants as occurrences of Darwin Core (TDWG, {@code http://rs.tdwg.org/dwc/terms/}), the terms as
 * headers of the columns. Each is a living specimen in cultivation.
 *
 * <p>The terms, {@code LivingSpecimen} and the value {@code cultivated} of degreeOfEstablishment
 * are from memory.
 */
public final class OccurrenceTable implements TableForm<Accession> {

  private static final List<String> COLUMNS =
      List.of(
          "occurrenceID",
          "basisOfRecord",
          "institutionCode",
          "catalogNumber",
          "otherCatalogNumbers",
          "recordNumber",
          "eventDate",
          "eventRemarks",
          "locality",
          "degreeOfEstablishment",
          "kingdom",
          "scientificName",
          "taxonRank",
          "genus",
          "specificEpithet",
          "infraspecificEpithet",
          "cultivarEpithet",
          "identificationQualifier",
          "identificationRemarks",
          "associatedOccurrences",
          "disposition",
          "occurrenceRemarks",
          "dynamicProperties");

  private final @Nullable String institute;

  /**
   * The form.
   *
   * @param institute the code of the institution that has them, or null
   */
  public OccurrenceTable(@Nullable String institute) {
    this.institute = institute;
  }

  @Override
  public List<String> columns() {
    return COLUMNS;
  }

  @Override
  public List<String> row(Accession plant) {
    Map<String, String> cells = new LinkedHashMap<>();
    COLUMNS.forEach(column -> cells.put(column, ""));
    Accession.Arrival arrival = plant.arrival();
    cells.put("occurrenceID", plant.code());
    cells.put("basisOfRecord", "LivingSpecimen");
    cells.put("institutionCode", Cells.text(institute));
    cells.put("catalogNumber", plant.code());
    List<String> others = new ArrayList<>(plant.otherCodes());
    others.addAll(plant.named().own());
    if (arrival.donorCode() != null) {
      others.add(arrival.donorCode());
    }
    cells.put("otherCatalogNumbers", Cells.several(others, " | "));
    cells.put("recordNumber", Cells.text(arrival.fieldNumber()));
    if (arrival.day() != null) {
      cells.put("eventDate", arrival.day().toString());
      cells.put("eventRemarks", event(plant.kind()));
    }
    cells.put("locality", Cells.text(arrival.locality()));
    cells.put("degreeOfEstablishment", "cultivated");
    cells.put("kingdom", "Plantae");
    name(cells, plant.named());
    cells.put("identificationRemarks", Cells.several(plant.doubts(), " | "));
    cells.put("associatedOccurrences", Cells.several(associated(plant.behind()), " | "));
    cells.put("disposition", plant.state().here() ? "in collection" : plant.state().words());
    if (plant.state().until() != null) {
      cells.put("occurrenceRemarks", plant.state().words() + " " + plant.state().until());
    }
    cells.put("dynamicProperties", properties(plant.behind()));
    return List.copyOf(cells.values());
  }

  /** The date is none of collecting in the wild, and says so. */
  private static String event(Kind kind) {
    return switch (kind) {
      case PLANT -> "day it came into cultivation here and not of collecting";
      case OFFSET -> "day it was taken off the plant it is of";
      case SEEDLING -> "day it was numbered as a seedling";
      case SEED_LOT -> "day the seed was harvested or came";
    };
  }

  private static void name(Map<String, String> cells, Accession.Named named) {
    TaxonName taxon = named.taxon();
    if (taxon == null) {
      cells.put("scientificName", named.formula().isEmpty() ? "Plantae" : named.formula());
      cells.put("taxonRank", named.formula().isEmpty() ? "kingdom" : "");
    } else {
      cells.put("scientificName", taxon.text());
      cells.put("taxonRank", rank(taxon));
      cells.put("genus", (taxon.hybridGenus() ? "×" : "") + taxon.genus());
      for (TaxonName.Epithet epithet : taxon.epithets()) {
        String column = epithet.rank() == Rank.SPECIES ? "specificEpithet" : "infraspecificEpithet";
        cells.put(column, (epithet.hybrid() ? "×" : "") + epithet.text());
      }
    }
    cells.put("cultivarEpithet", Cells.text(named.cultivar()));
    cells.put("identificationQualifier", Cells.text(named.doubt()));
  }

  private static String rank(TaxonName taxon) {
    // What is determined to its genus alone is a name of that genus, sp. being no epithet.
    if (taxon.isUndetermined()) {
      return "genus";
    }
    return switch (taxon.rank()) {
      case GENUS -> "genus";
      case SPECIES -> "species";
      case SUBSPECIES -> "subspecies";
      case VARIETY -> "variety";
      case SUBVARIETY -> "subvariety";
      case FORM -> "form";
      case SUBFORM -> "subform";
      case CULTIVAR -> "cultivar";
    };
  }

  private static List<String> associated(Accession.Behind behind) {
    List<String> associated = new ArrayList<>();
    add(associated, "seed parent", behind.seedParents());
    add(associated, "pollen parent", behind.pollenParents());
    add(associated, "same genotype as", behind.sameAs());
    return associated;
  }

  private static void add(List<String> associated, String how, List<String> codes) {
    String perhaps = codes.size() > 1 ? "perhaps " : "";
    codes.forEach(code -> associated.add('"' + perhaps + how + "\":\"" + code + '"'));
  }

  private static String properties(Accession.Behind behind) {
    Map<String, String> properties = new LinkedHashMap<>();
    if (!behind.generation().isEmpty()) {
      properties.put("generation", behind.generation());
    }
    if (!behind.pedigree().isEmpty()) {
      properties.put("pedigree", behind.pedigree());
    }
    return properties.isEmpty() ? "" : JsonMapper.shared().writeValueAsString(properties);
  }
}
