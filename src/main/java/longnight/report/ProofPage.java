package longnight.report;

import java.util.ArrayList;
import java.util.List;
import longnight.night.Caution;
import longnight.proof.Outcome;
import longnight.proof.Proof;

/** The proof on the terminal: what is missed first, then the score, then every figure. */
public final class ProofPage {
    private static final int NAME = 62;

    private ProofPage() {}

    /**
     * The page, lines ended by a line feed.
     *
     * @param proof what came of a set of experiments, of printed tables and of the arithmetic
     */
    public static String page(Proof proof) {
        List<Outcome> outcomes = proof.outcomes();
        boolean shipped = proof.shipped();
        List<String> lines = new ArrayList<>();
        int checks =
                outcomes.stream().mapToInt(outcome -> outcome.rows().size()).sum();
        add(
                lines,
                Prose.text(
                        "proof.title",
                        String.valueOf(outcomes.size()),
                        String.valueOf(checks),
                        String.valueOf(proof.cannot().size())),
                Prose.text(shipped ? "proof.fitted" : "proof.unseen"),
                "");
        List<ProofTables.Miss> misses = ProofTables.misses(outcomes);
        add(lines, Prose.text(misses.isEmpty() ? "proof.misses.none" : "proof.misses"));
        for (ProofTables.Miss miss : misses) {
            List<String> cells = ProofTables.cells(miss);
            add(
                    lines,
                    "  "
                            + Prose.text(
                                    "proof.miss",
                                    cells.get(0),
                                    cells.get(1).isEmpty() ? "-" : cells.get(1),
                                    cells.get(2),
                                    cells.get(3),
                                    cells.get(4),
                                    cells.get(5)));
            if (!miss.row().check().missed().isEmpty()) {
                add(lines, "    " + Prose.text("proof.why", miss.row().check().missed()));
            }
        }
        lines.add("");
        ProofTables.score(outcomes).forEach(line -> add(lines, line));
        lines.add("");
        for (Outcome outcome : outcomes) {
            add(lines, outcome.experiment().id() + ": " + outcome.experiment().title());
            for (Outcome.Row row : outcome.rows()) {
                List<String> cells = ProofTables.cells(row);
                String name = Console.plain(cells.get(0));
                lines.add("  " + name + " ".repeat(Math.max(1, NAME - name.length()))
                        + Prose.text(
                                "proof.row", cells.get(1).isEmpty() ? "-" : cells.get(1), cells.get(2), cells.get(3)));
                if (!cells.get(4).isEmpty() || !cells.get(5).isEmpty()) {
                    lines.add("      "
                            + (cells.get(4).isEmpty() ? "" : Prose.text("proof.row.gate", cells.get(4)) + "  ")
                            + (cells.get(5).isEmpty() ? "" : Prose.text("proof.row.goal", cells.get(5))));
                }
            }
        }
        lines.add("");
        proof.cannot()
                .forEach(
                        each -> add(lines, Prose.text("proof.cannot", each.id() + ": " + each.title(), each.cannot())));
        lines.add("");
        add(lines, Prose.text("proof.tables"));
        ProofTables.tables(proof).forEach(line -> add(lines, "  " + line));
        add(lines, Prose.text("proof.arithmetic"));
        ProofTables.arithmetic(proof).forEach(line -> add(lines, "  " + line));
        lines.add("");
        add(lines, Prose.text("caution.heading") + ": " + Wording.shortText(Caution.PLANNING_AID));
        return Console.plain(String.join("\n", lines).replaceAll(" +\n", "\n") + "\n");
    }

    private static void add(List<String> lines, String... texts) {
        for (String text : texts) {
            if (text.isEmpty()) {
                lines.add("");
            } else {
                String indent = " ".repeat(text.length() - text.stripLeading().length());
                Console.wrapped(text, 4).forEach(line -> lines.add(line.startsWith(" ") ? line : indent + line));
            }
        }
    }
}
