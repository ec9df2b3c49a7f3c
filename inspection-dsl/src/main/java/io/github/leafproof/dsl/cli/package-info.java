/** The command line: one class for each verb, each a thin shell over the library. It needs picocli at run time. */
@NullMarked
package io.github.leafproof.dsl.cli;

import org.jspecify.annotations.NullMarked;
