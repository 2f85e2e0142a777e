package dev.pellucid.slip;

import dev.pellucid.syntax.FileKind;

/** A right line for each place, to show beside a wrong one. */
final class Model {
  private Model() {}

  static String line(FileKind file, Place place) {
    return switch (place) {
      case OPENING -> opening(file);
      case HEAD -> head(file);
      case MIX -> "maize   14.00 %   within 10 to 25 %";
      case COAT -> "soybean-oil   3.00 %";
      case CARRIER -> "wheat-middlings   rest";
      case SUPPLY -> "vitamin-c   100 mg/kg   from ascorbyl-phosphate-35";
      case OVERAGE -> "VM-CAT   10 %   for handling";
      case LIMITS -> "crude-protein   min 35 %   in 95 % of batches";
      case WAIVERS ->
          "crude-fibre   max 6 %   until 2027-03-31   by \"quality manager\"   "
              + "because \"rice bran season\"";
      case PROCESS -> "dry   moisture   9 %   accept 8 to 10 %";
      case LABEL -> "crude-protein   36 %";
    };
  }

  private static String opening(FileKind file) {
    return switch (file) {
      case RECIPE -> "recipe CG-36 \"Catfish grower, 4 mm\"";
      case PREMIX -> "premix VM-CAT \"Vitamin and mineral premix, catfish\"";
      case PROFILE -> "profile catfish-grower \"African catfish, 50 to 250 g\"";
    };
  }

  private static String head(FileKind file) {
    return switch (file) {
      case RECIPE -> "batch   60 kg weighed";
      case PREMIX -> "dose   10 g/kg";
      case PROFILE -> "species   african-catfish";
    };
  }
}
