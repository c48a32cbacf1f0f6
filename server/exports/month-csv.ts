import { stringify } from "csv-stringify/sync";
import { chargeKindLabel } from "@/server/domain/ledger/charge-kind";
import type { MonthBooks } from "@/server/domain/ledger/month";
import type { MonthRow, MonthRowState } from "@/server/domain/ledger/month-records";
import { type CurrencyCode, decimalText } from "@/server/domain/money/money";
import { startsLikeFormula } from "@/server/domain/text/starts-like-formula";

/** The columns of the month's file, in order. */
export const MONTH_COLUMNS = [
  "Date",
  "Start",
  "Site",
  "Kind",
  "Athlete",
  "Coach",
  "Minutes",
  "Pitches",
  "Rate",
  "Amount",
  "Currency",
  "State",
  "Reference",
] as const;

type Cells = Readonly<Record<(typeof MONTH_COLUMNS)[number], string>>;

const STATE_WORDS: Readonly<Record<MonthRowState, string>> = {
  booked: "booked",
  checked_in: "checked in",
  logged: "logged",
  cancelled: "cancelled",
  no_show: "no-show",
  sent: "sent",
};

/**
 * The month as CSV text by RFC 4180: a header row, a comma between fields, CRLF after every row, quotes where they
 * are needed. To be served as UTF-8 without a byte order mark. Amounts are plain decimals and stay numbers, negative
 * ones too; every cell of text is made safe against being run as a formula. The last row (one for each currency) has
 * "Total" for its date and the sum of the rows above; a month of nothing has a total of 0.
 * @param books.currency for the total of a month of nothing
 */
export function monthCsv(books: MonthBooks & { currency: CurrencyCode }): string {
  const totals = books.grand.length > 0 ? books.grand : [emptyTotal(books.currency)];
  const cells = [...books.rows.map(rowCells), ...totals.map(totalCells)];
  return stringify(cells, {
    columns: [...MONTH_COLUMNS],
    header: true,
    record_delimiter: "windows",
    quote_record_delimiter: true,
  });
}

/**
 * Text that a spreadsheet program will not run: an apostrophe goes before a cell that {@link startsLikeFormula}.
 * @example spreadsheetSafe("=1+1") // "'=1+1"
 */
export function spreadsheetSafe(text: string): string {
  return startsLikeFormula(text) ? `'${text}` : text;
}

function rowCells(row: MonthRow): Cells {
  return {
    Date: row.day,
    Start: row.startTime,
    Site: spreadsheetSafe(row.siteName),
    Kind: chargeKindLabel(row.kind),
    Athlete: spreadsheetSafe(row.athleteName),
    Coach: spreadsheetSafe(row.coachName),
    Minutes: numberText(row.minutes),
    Pitches: numberText(row.pitches),
    Rate: row.rateCents === null ? "" : decimalText(row.rateCents, row.currency),
    Amount: decimalText(row.amountCents, row.currency),
    Currency: row.currency,
    State: STATE_WORDS[row.state],
    Reference: spreadsheetSafe(row.referenceId),
  };
}

function totalCells(total: MonthBooks["grand"][number]): Cells {
  const blank = { Start: "", Site: "", Kind: "", Athlete: "", Coach: "", Rate: "", State: "", Reference: "" };
  return {
    ...blank,
    Date: "Total",
    Minutes: String(total.minutes),
    Pitches: String(total.pitches),
    Amount: decimalText(total.amountCents, total.currency),
    Currency: total.currency,
  };
}

function emptyTotal(currency: CurrencyCode): MonthBooks["grand"][number] {
  return { key: "all", currency, rowCount: 0, minutes: 0, pitches: 0, amountCents: 0 };
}

function numberText(value: number | null): string {
  return value === null ? "" : String(value);
}
