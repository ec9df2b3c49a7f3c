package org.example.shop;

import org.junit.platform.suite.api.IncludeEngines;
import org.junit.platform.suite.api.SelectClasspathResource;
import org.junit.platform.suite.api.Suite;

/** Every rehearsal of every procedure in this folder of the class path is a test. */
@Suite
@IncludeEngines("leafproof")
@SelectClasspathResource("bench")
class RehearsalsTest {}
