package org.potlife;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.Set;

@AnalyzeClasses(packages = "org.potlife", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  private static final String ROOT = "org.potlife.";

  /** Packages of a set-up's records, which refer to each other: a room has shifts, a press inks. */
  private static final Set<String> SET_UP = Set.of("shop", "ink", "screen", "dryer");

  @ArchTest
  static final ArchRule dependencies_point_inwards =
      noClasses()
          .that()
          .resideInAnyPackage(
              in("shop"),
              in("order"),
              in("ink"),
              in("dryer"),
              in("screen"),
              in("sheet"),
              in("simulation"),
              in("audit"),
              in("planning"),
              in("plan"))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(in("web"))
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule planning_knows_no_plans =
      noClasses()
          .that()
          .resideInAnyPackage(in("planning"), in("simulation"), in("audit"))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(in("plan"), in("event"), in("web"))
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule simulation_knows_no_planning_and_no_audit =
      noClasses()
          .that()
          .resideInAPackage(in("simulation"))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(in("planning"), in("audit"))
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule audit_shares_no_code_with_what_it_checks =
      noClasses()
          .that()
          .resideInAPackage(in("audit"))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(in("planning"), in("simulation"))
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule calculations_know_no_framework =
      noClasses()
          .that()
          .resideInAnyPackage(
              in("simulation"), in("audit"), in("ink"), in("dryer"), in("screen"), in("sheet"))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "io.quarkus..",
              "jakarta.persistence..",
              "jakarta.ws.rs..",
              "jakarta.inject..",
              "jakarta.enterprise..",
              "org.hibernate..",
              "java.sql..",
              "java.net..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule platform_knows_no_feature =
      classes()
          .that()
          .resideInAPackage(in("platform"))
          .should()
          .onlyDependOnClassesThat(
              DescribedPredicate.describe(
                  "are of platform or of libraries",
                  type ->
                      !type.getPackageName().startsWith(ROOT)
                          || type.getPackageName().startsWith(ROOT + "platform")));

  @ArchTest
  static final ArchRule top_level_packages_have_no_cycles =
      slices().assignedFrom(new TopLevel()).should().beFreeOfCycles();

  @ArchTest
  static final ArchRule internal_is_internal =
      classes()
          .that()
          .resideInAPackage("..internal..")
          .should(
              new ArchCondition<JavaClass>("be used from their own top-level package only") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                  type.getDirectDependenciesToSelf().stream()
                      .filter(use -> !topLevel(use.getOriginClass()).equals(topLevel(type)))
                      .forEach(
                          use ->
                              events.add(SimpleConditionEvent.violated(use, use.getDescription())));
                }
              });

  @ArchTest
  static final ArchRule only_platform_reads_the_clock =
      noClasses()
          .that()
          .resideOutsideOfPackage(in("platform"))
          .should()
          .callMethodWhere(
              DescribedPredicate.describe(
                  "reads the machine's time", ArchitectureTest::readsTheClock));

  private static boolean readsTheClock(JavaAccess<?> access) {
    String name = access.getTarget().getName();
    JavaClass owner = access.getTargetOwner();
    if (owner.isEquivalentTo(System.class)) {
      return name.equals("currentTimeMillis");
    }
    if (owner.isEquivalentTo(Clock.class)) {
      return name.startsWith("system");
    }
    return name.equals("now")
        && access.getTarget().getFullName().endsWith("now()")
        && Set.of(
                Instant.class,
                OffsetDateTime.class,
                ZonedDateTime.class,
                LocalDateTime.class,
                LocalDate.class,
                LocalTime.class)
            .stream()
            .anyMatch(owner::isEquivalentTo);
  }

  private static String in(String topLevel) {
    return ROOT + topLevel + "..";
  }

  private static String topLevel(JavaClass type) {
    String rest = type.getPackageName().substring(ROOT.length() - 1);
    return rest.isEmpty() ? "" : rest.substring(1).split("\\.")[0];
  }

  private static final class TopLevel implements SliceAssignment {

    @Override
    public SliceIdentifier getIdentifierOf(JavaClass type) {
      if (!type.getPackageName().startsWith(ROOT)) {
        return SliceIdentifier.ignore();
      }
      String name = topLevel(type);
      return SliceIdentifier.of(SET_UP.contains(name) ? "set-up" : name);
    }

    @Override
    public String getDescription() {
      return "top-level packages, those of the set-up taken together";
    }
  }
}
