/**
 * Reports that can be believed: a report is sealed with a shop's key, and whoever has it later can tell whether it and every
 * file that it rests on are still the same. What a seal proves and what it does not is said in {@code docs/seal.md}.
 *
 * <p>Signatures are the platform's own Ed25519 (RFC 8032), keys are PEM files of PKCS#8 and SubjectPublicKeyInfo (RFC 7468,
 * RFC 8410): nothing here is cryptography of our own, and other programs can read all of it.
 */
@NullMarked
package io.github.leafproof.dsl.seal;

import org.jspecify.annotations.NullMarked;
