import { z } from "zod";
import type { Db } from "@/db/client";
import { findSettings } from "@/server/data/academy-settings";
import { athleteScope } from "@/server/data/access";
import { guardiansOf, setGuardiansGranted } from "@/server/data/athlete-records";
import { appendConsent, consentIsLive, consentRecord } from "@/server/data/consents";
import { tellFamily, tellPerson } from "@/server/data/notices";
import { findPerson } from "@/server/data/people";
import { may } from "@/server/domain/access/rights";
import { CONSENT_KINDS, type ConsentKind, VIDEO_CONSENT } from "@/server/domain/people/consent";
import { fullName, isOfAge } from "@/server/domain/people/person";
import type { Scope } from "../context";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { router } from "../trpc";

const athleteId = z.string().min(1).max(60);
const locate = (db: Db, input: { athleteId: string }) => athleteScope(db, input.athleteId);

export const consentRouter = router({
  /** Whether video is consented to, under which text, who decided when, and who of the guardians can see. */
  state: query({
    action: "consent.view",
    input: z.strictObject({ athleteId }),
    output: z.strictObject({
      givenName: z.string(),
      isLive: z.boolean(),
      lines: z.array(z.string()),
      retentionDays: z.number(),
      mayDecide: z.boolean(),
      /** Only the family sees who decided. */
      history: z.array(
        z.strictObject({
          id: z.string(),
          kind: z.enum(CONSENT_KINDS),
          isThisText: z.boolean(),
          atMs: z.number(),
          byName: z.string(),
        }),
      ),
      isOfAge: z.boolean(),
      mayGrant: z.boolean(),
      grantsGuardians: z.boolean(),
      guardianNames: z.array(z.string()),
      zone: z.string(),
    }),
    athlete: locate,
    async run(scope) {
      const { db, athlete, relations } = scope;
      const person = await findPerson(db, athlete.personId);
      const isFamily = may("clip.send", relations);
      const guardians = isFamily ? await guardiansOf(db, athlete.athleteId) : [];
      return {
        givenName: person?.givenName ?? "",
        isLive: await consentIsLive(db, athlete.athleteId, "video"),
        lines: [...VIDEO_CONSENT.lines],
        retentionDays: (await findSettings(db))?.clipRetentionDays ?? 0,
        mayDecide: may("consent.decide", relations),
        history: isFamily ? await historyOf(db, athlete.athleteId) : [],
        isOfAge: isOfAge(athlete.bornOn, scope.today),
        mayGrant: may("guardians.grant", relations),
        grantsGuardians: athlete.grantsGuardians,
        guardianNames: guardians.map(fullName),
        zone: athlete.zone,
      };
    },
  }),

  /** Gives or withdraws consent to video; deciding the same again writes nothing. The coach and the family are told. */
  decide: command({
    action: "consent.decide",
    input: z.strictObject({ athleteId, kind: z.enum(CONSENT_KINDS) }),
    output: done,
    athlete: locate,
    async run(scope, { kind }) {
      const { db, athlete, nowMs, actor } = scope;
      const isLive = await consentIsLive(db, athlete.athleteId, "video");
      if (isLive === (kind === "given")) return DONE;
      await appendConsent(db, {
        athleteId: athlete.athleteId,
        personId: actor.personId,
        purpose: "video",
        kind,
        atMs: nowMs,
      });
      await tellOfChange(scope, kind);
      await noteAct(scope, `consent.${kind}`, athlete.athleteId, { textVersion: VIDEO_CONSENT.version });
      return DONE;
    },
  }),

  /** Lets guardians of an athlete of age go on seeing the record, or ends it at once. */
  grantGuardians: command({
    action: "guardians.grant",
    input: z.strictObject({ athleteId, grants: z.boolean() }),
    output: done,
    athlete: locate,
    async run(scope, { grants }) {
      await setGuardiansGranted(scope.db, scope.athlete.athleteId, grants);
      await noteAct(scope, "guardians.granted", scope.athlete.athleteId, { grants });
      return DONE;
    },
  }),
});

async function historyOf(db: Db, id: string) {
  return (await consentRecord(db, id)).map((row) => ({
    id: row.id,
    kind: row.kind,
    isThisText: row.textVersion === VIDEO_CONSENT.version,
    atMs: row.atMs,
    byName: fullName({ givenName: row.byGivenName, familyName: row.byFamilyName }),
  }));
}

async function tellOfChange({ db, athlete, nowMs }: Scope, kind: ConsentKind): Promise<void> {
  const name = (await findPerson(db, athlete.personId))?.givenName ?? "";
  const body =
    kind === "given"
      ? `Consent to video of ${name} was given. Clips can be sent and opened.`
      : `Consent to video of ${name} was withdrawn. No clip of ${name} can be sent or opened any more.`;
  const text = { kind: "consent_changed", subject: `Consent to video of ${name}: ${kind}`, body } as const;
  await tellFamily(db, athlete.athleteId, text, nowMs);
  if (athlete.coachPersonId) await tellPerson(db, athlete.coachPersonId, text, nowMs, athlete.athleteId);
}
