package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import org.junit.jupiter.api.Test;

/** What in the files does not go together with the procedure, word for word. */
class SheetProblemsTest {

    private static final Workshop BENCH = Workshop.of("""
            gauge leaves : leaf set
            gauge pins : pin set
            gauge infrared : reading of temperature
            gauge clicks : counter
            observe lash : gap with leaves ask "Lash"
            observe opening : gap with pins ask "Opening"
            observe head : temperature with infrared ask "Head"
            observe turns : angle ask "Turns"
            observe flips : count with clicks ask "Flips"
            observe share : number ask "Share"
            observe cold : yes/no ask "Cold?"
            observe gear : one of oiled, dry ask "Gear"
            observe box : items ask "Box"
            observe remark : text ask "Remark"
            check a "a" minor { require lash at most 1 mm and opening at most 1 mm and head at most 30 degC }
            check b "b" minor { require flips at most 3 and cold and gear is dry and box has all of engine.box }
            check c "c" minor { require remark is "none" and turns at most 3 turns and share at most 1 }
            """);

    @Test
    void lp669_a_procedure_for_other_engines_is_refused_at_the_start() {
        Workshop large = Workshop.of("applies when engine.displacement at least 20 cm3\n"
                + "observe a : yes/no ask \"a\"\ncheck c \"c\" minor { require a }");

        assertThat(large.problems())
                .isEqualTo(
                        "card.json: error LP669: trial is not for this engine: it applies when engine.displacement at"
                                + " least 20 cm³\n   help: take the procedure that is for it");
    }

    @Test
    void lp670_so_is_one_of_which_nobody_can_tell() {
        Workshop unsure = Workshop.of("applies when engine.bore at least 20 mm\n"
                + "observe a : yes/no ask \"a\"\ncheck c \"c\" minor { require a }");

        assertThat(unsure.problems())
                .isEqualTo("card.json: error LP670: it cannot be told whether trial is for this engine: engine.bore is"
                        + " not stated on the engine card\n   help: state it, or take another procedure");
    }

    @Test
    void lp671_a_sheet_for_another_procedure_is_told_so_and_nothing_else() {
        assertThat(BENCH.heading("\"procedure\": \"first_look\", \"revision\": 2")
                        .observe("nothing", "true")
                        .problems())
                .isEqualTo(
                        "sheet.json:1:33 $.procedure: error LP671: the sheet is for the procedure first_look, not for"
                                + " trial\n   help: judge it with first_look, or begin a sheet for trial");
    }

    @Test
    void lp672_a_sheet_for_another_revision() {
        assertThat(BENCH.heading("\"procedure\": \"trial\", \"revision\": 1").problems())
                .isEqualTo("sheet.json:1:54 $.revision: error LP672: the sheet is for revision 1 of trial, and this is"
                        + " revision 2\n   help: judge it with the revision it was made for; after looking through what"
                        + " changed, set its revision to 2");
    }

    @Test
    void lp673_a_gauge_that_the_tray_lacks() {
        assertThat(BENCH.tray("\"name\": \"infrared\"", "\"name\": \"infrarot\"")
                        .problems())
                .isEqualTo(
                        "tray.json:1:34 $.gauges: error LP673: the tray has no gauge called infrared, which must be an"
                                + " instrument to read temperature\n   help: did you mean infrarot?");
        assertThat(BENCH.tray("\"name\": \"clicks\"", "\"name\": \"something\"").problems())
                .endsWith("called clicks, which must be a counter\n   help: add it to the tray");
    }

