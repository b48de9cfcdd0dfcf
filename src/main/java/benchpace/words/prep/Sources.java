package benchpace.words.prep;

import benchpace.prep.card.Provenance;

/** Says where a rule comes from and how sure that is. */
final class Sources {
    private Sources() { }

    /** "(ASTM F2058; from memory, check the official text)". @param source empty for common practice */
    static String of(Provenance provenance, String source) {
        return switch (provenance) {
            case READ -> "(" + source + ")";
            case SECOND_HAND -> "(" + source + ", read second hand)";
            case MEMORY -> "(" + source + "; from memory, check the official text)";
            case PRACTICE -> "(common practice, no source)";
        };
    }
}
