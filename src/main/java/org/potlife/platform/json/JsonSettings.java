package org.potlife.platform.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;

/** JSON as this service reads and writes it: strict in, offsets kept, no silent conversions. */
@Singleton
public final class JsonSettings implements ObjectMapperCustomizer {

  private static final int DEEPEST = 40;
  private static final int LONGEST_TEXT = 100_000;
  private static final int LONGEST_NUMBER = 400;

  /** A mapper with these settings, for code outside the container. */
  public static ObjectMapper newMapper() {
    ObjectMapper mapper = new ObjectMapper().registerModule(new JavaTimeModule());
    new JsonSettings().customize(mapper);
    return mapper;
  }

  @Override
  @SuppressWarnings("deprecation") // the feature has no other switch on a mapper that exists
  public void customize(ObjectMapper mapper) {
    mapper
        .getFactory()
        .configure(JsonParser.Feature.STRICT_DUPLICATE_DETECTION, true)
        .setStreamReadConstraints(
            StreamReadConstraints.builder()
                .maxNestingDepth(DEEPEST)
                .maxStringLength(LONGEST_TEXT)
                .maxNumberLength(LONGEST_NUMBER)
                .build());
    mapper
        .configure(MapperFeature.ALLOW_COERCION_OF_SCALARS, false)
        .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .enable(DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
        .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
        .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
        .disable(DeserializationFeature.ADJUST_DATES_TO_CONTEXT_TIME_ZONE)
        .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
        .disable(SerializationFeature.WRITE_DURATIONS_AS_TIMESTAMPS);
    mapper
        .coercionConfigDefaults()
        .setCoercion(CoercionInputShape.EmptyString, CoercionAction.Fail);
  }
}
