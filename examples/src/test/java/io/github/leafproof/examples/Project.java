package io.github.leafproof.examples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The project's own files, as the tests see them from the folder of this module. */
final class Project {
    static final Path ROOT = Path.of("..");
    static final Path BENCH = Path.of("bench");

    /** What a build, a version control system or an editor writes is none of the project's text. */
    private static final Set<String> NOT_OURS = Set.of("target", ".git", ".idea", ".vscode", ".settings");

    private static final Pattern FENCE =
            Pattern.compile("^```([^\n]*)\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);

    private Project() {}

    static String text(Path file) {
        return new String(bytes(file), StandardCharsets.UTF_8);
    }

    static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The README, the page for developers, and everything under docs. */
    static List<Path> pages() {
        return Stream.concat(
                        Stream.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md"), BENCH.resolve("README.md")),
                        files(ROOT.resolve("docs")).stream()
                                .filter(file -> file.toString().endsWith(".md")))
                .toList();
    }

    /** All files below a folder, in the order of their names. */
    static List<Path> files(Path folder) {
        List<Path> found = new ArrayList<>();
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path below, BasicFileAttributes attributes) {
                    boolean skipped = NOT_OURS.contains(below.getFileName().toString());
                    return skipped ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    // In a second working tree of one repository, .git is a file.
                    if (!NOT_OURS.contains(file.getFileName().toString())) {
                        found.add(file);
                    }
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Collections.sort(found);
        return found;
    }

    /** What stands between three back-ticks with this word behind them, in the order of the page. */
    static List<String> fences(String page, String word) {
        return fences(page).stream()
                .filter(fence -> fence.is(word))
                .map(Fence::content)
                .toList();
    }

    /** A block of a page: what stands behind its back-ticks, and what between them. */
    record Fence(String info, String content) {

        /** Whether it is of this kind; behind the kind may stand the name of a file. */
        boolean is(String kind) {
            return info.equals(kind) || (info.startsWith(kind + " ") && info.endsWith(".inspection"));
        }
    }

    /** All blocks of a page in its order. */
    static List<Fence> fences(String page) {
        return FENCE.matcher(page)
                .results()
                .map(fence -> new Fence(fence.group(1), fence.group(2)))
                .toList();
    }

    /** A page without its blocks. */
    static String outsideFences(String page) {
        return FENCE.matcher(page).replaceAll("");
    }
}
