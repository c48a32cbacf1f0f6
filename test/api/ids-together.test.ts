import { beforeAll, describe, expect, it } from "vitest";
import { lane, site } from "@/db/schema/sites";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { EMPTY_CHECK_DRAFT, EMPTY_REVIEW_DRAFT } from "@/server/domain/reviews/draft";
import { type TestAcademy, WHO, ZONE } from "../helpers/academy";
import type { AthleteRecord } from "../helpers/athlete-record";
import { makeBusyAcademy } from "../helpers/busy-academy";
import { callByPath } from "../helpers/call-by-path";
import { bullpen, refusalOf } from "../helpers/sessions";

type Names = "child" | "teen" | "adult" | "stranger";
type Step = [who: string, path: string, input: object];

let academy: TestAcademy;
let records: Record<Names, AthleteRecord>;

beforeAll(async () => {
  ({ academy, records } = await makeBusyAcademy());
  await academy.db.insert(site).values({ id: "site_south", name: "South", zone: ZONE, address: "" });
  await academy.db
    .insert(lane)
    .values({ id: "lane_south", siteId: "site_south", name: "Lane 1", kind: "mound" });
});

const { guardian, coach, admin } = WHO;
const child = { athleteId: WHO.child.athleteId };
const said = (clipId: string) => ({
  ...{ clipId, view: "open_side", pitchType: null, pitchesThrown: 5, alreadyOnLog: true, note: "" },
  filmedOn: "2026-11-25",
});
const { roundId: _, correctionIds: __, ...place } = bullpen();
const search = {
  ...{ athleteIds: [child.athleteId], kind: "bullpen", durationMin: 30, plannedPitches: 5, roundId: null },
  ...{ fromDay: "2026-11-27", toDay: "2026-11-30", coachPersonId: null, siteId: null, wish: null },
};
const line = (athleteId: string, correctionId: string) => ({
  ...{ athleteId, attendance: "came", minutes: 15, pitches: 5, note: "" },
  work: [{ correctionId, outcome: "worked_on" }],
});
const verdict = (correctionId: string) => {
  return { correctionId, verdict: "yes", note: "", clipId: null, frame: null };
};
const checkedIn = (of: AthleteRecord): Step => [
  ...([coach, "sessions.checkIn"] as const),
  { sessionId: of.runningSession, athleteId: of.athleteId, throws: [], pain: null },
];

