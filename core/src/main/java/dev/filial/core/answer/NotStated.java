package dev.filial.core.answer;

import dev.filial.core.register.RegisterRefusal;

/** A question that cannot be answered before something more is stated, and what that is. */
public final class NotStated extends RegisterRefusal {

  private static final long serialVersionUID = 1L;

  /** What has to be stated. */
  public enum Need {
    /** What a plant carries. */
    GENES,
    /** How a plant forms its gametes. */
    GAMETES,
    /**
     * The ratio that a family is tested against, where the genes of this parent do not tell it.
     * Whoever tests what the parent carries cannot state that first.
     */
    RATIO
  }

  private final Need need;
  private final String plant;

  /**
   * A refusal with its message.
   *
   * @param plant the code of the plant of which it has to be stated, or the genes that were typed
   */
  public NotStated(Need need, String plant, String message) {
    super(message);
    this.need = need;
    this.plant = plant;
  }

  /** What has to be stated. */
  public Need need() {
    return need;
  }

  /** The plant of which it has to be stated. */
  public String plant() {
    return plant;
  }
}
