"use client";

import Link from "next/link";
import type { ReactNode } from "react";
import { joinClasses } from "../ui/join-classes";
import { asPercent } from "./time-axis";
import styles from "./time-line.module.css";
import {
  BAR_ROW_PX,
  itemInWords,
  LANE_PX,
  type PlacedItem,
  type PlacedRow,
  ROW_AIR_PX,
} from "./time-line-layout";

/** What a {@link TimeLineMark} takes. */
export interface TimeLineMarkProps {
  placed: PlacedItem;
  row: PlacedRow;
  hatchId: string;
  isEntry: boolean;
  isActive: boolean;
  onActive: (id: string) => void;
}

/** One item of a time line: a link where it leads somewhere, else a button that reads it out. */
export function TimeLineMark({ placed, row, hatchId, isEntry, isActive, onActive }: TimeLineMarkProps) {
  const { item } = placed;
  const shared = {
    className: styles.item,
    tabIndex: isEntry ? 0 : -1,
    "aria-label": `${row.row.label}: ${itemInWords(item)}`,
    "data-item": item.id,
    "data-active": isActive ? "" : undefined,
    onFocus: () => onActive(item.id),
    onPointerEnter: () => onActive(item.id),
  };
  const drawing = <Drawing placed={placed} row={row} hatchId={hatchId} />;
  if (item.href) {
    return (
      <Link href={item.href} {...shared}>
        {drawing}
      </Link>
    );
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing has no button of its own
    <g role="button" {...shared} onClick={() => onActive(item.id)}>
      {drawing}
    </g>
  );
}

function Drawing({ placed, row, hatchId }: Pick<TimeLineMarkProps, "placed" | "row" | "hatchId">) {
  const y = row.topPx + ROW_AIR_PX + placed.lane * LANE_PX;
  const x = asPercent(placed.from);
  const width = asPercent(Math.max(0, placed.to - placed.from));
  if (placed.item.kind === "mark") {
    return (
      <svg x={x} y={y} width="1" height={LANE_PX} overflow="visible" aria-hidden="true">
        <rect className={styles.hit} x="-12" y="1" width="24" height="24" rx="2" />
        <path
          className={joinClasses(styles.shape, placed.item.look === "square" && styles.solid)}
          d={MARKS[placed.item.look ?? "circle"] ?? MARKS.circle}
        />
      </svg>
    );
  }
  if (placed.item.kind === "bar") {
    const height = ((placed.item.value ?? 0) / row.maxValue) * (BAR_ROW_PX - 4);
    return (
      <svg x={x} y={row.topPx + ROW_AIR_PX} width={width} height={BAR_ROW_PX} aria-hidden="true">
        <rect className={styles.hit} width="100%" height="100%" />
        <rect className={styles.bar} x="12%" width="76%" y={BAR_ROW_PX - height} height={height} />
      </svg>
    );
  }
  return (
    <svg x={x} y={y} width={width} height={LANE_PX} overflow="visible" aria-hidden="true">
      <rect className={styles.hit} width="100%" height="24" y="1" rx="2" />
      <Span look={placed.item.look} hatchId={hatchId}>
        {placed.item.state || placed.item.label}
      </Span>
    </svg>
  );
}

function Span({
  look,
  hatchId,
  children,
}: {
  look?: string | undefined;
  hatchId: string;
  children: ReactNode;
}) {
  const isSolid = look === "solid";
  const isHatched = look === "hatched";
  return (
    <>
      <rect className={joinClasses(styles.shape, isSolid && styles.solid)} width="100%" height="20" y="3" />
      {isHatched ? <rect width="100%" height="20" y="3" fill={`url(#${hatchId})`} /> : null}
      <foreignObject width="100%" height="20" y="4">
        <div className={joinClasses(styles.word, isSolid && styles.onSolid, isHatched && styles.onHatch)}>
          <span>{children}</span>
        </div>
      </foreignObject>
    </>
  );
}

/** Each mark is drawn about the middle of a lane, at x = 0. */
const MARKS: Record<string, string> = {
  circle: "M0 7a6 6 0 1 1 0 12a6 6 0 0 1 0-12",
  diamond: "M0 5.5L7.5 13L0 20.5L-7.5 13z",
  square: "M-6 7h12v12h-12z",
  crossed: "M-6 7h12v12h-12zM-6 7l12 12M6 7l-12 12",
  stroke: "M0 5v16",
};
