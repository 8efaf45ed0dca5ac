package org.potlife.audit;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** A witness that copies from the accused is none. */
class StandsAloneTest {

  private final JavaClasses audit =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.potlife.audit");

  @Test
  void theAuditKnowsOnlyTheRecordsOfShopOrderRoomAndSheet() {
    classes()
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "java..",
            "org.potlife.audit",
            "org.potlife.shop",
            "org.potlife.order",
            "org.potlife.room",
            "org.potlife.floor",
            "org.potlife.ink",
            "org.potlife.screen",
            "org.potlife.dryer",
            "org.potlife.sheet")
        .check(audit);
  }

  @Test
  void theAuditStatesTheFormulasItself() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .haveNameMatching(
            "org\\.potlife\\.(ink|screen|dryer)"
                + "\\.(Mesh|PrintMass|RecipeMass|Drying|VapourPressure|Belt|Evaporation)")
        .check(audit);
  }

  @Test
  void theAuditHasNoClock() {
    noClasses()
        .should()
        .callMethod(java.time.Instant.class, "now")
        .orShould()
        .callMethod(java.time.OffsetDateTime.class, "now")
        .orShould()
        .callMethod(java.lang.System.class, "currentTimeMillis")
        .check(audit);
  }
}
