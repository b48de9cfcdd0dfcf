package benchpace.shelf;

/** How somebody shows that a candle is theirs: by their claim word, or, once that was erased, no more. */
public sealed interface Claim permits ClaimWord, Claim.Erased {
    /** The word was erased some days after the candle was collected or taken back. */
    record Erased() implements Claim {
        @Override public String toString() {
            return "erased";
        }
    }
}
