package dev.filial.core.pedigree;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Notation;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What a pedigree is written as says the same crosses when it is read. */
class NotationRoundTripTest {

  @Provide
  Arbitrary<List<PlantRecord>> records() {
    return RandomPedigree.records();
  }

  @Property(tries = 200)
  void whatIsWrittenReadsBackAsTheSameCrosses(@ForAll("records") List<PlantRecord> records) {
    Pedigree pedigree = Pedigree.of(records);
    String last = records.get(records.size() - 1).code();
    Notation written = NotationOf.of(pedigree, last, NotationOf.Names.byTaxon());
    List<PlantRecord> read = PedigreeFromNotation.records(written);
    Notation again =
        NotationOf.of(
            Pedigree.of(read), read.get(read.size() - 1).code(), NotationOf.Names.byTaxon());
    assertThat(again.text()).isEqualTo(written.text());
  }
}
