package longnight.study;

import java.util.ArrayList;
import java.util.List;
import longnight.night.ModelChoice;
import longnight.proof.Experiment;
import longnight.proof.Outcome;

/** Runs a set of experiments under everything that is assumed about them. */
public final class ProofRun {
    private ProofRun() {}

    private record Question(Experiment experiment, Experiment.Variant variant) {}

    /**
     * What comes of each experiment, in their order.
     *
     * @param experiments which
     * @param choice      model
     * @param threads     how many runs are made at once; no figure depends on it
     */
    public static List<Outcome> of(List<Experiment> experiments, ModelChoice choice, int threads) {
        List<Question> questions = new ArrayList<>();
        for (Experiment experiment : experiments) {
            experiment.variants().forEach(variant -> questions.add(new Question(experiment, variant)));
        }
        List<double[]> answers =
                Together.ask(questions, each -> each.experiment.evaluate(choice, each.variant), threads);
        List<Outcome> outcomes = new ArrayList<>();
        int at = 0;
        for (Experiment experiment : experiments) {
            int n = experiment.variants().size();
            outcomes.add(Outcome.of(experiment, answers.subList(at, at + n)));
            at += n;
        }
        return List.copyOf(outcomes);
    }
}
