package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.session.Heading;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Spelling;
import io.github.leafproof.inspection.record.SheetEngine;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is asked before the first step: who works, on which engine, on which day. What is known already is not asked. */
public final class Opening {

    /** What stands above the entries of a sheet, each with the question for it. */
    public enum Detail {
        /** Who makes the entries. */
        BY("by", "Who does the work? Initials will do."),
        /** The number on the engine. */
        SERIAL("serial", "The engine's serial number?"),
        /** As it came in. */
        CONDITION("condition", "How did it come in: new in box, old stock, used?"),
        /** Whose it is. */
        OWNER("owner", "Whose is it, or which job?"),
        /** Which of the card's variants it is. */
        VARIANT("variant", "Which variant is it?"),
        /** The day the work is done. */
        DATE("date", "Which day is it?");

        private final String word;
        private final String question;

        Detail(String word, String question) {
            this.word = word;
            this.question = question;
        }

        /** As options and prompts call it. */
        public String word() {
            return word;
        }
    }

    private final String sheet;
    private final LocalDate today;
    private final EngineCard card;
    private final Map<Detail, String> known = new EnumMap<>(Detail.class);
    private final List<Detail> answered = new ArrayList<>();
    private @Nullable Quantity runningTime;
    private @Nullable String cardFile;
    private @Nullable String trayFile;

    private Opening(String sheet, LocalDate today, EngineCard card) {
        this.sheet = sheet;
        this.today = today;
        this.card = card;
    }

    /** Nothing is known yet but the sheet's number, the day on the calendar, and the card of the engine. */
    public static Opening of(String sheet, LocalDate today, EngineCard card) {
        Opening opening = new Opening(sheet, today, card);
        if (card.variants().isEmpty()) {
            opening.known.put(Detail.VARIANT, "");
        }
        return opening;
    }

    /**
     * Takes what is known already.
     *
     * @return what is wrong with it, and what would do; empty where nothing is
     */
    public Optional<String> know(Detail detail, @Nullable String value) {
        return value == null ? Optional.empty() : take(detail, value);
    }

    /** How long the engine had run in all before the work began. */
    public void knowRunningTime(@Nullable Quantity time) {
        runningTime = time;
    }

    /** The files of card and tray, as they are seen from the sheet's folder. */
    public void knowFiles(@Nullable String engineCard, @Nullable String tray) {
        cardFile = engineCard;
        trayFile = tray;
    }

    /** What is asked now; empty when all is known. */
    Optional<Detail> asks() {
        for (Detail detail : Detail.values()) {
            if (!known.containsKey(detail)) {
                return Optional.of(detail);
            }
        }
        return Optional.empty();
    }

    /** The question, and what an empty line answers. */
    String question(Detail detail) {
        return switch (detail) {
            case VARIANT ->
                "Which variant is it: " + String.join(", ", variants()) + "? An empty line leaves it unknown.";
            case DATE -> "Which day is it? An empty line is " + today + ".";
            default -> detail.question + " An empty line leaves it open.";
        };
    }

    /** Answers what is asked; says what is wrong with the answer, and what would do, where it is none. */
    Optional<String> answer(String line) {
        Detail detail = asks().orElseThrow();
        Optional<String> wrong = take(detail, line.strip());
        if (wrong.isEmpty()) {
            answered.add(detail);
        }
        return wrong;
    }

    /** Asks the last question again; does nothing where there was none. */
    void back() {
        if (!answered.isEmpty()) {
            known.remove(answered.remove(answered.size() - 1));
        }
    }

    private Optional<String> take(Detail detail, String value) {
        String meant = value;
        if (detail == Detail.DATE && !value.isEmpty() && !value.equals("today")) {
            try {
                LocalDate.parse(value);
            } catch (DateTimeParseException noDay) {
                return Optional.of(value + " is no day: write it as " + today);
            }
        }
        if (detail == Detail.VARIANT && !value.isEmpty()) {
            Optional<String> variant = variant(value);
            if (variant.isEmpty()) {
                return Optional.of("The card has no variant " + value
                        + Spelling.nearest(value, variants())
                                .map(near -> ": did you mean " + near + "?")
                                .orElse(": it has " + String.join(", ", variants())));
            }
            meant = variant.get();
        }
        known.put(detail, meant);
        return Optional.empty();
    }

    private Optional<String> variant(String value) {
        List<String> all = variants();
        if (value.matches("[1-9]\\d?") && Integer.parseInt(value) <= all.size()) {
            return Optional.of(all.get(Integer.parseInt(value) - 1));
        }
        String sought = value.toLowerCase(Locale.ROOT);
        List<String> begun = all.stream()
                .filter(each -> each.toLowerCase(Locale.ROOT).startsWith(sought))
                .toList();
        if (begun.contains(value)) {
            return Optional.of(value);
        }
        return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
    }

    /** Every answer to which variant it is. */
    List<String> variants() {
        List<String> all = new ArrayList<>(card.variants().keySet());
        if (!all.contains(EngineCard.UNKNOWN_VARIANT)) {
            all.add(EngineCard.UNKNOWN_VARIANT);
        }
        return all;
    }

    /** Who makes the entries, where that is known. */
    @Nullable
    String by() {
        return stated(Detail.BY);
    }

    Heading heading() {
        String date = known.getOrDefault(Detail.DATE, "");
        String variant = stated(Detail.VARIANT);
        return Heading.of(sheet, date.isEmpty() || date.equals("today") ? today : LocalDate.parse(date))
                .withEngine(new SheetEngine(
                        stated(Detail.SERIAL),
                        stated(Detail.CONDITION),
                        stated(Detail.OWNER),
                        variant == null && !card.variants().isEmpty() ? EngineCard.UNKNOWN_VARIANT : variant))
                .withRunningTime(runningTime)
                .withFiles(cardFile, trayFile);
    }

    private @Nullable String stated(Detail detail) {
        String value = known.getOrDefault(detail, "");
        return value.isEmpty() ? null : value;
    }
}
