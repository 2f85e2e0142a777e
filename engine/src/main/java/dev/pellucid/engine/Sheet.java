package dev.pellucid.engine;

/**
 * The batch sheet of a recipe or premix.
 *
 * @param code of the recipe or premix; no two are alike
 * @param draft whether it is stamped as a draft not to be made
 * @param premix whether it is of a premix
 */
public record Sheet(String code, String text, String html, boolean draft, boolean premix) {}
