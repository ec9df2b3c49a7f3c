package io.github.leafproof.dsl.junit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClasspathResource;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClasspathRoots;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectDirectory;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectFile;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectPackage;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectUniqueId;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectUri;
import static org.junit.platform.launcher.TagFilter.includeTags;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.platform.engine.DiscoverySelector;
import org.junit.platform.engine.TestDescriptor;
import org.junit.platform.engine.TestTag;
import org.junit.platform.engine.discovery.FilePosition;
import org.junit.platform.engine.support.descriptor.FileSource;
import org.junit.platform.launcher.EngineFilter;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.testkit.engine.EngineExecutionResults;
import org.junit.platform.testkit.engine.EngineTestKit;
import org.junit.platform.testkit.engine.Event;
import org.opentest4j.AssertionFailedError;

/** Rehearsals as tests, found and run as builds and editors find and run them. */
class InspectionTestEngineTest {

    private static final String CASES = """
            rehearse "flips freely" {
              engine "cards/quillan-15.json"
              gauges "trays/bench-one.json"
              enter flips 3
              expect free passes
            }
            rehearse "too stiff" {
              engine "cards/quillan-15.json"
              gauges "trays/bench-one.json"
              enter flips 9
              expect free fails
            }
            """;

    private static final String TURNING = "[engine:leafproof]/[procedure:classpath%3Ashop%2Fturning.inspection]";

    @TempDir
    private Path classes = Path.of("");

    private ClassLoader before = ClassLoader.getSystemClassLoader();

    @BeforeEach
    void put_the_shop_on_the_class_path() throws IOException {
        before = Thread.currentThread().getContextClassLoader();
        classes = classes.toRealPath();
        Path bench = Path.of("..", "examples", "bench");
        for (String file : new String[] {"cards/quillan-15.json", "trays/bench-one.json"}) {
            Files.createDirectories(classes.resolve("shop").resolve(file).getParent());
            Files.copy(bench.resolve(file), classes.resolve("shop").resolve(file));
        }
        file("shop/parts/flips.inspection", "observe flips : count ask \"Flips\"\n");
        file("shop/turning.inspection", procedure("turning", "use \"parts/flips.inspection\"\n") + CASES);
        file(
                "shop/deep/again.inspection",
                procedure("again", "observe flips : count ask \"Flips\"\n")
                        + CASES.replace("\"cards", "\"../cards").replace("\"trays", "\"../trays"));
        Thread.currentThread()
                .setContextClassLoader(
                        new URLClassLoader(new URL[] {classes.toUri().toURL()}, before));
    }

    @AfterEach
    void take_it_off_again() throws IOException {
        ((URLClassLoader) Thread.currentThread().getContextClassLoader()).close();
        Thread.currentThread().setContextClassLoader(before);
    }

    private static String procedure(String name, String observes) {
        return "procedure " + name + " \"Turning over\" revision 2\n" + observes
                + "check free \"Turns freely\" { require flips at most 4 }\n";
    }

