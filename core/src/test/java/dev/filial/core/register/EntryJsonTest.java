package dev.filial.core.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EntryJsonTest {

  @Provide
  Arbitrary<Statement> statements() {
    return StatementArbitraries.all();
  }

  @Provide
  Arbitrary<Statement> plain() {
    return StatementArbitraries.plain();
  }

  @Property
  void whatIsWrittenIsReadBackExactly(@ForAll("statements") Statement statement) {
    String json = EntryJson.write(statement);
    assertThat(EntryJson.read(json)).isEqualTo(statement);
    assertThat(EntryJson.write(EntryJson.read(json))).isEqualTo(json);
    assertThat(json).doesNotContain("\n").doesNotContain(":null");
  }

  @Test
  void theLawAboveIsAskedOfEveryKind() {
    Set<Class<?>> seen = new HashSet<>();
    StatementArbitraries.all().sampleStream().limit(3000).forEach(it -> seen.add(it.getClass()));
    assertThat(seen).containsExactlyInAnyOrder(Statement.class.getPermittedSubclasses());
  }

  @Property(tries = 200)
  void anUnknownPropertyIsNamed(@ForAll("plain") Statement statement) {
    String json = EntryJson.write(statement);
    String more = json.substring(0, json.length() - 1) + ",\"colour\":\"red\"}";
    assertThatThrownBy(() -> EntryJson.read(more))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"colour\" is no property here; there are ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"kind":"note","text":"x"} | the entry lacks its "code"
          {"kind":"note","code":"26-013E"} | the entry lacks its "text"
          {"kind":"note","code":"26-013E","text":" "} | "text" is empty; say it, in a few words
          {"kind":"note","code":"26-013A","text":"x"} | "code": 26-013A: the letter A does not go
          {"kind":"note","code":{"year":26},"text":"x"} | "code": here stands one text in quotes
          {"kind":"note","code":"26-013E","text":["x"]} | "text" is a text in quotes
          {"kind":"note","code":"26-013E","code":"26-014H","text":"x"} | Duplicate
          {"kind":"note","code":"26-013E","text":"x","date":"4 mar"} | "date": "4 mar" is not a date; write 2024-03-04
          {"kind":"notes","code":"26-013E"} | "kind": "notes" is none of amend, care, count, cross,
          {"code":"26-013E","text":"x"} | the entry lacks its "kind"; it is one of amend, care, count, cross,
          {"kind":"cross","code":"26-013E","seedParent":"26-001M"} | the entry lacks its "pollen"
          {"kind":"cross","code":"26-013E","seedParent":"26-001M","pollen":{"plant":"26-002N"}} | the entry lacks its "pollen.from"; it is one of itself, mix, open, plant
          {"kind":"cross","code":"26-013E","seedParent":"26-001M","pollen":{"from":"bee"}} | "pollen.from": "bee" is none of itself, mix, open, plant
          {"kind":"cross","code":"26-013E","seedParent":"26-001M","pollen":{"from":"plant"}} | the entry lacks its "pollen.plant"
          {"kind":"cross","code":"26-013E","seedParent":"26-001M","pollen":{"from":"mix","plants":[{"plant":"26-001M"}]}} | "pollen.plants[0]"
          {"kind":"cross","code":"26-013E","seedParent":"26-001M","pollen":{"from":"itself"},"selfs":"half"} | "selfs": "half" is not a fraction; write 3/8
          {"kind":"cross","code":"26-013E","seedParent":"26-001M","pollen":{"from":"itself"},"selfs":"2/3","strays":"1/2"} | exceeds 1
          {"kind":"cross","code":"26-013E","seedParent":"26-001M","pollen":{"from":"itself"},"storedPollen":"yes"} | "storedPollen" is true or false
          {"kind":"cross","code":"26-013E","seedParent":"26-001M","pollen":{"from":"itself"},"seedSets":1.5} | "seedSets"
          {"kind":"cross","code":"26-013E","seedParent":"26-001M","pollen":{"from":"itself"},"protection":"bagged"} | "protection" is a list in [ ]
          {"kind":"cross","code":"26-013E","seedParent":"26-001M","pollen":{"from":"itself"},"protection":["bag"]} | "protection[0]": "bag" is none of emasculated, bagged, isolated, none
          {"kind":"harvest","lot":"26-013E H1","count":"lots"} | "count": "lots" is not a count; write 80, or ~80
          {"kind":"harvest","lot":"26-013E","count":"8"} | 26-013E is not a seed lot; one is written 26-013E H1
          {"kind":"move","codes":["26-013E",null],"place":"shelf"} | null where a value belongs
          {"kind":"move","codes":["26-013E","26-013E"],"place":"shelf"} | 26-013E is named twice
          {"kind":"number","from":"26-013E"} | "first" and "last"
          {"kind":"number","from":"26-013E","first":"x","last":2} | "first" is a whole number
          {"kind":"amend","why":"typing"} | "entry" is 0; it is the number of an earlier entry
          {"kind":"amend","entry":5} | the entry lacks its "why"
          {"kind":"amend","entry":5,"why":"typing","replacement":{"kind":"note","code":"26-013E"}} | the entry lacks its "replacement.text"
          {"kind":"amend","entry":5,"why":"typing","replacement":{"kind":"note","code":"26-013E","text":"y","txt":"x"}} | "replacement.txt" is no property here; there are code, date, text
          {"kind":"plant","code":"26-013E","determination":{"taxon":"???"}} | "determination"
          {"kind":"plant","code":"26-013E","determination":{"generation":"second"}} | "second" is no generation; write F1, F2
          {"kind":"plant","code":"26-013E","determination":{"makeup":{"Echeveria laui":"2/3","Echeveria alba":"1/2"}}} | exceeds 1
          {"kind":"plant","code":"26-013E","determination":{},"provenance":[]} | "provenance" is an object in { }
          {"kind":"observation","code":"26-013E","trait":"edge","value":"red","photograph":{"path":"a.jpg","sha256":"1"}} | "1" is not a SHA-256 digest
          {"kind":"trait","trait":"width","most":1e999,"unit":"mm"} | more than 30 digits
          {"kind":"count","readings":[{"code":"26-013E P1"}]} | say how many of 26-013E P1
          {"kind":"count","readings":[{"germinated":"3"}]} | the entry lacks its "readings[0].code"
          {"kind":"note" | the entry is not JSON (line 1
          null | the entry is null
          [] | the entry
          {"kind":"note","code":"26-013E","text":"x"} {} | the entry
          """)
  void whatCannotBeReadIsNamed(String json, String complaint) {
    assertThatThrownBy(() -> EntryJson.read(json))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(complaint)
        .message()
        .doesNotContain("dev.filial", "tools.jackson", "java.lang");
  }

  @Test
  void absentAndNullAreTheSame() {
    assertThat(
            EntryJson.read(
                """
                {"kind":"plant","code":"26-001M","determination":null,"provenance":null,
                 "date":null,"names":null,"place":null}"""))
        .isEqualTo(EntryJson.read("{\"kind\":\"plant\",\"code\":\"26-001M\"}"));
  }
}
