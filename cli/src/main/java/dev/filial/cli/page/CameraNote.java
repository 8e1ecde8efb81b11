package dev.filial.cli.page;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import net.coobird.thumbnailator.util.exif.ExifUtils;
import net.coobird.thumbnailator.util.exif.Orientation;
import org.jspecify.annotations.Nullable;

/**
 * What a camera noted in a JPEG of how it was held. Java's own reader finds the note only where it
 * stands second, and telephones put it first.
 *
 * <p>Source of the layout: ITU-T T.81 (JPEG), annex B, for the segments; JEITA CP-3451C (Exif 2.3),
 * section 4.7.2, for the one that holds the note.
 */
final class CameraNote {

  private static final int START = 0xFFD8;
  private static final int APPLICATION_1 = 0xFFE1;
  private static final int PICTURE = 0xFFDA;
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

  private CameraNote() {}

  /**
   * How the picture is to be turned; null if it is no JPEG or nothing is noted.
   *
   * @throws IOException if the file cannot be read
   */
  static @Nullable Orientation orientation(Path file) throws IOException {
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
      if (in.readUnsignedShort() != START) {
        return null;
      }
      for (int marker = in.readUnsignedShort();
          marker != PICTURE && marker > START;
          marker = in.readUnsignedShort()) {
        byte[] segment = new byte[Math.max(0, in.readUnsignedShort() - 2)];
        in.readFully(segment);
        if (marker == APPLICATION_1
            && segment.length > EXIF.length
            && Arrays.equals(segment, 0, EXIF.length, EXIF, 0, EXIF.length)) {
          return ExifUtils.getOrientationFromExif(segment);
        }
      }
      return null;
    } catch (EOFException e) {
      return null;
    }
  }
}
