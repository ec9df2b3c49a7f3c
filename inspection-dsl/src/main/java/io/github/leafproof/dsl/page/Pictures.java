package io.github.leafproof.dsl.page;

import static io.github.leafproof.dsl.html.Html.div;
import static io.github.leafproof.dsl.html.Html.element;
import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.link;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.section;
import static io.github.leafproof.dsl.html.Html.span;
import static io.github.leafproof.dsl.html.Html.words;

import io.github.leafproof.dsl.figure.Course;
import io.github.leafproof.dsl.figure.CourseFigure;
import io.github.leafproof.dsl.figure.Courses;
import io.github.leafproof.dsl.figure.GapFigure;
import io.github.leafproof.dsl.figure.OutcomeMark;
import io.github.leafproof.dsl.figure.ReadingFigure;
import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.OfReadings;
import io.github.leafproof.dsl.formula.Statistic;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Ink;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What was measured, as pictures: gaps between their leaves, readings with their curves, values over time. */
final class Pictures {

    private final Judgement judgement;
    private final Report report;
    private final Map<String, LimitsHeld.Window> limitsOf = new HashMap<>();
    private final List<Element> gaps = new ArrayList<>();
    private final List<Element> readings = new ArrayList<>();
    private final List<Element> courses = new ArrayList<>();
    private int figures = 0;

    private Pictures(Judgement judgement, Report report) {
        this.judgement = judgement;
        this.report = report;
    }

    static List<Element> of(Judgement judgement, Report report) {
        Pictures pictures = new Pictures(judgement, report);
        judgement.verdicts().forEach(pictures::verdict);
        Courses.of(judgement).forEach(pictures::course);
        return pictures.sections();
    }

    private void verdict(Verdict verdict) {
        if (verdict.conformity() == null) {
            return;
        }
        Node.Check check = verdict.check();
        List<Account.Held> left = held(check, judgement.frame(check));
        left.forEach(held -> limitsOf.putIfAbsent(whatIsRead(held.subject()), held.limits()));
        if (judgement.asFound(check).isEmpty()) {
            draw(check, left, "");
        } else {
            draw(check, held(check, judgement.frameAsFound(check)), ", as found");
            draw(check, left, ", as left");
        }
    }

    private static List<Account.Held> held(Node.Check check, Frame frame) {
        return Account.of(check.requirement(), frame).held();
    }

    /** What limits are drawn beside: the readings themselves, where it is their mean that has to keep them. */
    private static String whatIsRead(Formula subject) {
        return subject instanceof OfReadings of && of.statistic() == Statistic.MEAN
                ? of.readings().words()
                : subject.words();
    }

    private void draw(Node.Check of, List<Account.Held> all, String when) {
        Report.Check check = report.checks().get(of.number());
        for (Account.Held held : all) {
            String title = (all.size() == 1 ? check.title() : check.title() + ": " + held.words()) + when;
            if (GapFigure.shows(held)) {
                gaps.add(figure(held, check, title, GapFigure.of(held, judgement.units(), title, nextId())));
            } else if (ReadingFigure.shows(held)) {
                readings.add(figure(held, check, title, ReadingFigure.of(held, judgement.units(), title, nextId())));
            }
        }
    }

    private void course(Course course) {
        Element drawn = CourseFigure.of(course, limitsOf, judgement.units(), course.name(), nextId());
        Element caption = element("figcaption", span(course.name()).style("plain"));
        courses.add(element("figure", caption, p(course.ask()).style("quiet"), drawn));
    }

    private String nextId() {
        figures++;
        return "figure-" + figures;
    }

    private Element figure(Account.Held held, Report.Check check, String title, Element drawn) {
        Outcome outcome = held.judged().outcome();
        Element said =
                span(OutcomeMark.of(outcome), words(Ink.of(outcome).word())).style("said " + outcome.word());
        List<Part> parts = new ArrayList<>(List.of(
                element(
                        "figcaption",
                        link("#" + EvidenceTable.id(check), words(title)).style("plain"),
                        said),
                drawn));
        if (outcome != Outcome.CONTRADICTED) {
            parts.add(
                    p("Probability of conforming: " + probability(held.judged().conformity()))
                            .style("quiet"));
        }
        return element("figure", parts);
    }

    private static String probability(Conformity conformity) {
        return Reporting.probabilityWords(conformity.low(), conformity.high());
    }

    private List<Element> sections() {
        List<Element> parts = new ArrayList<>();
        group(
                parts,
                "Gaps, felt with leaves and pins",
                "Shaded are the limits, within a dashed line what is tolerated beyond them. A diamond is a leaf as it measures, its bar"
                        + " twice the standard uncertainty to either side; the arrow points to where the gap can be. At the"
                        + " foot, what all of them leave possible: filled inside the limits, hatched beyond them.",
                gaps);
        group(
                parts,
                "Readings and what was worked out from them",
                "The curve is where the true value probably lies. Its filled part lies inside the limits, its hatched"
                        + " part beyond them; the share of the filled is the probability of conforming.",
                readings);
        group(
                parts,
                "Over time",
                "Each dot is a reading, a bar how far it can be off or what the leaves leave possible.",
                courses);
        return parts.isEmpty() ? List.of() : List.of(section("pictures", heading(2, "What was measured"), parts));
    }

    private static void group(List<Element> parts, String title, String reading, List<Element> figures) {
        if (!figures.isEmpty()) {
            parts.add(heading(3, title));
            parts.add(p(reading).style("quiet"));
            parts.add(div(figures).style("figures"));
        }
    }
}
