package rungwise.house;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwise.rules.Phase;

/** The house rules: arrows run one way, no room is crowded, and the engine stays in its own. */
@AnalyzeClasses(packages = "rungwise", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {
    /** From the top: a room may use those of the floors below it, and none of its own floor. */
    private static final List<List<String>> FLOORS = List.of(
            List.of("cli"),
            List.of("http", "book", "start", "ask", "card"),
            List.of("spot"),
            List.of("lint", "diagnosis", "shoplog"),
            List.of("compare"),
            List.of("answer"),
            List.of("ladder"),
            List.of("workup"),
            List.of("question", "rules"),
            List.of("rules.said"),
            List.of("rules.use"),
            List.of("rules.fact"),
            List.of("names"),
            List.of("knowledge.overlay"),
            List.of("knowledge.load"),
            List.of("knowledge.check"),
            List.of("knowledge.draft"),
            List.of("knowledge"),
            List.of("knowledge.words", "knowledge.safety", "knowledge.deposit", "knowledge.product"),
            List.of("knowledge.matter"),
            List.of("knowledge.method"),
            List.of("knowledge.surface"),
            List.of("knowledge.chemistry", "knowledge.decision", "text"),
            List.of("knowledge.common", "science"));

    private static final String COMPILED = "compiled rules";
    /** What the build makes of the files in {@code rules/}: a package a phase. */
    private static final String[] OF_THE_PHASES = Stream.of(Phase.values()).map(phase -> "rungwise.rules." + phase.group() + "..")
            .toArray(String[]::new);

    private static final int CROWDED = 40;

    @ArchTest
    static final ArchRule arrows_run_one_way = floors()
            .whereLayer("lint").mayOnlyBeAccessedByLayers("book", "cli")
            .whereLayer("diagnosis").mayOnlyBeAccessedByLayers("cli", "http", "spot", "ask")
            .whereLayer("shoplog").mayOnlyBeAccessedByLayers("cli", "http", "spot")
            .whereLayer("spot").mayOnlyBeAccessedByLayers("cli", "http")
            .because("a change of the web or the engine must not reach the trade's knowledge");

    private static LayeredArchitecture floors() {
        LayeredArchitecture house = layeredArchitecture().consideringOnlyDependenciesInLayers().withOptionalLayers(true)
                .layer(COMPILED).definedBy(OF_THE_PHASES).whereLayer(COMPILED).mayNotBeAccessedByAnyLayer();
        for (String room : FLOORS.stream().flatMap(List::stream).toList()) {
            house = house.layer(room).definedBy("rungwise." + room);
        }
        List<String> above = new ArrayList<>();
        for (List<String> floor : FLOORS) {
            for (String room : floor) {
                house = above.isEmpty() ? house.whereLayer(room).mayNotBeAccessedByAnyLayer()
                        : house.whereLayer(room).mayOnlyBeAccessedByLayers(readers(room, above));
            }
            above.addAll(floor);
        }
        return house.ensureAllClassesAreContainedInArchitecture();
    }

    /** Compiled rules speak of facts, conclusions and records, and stand above them all. */
    private static String[] readers(String room, List<String> above) {
        boolean inRules = room.startsWith("rules.") || room.startsWith("knowledge") || room.equals("text") || room.equals("science");
        return Stream.concat(above.stream(), inRules ? Stream.of(COMPILED) : Stream.empty()).toArray(String[]::new);
    }

    @ArchTest
    static final ArchRule no_room_leads_back_to_itself = slices().matching("rungwise.(**)").should().beFreeOfCycles()
            .ignoreDependency(resideInAnyPackage(OF_THE_PHASES), alwaysTrue())
            .because("rooms that need one another are one room");

    @Test
    void no_package_holds_more_than_forty_files() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            Map<String, Long> rooms = files.filter(file -> file.toString().endsWith(".java"))
                    .collect(Collectors.groupingBy(file -> file.getParent().toString(), TreeMap::new, Collectors.counting()));
            assertThat(rooms).isNotEmpty().allSatisfy((room, held) -> assertThat(held).as(room).isLessThanOrEqualTo(CROWDED));
        }
    }

    @ArchTest
    static final ArchRule the_engine_stays_in_rules = noClasses().that().resideOutsideOfPackages(Stream.concat(
            Stream.of("rungwise.rules"), Stream.of(OF_THE_PHASES)).toArray(String[]::new))
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
