package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BinTest {
  @ParameterizedTest(name = "{0} and {1}: {2}")
  @CsvSource({
    "B4, b4, one",
    "B4, B 4, one",
    "B4, B-4, one",
    "B4, B.4, one",
    "B4, ' B4 ', one",
    "B4, #B_4, one",
    "бункер 4, Бункер-4, one",
    "?, ?, one",
    "B4, '', two",
    "?, !, two",
    "B4, B5, two",
    "1-11, 1.11, one",
    "1-11, 11-1, two",
    "B1-1, B11, two",
    "कि, का, two",
    "Bin 4, 4, told",
    "4, bin4, told",
    "Silo B-4, B4, told",
    "B4, 4, told",
    "Silo Süd, süd, told",
    "East 4, West 4, two",
    "44, 4, two",
    "B14, 4, two",
    "subin, bin, two",
    "2 B4, B4, two",
  })
  void namesOfOneBinAreOne(String name, String other, String are) {
    boolean one = Bin.key(name).equals(Bin.key(other));
    assertEquals(one, Bin.key(other).equals(Bin.key(name)));
    assertEquals(Bin.mayBeOne(name, other), Bin.mayBeOne(other, name));
    assertEquals(are, one ? "one" : Bin.mayBeOne(name, other) ? "told" : "two");
  }
}
