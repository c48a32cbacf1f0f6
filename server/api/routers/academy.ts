import { z } from "zod";
import { academyCounts } from "@/server/data/academy-counts";
import { findSettings, saveSettings } from "@/server/data/academy-settings";
import { firstBrokenAuditRow } from "@/server/data/audit";
import { listActs } from "@/server/data/audit-record";
import { countActiveCheckpoints } from "@/server/data/checkpoints";
import { listRates } from "@/server/data/rates";
import { listSites } from "@/server/data/sites";
import { Refusal } from "@/server/domain/errors/refusal";
import { academySettings } from "@/server/domain/people/academy-settings";
import { currencyCode } from "@/server/domain/people/starting-academy";
import { SETTING_UP, stillToSet } from "@/server/domain/people/still-to-set";
import { dayOf } from "@/server/domain/time/calendar-day";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { router } from "../trpc";

const nothing = z.strictObject({});
const version = z.int().min(1);
const page = z.int().min(1).max(100_000);
const settingsForm = academySettings.extend({ currency: currencyCode });

/** Rows on one page of the record. */
const RECORD_PAGE_SIZE = 50;

export const academyRouter = router({
  /** What the academy has set, and what is still missing before it can work. */
  overview: query({
    action: "academy.staffView",
    input: nothing,
    output: z.strictObject({
      settings: academySettings,
      counts: z.strictObject({
        sites: z.number(),
        sitesWithHours: z.number(),
        lanes: z.number(),
        coaches: z.number(),
        coachesWithHours: z.number(),
        pricedKinds: z.number(),
        athletes: z.number(),
      }),
      checkpoints: z.number(),
      missing: z.array(z.enum(SETTING_UP)),
    }),
    async run({ db, nowMs }) {
      const kept = await keptSettings(db);
      const [first] = await listSites(db, "9999-12-31");
      const counts = await academyCounts(db, dayOf(nowMs, first?.zone ?? "UTC"));
      const { isDemo, version: _, ...settings } = kept;
      return { settings, counts, checkpoints: await countActiveCheckpoints(db), missing: stillToSet(counts) };
    },
  }),

  /** The settings as they stand, with the version that a change must name. */
  settings: query({
    action: "academy.staffView",
    input: nothing,
    output: z.strictObject({ settings: academySettings, version, isCurrencyInUse: z.boolean() }),
    async run({ db }) {
      const { isDemo, version: at, ...settings } = await keptSettings(db);
      return { settings, version: at, isCurrencyInUse: (await listRates(db)).length > 0 };
    },
  }),

  /** Saves the settings over the version they were read at. */
  saveSettings: command({
    action: "academy.edit",
    input: z.strictObject({ settings: settingsForm, version }),
    output: done,
    async run(scope, input) {
      const before = await keptSettings(scope.db);
      const isNewCurrency = before.currency !== input.settings.currency;
      if (isNewCurrency && (await listRates(scope.db)).length > 0) {
        const why = `Prices are kept in ${before.currency} already, so the currency cannot change.`;
        throw new Refusal({ reason: "settings_invalid", why });
      }
      if (!(await saveSettings(scope.db, input.settings, input.version))) {
        throw new Refusal({ reason: "changed_meanwhile" });
      }
      const { name: _, ...figures } = input.settings;
      await noteAct(scope, "academy.settings", "academy", figures);
      return DONE;
    },
  }),

  /** One page of the record of who did what, latest first, and whether its chain of hashes is whole. */
  record: query({
    action: "audit.view",
    input: z.strictObject({ page }),
    output: z.strictObject({
      rows: z.array(
        z.strictObject({
          sequence: z.number(),
          atMs: z.number(),
          actorName: z.string().nullable(),
          action: z.string(),
          subjectId: z.string(),
          subjectName: z.string().nullable(),
          facts: z.record(z.string(), z.union([z.string(), z.number(), z.boolean(), z.null()])),
        }),
      ),
      total: z.number(),
      pageSize: z.number(),
      /** The first row that does not fit the chain; null when every row does. */
      firstBroken: z.number().nullable(),
    }),
    async run({ db }, input) {
      const offset = (input.page - 1) * RECORD_PAGE_SIZE;
      const { rows, total } = await listActs(db, { limit: RECORD_PAGE_SIZE, offset });
      return { rows, total, pageSize: RECORD_PAGE_SIZE, firstBroken: await firstBrokenAuditRow(db) };
    },
  }),
});

async function keptSettings(db: Parameters<typeof findSettings>[0]) {
  const kept = await findSettings(db);
  if (!kept) throw new Refusal({ reason: "not_found" });
  return kept;
}
