package dev.filial.cli.page;

import org.jspecify.annotations.Nullable;

/**
 * A photograph as a page shows it.
 *
 * @param name its file, as the register names it
 * @param caption the day and what is said of it; may be empty
 * @param of what is on it, for who cannot see it
 * @param link where the file lies, relative to the page; null if the page is not to lead there
 * @param small the picture itself; null if the page is not to hold it
 * @param trouble why it is not shown, a sentence without its full stop; null if it is
 */
public record PagePhoto(
    String name,
    String caption,
    String of,
    @Nullable String link,
    @Nullable SmallPicture small,
    @Nullable String trouble) {}
