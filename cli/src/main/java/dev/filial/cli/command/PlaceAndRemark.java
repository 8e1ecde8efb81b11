package dev.filial.cli.command;

import dev.filial.cli.frame.Words;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Where something stands, and whatever else there is to say of it. */
final class PlaceAndRemark {

  private final Supplier<Optional<String>> place;
  private final Supplier<Optional<String>> remark;

  /** Adds the options. */
  PlaceAndRemark(Words words) {
    place = words.option("--place", "PLACE", "Where it stands.", RecordReadings.LINE);
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
  }

  @Nullable String place() {
    return place.get().orElse(null);
  }

  @Nullable String remark() {
    return remark.get().orElse(null);
  }
}
