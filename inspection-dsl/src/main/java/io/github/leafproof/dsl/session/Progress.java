package io.github.leafproof.dsl.session;

import java.util.Collection;
import java.util.Collections;

/**
 * How far an inspection has come: observations counted by their {@link Place}.
 *
 * @param changesAhead how often the bench still has to be changed, as far as can be seen
 */
public record Progress(
        int done, int couldNot, int toDo, int putOff, int skipped, int waiting, int notApplicable, int changesAhead) {

    static Progress of(Collection<Place> places, int changesAhead) {
        return new Progress(
                Collections.frequency(places, Place.DONE),
                Collections.frequency(places, Place.COULD_NOT),
                Collections.frequency(places, Place.TO_DO),
                Collections.frequency(places, Place.PUT_OFF),
                Collections.frequency(places, Place.SKIPPED),
                Collections.frequency(places, Place.WAITING),
                Collections.frequency(places, Place.NOT_APPLICABLE),
                changesAhead);
    }
}
