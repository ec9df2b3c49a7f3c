package io.github.leafproof.dsl.junit;

import io.github.leafproof.dsl.rehearsal.CardsAndTrays;
import java.nio.file.Path;
import org.junit.platform.engine.ConfigurationParameters;
import org.junit.platform.engine.EngineDiscoveryRequest;
import org.junit.platform.engine.ExecutionRequest;
import org.junit.platform.engine.TestDescriptor;
import org.junit.platform.engine.UniqueId;
import org.junit.platform.engine.support.config.PrefixedConfigurationParameters;
import org.junit.platform.engine.support.descriptor.EngineDescriptor;
import org.junit.platform.engine.support.discovery.EngineDiscoveryRequestResolver;
import org.junit.platform.engine.support.hierarchical.ForkJoinPoolHierarchicalTestExecutorService;
import org.junit.platform.engine.support.hierarchical.HierarchicalTestEngine;
import org.junit.platform.engine.support.hierarchical.HierarchicalTestExecutorService;

/**
 * Runs the rehearsals of procedures as tests: a container for each procedure, a test for each of its rehearsals. It finds
 * procedures wherever the JUnit platform can be told to look: in class path roots and resources, in packages, folders and
 * files. docs/testing.md says how to use it.
 */
public final class InspectionTestEngine extends HierarchicalTestEngine<RehearsalContext> {

    /** What unique ids, and lists of engines, call it. */
    public static final String ID = "leafproof";

    /** The folder that used files are named from; without it each procedure's own. */
    static final String ROOT = "leafproof.root";

    /** Whether rehearsals run side by side. */
    static final String PARALLEL = "leafproof.parallel.enabled";

    /** How many do: the keys behind it are those of the JUnit platform, such as {@code strategy}. */
    static final String PARALLEL_CONFIG = "leafproof.parallel.config.";

    /** Found by the JUnit platform as a service. */
    public InspectionTestEngine() {}

    @Override
    public String getId() {
        return ID;
    }

    @Override
    public TestDescriptor discover(EngineDiscoveryRequest request, UniqueId uniqueId) {
        EngineDescriptor engine = new EngineDescriptor(uniqueId, "Leafproof");
        Path root = request.getConfigurationParameters().get(ROOT, Path::of).orElse(null);
        EngineDiscoveryRequestResolver.<EngineDescriptor>builder()
                .addSelectorResolver(new ProcedureResolver(uniqueId, root))
                .build()
                .resolve(request, engine);
        return engine;
    }

    @Override
    protected RehearsalContext createExecutionContext(ExecutionRequest request) {
        return new RehearsalContext(new CardsAndTrays());
    }

    @Override
    protected HierarchicalTestExecutorService createExecutorService(ExecutionRequest request) {
        ConfigurationParameters configured = request.getConfigurationParameters();
        return configured.getBoolean(PARALLEL).orElse(false)
                ? new ForkJoinPoolHierarchicalTestExecutorService(
                        new PrefixedConfigurationParameters(configured, PARALLEL_CONFIG))
                : super.createExecutorService(request);
    }
}
