package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which codes a statement gives out, and what they stand for. */
public final class Introduction {

  private Introduction() {}

  /** The codes that {@code statement} gives out, the whole code before what stands under it. */
  public static List<Code> codes(Statement statement) {
    if (statement instanceof PlantAcquired plant) {
      return List.of(plant.code());
    }
    if (statement instanceof Propagated ramet) {
      return List.of(ramet.code());
    }
    if (statement instanceof TagLost found) {
      return List.of(found.code());
    }
    if (statement instanceof Parted parted) {
      return List.of(parted.into());
    }
    if (statement instanceof Pollinated cross) {
      return List.of(cross.code());
    }
    if (statement instanceof SeedAcquired seed) {
      return List.of(seed.code(), seed.code().lot(1));
    }
    if (statement instanceof LotsMerged merged) {
      return List.of(merged.code(), merged.code().lot(1));
    }
    if (statement instanceof Harvested harvest) {
      return List.of(harvest.lot());
    }
    if (statement instanceof LotSplit split) {
      return List.of(split.lot());
    }
    if (statement instanceof Sown sown) {
      return Stream.concat(Stream.of(sown.sowing()), sown.groups().stream().map(Sown.Filled::group))
          .toList();
    }
    if (statement instanceof Potted potted) {
      return List.of(potted.group());
    }
    return statement instanceof Numbered numbered ? numbered.codes() : List.of();
  }

  /** What {@code code} stands for if {@code statement} gives it out; empty if it does not. */
  static Optional<Item.Kind> kind(Statement statement, Code code) {
    if (statement instanceof PlantAcquired plant) {
      return when(plant.code().equals(code), Item.Kind.PLANT);
    }
    if (statement instanceof Propagated ramet) {
      return when(ramet.code().equals(code), Item.Kind.PLANT);
    }
    if (statement instanceof TagLost found) {
      return when(found.code().equals(code), Item.Kind.PLANT);
    }
    if (statement instanceof Parted parted) {
      return when(
          parted.into().equals(code), code.isWhole() ? Item.Kind.PLANT : Item.Kind.SEEDLING);
    }
    if (statement instanceof Pollinated cross) {
      return when(cross.code().equals(code), Item.Kind.CROSS);
    }
    if (statement instanceof SeedAcquired seed) {
      return seed.code().equals(code)
          ? Optional.of(Item.Kind.SEED)
          : when(seed.code().lot(1).equals(code), Item.Kind.LOT);
    }
    if (statement instanceof LotsMerged merged) {
      return merged.code().equals(code)
          ? Optional.of(Item.Kind.MIXTURE)
          : when(merged.code().lot(1).equals(code), Item.Kind.LOT);
    }
    if (statement instanceof Harvested harvest) {
      return when(harvest.lot().equals(code), Item.Kind.LOT);
    }
    if (statement instanceof LotSplit split) {
      return when(split.lot().equals(code), Item.Kind.LOT);
    }
    if (statement instanceof Sown sown) {
      return sown.sowing().equals(code)
          ? Optional.of(Item.Kind.SOWING)
          : when(
              sown.groups().stream().anyMatch(filled -> filled.group().equals(code)),
              Item.Kind.GROUP);
    }
    if (statement instanceof Potted potted) {
      return when(potted.group().equals(code), Item.Kind.GROUP);
    }
    if (statement instanceof Numbered numbered) {
      return when(
          code.part() instanceof Code.Part.Seedling seedling
              && code.whole().equals(numbered.from().whole())
              && seedling.number() >= numbered.first()
              && seedling.number() <= numbered.last(),
          Item.Kind.SEEDLING);
    }
    return Optional.empty();
  }

  private static Optional<Item.Kind> when(boolean given, Item.Kind kind) {
    return given ? Optional.of(kind) : Optional.empty();
  }
}
