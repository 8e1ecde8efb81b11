package dev.filial.core.register;

import com.fasterxml.jackson.annotation.JsonAutoDetect;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.Nulls;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectReader;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.cfg.MutableConfigOverride;
import tools.jackson.databind.deser.std.StdDeserializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.jsontype.NamedType;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/**
 * Statements as JSON: one object, its property {@code kind} naming the kind, the others the
 * components of the record; codes, fractions, counts and dates as text; what is not stated left
 * out.
 */
public final class EntryJson {

  /** The word in the property {@code kind} for each kind of statement. */
  private static final Map<String, Class<? extends Statement>> KINDS = kinds();

  /** The word in the property {@code from} for each source of pollen. */
  private static final Map<String, Class<? extends Pollen>> POLLENS =
      Map.of(
          "plant", Pollen.OnePlant.class,
          "itself", Pollen.Itself.class,
          "mix", Pollen.Mix.class,
          "open", Pollen.Open.class);

  /** Under this key a reader is told which codes to read as others. */
  private static final Object OTHER_CODE = "other code";

  /** Made when first needed: setting it up takes longer than a short command's own work. */
  private static final class Mapping {
    static final JsonMapper MAPPER = mapper();

    // Written as a Statement, not as its own class, or the property that names the kind is lost.
    static final ObjectWriter WRITER = MAPPER.writerFor(Statement.class);

    static final ObjectReader READER = MAPPER.readerFor(Statement.class);

    private Mapping() {}
  }

  private EntryJson() {}

