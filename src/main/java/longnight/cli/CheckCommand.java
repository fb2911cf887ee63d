package longnight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import longnight.report.CheckPage;
import longnight.scenario.FileCheck;
import longnight.scenario.InputFault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a file back: what stands in it, what was guessed, and every fault. */
@Command(
        name = "check",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class CheckCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", descriptionKey = "FILE")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path file;

    @Override
    public Integer call() {
        FileCheck.Checked checked = FileCheck.check(file);
        if (!checked.faults().isEmpty()) {
            PrintWriter err = spec.commandLine().getErr();
            checked.faults().stream().map(InputFault::getMessage).forEach(err::println);
            err.flush();
            return ExitCode.BAD_INPUT;
        }
        CheckPage page = new CheckPage(file.toString(), checked.kind().word());
        for (FileCheck.Fact fact : checked.facts()) {
            if (fact.first()) {
                page.section(fact.section());
            }
            page.fact(fact.key(), fact.written(), fact.dimension(), fact.value(), fact.about());
        }
        PrintWriter out = spec.commandLine().getOut();
        out.print(page.text(checked.guesses(), checked.limits(), checked.cautions()));
        out.flush();
        return ExitCode.FINE;
    }
}
