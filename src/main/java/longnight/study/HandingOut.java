package longnight.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.night.GroupNight.Member;
import longnight.night.GroupNight.Spare;
import longnight.night.NightResult;
import longnight.night.Scenario;
import org.jspecify.annotations.Nullable;

/**
 * Spares handed out one after the other, each to whoever is most exposed then, and to them the one that leaves them best off,
 * whatever it weighs. It ends where nothing that is left helps the most exposed. The best first step need not be part of the
 * best of all ways to share them out.
 */
final class HandingOut {
    private final Map<String, Scenario> nights = new HashMap<>();
    private final List<Standing> standings;
    private final Map<String, Integer> left = new HashMap<>();
    private final List<Spare> spares;
    private final Function<List<Scenario>, List<NightResult>> runner;

    HandingOut(
            List<Member> members,
            List<Standing> standings,
            List<Spare> spares,
            Function<List<Scenario>, List<NightResult>> runner) {
        members.forEach(member -> nights.put(member.id(), member.alone()));
        this.standings = new ArrayList<>(standings);
        this.spares = spares;
        spares.forEach(spare -> left.put(spare.id(), spare.count()));
        this.runner = runner;
    }

    List<Handed> steps() {
        List<Handed> steps = new ArrayList<>();
        Optional<Handed> next = next();
        while (next.isPresent()) {
            steps.add(next.get());
            next = next();
        }
        return List.copyOf(steps);
    }

    /** Everybody with what they were handed, the most exposed first. */
    List<Member> after() {
        return standings.stream()
                .map(one -> new Member(one.id(), night(one.id())))
                .toList();
    }

    private record Try(Spare spare, Scenario night) {}

    private Optional<Handed> next() {
        Standing weakest = standings.get(0);
        List<Try> tries = new ArrayList<>();
        for (Spare spare : spares) {
            @Nullable Scenario night = left.getOrDefault(spare.id(), 0) > 0 ? with(night(weakest.id()), spare) : null;
            if (night != null) {
                tries.add(new Try(spare, night));
            }
        }
        List<NightResult> results = runner.apply(tries.stream().map(Try::night).toList());
        List<Handed> all = new ArrayList<>();
        for (int i = 0; i < tries.size(); i++) {
            all.add(handed(tries.get(i).spare(), weakest, results.get(i)));
        }
        Optional<Handed> best = all.stream()
                .filter(Handed::helps)
                .max(Comparator.comparing(Handed::after, Standing.MOST_EXPOSED_FIRST)
                        .thenComparing(each -> -each.spare().mass())
                        .thenComparing(each -> each.spare().id(), Comparator.reverseOrder()));
        best.ifPresent(handed -> take(handed, tries));
        return best;
    }

    private void take(Handed handed, List<Try> tries) {
        left.merge(handed.spare().id(), -1, Integer::sum);
        tries.stream()
                .filter(each -> each.spare().equals(handed.spare()))
                .forEach(each -> nights.put(handed.before().id(), each.night()));
        standings.set(0, handed.after());
        standings.sort(Standing.MOST_EXPOSED_FIRST);
    }

    private Handed handed(Spare spare, Standing before, NightResult result) {
        Standing after = new Standing(before.id(), result);
        return new Handed(spare, before, after, true, weakestWith(standings, 0, after));
    }

    private Scenario night(String id) {
        return java.util.Objects.requireNonNull(nights.get(id));
    }

    /** Who is most exposed when one of them stands otherwise. */
    static Standing weakestWith(List<Standing> standings, int rank, Standing other) {
        List<Standing> then = new ArrayList<>(standings);
        then.set(rank, other);
        return then.stream().min(Standing.MOST_EXPOSED_FIRST).orElseThrow();
    }

    /** A night with a spare besides; null when they would not put it on. */
    static @Nullable Scenario with(Scenario night, Spare spare) {
        Outfit.Kit kit = (Outfit.Kit) night.outfit();
        @Nullable Garment piece = spare.piece();
        @Nullable Pad pad = spare.pad();
        if (piece != null && DressRules.takes(kit, piece)) {
            return Rewear.with(night, piece);
        }
        if (pad != null && DressRules.takesPad(kit, pad)) {
            List<Pad> pads = new ArrayList<>(kit.pads());
            pads.add(pad);
            return Rewear.on(night, pads);
        }
        return null;
    }
}
