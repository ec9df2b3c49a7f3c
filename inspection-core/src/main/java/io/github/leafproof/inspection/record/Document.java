package io.github.leafproof.inspection.record;

/**
 * What a file says, and which file it was: a report names every file it rests on, so that a later reader can tell whether
 * it is still the same.
 *
 * @param content what it says
 * @param name the file as it was named by whoever asked for it
 * @param sha256 the SHA-256 digest of the file's bytes, 64 lower-case hexadecimal digits
 * @param <T> what the file holds
 */
public record Document<T>(T content, String name, String sha256) {}
