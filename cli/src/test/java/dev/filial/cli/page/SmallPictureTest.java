package dev.filial.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SmallPictureTest {

  @TempDir Path folder;

  private static byte[] bytes(SmallPicture small) {
    assertThat(small.source()).startsWith("data:image/jpeg;base64,");
    return Base64.getDecoder().decode(small.source().split(",", 2)[1]);
  }

  private static BufferedImage image(SmallPicture small) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(bytes(small)));
  }

  private static SmallPicture small(Path file) throws IOException {
    return SmallPicture.of(file).orElseThrow();
  }

  /** The fields clockwise from the upper left; JPEG changes colours a little. */
  private static List<Color> clockwise(BufferedImage image) {
    int right = image.getWidth() - 9;
    int low = image.getHeight() - 9;
    return List.of(
        nearest(image.getRGB(8, 8)),
        nearest(image.getRGB(right, 8)),
        nearest(image.getRGB(right, low)),
        nearest(image.getRGB(8, low)));
  }

  private static Color nearest(int rgb) {
    Color seen = new Color(rgb);
    return List.of(Camera.UPPER_LEFT, Camera.UPPER_RIGHT, Camera.LOWER_LEFT, Camera.LOWER_RIGHT)
        .stream()
        .filter(
            one ->
                Math.abs(one.getRed() - seen.getRed()) < 60
                    && Math.abs(one.getGreen() - seen.getGreen()) < 60
                    && Math.abs(one.getBlue() - seen.getBlue()) < 60)
        .findFirst()
        .orElse(Color.BLACK);
  }

  @Test
  void aLargePictureIsMadeSmallAndKeepsItsShape() throws IOException {
    SmallPicture small = small(Camera.jpeg(folder.resolve("a.jpg"), 4000, 3000, 1));

    assertThat(small.width()).isEqualTo(400);
    assertThat(small.height()).isEqualTo(300);
    assertThat(image(small).getWidth()).isEqualTo(400);
    assertThat(bytes(small).length).isLessThan(40_000);
  }

  @Test
  void aSmallPictureIsNotMadeLarger() throws IOException {
    SmallPicture small = small(Camera.jpeg(folder.resolve("a.jpg"), 60, 40, 1));

    assertThat(List.of(small.width(), small.height())).containsExactly(60, 40);
  }

  /**
   * Held on its side: 6 is a quarter turn to the right to be upright, by Exif 2.3, table 4.6.4 A.
   */
  @Test
  void aPictureIsSetUprightAsTheCameraSays() throws IOException {
    SmallPicture small = small(Camera.jpeg(folder.resolve("a.jpg"), 800, 400, 6));

    assertThat(List.of(small.width(), small.height())).containsExactly(200, 400);
    assertThat(clockwise(image(small)))
        .containsExactly(
            Camera.LOWER_LEFT, Camera.UPPER_LEFT, Camera.UPPER_RIGHT, Camera.LOWER_RIGHT);
  }

  @Test
  void nothingButThePictureGoesAlong() throws IOException {
    Path file = Camera.jpeg(folder.resolve("a.jpg"), 600, 400, 1);
    assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).contains(Camera.SECRET);

    assertThat(new String(bytes(small(file)), StandardCharsets.ISO_8859_1))
        .doesNotContain(Camera.SECRET)
        .doesNotContain("Exif");
  }

  @Test
  void whatCanBeSeenThroughIsWhite() throws IOException {
    Path file = folder.resolve("a.png");
    ImageIO.write(new BufferedImage(50, 50, BufferedImage.TYPE_INT_ARGB), "png", file.toFile());

    assertThat(clockwise(image(small(file)))).containsOnly(Color.WHITE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "bmp", "tiff"})
  void otherKindsAreReadToo(String kind) throws IOException {
    Path file = folder.resolve("a." + kind);
    ImageIO.write(Camera.fields(80, 80), kind, file.toFile());

    assertThat(clockwise(image(small(file))))
        .containsExactly(
            Camera.UPPER_LEFT, Camera.UPPER_RIGHT, Camera.LOWER_RIGHT, Camera.LOWER_LEFT);
  }

  @Test
  void whatIsNoPictureOrADamagedOneIsNotShown() throws IOException {
    Path whole = Camera.jpeg(folder.resolve("a.jpg"), 600, 400, 1);
    byte[] bytes = Files.readAllBytes(whole);
    Path text = Files.writeString(folder.resolve("b.jpg"), "no picture");
    Path empty = Files.writeString(folder.resolve("c.jpg"), "");
    Path torn = Files.write(folder.resolve("d.jpg"), Arrays.copyOf(bytes, 300));

    assertThat(SmallPicture.of(text)).isEmpty();
    assertThat(SmallPicture.of(empty)).isEmpty();
    assertThat(SmallPicture.of(torn)).isEmpty();
    Path half = Files.write(folder.resolve("e.jpg"), Arrays.copyOf(bytes, bytes.length / 2 + 200));
    assertThat(SmallPicture.of(half)).isEmpty();
  }

  /** What its head says is all that is read of a picture too large for the machine. */
  @Test
  void aPictureOfMorePointsThanTheMachineHoldsIsNotRead() throws IOException {
    Path file = folder.resolve("a.gif");
    byte[] gif = {'G', 'I', 'F', '8', '9', 'a', -1, -1, -1, -1, 0, 0, 0, 0x3B};
    Files.write(file, gif);

    assertThat(SmallPicture.of(file)).isEmpty();
  }
}
