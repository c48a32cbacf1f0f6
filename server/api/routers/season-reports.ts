import { z } from "zod";
import type { Db } from "@/db/client";
import { hashOfToken, newLinkToken } from "@/server/auth/link-token";
import { countWrongLink, refuseLinkGuesses } from "@/server/auth/sign-in-limits";
import { athleteScope } from "@/server/data/access";
import {
  findReportLink,
  insertReportLink,
  openReportLink,
  reportLinkScope,
  reportLinksOf,
  revokeReportLink,
} from "@/server/data/report-links";
import { athleteCard } from "@/server/data/season";
import { appendSeasonReport, writtenReportsOf } from "@/server/data/season-reports";
import { may } from "@/server/domain/access/rights";
import { Refusal } from "@/server/domain/errors/refusal";
import { shortName } from "@/server/domain/people/short-name";
import { FOCUS_LENGTH } from "@/server/domain/season-reports/report-in-words";
import { LINK_DAYS, linkExpiresAtMs, MOST_OPEN_LINKS } from "@/server/domain/season-reports/report-link";
import {
  firstSpan,
  offeredSpans,
  type SeasonSpan,
  spanProblem,
} from "@/server/domain/season-reports/season-span";
import { isCalendarDay } from "@/server/domain/time/calendar-day";
import { env } from "@/server/env";
import { athleteHead, headOf } from "../athlete-head";
import type { Scope } from "../context";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, openQuery, query } from "../procedures";
import { linkAnswer, linksFor } from "../season-reports/link-answer";
import { reportAnswer, reportFor } from "../season-reports/report-answer";
import { router } from "../trpc";

const id = z.string().min(1).max(60);
const day = z.string().refine(isCalendarDay, "Enter a day of the calendar.");
const span = { fromOn: day, toOn: day };
const spanAnswer = z.strictObject({ fromOn: z.string(), toOn: z.string() });
const locate = (db: Db, input: { athleteId: string }) => athleteScope(db, input.athleteId);