    private Path file(String name, String text) throws IOException {
        Path file = classes.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private static EngineExecutionResults run(DiscoverySelector... selectors) {
        return EngineTestKit.engine("leafproof").selectors(selectors).execute();
    }

    /** The ids of the tests that were run, without what they have in common. */
    private static List<String> ids(EngineExecutionResults run) {
        return run.testEvents().started().stream()
                .map(event ->
                        event.getTestDescriptor().getUniqueId().toString().substring("[engine:leafproof]/".length()))
                .toList();
    }

    private static List<String> both(String key) {
        return List.of(
                "[procedure:classpath%3Ashop%2F" + key + "]/[rehearsal:flips freely]",
                "[procedure:classpath%3Ashop%2F" + key + "]/[rehearsal:too stiff]");
    }

    static List<String> turning() {
        return both("turning.inspection");
    }

    @Test
    void each_procedure_on_the_class_path_is_a_container_and_each_rehearsal_a_test() {
        EngineExecutionResults run = run(selectClasspathRoots(Set.of(classes)).toArray(DiscoverySelector[]::new));

        run.testEvents().assertStatistics(stats -> stats.started(4).succeeded(4));
        run.containerEvents().assertStatistics(stats -> stats.started(3).succeeded(3));
        assertThat(ids(run))
                .containsExactlyElementsOf(Stream.concat(both("deep%2Fagain.inspection").stream(), turning().stream())
                        .toList());
    }

    @Test
    void folders_files_resources_packages_and_ids_lead_to_the_same_tests() {
        Path turning = classes.resolve("shop/turning.inspection");

        assertThat(ids(run(selectClasspathResource("shop/turning.inspection")))).isEqualTo(turning());
        assertThat(ids(run(selectFile(turning.toFile())))).isEqualTo(turning());
        assertThat(ids(run(selectUri(turning.toUri())))).isEqualTo(turning());
        assertThat(ids(run(selectUniqueId(TURNING)))).isEqualTo(turning());
        assertThat(ids(run(selectClasspathResource("shop")))).hasSize(4);
        assertThat(ids(run(selectPackage("shop")))).hasSize(4);
        assertThat(ids(run(selectPackage("shop.deep")))).hasSize(2);
        assertThat(ids(run(selectDirectory(classes.resolve("shop/deep").toFile()))))
                .hasSize(2);
        assertThat(ids(run(selectUri(classes.resolve("shop").toUri())))).hasSize(4);
    }

    @Test
    void what_is_asked_for_twice_is_run_once() {
        EngineExecutionResults run = run(
                selectPackage("shop"),
                selectFile(classes.resolve("shop/turning.inspection").toFile()),
                selectUniqueId(TURNING + "/[rehearsal:too stiff]"));

        assertThat(ids(run)).hasSize(4);
    }

    @Test
    void one_rehearsal_can_be_run_by_its_id_or_by_a_line_that_it_stands_in() {
        Path turning = classes.resolve("shop/turning.inspection");
        List<String> stiff = turning().subList(1, 2);

        assertThat(ids(run(selectUniqueId(TURNING + "/[rehearsal:too stiff]")))).isEqualTo(stiff);
        assertThat(ids(run(selectFile(turning.toFile(), FilePosition.from(12)))))
                .isEqualTo(stiff);
        assertThat(ids(run(selectClasspathResource("shop/turning.inspection", FilePosition.from(10, 3)))))
                .isEqualTo(stiff);
        assertThat(ids(run(selectFile(turning.toFile(), FilePosition.from(2))))).isEqualTo(turning());
    }

    static Stream<DiscoverySelector> nothing() {
        return Stream.of(
                selectClasspathResource("nowhere"),
                selectPackage("no.where"),
                selectFile("nowhere.inspection"),
                selectFile("pom.xml"),
                selectUri("https://example.org/turning.inspection"),
                selectUniqueId("[engine:leafproof]"),
                selectUniqueId("[engine:leafproof]/[procedure:classpath%3Anowhere.inspection]"),
                selectUniqueId(TURNING + "/[rehearsal:nobody wrote this]"),
                selectUniqueId("[engine:leafproof]/[class:Nobody]"));
    }

    @ParameterizedTest
    @MethodSource("nothing")
    void what_is_not_there_is_not_run(DiscoverySelector nothing) {
        assertThat(ids(run(nothing))).isEmpty();
    }

    @Test
    void a_test_knows_where_it_is_written_and_what_it_is_called() {
        EngineExecutionResults run =
                run(selectFile(classes.resolve("shop/turning.inspection").toFile()));

        TestDescriptor stiff = run.testEvents().started().list().get(1).getTestDescriptor();
        TestDescriptor turning = stiff.getParent().orElseThrow();
        FileSource at = (FileSource) stiff.getSource().orElseThrow();
        assertThat(stiff.getDisplayName()).isEqualTo("too stiff");
        assertThat(at.getFile())
                .isEqualTo(classes.resolve("shop/turning.inspection").toFile());
        assertThat(at.getPosition()).contains(org.junit.platform.engine.support.descriptor.FilePosition.from(10, 10));
        assertThat(turning.getDisplayName()).isEqualTo("Turning over");
        assertThat(turning.getLegacyReportingName()).isEqualTo("turning");
        assertThat(turning.getSource())
                .contains(FileSource.from(
                        classes.resolve("shop/turning.inspection").toFile()));
    }

    @Test
    void the_tags_are_the_procedures_name_and_what_its_parts_are_called() {
        EngineExecutionResults run = run(selectPackage("shop"));

        assertThat(run.testEvents().started().list())
                .extracting(event -> event.getTestDescriptor().getTags().stream()
                        .map(TestTag::getName)
                        .sorted()
                        .toList())
                .containsExactly(
                        List.of("again"), List.of("again"), List.of("flips", "turning"), List.of("flips", "turning"));
        assertThat(ids(EngineTestKit.engine("leafproof")
                        .selectors(selectPackage("shop"))
                        .filters(includeTags("flips"))
                        .execute()))
                .isEqualTo(turning());
    }

    @Test
    void a_surprise_is_a_failure_that_tells_where_the_ways_part() throws IOException {
        file(
                "shop/turning.inspection",
                procedure("turning", "use \"parts/flips.inspection\"\n").replace("at most 4", "at most 2") + CASES);

        EngineExecutionResults run = run(selectClasspathResource("shop/turning.inspection"));

        run.testEvents().assertStatistics(stats -> stats.succeeded(1).failed(1));
        AssertionFailedError failure =
                (AssertionFailedError) thrown(run.testEvents().failed().list());
        assertThat(failure.getMessage()).endsWith("""
                        turning.inspection:8:10: expected free passes, got fails
                           flips: 3
                           here they part: requires flips at most 2: fails
                              flips is 3, above 2
                        """);
        assertThat(failure.getExpected().getStringRepresentation()).isEqualTo("free passes");
        assertThat(failure.getActual().getStringRepresentation()).isEqualTo("free fails");
    }

    @Test
    void a_procedure_with_mistakes_is_a_container_that_fails_with_all_of_them() throws IOException {
        file("shop/turning.inspection", procedure("turning", "") + CASES);

        EngineExecutionResults run = run(selectPackage("shop"));

        run.testEvents().assertStatistics(stats -> stats.started(2).succeeded(2));
        run.containerEvents().assertStatistics(stats -> stats.started(3).failed(1));
        assertThat(thrown(run.containerEvents().failed().list()))
                .hasMessageContaining("turning.inspection:2:37: error LP301: nothing is called flips");
    }

    @Test
    void a_rehearsal_whose_card_is_gone_fails_with_the_reason() throws IOException {
        Files.delete(classes.resolve("shop/cards/quillan-15.json"));

        EngineExecutionResults run = run(selectPackage("shop"));

        run.testEvents().assertStatistics(stats -> stats.failed(4));
        assertThat(thrown(run.testEvents().failed().list()))
                .isNotInstanceOf(AssertionError.class)
                .hasMessageContaining("the rehearsal cannot be run")
                .hasMessageContaining("quillan-15.json: error LP601: there is no such file");
    }

    private static Throwable thrown(List<Event> events) {
        return events.get(0)
                .getPayload(org.junit.platform.engine.TestExecutionResult.class)
                .flatMap(org.junit.platform.engine.TestExecutionResult::getThrowable)
                .orElseThrow();
    }

    @Test
    void ids_stay_the_same_when_rehearsals_change_places() throws IOException {
        int second = CASES.indexOf("rehearse", 1);
        file(
                "shop/turning.inspection",
                procedure("turning", "use \"parts/flips.inspection\"\n")
                        + CASES.substring(second)
                        + CASES.substring(0, second));

        assertThat(ids(run(selectUniqueId(TURNING))))
                .containsExactly(turning().get(1), turning().get(0));
    }

    @Test
    void a_file_outside_the_class_path_has_the_id_of_its_path(@TempDir Path elsewhere) throws IOException {
        Path file = Files.writeString(
                elsewhere.toRealPath().resolve("trial.inspection"),
                procedure("trial", "observe flips : count ask \"Flips\"\n")
                        + CASES.replace("\"cards", "\"" + classes + "/shop/cards")
                                .replace("\"trays", "\"" + classes + "/shop/trays"));

        EngineExecutionResults run = run(selectFile(file.toFile()));

        run.testEvents().assertStatistics(stats -> stats.succeeded(2));
        String id = run.testEvents()
                .started()
                .list()
                .get(1)
                .getTestDescriptor()
                .getUniqueId()
                .toString();
        assertThat(id).contains("[procedure:").doesNotContain("classpath");
        assertThat(ids(run(selectUniqueId(id)))).hasSize(1);
    }

    @Test
    void used_files_are_named_from_another_folder_where_that_is_configured() throws IOException {
        file("shop/deep/using.inspection", procedure("using", "use \"parts/flips.inspection\"\n"));

        EngineExecutionResults whole = EngineTestKit.engine("leafproof")
                .configurationParameter(
                        "leafproof.root", classes.resolve("shop").toString())
                .selectors(selectPackage("shop.deep"))
                .execute();

        assertThat(run(selectPackage("shop.deep")).containerEvents().failed().count())
                .isEqualTo(1);
        assertThat(whole.containerEvents().failed().count()).isZero();
    }

    /** On the thread that asks for them, unless it is configured otherwise: then on threads of their own. */
    @Test
    void rehearsals_run_side_by_side_where_that_is_configured() {
        String here = Thread.currentThread().getName();

        assertThat(threads(false)).containsExactly(here);
        assertThat(threads(true)).isNotEmpty().doesNotContain(here);
    }

    private static Set<String> threads(boolean parallel) {
        Set<String> threads = ConcurrentHashMap.newKeySet();
        LauncherFactory.create()
                .execute(
                        LauncherDiscoveryRequestBuilder.request()
                                .selectors(selectPackage("shop"))
                                .filters(EngineFilter.includeEngines("leafproof"))
                                .configurationParameter("leafproof.parallel.enabled", String.valueOf(parallel))
                                .configurationParameter("leafproof.parallel.config.strategy", "fixed")
                                .configurationParameter("leafproof.parallel.config.fixed.parallelism", "2")
                                .build(),
                        new TestExecutionListener() {
                            @Override
                            public void executionStarted(TestIdentifier test) {
                                if (test.isTest()) {
                                    threads.add(Thread.currentThread().getName());
                                }
                            }

                            @Override
                            public void testPlanExecutionFinished(TestPlan plan) {
                                assertThat(plan.countTestIdentifiers(TestIdentifier::isTest))
                                        .isEqualTo(4);
                            }
                        });
        return threads;
    }
}
