package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A grower puts right what was written. */
class CorrectVerbsTest {

  @TempDir Path folder;

  private BenchStory bench;

  /** Entries 2 to 4 are three plants, entry 5 is the cross 26-004R of the first two. */
  @BeforeEach
  void aCross() {
    bench = new BenchStory(folder);
    bench.done("plant", "Echeveria laui");
    bench.done("plant", "Echeveria agavoides");
    bench.done("plant", "Echeveria colorata", "--name", "Rosa");
    bench.done("cross", "26-001", "26-002", "--bagged");
  }

  private static void requireRefused(Outcome outcome, int status, String... words) {
    assertThat(outcome.status()).as(outcome.err()).isEqualTo(status);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().replaceAll("\\s+", " ")).contains(words);
  }

  @Test
  void undoIsOneWordAndCanItselfBeUndone() {
    assertThat(bench.done("undo"))
        .startsWith("Entry 6: entry 5 is struck (26-004R: 26-001M × 26-002N, bagged).")
        .contains("filial strike 6 --why");
    requireRefused(bench.type("ancestry", "26-004"), 1, "26-004R was struck");
    bench.done("undo");
    requireRefused(bench.type("ancestry", "Rosa"), 1, "Rosa");
    bench.done("strike", "6", "--why", "it was right");
    assertThat(bench.done("ancestry", "26-004")).contains("F1");
  }

  @Test
  void withNothingLeftToUndoTheRegisterSaysNo() {
    for (int i = 0; i < 4; i++) {
      bench.done("undo");
    }
    requireRefused(bench.type("undo"), 1, "there is nothing to undo");
  }

  @Test
  void anEntryThatOthersLeanOnIsNotStruckAndTheyAreNamed() {
    requireRefused(bench.type("strike", "2", "--why", "sold"), 1, "entry 5", "26-001M");
    requireRefused(bench.type("strike", "40", "--why", "x"), 1, "there is no entry 40");
    requireRefused(bench.type("strike", "1", "--why", "x"), 1, "entry 1 says whose register");
  }

  @Test
  void aCorrectionSaysWhy() {
    requireRefused(bench.type("strike", "4"), 2, "a correction says why", "--why");
    requireRefused(bench.type("amend", "5", "pollen=26-003"), 2, "a correction says why");
    Outcome asked = bench.asked(new String[] {"broken off"}, "strike", "4");
    assertThat(asked.status()).isZero();
    assertThat(asked.err()).contains("Why?");
    assertThat(asked.out()).contains("because:\nbroken off.");
  }

  @Test
  void thePollenParentIsPutRightInAGrowersWords() {
    Outcome amended =
        bench.type("amend", "5", "pollen=Rosa", "date=yesterday", "--why", "misread the tag");
    assertThat(amended.err()).contains("came on 2026-06-15, after the cross");
    assertThat(amended.out())
        .startsWith("Entry 6: entry 5 now says: 26-004R: 26-001M × 26-003P, bagged.")
        .contains("Write on the tag:", "26-001M × 26-003P");
    JsonNode ancestry = bench.json("ancestry", "26-004");
    assertThat(ancestry.get("taxa").toString()).contains("Echeveria colorata");
    assertThat(bench.json("history", "5").get("said").get("date").stringValue())
        .isEqualTo("2026-06-14");
  }

  @Test
  void aPropertyWithinAnotherNeedsNoPath() {
    bench.cautioned("on it hangs", "amend", "2", "taxon=Echeveria elegans", "--why", "it flowered");
    assertThat(bench.json("history", "2").get("body").stringValue())
        .contains("\"determination\":{\"taxon\":\"Echeveria elegans\"}");
    bench.done("amend", "4", "names=", "--why", "that is another");
    requireRefused(bench.type("ancestry", "Rosa"), 1, "Rosa");
  }

  @Test
  void theWholeOfAnEntryCanBeGiven() {
    bench.done(
        "amend",
        "5",
        "--as",
        "{\"kind\":\"cross\",\"code\":\"26-004\",\"seedParent\":\"26-003\","
            + "\"pollen\":{\"from\":\"itself\"}}",
        "--why",
        "all wrong");
    assertThat(bench.done("history", "5")).contains("26-003P selfed");
  }

  @Test
  void whatCannotBeAmendedIsSaid() {
    requireRefused(
        bench.type("amend", "5", "polen=26-003", "--why", "x"),
        1,
        "there is no \"polen\" in an entry of this kind; there is code, seedParent, pollen");
    requireRefused(
        bench.type("amend", "5", "pollen=26-002", "--why", "x"), 1, "entry 5 says that already");
    requireRefused(
        bench.type("amend", "5", "pollen=26-099", "--why", "x"), 1, "26-099", "register");
    requireRefused(bench.type("amend", "5", "pollen=Lilo", "--why", "x"), 1, "Lilo");
    requireRefused(bench.type("amend", "5", "date=4/3", "--why", "x"), 1, "could be 4 March");
    requireRefused(bench.type("amend", "5", "--why", "x"), 2, "should have said");
    requireRefused(bench.type("amend", "5", "pollen", "--why", "x"), 2, "nothing to put right");
    requireRefused(bench.type("amend", "five", "a=b", "--why", "x"), 2, "number of an entry");
    requireRefused(bench.type("amend", "5", "--as", "{}", "--why", "x"), 1, "kind");
    bench.done("amend", "5", "pollen=26-003", "--why", "misread");
    requireRefused(
        bench.type("amend", "6", "why=because", "--why", "x"), 1, "itself puts entry 5 right");
  }

  @Test
  void aSelfingThatMakesAPlantItsOwnParentIsRefused() {
    requireRefused(bench.type("amend", "5", "seed=26-004-1", "--why", "x"), 1, "26-004R-1");
  }

  @Test
  void historyShowsTheFirstWordingWhatPutItRightAndWhoseGuessItIs() {
    bench.done("amend", "5", "pollen=26-003", "--why", "misread", "--by", "Ada");
    bench.done("guess", "26-004", "--whose", "Bert");
    String told = bench.done("history", "5").replaceAll("\\s+", " ");
    assertThat(told)
        .contains("Entry 5 (amended) (a guess of Bert): 26-004R: 26-001M × 26-003P")
        .contains(
            "first said",
            "26-001M × 26-002N",
            "by Ada",
            "kind cross",
            "pollen.plant 26-003P 26-002N");
    assertThat(bench.done("history", "5")).doesNotContain("{");
    JsonNode json = bench.json("history", "5");
    assertThat(json.get("later")).hasSize(2);
    assertThat(json.get("digest").stringValue()).hasSize(64);
    requireRefused(bench.type("history", "77"), 1, "there is no entry 77; the last one is 7");
  }

  @Test
  void whatTheShortWordingLeavesOutIsReadableBeforeAndAfter() {
    bench.type("amend", "5", "date=1 jan 2026", "--why", "the notebook says so");

    assertThat(bench.done("history", "5").replaceAll(" +", " "))
        .contains("property says first said\n")
        .containsPattern("date 2026-01-01 20\\d\\d-\\d\\d-\\d\\d\n");
    assertThat(bench.json("history", "5").get("firstBody").stringValue())
        .isNotEqualTo(bench.json("history", "5").get("body").stringValue());
  }

  @Test
  void aPropertyIsPutRightByTheNameThatHistoryShows() {
    bench.done("died", "26-001", "26-002");
    assertThat(bench.done("history", "6").replaceAll(" +", " ")).contains("\ncodes.2 26-002N\n");

    bench.done("amend", "6", "codes.2=26-003", "--why", "misread");

    assertThat(bench.done("history", "6").replaceAll(" +", " "))
        .contains("\ncodes.2 26-003P 26-002N\n");
  }

  @Test
  void amendingAStruckEntrySaysThatItIsInForceAgain() {
    bench.done("undo");

    assertThat(bench.done("amend", "5", "pollen=26-003", "--why", "it was made after all"))
        .contains("entry 5, which was struck, is in force again and says: 26-004R");
  }

  @Test
  void aCodeIsNeverHiddenByANameThatLooksLikeIt() {
    requireRefused(
        bench.type("name", "26-002", "26-001M"), 1, "26-001M is a plant of this register");
    assertThat(bench.type("name", "26-002", "26-050").err()).contains("may give out yet");
    bench.done("plant", "Echeveria setosa", "--code", "26-050");

    assertThat(bench.done("show", "26-050")).contains("plant: Echeveria setosa");
  }

  @Test
  void aDayThatHasNotComeIsNotedAndAFarOneRefused() {
    requireRefused(
        bench.type("plant", "Echeveria laui", "--date", "2206-01-01"), 2, "far ahead of today");
    assertThat(bench.type("plant", "Echeveria laui", "--date", "2026-12-24").err())
        .contains("2026-12-24 has not come yet");
  }

  @Test
  void aNameThatNothingBearsIsNoted() {
    assertThat(bench.type("rename", "Echeveria lavi", "Echeveria nova").err())
        .contains("nothing here bears the name Echeveria lavi");
    assertThat(bench.type("rename", "Echeveria laui", "Echeveria nova").err()).isEmpty();
  }

  @Test
  void historyOfAPlantListsWhatSpeaksOfIt() {
    assertThat(bench.done("history", "26-001"))
        .contains("26-001M acquired", "26-001M × 26-002N")
        .doesNotContain("colorata");
    assertThat(bench.json("history", "--last", "2").get("entries")).hasSize(2);
    assertThat(bench.json("history").get("entries")).hasSize(5);
  }

  @Test
  void aTaxonIsReadUnderItsNewName() {
    assertThat(bench.done("rename", "Echeveria laui", "Echeveria nova"))
        .contains("Echeveria laui is to be read as Echeveria nova");
    assertThat(bench.json("ancestry", "26-004").get("taxa").toString()).contains("Echeveria nova");
    requireRefused(
        bench.type("rename", "Echeveria nova", "Echeveria  nova"), 1, "already one name");
  }

  @Test
  void twoRecordsOfOnePlantAreJoined() {
    assertThat(
            bench.cautioned(
                "26-001M is Echeveria laui and 26-003P is Echeveria colorata",
                "join",
                "26-001",
                "Rosa",
                "--why",
                "one stem"))
        .contains("26-003P is the same plant as 26-001M (one stem)");
    assertThat(bench.json("ancestry", "26-003").get("taxa").toString()).contains("Echeveria laui");
    requireRefused(bench.type("join", "26-001", "26-004", "--why", "x"), 1, "26-004R is a cross");
  }

  @Test
  void aPlantThatDiedUnderOneTagIsDeadUnderTheOther() {
    bench.done("died", "Rosa");
    Outcome joined = bench.type("join", "26-001", "Rosa", "--why", "one stem");
    assertThat(joined.status()).as(joined.err()).isZero();
    assertThat(joined.out())
        .contains("26-003P is the same plant as 26-001M (one stem); it died on 2026-06-15");
    assertThat(joined.err().replaceAll("\\s+", " "))
        .contains("26-003P died on 2026-06-15, and so 26-001M is gone");
    assertThat(bench.done("list", "--kind", "plants")).doesNotContain("26-001M");
    bench.done("undo");
    assertThat(bench.done("list", "--kind", "plants")).contains("26-001M");
  }

  @Test
  void whoseWordHoldsIsAskedWhereTheRecordsContradictEachOther() {
    bench.done("died", "26-002");
    assertThat(bench.type("give", "Rosa", "--to", "Lena Muster").status()).isZero();
    requireRefused(
        bench.type("join", "26-002", "Rosa", "--why", "one stem"),
        1,
        "26-002N died on 2026-06-15, but 26-003P was given away on 2026-06-15",
        "--fate keep, or --fate other");
    assertThat(
            bench.cautioned(
                "26-002N is Echeveria agavoides",
                "join",
                "26-002",
                "Rosa",
                "--why",
                "one stem",
                "--fate",
                "other"))
        .contains("it was given away on");
    bench.done("undo");
    Outcome asked =
        bench.asked(new String[] {"other"}, "join", "26-002", "Rosa", "--why", "one stem");
    assertThat(asked.status()).as(asked.err()).isZero();
    assertThat(asked.err()).contains("Which holds, keep or other");
    assertThat(asked.out()).contains("it was given away on");
  }

  @Test
  void whatBecomesOfAPlantIsSaidOfTheRecordThatIsRead() {
    bench.type("join", "26-001", "Rosa", "--why", "one stem");
    assertThat(bench.done("died", "26-003")).contains("26-001M died");
    requireRefused(
        bench.type("join", "26-001", "26-003", "--why", "again"), 1, "joined with itself");
    assertThat(bench.done("list", "--kind", "plants")).doesNotContain("26-001M");
  }

  @Test
  void aRecordOfTwoPlantsIsParted() {
    assertThat(
            bench.done(
                "part",
                "26-001",
                "--entries",
                "5",
                "--taxon",
                "Echeveria elegans",
                "--why",
                "two rosettes"))
        .contains("26-005T parted from 26-001M (two rosettes)")
        .contains("Write on the tag:\n    26-005T\n    Echeveria elegans\n");
    assertThat(bench.json("ancestry", "26-004").get("taxa").toString())
        .contains("Echeveria elegans");
    requireRefused(
        bench.type("part", "26-002", "--entries", "4", "--why", "x"), 1, "does not speak of");
    requireRefused(
        bench.type("part", "26-002", "--entries", "four", "--why", "x"), 2, "number of an entry");
  }

  @Test
  void aGuessIsSaidInEveryAnswer() {
    assertThat(bench.done("guess", "26-002", "--whose", "Bert"))
        .contains("entry 3 is a guess of Bert (26-002N acquired: Echeveria agavoides");
    assertThat(bench.done("ancestry", "26-004")).contains("Bert");
    assertThat(bench.done("guess", "5")).contains("a guess of Klara Beispiel");
    requireRefused(bench.type("guess", "99"), 1, "99");
  }

  @Test
  void odditiesAreTakenOrRefusedCleanly() {
    String long300 = "x".repeat(300);
    bench.cautioned(
        "no room on the tag",
        "amend",
        "4",
        "names=O'Brien <b>\"🌵\"</b>, " + long300,
        "--why",
        "🙂 'quoted'");
    assertThat(bench.json("history", "4").get("body").stringValue()).contains("🌵", long300);
    assertThat(bench.done("history", "4")).contains("O'Brien", "🙂 'quoted'");
  }

  @Test
  void whatHangsOnACrossIsSaidWithWhatItsTagsSayNow() {
    bench.done("harvest", "26-004", "20");
    bench.done("sow", "26-004", "20", "--pots", "1");
    Outcome outcome = bench.type("amend", "5", "pollen=open", "--why", "no bag");
    assertThat(outcome.status()).isZero();
    assertThat(outcome.err().replaceAll("\\s+", " "))
        .contains(
            "on it hang 3 other things; the tags of 3 of them say something"
                + " else now. They are listed by: filial hangs 5");
    bench.done("amend", "4", "place=sill", "--why", "moved");
  }

  @Test
  void aCountOfOnePotIsPutRightByThePropertysOwnName() {
    bench.done("harvest", "26-004", "20");
    bench.done("sow", "26-004", "20", "--pots", "1");
    bench.done("count", "26-004 P1", "--up", "12");
    assertThat(bench.done("amend", "8", "germinated=13", "--why", "counted again"))
        .contains("entry 8 now says:", "13");
    requireRefused(
        bench.type("amend", "8", "sprouted=13", "--why", "x"),
        1,
        "there is no \"sprouted\" in an entry of this kind",
        "readings.1.germinated",
        "What it says now is shown by: filial history 8");
  }
}
