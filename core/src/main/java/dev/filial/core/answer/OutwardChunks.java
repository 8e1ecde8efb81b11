package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.register.RegisterView;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Walks over many things of a register a chunk at a time, with the pedigree behind each chunk. */
final class OutwardChunks {

  /** Looks at one thing. */
  @FunctionalInterface
  interface Look {
    /**
     * Looks.
     *
     * @param behind the pedigree behind it; empty where it cannot be computed with
     * @throws IOException if what is told of it cannot be written
     */
    void at(Code code, Optional<OutwardPedigree> behind) throws IOException;
  }

  private final RegisterView view;
  private final OutwardCodes outward;

  OutwardChunks(RegisterView view, OutwardCodes outward) {
    this.view = view;
    this.outward = outward;
  }

  void each(List<Code> codes, Look look) throws IOException {
    for (List<Code> chunk : ChosenCodes.chunks(codes)) {
      chunk(chunk, look);
    }
  }

  /** A pedigree that cannot be computed with must not take its neighbours with it. */
  private void chunk(List<Code> codes, Look look) throws IOException {
    Optional<OutwardPedigree> behind = behind(codes);
    if (behind.isEmpty() && codes.size() > 1) {
      chunk(codes.subList(0, codes.size() / 2), look);
      chunk(codes.subList(codes.size() / 2, codes.size()), look);
      return;
    }
    for (Code code : codes) {
      look.at(code, behind);
    }
  }

  private Optional<OutwardPedigree> behind(List<Code> codes) {
    try {
      return Optional.of(OutwardPedigree.of(view, outward, codes));
    } catch (PedigreeException e) {
      return Optional.empty();
    }
  }
}
