package io.github.leafproof.dsl.junit;

import io.github.leafproof.dsl.rehearsal.CardsAndTrays;
import org.junit.platform.engine.support.hierarchical.EngineExecutionContext;

/**
 * What the tests of one run share.
 *
 * @param files the cards and trays, each read once
 */
record RehearsalContext(CardsAndTrays files) implements EngineExecutionContext {}
