package longnight.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import longnight.assumption.ParameterSet;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Scaling to people and what the controllers must never do. */
class BodyTest {

    private static final ParameterSet<BodyParameter> NOMINAL = ParameterSet.nominal(BodyParameter.class);

    private static Body body(Person person) {
        return Body.of(person, NOMINAL, BodyOptions.nominal());
    }

    private static Body.Circumstances now(Posture posture, boolean maySleep, double imposed) {
        Body.Circumstances now = new Body.Circumstances();
        now.posture = posture;
        now.maySleep = maySleep;
        now.imposedHeat = imposed;
        return now;
    }

    @Test
    @DisplayName("the reference man is his own table")
    void referenceIsTheTable() {
        Body body = body(Person.reference());
        double capacity = 0;
        for (double c : body.capacities()) {
            capacity += c;
        }
        // 15 % of 74.43 kg against the tables' 11.16 kg of fat and 63.27 kg of lean mass: the same to 1e-3
        assertEquals(247.09e3, capacity, 0.002 * 247.09e3);
        assertEquals(59.7e3, body.coreCapacity(), 0.002 * 59.7e3);
    }

    @Test
    @DisplayName("at the neutral state every controller is silent")
    void silentAtNeutral() {
        for (Person person : new Person[] {
            Person.reference(),
            new Person("small", Person.Sex.FEMALE, 34, 1.55, 48, 22, 42, 1),
            new Person("large", Person.Sex.MALE, 50, 1.90, 115, 34, 35, 1)
        }) {
            Body body = body(person);
            double[] t = body.neutralState();
            Body.Control control = new Body.Control();
            double[] mean = new double[1];
            for (int s = 0; s < BodySegment.COUNT; s++) {
                mean[0] += body.segmentAreas()[s] / body.bodyArea() * t[Body.SKIN + s];
            }
            body.control(t, 0, 0, mean[0], Double.NaN, now(Posture.SITTING_KNEES_UP, false, Double.NaN), control);
            assertEquals(body.restHeat(), control.made, 0.02 * body.restHeat(), "only the small non-shivering term");
            double[] flows = body.basalFlows();
            for (int i = 0; i < Body.BLOOD; i++) {
                assertEquals(flows[i], control.flow[i], 1e-9 + 0.02 * flows[i], "node " + i);
            }
            assertEquals(36.8, t[Body.BLOOD], 1e-6);
        }
    }

    @Test
    @DisplayName("inner rates neither make nor lose heat beyond what is made")
    void innerHeatIsConserved() {
        Body body = body(new Person("someone", Person.Sex.FEMALE, 34, 1.65, 58, 24, 42, 1));
        double[] t = body.neutralState();
        for (int i = 0; i < Body.NODES; i++) {
            t[i] -= 0.37 * i % 7;
        }
        Body.Control control = new Body.Control();
        body.control(t, 0.3, 0.2, 31, 3600, now(Posture.LYING_CURLED, true, Double.NaN), control);
        double[] rate = new double[Body.NODES];
        body.innerRates(t, control, rate);
        double sum = 0;
        double made = 0;
        for (double r : rate) {
            sum += r;
        }
        for (double h : control.heat) {
            made += h;
        }
        assertEquals(control.made, made, 1e-9 * made);
        assertEquals(control.made, sum, 1e-9 * made);
        assertTrue(control.shivering > 0);
    }

    @Test
    @DisplayName("imposed heat is made to the watt, below and above rest")
    void imposedHeat() {
        Body body = body(Person.reference());
        Body.Control control = new Body.Control();
        for (double imposed : new double[] {60, 90, 250}) {
            body.control(body.neutralState(), 0, 0, 34, Double.NaN, now(Posture.STANDING, false, imposed), control);
            double made = 0;
            for (double h : control.heat) {
                made += h;
                assertTrue(h >= 0);
            }
            assertEquals(imposed, made, 1e-9 * imposed);
            assertEquals(imposed, control.made, 1e-9 * imposed);
        }
    }
}
