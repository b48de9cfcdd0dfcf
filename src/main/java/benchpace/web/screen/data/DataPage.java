package benchpace.web.screen.data;

import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Shell;
import java.util.List;

/**
 * What is kept, and what an organiser may do with it: a card a subject.
 *
 * @param folder where it is kept
 * @param size   what it takes, in words
 * @param backup copies of it
 * @param guests how long guests' names are kept
 * @param unreadable classes that keep them because they cannot be read
 */
public record DataPage(String folder, String size, BackupCard backup, GuestsCard guests, UnreadableCard unreadable) {

    public Shell shell() {
        return new Shell("Your data", "data", List.of(), "", "", "UTC", Role.INSTRUCTOR.token(), "");
    }
}
