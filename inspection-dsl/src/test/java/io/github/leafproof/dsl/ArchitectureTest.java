package io.github.leafproof.dsl;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import org.jspecify.annotations.NullMarked;

/** The rooms of this library stand in the line that docs/architecture.md draws, and no arrow points back up. */
@AnalyzeClasses(packages = "io.github.leafproof.dsl", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String HERE = "io.github.leafproof.dsl.";

    @ArchTest
    static final ArchRule each_room_knows_only_the_rooms_below_it = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("io.github.leafproof.dsl..")
            .layer("json")
            .definedBy(HERE + "json")
            .layer("source")
            .definedBy(HERE + "source")
            .layer("diagnostic")
            .definedBy(HERE + "diagnostic")
            .layer("syntax")
            .definedBy(HERE + "syntax")
            .layer("parse")
            .definedBy(HERE + "parse")
            .layer("layout")
            .definedBy(HERE + "layout")
            .layer("message")
            .definedBy(HERE + "message")
            .layer("parts")
            .definedBy(HERE + "parts")
            .layer("formula")
            .definedBy(HERE + "formula")
            .layer("graph")
            .definedBy(HERE + "graph")
            .layer("bytecode")
            .definedBy(HERE + "bytecode")
            .layer("meaning")
            .definedBy(HERE + "meaning")
            .layer("history")
            .definedBy(HERE + "history")
            .layer("report")
            .definedBy(HERE + "report")
            .layer("html")
            .definedBy(HERE + "html")
            .layer("draw")
            .definedBy(HERE + "draw")
            .layer("reckon")
            .definedBy(HERE + "reckon")
            .layer("figure")
            .definedBy(HERE + "figure")
            .layer("page")
            .definedBy(HERE + "page")
            .layer("front door")
            .definedBy("io.github.leafproof.dsl")
            .layer("rehearsal")
            .definedBy(HERE + "rehearsal")
            .layer("coverage")
            .definedBy(HERE + "coverage")
            .layer("session")
            .definedBy(HERE + "session")
            .layer("archive")
            .definedBy(HERE + "archive")
            .layer("edges")
            .definedBy(HERE + "edges")
            .layer("mutants")
            .definedBy(HERE + "mutants")
            .layer("build")
            .definedBy(HERE + "build")
            .layer("seal")
            .definedBy(HERE + "seal")
            .layer("workcard")
            .definedBy(HERE + "workcard")
            .layer("junit")
            .definedBy(HERE + "junit")
            .layer("assertions")
            .definedBy(HERE + "assertions")
            .layer("guide")
            .definedBy(HERE + "guide")
            .layer("cli")
            .definedBy(HERE + "cli")
            .whereLayer("json")
            .mayNotAccessAnyLayer()
            .whereLayer("source")
            .mayNotAccessAnyLayer()
            .whereLayer("diagnostic")
            .mayOnlyAccessLayers("json", "source")
            .whereLayer("syntax")
            .mayOnlyAccessLayers("source")
            .whereLayer("parse")
            .mayOnlyAccessLayers("source", "diagnostic", "syntax")
            .whereLayer("layout")
            .mayOnlyAccessLayers("source", "parse")
            .whereLayer("message")
            .mayOnlyAccessLayers("source", "diagnostic", "syntax")
            .whereLayer("parts")
            .mayOnlyAccessLayers("source", "diagnostic", "syntax", "parse", "message")
            .whereLayer("formula")
            .mayNotAccessAnyLayer()
            .whereLayer("graph")
            .mayOnlyAccessLayers("formula")
            .whereLayer("bytecode")
            .mayOnlyAccessLayers("formula", "graph")
            .whereLayer("meaning")
            .mayOnlyAccessLayers("source", "diagnostic", "syntax", "message", "formula", "graph")
            .whereLayer("history")
            .mayOnlyAccessLayers("formula", "graph")
            .whereLayer("report")
            .mayOnlyAccessLayers("json", "formula", "graph", "history")
            .whereLayer("html")
            .mayNotAccessAnyLayer()
            .whereLayer("draw")
            .mayOnlyAccessLayers("html", "formula", "graph")
            .whereLayer("reckon")
            .mayOnlyAccessLayers("source", "diagnostic", "syntax", "parse", "formula", "graph", "meaning", "report")
            .whereLayer("figure")
            .mayOnlyAccessLayers("html", "formula", "graph")
            .whereLayer("page")
            .mayOnlyAccessLayers("html", "figure", "draw", "formula", "graph", "report")
            .whereLayer("front door")
            .mayOnlyAccessLayers(
                    "source",
                    "diagnostic",
                    "syntax",
                    "parse",
                    "layout",
                    "message",
                    "parts",
                    "formula",
                    "graph",
                    "meaning",
                    "report")
            .whereLayer("rehearsal")
            .mayOnlyAccessLayers("front door", "source", "diagnostic", "json", "syntax", "formula", "graph", "report")
            .whereLayer("coverage")
            .mayOnlyAccessLayers(
                    "json",
                    "html",
                    "front door",
                    "rehearsal",
                    "source",
                    "syntax",
                    "formula",
                    "graph",
                    "meaning",
                    "report")
            .whereLayer("session")
            .mayOnlyAccessLayers("front door", "formula", "graph", "report")
            .whereLayer("archive")
            .mayOnlyAccessLayers("front door", "json", "source", "formula", "graph", "report")
            .whereLayer("edges")
            .mayOnlyAccessLayers("source", "syntax", "layout", "formula", "graph")
            .whereLayer("mutants")
            .mayOnlyAccessLayers(
                    "front door", "source", "diagnostic", "syntax", "parts", "formula", "graph", "rehearsal", "json")
            .whereLayer("build")
            .mayOnlyAccessLayers("front door", "source", "parts", "graph")
            .whereLayer("workcard")
            .mayOnlyAccessLayers("formula", "graph", "report", "html")
            .whereLayer("seal")
            .mayOnlyAccessLayers("front door", "source", "syntax", "parts", "report")
            .whereLayer("junit")
            .mayOnlyAccessLayers("front door", "rehearsal", "source", "diagnostic", "syntax", "graph")
            .whereLayer("junit")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("assertions")
            .mayOnlyAccessLayers("graph", "report")
            .whereLayer("assertions")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("guide")
            .mayOnlyAccessLayers(
                    "front door", "diagnostic", "source", "formula", "graph", "report", "reckon", "session")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer();

    @ArchTest
    static final ArchRule the_parser_generator_stays_in_its_room = noClasses()
            .that()
            .resideOutsideOfPackage(HERE + "parse")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.antlr..");

    @ArchTest
    static final ArchRule the_library_of_bytecode_stays_in_its_room = noClasses()
            .that()
            .resideOutsideOfPackage(HERE + "bytecode")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.objectweb.asm..");

    @ArchTest
    static final ArchRule the_json_library_stays_in_its_room = noClasses()
            .that()
            .resideOutsideOfPackage(HERE + "json")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("tools.jackson..");

    @ArchTest
    static final ArchRule only_the_command_line_needs_picocli = noClasses()
            .that()
            .resideOutsideOfPackage(HERE + "cli")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..");

    @ArchTest
    static final ArchRule only_the_command_line_knows_a_terminal = noClasses()
            .that()
            .resideOutsideOfPackage(HERE + "cli")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.jline..");

    @ArchTest
    static final ArchRule only_tests_of_procedures_need_the_junit_platform = noClasses()
            .that()
            .resideOutsideOfPackage(HERE + "junit")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.junit..", "org.opentest4j..");

    @ArchTest
    static final ArchRule only_assertions_need_assertj = noClasses()
            .that()
            .resideOutsideOfPackage(HERE + "assertions")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.assertj..");

    @ArchTest
    static final ArchRule names_say_what_a_thing_is = noClasses()
            .should()
            .haveNameMatching(".*(Manager|Helper|Helpers|Util|Utils|Impl)(\\$.*)?")
            .because("a name that fits everything says nothing");

    @ArchTest
    static final ArchRule only_the_command_line_ends_a_program = noClasses()
            .that()
            .resideOutsideOfPackage(HERE + "cli")
            .should()
            .callMethod(System.class, "exit", int.class)
            .orShould()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");

    @ArchTest
    static void every_room_has_a_door_plate_and_no_hidden_nulls(JavaClasses all) {
        classes().should(liveInANullMarkedPackage()).check(all);
    }

    private static ArchCondition<JavaClass> liveInANullMarkedPackage() {
        return new ArchCondition<>("live in a package whose package-info is @NullMarked") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                boolean marked = type.getPackage().isAnnotatedWith(NullMarked.class);
                events.add(
                        new SimpleConditionEvent(type, marked, type.getPackageName() + " has no marked package-info"));
            }
        };
    }
}
