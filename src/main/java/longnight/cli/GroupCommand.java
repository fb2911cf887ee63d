package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import longnight.night.GroupNight;
import longnight.night.NumericalSettings;
import longnight.report.GroupFiles;
import longnight.report.GroupJson;
import longnight.report.GroupPage;
import longnight.report.Prose;
import longnight.scenario.GroupReader;
import longnight.study.Group;
import longnight.study.Line;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Who of a group is most exposed, which spare helps whom, and what turns in the huddle give. */
@Command(
        name = "group",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class GroupCommand implements Callable<Integer> {
    private static final String VERB = "group";

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "GROUP", descriptionKey = "GROUP")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path file;

    @Mixin
    private final Destination to = new Destination();

    @Mixin
    private final Threads threads = new Threads();

    @Mixin
    private final UnitsOption shown = new UnitsOption();

    @Override
    public Integer call() throws IOException {
        int together = threads.count(spec.commandLine());
        to.require(OutdoorNight.folder(file, VERB), GroupFiles.NAMES);
        GroupNight question = GroupReader.read(file);
        for (GroupNight.Member member : question.members()) {
            requireRunnable(member);
        }
        Group group = Group.of(question, NumericalSettings.standard(), together);
        to.write(
                spec.commandLine(),
                GroupFiles.of(group, shown.units()),
                GroupPage.page(group, shown.units()),
                () -> GroupJson.text(group),
                () -> "");
        return ExitCode.FINE;
    }

    private void requireRunnable(GroupNight.Member member) {
        if (!member.alone().limits().isEmpty()) {
            throw fault(
                    "fault.group.outside",
                    member.id(),
                    String.join("; ", member.alone().limits()));
        }
        if (member.alone().plan().duration() < Line.DEMAND_WINDOW) {
            throw fault("fault.group.brief", member.id());
        }
    }

    private ParameterException fault(String key, String id, String... more) {
        String[] slots = new String[more.length + 2];
        slots[0] = file.toString();
        slots[1] = id;
        System.arraycopy(more, 0, slots, 2, more.length);
        return new ParameterException(spec.commandLine(), Prose.text(key, slots));
    }
}
