package longnight.night;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Draws up the night's water from a finished run. */
final class WaterBooks {

    private WaterBooks() {}

    static WaterReport report(Runner runner, List<String> pieces, Diary diary) {
        List<WaterReport.Layer> layers = new ArrayList<>();
        for (String id : pieces) {
            double[] dusk = runner.closetAtDusk.sum(id);
            double[] dawn = runner.closet.sum(id);
            layers.add(new WaterReport.Layer(
                    id, runner.closet.dry(id), dusk[0], dusk[1], dusk[2], dawn[0], dawn[1], dawn[2]));
        }
        double held = runner.closet.held();
        double[] flows = runner.flows;
        double[][] trace = new double[pieces.size()][diary.waterTimes.size()];
        for (int t = 0; t < diary.waterByPiece.size(); t++) {
            Map<String, Double> now = diary.waterByPiece.get(t);
            for (int i = 0; i < pieces.size(); i++) {
                trace[i][t] = now.getOrDefault(pieces.get(i), Double.NaN);
            }
        }
        return new WaterReport(
                List.copyOf(layers),
                flows[0],
                flows[1],
                flows[2],
                flows[3],
                runner.heldAtDusk,
                held,
                runner.heldAtDusk - runner.heldAtStart,
                Double.NaN,
                Math.abs(held - runner.heldAtDusk - runner.entered - flows[0] - flows[1] + flows[2] + flows[3]),
                trace,
                diary.waterTimes.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
