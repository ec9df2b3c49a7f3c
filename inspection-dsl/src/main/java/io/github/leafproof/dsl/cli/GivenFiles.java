package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.rehearsal.ProcedureFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The procedures that a command line names: files as they are, and all that lie below a folder. */
record GivenFiles(Console console) {

    /** Each procedure once, in the order given; empty after telling which folder holds none, or cannot be read. */
    Optional<List<Path>> procedures(List<Path> given) {
        Set<Path> all = new LinkedHashSet<>();
        boolean sound = true;
        for (Path each : given) {
            if (Files.isDirectory(each)) {
                List<Path> found = below(each);
                sound &= !found.isEmpty();
                all.addAll(found);
            } else {
                all.add(each);
            }
        }
        return sound ? Optional.of(new ArrayList<>(all)) : Optional.empty();
    }

    private List<Path> below(Path folder) {
        try {
            List<Path> found = ProcedureFiles.below(folder);
            if (found.isEmpty()) {
                int parts = ProcedureFiles.allBelow(folder).size();
                console.once("leafproof: there is no procedure in " + folder + "\n   help: "
                        + (parts == 0
                                ? "procedures are files that end in .inspection\n"
                                : "what ends in .inspection there is part of other procedures; name the folder or the"
                                        + " file of these\n"));
            }
            return found;
        } catch (IOException unreadable) {
            console.once("leafproof: " + folder + " cannot be looked through\n   help: it must be a folder that you may"
                    + " read, with all folders in it\n");
            return List.of();
        }
    }
}
