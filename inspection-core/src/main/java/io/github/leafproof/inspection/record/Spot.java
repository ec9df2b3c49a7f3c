package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Letters;
import io.github.leafproof.inspection.quantity.Spelling;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One value of a file, ready to be asked what it is. Each question answers with the value, or with nothing after it has
 * complained; so a reader asks on, and every mistake is found in one go.
 */
final class Spot {
    private static final int LONGEST_TEXT = 10_000;
    private static final int LONGEST_NUMBER = 100;
    private static final BigDecimal LARGEST = new BigDecimal("1e100");

    private final Json json;
    private final Trail trail;
    private final Findings findings;

    Spot(Json json, Trail trail, Findings findings) {
        this.json = json;
        this.trail = trail;
        this.findings = findings;
    }

    /** The value as it was written. */
    Json json() {
        return json;
    }

    /** Where it stands, for whoever wants to complain of it later. */
    String place() {
        return findings.place(json.offset(), trail);
    }

    /** Where each value stands that keys alone lead to, by its path; those in lists are too many, and left out. */
    Map<String, String> placesByKeys() {
        Map<String, String> places = new HashMap<>();
        note(json, trail, places);
        return places;
    }

    private void note(Json value, Trail way, Map<String, String> places) {
        if (value instanceof Json.Members members) {
            members.byKey().forEach((key, member) -> {
                Trail below = way.key(key);
                places.put(below.toString(), findings.place(member.value().offset(), below));
                note(member.value(), below, places);
            });
        }
    }

    /** How many errors the file has so far. */
    int errors() {
        return findings.errors();
    }

    void complain(FileMistake mistake, String message, @Nullable String help) {
        findings.add(mistake, json.offset(), trail, message, help);
    }

    /** Complains and answers with nothing. */
    <T> Optional<T> no(FileMistake mistake, String message, String help) {
        complain(mistake, message, help);
        return Optional.empty();
    }

    <T> Optional<T> wrongKind(String wanted, String help) {
        return no(FileMistake.LP614, "this should be " + wanted + ", not " + json.words(), help);
    }

    /** Its members, when it is an object; keys that are not among the known ones are complained of. */
    Optional<Fields> fields(String what, List<String> known) {
        Optional<Fields> fields = anyFields(what);
        fields.ifPresent(found -> found.allow(known));
        return fields;
    }

    /** Its members, when it is an object, whatever their keys. */
    Optional<Fields> anyFields(String what) {
        return json instanceof Json.Members members
                ? Optional.of(new Fields(this, members, trail, findings))
                : wrongKind(what, "write it in braces: { \"key\": … }");
    }

    /** Its items, when it is a list. */
    Optional<List<Spot>> items(String what) {
        return items(what, 0);
    }

    /** The same where they are a part of a longer list: which item of that the first one is. */
    Optional<List<Spot>> items(String what, int first) {
        if (!(json instanceof Json.Items items)) {
            return wrongKind(what, "write it in brackets: [ … ]");
        }
        List<Spot> spots = new ArrayList<>();
        for (Json value : items.values()) {
            spots.add(new Spot(value, trail.item(first + spots.size()), findings));
        }
        return Optional.of(spots);
    }

    /** Its items, when it is a list with something in it. */
    Optional<List<Spot>> someItems(String what) {
        return items(what)
                .filter(found -> !found.isEmpty()
                        || no(
                                        FileMistake.LP617,
                                        what + " is empty",
                                        "an empty list says nothing; leave the key out, or fill the list")
                                .isPresent());
    }

    /** Its text, when it is one a person can read. */
    Optional<String> text(String what) {
        if (!(json instanceof Json.Text text)) {
            return wrongKind(what, "write it in double quotes");
        }
        if (text.text().isBlank()) {
            return no(
                    FileMistake.LP615,
                    "this should be " + what + ", and it is blank",
                    "a blank says nothing; say what is meant, or leave the key out where that is allowed");
        }
        if (text.text().length() > LONGEST_TEXT) {
            return no(
                    FileMistake.LP615,
                    "the text is " + text.text().length() + " characters long",
                    "the longest a text can be is " + LONGEST_TEXT);
        }
        return showable(text.text());
    }

