package dev.filial.core.benchmark;

import dev.filial.core.ancestry.ExpectedShares;
import dev.filial.core.pedigree.Pedigree;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Writes the nursery's pedigree for the NumPy peer: the level starts, each plant's seed and pollen
 * parent (a founder's taxon twice), and the column sums of the expected shares to compare with; and
 * the class path, for what is run next.
 */
public final class PeerInput {

  private PeerInput() {}

  /** Writes into the directory named first. */
  public static void main(String[] args) throws IOException {
    Path directory = Path.of(args[0]);
    Nursery nursery = new Nursery(20);
    Pedigree pedigree =
        Pedigree.ofParents(nursery.codes, nursery.seed, nursery.pollen, nursery.taxa);
    ExpectedShares shares = ExpectedShares.of(pedigree);
    ByteBuffer parents =
        ByteBuffer.allocate(pedigree.size() * 8).order(ByteOrder.LITTLE_ENDIAN);
    double[] sums = new double[Nursery.TAXA];
    for (int i = 0; i < pedigree.size(); i++) {
      boolean founder = pedigree.isFounder(i);
      int taxon = founder ? shares.taxa().indexOf(pedigree.founder(i).makeup().shares().firstKey()) : 0;
      parents.putInt(founder ? taxon : pedigree.seedParent(i));
      parents.putInt(founder ? taxon : pedigree.pollenParent(i));
      double[] row = shares.row(i);
      for (int k = 0; k < sums.length; k++) {
        sums[k] += row[k] * (i % 7);
      }
    }
    Files.writeString(directory.resolve("classpath"), System.getProperty("java.class.path"));
    Files.write(directory.resolve("parents.bin"), parents.array());
    StringBuilder text = new StringBuilder();
    for (int level = 0; level <= pedigree.levels(); level++) {
      text.append(pedigree.levelStart(level)).append(' ');
    }
    text.append('\n');
    for (double sum : sums) {
      text.append(sum).append(' ');
    }
    Files.writeString(directory.resolve("levels.txt"), text.append('\n'));
  }
}
