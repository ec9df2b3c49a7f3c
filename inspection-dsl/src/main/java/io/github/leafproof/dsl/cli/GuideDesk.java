package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.guide.Surroundings;
import io.github.leafproof.dsl.page.ReportPage;
import io.github.leafproof.dsl.session.Basis;
import io.github.leafproof.dsl.session.Finished;
import io.github.leafproof.dsl.session.Heading;
import io.github.leafproof.dsl.session.Inspector;
import io.github.leafproof.dsl.session.Session;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Keeps the session of a walk beside its sheet, and writes the report when it is handed over. */
final class GuideDesk implements Surroundings, AutoCloseable {

    private final Basis basis;
    private final Path procedure;
    private final Path sheet;
    private final Path json;
    private final Path page;
    private final UnitSystem units;
    private final Console console;
    private @Nullable Session session;
    private @Nullable Finished finished;

    GuideDesk(Basis basis, Path procedure, Path sheet, Path json, Path page, UnitSystem units, Console console) {
        this.basis = basis;
        this.procedure = procedure;
        this.sheet = sheet;
        this.json = json;
        this.page = page;
        this.units = units;
        this.console = console;
    }

    @Override
    public String title() {
        return basis.procedure().graph().identity().title() + ": "
                + basis.card().content().model();
    }

    @Override
    public Read<Session> begin(Heading heading, @Nullable String by) {
        return kept(Session.begin(basis, heading, inspector(by), sheet));
    }

    /** Goes on with the session that was begun beside this sheet. */
    Read<Session> resume(@Nullable String by) {
        return kept(Session.resume(basis, inspector(by), sheet));
    }

    private Inspector inspector(@Nullable String by) {
        return Inspector.named(by).inUnits(units);
    }

    private Read<Session> kept(Read<Session> begun) {
        session = begun.value().orElse(null);
        return begun;
    }

    @Override
    public String handOver(Finished handedOver) {
        finished = handedOver;
        StringBuilder files = new StringBuilder("The sheet: " + sheet + "\n");
        Report report = handedOver.report();
        if (console.wrote(page, ReportPage.of(handedOver.judgement(), report))) {
            files.append("The report, for whoever owns it: ").append(page).append('\n');
        }
        if (console.wrote(json, ReportFile.toJson(report))) {
            files.append("The same for programs: ").append(json).append('\n');
        }
        return files.append("To see all of it: leafproof inspect " + procedure + " --sheet " + sheet + "\n")
                .toString();
    }

    @Override
    public String howToGoOn() {
        return "Everything that was entered is kept beside " + sheet + ". The same command goes on where it was left.";
    }

    /** What was handed over; empty where somebody left before. */
    Optional<Finished> finished() {
        return Optional.ofNullable(finished);
    }

    /** Whether the session was begun, now or before. */
    boolean isBegun() {
        return session != null;
    }

    @Override
    public void close() {
        if (session != null) {
            session.close();
        }
    }
}