    /** Its text, blank or not and however long: what the program itself wrote. */
    Optional<String> anyText() {
        if (!(json instanceof Json.Text text)) {
            return wrongKind("a text", "write it in double quotes");
        }
        return showable(text.text());
    }

    private Optional<String> showable(String text) {
        boolean unshowable = text.codePoints().anyMatch(c -> c != '\n' && c != '\t' && !Letters.isShowable(c));
        return unshowable
                ? no(
                        FileMistake.LP616,
                        "the text holds characters that cannot be shown",
                        "remove control characters and halves of characters; a new line is \\n")
                : Optional.of(text);
    }

    /** Its word, when it is one of those that are understood. */
    Optional<String> word(String what, List<String> understood) {
        Optional<String> word = text(what);
        if (word.isEmpty() || understood.contains(word.get())) {
            return word;
        }
        return no(
                FileMistake.LP619,
                Shown.quoted(word.get()) + " is not " + what,
                Spelling.nearest(word.get(), understood)
                                .map(near -> "did you mean " + near + "? ")
                                .orElse("") + "understood are " + String.join(", ", understood));
    }

    /** Its answer, when it is true or false. */
    Optional<Boolean> yesNo() {
        return json instanceof Json.Truth truth
                ? Optional.of(truth.yes())
                : wrongKind("yes or no", "write true or false, without quotes");
    }

    /** Its number, when it is one that can be counted with. */
    Optional<BigDecimal> number(String what) {
        return number(what, "write a number without quotes and with a dot, such as 1.5");
    }

    private Optional<BigDecimal> number(String what, String help) {
        if (!(json instanceof Json.Digits number)) {
            return wrongKind(what, help);
        }
        Optional<BigDecimal> found = decimal(number.digits());
        return found.isPresent()
                ? found
                : no(
                        FileMistake.LP624,
                        Shown.quoted(number.digits()) + " is beyond what can be measured",
                        "numbers go from 1e-100 up to 1e100, in " + LONGEST_NUMBER + " digits at most");
    }

    private static Optional<BigDecimal> decimal(String digits) {
        if (digits.length() > LONGEST_NUMBER) {
            return Optional.empty();
        }
        try {
            BigDecimal number = new BigDecimal(digits);
            boolean sane = number.signum() == 0
                    // Nothing can be written with an exponent as well: 0e1000000.
                    ? Math.abs(number.scale()) <= LONGEST_NUMBER
                    : number.abs().compareTo(LARGEST) < 0
                            && number.abs().compareTo(BigDecimal.ONE.divide(LARGEST)) >= 0;
            return sane ? Optional.of(number) : Optional.empty();
        } catch (NumberFormatException e) {
            // An exponent of ten digits is more than BigDecimal takes.
            return Optional.empty();
        }
    }

    /** Its number, when it is a whole one within these bounds. */
    Optional<Integer> whole(String what, int lowest, int highest) {
        String help = "write a whole number from " + lowest + " to " + highest + ", without quotes";
        return number(what, help).flatMap(number -> {
            boolean fits = number.stripTrailingZeros().scale() <= 0
                    && number.compareTo(BigDecimal.valueOf(lowest)) >= 0
                    && number.compareTo(BigDecimal.valueOf(highest)) <= 0;
            return fits
                    ? Optional.of(number.intValueExact())
                    : no(FileMistake.LP624, what + " cannot be " + Shown.briefly(number.toString(), 40), help);
        });
    }

    /** Its day, when it is one. */
    Optional<LocalDate> date() {
        return text("a date").flatMap(text -> {
            try {
                return Optional.of(LocalDate.parse(text));
            } catch (DateTimeException e) {
                return no(
                        FileMistake.LP625,
                        Shown.quoted(text) + " is not a date",
                        "write year-month-day, such as 2026-03-04");
            }
        });
    }

    /** Its moment, when it is one. */
    Optional<OffsetDateTime> moment() {
        return text("a date and time").flatMap(text -> {
            try {
                return Optional.of(OffsetDateTime.parse(text));
            } catch (DateTimeException e) {
                return no(
                        FileMistake.LP625,
                        Shown.quoted(text) + " is not a date and time",
                        "write date, T, time and Z or the offset, such as 2026-03-04T10:12:00Z");
            }
        });
    }
}
