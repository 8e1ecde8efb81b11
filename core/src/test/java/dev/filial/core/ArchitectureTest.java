package dev.filial.core;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The floors hold: a package imports only what stands below it. */
@AnalyzeClasses(packages = "dev.filial.core", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  private static final String ROOT = "dev.filial.core.";

  /** From the ground up; packages of one floor do not know each other either. */
  private static final List<Set<String>> FLOORS =
      List.of(
          Set.of("number"),
          Set.of("name"),
          Set.of("pedigree", "heredity", "trial"),
          Set.of("ancestry", "inference"),
          Set.of("register", "plan"),
          Set.of("store", "exchange"),
          Set.of("answer"),
          Set.of("spreadsheet"));

  @ArchTest
  static final ArchRule everyPackageStandsOnAFloor =
      classes()
          .should()
          .resideInAnyPackage(
              FLOORS.stream()
                  .flatMap(Set::stream)
                  .map(f -> ROOT + f + "..")
                  .toArray(String[]::new));

  @ArchTest
  static void everyPackageImportsOnlyWhatStandsBelowIt(JavaClasses everything) {
    Set<String> below = new HashSet<>();
    for (Set<String> floor : FLOORS) {
      for (String name : floor) {
        DescribedPredicate<JavaClass> allowed = resideInAPackage(ROOT + name + "..");
        for (String lower : below) {
          allowed = allowed.or(resideInAPackage(ROOT + lower + ".."));
        }
        noClasses()
            .that()
            .resideInAPackage(ROOT + name + "..")
            .should()
            .dependOnClassesThat(resideInAPackage("dev.filial..").and(not(allowed)))
            .because("a package imports only what stands below it")
            .allowEmptyShould(true)
            .check(everything);
      }
      below.addAll(floor);
    }
  }

  @ArchTest
  static final ArchRule theEngineKnowsNoGeneticsAndNothingButJava =
      classes()
          .that()
          .resideInAPackage(ROOT + "inference.factor..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(ROOT + "inference.factor..", "java..", "org.jspecify.annotations..");

  @ArchTest
  static final ArchRule whatContradictsItselfIsFoundByNothingButJava =
      classes()
          .that()
          .resideInAPackage(ROOT + "inference.conflict..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(ROOT + "inference.conflict..", "java..");

  @ArchTest
  static final ArchRule theEngineIsForInferenceAlone =
      noClasses()
          .that()
          .resideOutsideOfPackage(ROOT + "inference..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage(ROOT + "inference.factor..");

  @ArchTest
  static final ArchRule publicSignaturesSpeakFilialAndTheJdk =
      classes()
          .that()
          .arePublic()
          .and()
          .doNotHaveSimpleName("PedigreeGraph")
          .should(
              new ArchCondition<>("keep types of other libraries out of public signatures") {
                @Override
                public void check(JavaClass owner, ConditionEvents events) {
                  for (JavaCodeUnit unit : owner.getCodeUnits()) {
                    if (isPublished(unit)) {
                      checkUnit(unit, events);
                    }
                  }
                }
              });

  @ArchTest
  static final ArchRule noClassIsNamedForWhatItIsNot =
      noClasses()
          .should()
          .haveNameMatching(".*(Manager|Util|Utils|Helper|Helpers)")
          .because("a class is named for what it is");

  @ArchTest
  static final ArchRule noStaticFieldChanges =
      fields().that().areStatic().should().beFinal().allowEmptyShould(true);

  @ArchTest
  static final ArchRule noPublicFieldChanges =
      noFields().that().arePublic().and().areNotFinal().should().bePublic().allowEmptyShould(true);

  private static boolean isPublished(JavaCodeUnit unit) {
    Set<JavaModifier> modifiers = unit.getModifiers();
    return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
  }

  private static void checkUnit(JavaCodeUnit unit, ConditionEvents events) {
    List<JavaClass> types = new ArrayList<>();
    types.addAll(unit.getReturnType().getAllInvolvedRawTypes());
    unit.getParameterTypes().forEach(type -> types.addAll(type.getAllInvolvedRawTypes()));
    types.addAll(unit.getExceptionTypes());
    for (JavaClass type : types) {
      String name = type.getBaseComponentType().getPackageName();
      boolean own = name.startsWith("dev.filial") || name.isEmpty();
      boolean jdk = name.startsWith("java.") && !name.startsWith("java.sql");
      if (!own && !jdk) {
        events.add(
            SimpleConditionEvent.violated(
                unit, unit.getFullName() + " speaks of " + type.getName()));
      }
    }
  }
}
