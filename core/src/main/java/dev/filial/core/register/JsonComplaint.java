package dev.filial.core.register;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.exc.InvalidTypeIdException;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/** Says in a grower's words, and by the name of the property, why an entry cannot be read. */
final class JsonComplaint {

  /** What records give {@code requireNonNull}: the name of the component that is missing. */
  private static final Pattern COMPONENT = Pattern.compile("[a-zA-Z0-9]+");

  private JsonComplaint() {}

  /**
   * The complaint about {@code e}.
   *
   * @param kinds the kinds of entry there are
   * @param pollens the kinds of pollen there are
   */
  static String about(JacksonException e, Collection<String> kinds, Collection<String> pollens) {
    String where = where(e.getPath());
    if (e instanceof UnrecognizedPropertyException unknown) {
      return unknown(unknown, where);
    }
    if (e instanceof InvalidTypeIdException kind) {
      return kind(kind, where, kinds, pollens);
    }
    for (Throwable cause = e.getCause(); cause != null; cause = cause.getCause()) {
      if (cause instanceof NullPointerException) {
        return missing(where, cause.getMessage());
      }
      if (cause instanceof IllegalArgumentException) {
        return (where.isEmpty() ? "" : "\"" + where + "\": ") + cause.getMessage();
      }
    }
    if (e instanceof StreamReadException) {
      return "the entry is not JSON (line "
          + e.getLocation().getLineNr()
          + ", column "
          + e.getLocation().getColumnNr()
          + "): "
          + JsonWords.of(e.getOriginalMessage());
    }
    if (e instanceof MismatchedInputException mismatch && mismatch.getTargetType() != null) {
      return (where.isEmpty() ? "the entry" : "\"" + where + "\"")
          + " is "
          + wanted(mismatch.getTargetType());
    }
    return (where.isEmpty() ? "the entry cannot be read: " : "\"" + where + "\" cannot be read: ")
        + JsonWords.of(e.getOriginalMessage());
  }

  private static String where(List<JacksonException.Reference> path) {
    StringBuilder where = new StringBuilder();
    for (JacksonException.Reference step : path) {
      if (step.getPropertyName() != null) {
        where.append(where.isEmpty() ? "" : ".").append(step.getPropertyName());
      } else if (step.getIndex() >= 0) {
        where.append('[').append(step.getIndex()).append(']');
      }
    }
    return where.toString();
  }

  private static String missing(String where, @Nullable String component) {
    if (component == null || !COMPONENT.matcher(component).matches()) {
      return where.isEmpty()
          ? "the entry holds a null where a value belongs"
          : "\"" + where + "\" holds a null where a value belongs";
    }
    return "the entry lacks its \"" + (where.isEmpty() ? "" : where + ".") + component + "\"";
  }

  private static String unknown(UnrecognizedPropertyException unknown, String where) {
    Collection<Object> known = unknown.getKnownPropertyIds();
    return "\""
        + where
        + "\" is no property here"
        + (known == null || known.isEmpty()
            ? ""
            : "; there are "
                + known.stream().map(String::valueOf).sorted().collect(Collectors.joining(", ")));
  }

  private static String kind(
      InvalidTypeIdException e, String where, Collection<String> kinds, Collection<String> all) {
    boolean pollen = e.getBaseType().getRawClass() == Pollen.class;
    String property = pollen ? "from" : "kind";
    String path = where.isEmpty() ? property : where + "." + property;
    String choice = (pollen ? all : kinds).stream().sorted().collect(Collectors.joining(", "));
    return e.getTypeId() == null
        ? "the entry lacks its \"" + path + "\"; it is one of " + choice
        : "\"" + path + "\": \"" + e.getTypeId() + "\" is none of " + choice;
  }

  private static String wanted(Class<?> type) {
    if (type == boolean.class) {
      return "true or false";
    }
    if (type == int.class || type == long.class || type == Integer.class || type == Long.class) {
      return "a whole number";
    }
    if (Number.class.isAssignableFrom(type)) {
      return "a number";
    }
    if (Collection.class.isAssignableFrom(type)) {
      return "a list in [ ]";
    }
    return type == String.class || type.getName().toLowerCase(Locale.ROOT).endsWith(".code")
        ? "a text in quotes"
        : "an object in { }";
  }
}
