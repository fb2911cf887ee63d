package longnight.study;

import java.util.ArrayList;
import java.util.List;
import longnight.night.ModelChoice;
import longnight.night.Scenario;
import longnight.proof.Experiment;
import longnight.proof.Outcome;
import longnight.proof.Proof;
import longnight.proof.SelfCheck;
import longnight.proof.StandardTable;

/** Runs a set of experiments under everything that is assumed about them. */
public final class ProofRun {
    private ProofRun() {}

    /**
     * The whole answer: people, printed tables and the arithmetic of one night.
     *
     * @param experiments which; those that the engine cannot express are listed
     * @param shipped     whether they are those that come with the program
     * @param tables      printed tables
     * @param night       on which the arithmetic is checked
     * @param choice      model
     * @param threads     how many runs are made at once; no figure depends on it
     */
    public static Proof of(
            List<Experiment> experiments,
            boolean shipped,
            List<StandardTable> tables,
            Scenario night,
            ModelChoice choice,
            int threads) {
        return new Proof(
                of(experiments.stream().filter(Experiment::runs).toList(), choice, threads),
                experiments.stream().filter(each -> !each.runs()).toList(),
                tables,
                SelfCheck.of(night, choice),
                shipped);
    }

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
