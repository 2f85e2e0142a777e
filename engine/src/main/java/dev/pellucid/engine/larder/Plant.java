package dev.pellucid.engine.larder;

import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One file of {@code plant/}.
 *
 * @param shrink the part of the finished feed that dust, fines and start-up take
 * @param airTemperature of the mash before steam, in °C
 * @param trayLoad wet feed on one tray, in kg
 * @param coater how oil goes on
 */
public record Plant(
    String name,
    String title,
    double shrink,
    double airTemperature,
    OptionalDouble trayLoad,
    Optional<Coater> coater,
    Span declared) {

  /** What the plant has for coating. */
  public enum Coater {
    HAND,
    DRUM,
    VACUUM
  }
}
