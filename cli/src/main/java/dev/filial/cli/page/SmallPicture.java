package dev.filial.cli.page;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import net.coobird.thumbnailator.Thumbnails;
import net.coobird.thumbnailator.tasks.UnsupportedFormatException;
import org.jspecify.annotations.Nullable;

/**
 * A photograph made small enough to stand in a page itself, upright as the camera says, as JPEG.
 * Nothing but what is seen goes along: what a camera writes beside the picture, such as where it
 * was taken, stays in the file.
 *
 * @param source the picture, as the source of an image in a page
 * @param width its width in pixels
 * @param height its height in pixels
 */
public record SmallPicture(String source, int width, int height) {

  /** No side is longer, in pixels. */
  static final int LONGEST = 400;

  /** What a picture takes while it is read and turned, in bytes a pixel. */
  private static final long BYTES = 12;

  /**
   * Makes the picture of a file small.
   *
   * @return it; empty if the file holds no picture that Java reads (it reads JPEG, PNG, GIF, BMP
   *     and TIFF), a damaged one, or one too large for the memory there is
   * @throws IOException if the file cannot be read
   */
  public static Optional<SmallPicture> of(Path file) throws IOException {
    BufferedImage seen = read(file);
    if (seen == null) {
      return Optional.empty();
    }
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    ImageIO.write(onWhite(seen), "jpg", jpeg);
    return Optional.of(
        new SmallPicture(
            "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg.toByteArray()),
            seen.getWidth(),
            seen.getHeight()));
  }

  private static @Nullable BufferedImage read(Path file) throws IOException {
    try {
      int longest = longestSide(file);
      return longest == 0
          ? null
          : Thumbnails.of(file.toFile())
              .size(Math.min(longest, LONGEST), Math.min(longest, LONGEST))
              .asBufferedImage();
    } catch (IIOException | UnsupportedFormatException | RuntimeException e) {
      // Java's readers throw whatever comes of it when a file is damaged.
      return null;
    }
  }

  /** By the head of the file; 0 if it is of no kind that can be read, or too large. */
  private static int longestSide(Path file) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      if (in == null) {
        throw new IOException(file + " cannot be read");
      }
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        return 0;
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in);
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        return BYTES * width * height > Runtime.getRuntime().maxMemory()
            ? 0
            : Math.max(width, height);
      } finally {
        reader.dispose();
      }
    }
  }

  /** JPEG knows nothing that can be seen through. */
  private static BufferedImage onWhite(BufferedImage image) {
    BufferedImage white =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = white.createGraphics();
    graphics.drawImage(image, 0, 0, Color.WHITE, null);
    graphics.dispose();
    return white;
  }
}
