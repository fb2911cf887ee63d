package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import longnight.clothing.Dressing;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.study.LeastFixture.Some;
import org.apache.commons.math3.genetics.AbstractListChromosome;
import org.apache.commons.math3.genetics.BinaryChromosome;
import org.apache.commons.math3.genetics.BinaryMutation;
import org.apache.commons.math3.genetics.Chromosome;
import org.apache.commons.math3.genetics.ElitisticListPopulation;
import org.apache.commons.math3.genetics.FixedGenerationCount;
import org.apache.commons.math3.genetics.GeneticAlgorithm;
import org.apache.commons.math3.genetics.TournamentSelection;
import org.apache.commons.math3.genetics.UniformCrossover;
import org.apache.commons.math3.random.JDKRandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** An adversary that breeds kits: it must never find a lighter one that holds. */
class LeastAgainstGeneticTest {

    private static final double LINE = 1.6;
    private static final int PIECES = 24;
    private static final int POPULATION = 40;

    private final Some some = LeastFixture.draw(new Random(4), PIECES);
    private final List<Scenario> nights =
            List.of(LeastFixture.first(4.5, 14, LeastFixture.night("clear-valley", "student")));
    private final Trial trial = new Trial(nights.get(0));
    private final boolean freezing = DressRules.isFreezing(List.of(trial));
    private final Map<List<Integer>, Double> known = new ConcurrentHashMap<>(new HashMap<>());

    @Test
    void five_seeds() {
        duel(5, 25);
    }

    @Test
    @Tag("long")
    void thirty_seeds() {
        duel(30, 60);
    }

    private void duel(int seeds, int generations) {
        LeastAnswer answer = LeastFixture.search(some, nights, LINE, 0, NumericalSettings.dry());
        assertThat(answer.proof().complete()).isTrue();
        double least = answer.proof().found().get(0).mass();
        double best = Double.POSITIVE_INFINITY;
        for (int seed = 0; seed < seeds; seed++) {
            double bred = breed(seed, generations);
            assertThat(bred).as("seed %s", seed).isGreaterThanOrEqualTo(least - 1e-9);
            best = Math.min(best, bred);
        }
        assertThat(best).as("the adversary finds kits that hold").isLessThan(1.5 * least);
    }

    private double breed(int seed, int generations) {
        JDKRandomGenerator random = new JDKRandomGenerator();
        random.setSeed(seed);
        GeneticAlgorithm.setRandomGenerator(random);
        List<Chromosome> first = new ArrayList<>();
        for (int i = 0; i < POPULATION; i++) {
            first.add(new Kit(
                    IntStream.range(0, some.pieces().size() + some.pads().size())
                            .mapToObj(k -> random.nextDouble() < 0.5 ? 1 : 0)
                            .toList()));
        }
        GeneticAlgorithm breeder = new GeneticAlgorithm(
                new UniformCrossover<Integer>(0.5), 0.9, new BinaryMutation(), 0.6, new TournamentSelection(3));
        Chromosome best = breeder.evolve(
                        new ElitisticListPopulation(first, POPULATION, 0.15), new FixedGenerationCount(generations))
                .getFittestChromosome();
        Outfit.Kit kit = ((Kit) best).kit();
        boolean holds = DressRules.allows(kit, freezing) && demand(((Kit) best).genes(), kit) <= LINE;
        return holds ? LeastFixture.mass(kit) : Double.POSITIVE_INFINITY;
    }

    private double demand(List<Integer> genes, Outfit.Kit kit) {
        return known.computeIfAbsent(genes, key -> {
            var night = trial.run(kit, NumericalSettings.dry());
            return Pass.passes(night, LINE) ? night.demand() : Math.max(LINE + 0.01, night.demand());
        });
    }

    /** One bit a piece. */
    private final class Kit extends BinaryChromosome {
        Kit(List<Integer> bits) {
            super(bits);
        }

        List<Integer> genes() {
            return List.copyOf(getRepresentation());
        }

        Outfit.Kit kit() {
            List<Garment> pieces = new ArrayList<>();
            List<Pad> pads = new ArrayList<>();
            for (int i = 0; i < getLength(); i++) {
                if (getRepresentation().get(i) == 1) {
                    if (i < some.pieces().size()) {
                        pieces.add(some.pieces().get(i));
                    } else {
                        pads.add(some.pads().get(i - some.pieces().size()));
                    }
                }
            }
            // of a kind the first, so that most children may be put on
            List<Garment> single = pieces.stream()
                    .filter(piece -> pieces.stream()
                                    .filter(other ->
                                            other.spec().kind() == piece.spec().kind())
                                    .findFirst()
                                    .orElseThrow()
                            == piece)
                    .toList();
            return new Outfit.Kit(Dressing.inOrder(single), pads);
        }

        @Override
        public double fitness() {
            Outfit.Kit kit = kit();
            if (!DressRules.allows(kit, freezing)) {
                return -100 - kit.pieces().size() * -0.01;
            }
            double demand = demand(genes(), kit);
            return demand <= LINE ? -LeastFixture.mass(kit) : -20 - demand;
        }

        @Override
        public AbstractListChromosome<Integer> newFixedLengthChromosome(List<Integer> bits) {
            return new Kit(bits);
        }
    }
}
