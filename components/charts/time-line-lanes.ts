import { placeOn } from "./time-axis";
import type { PlacedItem, PlacedWords, TimeLineGround, TimeLineItem } from "./time-line-parts";

/** A letter of a label at 12 px, on the wide side, so that what is worked out always suffices. By eye, no source. */
const LETTER_PX = 6.6;

/** Between a span and its words, and between one item's words and the next item. */
const GAP_PX = 8;

/** Half of a shape on a span. */
const CAP_PX = 8;

/**
 * Items of one row in lanes, each in the uppermost in which it touches nothing. Spans may begin on the day another ends;
 * those with words keep a gap.
 * @param items earliest first
 * @param openEnd where what is still so ends, as a share of the axis
 */
export function inLanes(
  items: readonly TimeLineItem[],
  ground: TimeLineGround,
  openEnd: number,
): PlacedItem[] {
  const lanes: (readonly [number, number])[][] = [];
  return items.map((item) => {
    const from = placeOn(ground.axis, item.startDay);
    if (item.kind === "mark") return { item, lane: 0, from, to: from, taken: [from, from], words: null };
    const to = item.endDay === null ? Math.max(from, openEnd) : placeOn(ground.axis, item.endDay);
    if (item.kind === "bar") return { item, lane: 0, from, to, taken: [from, to], words: null };
    const { words, taken } = item.isLabelled
      ? roomFor(item, { from, to }, ground)
      : { words: null, taken: [from, to] as const };
    const free = lanes.findIndex((others) => others.every((other) => isApart(other, taken)));
    const lane = free === -1 ? lanes.length : free;
    lanes[lane] = [...(lanes[lane] ?? []), taken];
    return { item, lane, from, to, taken, words };
  });
}

function isApart(one: readonly [number, number], other: readonly [number, number]): boolean {
  return one[1] <= other[0] || other[1] <= one[0];
}

/* Words stand on a part of the span that is long enough, so that they hide nothing of where another begins, else after
   the span, else before it; on a drawing too narrow for either they are left to the line below the drawing. */
function roomFor(
  item: TimeLineItem,
  { from, to }: { from: number; to: number },
  { axis, widthPx }: TimeLineGround,
) {
  const { label, state } = item;
  const text = [label, state].filter((part) => part !== "").join(", ");
  const words = text.length * LETTER_PX;
  const share = (px: number) => px / widthPx;
  const [first, last] = [from - share(CAP_PX), to + share(CAP_PX)];
  const placed = (side: PlacedWords["side"], at: number, taken: readonly [number, number]) => ({
    words: { text, side, at, widthPx: words },
    taken,
  });
  const on = longestPart(item, { from, to }, axis);
  if ((on.to - on.from) * widthPx >= words + 2 * GAP_PX + CAP_PX)
    return placed("on", on.from, [first, last + share(GAP_PX)]);
  const after = last + share(words + GAP_PX);
  if (after <= 1) return placed("after", to, [first, after + share(GAP_PX)]);
  const before = first - share(words + GAP_PX);
  if (before >= 0) return placed("before", from, [before - share(GAP_PX), last]);
  return { words: null, taken: [first, last + share(GAP_PX)] as const };
}

/**
 * The longest stretch in sight of a span on which words can be read, that is not hatched; of a span in one part all of
 * it.
 */
function longestPart(
  { parts }: TimeLineItem,
  whole: { from: number; to: number },
  axis: TimeLineGround["axis"],
): { from: number; to: number } {
  const inSight = ({ from, to }: { from: number; to: number }) => ({
    from: Math.max(0, from),
    to: Math.min(1, to),
  });
  if (parts === undefined) return inSight(whole);
  const stretches = parts
    .filter(({ look }) => look !== "hatched")
    .map(({ fromDay, toDay }) => ({
      from: placeOn(axis, fromDay),
      to: toDay === null ? whole.to : placeOn(axis, toDay),
    }))
    .map(inSight);
  const length = ({ from, to }: { from: number; to: number }) => to - from;
  return stretches.reduce((most, each) => (length(each) > length(most) ? each : most), {
    from: whole.from,
    to: whole.from,
  });
}
