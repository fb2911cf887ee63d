package longnight.report;

import java.util.ArrayList;
import java.util.List;
import longnight.proof.Band;
import longnight.proof.Check;
import longnight.proof.Outcome;
import longnight.proof.Outcome.Row;
import longnight.proof.Proof;
import longnight.proof.StandardTable;
import org.jspecify.annotations.Nullable;

/** What came of experiments, as rows of words and figures that page and document share. */
final class ProofTables {
    private ProofTables() {}

    /** A missed band of a check. */
    record Miss(Outcome outcome, Row row, boolean gate) {}

    /** Every gate and goal that the nominal set-up misses, gates first. */
    static List<Miss> misses(List<Outcome> outcomes) {
        List<Miss> gates = new ArrayList<>();
        List<Miss> goals = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            for (Row row : outcome.rows()) {
                if (!row.meetsGate()) {
                    gates.add(new Miss(outcome, row, true));
                }
                if (!row.meetsGoal()) {
                    goals.add(new Miss(outcome, row, false));
                }
            }
        }
        gates.addAll(goals);
        return gates;
    }

    static List<String> missColumns() {
        return columns("proof.misses.columns");
    }

    static List<String> cells(Miss miss) {
        Row row = miss.row;
        Check check = row.check();
        Band band = miss.gate ? check.gate() : check.goal();
        return List.of(
                miss.outcome.experiment().id() + ": " + check.name() + unit(check),
                measured(check),
                Prose.text(miss.gate ? "proof.gate" : "proof.goal") + " " + band(check, band),
                figure(check, row.nominal()),
                range(row),
                Prose.text((miss.gate ? row.anyGate() : row.anyGoal()) ? "proof.yes" : "proof.no"));
    }

    static List<String> columns() {
        return columns("proof.columns");
    }

    static List<String> cells(Row row) {
        Check check = row.check();
        return List.of(
                check.name() + unit(check),
                measured(check),
                figure(check, row.nominal()),
                range(row),
                band(check, check.gate()) + met(check.gate(), row.meetsGate(), row.anyGate()),
                band(check, check.goal()) + met(check.goal(), row.meetsGoal(), row.anyGoal()));
    }

    /** Each printed table in a sentence. */
    static List<String> tables(Proof proof) {
        List<String> lines = new ArrayList<>();
        for (StandardTable table : proof.tables()) {
            String name = "proof.table." + table.kind();
            int digits = table.kind() == StandardTable.Kind.GARMENT_LIST ? 4 : 2;
            lines.add(Prose.text(
                    "proof.table",
                    Prose.text(name),
                    String.valueOf(table.met()),
                    String.valueOf(table.rows().size()),
                    Figures.decimals(table.kind().tolerance(), digits),
                    signed(table.bias(), digits),
                    Figures.decimals(table.deviation(), digits),
                    Figures.decimals(table.worst(), digits),
                    Prose.text(name + ".unit")));
        }
        return lines;
    }

    /** Each check of the arithmetic in a sentence. */
    static List<String> arithmetic(Proof proof) {
        return proof.checks().stream()
                .map(check -> Prose.text(
                        "proof.arithmetic." + check.what(),
                        plain(check.value()),
                        plain(check.limit()),
                        Prose.text(check.met() ? "proof.met" : "proof.miss.short")))
                .toList();
    }

    private static String plain(double value) {
        return Math.abs(value) < 1e-6 ? Figures.order(value) : Figures.significant(value, 2);
    }

    /** What a second calculation gave; empty where it printed nothing. */
    static String second(Check check) {
        String value = Double.isNaN(check.second()) ? "" : figure(check, check.second());
        String range = band(check, check.secondRange());
        return (value + (range.isEmpty() ? "" : " (" + range + ")")).strip();
    }

    /** The score, one sentence each. */
    static List<String> score(List<Outcome> outcomes) {
        Outcome.Score score = Outcome.score(outcomes);
        List<String> lines = new ArrayList<>();
        lines.add(Prose.text(
                "proof.score.gates",
                String.valueOf(score.gatesMet()),
                String.valueOf(score.gates()),
                String.valueOf(score.gatesAny())));
        if (Double.isFinite(score.goals())) {
            lines.add(Prose.text(
                    "proof.score.goals", Figures.decimals(score.goals(), 2), Figures.decimals(score.goalsAny(), 2)));
        }
        score.pools().keySet().forEach(pool -> lines.add(score(outcomes, pool)));
        return lines;
    }

    /** The pooled error of one kind; empty where nothing of it was measured. */
    static String score(List<Outcome> outcomes, Check.Pool pool) {
        Outcome.@Nullable Pooled pooled = Outcome.score(outcomes).pools().get(pool);
        if (pooled == null) {
            return "";
        }
        boolean heat = pool == Check.Pool.HEAT;
        return Prose.text(
                "proof.score." + pool,
                String.valueOf(pooled.count()),
                heat ? signed(100 * pooled.bias(), 0) : signed(pooled.bias(), 2),
                heat ? Figures.decimals(100 * pooled.rmsd(), 0) : Figures.decimals(pooled.rmsd(), 2));
    }

    private static List<String> columns(String key) {
        return List.of(Prose.text(key).split("\\s*\\|\\s*"));
    }

    private static String signed(double value, int decimals) {
        return (value > 0 ? "+" : "") + Figures.decimals(value, decimals);
    }

    private static String met(Band band, boolean nominal, boolean any) {
        return band.exists() ? " " + Prose.text(nominal ? "proof.met" : any ? "proof.met.some" : "proof.missed") : "";
    }

    static String unit(Check check) {
        return check.unit().isEmpty() ? "" : " [" + check.unit() + "]";
    }

    static String figure(Check check, double value) {
        return Figures.decimals(value, check.decimals());
    }

    private static String measured(Check check) {
        if (Double.isNaN(check.measured())) {
            return "";
        }
        return figure(check, check.measured())
                + (Double.isNaN(check.spread()) ? "" : " ± " + figure(check, check.spread()));
    }

    private static String range(Row row) {
        return row.low() <= row.high()
                ? Prose.text("proof.range", figure(row.check(), row.low()), figure(row.check(), row.high()))
                : "";
    }

    static String band(Check check, Band band) {
        if (!band.exists()) {
            return "";
        }
        if (Double.isNaN(band.low())) {
            return Prose.text("proof.below", Figures.significant(band.high(), 4));
        }
        return Double.isNaN(band.high())
                ? Prose.text("proof.above", Figures.significant(band.low(), 4))
                : Prose.text("proof.range", Figures.significant(band.low(), 4), Figures.significant(band.high(), 4));
    }
}