/** What goes before (may go through), the act that must be refused, and the refusal. */
const CASES: [string, (of: Record<Names, AthleteRecord>) => Step[], object][] = [
  [
    "a clip sent into another family's round",
    (of) => [
      [
        guardian,
        "rounds.send",
        { ...child, roundId: of.stranger.rounds.sent, clips: [said(of.child.clips.waiting)] },
      ],
    ],
    { reason: "not_found" },
  ],
  [
    "a clip sent into a sibling's round",
    (of) => [
      [
        guardian,
        "rounds.send",
        { ...child, roundId: of.teen.rounds.sent, clips: [said(of.child.clips.waiting)] },
      ],
    ],
    { reason: "not_found" },
  ],
  ...(["teen", "stranger"] as const).map((name): (typeof CASES)[number] => [
    `a clip of the ${name} sent as the child's`,
    (of) => [[guardian, "rounds.send", { ...child, roundId: null, clips: [said(of[name].clips.waiting)] }]],
    { reason: "upload_missing" },
  ]),
  [
    "a follow-up of a sibling's round",
    (of) => [[guardian, "sessions.book", bullpen({ roundId: of.teen.rounds.settled })]],
    { reason: "not_found" },
  ],
  [
    "a plan with a sibling's correction",
    (of) => [[guardian, "sessions.book", bullpen({ correctionIds: [of.teen.correction] })]],
    { reason: "not_found" },
  ],
  [
    "a lane of another site",
    () => [[guardian, "sessions.book", bullpen({ laneId: "lane_south" })]],
    { reason: "no_lane" },
  ],
  [
    "a session moved with a sibling in the athlete's place",
    (of) => {
      const athletes = [{ athleteId: of.teen.athleteId, plannedPitches: 5 }];
      return [
        [guardian, "sessions.move", { ...place, athletes, sessionId: of.child.bookedSession, version: 1 }],
      ];
    },
    { reason: "not_found" },
  ],
  [
    "times searched for moving a sibling's session",
    (of) => [[guardian, "sessions.findTimes", { ...search, moveSessionId: of.teen.bookedSession }]],
    { reason: "not_found" },
  ],
  [
    "a session read as a sibling's",
    (of) => [[guardian, "sessions.forFamily", { sessionId: of.teen.bookedSession, ...child }]],
    { reason: "not_found" },
  ],
  [
    "a place given up on a sibling's session",
    (of) => [
      [
        guardian,
        "sessions.giveUpPlace",
        { sessionId: of.teen.bookedSession, ...child, version: 1, reason: "No." },
      ],
    ],
    { reason: "not_found" },
  ],
  [
    "a check-in of somebody who is not on the session",
    (of) => [
      [coach, "sessions.checkIn", { sessionId: of.teen.runningSession, ...child, throws: [], pain: null }],
    ],
    { reason: "not_found" },
  ],
  [
    "a log that names somebody else's correction",
    (of) => [
      checkedIn(of.child),
      [
        ...([coach, "sessions.log"] as const),
        {
          ...{ sessionId: of.child.runningSession, version: 2 },
          lines: [line(of.child.athleteId, of.teen.correction)],
        },
      ],
    ],
    { reason: "not_found" },
  ],
  [
    "a log of somebody who is not on the session",
    (of) => [
      checkedIn(of.child),
      [
        ...([coach, "sessions.log"] as const),
        {
          ...{ sessionId: of.child.runningSession, version: 2 },
          lines: [line(of.teen.athleteId, of.teen.correction)],
        },
      ],
    ],
    { reason: "throw_entry_invalid", why: "Each athlete of the session stands on its log once." },
  ],
  [
    "a check with a verdict on somebody else's correction",
    (of) => {
      const open = [of.child.correction, of.child.answeredCorrection, of.teen.correction];
      const document = { ...EMPTY_CHECK_DRAFT, verdicts: open.map(verdict) };
      const roundId = of.child.rounds.answered;
      return [
        [coach, "reviews.saveDraft", { kind: "check", roundId, version: 0, document }],
        [coach, "reviews.settle", { roundId, version: 1 }],
      ];
    },
    { missing: ["a verdict names a correction that is not open any more"] },
  ],
  ...(["child", "stranger"] as const).map((name): (typeof CASES)[number] => [
    `a review with a keep on a clip of another round, the ${name}'s`,
    (of) => {
      const seen = { clipId: of[name].clips.settled, frame: 3 };
      const checkpointId = STARTING_LIBRARY[0]?.id ?? null;
      const keep = {
        id: "k1",
        checkpointId,
        phase: STARTING_LIBRARY[0]?.phase,
        text: "Balanced.",
        voiceId: null,
        ...seen,
      };
      const document = { ...EMPTY_REVIEW_DRAFT, keeps: [keep] };
      const roundId = of.child.rounds.taken;
      return [
        [coach, "reviews.saveDraft", { kind: "review", roundId, version: 0, document }],
        [coach, "reviews.send", { roundId, version: 1 }],
      ];
    },
    { missing: ["something is marked on a clip that is not in this round"] },
  ]),
  [
    "a round handed to somebody who is no coach",
    (of) => [[coach, "rounds.handOver", { roundId: of.child.rounds.taken, coachPersonId: guardian }]],
    { reason: "not_found" },
  ],
  [
    "an athlete assigned to somebody who is no coach",
    () => [[admin, "families.assignCoach", { ...child, coachPersonId: guardian }]],
    { reason: "not_found" },
  ],
  [
    "the end of a guardianship that there is not",
    () => [[admin, "families.endGuardianship", { ...child, guardianPersonId: WHO.otherGuardian }]],
    { reason: "not_a_guardian" },
  ],
];

describe("ids that must belong together", () => {
  it.each(CASES)("are refused when they do not, and nothing is written: %s", async (_name, steps, detail) => {
    await academy.discarding(async () => {
      const all = steps(records);
      for (const [who, path, input] of all.slice(0, -1)) await callByPath(academy, who, path, input);
      const [who, path, input] = all.at(-1) as Step;
      const before = academy.snapshot();
      const refusal = await refusalOf(callByPath(academy, who, path, input));
      expect(refusal).not.toBe("done");
      expect(refusal).toMatchObject(detail);
      expect(academy.snapshot()).toBe(before);
    });
  });
});
