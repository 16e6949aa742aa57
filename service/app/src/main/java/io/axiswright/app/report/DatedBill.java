package io.axiswright.app.report;

import io.axiswright.engine.bill.BillResult;
import java.time.LocalDate;

/**
 * A bill as it was on some day, which its documents bear.
 *
 * @param bill the bill
 * @param day the day (UTC)
 */
public record DatedBill(BillResult bill, LocalDate day) {}
