package longnight.night;
import org.junit.jupiter.api.Test;
class ScratchWaterTest {
  @Test void go() {
    WaterNumericsTest.nights().forEach(n -> {
      StringBuilder b = new StringBuilder(n.getName());
      NightEngine e = NightEngine.compile(n.getPayload(), ModelChoice.nominal());
      NumericalSettings s = NumericalSettings.standard();
      NightResult[] r = {e.run(s), e.run(s.divided(2)), e.run(s.divided(8)), e.run(s.divided(32))};
      b.append(String.format("%n  half %s%n  1/8 %s%n  half of 8 to 32 %s", WaterNumericsTest.gap(r[0], r[1]), WaterNumericsTest.gap(r[0], r[2]), WaterNumericsTest.gap(r[2], r[3])));
      System.out.println(b);
    });
  }
}
