/** Small programs that embed the library. */
@org.jspecify.annotations.NullMarked
module dev.filial.examples {
  requires dev.filial.core;
  requires static org.jspecify;
}
