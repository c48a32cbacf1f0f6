import { z } from "zod";
import type { Db } from "@/db/client";
import { findSettings } from "@/server/data/academy-settings";
import { placeNames } from "@/server/data/academy-time";
import { firstMonth, monthRecords } from "@/server/data/months";
import { listRates } from "@/server/data/rates";
import { CHARGE_KINDS, chargeKindLabel } from "@/server/domain/ledger/charge-kind";
import { type MonthBooks, monthRows } from "@/server/domain/ledger/month";
import { monthByRates } from "@/server/domain/ledger/month-by-rates";
import type { MonthDifference } from "@/server/domain/ledger/month-differences";
import type { MonthRow } from "@/server/domain/ledger/month-records";
import { type ToMend, toMend } from "@/server/domain/ledger/to-mend";
import { formatMoney } from "@/server/domain/money/money";
import { addMonths, dayOf } from "@/server/domain/time/calendar-day";
import { dayInWords, momentInWords } from "@/server/domain/time/words";
import type { Scope } from "../context";

const sum = z.strictObject({ currency: z.string(), amountCents: z.number() });
const total = z.strictObject({
  name: z.string(),
  currency: z.string(),
  rowCount: z.number(),
  minutes: z.number(),
  pitches: z.number(),
  amountCents: z.number(),
});

/** A month as the ledger shows it. */
export const monthBooks = z.strictObject({
  month: z.string(),
  thisMonth: z.string(),
  before: z.string().nullable(),
  after: z.string().nullable(),
  currency: z.string(),
  counts: z.strictObject({ sessions: z.number(), reviews: z.number(), charges: z.number() }),
  byRates: z.array(sum),
  fromRows: z.array(sum),
  fromCharges: z.array(sum),
  agree: z.boolean(),
  toMend: z.array(z.strictObject({ words: z.string(), href: z.string().nullable(), act: z.string() })),
  rows: z.array(
    z.strictObject({
      key: z.string(),
      day: z.string(),
      startTime: z.string(),
      siteName: z.string(),
      kind: z.enum(CHARGE_KINDS),
      kindLabel: z.string(),
      athleteName: z.string(),
      coachName: z.string(),
      minutes: z.number().nullable(),
      pitches: z.number().nullable(),
      amountCents: z.number(),
      currency: z.string(),
      state: z.string(),
      href: z.string(),
    }),
  ),
  byKind: z.array(total),
  byCoach: z.array(total),
});

/** The books of a month; without one, of this month by the first site's calendar. */
export async function readMonth(
  { db, nowMs }: Pick<Scope, "db" | "nowMs">,
  input: { month: string | null },
): Promise<z.input<typeof monthBooks>> {
  const currency = (await findSettings(db))?.currency ?? "USD";
  const zone = (await placeNames(db)).sites[0]?.zone ?? "UTC";
  const thisMonth = dayOf(nowMs, zone).slice(0, 7);
  const month = input.month ?? thisMonth;
  const records = await monthRecords(db, month, currency);
  const rates = await listRates(db);
  const books = monthRows(records);
  const byRates = monthByRates({ ...records, rows: books.rows }, rates);
  const fromRows = books.grand.map(({ currency: each, amountCents }) => ({ currency: each, amountCents }));
  const { fromCharges } = books;
  return {
    ...{ month, thisMonth, currency, byRates, fromRows, fromCharges },
    ...(await neighbours(db, month, thisMonth)),
    counts: countsOf(books, records.charges.length),
    agree: books.agree && isSame(byRates, fromCharges) && isSame(fromRows, fromCharges),
    toMend: toMend(records, books.differences, rates, nowMs).map((one) => shownMend(one, books.rows)),
    rows: books.rows.map(shownRow),
    byKind: books.byKind.map(({ key, ...rest }) => ({
      ...rest,
      name: chargeKindLabel(key as (typeof CHARGE_KINDS)[number]),
    })),
    byCoach: books.byCoach
      .map(({ key, ...rest }) => ({
        ...rest,
        name: books.rows.find((row) => row.coachId === key)?.coachName ?? "",
      }))
      .sort((a, b) => a.name.localeCompare(b.name)),
  };
}

