package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import longnight.night.NightResult;
import longnight.study.Group;
import longnight.study.Handed;
import longnight.study.Rota;
import longnight.study.Standing;

/** A group on the terminal: people from the most exposed on, spares, turns in the huddle. */
public final class GroupPage {
    private static final int NAME = 17;
    private static final int ROWS = 24;
    private static final int LONGEST_TURNS = 400;

    private final Group group;
    private final Units units;
    private final GroupWords words;
    private final List<String> lines = new ArrayList<>();

    private GroupPage(Group group, Units units) {
        this.group = group;
        this.units = units;
        words = new GroupWords(group, units);
    }

    /** The whole page, lines ended by a line feed. */
    public static String page(Group group, Units units) {
        return new GroupPage(group, units).text();
    }

    private String text() {
        body();
        Console.wrap(Prose.text("caution.heading") + ": " + String.join(" ", words.shortCautions()), 2, lines);
        return Console.plain(String.join("\n", lines) + "\n");
    }

    /** Everything but the cautions. */
    static List<String> body(Group group, Units units) {
        GroupPage page = new GroupPage(group, units);
        page.body();
        return page.lines;
    }

    private void body() {
        Console.wrap(words.about(), 0, lines);
        Console.wrap((words.headline() + " " + words.nearly()).strip(), 0, lines);
        if (!words.atRisk().isEmpty()) {
            Console.wrap(words.atRisk(), 0, lines);
        }
        lines.add("");
        people();
        if (!group.question().spares().isEmpty()) {
            lines.add("");
            words.spares().forEach(text -> Console.wrap(text, 2, lines));
            spares();
        }
        if (!group.rotas().isEmpty()) {
            lines.add("");
            words.rotas().forEach(text -> Console.wrap(text, 2, lines));
            rotas();
        }
        lines.add("");
        words.notes().forEach(note -> Console.wrap(note, 2, lines));
    }

    private void people() {
        List<List<String>> rows =
                heads("group.table.people", units.unit(Measure.HEAT), units.unit(Measure.TEMPERATURE));
        for (Standing one : group.standings()) {
            NightResult result = one.result();
            rows.add(List.of(
                    shortened(GroupWords.name(one)),
                    GroupWords.reserve(one),
                    units.number(Measure.POWER, one.reserveHeat()),
                    Figures.decimals(result.demand(), 2),
                    units.number(Measure.HEAT, stopped(result) ? Double.NaN : result.shortfallHeat()),
                    stopped(result) ? Figures.NONE : units.deficitNumber(result.coreHeatDeficitDawn()),
                    units.number(Measure.TEMPERATURE, Summary.hand(result)),
                    units.number(Measure.TEMPERATURE, Summary.foot(result)),
                    Compared.verdict(result)));
        }
        lines.addAll(ComparePage.set(rows, Set.of(0, 8)));
        Console.wrap(words.who(), 2, lines);
    }

    private void spares() {
        List<List<String>> rows = heads(
                "group.table.spares",
                units.unit(Measure.PIECE),
                units.unit(Measure.HEAT),
                units.unit(Measure.HEAT_PER_MASS));
        List<Handed> all = group.spares();
        for (Handed each : all.subList(0, Math.min(ROWS, all.size()))) {
            rows.add(List.of(
                    shortened(Wording.name(each.spare().id())),
                    shortened(GroupWords.name(each.before())),
                    units.number(Measure.PIECE, each.spare().mass()),
                    units.number(Measure.HEAT, each.saved()),
                    units.number(Measure.HEAT_PER_MASS, each.perMass()),
                    GroupWords.reserve(each.after()),
                    Compared.verdict(each.after().result()),
                    shortened(GroupWords.name(each.weakest())),
                    GroupWords.reserve(each.weakest())));
        }
        lines.addAll(ComparePage.set(rows, Set.of(0, 1, 6, 7)));
        if (all.size() > ROWS) {
            lines.add(Prose.text("group.more", String.valueOf(all.size() - ROWS), GroupFiles.SPARES));
        }
    }

    private void rotas() {
        List<List<String>> rows = heads("group.table.rotas", units.unit(Measure.HEAT));
        for (Rota rota : group.rotas()) {
            Standing weakest = rota.of(group.weakest().id());
            Standing most = rota.standings().get(0);
            rows.add(List.of(
                    GroupWords.kind(rota),
                    Figures.decimals(
                            rota.outsideFor().getOrDefault(group.weakest().id(), Double.NaN) / 3600, 1),
                    units.number(Measure.HEAT, words.saved(rota)),
                    GroupWords.reserve(weakest),
                    shortened(GroupWords.name(most)),
                    GroupWords.reserve(most),
                    Compared.verdict(most.result())));
        }
        lines.addAll(ComparePage.set(rows, Set.of(0, 4, 6)));
        group.rota(Rota.Kind.EVEN).ifPresent(even -> {
            String turns = words.turns(even);
            Console.wrap(
                    turns.length() <= LONGEST_TURNS
                            ? Prose.text("group.rota.turns", turns)
                            : Prose.text("group.rota.turns.long", GroupFiles.TURNS),
                    2,
                    lines);
        });
    }

    private static List<List<String>> heads(String key, String... slots) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            String head = Prose.text(key + "." + i, slots);
            rows.add(List.of(head.split("\\|", -1)));
        }
        return rows;
    }

    private static String shortened(String name) {
        return name.length() <= NAME ? name : name.substring(0, NAME - 3) + "...";
    }

    private static boolean stopped(NightResult result) {
        return !Double.isNaN(result.stopped());
    }
}
