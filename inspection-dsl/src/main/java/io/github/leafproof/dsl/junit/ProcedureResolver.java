package io.github.leafproof.dsl.junit;

import io.github.leafproof.dsl.rehearsal.ProcedureFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.platform.engine.DiscoverySelector;
import org.junit.platform.engine.UniqueId;
import org.junit.platform.engine.discovery.ClasspathResourceSelector;
import org.junit.platform.engine.discovery.ClasspathRootSelector;
import org.junit.platform.engine.discovery.DirectorySelector;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.engine.discovery.FilePosition;
import org.junit.platform.engine.discovery.FileSelector;
import org.junit.platform.engine.discovery.PackageSelector;
import org.junit.platform.engine.discovery.UniqueIdSelector;
import org.junit.platform.engine.discovery.UriSelector;
import org.junit.platform.engine.support.discovery.SelectorResolver;

/**
 * Finds the procedures and rehearsals that a request asks for. Whatever way they are asked for in, each is first brought to
 * its unique id, so that it is found once.
 */
final class ProcedureResolver implements SelectorResolver {

    private final UniqueId engine;
    private final @Nullable Path root;

    /**
     * @param root the folder that used files are named from; null where it is each procedure's own
     */
    ProcedureResolver(UniqueId engine, @Nullable Path root) {
        this.engine = engine;
        this.root = root;
    }

    @Override
    public Resolution resolve(ClasspathRootSelector selector, Context context) {
        return FileKey.path(selector.getClasspathRoot())
                .map(folder -> all(List.of(folder)))
                .orElseGet(Resolution::unresolved);
    }

    @Override
    public Resolution resolve(ClasspathResourceSelector selector, Context context) {
        List<Path> found = FileKey.resources(selector.getClasspathResourceName());
        return selector.getPosition().isPresent() && found.size() == 1
                ? at(found.get(0), selector.getPosition())
                : all(found);
    }

    @Override
    public Resolution resolve(PackageSelector selector, Context context) {
        return all(FileKey.resources(selector.getPackageName().replace('.', '/')));
    }

    @Override
    public Resolution resolve(DirectorySelector selector, Context context) {
        return all(List.of(selector.getPath()));
    }

    @Override
    public Resolution resolve(UriSelector selector, Context context) {
        return FileKey.path(selector.getUri()).map(path -> all(List.of(path))).orElseGet(Resolution::unresolved);
    }

    @Override
    public Resolution resolve(FileSelector selector, Context context) {
        return at(selector.getPath(), selector.getPosition());
    }

    @Override
    public Resolution resolve(UniqueIdSelector selector, Context context) {
        UniqueId.Segment last = selector.getUniqueId().getLastSegment();
        if (last.getType().equals(ProcedureDescriptor.SEGMENT)) {
            return context.addToParent(parent -> FileKey.file(last.getValue())
                            .map(file -> ProcedureDescriptor.of(selector.getUniqueId(), file, root)))
                    .map(found -> Resolution.match(Match.exact(found, () -> ids(found.caseIds()))))
                    .orElseGet(Resolution::unresolved);
        }
        if (last.getType().equals(RehearsalDescriptor.SEGMENT)) {
            UniqueId procedure = selector.getUniqueId().removeLastSegment();
            return context.addToParent(
                            () -> DiscoverySelectors.selectUniqueId(procedure),
                            parent -> parent instanceof ProcedureDescriptor found
                                    ? found.rehearsal(last.getValue())
                                    : Optional.empty())
                    .map(found -> Resolution.match(Match.exact(found)))
                    .orElseGet(Resolution::unresolved);
        }
        return Resolution.unresolved();
    }

    /** One file, and of that the rehearsal that a line stands in; all of them where the line stands in none. */
    private Resolution at(Path file, Optional<FilePosition> position) {
        if (!isProcedure(file)) {
            return Resolution.unresolved();
        }
        UniqueId id = id(file);
        Optional<UniqueId> one =
                position.flatMap(at -> ProcedureDescriptor.of(id, file, root).caseAt(at.getLine()));
        return Resolution.selectors(ids(List.of(one.orElse(id))));
    }

    /** All procedures of some files and folders. */
    private Resolution all(Collection<Path> places) {
        Set<UniqueId> found = new LinkedHashSet<>();
        for (Path place : places) {
            if (Files.isDirectory(place)) {
                below(place).forEach(file -> found.add(id(file)));
            } else if (isProcedure(place)) {
                found.add(id(place));
            }
        }
        return found.isEmpty() ? Resolution.unresolved() : Resolution.selectors(ids(found));
    }

    private static List<Path> below(Path folder) {
        try {
            return ProcedureFiles.below(folder);
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    private static boolean isProcedure(Path file) {
        return ProcedureFiles.isNamedSo(file) && Files.isRegularFile(file);
    }

    private UniqueId id(Path file) {
        return engine.append(ProcedureDescriptor.SEGMENT, FileKey.of(file));
    }

    private static Set<? extends DiscoverySelector> ids(Collection<UniqueId> ids) {
        return ids.stream()
                .map(DiscoverySelectors::selectUniqueId)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
