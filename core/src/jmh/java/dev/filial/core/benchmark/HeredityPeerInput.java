package dev.filial.core.benchmark;

import dev.filial.core.heredity.CrossScores;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Locus;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Writes the plants that {@link HeredityBenchmark} scores for the NumPy peer: how many small letters
 * each has at each of three genes, and the sums of the scores to compare with; and the class path,
 * for what is run next.
 */
public final class HeredityPeerInput {

  private HeredityPeerInput() {}

  /** Writes into the directory named first. */
  public static void main(String[] args) throws IOException {
    Path directory = Path.of(args[0]);
    HeredityBenchmark benchmark = new HeredityBenchmark();
    benchmark.build();
    List<Locus> loci =
        List.of(
            HeredityBenchmark.locus(0), HeredityBenchmark.locus(1), HeredityBenchmark.locus(2));
    List<Genotype> plants = HeredityBenchmark.plants(loci);
    ByteBuffer kinds = ByteBuffer.allocate(plants.size() * 12).order(ByteOrder.LITTLE_ENDIAN);
    for (Genotype plant : plants) {
      for (Locus locus : loci) {
        int small = 0;
        for (String allele : plant.alleles(locus)) {
          small += allele.equals(locus.alleles().get(1)) ? 1 : 0;
        }
        kinds.putInt(small);
      }
    }
    Files.writeString(directory.resolve("classpath"), System.getProperty("java.class.path"));
    Files.write(directory.resolve("kinds.bin"), kinds.array());
    Files.writeString(
        directory.resolve("sums.txt"), sum(benchmark.apart) + "\n" + sum(benchmark.joint) + "\n");
  }

  private static double sum(CrossScores scores) {
    double sum = 0;
    for (int seed = 0; seed < scores.plants(); seed++) {
      for (int pollen = 0; pollen < scores.plants(); pollen++) {
        sum += scores.chance(seed, pollen) * (1 + seed % 7);
      }
    }
    return sum;
  }
}
