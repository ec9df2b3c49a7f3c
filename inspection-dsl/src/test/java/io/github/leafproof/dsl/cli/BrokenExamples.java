package io.github.leafproof.dsl.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.diagnostic.Lesson;
import io.github.leafproof.dsl.parse.Unreadable;
import io.github.leafproof.inspection.record.ReportFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The examples of the lessons, broken for real: files are changed on a copy of the bench, commands are run, and what is
 * said comes from the program.
 */
record BrokenExamples(Path here) {

    private static final Pattern REPEATED = Pattern.compile("\u27EA([^\u27EB]*)\u27EB\u00D7([0-9]+)");
    private static final int TOO_LARGE = 17 << 20;
    private static final int MORE_FILES = 201;

    /** An example with its abbreviations written out. */
    static String inFull(String example) {
        return REPEATED.matcher(example).replaceAll(repeated -> {
            int times = Integer.parseInt(repeated.group(2));
            String text = IntStream.rangeClosed(1, times)
                    .mapToObj(i -> repeated.group(1)
                            .replace("##", String.valueOf(i + 1))
                            .replace("#", String.valueOf(i)))
                    .collect(Collectors.joining());
            return Matcher.quoteReplacement(text);
        });
    }

    /** The text after a change: lines with {@code -} go, lines with {@code +} come, those with blanks are passed. */
    static String changed(String text, List<String> changes) {
        List<String> lines = text.lines().toList();
        List<String> result = new ArrayList<>();
        int at = 0;
        for (String change : changes) {
            String line = change.substring(Math.min(2, change.length()));
            if (change.startsWith("+")) {
                result.add(line);
                continue;
            }
            while (at < lines.size() && !lines.get(at).strip().equals(line.strip())) {
                result.add(lines.get(at++));
            }
            assertThat(at).as("the line is there: " + line).isLessThan(lines.size());
            if (!change.startsWith("-")) {
                result.add(lines.get(at));
            }
            at++;
        }
        result.addAll(lines.subList(at, lines.size()));
        return String.join("\n", result) + "\n";
    }

    /** What is said when a file of the bench is changed, of this mistake alone. */
    String change(Lesson lesson) throws IOException {
        Path file = here.resolve(lesson.setting().file());
        String good = Files.readString(file);
        Files.writeString(file, changed(good, lesson.example().lines().toList()));
        String said = inspect();
        Files.writeString(file, good);
        return only(lesson.code(), said);
    }

    private String inspect(String... more) {
        return judge("first_look.inspection", "sheets/0411-clean.json", more);
    }

    private String judge(String procedure, String sheet, String... more) {
        List<String> arguments = new ArrayList<>(List.of("inspect", path(procedure), "--sheet", path(sheet)));
        arguments.addAll(List.of(more));
        return Terminal.run(arguments.toArray(String[]::new)).err();
    }

    private String path(String name) {
        return here.resolve(name).toString();
    }

    /** The problems with this code, each with its help. */
    private String only(String code, String said) {
        StringBuilder kept = new StringBuilder();
        boolean keep = false;
        for (String line : said.replace(here + "/", "").lines().toList()) {
            keep = line.startsWith("   ") ? keep && !line.contains("leafproof why") : line.contains(" " + code + ": ");
            kept.append(keep ? line + "\n" : "");
        }
        return kept.toString();
    }

