package org.potlife.platform.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.ElementKind;
import jakarta.validation.Path;
import jakarta.validation.Validator;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.potlife.platform.problem.FieldError;
import org.potlife.platform.problem.ProblemException;

/** Reads request bodies. A body that cannot be taken is refused with all that is wrong with it. */
@ApplicationScoped
public class Bodies {

  private final ObjectMapper mapper;
  private final Validator validator;

  @Inject
  Bodies(ObjectMapper mapper, Validator validator) {
    this.mapper = mapper;
    this.validator = validator;
  }

  /**
   * The body as a record.
   *
   * @param check rules across fields; is also asked about a body with wrong or missing values,
   *     which are null there
   * @throws ProblemException 400 when it is not JSON, 422 with every offending field
   */
  public <T> T read(byte[] body, Class<T> type, Function<T, List<FieldError>> check) {
    JsonNode tree = JsonText.parse(mapper, body);
    return bind(tree, type, value -> join(violations(value), check.apply(value)));
  }

  /** The body as a list of records; the pointers begin with the element's number. */
  public <T> List<T> readList(
      byte[] body, Class<T> element, Function<List<T>, List<FieldError>> check) {
    JsonNode tree = JsonText.parse(mapper, body);
    Type type = mapper.getTypeFactory().constructCollectionType(List.class, element);
    return bind(tree, type, values -> join(eachViolations(values), check.apply(values)));
  }

  /**
   * The body as a tree, for what can have several shapes.
   *
   * @throws ProblemException 400 when it is not JSON
   */
  public JsonNode readTree(byte[] body) {
    return JsonText.parse(mapper, body);
  }

  /**
   * A part of a tree as a record.
   *
   * @param errors receives what is wrong, with pointers from the part on
   * @return null when something is wrong
   */
  public <T> T readPart(JsonNode part, Class<T> type, List<FieldError> errors) {
    List<FieldError> wrong = new ArrayList<>();
    T value = bind(part.deepCopy(), type, this::violations, wrong);
    errors.addAll(wrong);
    return wrong.isEmpty() ? value : null;
  }

  private <T> T bind(JsonNode tree, Type type, Function<T, List<FieldError>> check) {
    List<FieldError> errors = new ArrayList<>();
    T value = bind(tree, type, check, errors);
    if (!errors.isEmpty()) {
      throw ProblemException.invalid(errors);
    }
    return value;
  }

  private <T> T bind(
      JsonNode tree, Type type, Function<T, List<FieldError>> check, List<FieldError> all) {
    var wanted = mapper.getTypeFactory().constructType(type);
    List<FieldError> errors =
        wanted.isCollectionLikeType()
            ? JsonShape.listMisfits(tree, wanted.getContentType().getRawClass())
            : JsonShape.misfits(tree, wanted.getRawClass());
    T value = null;
    boolean wrongAsAWhole = errors.stream().anyMatch(error -> error.pointer().isEmpty());
    if (!wrongAsAWhole) {
      try {
        value = mapper.treeToValue(tree, wanted);
        errors = join(errors, check.apply(value));
      } catch (JsonProcessingException e) {
        errors = join(errors, List.of(new FieldError(pointer(e), "cannot be read here")));
      }
    }
    all.addAll(errors);
    return value;
  }

  private <T> List<FieldError> eachViolations(List<T> values) {
    List<FieldError> errors = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      String parent = "/" + i;
      if (values.get(i) == null) {
        errors.add(new FieldError(parent, "must not be null"));
      } else {
        violations(values.get(i)).forEach(error -> errors.add(error.under(parent)));
      }
    }
    return errors;
  }

  private <T> List<FieldError> violations(T value) {
    return validator.validate(value).stream()
        .map(violation -> new FieldError(pointer(violation.getPropertyPath()), detail(violation)))
        .sorted(Comparator.comparing(FieldError::pointer))
        .toList();
  }

  private static String detail(ConstraintViolation<?> violation) {
    Object given = violation.getInvalidValue();
    boolean scalar = given instanceof Number || given instanceof CharSequence;
    return scalar
        ? violation.getMessage() + ", was " + JsonText.echo("\"" + given + "\"")
        : violation.getMessage();
  }

  private static String pointer(Path path) {
    String pointer = "";
    for (Path.Node node : path) {
      if (node.isInIterable() && node.getIndex() != null) {
        pointer += "/" + node.getIndex();
      }
      if (node.getKind() == ElementKind.PROPERTY) {
        pointer = FieldError.child(pointer, node.getName());
      }
    }
    return pointer;
  }

  private static String pointer(JsonProcessingException e) {
    return e instanceof JsonMappingException mapping
        ? mapping.getPath().stream()
            .map(
                step ->
                    step.getFieldName() == null ? "/" + step.getIndex() : "/" + step.getFieldName())
            .collect(Collectors.joining())
        : "";
  }

  /** The first list with those of the second that speak of fields not reported yet. */
  private static List<FieldError> join(List<FieldError> first, List<FieldError> second) {
    Set<String> known = first.stream().map(FieldError::pointer).collect(Collectors.toSet());
    List<FieldError> all = new ArrayList<>(first);
    second.stream().filter(error -> !known.contains(error.pointer())).forEach(all::add);
    return all;
  }
}
