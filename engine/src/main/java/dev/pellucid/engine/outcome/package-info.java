/**
 * What came of a check, as files for other machines and for the page of a build: SARIF, JUnit XML,
 * JSON and Markdown, each written as a stream. It judges nothing and knows neither recipes nor
 * rules nor the disk; of a rule it knows the words on its page.
 */
@NullMarked
package dev.pellucid.engine.outcome;

import org.jspecify.annotations.NullMarked;