    /** What is said in a situation that the lesson tells in words. */
    String situation(Lesson lesson) throws IOException {
        return switch (lesson.code()) {
            case "LP101" -> vet("frist_look.inspection");
            case "LP102" -> {
                Files.createDirectories(here.resolve("procedures"));
                yield vet("procedures");
            }
            case "LP103" -> DiagnosticPrinter.print(List.of(Unreadable.file("first_look.inspection")), false);
            case "LP104" -> vet("latin.inspection", "// gr\u00FCn\n".getBytes(ISO_8859_1));
            case "LP105" -> vet("empty.inspection", new byte[0]);
            case "LP147" -> vet("sheets/0412-trap.json");
            case "LP162" -> {
                Path elsewhere = Files.createDirectories(here.toAbsolutePath().resolveSibling("elsewhere"));
                Files.createSymbolicLink(
                        here.resolve("leaves.inspection"), Files.createFile(elsewhere.resolve("leaves.inspection")));
                yield vet(
                        "lash.inspection",
                        "procedure lash \"Lash\" revision 1\nuse \"leaves.inspection\"\n".getBytes(UTF_8));
            }
            case "LP164" -> {
                StringBuilder uses = new StringBuilder("procedure many \"Many\" revision 1\n");
                for (int i = 1; i <= MORE_FILES; i++) {
                    Files.writeString(here.resolve("p" + i + ".inspection"), "gauge g" + i + " : leaf set\n");
                    uses.append("use \"p").append(i).append(".inspection\"\n");
                }
                yield vet("many.inspection", uses.toString().getBytes(UTF_8));
            }
            case "LP701" -> vet("film.inspection", new byte[TOO_LARGE]);
            case "LP467" ->
                only(
                        lesson.code(),
                        Terminal.run(
                                        "vet",
                                        path("first_look.inspection"),
                                        "--card",
                                        path("cards/quillan-15.json"),
                                        "--tray",
                                        path("trays/bench-one.json"),
                                        "--variant",
                                        "late")
                                .err());
            case "LP604" -> card(lesson, new byte[TOO_LARGE]);
            case "LP605" -> card(lesson, new byte[0]);
            case "LP606" -> card(lesson, "{\n  \"model\": \"Fl\u00F6te 15\",\n".getBytes(ISO_8859_1));
            case "LP608" -> card(lesson, "[".repeat(10_000).getBytes(UTF_8));
            case "LP609" -> card(lesson, keys(600).getBytes(UTF_8));
            case "LP610" -> only(lesson.code(), inspect("--json", path("cards")));
            case "LP645" -> tray(lesson);
            case "LP661" -> report();
            case "LP667" -> {
                Path sheet = here.resolve("sheets/0411-clean.json");
                String trial = "{\"leaf\": \"0.05 mm\", \"result\": \"passes\"}, ";
                String good = Files.readString(sheet);
                Files.writeString(sheet, good.replace(trial, trial.repeat(200)));
                String said = inspect();
                Files.writeString(sheet, good);
                yield only(lesson.code(), said);
            }
            case "LP668" -> {
                Path card = here.resolve("cards/quillan-15.json");
                Files.writeString(
                        card, Files.readString(card).replace("\"tank_offset\": \"8 mm\"", "\"tank_offset\": \"low\""));
                yield only(lesson.code(), judge("tank.inspection", "sheets/0419-tank.json"));
            }
            case "LP685" -> {
                Path sheet = here.resolve("sheets/0411-clean.json");
                Files.writeString(sheet, Files.readString(sheet).replace("\"serial\": \"Q15-20398\", ", ""));
                yield history(lesson, "sheets/0411-clean.json");
            }
            case "LP686" -> history(lesson, "sheets/0411-clean.json", "sheets/0412-trap.json");
            case "LP687" -> {
                Files.copy(here.resolve("sheets/0411-clean.json"), here.resolve("sheets/0411-copy.json"));
                yield history(lesson, "sheets/0411-clean.json", "sheets/0411-copy.json");
            }
            case "LP688" -> history(lesson, "sheets/0411-clean.json", "--procedures", "cards");
            case "LP785", "LP786", "LP787", "LP788", "LP789", "LP790", "LP791", "LP792", "LP793", "LP794", "LP795" ->
                only(lesson.code(), new BrokenSeals(here).said(lesson.code()));
            case "LP740" -> accepting(lesson, "tank.inspection check lasts: 8 min -> 7 min\n");
            case "LP741" ->
                accepting(
                        lesson,
                        "tank.inspection check tight: after empty -> nothing because nobody squeezes a full tank\n");
            case "LP742" ->
                accepting(
                        lesson,
                        "tank.inspection check lasts: 8 min -> 7 min because we have small tanks only\n".repeat(2));
            default -> new BrokenSessions(here).situation(lesson);
        };
    }

    private String history(Lesson lesson, String... arguments) {
        return only(
                lesson.code(),
                Terminal.run(Stream.concat(
                                        Stream.of("history"),
                                        Stream.of(arguments).map(name -> name.startsWith("--") ? name : path(name)))
                                .toArray(String[]::new))
                        .err());
    }

    private String accepting(Lesson lesson, String list) throws IOException {
        Files.writeString(here.resolve("accepted.txt"), list);
        return only(
                lesson.code(),
                Terminal.run("mutants", path("tank.inspection"), "--accept", path("accepted.txt"))
                        .err());
    }

    private String vet(String name, byte[] bytes) throws IOException {
        Files.write(here.resolve(name), bytes);
        return vet(name);
    }

    private String vet(String name) {
        return Terminal.run("vet", path(name))
                .err()
                .replace(here + "/", "")
                .lines()
                .filter(line -> !line.contains("leafproof why"))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private String card(Lesson lesson, byte[] bytes) throws IOException {
        Path card = here.resolve("cards/quillan-15.json");
        byte[] good = Files.readAllBytes(card);
        Files.write(card, bytes);
        String said = only(lesson.code(), inspect());
        Files.write(card, good);
        return said;
    }

    private static String keys(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "\n  \"key" + i + "\": 1")
                .collect(Collectors.joining(",", "{", "\n}\n"));
    }

    private String tray(Lesson lesson) throws IOException {
        Path tray = here.resolve("trays/bench-one.json");
        String good = Files.readString(tray);
        String more = IntStream.rangeClosed(200, 294)
                .mapToObj(i -> "{ \"marked\": \"0." + i + " mm\" }, ")
                .collect(Collectors.joining());
        Files.writeString(tray, good.replaceFirst("\"leaves\": \\[", "\"leaves\": [ " + more));
        String said = only(lesson.code(), inspect());
        Files.writeString(tray, good);
        return said;
    }

    private static String report() {
        byte[] text = "{\n  \"format\": \"leafproof-report/9\"\n}\n".getBytes(UTF_8);
        return ReportFile.parse("report.json", text).problems().stream()
                .filter(problem -> problem.code().equals("LP661"))
                .map(problem -> problem + "\n")
                .collect(Collectors.joining());
    }
}
