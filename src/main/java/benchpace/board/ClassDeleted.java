package benchpace.board;

/** Somebody asks something of a class that was deleted meanwhile. */
public final class ClassDeleted extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private ClassDeleted(String classId) {
        super("class " + classId + " was deleted");
    }

    static void unless(boolean there, String classId) {
        if (!there) {
            throw new ClassDeleted(classId);
        }
    }
}
