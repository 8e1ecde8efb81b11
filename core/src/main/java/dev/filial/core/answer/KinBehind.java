package dev.filial.core.answer;

import dev.filial.core.ancestry.Coancestry;
import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The pedigree behind some plants as questions of kinship read it, and what they lean on. */
final class KinBehind {

  private final RegisterView view;
  private final RegisterPedigree plain;
  private final KinPedigree kin;
  private final TetraploidPairing pairing;

  private KinBehind(RegisterView view, RegisterPedigree plain, FieldNumberKin apart) {
    this.view = view;
    this.plain = plain;
    kin = KinPedigree.of(view, plain, apart);
    pairing = TetraploidPairing.of(view, kin.pedigree());
  }

  /**
   * Behind these codes, plants of one field number that were acquired apart taken as unrelated.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   * @throws PedigreeException if the pedigree cannot be computed with
   */
  static KinBehind of(RegisterView view, List<Code> codes) {
    List<Code> known = new ArrayList<>();
    for (Code code : codes) {
      known.add(Things.required(view, code).code());
    }
    return of(view, RegisterPedigree.of(view, known, false));
  }

  /** The same where the pedigree was looked up before. */
  static KinBehind of(RegisterView view, RegisterPedigree plain) {
    return new KinBehind(view, plain, FieldNumberKin.UNRELATED);
  }

  /** The same with plants of one field number taken as that kin. */
  KinBehind with(FieldNumberKin apart) {
    return new KinBehind(view, plain, apart);
  }

  /** What the {@code k}-th plant asked for is called. */
  String name(int k) {
    return plain.asked().get(k);
  }

  List<String> names() {
    return plain.asked();
  }

  /** The index of the {@code k}-th plant asked for. */
  int plant(int k) {
    return pedigree().indexOf(name(k));
  }

  int[] plants() {
    return names().stream().mapToInt(pedigree()::indexOf).toArray();
  }

  Pedigree pedigree() {
    return kin.pedigree();
  }

  Coancestry coancestry() {
    return Coancestry.of(pedigree()).withDoubleReduction(pairing.doubleReduction().toDouble());
  }

  /** The field numbers that several acquisitions bear. */
  List<String> fieldNumbers() {
    return kin.fieldNumbers();
  }

  /** Whether two plants are one genotype. */
  boolean isSame(int one, int other) {
    return pedigree().genet(one) == pedigree().genet(other)
        && pedigree().ploidy(one) == pedigree().ploidy(other);
  }

  /** What kin two plants of that coancestry are, in words. */
  String kin(int one, int other, double coancestry) {
    int ploidy = pedigree().ploidy(one);
    return isSame(one, other)
        ? "one and the same plant"
        : NearKin.of(coancestry, ploidy == pedigree().ploidy(other) ? ploidy : 0);
  }

  /**
   * How inbred seedlings of two plants would be.
   *
   * @param inbreeding 0 to 1; null if there is no half of a parent's sets
   * @param why there is none, naming the parent; empty if there is
   */
  record OfSeedlings(@Nullable Double inbreeding, String why) {}

  OfSeedlings seedlings(int one, int other) {
    try {
      return new OfSeedlings(coancestry().inbreedingOfSeedlings(one, other), "");
    } catch (PedigreeException e) {
      return new OfSeedlings(null, String.valueOf(e.getMessage()));
    }
  }

  /**
   * How much of the inbreeding of seedlings comes of their parents being kin: two sets of a
   * seedling, drawn without return, are of different parents with a chance of 2ab / (n (n − 1)), of
   * gametes of a and b sets and n = a + b, and then one by descent with the coancestry. The rest,
   * in polyploids, is two sets of one gamete, which double reduction or a parent that is inbred
   * itself makes alike whatever the other parent is.
   *
   * @param coancestry of the parents, 0 to 1
   * @return 0 to the coancestry; that itself for diploids, and where half of a parent's sets is no
   *     whole number
   */
  double byKinship(int one, int other, double coancestry) {
    int a = pedigree().ploidy(one);
    int b = pedigree().ploidy(other);
    if (a == 0 || b == 0 || a % 2 == 1 || b % 2 == 1) {
      return coancestry;
    }
    double sets = (a + b) / 2.0;
    return coancestry * (a / 2.0) * b / (sets * (sets - 1));
  }

  /** What relationship leans on, and then what the pedigree does, a sentence each. */
  List<String> notes() {
    List<String> notes = kinNotes();
    notes.addAll(plain.notes());
    return notes;
  }

  /** What relationship leans on, a sentence each. */
  List<String> kinNotes() {
    List<String> notes = new ArrayList<>(pairing.notes());
    for (Code packet : kin.packets()) {
      notes.add(
          "Seedlings of the acquired packet "
              + packet.text()
              + " are taken as full sibs; nobody recorded their parents.");
    }
    return notes;
  }
}
