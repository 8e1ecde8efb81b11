package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.name.GrowersMark;
import dev.filial.core.name.TravellingCode;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Joined;
import dev.filial.core.register.Named;
import dev.filial.core.register.Noted;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.SeedAcquired;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class FindingTest {

  private final InventedBench bench = new InventedBench();
  private final Code rosa = bench.plant(Determination.of(LAUI), "KB 12", "Rosa");
  private final Code rosalind = bench.plant(Determination.of(AGAVOIDES), null, "Rosalind");

  private Code one(String text) {
    return Finding.in(bench.store).one(text).code();
  }

  private List<Code> all(String text) {
    return Finding.in(bench.store).all(text).stream().map(Finding.Match::code).toList();
  }

  private void refused(String text, String... because) {
    assertThatThrownBy(() -> one(text))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContainingAll(because);
  }

  @Test
  void aCodeIsReadInAnyOfItsForms() {
    for (String typed :
        List.of("24-001", "24-1", "24-001w", " 24-001W ", "KB 24-001W", "kb 24-1")) {
      assertThat(one(typed)).as(typed).isEqualTo(rosa);
    }
  }

  @Test
  void whatABarCodeReaderTypesIsACode() {
    String scanned = new TravellingCode(new GrowersMark("KB"), rosa).machineReadable();
    assertThat(scanned).startsWith("KB24001W");
    assertThat(one(scanned)).isEqualTo(rosa);
    assertThat(all(scanned.toLowerCase(Locale.ROOT))).containsExactly(rosa);
    assertThat(one("KB-24-001W")).isEqualTo(rosa);
    String foreign = new TravellingCode(new GrowersMark("NT"), rosa).machineReadable();
    refused(foreign, "nothing here is called");
  }

  @Test
  void aPlantIsFoundByTheCodeItCameWith() {
    Code packet = Code.parse("24-050");
    bench.say(
        new SeedAcquired(
            packet,
            Determination.of(LAUI),
            new Provenance("Nina", "NT 24-001W", null, null),
            null,
            Count.of(20),
            null,
            null));
    assertThat(one("nt 24-001w")).isEqualTo(packet);
    assertThat(all("NT 24-001W")).startsWith(packet);
    refused("NT 24-002X", "nothing here is called");
  }

  @Test
  void whatWasRemarkedIsFoundWhenNothingElseFits() {
    bench.say(new Noted(rosa, "Two rosettes, the left one crested", null));
    assertThat(all("crested rosettes")).containsExactly(rosa);
    assertThat(Finding.in(bench.store).all("crested").get(0).why()).startsWith("by a remark");
    assertThat(all("variegated")).isEmpty();
  }

  @Test
  void aNameIsFoundByItsBeginningUnlessSeveralBeginSo() {
    assertThat(one("rosa")).isEqualTo(rosa);
    assertThat(one("rosal")).isEqualTo(rosalind);
    refused("ros", "may be", rosa.text(), rosalind.text(), "type more of it");
    refused("lilo", "nothing here is called \"lilo\"");
    refused("", "type a code");
  }

  @Test
  void anExactNameIsFoundAmongAThousandThatBeginSo() {
    for (int i = 0; i < 120; i++) {
      bench.say(new Named(rosalind, "ROSA " + i, null));
    }
    assertThat(one("Rosa")).isEqualTo(rosa);
  }

  @Test
  void aNameWithAnUnderscoreIsANameAndNoSmudge() {
    bench.say(new Named(rosalind, "98_3", null));

    assertThat(one("98_3")).isEqualTo(rosalind);
    assertThat(one("98_")).isEqualTo(rosalind);
    assertThat(all("98_3")).containsExactly(rosalind);
  }

  @Test
  void aCodeFromAnOldNotebookIsAName() {
    bench.say(new Named(rosa, "L/98-3", null));

    assertThat(one("l/98-3")).isEqualTo(rosa);
  }

  @Test
  void twoRecordsOfOnePlantThatShareItsNameAreOne() {
    Code again = bench.plant(Determination.of(LAUI), null, "Rosa");
    refused("Rosa", "may be");

    bench.say(new Joined(rosa, again, "one plant"));

    assertThat(one("Rosa")).isEqualTo(rosa);
    assertThat(one(again.text())).isEqualTo(rosa);
    assertThat(Finding.in(bench.store).code(again.text())).isEqualTo(again);
  }

  @Test
  void aSmudgedTagIsWhatFitsIt() {
    assertThat(one("24-001_")).isEqualTo(rosa);
    assertThat(all("__-00_")).containsExactly(rosa, rosalind);
    assertThat(all("______")).as("five characters at least stand on a tag").hasSize(2);
    Code cross = bench.cross(rosa, rosalind);
    Code seedling = bench.seedling(cross);
    assertThat(all("2_-001_-_")).containsExactly(seedling);
    assertThat(all("25-001_ _1")).isEmpty();
    assertThat(all("25-001_-1")).containsExactly(seedling);
    refused("24-_0_", "may be", rosa.text());
    refused("23-00_", "nothing in this register fits");
  }

  @Test
  void aWrongLetterProposesWhatIsOneSlipAway() {
    refused("24-002W", "the letter W does not go with", rosa.text(), rosalind.text());
    assertThat(all("24-100")).as("digits swapped").contains(rosa);
  }

  @Test
  void whatWasNeverGivenOutOrWasStruckSaysSo() {
    Code cross = bench.cross(rosa, rosalind);
    refused(cross.text() + "-1", "was never given out", "has a number yet");
    bench.seedling(cross);
    refused(cross.text() + "-9", "was never given out", "go up to 1");
    refused(cross.text() + " H1", "has no seed lot yet", cross.text() + "-1");
    Code mistaken = bench.plant(LAUI);
    bench.say(new Amended(bench.store.size(), null, "not mine"));
    refused(mistaken.text(), "was struck with entry");
    refused("24-077", "is not in this register");
  }

  @Test
  void halfRememberedPlantsAreFoundByWhatIsSaidOfThem() {
    assertThat(all("agavoides")).containsExactly(rosalind);
    assertThat(all("KB 12")).containsExactly(rosa);
    assertThat(all("12 laui")).containsExactly(rosa);
    assertThat(all("nothing like it")).isEmpty();
    assertThat(all("")).isEmpty();
  }

  @Test
  void theTabKeyIsProposedCodesAndNames() {
    Finding finding = Finding.in(bench.store);

    assertThat(finding.beginning("24-", 10)).containsExactly(rosa.text(), rosalind.text());
    assertThat(finding.beginning("ro", 10)).containsExactly("Rosa", "Rosalind");
    assertThat(finding.beginning("ro", 1)).containsExactly("Rosa");
    assertThat(finding.beginning("", 1)).containsExactly(rosa.text());
  }
}
