/**
 * The report as one page for a browser and for paper: what the owner wants to know first, what whoever goes on has to mind,
 * pictures, and then all the evidence. Every number on it is the judgement's.
 *
 * <pre>
 * Judgement ──Reporting──▶ Report ──┐
 *     │                             ├─▶ sections of html ──▶ ReportPage
 *     └──────── figure, draw ───────┘
 * </pre>
 */
@NullMarked
package io.github.leafproof.dsl.page;

import org.jspecify.annotations.NullMarked;
