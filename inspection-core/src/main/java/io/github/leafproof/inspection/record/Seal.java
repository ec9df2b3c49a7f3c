package io.github.leafproof.inspection.record;

/**
 * What stands beside a report so that a later reader can tell whether it is still the one that was handed over: a
 * signature of the report's bytes, and the key that it can be verified with. Who that key belongs to no seal can say.
 *
 * @param sha256 the SHA-256 digest of the report's bytes, 64 lower-case hexadecimal digits: it tells which of the two was
 *     changed where report and signature do not go together
 * @param publicKey the key that made it, its public half: an Ed25519 SubjectPublicKeyInfo (RFC 8410) in Base64, which is what
 *     a PEM file of it holds between its first and its last line
 * @param signature the Ed25519 signature (RFC 8032) of the report's bytes, in Base64
 */
public record Seal(String sha256, String publicKey, String signature) {

    /** What the first line of every seal says about its form. */
    public static final String FORMAT = "leafproof-seal/1";
}
