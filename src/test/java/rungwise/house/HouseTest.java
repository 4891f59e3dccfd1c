package rungwise.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The house rules: arrows run one way, and the engine stays in its room. */
@AnalyzeClasses(packages = "rungwise", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {
    @ArchTest
    static final ArchRule arrows_run_one_way = layeredArchitecture().consideringOnlyDependenciesInLayers()
            .layer("cli").definedBy("rungwise.cli..")
            .optionalLayer("http").definedBy("rungwise.http..")
            .layer("book").definedBy("rungwise.book..")
            .layer("diagnosis").definedBy("rungwise.diagnosis..")
            .layer("shoplog").definedBy("rungwise.shoplog..")
            .layer("lint").definedBy("rungwise.lint..")
            .layer("ladder").definedBy("rungwise.ladder..")
            .layer("rules").definedBy("rungwise.rules..")
            .layer("knowledge").definedBy("rungwise.knowledge..")
            .layer("science").definedBy("rungwise.science..")
            .whereLayer("cli").mayNotBeAccessedByAnyLayer()
            .whereLayer("http").mayOnlyBeAccessedByLayers("cli")
            .whereLayer("book").mayOnlyBeAccessedByLayers("cli")
            .whereLayer("diagnosis").mayOnlyBeAccessedByLayers("cli", "http")
            .whereLayer("shoplog").mayOnlyBeAccessedByLayers("cli", "http")
            .whereLayer("lint").mayOnlyBeAccessedByLayers("book", "cli")
            .whereLayer("ladder").mayOnlyBeAccessedByLayers("lint", "book", "diagnosis", "shoplog", "cli", "http")
            .whereLayer("rules").mayOnlyBeAccessedByLayers("ladder", "lint", "book", "diagnosis", "shoplog", "cli", "http")
            .whereLayer("knowledge").mayOnlyBeAccessedByLayers("rules", "ladder", "lint", "book", "diagnosis", "shoplog",
                    "cli", "http")
            .because("a change of the web or the engine must not reach the trade's knowledge");

    @ArchTest
    static final ArchRule the_engine_stays_in_rules = noClasses().that().resideOutsideOfPackage("rungwise.rules..")
            .should().dependOnClassesThat().resideInAnyPackage("org.drools..", "org.kie..")
            .because("only one package may see the engine");

    @ArchTest
    static final ArchRule the_database_stays_in_shoplog = noClasses().that()
            .resideOutsideOfPackage("rungwise.shoplog..").should().dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "javax.sql..", "org.jdbi..", "org.flywaydb..", "com.zaxxer..", "org.sqlite..")
            .because("only one package may see the database");

    @ArchTest
    static final ArchRule the_web_stays_in_http = noClasses().that().resideOutsideOfPackage("rungwise.http..")
            .should().dependOnClassesThat().resideInAnyPackage("io.javalin..", "jakarta.servlet..")
            .because("only one package may see the web");

    @ArchTest
    static final ArchRule markup_stays_in_book = noClasses().that().resideOutsideOfPackage("rungwise.book..")
            .should().dependOnClassesThat().resideInAnyPackage("j2html..")
            .because("only one package may write pages");
}
