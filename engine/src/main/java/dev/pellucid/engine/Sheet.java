package dev.pellucid.engine;

/**
 * The batch sheet of a recipe.
 *
 * @param code of the recipe
 * @param draft whether it is stamped as a draft not to be made
 */
public record Sheet(String code, String text, String html, boolean draft) {}
