package longnight.body.law;

import static longnight.body.BodyParameter.SIT_SHIFTING;
import static longnight.body.BodyParameter.SIT_STILL;
import static longnight.body.BodyParameter.STAND_SHIFTING;
import static longnight.body.BodyParameter.STAND_STILL;
import static longnight.figure.Posture.CHAIR;
import static longnight.figure.Posture.LYING_CURLED;
import static longnight.figure.Posture.SITTING_KNEES_UP;
import static longnight.figure.Posture.STANDING;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import longnight.figure.Posture;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heat by posture and restlessness, Levine, Schleusner and Jensen 2000, and the tables it stands against. */
class Levine2000PostureTest {
    private static final PostureHeat LAW = new PostureHeat(
            SIT_STILL.nominal(), SIT_SHIFTING.nominal(), STAND_STILL.nominal(), STAND_SHIFTING.nominal());

    @ParameterizedTest
    @DisplayName("76 kg, lying 90 W: sitting 94, fidgeting 139, standing 102, fidgeting 175 W")
    @CsvSource({"CHAIR, 0, 94", "CHAIR, 1, 139", "STANDING, 0, 102", "STANDING, 1, 175", "LYING_SUPINE, 0, 90"})
    void values(Posture posture, double shifting, double expected) {
        assertEquals(expected, 90 * LAW.overLying(posture, shifting), 0.5);
    }

    @Test
    @DisplayName("shifting half the time is half of it; lying it counts nothing")
    void shares() {
        assertEquals(1.29, LAW.overLying(SITTING_KNEES_UP, 0.5), 1e-12);
        assertEquals(1, LAW.overLying(LYING_CURLED, 1), 1e-12);
    }

    @ParameterizedTest
    @DisplayName("60 students 2018 lie at 0.8, sit at 0.9, stand at 1.0 comfort units (SD 0.2): within one SD, all low")
    @CsvSource({"LYING_SUPINE, 0.8", "CHAIR, 0.9", "STANDING, 1.0"})
    void students(Posture posture, double units) {
        // the reference man: basal heat by Mifflin, St Jeor et al. 1990, awake lying 1.05 times that
        double lying = 1.05 * RestingHeat.mifflin(74.43, 1.72, 30, true);
        double modelled = lying * LAW.overLying(posture, 0) / Met.comfort(1, BodyArea.duBois(74.43, 1.72));
        assertEquals(units, modelled, 0.2);
        assertEquals(-0.09, modelled - units, 0.09);
    }

    @ParameterizedTest
    @DisplayName("standard tables are optimistic for a person sitting still: 46, 58, 70 W/m2, misfit in W/m2")
    @CsvSource({"LYING_SUPINE, 46, -0.4", "CHAIR, 58, -10.6", "STANDING, 70, -18.5"})
    void standardTable(Posture posture, double table, double misfit) {
        double lying = 1.05 * RestingHeat.mifflin(74.43, 1.72, 30, true) / BodyArea.duBois(74.43, 1.72);
        assertEquals(misfit, lying * LAW.overLying(posture, 0) - table, 0.1);
    }

    @Test
    @DisplayName(
            "2011 Compendium, as an upper bound: sitting quietly 1.3, shifting feet 1.8, standing shifting 1.8 units")
    void compendium() {
        double lying = 90 / Met.exercise(1, 76);
        assertTrue(lying * LAW.overLying(CHAIR, 0) < 1.3);
        assertTrue(lying * LAW.overLying(CHAIR, 1) < 1.8);
        // standing and shifting as measured exceeds the table by a tenth
        assertEquals(1.8, lying * LAW.overLying(STANDING, 1), 0.19);
    }

    @ParameterizedTest
    @DisplayName("a drill on average, 75 kg: moderate 5 in 30 min +41 W, vigorous 5 in 30 +102 W, 3 in 20 +92 W")
    @CsvSource({"MODERATE, 5, 30, 41", "VIGOROUS, 5, 30, 102", "VIGOROUS, 3, 20, 92"})
    void drill(Drill drill, double minutes, double period, double expected) {
        assertEquals(expected, drill.extra(75, minutes / period), 0.6);
    }

    @Test
    @DisplayName("2011 Compendium 02022, 75 kg: 3.8 units are 331 W")
    void drillRate() {
        assertEquals(331, Drill.MODERATE.rate(75), 0.6);
        assertEquals(Drill.MODERATE.rate(75) - Met.exercise(1, 75), Drill.MODERATE.extra(75, 1), 1e-9);
    }
}
