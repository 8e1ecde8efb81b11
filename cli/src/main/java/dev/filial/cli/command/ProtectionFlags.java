package dev.filial.cli.command;

import dev.filial.cli.frame.Words;
import dev.filial.core.register.Protection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** How the flowers were kept from other pollen. */
final class ProtectionFlags {

  private final Map<Protection, BooleanSupplier> flags = new EnumMap<>(Protection.class);

  /** Adds the flags. */
  ProtectionFlags(Words words) {
    flags.put(
        Protection.EMASCULATED,
        words.flag("--emasculated", "The flowers' own anthers were taken out before they opened."));
    flags.put(Protection.BAGGED, words.flag("--bagged", "A bag or a net kept insects away."));
    flags.put(
        Protection.ISOLATED,
        words.flag("--isolated", "The plant stood where no other pollen comes."));
    flags.put(
        Protection.NONE,
        words.flag(
            "--unprotected",
            "The flowers were left open to insects; say --selfs and --strays if you can."));
  }

  /** Those that were given; none says nothing either way. */
  List<Protection> list() {
    return flags.entrySet().stream()
        .filter(flag -> flag.getValue().getAsBoolean())
        .map(Map.Entry::getKey)
        .toList();
  }
}
