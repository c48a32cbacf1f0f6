import { z } from "zod";
import { findSettings } from "@/server/data/academy-settings";
import { newId } from "@/server/data/new-id";
import {
  deleteRate,
  endRates,
  insertRate,
  isRateCharged,
  lastChargedOn,
  listRates,
} from "@/server/data/rates";
import { Refusal } from "@/server/domain/errors/refusal";
import { CHARGE_KINDS } from "@/server/domain/ledger/charge-kind";
import { changePrice, endsWithout } from "@/server/domain/ledger/price-change";
import { checkRates, type Rate } from "@/server/domain/ledger/rates";
import { calendarDay } from "@/server/domain/people/athlete-record";
import { dayInWords } from "@/server/domain/time/words";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { router } from "../trpc";

const kind = z.enum(CHARGE_KINDS);
const priceCents = z.int().min(0).max(100_000_000);
const rateId = z.string().min(1).max(60);

export const ratesRouter = router({
  /** Every price there is, was or will be, and the currency of new ones. */
  list: query({
    action: "ledger.view",
    input: z.strictObject({}),
    output: z.strictObject({
      currency: z.string(),
      rates: z.array(
        z.strictObject({
          id: rateId,
          kind,
          priceCents,
          currency: z.string(),
          effectiveFrom: calendarDay,
          effectiveTo: calendarDay.nullable(),
        }),
      ),
    }),
    run: async ({ db }) => ({
      currency: (await findSettings(db))?.currency ?? "USD",
      rates: await listRates(db),
    }),
  }),

  /** Sets the price of a kind from a day on; what was charged before stays as it was. */
  setPrice: command({
    action: "academy.edit",
    input: z.strictObject({ kind, priceCents, effectiveFrom: calendarDay }),
    output: z.strictObject({ rateId }),
    async run(scope, input) {
      const { db } = scope;
      const currency = (await findSettings(db))?.currency ?? "USD";
      const rates = await listRates(db);
      const fresh = { ...input, id: newId("rat"), currency };
      const change = changePrice(rates, fresh, await lastChargedOn(db, input.kind));
      if (!change.ok) {
        const why = `Work of this kind is charged already up to then; a new price can begin on ${dayInWords(change.earliestDay, { withYear: true })}.`;
        throw new Refusal({ reason: "settings_invalid", why });
      }
      refuseOverlap([...rates.map((rate) => endedBy(change.ends, rate)), change.added]);
      await endRates(db, change.ends);
      await insertRate(db, change.added);
      await noteAct(scope, "rate.set", fresh.id, { ...input, currency });
      return { rateId: fresh.id };
    },
  }),

  /** Takes out a price that nothing was charged under; the one before it goes on in its place. */
  remove: command({
    action: "academy.edit",
    input: z.strictObject({ rateId }),
    output: done,
    async run(scope, input) {
      const rates = await listRates(scope.db);
      const removed = rates.find((rate) => rate.id === input.rateId);
      if (!removed) throw new Refusal({ reason: "not_found" });
      if (await isRateCharged(scope.db, removed.id))
        throw new Refusal({ reason: "in_use", what: "This price" });
      await deleteRate(scope.db, removed.id);
      await endRates(scope.db, endsWithout(rates, removed));
      const { kind: of, effectiveFrom } = removed;
      await noteAct(scope, "rate.removed", removed.id, {
        kind: of,
        effectiveFrom,
        priceCents: removed.priceCents,
        currency: removed.currency,
      });
      return DONE;
    },
  }),
});

function endedBy(ends: readonly { rateId: string; effectiveTo: string | null }[], rate: Rate): Rate {
  const end = ends.find((each) => each.rateId === rate.id);
  return end ? { ...rate, effectiveTo: end.effectiveTo } : rate;
}

function refuseOverlap(rates: readonly Rate[]): void {
  if (checkRates(rates).length > 0) throw new Refusal({ reason: "rates_overlap" });
}
