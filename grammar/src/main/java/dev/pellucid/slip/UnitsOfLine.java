package dev.pellucid.slip;

import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.text.Choices;
import java.util.List;
import java.util.Optional;

/** The units that a line can have, as people write them there. */
final class UnitsOfLine {
  private static final List<Unit> SHARES = List.of(Unit.PERCENT, Unit.G_PER_KG, Unit.MG_PER_KG);

  private UnitsOfLine() {}

  /** {@code write 6 min, 6 h or 6 d}. */
  static String help(BrokenLine line, String number) {
    List<Unit> units = of(line);
    return units.isEmpty()
        ? "for example: " + Model.line(line.file(), line.place())
        : "write " + Choices.of(units.stream().map(unit -> number + " " + unit.symbol()).toList());
  }

  private static List<Unit> of(BrokenLine line) {
    return switch (line.place()) {
      case MIX, COAT, CARRIER, LABEL, LIMITS, WAIVERS -> SHARES;
      case SUPPLY -> List.of(Unit.MG_PER_KG, Unit.G_PER_KG, Unit.IU_PER_KG);
      case OVERAGE -> List.of(Unit.PERCENT);
      case HEAD -> ofHead(line.at(0).text());
      case PROCESS -> ofProcess(line);
      case OPENING -> List.of();
    };
  }

  private static List<Unit> ofHead(String word) {
    return switch (word) {
      case "fish" -> List.of(Unit.G, Unit.KG);
      case "batch" -> List.of(Unit.KG, Unit.T);
      case "dose" -> List.of(Unit.G_PER_KG, Unit.PERCENT);
      default -> List.of();
    };
  }

  private static List<Unit> ofProcess(BrokenLine line) {
    for (int i = 1; i < line.size(); i++) {
      Optional<Property> property = Property.of(line.at(i).text());
      if (property.isPresent()) {
        return ofKind(property.get().kind());
      }
    }
    return List.of();
  }

  private static List<Unit> ofKind(Kind kind) {
    return switch (kind) {
      case TIME -> List.of(Unit.MINUTE, Unit.HOUR, Unit.DAY);
      case TEMPERATURE -> List.of(Unit.CELSIUS);
      case LENGTH -> List.of(Unit.MM);
      case MASS -> List.of(Unit.KG, Unit.G);
      case SHARE -> List.of(Unit.PERCENT);
      default -> List.of();
    };
  }
}
