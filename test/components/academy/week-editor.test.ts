import { expect, it } from "vitest";
import { draftOf, weekOfDraft } from "@/components/academy/week-editor";

const span = (weekday: number, startsMin: number, endsMin: number) => ({ weekday, startsMin, endsMin });

it("gives back the week it was given, Monday first and each day in its order", () => {
  const draft = draftOf([span(3, 900, 1440), span(1, 900, 1260), span(1, 540, 720)]);
  expect(weekOfDraft(draft)?.map(({ siteId: _, ...each }) => each)).toEqual([
    span(1, 540, 720),
    span(1, 900, 1260),
    span(3, 900, 1440),
  ]);
});

it("is not whole while a time is missing", () => {
  const [first, ...rest] = draftOf([span(1, 900, 1260), span(2, 900, 1260)]);
  expect(first && weekOfDraft([{ ...first, endsMin: null }, ...rest])).toBeNull();
  expect(weekOfDraft([])).toEqual([]);
});
