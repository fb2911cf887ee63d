package longnight.scenario;

import java.util.List;
import longnight.night.Caution;
import longnight.night.Scenario;

/**
 * A night file and everything it names, read and found without fault.
 *
 * @param scenario the question
 * @param cautions that reading gives rise to; the engine adds its own
 */
public record Loaded(Scenario scenario, List<Caution> cautions) {}
