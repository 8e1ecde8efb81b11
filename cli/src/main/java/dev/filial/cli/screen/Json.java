package dev.filial.cli.screen;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.PartialDate;
import java.util.function.Function;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.cfg.EnumFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/**
 * Records as JSON: the components' names as field names, dates as {@code 2026-03-04}, a fraction as
 * an object of its exact text and its nearest number, a state's name in lower case, {@code null}
 * where nothing is known. Field names are kept from version to version.
 */
public final class Json {

  private static final class FractionSerializer extends StdSerializer<Fraction> {
    FractionSerializer() {
      super(Fraction.class);
    }

    @Override
    public void serialize(Fraction fraction, JsonGenerator json, SerializationContext context) {
      json.writeStartObject();
      json.writeStringProperty("exact", fraction.toString());
      json.writeNumberProperty("value", fraction.toDouble());
      json.writeEndObject();
    }
  }

  /** What has a text of its own is written as that. */
  private static final class TextSerializer<T> extends StdSerializer<T> {
    private final transient Function<T, String> text;

    TextSerializer(Class<T> type, Function<T, String> text) {
      super(type);
      this.text = text;
    }

    @Override
    public void serialize(T value, JsonGenerator json, SerializationContext context) {
      json.writeString(text.apply(value));
    }
  }

  private Json() {}

  /** {@code value} as one JSON text over several lines, ending with a line break. */
  public static String write(Object value) {
    DefaultIndenter lineByLine = new DefaultIndenter("  ", "\n");
    JsonMapper mapper =
        JsonMapper.builder()
            .addModule(
                new SimpleModule("filial")
                    .addSerializer(Fraction.class, new FractionSerializer())
                    .addSerializer(Code.class, new TextSerializer<>(Code.class, Code::text))
                    .addSerializer(Count.class, new TextSerializer<>(Count.class, Count::toString))
                    .addSerializer(
                        PartialDate.class,
                        new TextSerializer<>(PartialDate.class, PartialDate::toString)))
            .enable(EnumFeature.WRITE_ENUMS_TO_LOWERCASE)
            .defaultPrettyPrinter(
                new DefaultPrettyPrinter()
                    .withObjectIndenter(lineByLine)
                    .withArrayIndenter(lineByLine))
            .build();
    return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(value) + "\n";
  }
}
