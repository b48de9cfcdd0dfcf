package benchpace.web.plans;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** A number as people type it: with a point or a comma before its decimals, and nothing between its thousands. */
final class TypedNumber {
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,20}([.,]\\d{1,20})?");
    /** "1,500" is one and a half to some and fifteen hundred to others. */
    private static final Pattern EITHER = Pattern.compile("[-+]?[1-9]\\d{0,2},\\d{3}");

    private TypedNumber() { }

    /** Whether it could be two numbers. */
    static boolean isEither(String typed) {
        return EITHER.matcher(typed.strip()).matches();
    }

    /** @return nothing for what is no number */
    static Optional<BigDecimal> of(String typed) {
        String text = typed.strip();
        return NUMBER.matcher(text).matches()
                ? Optional.of(new BigDecimal(text.replace(',', '.'))) : Optional.empty();
    }
}
