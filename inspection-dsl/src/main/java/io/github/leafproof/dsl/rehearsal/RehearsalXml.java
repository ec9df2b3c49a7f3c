package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.inspection.record.Problem;
import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * What came of rehearsals in the form that CI servers read test results in: a suite for each procedure, a case for each
 * rehearsal, a failure for a surprise, an error for what could not be played or compiled. A case takes no time here, for the
 * same run gives the same bytes every time.
 */
public final class RehearsalXml {

    private static final String NO_TIME = "0";

    /** Stands for a character that XML has no way to write. */
    private static final int REPLACEMENT = 0xFFFD;

    private final XMLStreamWriter xml;

    private RehearsalXml(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /** The text of the file, which is to be written as UTF-8; it ends in a line end. */
    public static String write(List<PlayedFile> files) {
        StringWriter text = new StringWriter();
        try {
            // The JDK's own, whichever other one lies on the class path.
            XMLStreamWriter writer = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            writer.writeStartDocument("UTF-8", "1.0");
            new RehearsalXml(writer).suites(files);
            writer.writeEndDocument();
            writer.close();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("a text in memory takes whatever is written", impossible);
        }
        return text.append('\n').toString();
    }

    private void suites(List<PlayedFile> files) throws XMLStreamException {
        RunTotals totals = RunTotals.of(files);
        open(0, "testsuites", "name", "rehearsals");
        counts(totals);
        for (PlayedFile file : files) {
            suite(file);
        }
        close(0);
    }

    private void suite(PlayedFile file) throws XMLStreamException {
        open(1, "testsuite", "name", file.name());
        counts(RunTotals.of(List.of(file)));
        attribute("skipped", "0");
        attribute("time", NO_TIME);
        if (file.compiled().procedure().isEmpty()) {
            mistakes(file);
        }
        for (Played played : file.played()) {
            one(file, played);
        }
        close(1);
    }

    /** A file that does not compile is one case, and that is an error. */
    private void counts(RunTotals totals) throws XMLStreamException {
        attribute("tests", Long.toString(totals.played() + totals.notCompiled()));
        attribute("failures", Long.toString(totals.surprises()));
        attribute("errors", Long.toString(totals.notPlayed() + totals.notCompiled()));
    }

    private void mistakes(PlayedFile file) throws XMLStreamException {
        List<Diagnostic> errors = file.compiled().diagnostics().stream()
                .filter(Diagnostic::isError)
                .toList();
        testcase(file, "is a procedure without mistakes");
        bad(
                "error",
                "LP",
                errors.size() == 1 ? "1 mistake" : errors.size() + " mistakes",
                DiagnosticPrinter.print(errors, false));
        close(2);
    }

    private void one(PlayedFile file, Played played) throws XMLStreamException {
        testcase(file, played.title());
        Rehearsed rehearsed = played.isAsExpected() ? null : played.rehearsed();
        if (rehearsed == null) {
            xml.writeEndElement();
            return;
        }
        if (rehearsed.problems().isEmpty()) {
            bad("failure", "surprise", rehearsed.surprises().get(0).words(), RehearsalText.why(played));
        } else {
            Problem first = rehearsed.problems().get(0);
            bad("error", "not_played", first.file() + ": " + first.message(), RehearsalText.why(played));
        }
        close(2);
    }

    private void testcase(PlayedFile file, String name) throws XMLStreamException {
        open(2, "testcase", "name", name);
        attribute(
                "classname",
                file.compiled()
                        .procedure()
                        .map(procedure -> procedure.graph().identity().name())
                        .orElse(file.name()));
        attribute("time", NO_TIME);
    }

    private void bad(String element, String type, String message, String body) throws XMLStreamException {
        open(3, element, "message", message);
        attribute("type", type);
        xml.writeCharacters(written(body));
        xml.writeEndElement();
    }

    private void open(int depth, String element, String key, String value) throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(depth));
        xml.writeStartElement(element);
        attribute(key, value);
    }

    private void attribute(String key, String value) throws XMLStreamException {
        xml.writeAttribute(key, written(value));
    }

    private void close(int depth) throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(depth));
        xml.writeEndElement();
    }

    /** XML 1.0, clause 2.2 (Char): most control characters and halves of pairs cannot be written at all. */
    private static String written(String text) {
        return text.codePoints()
                .map(each -> isWritable(each) ? each : REPLACEMENT)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isWritable(int each) {
        return each == '\t'
                || each == '\n'
                || (each >= ' ' && each <= 0xD7FF)
                || (each >= 0xE000 && each <= 0xFFFD)
                || each >= 0x10000;
    }
}