    @Test
    void lp674_a_gauge_of_another_kind() {
        assertThat(BENCH.tray(
                                "\"of\": \"temperature\", \"limits\": \"1.0 K\"",
                                "\"of\": \"length\", \"limits\": \"1 mm\"")
                        .problems())
                .isEqualTo(
                        "tray.json:1:34 $.gauges: error LP674: infrared must be an instrument to read temperature, and"
                                + " the tray's is an instrument to read length\n   help: name another gauge in the procedure,"
                                + " or correct the tray");
        Workshop swapped = Workshop.of("""
                gauge leaves : pin set
                gauge pins : counter
                gauge clicks : leaf set
                observe l : gap with leaves ask "l"
                observe p : count with pins ask "p"
                observe c : gap with clicks ask "c"
                check a "a" minor { require l at most 1 mm and c at most 1 mm and p at most 1 }
                """);
        assertThat(swapped.problems())
                .contains("leaves must be a pin set, and the tray's is a leaf set")
                .contains("pins must be a counter, and the tray's is a pin set")
                .contains("clicks must be a leaf set, and the tray's is a counter");
    }

    @Test
    void lp675_a_variant_that_the_card_does_not_know() {
        assertThat(BENCH.engine("{ \"variant\": \"early kam\" }").problems())
                .isEqualTo(
                        "sheet.json:1:80 $.engine.variant: error LP675: the card of Quillan Q15-4 has no variant early kam"
                                + "\n   help: did you mean early cam?");
        assertThat(BENCH.engine("{ \"variant\": \"racing\" }").problems())
                .contains("help: the card has early cam")
                .endsWith("unknown is an answer too");
    }

    @Test
    void lp676_an_observation_that_the_procedure_does_not_make() {
        assertThat(BENCH.observe("haed", "\"21 °C\"").problems())
                .isEqualTo("sheet.json:2:1 $.entries[0]: error LP676: the procedure observes nothing called haed"
                        + "\n   help: did you mean head?");
        assertThat(BENCH.observe("propeller", "true").problems())
                .endsWith("the procedure observes nothing called propeller");
    }

    @Test
    void lp677_what_is_entered_twice() {
        assertThat(BENCH.observe("cold", "true").observe("cold", "false").problems())
                .contains("error LP677: cold is entered twice\n   help: mark this entry as a correction"
                        + " (\"corrects\": true), or enter between them what was adjusted");
    }

    @Test
    void lp653_a_correction_of_nothing() {
        String correction = "{ \"observe\": \"cold\", \"value\": true, \"corrects\": true }";

        assertThat(BENCH.observe("cold", "true")
                        .enter("{ \"adjust\": \"cold\" }")
                        .enter(correction)
                        .problems())
                .endsWith("error LP653: there is no entry of cold before it to correct");
        // What cannot be read is there all the same.
        assertThat(BENCH.observe("cold", "\"maybe\"").enter(correction).problems())
                .contains("LP678")
                .doesNotContain("LP653");
    }

    @Test
    void lp678_something_else_than_is_asked_for() {
        assertThat(BENCH.observe("cold", "\"maybe\"").problems())
                .endsWith("LP678: cold asks for yes or no, and the entry gives \"maybe\"\n   help: enter it as"
                        + " \"value\": true");
        assertThat(BENCH.observe("lash", "\"0.05 mm\"").problems())
                .endsWith("LP678: lash asks for trials of leaves or pins, and the entry gives \"0.05 mm\"\n   help:"
                        + " enter it as \"trials\": [ { \"leaf\": \"0.05 mm\", \"result\": \"passes\" } ]");
        assertThat(BENCH.observe("head", "true").problems())
                .endsWith("LP678: head asks for a temperature, and the entry gives yes (true)\n   help: enter it as"
                        + " \"value\": \"…\", a number and its unit");
        assertThat(BENCH.observe("box", "3").problems())
                .endsWith("LP678: box asks for a list of things, and the entry gives the bare number 3\n   help: enter"
                        + " it as \"items\": [ \"engine\" ]");
        assertThat(BENCH.feel("flips", "passes 0.05 mm").problems())
                .endsWith("LP678: flips asks for a whole number, and the entry gives trials of leaves or pins\n   help:"
                        + " enter it as \"value\": 3");
        assertThat(BENCH.enter("{ \"observe\": \"gear\", \"items\": [] }").problems())
                .endsWith("LP678: gear asks for one of oiled, dry, and the entry gives a list of things\n   help: enter"
                        + " it as \"value\": \"oiled\"");
        assertThat(BENCH.observe("remark", "false").problems())
                .endsWith("LP678: remark asks for words, and the entry gives no (false)\n   help: enter it as"
                        + " \"value\": \"…\"");
        assertThat(BENCH.enter("{ \"observe\": \"share\", \"series\": [\"1 %\"] }")
                        .problems())
                .contains("LP678: share asks for a number, and the entry gives a series of readings");
    }

