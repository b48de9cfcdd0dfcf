package benchpace.prep.card;

/** What to check in the makers' own documents and with the venue before the class. */
public enum DocumentItem {
    WAX_DATA_SHEET(Provenance.PRACTICE),
    CERTIFICATE_CATEGORY(Provenance.MEMORY),
    CERTIFICATE_AMENDMENT(Provenance.MEMORY),
    CERTIFICATE_OF_TOTAL(Provenance.READ),
    SAFETY_SHEET_FLASH_POINT(Provenance.MEMORY),
    SAFETY_SHEET_CLASSIFICATION(Provenance.MEMORY),
    WICKS_WITHOUT_LEAD(Provenance.READ),
    VESSEL_FOR_CANDLES(Provenance.MEMORY),
    VENUE_ALLOWS_IT(Provenance.PRACTICE);

    private final Provenance provenance;

    DocumentItem(Provenance provenance) {
        this.provenance = provenance;
    }

    public Provenance provenance() {
        return provenance;
    }
}
