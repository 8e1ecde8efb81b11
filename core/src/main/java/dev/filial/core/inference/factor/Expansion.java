package dev.filial.core.inference.factor;

/** Tables over the states that are left, written over all states. */
final class Expansion {

  private Expansion() {}

  static double[] marginal(Reduced reduced, int variable, double[] ofKept) {
    int[] kept = reduced.kept[variable];
    double[] full = new double[reduced.allStates[variable]];
    for (int i = 0; i < kept.length; i++) {
      full[kept[i]] = ofKept[i];
    }
    return full;
  }

  /** {@code ofKept} is over the asked variables in their order, without those that are settled. */
  static double[] joint(Reduced reduced, int[] asked, double[] ofKept) {
    int arity = asked.length;
    int[] stride = new int[arity];
    int size = 1;
    int at = 0;
    for (int d = arity - 1; d >= 0; d--) {
      stride[d] = size;
      size *= reduced.allStates[asked[d]];
      at += stride[d] * reduced.kept[asked[d]][0];
    }
    double[] full = new double[size];
    int[] digit = new int[arity];
    for (int i = 0; ; ) {
      full[at] = ofKept[i];
      if (++i == ofKept.length) {
        return full;
      }
      for (int d = arity - 1; ; d--) {
        int[] kept = reduced.kept[asked[d]];
        at -= stride[d] * kept[digit[d]];
        boolean carry = ++digit[d] == kept.length;
        if (carry) {
          digit[d] = 0;
        }
        at += stride[d] * kept[digit[d]];
        if (!carry) {
          break;
        }
      }
    }
  }

  static double[] marginalOfJoint(Reduced reduced, int[] asked, int dimension, double[] joint) {
    double[] marginal = new double[reduced.allStates[asked[dimension]]];
    Kernels.sumAround(marginal, 0, dimension, joint, asked, reduced.allStates);
    return marginal;
  }
}
