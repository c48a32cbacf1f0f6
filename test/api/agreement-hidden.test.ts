import { beforeAll, describe, expect, it } from "vitest";
import { blindItem, blindRating } from "@/db/schema/mechanics";
import { appRouter } from "@/server/api/root";
import { type TestAcademy, WHO } from "../helpers/academy";
import type { AthleteRecord } from "../helpers/athlete-record";
import { makeBusyAcademy } from "../helpers/busy-academy";
import { callByPath } from "../helpers/call-by-path";
import { PROCEDURE_INPUTS } from "../helpers/procedure-inputs";

/* What two coaches said of five frames of the child: numbers and ids that are nowhere else. */
const MARKS = ["blr_mark_", "41.737373", "58.919191", "737373", "919191"];
const STAFF = [WHO.admin, WHO.coach, WHO.otherCoach];
const SAID = [
  { id: "blr_mark_one", coachPersonId: WHO.coach, value: 41.737373 },
  { id: "blr_mark_two", coachPersonId: WHO.otherCoach, value: 58.919191 },
];

let academy: TestAcademy;
let record: AthleteRecord;

beforeAll(async () => {
  const made = await makeBusyAcademy();
  academy = made.academy;
  record = made.records.child;
  const { db, sqlite, clock } = academy;
  sqlite.prepare("UPDATE blind_item SET kind = 'front_knee_flexion'").run();
  const [first] = (await db.select().from(blindItem)).filter((row) => row.id === record.blindItem);
  if (!first) throw new Error("The child has no blind item.");
  for (let position = 0; position < 5; position += 1) {
    const itemId = position === 0 ? first.id : `${first.id}_${position}`;
    if (position > 0) await db.insert(blindItem).values({ ...first, id: itemId, position });
    for (const { id, ...said } of SAID) {
      const points = '[{"x":737373,"y":919191}]';
      const row = { ...said, id: `${id}_${position}`, itemId, points, ratedAtMs: clock.ms };
      await db.insert(blindRating).values({ ...row, value: said.value + position });
    }
  }
});

async function answerOf(personId: string, path: string): Promise<string> {
  try {
    const input = PROCEDURE_INPUTS[path]?.(record, academy);
    return JSON.stringify(await callByPath(academy, personId, path, input));
  } catch (error) {
    return String(error);
  }
}

describe("while a set is open", () => {
  for (const path of Object.keys(appRouter._def.procedures)) {
    it(`${path} tells nobody what anybody said of its frames`, async () => {
      for (const personId of STAFF) {
        await academy.discarding(async () => {
          const told = await answerOf(personId, path);
          expect(MARKS.filter((mark) => told.includes(mark))).toEqual([]);
        });
      }
    });
  }

  it("a coach who has rated everything sees no more than one who has not", async () => {
    const views = await Promise.all(
      STAFF.map(async (personId) => (await academy.as(personId)).agreement.set({ setId: record.blindSet })),
    );
    for (const view of views) {
      expect(view.results).toBeNull();
      expect(view.progress.map(({ rated }) => rated).sort()).toEqual([5, 5]);
    }
  });

  it("they are told to all of the staff once it is closed: there was something to be hidden", async () => {
    await academy.discarding(async () => {
      await (await academy.as(WHO.admin)).agreement.close({ setId: record.blindSet });
      for (const personId of STAFF) {
        const told = await answerOf(personId, "agreement.set");
        expect(MARKS.slice(1, 3).filter((mark) => told.includes(mark))).toEqual(MARKS.slice(1, 3));
      }
    });
  });
});