    @Test
    void lp679_an_option_that_is_not_offered() {
        assertThat(BENCH.observe("gear", "\"dri\"").problems())
                .endsWith("LP679: gear cannot be dri\n   help: did you mean dry?");
        assertThat(BENCH.observe("gear", "\"greasy\"").problems()).endsWith("help: it is one of oiled, dry");
    }

    @Test
    void lp680_a_leaf_that_the_set_does_not_hold() {
        assertThat(BENCH.feel("lash", "passes 0.07 mm").problems())
                .contains("LP680: leaves cannot offer 0.07 mm\n   help: it holds 0.04 mm, 0.05 mm, 0.08 mm,")
                .endsWith("; leaves can be stacked, each of them once");
        assertThat(BENCH.feel("opening", "passes 0.70 mm + 0.80 mm").problems())
                .contains("pins cannot offer 0.70 mm + 0.80 mm")
                .endsWith("; pins are offered one at a time");
    }

    @Test
    void lp621_what_is_no_quantity() {
        assertThat(BENCH.observe("head", "\"warm\"").problems()).contains("error LP621: ");
    }

    @Test
    void lp622_a_quantity_of_another_dimension() {
        assertThat(BENCH.observe("head", "\"5 mm\"").problems())
                .endsWith("error LP622: head is a temperature, and 5 mm is a length\n   help: enter a temperature");
        assertThat(BENCH.observe("turns", "2").problems())
                .endsWith("error LP622: turns is an angle, and 2 is a plain number\n   help: write the unit behind the"
                        + " number");
        assertThat(BENCH.observe("share", "\"2 mm\"").problems())
                .endsWith("error LP622: share is a plain number, and 2 mm is a length\n   help: enter a plain number");
    }

    @Test
    void lp624_what_is_no_count() {
        assertThat(BENCH.observe("flips", "2.5").problems())
                .endsWith("error LP624: 2.5 is no count; flips is a whole number from 0");
        assertThat(BENCH.observe("flips", "1000000001").problems()).contains("LP624: 1000000001 is no count");
        assertThat(BENCH.observe("flips", "1000000000").problems()).isEmpty();
        assertThat(BENCH.observe("flips", "3.0").problems()).isEmpty();
        assertThat(BENCH.observe("flips", "0").problems()).isEmpty();
        assertThat(BENCH.observe("flips", "-1").problems()).contains("LP624: -1 is no count");
        assertThat(BENCH.observe("flips", "2e9").problems()).contains("LP624: ");
        assertThat(BENCH.observe("flips", "0").problems()).isEmpty();
        assertThat(BENCH.observe("flips", "1e9").problems()).isEmpty();
        assertThat(BENCH.observe("flips", "1000000001").problems()).contains("LP624: ");
    }

    @Test
    void all_that_is_wrong_is_said_at_once() {
        assertThat(BENCH.observe("haed", "1")
                        .observe("gear", "\"wet\"")
                        .observe("flips", "0.5")
                        .tray("\"name\": \"clicks\"", "\"name\": \"clocks\"")
                        .engine("{ \"variant\": \"racing\" }")
                        .problems())
                .contains("LP673", "LP675", "LP676", "LP679", "LP624");
    }
}
