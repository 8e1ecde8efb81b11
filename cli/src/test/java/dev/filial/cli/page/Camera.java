package dev.filial.cli.page;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Photographs as a camera writes them, of four coloured fields. */
public final class Camera {

  static final Color UPPER_LEFT = Color.RED;
  static final Color UPPER_RIGHT = Color.GREEN;
  static final Color LOWER_LEFT = Color.BLUE;
  static final Color LOWER_RIGHT = Color.WHITE;

  /** In place of a position, which a camera may write too. */
  static final String SECRET = "where it was taken";

  private Camera() {}

  static BufferedImage fields(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    Color[] colours = {UPPER_LEFT, UPPER_RIGHT, LOWER_LEFT, LOWER_RIGHT};
    for (int i = 0; i < colours.length; i++) {
      graphics.setColor(colours[i]);
      graphics.fillRect(i % 2 * width / 2, i / 2 * height / 2, width / 2, height / 2);
    }
    graphics.dispose();
    return image;
  }

  /**
   * A JPEG with a note of the camera's. The note is laid out as Exif 2.3 (JEITA CP-3451C), section
   * 4.5 and 4.6, has it: tag 0112 is the orientation, 1 to 8; 010E a description.
   */
  public static Path jpeg(Path file, int width, int height, int orientation) {
    byte[] words = (SECRET + "\0").getBytes(StandardCharsets.US_ASCII);
    ByteBuffer tiff = ByteBuffer.allocate(38 + words.length).order(ByteOrder.BIG_ENDIAN);
    tiff.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(8);
    tiff.putShort((short) 2);
    tiff.putShort((short) 0x010E).putShort((short) 2).putInt(words.length).putInt(38);
    tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1);
    tiff.putShort((short) orientation).putShort((short) 0);
    tiff.putInt(0).put(words);
    byte[] head = {'E', 'x', 'i', 'f', 0, 0};
    try {
      ByteArrayOutputStream plain = new ByteArrayOutputStream();
      ImageIO.write(fields(width, height), "jpg", plain);
      byte[] jpeg = plain.toByteArray();
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      out.write(jpeg, 0, 2);
      int length = 2 + head.length + tiff.capacity();
      out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length});
      out.writeBytes(head);
      out.writeBytes(tiff.array());
      out.write(jpeg, 2, jpeg.length - 2);
      return Files.write(file, out.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
