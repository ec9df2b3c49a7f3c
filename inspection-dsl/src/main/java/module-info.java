/** The language that an inspection procedure is written in, and the program that runs it. */
module io.github.leafproof.dsl {
    requires transitive io.github.leafproof.inspection;
    requires java.xml;
    requires org.antlr.antlr4.runtime;
    requires org.objectweb.asm;
    requires tools.jackson.core;
    // Only the command line needs it: a program that embeds the language does without.
    requires static info.picocli;
    // Only guide needs them, at a terminal.
    requires static org.jline.reader;
    requires static org.jline.terminal;
    // Only tests need them: whoever tests procedures brings them along. The engine is no service of this module, but
    // found
    // on the class path: a module that provides a service of one that is not there keeps a program from starting.
    requires static org.junit.platform.engine;
    requires static org.assertj.core;
    requires static transitive org.jspecify;

    exports io.github.leafproof.dsl;
    exports io.github.leafproof.dsl.archive;
    exports io.github.leafproof.dsl.bytecode;
    exports io.github.leafproof.dsl.source;
    exports io.github.leafproof.dsl.diagnostic;
    exports io.github.leafproof.dsl.syntax;
    exports io.github.leafproof.dsl.formula;
    exports io.github.leafproof.dsl.graph;
    exports io.github.leafproof.dsl.draw;
    exports io.github.leafproof.dsl.guide;
    exports io.github.leafproof.dsl.history;
    exports io.github.leafproof.dsl.assertions;
    exports io.github.leafproof.dsl.build;
    exports io.github.leafproof.dsl.coverage;
    exports io.github.leafproof.dsl.layout;
    exports io.github.leafproof.dsl.meaning;
    exports io.github.leafproof.dsl.page;
    exports io.github.leafproof.dsl.parts;
    exports io.github.leafproof.dsl.rehearsal;
    exports io.github.leafproof.dsl.mutants;
    exports io.github.leafproof.dsl.edges;
    exports io.github.leafproof.dsl.reckon;
    exports io.github.leafproof.dsl.report;
    exports io.github.leafproof.dsl.seal;
    exports io.github.leafproof.dsl.workcard;
    exports io.github.leafproof.dsl.session;

    // picocli sets the fields of the commands.
    opens io.github.leafproof.dsl.cli to
            info.picocli;
}
