package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.heredity.PlastidLayers.Layer;
import dev.filial.core.heredity.PlastidLayers.Seedling;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Seed follows the second layer: Baur 1909, and plastids the seed parent: Correns 1909, both in
 * Zeitschrift für induktive Abstammungs- und Vererbungslehre 1, from memory.
 */
class PlastidLayersTest {

  @ParameterizedTest
  @CsvSource({"GWG, WHITE", "WGG, GREEN", "GWW, WHITE", "WGW, GREEN", "GGG, GREEN", "MGM, GREEN"})
  void seedFollowsTheSecondLayer(String layers, Seedling seedling) {
    assertThat(PlastidLayers.parse(layers).seedlings()).containsExactly(seedling);
  }

  /** Four-o'clocks: Correns 1909. */
  @ParameterizedTest
  @ValueSource(strings = {"GMG", "MMM", "WMG"})
  void aStripedPlantThrowsAllThree(String layers) {
    PlastidLayers plant = PlastidLayers.parse(layers);

    assertThat(plant.seedlings())
        .containsExactlyInAnyOrder(Seedling.GREEN, Seedling.WHITE, Seedling.STRIPED);
    assertThat(plant.isVariegated()).isTrue();
  }

  @Test
  void onlyLayersThatDifferShow() {
    assertThat(PlastidLayers.parse("GWG").isVariegated()).isTrue();
    assertThat(PlastidLayers.parse("GGG").isVariegated()).isFalse();
    assertThat(PlastidLayers.parse("www").isVariegated()).isFalse();
    assertThat(PlastidLayers.parse(" gwM "))
        .isEqualTo(new PlastidLayers(Layer.GREEN, Layer.WHITE, Layer.MIXED));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "GW", "GWGG", "GXG"})
  void threeLayersAreNamed(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PlastidLayers.parse(text))
        .withMessage(
            "\""
                + text
                + "\" is not three layers from the outside in; write G for green, W for white, M"
                + " for mixed, as GWG");
  }
}
