package org.pumpwright.host.ui.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.Source;
import org.pumpwright.host.claim.TimeInUse;

/** A unit is taken in page by page, and its intake is corrected later. */
final class ClaimIntakeScreenTest extends DeskWindow {
    @Test
    void aUnitIsTakenInPageByPage() throws Exception {
        press(KeyCode.F2);
        assertThat(said("claim-need")).isEqualTo("Write or scan the claim number.");
        assertThat(off("action-3")).isTrue();
        type("intake-CLAIM", "no / number");
        assertThat(said("claim-need")).startsWith("A claim number has letters");
        looksGood("claim-intake-wrong");
        type("intake-CLAIM", "EX-2002");
        type("intake-RECEIVED", "2026-02-27");
        type("intake-TAKEN_BY", "Robin Example");
        type("intake-BROUGHT_BY", "Sam Example");
        looksGood("claim-intake-1");
        press(KeyCode.F1);
        fire("intake-KIND");
        until(() -> window.scene().lookup("#prompt").isVisible());
        press(KeyCode.F1);
        type("intake-DATE_CODE", "2512");
        fire("intake-PRACTICE-yes");
        looksGood("claim-intake-2");
        press(KeyCode.F1);
        useOfTheUnit();
        press(KeyCode.F1);
        fire("intake-COMPLAINT_CODE");
        until(() -> window.scene().lookup("#prompt").isVisible());
        looksGood("claim-complaint");
        press(KeyCode.F1);
        looksGood("claim-intake-4");
        press(KeyCode.F1);
        fire("intake-DECLARED_CLEAN-no");
        looksGood("claim-intake-5");
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().isPresent());
        free();
        whatWasTypedIsOnRecord();
        looksGood("claim-incomplete");
    }

    private void useOfTheUnit() throws Exception {
        type("intake-SOLD", "10/2/2025");
        assertThat(said("claim-need")).isEqualTo("Bought on: write the day as 2026-03-15.");
        type("intake-SOLD", "2025-02-10");
        assertThat(said("claim-need")).isEqualTo("Bought on: press who says so.");
        fire("source-SOLD-DOCUMENT");
        type("intake-FIRST_USED", "2025-04-20");
        fire("source-FIRST_USED-CUSTOMER");
        type("intake-HOURS", "120.5");
        fire("source-HOURS-UNKNOWN");
        fire("intake-REGISTERED-yes");
        type("intake-VALUE", "450.00");
        assertThat(said("claim-need")).isEmpty();
        looksGood("claim-intake-3");
    }

    private void whatWasTypedIsOnRecord() throws Exception {
        assertThat(file().intake().received().toLocalDate()).isEqualTo(LocalDate.of(2026, 2, 27));
        TimeInUse use = file().intake().use();
        assertThat(use.sold().orElseThrow().value()).isEqualTo(LocalDate.of(2025, 2, 10));
        assertThat(use.sold().orElseThrow().source()).isEqualTo(Source.DOCUMENT);
        assertThat(use.firstUsed().orElseThrow().source()).isEqualTo(Source.CUSTOMER);
        assertThat(use.hours().orElseThrow().value()).isEqualTo(120.5);
        assertThat(use.registered()).contains(true);
        assertThat(file().intake().value().orElseThrow().text()).isEqualTo("450.00");
        assertThat(file().intake().unit().dateCode()).contains("2512");
        assertThat(file().intake().practice()).isTrue();
        assertThat(file().missing())
                .contains(Missing.PRODUCT, Missing.SERIAL)
                .doesNotContain(Missing.KIND, Missing.BROUGHT_BY, Missing.COMPLAINT_CODE, Missing.SALE_DATE);
    }

    @Test
    void anIntakeWithGapsIsKeptAtOnceAndCompletedLaterWithAReason() throws Exception {
        press(KeyCode.F2);
        type("intake-CLAIM", "EX-2003");
        press(KeyCode.F3);
        until(() -> model.shownProperty().get().isPresent());
        free();
        press(KeyCode.F1);
        assertThat(onScreen(() -> window.scene().lookup("#intake-CLAIM").isDisabled()))
                .isTrue();
        type("intake-CUSTOMER", "Example Acres (invented)");
        press(KeyCode.F1);
        press(KeyCode.F1);
        press(KeyCode.F1);
        type("intake-PRODUCT", "unknown");
        press(KeyCode.F1);
        type("intake-WHY_AGAIN", "");
        assertThat(said("claim-need")).isEqualTo("Write why the intake is corrected.");
        type("intake-WHY_AGAIN", "the customer called back");
        looksGood("claim-intake-again");
        press(KeyCode.F1);
        until(() -> !model.shownProperty().get().orElseThrow().file().missing().contains(Missing.PRODUCT));
        free();
        assertThat(file().corrections().get(0).reason()).isEqualTo("the customer called back");
    }

    @Test
    void aScannerTypesIntoTheFieldThatHasTheKeyboard() throws Exception {
        press(KeyCode.F2);
        scan("EX-2004");
        assertThat(typed("intake-CLAIM")).isEqualTo("EX-2004");
        press(KeyCode.F1);
        onScreen(() -> {
            window.scene().lookup("#intake-TAG").requestFocus();
            return true;
        });
        scan("T-4711");
        assertThat(typed("intake-TAG")).isEqualTo("T-4711");
        assertThat(onScreen(() -> model.shownProperty().get())).isEmpty();
    }
}
