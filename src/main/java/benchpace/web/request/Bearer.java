package benchpace.web.request;

import java.util.Optional;

/** The token in an {@code Authorization} header, which no browser sends on its own (RFC 6750, section 2.1). */
public final class Bearer {
    private static final String SCHEME = "Bearer ";

    private Bearer() { }

    /** @param header its value; null if there is none */
    public static Optional<String> in(String header) {
        return header != null && header.regionMatches(true, 0, SCHEME, 0, SCHEME.length())
                ? Optional.of(header.substring(SCHEME.length()).strip()) : Optional.empty();
    }
}
