package org.pumpwright.host.ui.work;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What is filled in when a unit comes in, page by page in the order of the talk at the counter. Thread-safe. */
public enum IntakeField {
    CLAIM(0, Kind.TEXT, true),
    RECEIVED(0, Kind.DAY, false),
    TAKEN_BY(0, Kind.TEXT, false),
    BROUGHT_BY(0, Kind.TEXT, true),
    CONTACT(0, Kind.TEXT, true),
    CUSTOMER(0, Kind.TEXT, false),
    KIND(1, Kind.PICKED, true),
    MODEL(1, Kind.PICKED, true),
    SERIAL(1, Kind.TEXT, true),
    DATE_CODE(1, Kind.TEXT, false),
    ACCESSORIES(1, Kind.TEXT, true),
    SEAL(1, Kind.TEXT, true),
    TAG(1, Kind.TEXT, true),
    PRACTICE(1, Kind.YES_NO, false),
    SOLD(2, Kind.SOURCED_DAY, false),
    DELIVERED(2, Kind.SOURCED_DAY, false),
    FIRST_USED(2, Kind.SOURCED_DAY, false),
    HOURS(2, Kind.SOURCED_COUNT, false),
    ACRES(2, Kind.SOURCED_COUNT, false),
    REGISTERED(2, Kind.YES_NO, false),
    VALUE(2, Kind.AMOUNT, false),
    COMPLAINT(3, Kind.TEXT, true),
    COMPLAINT_CODE(3, Kind.PICKED, true),
    CONDITIONS(3, Kind.TEXT, false),
    ALREADY_SWAPPED(3, Kind.TEXT, false),
    PRODUCT(3, Kind.TEXT, true),
    LAST_FLUSH(3, Kind.TEXT, false),
    PLANTER(3, Kind.TEXT, false),
    DECLARED_CLEAN(4, Kind.YES_NO, true),
    CONFIRMED_BY(4, Kind.TEXT, false),
    RINSES(4, Kind.COUNT, false),
    /** Why an intake takes the place of the one before. */
    WHY_AGAIN(4, Kind.TEXT, false);

    /** How many pages there are. */
    public static final int PAGES = 5;

    private final int page;
    private final Kind kind;
    private final boolean needed;

    IntakeField(int page, Kind kind, boolean needed) {
        this.page = page;
        this.kind = kind;
        this.needed = needed;
    }

    /** How it is filled in. */
    public enum Kind {
        TEXT,
        /** From a list. */
        PICKED,
        YES_NO,
        DAY,
        AMOUNT,
        COUNT,
        /** A day, and who says so. */
        SOURCED_DAY,
        /** A count, and who says so. */
        SOURCED_COUNT;

        /** Whether somebody must say where it comes from. */
        public boolean sourced() {
            return this == SOURCED_DAY || this == SOURCED_COUNT;
        }
    }

    /** Those of a page, from 0. */
    public static List<IntakeField> ofPage(int page) {
        return Arrays.stream(values()).filter(each -> each.page == page).toList();
    }

    /** On which page, from 0. */
    public int page() {
        return page;
    }

    /** How it is filled in. */
    public Kind kind() {
        return kind;
    }

    /** Whether a unit is not tested without it. */
    public boolean needed() {
        return needed;
    }

    /** Key of its name. */
    public String key() {
        return "ui.claim.intake." + name().toLowerCase(Locale.ROOT);
    }
}
