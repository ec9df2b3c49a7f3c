package io.github.leafproof.dsl.coverage;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.json.JsonPage;
import io.github.leafproof.dsl.meaning.Saying;
import io.github.leafproof.dsl.meaning.Way;
import io.github.leafproof.dsl.source.SourceText.Position;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Coverage for programs, as docs/schemas/coverage.schema.json has it. Every key is there every time; null says that there is
 * nothing to say.
 */
public final class CoverageJson {

    /** What the first line of every coverage says about its form. */
    public static final String FORMAT = "leafproof-coverage/1";

    private final JsonPage json;

    private CoverageJson(JsonPage json) {
        this.json = json;
    }

    /** What the rehearsals of these procedures show; the same coverage gives the same text on every machine. */
    public static String write(List<Coverage> procedures) {
        return JsonPage.write(json -> {
            json.text("format", FORMAT);
            json.list("procedures", procedures, new CoverageJson(json)::coverage);
        });
    }

    private void coverage(Coverage coverage) {
        CheckGraph.Identity identity = coverage.procedure().graph().identity();
        json.text("file", coverage.procedure().source().name());
        json.text("name", identity.name());
        json.text("title", identity.title());
        json.number("revision", identity.revision());
        json.text("sha256", identity.sha256());
        json.list("parts", identity.parts(), part -> {
            json.text("name", part.name());
            json.text("sha256", part.sha256());
        });
        share(coverage.share());
        json.list("kinds", Arrays.asList(Saying.Kind.values()), kind -> {
            json.text("kind", kind.word());
            share(coverage.share(kind));
        });
        List<Declaration.Rehearse> rehearsals = coverage.procedure().rehearsals();
        json.list("rehearsals", IntStream.range(0, rehearsals.size()).boxed().toList(), number -> {
            Span title = rehearsals.get(number).title().span();
            json.number("number", number + 1);
            json.text("title", rehearsals.get(number).title().plain());
            json.text("file", title.source().name());
            position("", title, title.start());
            json.yesNo("played", coverage.isPlayed(number));
        });
        Reaching reaching = new Reaching(coverage.procedure());
        json.list("places", coverage.sayings(), saying -> place(saying, coverage, reaching));
    }

    private void share(Share share) {
        json.number("shown", share.shown());
        json.number("asked", share.asked());
        json.number("percent", share.percent().doubleValue());
    }

    private void place(Saying saying, Coverage coverage, Reaching reaching) {
        json.text("kind", saying.kind().word());
        json.text("name", saying.name());
        json.text("file", saying.span().source().name());
        position("", saying.span(), saying.span().start());
        position("end_", saying.span(), saying.span().end());
        json.texts("rests_on", saying.restsOn());
        json.list("ways", List.copyOf(saying.ways()), way -> {
            json.text("way", way.word());
            json.numbers(
                    "shown_by",
                    coverage.showing(saying, way).stream()
                            .map(number -> number + 1)
                            .toList());
            json.text("to_show", coverage.isShown(saying, way) ? null : reaching.words(saying, way));
        });
        json.texts("never", saying.never().stream().map(Way::word).toList());
    }

    private void position(String prefix, Span span, int offset) {
        Position position = span.source().at(offset);
        json.number(prefix + "line", position.line());
        json.number(prefix + "column", position.column());
    }
}
