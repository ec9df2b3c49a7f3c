/** An archive of job sheets that outgrows one machine, judged by Spark. */
@NullMarked
package io.github.leafproof.examples.spark;

import org.jspecify.annotations.NullMarked;
