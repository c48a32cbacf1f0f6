import { memo } from "react";
import { joinClasses } from "../ui/join-classes";
import { asPercent, placeOn, type TimeAxis } from "./time-axis";
import styles from "./time-line.module.css";
import { BAR_ROW_PX, LANE_PX, type PlacedRow, ROW_AIR_PX } from "./time-line-layout";
import type { MarkLook, PlacedItem, SpanPart } from "./time-line-parts";

/** What is drawn of the items of a {@link TimeLine}. */
export interface TimeLineItemsProps {
  rows: readonly PlacedRow[];
  axis: TimeAxis;
  hatchId: string;
}

/** Every item of a time line; drawn anew only when the window or what it holds changes. */
export const TimeLineItems = memo(function TimeLineItems({ rows, axis, hatchId }: TimeLineItemsProps) {
  return (
    <g>
      {rows.flatMap((row) =>
        row.items.map((placed) => (
          <Item key={placed.item.id} placed={placed} row={row} axis={axis} hatchId={hatchId} />
        )),
      )}
    </g>
  );
});

/** The frame round the item in hand. */
export function TimeLineRing({ placed, row }: { placed: PlacedItem; row: PlacedRow }) {
  const isBar = placed.item.kind === "bar";
  const y = row.topPx + ROW_AIR_PX + placed.lane * LANE_PX;
  const box = { className: styles.ring, y: 1, height: isBar ? BAR_ROW_PX - 2 : LANE_PX - 2, rx: 2 };
  return (
    <svg
      aria-hidden="true"
      x={asPercent(placed.from)}
      y={y}
      width={widthOf(placed)}
      height={LANE_PX}
      overflow="visible"
    >
      {placed.item.kind === "mark" ? (
        <rect {...box} x={-11} width={22} />
      ) : (
        <rect {...box} x={-3} data-wide="" />
      )}
    </svg>
  );
}

/* A drawing without any width is not drawn at all. */
const widthOf = ({ from, to }: PlacedItem) => asPercent(Math.max(0.002, to - from));

function Item({ placed, row, axis, hatchId }: Omit<TimeLineItemsProps, "rows"> & ItemProps) {
  const { item } = placed;
  const y = row.topPx + ROW_AIR_PX + placed.lane * LANE_PX;
  if (item.kind === "mark")
    return <Shape at={placed.from} y={y} look={(item.look as MarkLook) ?? "circle"} />;
  if (item.kind === "bar") {
    const height = ((item.value ?? 0) / row.maxValue) * (BAR_ROW_PX - 4);
    return (
      <svg
        aria-hidden="true"
        x={asPercent(placed.from)}
        y={row.topPx + ROW_AIR_PX}
        width={widthOf(placed)}
        height={BAR_ROW_PX}
      >
        <rect className={styles.bar} x="12%" width="76%" y={BAR_ROW_PX - height} height={height} />
      </svg>
    );
  }
  const whole: SpanPart[] = [
    { fromDay: item.startDay, toDay: item.endDay, look: item.look === "hatched" ? "hatched" : "open" },
  ];
  return (
    <>
      {(item.parts ?? whole).map((part) => (
        <Part key={`${part.fromDay} ${part.look}`} part={part} placed={placed} {...{ axis, hatchId, y }} />
      ))}
      {(item.caps ?? [])
        .filter(({ day }) => day >= axis.startDay && day < axis.endDay)
        .map(({ day, look }) => (
          <Shape key={`${day} ${look}`} at={placeOn(axis, day)} y={y} look={look} />
        ))}
      <Words placed={placed} y={y} />
    </>
  );
}

interface ItemProps {
  placed: PlacedItem;
  row: PlacedRow;
}

interface PartProps {
  part: SpanPart;
  placed: PlacedItem;
  axis: TimeAxis;
  hatchId: string;
  y: number;
}

function Part({ part, placed, axis, hatchId, y }: PartProps) {
  const from = placeOn(axis, part.fromDay);
  const to = part.toDay === null ? placed.to : placeOn(axis, part.toDay);
  if (to <= from) return null;
  const place = { x: asPercent(from), width: asPercent(to - from) };
  if (part.look === "thin") return <rect className={styles.solid} {...place} y={y + 12} height="2" />;
  return (
    <>
      <rect
        className={joinClasses(styles.shape, part.look === "solid" && styles.solid)}
        {...place}
        y={y + 5}
        height="16"
      />
      {part.look === "hatched" ? <rect {...place} y={y + 5} height="16" fill={`url(#${hatchId})`} /> : null}
    </>
  );
}

function Shape({ at, y, look }: { at: number; y: number; look: MarkLook }) {
  return (
    <svg aria-hidden="true" x={asPercent(at)} y={y} width="1" height={LANE_PX} overflow="visible">
      <path className={joinClasses(styles.shape, look === "square" && styles.solid)} d={MARKS[look]} />
    </svg>
  );
}

function Words({ placed: { words }, y }: { placed: PlacedItem; y: number }) {
  if (words === null) return null;
  const { at, side } = words;
  const [dx, anchor] = side === "before" ? ([-12, "end"] as const) : ([12, "start"] as const);
  return (
    <>
      {side === "on" ? (
        <svg aria-hidden="true" x={asPercent(at)} y={y + 6} width="1" height="14" overflow="visible">
          <rect className={styles.ground} x="9" width={words.widthPx} height="14" />
        </svg>
      ) : null}
      <text className={styles.label} x={asPercent(at)} dx={dx} y={y + 17} textAnchor={anchor}>
        {words.text}
      </text>
    </>
  );
}

/** Each mark is drawn about the middle of a lane, at x = 0. */
const MARKS: Record<MarkLook, string> = {
  circle: "M0 8a5 5 0 1 1 0 10a5 5 0 0 1 0-10",
  diamond: "M0 6L7 13L0 20L-7 13z",
  square: "M-5 8h10v10h-10z",
  crossed: "M-5 8h10v10h-10zM-5 8l10 10M5 8l-10 10",
  stroke: "M0 5v16",
};
