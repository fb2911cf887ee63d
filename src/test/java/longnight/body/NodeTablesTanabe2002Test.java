package longnight.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import longnight.figure.BodySegment;
import org.junit.jupiter.api.Test;

/** Sums of the node tables of Tanabe et al. 2002, both sides counted. Tolerances: half a unit of the last printed digit. */
class NodeTablesTanabe2002Test {

    private static double total(double[][] table) {
        double sum = 0;
        for (double[] row : table) {
            sum += total(row);
        }
        return sum;
    }

    private static double total(double[] row) {
        double sum = 0;
        for (BodySegment s : BodySegment.values()) {
            sum += s.multiplicity() * row[s.ordinal()];
        }
        return sum;
    }

    @Test
    void sumsClose() {
        assertEquals(68.635, total(NodeTables.CAPACITY) + NodeTables.BLOOD_CAPACITY, 5e-4, "capacity [Wh/K]");
        assertEquals(83.554, total(NodeTables.HEAT), 5e-4, "basal heat [W]");
        assertEquals(273.81, total(NodeTables.FLOW), 5e-3, "basal flow [L/h]");
        assertEquals(13.79, total(NodeTables.FLOW[3]), 5e-3, "skin flow [L/h]");
        assertEquals(1.869, total(NodeTables.AREA), 5e-4, "area [m2]");
        assertEquals(1.001, total(NodeTables.SENSOR), 5e-4, "sensor weights");
        assertEquals(1.000, total(NodeTables.DILATION), 1.1e-3, "dilation shares");
        assertEquals(1.000, total(NodeTables.SHIVER), 5e-4, "shivering shares");
    }

    @Test
    void groupsAgreeWithStolwijk1971() {
        // Stolwijk 1971 (NASA CR-1855): trunk conductances 1.593, 5.524, 23.03 W/K, capacity 247.6 kJ/K; within 3 %
        for (int layer = 0; layer < 3; layer++) {
            double trunk = 0;
            for (BodySegment s : BodySegment.values()) {
                trunk += s.isTrunk() ? NodeTables.CONDUCTANCE[layer][s.ordinal()] : 0;
            }
            double published = new double[] {1.593, 5.524, 23.03}[layer];
            assertEquals(published, trunk, 0.03 * published);
        }
        assertEquals(247.6, 3.6 * (total(NodeTables.CAPACITY) + NodeTables.BLOOD_CAPACITY), 0.03 * 247.6);
    }
}
