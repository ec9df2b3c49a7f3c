package io.github.leafproof.dsl.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.source.SourceText;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What CI servers read, read back with the JDK's own parser. */
class RehearsalXmlTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");

    private static Document read(String xml) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }

    private static PlayedFile file(String name, String text) {
        Compiled compiled = Procedure.compile(SourceText.of("trial.inspection", text));
        return new PlayedFile(
                name,
                compiled,
                compiled.procedure()
                        .map(procedure -> Rehearsing.of(procedure, BENCH).play())
                        .orElse(List.of()));
    }

    private static String cases(String title, String expected) {
        return """
                procedure trial "A trial" revision 1
                observe flips : count ask "Flips"
                check free "Free" { require flips at most 4 }
                rehearse "%s" {
                  engine "cards/quillan-15.json"
                  gauges "trays/bench-one.json"
                  enter flips 3
                  expect free %s
                }
                """.formatted(title, expected);
    }

    @Test
    void a_suite_counts_its_cases_failures_and_errors() throws Exception {
        Document read = read(RehearsalXml.write(List.of(
                file("good", cases("a <good> & \\\"sound\\\" one", "passes")),
                file("surprised", cases("a surprise ]]>", "open")),
                file("lost", cases("lost", "passes").replace("cards/", "nowhere/")),
                file("broken", "procedure broken"))));

        Element all = read.getDocumentElement();
        assertThat(counts(all)).containsExactly("4", "1", "2");
        assertThat(counts(suite(read, 0))).containsExactly("1", "0", "0");
        assertThat(counts(suite(read, 1))).containsExactly("1", "1", "0");
        assertThat(counts(suite(read, 2))).containsExactly("1", "0", "1");
        assertThat(counts(suite(read, 3))).containsExactly("1", "0", "1");
        assertThat(testcase(read, 0)).isEqualTo("trial: a <good> & \"sound\" one");
        assertThat(testcase(read, 1)).isEqualTo("trial: a surprise ]]>");
        assertThat(read.getElementsByTagName("failure").item(0).getTextContent())
                .startsWith("trial.inspection:8:10: expected free open, got passes\n");
        assertThat(((Element) read.getElementsByTagName("error").item(0)).getAttribute("message"))
                .contains("nowhere");
    }

    /**
     * surefire-test-report.xsd of Apache Maven Surefire asks for all of these but the class name and the message, and
     * junit-10.xsd of Jenkins' xUnit plugin for some; both know them all. The golden file was held against both by hand.
     */
    @Test
    void every_element_has_what_the_published_schemas_ask_for() throws Exception {
        Document read = read(RehearsalXml.write(List.of(
                file("surprised", cases("a surprise", "open")),
                file("lost", cases("lost", "passes").replace("cards/", "nowhere/")))));

        assertThat(attributes(read, "testsuite")).containsOnly("errors failures name skipped tests time");
        assertThat(attributes(read, "testcase")).containsOnly("classname name time");
        assertThat(attributes(read, "failure")).containsExactly("message type");
        assertThat(attributes(read, "error")).containsExactly("message type");
    }

    private static List<String> attributes(Document read, String element) {
        NodeList found = read.getElementsByTagName(element);
        return IntStream.range(0, found.getLength())
                .mapToObj(number -> {
                    NamedNodeMap attributes = found.item(number).getAttributes();
                    return IntStream.range(0, attributes.getLength())
                            .mapToObj(each -> attributes.item(each).getNodeName())
                            .sorted()
                            .collect(Collectors.joining(" "));
                })
                .toList();
    }

    private static Element suite(Document read, int number) {
        return (Element) read.getElementsByTagName("testsuite").item(number);
    }

    private static String testcase(Document read, int number) {
        Element found = (Element) read.getElementsByTagName("testcase").item(number);
        return found.getAttribute("classname") + ": " + found.getAttribute("name");
    }

    private static List<String> counts(Element element) {
        return List.of(element.getAttribute("tests"), element.getAttribute("failures"), element.getAttribute("errors"));
    }

    /** A file may be called what it likes, also with characters that XML cannot write (XML 1.0, clause 2.2). */
    @Property
    void any_name_gives_xml_that_can_be_read(@ForAll String name) throws Exception {
        Document read = read(RehearsalXml.write(List.of(file(name, "procedure broken"))));

        String written = suite(read, 0).getAttribute("name");
        assertThat(written.codePointCount(0, written.length())).isEqualTo(name.codePointCount(0, name.length()));
    }
}
