package dev.filial.cli;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "dev.filial.cli", importOptions = ImportOption.DoNotIncludeTests.class)
class FloorsTest {

  @ArchTest
  static final ArchRule EACH_PACKAGE_IMPORTS_ONLY_WHAT_IS_BELOW_IT =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("entry")
          .definedBy("dev.filial.cli")
          .layer("command")
          .definedBy("dev.filial.cli.command")
          .layer("frame")
          .definedBy("dev.filial.cli.frame")
          .layer("screen")
          .definedBy("dev.filial.cli.screen")
          .layer("page")
          .definedBy("dev.filial.cli.page")
          .layer("demo")
          .definedBy("dev.filial.cli.demo")
          .layer("label")
          .definedBy("dev.filial.cli.label")
          .layer("paper")
          .definedBy("dev.filial.cli.paper")
          .layer("wording")
          .definedBy("dev.filial.cli.wording")
          .whereLayer("entry")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("command")
          .mayOnlyBeAccessedByLayers("entry")
          .whereLayer("frame")
          .mayOnlyBeAccessedByLayers("entry", "command")
          .whereLayer("demo")
          .mayOnlyBeAccessedByLayers("command")
          .whereLayer("demo")
          .mayNotAccessAnyLayer()
          .whereLayer("label")
          .mayOnlyBeAccessedByLayers("command")
          .whereLayer("label")
          .mayOnlyAccessLayers("paper")
          .whereLayer("page")
          .mayOnlyBeAccessedByLayers("command")
          .whereLayer("page")
          .mayOnlyAccessLayers("paper", "wording")
          .whereLayer("paper")
          .mayOnlyBeAccessedByLayers("label", "page")
          .whereLayer("paper")
          .mayNotAccessAnyLayer()
          .whereLayer("wording")
          .mayOnlyBeAccessedByLayers("command", "page")
          .whereLayer("wording")
          .mayNotAccessAnyLayer()
          .whereLayer("screen")
          .mayOnlyBeAccessedByLayers("entry", "command", "frame");
}
