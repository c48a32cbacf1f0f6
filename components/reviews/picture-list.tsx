"use client";
import { Button } from "@/components/ui/button";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import type { DraftMark, DraftMeasure } from "@/server/domain/reviews/draft";
import { framesInWords, markLine, measureOutcome } from "./picture-words";
import { spanTo } from "./room-marks-edits";
import styles from "./room-picture.module.css";
import type { PictureTools } from "./use-picture-tools";

/** What is measured and shown on the clip in hand, each with the way to its frame, to change it and to take it away. */
export function PictureList({ tools }: { tools: PictureTools }) {
  const { measures, marks } = ofClip(tools);
  if (measures.length + marks.length === 0) return null;
  return (
    <ul className={styles.list} aria-label="Measured and shown on this clip">
      {measures.map((row) => (
        <MeasureRow key={row.id} tools={tools} row={row} />
      ))}
      {marks.map((row) => (
        <MarkRow key={row.id} tools={tools} row={row} />
      ))}
    </ul>
  );
}

/** The rows of the draft that are on the clip in hand, as its frames run. */
export function ofClip({ draft, clip }: PictureTools): { measures: DraftMeasure[]; marks: DraftMark[] } {
  const { measures, marks } = draft.document;
  const here = <Row extends { clipId: string; frame: number }>(rows: readonly Row[]) =>
    rows.filter((row) => row.clipId === clip.id).sort((a, b) => a.frame - b.frame);
  return { measures: here(measures), marks: here(marks) };
}

function MeasureRow({ tools, row }: { tools: PictureTools; row: DraftMeasure }) {
  const { words } = MEASURES[row.kind];
  const name = `${words}, ${framesInWords(row)}`;
  return (
    <li className={styles.entry}>
      <span className={styles.words}>
        {words} <b>{measureOutcome(row, tools)}</b>
        <span className={styles.checkpoint}>{checkpointName(tools, row)}</span>
      </span>
      <span className={styles.rowActs}>
        <Button variant="link" onPress={() => tools.openMeasure(row)} aria-label={`Go to: ${name}`}>
          {framesInWords(row)}
        </Button>
        <Button
          variant="link"
          aria-label={`Remove: ${name}`}
          onPress={() =>
            remove(tools, { of: "measures", id: row.id, act: "remove", before: row, after: null })
          }
        >
          Remove
        </Button>
      </span>
    </li>
  );
}

function MarkRow({ tools, row }: { tools: PictureTools; row: DraftMark }) {
  const { player } = tools;
  const name = markLine(row);
  const spanned = spanTo(row, player.inHand);
  const change = (after: DraftMark) =>
    tools.change({ of: "marks", id: row.id, act: "span", before: row, after });
  return (
    <li className={styles.entry}>
      <span className={styles.words}>
        {name.slice(0, name.lastIndexOf(","))}
        <span className={styles.checkpoint}>{checkpointName(tools, row)}</span>
      </span>
      <span className={styles.rowActs}>
        <Button variant="link" onPress={() => tools.openMark(row)} aria-label={`Go to: ${name}`}>
          {framesInWords(row)}
        </Button>
        {spanned.untilFrame === row.untilFrame && spanned.frame === row.frame ? null : (
          <Button
            variant="link"
            onPress={() => change(spanned)}
            aria-label={`Show to frame ${player.inHand + 1}: ${name}`}
          >
            {player.inHand < row.frame ? "from" : "to"} the frame in sight
          </Button>
        )}
        <Button
          variant="link"
          aria-label={`Remove: ${name}`}
          onPress={() => remove(tools, { of: "marks", id: row.id, act: "remove", before: row, after: null })}
        >
          Remove
        </Button>
      </span>
    </li>
  );
}

function remove(tools: PictureTools, change: Parameters<PictureTools["change"]>[0]): void {
  if (tools.tool && "id" in tools.tool && tools.tool.id === change.id) tools.putDown();
  tools.change(change);
}

function checkpointName({ room }: PictureTools, { checkpointId }: { checkpointId: string | null }): string {
  return room.checkpoints.find((each) => each.id === checkpointId)?.name ?? "";
}
