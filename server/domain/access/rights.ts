import type { Relation } from "./relation";

const FAMILY = ["self_minor", "self_of_age", "guardian", "granted_guardian"] as const;
/** Those who decide for the athlete: the guardian of a minor, an athlete of age for themselves. */
const DECIDES = ["self_of_age", "guardian"] as const;
const COACHES = ["assigned_coach", "other_coach"] as const;
const STAFF = ["assigned_coach", "other_coach", "admin"] as const;
const ACADEMY_STAFF = ["coach", "admin"] as const;

/**
 * The one table of who may do what: action -> the relations that may. An action not listed may be done by nobody.
 * Names are `<capability>.<act>`; every procedure and route handler names the one it needs.
 */
export const RIGHTS = {
  "account.signIn": ["anyone"],
  "account.useLink": ["anyone"],
  "account.askReset": ["anyone"],
  "account.startAcademy": ["anyone"],
  "account.own": ["signed_in"],

  "people.staffView": ACADEMY_STAFF,
  "people.manage": ["admin"],
  "athlete.view": [...FAMILY, ...STAFF],
  "athlete.edit": [...STAFF],
  "consent.view": [...FAMILY, ...STAFF],
  "consent.decide": DECIDES,
  "guardians.grant": ["self_of_age"],

  "clip.send": FAMILY,
  "clip.watch": [...FAMILY, ...STAFF],
  "clip.poster": [...FAMILY, ...COACHES],

  "queue.view": ACADEMY_STAFF,
  "round.view": [...FAMILY, ...STAFF],
  "round.take": COACHES,
  "round.handOver": STAFF,
  "round.askRetake": COACHES,
  "round.withdraw": [...DECIDES, ...STAFF],
  "review.room": STAFF,
  "review.write": COACHES,
  "review.read": [...FAMILY, ...STAFF],
  "remeasure.withdraw": STAFF,
  "agreement.view": ACADEMY_STAFF,
  "agreement.manage": ["admin"],
  "agreement.rate": COACHES,
  "practice.tick": FAMILY,
  "correction.retire": COACHES,

  "evidence.view": STAFF,

  "report.view": [...FAMILY, ...STAFF],
  "report.write": COACHES,
  /* A link opens a record to strangers, and no consent on record covers that: who decides for the athlete does it. */
  "report.share": DECIDES,
  "report.revoke": [...DECIDES, ...STAFF],
  "report.open": ["anyone"],

  "calendar.staffView": ACADEMY_STAFF,
  "calendar.findTimes": [...DECIDES, ...STAFF],
  "session.book": [...DECIDES, ...STAFF],
  "session.change": [...DECIDES, ...STAFF],
  "session.view": [...FAMILY, ...STAFF],
  "session.staffView": STAFF,
  "session.run": COACHES,

  "throwing.view": [...FAMILY, ...STAFF],
  "throwing.log": [...FAMILY, ...STAFF],
  "throwing.import": STAFF,
  "throwing.staffView": ACADEMY_STAFF,
  "team.manage": [...DECIDES, ...STAFF],
  "throwing.override": ["admin"],
  "pain.report": [...FAMILY, ...STAFF],
  "pain.clear": DECIDES,

  "ledger.view": ["admin"],
  "ledger.export": ["admin"],
  "academy.staffView": ACADEMY_STAFF,
  "academy.edit": ["admin"],
  "notices.view": ["admin"],
  "audit.view": ["admin"],
} as const satisfies Record<string, readonly Relation[]>;

export type Action = keyof typeof RIGHTS;

/** Whether any of the relations may do the action. */
export function may(action: Action, relations: ReadonlySet<Relation>): boolean {
  return RIGHTS[action].some((relation: Relation) => relations.has(relation));
}
