package dev.filial.core.register;

/** How the flowers of a cross were kept from other pollen. */
public enum Protection {
  /** The flower's own anthers were taken out before they opened. */
  EMASCULATED,
  /** A bag or a net kept insects away. */
  BAGGED,
  /** The plant stood where no other pollen comes. */
  ISOLATED,
  /** Not at all. */
  NONE
}
