package benchpace.store;

import benchpace.store.sqlite.StoreException;

/** The class already has an event of that command. */
public final class CommandTaken extends StoreException {
    private static final long serialVersionUID = 1L;

    public CommandTaken(String classId, String commandId, Throwable cause) {
        super("Command " + commandId + " of class " + classId + " is in the store already.", cause);
    }
}
