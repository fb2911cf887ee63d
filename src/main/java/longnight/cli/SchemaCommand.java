package longnight.cli;

import java.io.PrintWriter;
import java.util.Iterator;
import java.util.Locale;
import java.util.concurrent.Callable;
import longnight.report.MapJson;
import longnight.scenario.FileKind;
import longnight.scenario.Schema;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What editors need to know of a kind of file. */
@Command(
        name = "schema",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class SchemaCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(
            paramLabel = "KIND",
            descriptionKey = "KIND",
            arity = "0..1",
            defaultValue = "night",
            converter = Kinds.class,
            completionCandidates = Kinds.class)
    private FileKind kind = FileKind.NIGHT;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        out.print(MapJson.of(Schema.of(kind)));
        out.flush();
        return ExitCode.FINE;
    }

    /** Kinds by their words. */
    static final class Kinds implements ITypeConverter<FileKind>, Iterable<String> {
        @Override
        public FileKind convert(String word) {
            return FileKind.valueOf(Words.oneOf(word, FileKind.words()).toUpperCase(Locale.ROOT));
        }

        @Override
        public Iterator<String> iterator() {
            return FileKind.words().iterator();
        }
    }
}
