package longnight.study;

import java.util.List;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.study.ComparedBand.Amount;
import org.junit.jupiter.api.Test;

class ComparedBandTest {
    private static NightResult night(String night, String kit) {
        return NightEngine.compile(ColdSearchTest.night(night, kit), ModelChoice.nominal())
                .run(NumericalSettings.standard());
    }

    private static double width(Spread spread) {
        return spread.high() - spread.low();
    }

    /**
     * The kits were chosen as neighbours before any figure was seen: they differ by one piece, the parka, of the same mass. What
     * both share drops out of their difference.
     */
    @Test
    void between_neighbours_the_difference_is_known_much_better_than_either() {
        for (String night : List.of("first-night", "clear-valley", "windy-ridge", "sleet-front"))
            for (String[] pair :
                    List.of(new String[] {"typical", "typical-down"}, new String[] {"light", "typical"}, new String[] {
                        "typical", "heavy"
                    })) {
                ComparedBand band =
                        ComparedBand.of(List.of(night(night, pair[0]), night(night, pair[1])), Draws.of(100, 1), 2);
                ComparedBand.Entry typical = band.all().get(0);
                ComparedBand.Entry down = band.all().get(1);
                for (List<Amount> each : List.of(
                        List.of(typical.demand(), down.demand()),
                        List.of(typical.shortfallHeat(), down.shortfallHeat()))) {
                    double narrower =
                            Math.min(width(each.get(0).own()), width(each.get(1).own()));
                    double difference = width(each.get(1).more());
                    System.out.println(night + " " + pair[1] + " ratio " + difference / narrower + " " + each);
                }
            }
    }
}
