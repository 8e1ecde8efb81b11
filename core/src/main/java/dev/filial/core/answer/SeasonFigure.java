package dev.filial.core.answer;

/** What a season is summed up in; each a number of things, counted or not ({@link SeasonSum}). */
public enum SeasonFigure {
  /** Plants that came: bought, given, collected. Those that never stood here are none of them. */
  PLANTS,
  /** Offsets, cuttings and the like taken of own plants. */
  OFFSETS,
  /** Packets of seed that came. */
  PACKETS,
  /** The seed in them. */
  PACKET_SEED,
  /** Crosses by hand: pollinations, selfings among them. */
  CROSSES,
  /** Of these, those on which at least one flower set, or that gave seed. */
  CROSSES_SET,
  /** Of these, those that failed: no flower is known to have set, and none is left unsaid. */
  CROSSES_FAILED,
  /** Fruit left to the insects: open pollinations. */
  OPEN,
  /** Flowers pollinated by hand. */
  FLOWERS,
  /** Flowers that set. */
  SET,
  /** Flowers that failed. */
  FAILED,
  /** Fruit that dropped unripe. */
  DROPPED,
  /** Flowers and fruit that were eaten. */
  EATEN,
  /** Harvests, each a seed lot. */
  HARVESTS,
  /** Fruit that was harvested. */
  FRUIT,
  /** Seed that was harvested, as counted at the harvest. */
  SEED,
  /** Sowings. */
  SOWINGS,
  /** Seed that was sown. */
  SOWN,
  /** Sowings of which seeds and seedlings were counted exactly. */
  SOWINGS_COUNTED,
  /** The seed of those. */
  SOWN_COUNTED,
  /** How many of that seed came up, whenever it did. */
  CAME_UP,
  /** Seedlings that were given numbers. */
  NUMBERED,
  /** Plants and seedlings that died. */
  DIED,
  /** Plants and seedlings that were thrown out. */
  DISCARDED,
  /** Plants and seedlings that left the house. */
  GIVEN,
  /** Seed that was lost or thrown out. */
  SEED_LOST,
  /** Seed that left the house. */
  SEED_GIVEN,
  /**
   * Plants that flowered for the first time, as far as anybody wrote: seen in flower, pollinated,
   * or giving fresh pollen.
   */
  FIRST_FLOWERS,
  /** Treatments, each one entry, whatever the number of pots. */
  TREATMENTS
}