  private static Map<String, Class<? extends Statement>> kinds() {
    Map<String, Class<? extends Statement>> kinds = new LinkedHashMap<>();
    kinds.put("register", RegisterOpened.class);
    kinds.put("taxon", TaxonDeclared.class);
    kinds.put("rename", TaxonRenamed.class);
    kinds.put("population", PopulationDeclared.class);
    kinds.put("plant", PlantAcquired.class);
    kinds.put("seed", SeedAcquired.class);
    kinds.put("cross", Pollinated.class);
    kinds.put("fruit", FruitRecorded.class);
    kinds.put("harvest", Harvested.class);
    kinds.put("split", LotSplit.class);
    kinds.put("merge", LotsMerged.class);
    kinds.put("sowing", Sown.class);
    kinds.put("count", Counted.class);
    kinds.put("pot", Potted.class);
    kinds.put("number", Numbered.class);
    kinds.put("ramet", Propagated.class);
    kinds.put("fate", FateRecorded.class);
    kinds.put("move", Moved.class);
    kinds.put("name", Named.class);
    kinds.put("join", Joined.class);
    kinds.put("part", Parted.class);
    kinds.put("guess", Doubted.class);
    kinds.put("found", TagLost.class);
    kinds.put("trait", TraitDeclared.class);
    kinds.put("observation", Observed.class);
    kinds.put("tally", Tallied.class);
    kinds.put("locus", LocusDeclared.class);
    kinds.put("model", ModelDeclared.class);
    kinds.put("profile", ProfileStated.class);
    kinds.put("genotype", GenotypeStated.class);
    kinds.put("amend", Amended.class);
    kinds.put("note", Noted.class);
    kinds.put("flower", Flowered.class);
    kinds.put("pollen", PollenKept.class);
    kinds.put("store", SeedKept.class);
    kinds.put("promise", Promised.class);
    kinds.put("treatment", Treated.class);
    kinds.put("care", Tended.class);
    kinds.put("place", PlaceDeclared.class);
    kinds.put("interval", IntervalStated.class);
    kinds.put("picture", Photographed.class);
    return Collections.unmodifiableMap(kinds);
  }

  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
  private interface Kind {}

  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "from")
  private interface PollenKind {}

  /** Shares for which nothing stated is not the same as none. */
  private interface LocusShares {
    @JsonInclude(JsonInclude.Include.NON_NULL)
    @JsonSetter(nulls = Nulls.SET)
    @Nullable Fraction recombination();

    @JsonInclude(JsonInclude.Include.NON_NULL)
    @JsonSetter(nulls = Nulls.SET)
    @Nullable Fraction leak();
  }

  /** The same of a profile. */
  private interface ProfileShares {
    @JsonInclude(JsonInclude.Include.NON_NULL)
    @JsonSetter(nulls = Nulls.SET)
    @Nullable Fraction doubleReduction();
  }

  private static JsonMapper mapper() {
    SimpleModule texts = new SimpleModule("filial");
    texts.addSerializer(Code.class, new TextSerializer<>(Code.class, Code::text));
    texts.addDeserializer(Code.class, new CodeDeserializer());
    text(texts, Fraction.class, Fraction::toString, Fraction::parse);
    text(texts, PartialDate.class, PartialDate::toString, PartialDate::parse);
    text(texts, Count.class, Count::toString, Count::parse);
    words(texts, Fate.class);
    words(texts, Protection.class);
    words(texts, ProfileStated.Pairing.class);
    words(texts, Bloom.class);
    words(texts, PollenKept.Step.class);
    words(texts, Treatment.class);
    words(texts, Tended.Care.class);
    words(texts, Interval.class);
    JsonMapper.Builder builder =
        JsonMapper.builder()
            .addModule(texts)
            .addMixIn(Statement.class, Kind.class)
            .addMixIn(Pollen.class, PollenKind.class)
            .addMixIn(LocusDeclared.class, LocusShares.class)
            .addMixIn(ProfileStated.class, ProfileShares.class)
            // What a record works out (isUnprotectedAndUnstated) is no part of what was said.
            .changeDefaultVisibility(
                visibility -> visibility.withIsGetterVisibility(JsonAutoDetect.Visibility.NONE))
            .changeDefaultPropertyInclusion(
                inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_DEFAULT))
            .withConfigOverride(List.class, EntryJson::absentIsEmpty)
            .withConfigOverride(Map.class, EntryJson::absentIsEmpty)
            .withConfigOverride(Fraction.class, EntryJson::absentIsEmpty)
            .withConfigOverride(Fraction.class, EntryJson::emptyIsAbsent)
            .withConfigOverride(Determination.class, EntryJson::unknownIsAbsent)
            .withConfigOverride(Provenance.class, EntryJson::unknownIsAbsent)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
            .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .disable(SerializationFeature.FAIL_ON_EMPTY_BEANS);
    KINDS.forEach((word, kind) -> builder.registerSubtypes(new NamedType(kind, word)));
    POLLENS.forEach((word, pollen) -> builder.registerSubtypes(new NamedType(pollen, word)));
    return builder.build();
  }

  /**
   * The word in the property {@code kind} of a kind of statement.
   *
   * @throws IllegalArgumentException if no entry makes such a statement
   */
  public static String kind(Class<? extends Statement> statement) {
    for (Map.Entry<String, Class<? extends Statement>> kind : KINDS.entrySet()) {
      if (kind.getValue().equals(statement)) {
        return kind.getKey();
      }
    }
    throw new IllegalArgumentException("no entry is of the kind " + statement.getSimpleName());
  }

  /** A statement as one line of JSON. */
  public static String write(Statement statement) {
    String plain = null;
    if (statement instanceof PlantAcquired plant) {
      plain = PlainPlant.write(plant);
    } else if (statement instanceof Pollinated cross) {
      plain = PlainCross.write(cross);
    }
    return plain == null ? writeAny(statement) : plain;
  }

  /** The same of any statement. */
  static String writeAny(Statement statement) {
    return Mapping.WRITER.writeValueAsString(statement);
  }

  /**
   * Reads a statement back.
   *
   * @throws IllegalArgumentException if the text is no such JSON, or what it says cannot be; the
   *     message names the property
   */
  public static Statement read(String json) {
    Statement plain = PlainPlant.read(json);
    if (plain == null) {
      plain = PlainCross.read(json);
    }
    if (plain == null) {
      plain = PlainNumbered.read(json);
    }
    if (plain == null) {
      plain = PlainOpening.read(json);
    }
    return plain == null ? readAny(json) : plain;
  }

  /** The same of any statement. */
  static Statement readAny(String json) {
    return read(Mapping.READER, json);
  }

  /**
   * The statement with every mention of the one code turned into the other; texts that happen to
   * look like the code, as a plant's own name may, stay.
   *
   * @throws IllegalArgumentException if it cannot say that of the other code
   */
  static Statement replace(Statement statement, Code from, Code to) {
    UnaryOperator<Code> other = code -> code.equals(from) ? to : code;
    return read(Mapping.READER.withAttribute(OTHER_CODE, other), write(statement));
  }

  private static Statement read(ObjectReader reader, String json) {
    try {
      Statement statement = reader.readValue(json);
      if (statement == null) {
        throw new IllegalArgumentException("the entry is null; it is an object in { }");
      }
      return statement;
    } catch (JacksonException e) {
      throw new IllegalArgumentException(
          JsonComplaint.about(e, KINDS.keySet(), POLLENS.keySet()), e);
    }
  }

  private static <E extends Enum<E>> void words(SimpleModule module, Class<E> type) {
    text(module, type, EntryJson::word, text -> constant(type, text));
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static <E extends Enum<E>> E constant(Class<E> type, String text) {
    for (E constant : type.getEnumConstants()) {
      if (word(constant).equals(text)) {
        return constant;
      }
    }
    throw new IllegalArgumentException(
        "\""
            + text
            + "\" is none of "
            + Arrays.stream(type.getEnumConstants())
                .map(EntryJson::word)
                .collect(Collectors.joining(", ")));
  }

  private static void absentIsEmpty(MutableConfigOverride override) {
    override.setNullHandling(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY));
  }

  private static void emptyIsAbsent(MutableConfigOverride override) {
    override.setIncludeAsProperty(
        JsonInclude.Value.construct(JsonInclude.Include.NON_EMPTY, JsonInclude.Include.ALWAYS));
  }

  private static void unknownIsAbsent(MutableConfigOverride override) {
    override.setIncludeAsProperty(
        JsonInclude.Value.construct(
            JsonInclude.Include.CUSTOM, JsonInclude.Include.ALWAYS, Unknown.class, Void.class));
  }

  /** Equal to what says nothing; so asks Jackson whether a property is to be left out. */
  @SuppressWarnings("EqualsWhichDoesntCheckParameterClass")
  private static final class Unknown {
    @Override
    public boolean equals(@Nullable Object value) {
      return Determination.UNKNOWN.equals(value) || Provenance.UNKNOWN.equals(value);
    }

    @Override
    public int hashCode() {
      return 0;
    }
  }

  private static <T> void text(
      SimpleModule module, Class<T> type, Function<T, String> write, Function<String, T> read) {
    module.addSerializer(type, new TextSerializer<>(type, write));
    module.addDeserializer(type, new TextDeserializer<>(type, read));
  }

  private static final class TextSerializer<T> extends StdSerializer<T> {
    private final Function<T, String> write;

    TextSerializer(Class<T> type, Function<T, String> write) {
      super(type);
      this.write = write;
    }

    @Override
    public void serialize(T value, JsonGenerator out, SerializationContext context) {
      out.writeString(write.apply(value));
    }

    @Override
    public boolean isEmpty(SerializationContext context, T value) {
      return value.equals(Fraction.ZERO);
    }
  }

  private static final class CodeDeserializer extends StdDeserializer<Code> {
    CodeDeserializer() {
      super(Code.class);
    }

    @Override
    @SuppressWarnings("unchecked") // nobody else sets the attribute
    public Code deserialize(JsonParser in, DeserializationContext context) {
      Code code = Code.parse(scalar(in));
      Object other = context.getAttribute(OTHER_CODE);
      return other == null ? code : ((UnaryOperator<Code>) other).apply(code);
    }
  }

  private static String scalar(JsonParser in) {
    if (!in.currentToken().isScalarValue()) {
      throw new IllegalArgumentException("here stands one text in quotes, no list and no object");
    }
    return in.getString();
  }

  private static final class TextDeserializer<T> extends StdDeserializer<T> {
    private final transient Function<String, T> read;

    TextDeserializer(Class<T> type, Function<String, T> read) {
      super(type);
      this.read = read;
    }

    @Override
    public T deserialize(JsonParser in, DeserializationContext context) {
      return read.apply(scalar(in));
    }

    @Override
    public Object getEmptyValue(DeserializationContext context) {
      return Fraction.ZERO;
    }
  }
}
