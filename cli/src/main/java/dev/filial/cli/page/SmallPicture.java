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
import java.util.concurrent.atomic.AtomicBoolean;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import net.coobird.thumbnailator.Thumbnails;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;
import net.coobird.thumbnailator.util.exif.Orientation;
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

  /** Larger ones, in pixels, would keep everybody waiting; no telephone takes any. */
  private static final long LARGEST = 120_000_000;

  /** So many times as fine as it is shown a picture is read, and then made smaller smoothly. */
  private static final int FINER = 4;

  /**
   * Makes the picture of a file small.
   *
   * @return it; empty if the file holds no picture that Java reads (it reads JPEG, PNG, GIF, BMP
   *     and TIFF), a damaged one or a part of one, or one of more than 120 million pixels
   * @throws IOException if the file cannot be read
   */
  public static Optional<SmallPicture> of(Path file) throws IOException {
    BufferedImage seen = read(file);
    if (seen == null) {
      return Optional.empty();
    }
    if (Math.max(seen.getWidth(), seen.getHeight()) > LONGEST) {
      seen = Thumbnails.of(seen).size(LONGEST, LONGEST).asBufferedImage();
    }
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    ImageIO.write(onWhite(seen), "jpg", jpeg);
    return Optional.of(
        new SmallPicture(
            "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg.toByteArray()),
            seen.getWidth(),
            seen.getHeight()));
  }

  /** The picture upright, of a large one only every so many points; null if none can be shown. */
  private static @Nullable BufferedImage read(Path file) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      if (in == null) {
        throw new IOException(file + " cannot be read");
      }
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        return null;
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in);
        BufferedImage image = read(reader);
        Orientation held = image == null ? null : CameraNote.orientation(file);
        return image == null || held == null
            ? image
            : ExifFilterUtils.getFilterForOrientation(held).apply(image);
      } catch (IIOException | RuntimeException e) {
        // Java's readers throw whatever comes of it when a file is damaged.
        return null;
      } finally {
        reader.dispose();
      }
    }
  }

  private static @Nullable BufferedImage read(ImageReader reader) throws IOException {
    int width = reader.getWidth(0);
    int height = reader.getHeight(0);
    if ((long) width * height > LARGEST) {
      return null;
    }
    AtomicBoolean torn = new AtomicBoolean();
    reader.addIIOReadWarningListener(
        (from, warning) -> torn.compareAndSet(false, saysItEndsTooSoon(warning)));
    ImageReadParam param = reader.getDefaultReadParam();
    int every = Math.max(1, Math.max(width, height) / (FINER * LONGEST));
    param.setSourceSubsampling(every, every, 0, 0);
    BufferedImage image = reader.read(0, param);
    return torn.get() ? null : image;
  }

  /** Other warnings are of what cameras write beside a picture, and common. */
  private static boolean saysItEndsTooSoon(String warning) {
    return warning.contains("EOI") || warning.contains("Premature end");
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
