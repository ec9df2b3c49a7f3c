package io.github.leafproof.inspection;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

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

/** The rooms of this library stand in one line, and no arrow points back up. */
@AnalyzeClasses(packages = "io.github.leafproof.inspection", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String HERE = "io.github.leafproof.inspection.";

    @ArchTest
    static final ArchRule each_room_knows_only_the_rooms_before_it = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("io.github.leafproof.inspection..")
            .withOptionalLayers(true)
            .layer("quantity")
            .definedBy(HERE + "quantity..")
            .layer("gauge")
            .definedBy(HERE + "gauge..")
            .layer("engine")
            .definedBy(HERE + "engine..")
            .layer("verdict")
            .definedBy(HERE + "verdict..")
            .layer("mechanism")
            .definedBy(HERE + "mechanism..")
            .layer("clearance")
            .definedBy(HERE + "clearance..")
            .layer("record")
            .definedBy(HERE + "record..")
            .whereLayer("quantity")
            .mayNotAccessAnyLayer()
            .whereLayer("gauge")
            .mayOnlyAccessLayers("quantity")
            .whereLayer("engine")
            .mayOnlyAccessLayers("quantity")
            .whereLayer("verdict")
            .mayOnlyAccessLayers("quantity")
            .whereLayer("mechanism")
            .mayOnlyAccessLayers("quantity")
            .whereLayer("clearance")
            .mayOnlyAccessLayers("quantity", "gauge", "verdict")
            .whereLayer("record")
            .mayNotBeAccessedByAnyLayer();

    @ArchTest
    static final ArchRule no_two_rooms_know_each_other =
            slices().matching(HERE + "(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule json_stays_in_the_record_room = noClasses()
            .that()
            .resideOutsideOfPackage(HERE + "record..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("tools.jackson..");

    @ArchTest
    static final ArchRule the_room_of_quantities_needs_nothing_but_exact_fractions = classes()
            .that()
            .resideInAPackage(HERE + "quantity..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(HERE + "quantity..", "java..", "org.apache.commons.numbers..", "org.jspecify..");

    @ArchTest
    static final ArchRule names_say_what_a_thing_is = noClasses()
            .should()
            .haveNameMatching(".*(Manager|Helper|Helpers|Util|Utils|Impl)(\\$.*)?")
            .because("a name that fits everything says nothing");

    @ArchTest
    static final ArchRule nothing_is_printed_and_no_program_is_ended = noClasses()
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
