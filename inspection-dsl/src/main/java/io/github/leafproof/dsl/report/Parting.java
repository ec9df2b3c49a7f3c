package io.github.leafproof.dsl.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The way to a verdict that was not the one expected, link by link from what was stated and entered, and the first link at
 * which it leaves the way to the verdict that was expected.
 *
 * @param links the way; exactly one of them is where the two part
 * @param decision how sure it is and how sure one has to be; null where certainty made no difference
 */
public record Parting(List<Link> links, @Nullable String decision) {

    public Parting {
        links = List.copyOf(links);
    }

    /** What a link of the way is. */
    public enum Kind {
        /** In which case a check applies at all. */
        CONDITION,
        /** Another check that has to let through first. */
        GATE,
        /** What the card or the sheet states. */
        FACT,
        /** What was entered, or was not. */
        ENTRY,
        /** What was computed. */
        VALUE,
        /** Which of several cases counted. */
        ARM,
        /** What a check requires, or the part of it that tells. */
        REQUIREMENT,
        /** A rule of the release. */
        RULE;

        /** As JSON spells it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * One link.
     *
     * @param check the check that it is a link to the verdict of; {@code release} for the release
     * @param what what was looked at
     * @param came what came of it; null where {@code what} says it all
     * @param details why, a line each
     * @param parts whether what came of it is the first thing that is not as the expected verdict needs it
     */
    public record Link(
            Kind kind, String check, String what, @Nullable String came, List<String> details, boolean parts) {
        public Link {
            details = List.copyOf(details);
        }

        static Link of(Kind kind, String check, String what, @Nullable String came) {
            return new Link(kind, check, what, came, List.of(), false);
        }

        Link with(List<String> why) {
            return new Link(kind, check, what, came, why, parts);
        }

        Link parting() {
            return new Link(kind, check, what, came, details, true);
        }

        /** In one line, without the details. */
        public String words() {
            return came == null ? what : what + ": " + came;
        }
    }

    /** The link where the two ways part. */
    public Link first() {
        return links.stream().filter(Link::parts).findFirst().orElseThrow();
    }

    /**
     * As lines for a person.
     *
     * @param of the check whose verdict surprised; links to another one's name it
     */
    public List<String> lines(String of) {
        List<String> lines = new ArrayList<>();
        for (Link link : links) {
            String where = link.check().equals(of) ? "" : "in " + link.check() + ": ";
            lines.add((link.parts() ? "here they part: " : "") + where + link.words());
            link.details().forEach(detail -> lines.add("   " + detail));
        }
        if (decision != null) {
            lines.add(decision);
        }
        return lines;
    }
}
