import { asc, desc, eq, inArray, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { eventMark, judgement } from "@/db/schema/mechanics";
import { person, remark } from "@/db/schema/people";
import { addendum, keep, review } from "@/db/schema/reviews";
import type { AthleteScope } from "@/server/domain/access/relation";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import type { JudgementScore } from "@/server/domain/mechanics/judgement";
import { fullName } from "@/server/domain/people/person";
import type {
  DraftJudgement,
  DraftKeep,
  DraftKind,
  DraftMark,
  EventMark,
} from "@/server/domain/reviews/draft";
import type { MeasureToSend } from "@/server/domain/reviews/measures-to-send";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { athleteScope } from "./access";
import { keepMarks } from "./drawn-marks";
import { keepMeasurements } from "./measurements";
import { newId } from "./new-id";
import { keepRemark } from "./remarks";

/** Stands where a text was erased. */
const ERASED = "Erased.";

/** A review or a check as it was sent, with everything said since. */
export interface SentReview {
  id: string;
  kind: DraftKind;
  coachPersonId: string;
  coachName: string;
  /** The coach's own word on the whole; empty when there was none. */
  note: string;
  sentAtMs: number;
  keeps: (Omit<DraftKeep, "id"> & { id: string })[];
  addenda: { id: string; coachName: string; text: string; atMs: number }[];
}

/** What was sent on a round, the review first; the texts that were erased read "Erased.". */
export async function sentReviewsOf(db: Db, roundId: string): Promise<SentReview[]> {
  const rows = await db
    .select({ review, note: remark.text, givenName: person.givenName, familyName: person.familyName })
    .from(review)
    .innerJoin(person, eq(person.id, review.coachPersonId))
    .leftJoin(remark, eq(remark.id, review.remarkId))
    .where(eq(review.roundId, roundId))
    .orderBy(asc(review.sentAtMs), sql`"review".rowid`);
  const ids = rows.map((row) => row.review.id);
  const keeps = await db.select().from(keep).where(inArray(keep.reviewId, ids)).orderBy(asc(keep.position));
  const addenda = await addendaOf(db, ids);
  return rows.map(({ review: row, note, ...name }) => ({
    id: row.id,
    kind: row.kind,
    coachPersonId: row.coachPersonId,
    coachName: fullName(name),
    note: note ?? "",
    sentAtMs: row.sentAtMs,
    keeps: keeps.filter((each) => each.reviewId === row.id).map(({ reviewId, position, ...each }) => each),
    addenda: addenda.filter((each) => each.reviewId === row.id).map(({ reviewId, ...each }) => each),
  }));
}

async function addendaOf(db: Db, reviewIds: string[]) {
  const rows = await db
    .select({ addendum, text: remark.text, givenName: person.givenName, familyName: person.familyName })
    .from(addendum)
    .innerJoin(remark, eq(remark.id, addendum.remarkId))
    .innerJoin(person, eq(person.id, addendum.coachPersonId))
    .where(inArray(addendum.reviewId, reviewIds))
    .orderBy(asc(addendum.atMs), sql`"addendum".rowid`);
  return rows.map(({ addendum: row, text, ...name }) => ({
    id: row.id,
    reviewId: row.reviewId,
    coachName: fullName(name),
    text: text || ERASED,
    atMs: row.atMs,
  }));
}

/** A sent review by its id: its round and its athlete; null when there is none. */
export async function findReview(db: Db, reviewId: string) {
  const [row] = await db
    .select({ id: review.id, roundId: review.roundId, athleteId: review.athleteId })
    .from(review)
    .where(eq(review.id, reviewId));
  return row ?? null;
}

/** What access needs of the athlete a review is of, or null when there is no such review. */
export async function reviewScope(db: Db, reviewId: string): Promise<AthleteScope | null> {
  const row = await findReview(db, reviewId);
  return row ? athleteScope(db, row.athleteId) : null;
}

/** The frames of delivery events on clips, as sent reviews marked them; a later mark takes the place of an earlier. */
export async function eventMarksOn(db: Db, clipIds: readonly string[]): Promise<EventMark[]> {
  const rows = await db
    .select({ clipId: eventMark.clipId, event: eventMark.event, frame: eventMark.frame })
    .from(eventMark)
    .innerJoin(review, eq(review.id, eventMark.reviewId))
    .where(inArray(eventMark.clipId, [...clipIds]))
    .orderBy(asc(review.sentAtMs));
  return [...new Map(rows.map((row) => [`${row.clipId} ${row.event}`, row])).values()];
}

/** The latest judgement of each checkpoint of an athlete, on a clip or in person. */
export async function latestJudgements(
  db: Db,
  athleteId: string,
): Promise<{ checkpointId: string; score: JudgementScore; judgedOn: CalendarDay }[]> {
  const rows = await db
    .select({ checkpointId: judgement.checkpointId, score: judgement.score, judgedOn: judgement.judgedOn })
    .from(judgement)
    .where(eq(judgement.athleteId, athleteId))
    .orderBy(desc(judgement.atMs), sql`"judgement".rowid DESC`);
  const latest = new Map<string, (typeof rows)[number]>();
  for (const row of rows) if (!latest.has(row.checkpointId)) latest.set(row.checkpointId, row);
  return [...latest.values()].map((row) => ({ ...row, score: row.score as JudgementScore }));
}

/** How checkpoints were judged in one sent review or check, in the order written. */
export async function judgementsIn(db: Db, reviewId: string): Promise<DraftJudgement[]> {
  const rows = await db
    .select({
      checkpointId: judgement.checkpointId,
      clipId: judgement.clipId,
      frame: judgement.frame,
      score: judgement.score,
    })
    .from(judgement)
    .where(eq(judgement.reviewId, reviewId));
  return rows.flatMap(({ clipId, frame, score, checkpointId }) =>
    clipId === null || frame === null
      ? []
      : [{ checkpointId, clipId, frame, score: score as JudgementScore }],
  );
}

/** A review or check that is being sent, and what was seen on the clips. */
export interface ReviewToSend {
  roundId: string;
  athleteId: string;
  kind: DraftKind;
  coachPersonId: string;
  note: string;
  openedAtMs: number;
  sentAtMs: number;
  /** The day of sending at the athlete's home site. */
  judgedOn: CalendarDay;
  eventMarks: readonly EventMark[];
  judgements: readonly DraftJudgement[];
  /** In the order of the recap. */
  keeps: readonly DraftKeep[];
  viewOfClip: ReadonlyMap<string, CameraView | null>;
  measures: readonly MeasureToSend[];
  marks: readonly DraftMark[];
}

/** Writes a review with its event marks, judgements, keeps, measures and marks. @returns its id */
export async function insertReview(tx: Db, sent: ReviewToSend): Promise<string> {
  const id = newId("rvw");
  const { roundId, athleteId, kind, coachPersonId, openedAtMs, sentAtMs } = sent;
  const remarkId = await keepRemark(tx, sent.note);
  await tx
    .insert(review)
    .values({ id, roundId, athleteId, kind, coachPersonId, openedAtMs, sentAtMs, remarkId });
  for (const mark of sent.eventMarks) {
    await tx.insert(eventMark).values({ id: newId("evm"), reviewId: id, ...mark });
  }
  for (const [position, { id: _draftId, text, ...seen }] of sent.keeps.entries()) {
    await tx.insert(keep).values({ id: newId("kep"), reviewId: id, ...seen, text: text.trim(), position });
  }
  const { judgedOn, viewOfClip } = sent;
  for (const each of sent.judgements) {
    const view = viewOfClip.get(each.clipId) ?? null;
    const base = { id: newId("jdg"), athleteId, reviewId: id, coachPersonId, judgedOn, atMs: sentAtMs };
    await tx.insert(judgement).values({ ...base, ...each, view });
  }
  const measuring = { athleteId, reviewId: id, repeatOfId: null, coachPersonId, measuredOn: judgedOn };
  await keepMeasurements(tx, { ...measuring, atMs: sentAtMs }, sent.measures);
  await keepMarks(tx, id, sent.marks);
  return id;
}

/** Adds a later word to a sent review. */
export async function insertAddendum(
  tx: Db,
  word: { reviewId: string; coachPersonId: string; text: string; atMs: number },
): Promise<void> {
  const { reviewId, coachPersonId, text, atMs } = word;
  const remarkId = await keepRemark(tx, text);
  if (remarkId === null) throw new Error("An addendum without a word.");
  await tx.insert(addendum).values({ id: newId("add"), reviewId, coachPersonId, remarkId, atMs });
}
