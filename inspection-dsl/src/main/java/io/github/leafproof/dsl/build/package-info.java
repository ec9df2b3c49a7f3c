/**
 * Procedures made by a Java program instead of a person with an editor: a draft is told what is observed and what is
 * checked, writes the procedure down, and compiles what it wrote. So there is one language, one compiler and one set of
 * messages, and whatever a program drafts can be read, tidied and kept as a file.
 */
@NullMarked
package io.github.leafproof.dsl.build;

import org.jspecify.annotations.NullMarked;
