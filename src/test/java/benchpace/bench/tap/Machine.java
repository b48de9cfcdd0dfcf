package benchpace.bench.tap;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

/** On what, when and of which state of the sources a figure was taken: no figure without. */
public final class Machine {
    private Machine() {
    }

    /** The head of what a program prints. @param subject what it measures @param flags of the programs measured */
    public static String head(String subject, List<String> flags) {
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        return String.format("%s%n%d processors, %d GB, %s %s, Java %s (%s)%n%s, commit %s%nflags %s%n", subject,
                system.getAvailableProcessors(), Math.round(system.getTotalMemorySize() / 1e9), system.getName(),
                system.getArch(), System.getProperty("java.version"), System.getProperty("java.vm.name"),
                LocalDateTime.now().format(DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm")), commit(),
                String.join(" ", flags));
    }

    private static String commit() {
        String changed = git("status", "--porcelain", "--untracked-files=no").isEmpty() ? "" : " and changes to it";
        String commit = git("rev-parse", "--short", "HEAD");
        return commit.isEmpty() ? "unknown" : commit + changed;
    }

    private static String git(String... arguments) {
        try {
            List<String> command = new ArrayList<>(List.of("git"));
            command.addAll(List.of(arguments));
            Process git = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
            return new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException noGit) {
            return "";
        }
    }
}
