import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { EMPTY_REVIEW_DRAFT } from "@/server/domain/reviews/draft";
import { WHO } from "./academy";
import type { ExampleInput } from "./example-input";
import { kneePoints } from "./measures";

/** Clips, rounds, reviews, practice and throwing. */
export const ROUND_INPUTS: Record<string, ExampleInput> = {
  "clips.discard": (record) => ({ clipId: record.clips.waiting }),
  "clips.setCapturedRate": (record) => ({ clipId: record.clips.taken, capturedFps: null }),
  "clips.sending": (record) => ({ athleteId: record.athleteId }),
  "clips.waiting": (record) => ({ athleteId: record.athleteId }),
  "rounds.queue": () => ({}),
  "rounds.send": (record) => ({
    athleteId: record.athleteId,
    roundId: null,
    clips: [
      {
        clipId: record.clips.waiting,
        view: "open_side",
        pitchType: "fastball",
        pitchesThrown: 8,
        alreadyOnLog: false,
        note: "",
        filmedOn: "2026-11-25",
      },
    ],
  }),
  "rounds.take": (record) => ({ roundId: record.rounds.received }),
  "rounds.putBack": (record) => ({ roundId: record.rounds.taken }),
  "rounds.handOver": (record) => ({ roundId: record.rounds.taken, coachPersonId: WHO.otherCoach }),
  "rounds.askRetake": (record) => ({ roundId: record.rounds.taken, reason: "The front foot is cut off." }),
  "rounds.withdraw": (record) => ({ roundId: record.rounds.received, reason: "Sent by mistake." }),
  "reviews.list": (record) => ({ athleteId: record.athleteId }),
  "reviews.read": (record) => ({ roundId: record.rounds.sent }),
  "reviews.room": (record) => ({ roundId: record.rounds.taken }),
  "reviews.compare": (record) => ({ roundId: record.rounds.answered, clipId: null, withClipId: null }),
  "reviews.saveDraft": (record) => ({
    kind: "review",
    roundId: record.rounds.taken,
    version: 0,
    document: {
      ...EMPTY_REVIEW_DRAFT,
      judgements: [
        { checkpointId: STARTING_LIBRARY[0]?.id, clipId: record.clips.taken, frame: 18, score: 1 },
      ],
    },
  }),
  "reviews.send": (record) => ({ roundId: record.rounds.taken, version: 1 }),
  "reviews.settle": (record) => ({ roundId: record.rounds.answered, version: 1 }),
  "reviews.addAddendum": (record) => ({ reviewId: record.reviews.sent, text: "One more thing." }),
  "reviews.retire": (record) => ({ correctionId: record.correction, reason: "No longer wanted." }),
  "measurements.again": () => ({}),
  "measurements.askAgain": (record) => ({
    measurementId: record.measurement,
    forPersonId: WHO.otherCoach,
  }),
  "measurements.blind": (record) => ({ requestId: record.remeasureRequest }),
  "measurements.measureAgain": (record) => ({
    requestId: record.remeasureRequest,
    points: kneePoints(41).map(({ x, y }) => ({ x, y })),
    untilFrame: null,
  }),
  "practice.tick": (record) => ({ correctionId: record.correction, day: "2026-11-25" }),
  "practice.untick": (record) => ({ correctionId: record.correction, day: "2026-11-25" }),
  "athletes.guardians": (record) => ({ athleteId: record.athleteId }),
  "athletes.list": () => ({}),
  "athletes.search": () => ({ text: "Mar" }),
  "athletes.season": (record) => ({ athleteId: record.athleteId }),
  "today.family": (record) => ({ athleteId: record.athleteId }),
  "today.staff": () => ({}),
  "throwing.view": (record) => ({ athleteId: record.athleteId }),
  "throwing.saidOn": (record) => ({ athleteId: record.athleteId, day: "2026-11-25", knownOn: "2026-11-25" }),
  "throwing.log": (record) => ({
    athleteId: record.athleteId,
    thrownOn: "2026-11-24",
    kind: "game",
    pitches: 40,
  }),
  "throwing.correct": (record) => ({
    entryId: record.throwEntry,
    thrownOn: "2026-11-14",
    kind: "game",
    pitches: 35,
  }),
  "throwing.planOuting": (record) => ({ athleteId: record.athleteId, plannedOn: "2026-12-19", pitches: 50 }),
  "throwing.cancelOuting": (record) => ({ outingId: record.outing }),
  "teams.add": (record) => ({
    athleteId: record.athleteId,
    name: "River Nine",
    ruleBookId: "usa-baseball-2018",
  }),
  "teams.end": (record) => ({ teamId: record.team }),
  "throwImport.preview": (record) => ({
    athleteId: record.athleteId,
    csv: "Day,Kind,Pitches\r\n2026-04-18,Game,45\r\n",
    dayOrder: "month_first",
  }),
  "throwImport.add": (record) => ({
    athleteId: record.athleteId,
    csv: "Day,Kind,Pitches\r\n2026-04-18,Game,45\r\n",
    dayOrder: "month_first",
    withoutBad: false,
  }),
  "throwing.reportPain": (record) => ({ athleteId: record.athleteId, kind: "pain", feltOn: "2026-11-25" }),
  "throwing.clearPain": (record) => ({
    athleteId: record.athleteId,
    symptomFreeSince: "2026-11-25",
    examinedBy: "Family physician",
  }),
  "seasonReports.view": (record) => ({ athleteId: record.athleteId, span: null }),
  "seasonReports.write": (record) => ({
    athleteId: record.athleteId,
    fromOn: "2026-01-01",
    toOn: "2026-12-31",
    focus: "Landing on a firm front leg.",
    afterId: `spr_${record.athleteId}`,
  }),
  "seasonReports.makeLink": (record) => ({
    athleteId: record.athleteId,
    fromOn: "2026-01-01",
    toOn: "2026-12-31",
    days: 30,
  }),
  "seasonReports.revokeLink": (record) => ({ linkId: record.reportLink }),
  "seasonReports.shared": () => ({ token: "opens-nothing" }),
};