async function neighbours(db: Db, month: string, thisMonth: string) {
  const step = (months: number) => addMonths(`${month}-01`, months).slice(0, 7);
  const first = (await firstMonth(db)) ?? thisMonth;
  return { before: step(-1) >= first ? step(-1) : null, after: step(1) <= thisMonth ? step(1) : null };
}

function countsOf(books: MonthBooks, charges: number) {
  const held = books.rows.filter((row) => row.state === "logged");
  return {
    sessions: new Set(held.map((row) => row.referenceId)).size,
    reviews: books.rows.filter((row) => row.kind === "review").length,
    charges,
  };
}

/** The same sum in every currency; one that comes to nothing may be missing. */
function isSame(one: readonly z.input<typeof sum>[], other: readonly z.input<typeof sum>[]): boolean {
  const currencies = new Set([...one, ...other].map((each) => each.currency));
  const amount = (list: typeof one, currency: string) =>
    list.find((each) => each.currency === currency)?.amountCents ?? 0;
  return [...currencies].every((currency) => amount(one, currency) === amount(other, currency));
}

const STATE_WORDS: Record<MonthRow["state"], string> = {
  booked: "Booked",
  checked_in: "Checked in",
  logged: "Logged",
  cancelled: "Cancelled",
  no_show: "No-show",
  sent: "Sent",
};

function shownRow(row: MonthRow): z.input<typeof monthBooks>["rows"][number] {
  const { day, startTime, siteName, kind, athleteName, coachName, minutes, pitches, amountCents, currency } =
    row;
  return {
    ...{ day, startTime, siteName, kind, athleteName, coachName, minutes, pitches, amountCents, currency },
    key: `${row.referenceId}:${row.athleteId}:${kind}`,
    kindLabel: chargeKindLabel(kind),
    state: STATE_WORDS[row.state],
    href: hrefOf(row),
  };
}

const hrefOf = ({ kind, referenceId }: Pick<MonthRow, "kind" | "referenceId">) =>
  kind === "review" ? `/reviews/${referenceId}` : `/calendar/${referenceId}`;

function shownMend(one: ToMend, rows: readonly MonthRow[]): z.input<typeof monthBooks>["toMend"][number] {
  if (one.mend === "not_logged") {
    const when = momentInWords(one.startsAtMs, one.zone);
    return {
      words: `Not logged: ${when}, ${one.names.join(", ")}`,
      href: `/calendar/${one.sessionId}`,
      act: "Log it",
    };
  }
  if (one.mend === "no_rate") {
    const { kind, day, sessions } = one;
    const count = sessions === 1 ? "1 session" : `${sessions} sessions`;
    const words = `No rate for ${chargeKindLabel(kind).toLowerCase()} from ${dayInWords(day)}: ${count} cannot be logged`;
    return { words, href: "/academy/rates", act: "Set a rate" };
  }
  return shownDifference(one.difference, rows);
}

function shownDifference(difference: MonthDifference, rows: readonly MonthRow[]) {
  const rowOf = (referenceId: string) => rows.find((row) => row.referenceId === referenceId);
  switch (difference.difference) {
    case "no_charge": {
      const row = rowOf(difference.referenceId);
      const what = row
        ? `${chargeKindLabel(row.kind)} of ${row.athleteName}, ${dayInWords(row.day)}`
        : "A row";
      return { words: `No charge: ${what}`, href: row ? hrefOf(row) : null, act: "Look at it" };
    }
    case "charged_though_not_held": {
      const row = rowOf(difference.referenceId);
      const what = row ? `${row.athleteName}, ${dayInWords(row.day)}` : "a session";
      return { words: `Charged though not held: ${what}`, href: row ? hrefOf(row) : null, act: "Look at it" };
    }
    case "charge_without_row":
      return { words: `Charge ${difference.chargeId} belongs to no session or review`, href: null, act: "" };
    case "charge_differs_from_rate":
      return { words: `Charge ${difference.chargeId} is not the price of its rate`, href: null, act: "" };
    case "totals_differ": {
      const { currency, fromRowsCents, fromChargesCents } = difference;
      const words = `Rows give ${formatMoney(fromRowsCents, currency)}, charges ${formatMoney(fromChargesCents, currency)}`;
      return { words, href: null, act: "" };
    }
  }
}
