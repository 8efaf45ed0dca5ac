package org.potlife.account.internal;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.DenyAll;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.annotation.Annotation;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A method of a resource class: what it answers and who may call it.
 *
 * @param verb GET, POST, …
 * @param path with names in braces
 * @param declared whether method or class says who may call it
 * @param roles who may; empty for everybody who is known
 * @param forAll whether strangers may as well
 * @param takes media type of a body
 * @param gives media type of the answer
 */
record Door(
    String verb,
    String path,
    boolean declared,
    Set<String> roles,
    boolean forAll,
    String takes,
    String gives) {

  private static final java.nio.file.Path CLASSES = java.nio.file.Path.of("target", "classes");

  /** All that the service answers. */
  static List<Door> all() {
    try (Stream<java.nio.file.Path> files = Files.walk(CLASSES)) {
      return files
          .map(file -> CLASSES.relativize(file).toString())
          .filter(name -> name.startsWith("org") && name.endsWith(".class"))
          .map(name -> name.replace(".class", "").replace(File.separatorChar, '.'))
          .sorted()
          .map(Door::load)
          .filter(type -> type.isAnnotationPresent(Path.class))
          .flatMap(Door::of)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Class<?> load(String name) {
    try {
      return Class.forName(name, false, Thread.currentThread().getContextClassLoader());
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Stream<Door> of(Class<?> resource) {
    return Arrays.stream(resource.getDeclaredMethods())
        .flatMap(method -> verb(method).map(verb -> of(resource, method, verb)).stream());
  }

  private static Door of(Class<?> resource, Method method, String verb) {
    Optional<AnnotatedElement> says =
        Stream.<AnnotatedElement>of(method, resource).filter(Door::says).findFirst();
    RolesAllowed roles =
        says.map(element -> element.getAnnotation(RolesAllowed.class)).orElse(null);
    return new Door(
        verb,
        path(resource, method),
        says.isPresent(),
        roles == null ? Set.of() : new TreeSet<>(Arrays.asList(roles.value())),
        says.filter(element -> element.isAnnotationPresent(PermitAll.class)).isPresent(),
        Optional.ofNullable(either(Consumes.class, method, resource))
            .map(consumes -> consumes.value()[0])
            .orElse("application/json"),
        Optional.ofNullable(either(Produces.class, method, resource))
            .map(produces -> produces.value()[0])
            .orElse("*/*"));
  }

  private static <A extends Annotation> A either(Class<A> type, Method method, Class<?> resource) {
    A own = method.getAnnotation(type);
    return own == null ? resource.getAnnotation(type) : own;
  }

  private static boolean says(AnnotatedElement element) {
    return Stream.of(RolesAllowed.class, PermitAll.class, DenyAll.class, Authenticated.class)
        .anyMatch(element::isAnnotationPresent);
  }

  private static Optional<String> verb(Method method) {
    return Arrays.stream(method.getAnnotations())
        .map(annotation -> annotation.annotationType().getAnnotation(HttpMethod.class))
        .filter(verb -> verb != null)
        .map(HttpMethod::value)
        .findFirst();
  }

  private static String path(Class<?> resource, Method method) {
    Path own = method.getAnnotation(Path.class);
    String whole =
        "/" + resource.getAnnotation(Path.class).value() + "/" + (own == null ? "" : own.value());
    String single = whole.replaceAll("/+", "/");
    return single.length() > 1 && single.endsWith("/")
        ? single.substring(0, single.length() - 1)
        : single;
  }

  boolean ofPlant() {
    return path.contains("{plant}");
  }

  boolean isPage() {
    return !path.startsWith("/api/");
  }

  /** An address that this door answers; what is named in it does not exist but for the plant. */
  String address(String plant) {
    return path.replace("{plant}", plant)
        .replaceAll("\\{\\w+:[^{}]*\\{[^{}]*}[^{}]*}", "999999999")
        .replaceAll("\\{[^{}]+}", "none");
  }

  @Override
  public String toString() {
    return verb + " " + path;
  }
}