export const seasonReportsRouter = router({
  /** The report of a season, by default the one a coach wrote of lately or the usual one, and what can be done with it. */
  view: query({
    action: "report.view",
    input: z.strictObject({ athleteId: id, span: z.strictObject(span).nullable() }),
    output: z.strictObject({
      athlete: athleteHead,
      report: reportAnswer,
      spans: z.array(spanAnswer),
      /** Why the span that was asked for cannot be told of; another is shown then. */
      spanProblem: z.string().nullable(),
      /** The latest that was written of this span: a writer says what they had in front of them. */
      writtenId: z.string().nullable(),
      mayWrite: z.boolean(),
      mayShare: z.boolean(),
      mayRevoke: z.boolean(),
      links: z.array(linkAnswer),
    }),
    athlete: locate,
    async run(scope, input) {
      const { db, athlete, nowMs, today, relations } = scope;
      const written = await writtenReportsOf(db, athlete.athleteId);
      const problem = input.span ? spanProblem(input.span, today) : null;
      const spans = written.map(spanOf);
      const shown = input.span && problem === null ? input.span : firstSpan(today, spans);
      return {
        athlete: await headOf(scope),
        report: await reportFor(db, athlete, shown, nowMs),
        spans: offeredSpans(today, [...spans, shown]),
        spanProblem: problem,
        writtenId: written.find((each) => isSame(each, shown))?.id ?? null,
        mayWrite: may("report.write", relations),
        mayShare: may("report.share", relations),
        mayRevoke: may("report.revoke", relations),
        links: await linksFor(scope),
      };
    },
  }),

  /** Writes what the next season is for, over what the writer had in front of them; what was there before stays on record. */
  write: command({
    action: "report.write",
    input: z.strictObject({
      athleteId: id,
      ...span,
      focus: z.string().trim().min(1, "Enter a few words.").max(FOCUS_LENGTH),
      afterId: id.nullable(),
    }),
    output: done,
    athlete: locate,
    async run({ db, athlete, actor, nowMs, today }, { fromOn, toOn, focus, afterId }) {
      refuseSpan({ fromOn, toOn }, today);
      const written = await writtenReportsOf(db, athlete.athleteId);
      const latest = written.find((each) => isSame(each, { fromOn, toOn }))?.id ?? null;
      if (latest !== afterId) throw new Refusal({ reason: "changed_meanwhile" });
      const row = { athleteId: athlete.athleteId, fromOn, toOn, focus };
      await appendSeasonReport(db, { ...row, writtenByPersonId: actor.personId, writtenAtMs: nowMs });
      return DONE;
    },
  }),

  /** Makes an address under which the report is read without signing in; it is answered once and nowhere kept. */
  makeLink: command({
    action: "report.share",
    input: z.strictObject({ athleteId: id, ...span, days: z.literal(LINK_DAYS) }),
    output: z.strictObject({
      linkId: z.string(),
      expiresAtMs: z.number(),
      /** Null when a lost answer is asked for again. */
      address: z.string().nullable(),
    }),
    athlete: locate,
    async run(scope, { fromOn, toOn, days }) {
      const { db, athlete, actor, nowMs, today } = scope;
      refuseSpan({ fromOn, toOn }, today);
      await refuseTooMany(scope);
      const { token, tokenHash } = newLinkToken();
      const expiresAtMs = linkExpiresAtMs(nowMs, days);
      const made = { madeByPersonId: actor.personId, madeAtMs: nowMs, expiresAtMs };
      const { athleteId } = athlete;
      const linkId = await insertReportLink(db, { athleteId, fromOn, toOn, tokenHash, ...made });
      await noteAct(scope, "report.link_made", linkId, { athleteId, fromOn, toOn, days });
      return { linkId, expiresAtMs, address: `${env.publicUrl}/season/${token}` };
    },
    kept: (answer) => ({ ...answer, address: null }),
  }),

  /** Ends a link at once, whoever made it; one that was ended stays as it is. */
  revokeLink: command({
    action: "report.revoke",
    input: z.strictObject({ linkId: id }),
    output: done,
    athlete: (db, input) => reportLinkScope(db, input.linkId),
    async run(scope, { linkId }) {
      const { db, nowMs, athlete } = scope;
      const isEnded = await revokeReportLink(db, linkId, nowMs);
      const link = isEnded ? await findReportLink(db, linkId) : null;
      if (!link) return DONE;
      const { athleteId } = athlete;
      await noteAct(scope, "report.link_revoked", linkId, { athleteId, madeByPersonId: link.madeByPersonId });
      return DONE;
    },
  }),

  /** The report behind a link, with no more of the name than it needs; null for any link that opens nothing, whatever the reason. */
  shared: openQuery({
    action: "report.open",
    input: z.strictObject({ token: z.string().max(200) }),
    output: z
      .strictObject({
        athleteName: z.string(),
        report: reportAnswer,
        expiresAtMs: z.number(),
        zone: z.string(),
      })
      .nullable(),
    async run({ db, nowMs, address }, { token }) {
      await refuseLinkGuesses(address);
      const found = await openReportLink(db, hashOfToken(token), nowMs);
      if (!found) {
        await countWrongLink(address);
        return null;
      }
      const { link, athlete } = found;
      return {
        athleteName: shortName(await athleteCard(db, athlete.athleteId)),
        report: await reportFor(db, athlete, spanOf(link), nowMs),
        expiresAtMs: link.expiresAtMs,
        zone: athlete.zone,
      };
    },
  }),
});

const spanOf = ({ fromOn, toOn }: SeasonSpan): SeasonSpan => ({ fromOn, toOn });
const isSame = (one: SeasonSpan, other: SeasonSpan) => one.fromOn === other.fromOn && one.toOn === other.toOn;

function refuseSpan(asked: SeasonSpan, today: string): void {
  const why = spanProblem(asked, today);
  if (why !== null) throw new Refusal({ reason: "report_invalid", why });
}

async function refuseTooMany({ db, athlete, nowMs }: Scope): Promise<void> {
  const links = await reportLinksOf(db, athlete, nowMs);
  if (links.filter(({ state }) => state === "open").length < MOST_OPEN_LINKS) return;
  const why = `${MOST_OPEN_LINKS} links are open, and that is the most. Withdraw one first.`;
  throw new Refusal({ reason: "report_invalid", why });
}
