package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Spelling;
import io.github.leafproof.inspection.record.Given;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes an answer as people give it for what its observation wants. */
final class AnswerReading {

    private static final Pattern DAY = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
    private static final Pattern ALL_BUT = Pattern.compile("all (?:but|except)\\s+(.+)", Pattern.CASE_INSENSITIVE);

    private final Asked asked;

    private AnswerReading(Asked asked) {
        this.asked = asked;
    }

    /** What a line is taken for, which is not blank. */
    static Heard read(Asked asked, String line) {
        return new AnswerReading(asked).of(line.strip());
    }

    private Heard of(String line) {
        Type type = asked.observation().type();
        if (type instanceof Type.YesNo) {
            return yesNo(line);
        }
        if (type instanceof Type.Choice choice) {
            return choice(choice, line);
        }
        if (type instanceof Type.Gap) {
            return TrialLine.read(asked, line);
        }
        if (type instanceof Type.Count) {
            return count(line);
        }
        if (type instanceof Type.Series series) {
            return new AmountReading(asked.units(), dimension(series.of()), asked.shown()).series(line);
        }
        if (type instanceof Type.Items) {
            return items(line);
        }
        if (type instanceof Type.Date) {
            return day(line);
        }
        return type instanceof Type.Text
                ? new Heard.Answer(new Given.Words(unquoted(line)))
                : new AmountReading(asked.units(), dimension(type), asked.shown()).amount(line);
    }

    private static Dimension dimension(Type type) {
        return type.inArithmetic().orElseThrow();
    }

    private static Heard yesNo(String line) {
        return switch (line.toLowerCase(Locale.ROOT)) {
            case "yes", "y" -> new Heard.Answer(new Given.Flag(true));
            case "no", "n" -> new Heard.Answer(new Given.Flag(false));
            default ->
                new Heard.Unclear("this is answered with yes or no", "if it cannot be told, write: cannot, and why");
        };
    }

    private static Heard choice(Type.Choice choice, String line) {
        List<String> options = choice.options();
        Optional<String> chosen = named(options, line).or(() -> numbered(options, line));
        if (chosen.isPresent()) {
            return new Heard.Answer(new Given.Words(chosen.get()));
        }
        List<String> begun = options.stream()
                .filter(option -> plain(option).startsWith(plain(line)))
                .toList();
        if (begun.size() == 1) {
            return new Heard.Answer(new Given.Words(begun.get(0)));
        }
        return new Heard.Unclear(
                begun.isEmpty()
                        ? "\"" + line + "\" is none of the options"
                        : line + " may mean " + String.join(" or ", begun),
                Spelling.nearest(line, options)
                        .filter(near -> begun.isEmpty())
                        .map(near -> "did you mean " + near + "?")
                        .orElse("one of " + String.join(", ", options)));
    }

    private static Optional<String> named(List<String> options, String line) {
        return options.stream()
                .filter(option -> plain(option).equals(plain(line)))
                .findFirst();
    }

    private static Optional<String> numbered(List<String> options, String line) {
        return line.matches("[1-9]\\d?") && Integer.parseInt(line) <= options.size()
                ? Optional.of(options.get(Integer.parseInt(line) - 1))
                : Optional.empty();
    }

    /** As one says it: {@code a_drop} is a drop. */
    private static String plain(String option) {
        return option.toLowerCase(Locale.ROOT).replace('_', ' ').replace('-', ' ');
    }

    private static Heard count(String line) {
        return line.matches("\\d{1,9}")
                ? new Heard.Answer(new Given.Count(new BigDecimal(line)))
                : new Heard.Unclear("this is counted", "write a whole number, such as 2; 0 for none");
    }

    private Heard items(String line) {
        String lower = line.toLowerCase(Locale.ROOT);
        if (lower.equals("nothing") || lower.equals("none")) {
            return new Heard.Answer(new Given.Items(List.of()));
        }
        if (lower.equals("all") && !asked.things().isEmpty()) {
            return new Heard.Answer(new Given.Items(asked.things()));
        }
        Matcher allBut = ALL_BUT.matcher(line);
        if (!allBut.matches() || asked.things().isEmpty()) {
            return new Heard.Answer(new Given.Items(parted(line)));
        }
        List<String> rest = new ArrayList<>(asked.things());
        for (String lacking : parted(allBut.group(1))) {
            if (!rest.remove(lacking)) {
                return new Heard.Unclear(
                        "the card does not list " + lacking, "it lists " + String.join(", ", asked.things()));
            }
        }
        return new Heard.Answer(new Given.Items(rest));
    }

    /** What stands between commas; a thing of the card by its name on the card, whatever its case. */
    private List<String> parted(String line) {
        return Arrays.stream(line.split(",", -1))
                .map(String::strip)
                .filter(thing -> !thing.isEmpty())
                .map(thing -> named(asked.things(), thing).orElse(thing))
                .toList();
    }

    private Heard day(String line) {
        switch (line.toLowerCase(Locale.ROOT)) {
            case "today" -> {
                return day(asked.today());
            }
            case "yesterday" -> {
                return day(asked.today().minusDays(1));
            }
            default -> {}
        }
        Matcher day = DAY.matcher(line);
        try {
            if (day.matches()) {
                return day(LocalDate.of(
                        Integer.parseInt(day.group(1)),
                        Integer.parseInt(day.group(2)),
                        Integer.parseInt(day.group(3))));
            }
        } catch (DateTimeException noDay) {
            return new Heard.Unclear(line + " is no day of the calendar", "write it as " + asked.today());
        }
        return new Heard.Unclear(
                "a day is written year, month, day", "write it as " + asked.today() + "; other orders mean two things");
    }

    private static Heard day(LocalDate day) {
        return new Heard.Answer(new Given.Words(day.toString()));
    }

    private static String unquoted(String line) {
        boolean quoted = line.length() > 1 && line.startsWith("\"") && line.endsWith("\"");
        return quoted ? line.substring(1, line.length() - 1) : line;
    }
}
