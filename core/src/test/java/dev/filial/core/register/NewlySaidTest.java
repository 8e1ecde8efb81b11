package dev.filial.core.register;

import static dev.filial.core.register.Bench.amended;
import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.cross;
import static dev.filial.core.register.Bench.edge;
import static dev.filial.core.register.Bench.fate;
import static dev.filial.core.register.Bench.gene;
import static dev.filial.core.register.Bench.harvest;
import static dev.filial.core.register.Bench.numbered;
import static dev.filial.core.register.Bench.potted;
import static dev.filial.core.register.Bench.ramet;
import static dev.filial.core.register.Bench.sowing;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NewlySaidTest {

  private final Bench bench = new Bench();

  /** Pollinated in April, sown in June, pricked out in September. */
  @BeforeEach
  void seedlingsOfASowing() {
    bench.plant("24-001", "Echeveria laui", "2024-03-01");
    bench.plant("24-002", "Echeveria agavoides", "2024-03-01");
    bench.say(cross("24-004", "24-001", "24-002", "2024-04-01"));
    bench.say(harvest("24-004 H1", "2024-06-01", "40"));
    bench.say(sowing("24-004 S1", "24-004 H1", "2024-06-10", "30"));
    bench.say(potted("24-004 P1", "24-004 S1", "2024-08-01", "10"));
    bench.say(numbered("24-004 P1", 1, 3, "2024-09-01"));
    bench.say(edge());
  }

  private static PlantAcquired plant(String code, Determination said, String... names) {
    return new PlantAcquired(
        code(code), said, Provenance.UNKNOWN, null, List.of(names), false, null, null);
  }

  private static PlantAcquired called(String code, String... names) {
    return plant(code, Determination.of("Echeveria elegans"), names);
  }

  private static Observed seen(String code, String trait, String value, @Nullable String date) {
    return new Observed(code(code), trait, value, Bench.on(date), null, null);
  }

  private static String text(String code) {
    return code(code).text();
  }

  @Nested
  class ASeedling {

    @Test
    void cannotBeAParentBeforeItWasSown() {
      assertThat(bench.refusal(cross("24-005", "24-004-1", "24-002", "2024-04-02")))
          .hasMessage(
              text("24-004-1")
                  + ", the seed parent of this cross, did not exist on 2024-04-02: it was sown on"
                  + " 2024-06-10; mend the date or name another plant");
      assertThat(bench.refusal(cross("24-005", "24-002", "24-004-1", "2024-05")))
          .hasMessageContaining(", the pollen parent of this cross, did not exist on 2024-05");
      bench.say(cross("24-005", "24-004-1", "24-002", "2024-06"));
    }

    @Test
    void norBeSeenOrPropagatedBeforeThat() {
      assertThat(bench.refusal(seen("24-004-3", "edge", "red", "2024-05-01")))
          .hasMessageContaining(", observed, did not exist on 2024-05-01");
      assertThat(bench.refusal(seen("24-004 P1", "edge", "red", "2024-05-01")))
          .hasMessageContaining("it was sown on 2024-06-10");
      assertThat(bench.refusal(ramet("24-005", "24-004-2", "2024-05-01")))
          .hasMessageContaining(", the source of this offset, did not exist on 2024-05-01");
    }

    /** A book of an older version may hold such a cross; it must not stand in the way of others. */
    @Test
    void thatWasAParentTooEarlyInAnOlderBookHindersNoAmendment() {
      long crossed = bench.say(cross("24-005", "24-004-1", "24-002", "2024-08"));
      // The sowing is found to have been later than the crossing: not asked again of the cross.
      bench.say(amended(6, sowing("24-004 S1", "24-004 H1", "2024-06-10", "31")));
      assertThat(
              bench.refusal(amended(crossed, cross("24-005", "24-004-1", "24-002", "2024-04-02"))))
          .hasMessageContaining("did not exist on 2024-04-02");
    }

    @Test
    void seenAfterItDiedIsRemarkedOn() {
      bench.say(fate("24-004-2", Fate.DEAD, "2024-10-01"));
      assertThat(bench.warnings(seen("24-004-2", "edge", "red", "2025-01-01")))
          .containsExactly(
              text("24-004-2")
                  + " died on 2024-10-01, before this was seen (2025-01-01); see which date is"
                  + " wrong, or which plant was meant");
      assertThat(bench.warnings(seen("24-004-2", "edge", "red", "2024-09-30"))).isEmpty();
    }
  }

  @Nested
  class APlant {

    @Test
    void cannotDieBeforeItCame() {
      assertThat(bench.refusal(fate("24-001", Fate.DEAD, "2020-01-01")))
          .hasMessage(
              text("24-001")
                  + " (Echeveria laui) came on 2024-03-01, so nothing can have become of it on"
                  + " 2020-01-01; mend the one date or the other");
      assertThat(bench.refusal(fate("24-001", Fate.DISCARDED, "2001-01-01")))
          .hasMessageContaining("mend the one date or the other");
      bench.say(fate("24-001", Fate.DEAD, "2024-03"));
    }

    @Test
    void givesNoOffsetUnderADayBeforeItCameAndSoNoCodeOfThatYear() {
      assertThat(bench.refusal(ramet("10-001", "24-001", "2010-01-01")))
          .hasMessage(
              text("24-001")
                  + " (Echeveria laui), the source of this offset, came on 2024-03-01, after"
                  + " 2010-01-01; mend the date, or leave it open if this was taken where the"
                  + " plant stood before");
      bench.say(ramet("24-005", "24-001", null));
    }

    @Test
    void isOfOneTaxonOrOfSharesAndNotOfBoth() {
      assertThat(
              bench.refusal(
                  plant("24-007", made("Echeveria laui", Map.of("Echeveria laui", Fraction.HALF)))))
          .hasMessage(
              "nothing can be both Echeveria laui and made up of 1/2 Echeveria laui: what bears that"
                  + " name is wholly of it. Leave the shares out if the name is right, or give the"
                  + " shares without that name");
      bench.say(plant("24-007", made("Echeveria laui", Map.of("Echeveria laui", Fraction.ONE))));
      bench.say(
          plant("24-008", made("Echeveria 'Ember'", Map.of("Echeveria laui", Fraction.HALF))));
      bench.say(plant("24-009", made("Echeveria ×gilva", Map.of("Echeveria laui", Fraction.HALF))));
      bench.say(plant("24-010", made("Echeveria", Map.of("Echeveria laui", Fraction.HALF))));
      bench.say(
          plant("24-011", made("Echeveria cf. laui", Map.of("Echeveria laui", Fraction.HALF))));
    }

    private static Determination made(String taxon, Map<String, Fraction> makeup) {
      return new Determination(taxon, null, makeup, null, null);
    }
  }

  @Nested
  class AName {

    @ParameterizedTest
    @ValueSource(strings = {"24-001W", "24-1", "24-004-2", " 24-002x "})
    void thatReadsAsTheCodeOfAnotherThingIsRefused(String name) {
      assertThat(bench.refusal(called("24-007", name)))
          .hasMessageContaining("cannot be the name of a plant: 24-00")
          .hasMessageContaining("write it so that it reads as none, as \"old " + name.strip());
      assertThat(bench.refusal(new Named(code("24-002"), "24-001W", null)))
          .hasMessageContaining("24-001W is a plant of this register (entry 2)");
    }

    @Test
    void ofAnOldNotebookIsKeptAsItIs() {
      assertThat(bench.warnings(called("24-007", "87-12", "L-7", "K 24/001"))).isEmpty();
    }

    @Test
    void thatMayBeGivenOutAsACodeYetIsRemarkedOn() {
      assertThat(bench.warnings(called("24-007", "24-090")))
          .containsExactly(
              "the name \"24-090\" reads as a code that this register may give out yet; write it so"
                  + " that it reads as none, as \"old 24-090\"");
    }
  }

  @Nested
  class ANumber {

    @Test
    void ofSeedIsNotNought() {
      assertThat(bench.refusal(sowing("24-004 S2", "24-004 H1", "2024-06-10", "0")))
          .hasMessage(
              "a sowing of 0 seeds is none; say how many there were, or ? if nobody counted");
      assertThat(
              bench.refusal(
                  new SeedAcquired(
                      code("24-007"),
                      Determination.of("Echeveria laui"),
                      Provenance.UNKNOWN,
                      null,
                      Count.of(0),
                      null,
                      null)))
          .hasMessageContaining("a packet of 0 seeds is none");
      bench.say(sowing("24-004 S2", "24-004 H1", "2024-06-10", "?"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e30", "1e99", "1e-40", "1000000000"})
    void nobodyCanHaveMeasuredIsRefused(String value) {
      bench.say(new TraitDeclared("width", List.of(), null, null, "mm", null));
      assertThat(bench.refusal(seen("24-001", "width", value, null)))
          .hasMessage(
              value
                  + " mm is no width that anybody can have measured; write it in full, with up to"
                  + " nine digits before the point");
    }

    @Test
    void belowNoughtIsNoSize() {
      bench.say(new TraitDeclared("width", List.of(), null, null, "mm", null));
      bench.say(new TraitDeclared("lean", List.of(), BigDecimal.valueOf(-90), null, "mm", null));
      bench.say(new TraitDeclared("frost", List.of(), null, null, "°C", null));
      bench.say(
          new TraitDeclared(
              "vigour", List.of(), BigDecimal.valueOf(-3), BigDecimal.valueOf(3), null, null));
      assertThat(bench.refusal(seen("24-001", "width", "-5", null)))
          .hasMessage(
              "width is measured in mm, and -5 is below 0; see the sign, or declare the least that"
                  + " the trait can be");
      bench.say(seen("24-001", "lean", "-5", null));
      bench.say(seen("24-001", "frost", "-5", null));
      bench.say(seen("24-001", "vigour", "-2", null));
      bench.say(seen("24-001", "width", "12.5", null));
    }

    @Test
    void ofGametesIsWeighedWithinReason() {
      assertThat(bench.refusal(weighed("1" + "0".repeat(99))))
          .hasMessage(
              "an egg with C would count more than 1000 times as much as another; say how much it"
                  + " counts against one that counts 1, from 0 to 1000");
      assertThat(bench.refusal(weighed("1/1" + "0".repeat(99))))
          .hasMessageContaining("more than 9 decimals");
      bench.say(weighed("9/10"));
    }

    private static LocusDeclared weighed(String eggs) {
      LocusDeclared plain = gene("k", "C", "c");
      return new LocusDeclared(
          plain.locus(),
          plain.alleles(),
          plain.cytoplasmic(),
          plain.chromosome(),
          plain.centimorgans(),
          plain.linkedTo(),
          plain.recombination(),
          plain.incompatibility(),
          plain.leak(),
          plain.selfFertile(),
          Map.of("C", Fraction.parse(eggs)),
          plain.pollen(),
          plain.remark());
    }
  }

  /** What was accepted once is read for ever. */
  @Test
  void readingABookAgainAsksNoneOfThis() {
    RegisterTables tables = new RegisterTables();
    List<Statement> old =
        List.of(
            new RegisterOpened("KB", "Klara Beispiel", null),
            called("24-001"),
            called("24-002", "24-001W"),
            fate("24-001", Fate.DEAD, "1900"));
    String digest = Entry.NO_DIGEST;
    for (Statement statement : old) {
      Entry entry =
          Entry.seal(
              tables.size() + 1,
              Instant.parse("2024-03-04T12:00:00Z"),
              "Klara Beispiel",
              EntryJson.write(statement),
              digest);
      digest = entry.digest();
      tables.apply(Clerk.of(tables).reread(entry));
    }
    assertThat(tables.item(code("24-002")).orElseThrow().names()).containsExactly("24-001W");
  }
}
