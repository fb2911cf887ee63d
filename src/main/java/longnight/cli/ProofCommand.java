package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import longnight.night.ModelChoice;
import longnight.proof.Experiment;
import longnight.proof.Proof;
import longnight.report.Outputs;
import longnight.report.ProofJson;
import longnight.report.ProofPage;
import longnight.scenario.ExperimentReader;
import longnight.scenario.StandardReader;
import longnight.study.ProofRun;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The model against published experiments. */
@Command(
        name = "proof",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class ProofCommand implements Callable<Integer> {
    private static final Path FOLDER = Path.of("proof-out");

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "DIR", descriptionKey = "DIR")
    private @Nullable Path folder;

    @Mixin
    private final Destination to = new Destination();

    @Mixin
    private final Threads threads = new Threads();

    @Override
    public Integer call() throws IOException {
        int working = threads.count(spec.commandLine());
        to.require(FOLDER, Outputs.PROOF);
        List<Experiment> experiments = folder == null ? ExperimentReader.shipped() : ExperimentReader.folder(folder);
        Proof proof = ProofRun.of(
                experiments,
                folder == null,
                StandardReader.shipped(),
                StandardReader.night(),
                ModelChoice.nominal(),
                working);
        String page = ProofPage.page(proof);
        to.write(spec.commandLine(), Outputs.of(proof, page), page, () -> ProofJson.text(proof), () -> "");
        return proof.missesForGood() ? ExitCode.FAILED : ExitCode.FINE;
    }
}
