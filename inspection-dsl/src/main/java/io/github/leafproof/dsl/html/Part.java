package io.github.leafproof.dsl.html;

/** A piece of a page: an element, or the words in one. */
public sealed interface Part permits Element, Words {}
