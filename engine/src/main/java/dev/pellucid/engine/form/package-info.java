/**
 * New files as forms: texts that are complete but for what a person must give, with a mark in each
 * such place. It knows no disk and no folder, and judges nothing.
 */
@NullMarked
package dev.pellucid.engine.form;

import org.jspecify.annotations.NullMarked;
