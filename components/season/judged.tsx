"use client";
import { ScoreChart } from "@/components/charts/score-chart";
import type { TimeAxis } from "@/components/charts/time-axis";
import { EmptyState } from "@/components/ui/empty-state";
import { type Column, Table } from "@/components/ui/table";
import { CAMERA_VIEW_WORDS, type CameraView } from "@/server/domain/mechanics/delivery";
import { JUDGEMENT_WORDS } from "@/server/domain/mechanics/judgement";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./season.module.css";
import type { JudgedCheckpoint } from "./season-answer";

/** What {@link Judged} takes. `workedOn`: the checkpoints of open corrections. */
export interface JudgedProps {
  judged: readonly JudgedCheckpoint[];
  workedOn: readonly string[];
  axis: TimeAxis;
}

/** Every judged checkpoint's judgements over time, those worked on now in sight, the others folded away. */
export function Judged({ judged, workedOn, axis }: JudgedProps) {
  const first = judged.filter((each) => workedOn.includes(each.checkpointId));
  const others = judged.filter((each) => !workedOn.includes(each.checkpointId));
  if (judged.length === 0) {
    return (
      <EmptyState title="Nothing was judged in these twelve months">
        A coach judges checkpoints on a clip; each judgement then stands here on its day.
      </EmptyState>
    );
  }
  if (first.length === 0) return <Charts judged={others} axis={axis} />;
  return (
    <>
      <Charts judged={first} axis={axis} />
      {others.length > 0 ? (
        <details className={styles.more}>
          <summary>{others.length} more that were judged and are not worked on now</summary>
          <Charts judged={others} axis={axis} />
        </details>
      ) : null}
    </>
  );
}

/** One chart a checkpoint, each with the same in a table. */
function Charts({ judged, axis }: Pick<JudgedProps, "judged" | "axis">) {
  return (
    <div className={styles.charts}>
      {judged.map((checkpoint) => (
        <ScoreChart
          key={checkpoint.checkpointId}
          title={checkpoint.name}
          series={seriesOf(checkpoint)}
          axis={axis}
          words={JUDGEMENT_WORDS}
          table={<JudgementTable checkpoint={checkpoint} />}
        />
      ))}
    </div>
  );
}

/** One series a camera view, since one view does not show what another does. */
function seriesOf({ judgements }: JudgedCheckpoint) {
  const views = [...new Set(judgements.map((each) => each.view))];
  return views.map((view) => ({
    name: viewWord(view),
    points: judgements
      .filter((each) => each.view === view)
      .map(({ judgedOn, score }) => ({ day: judgedOn, score })),
  }));
}

type Row = JudgedCheckpoint["judgements"][number];

const COLUMNS: readonly Column<Row>[] = [
  {
    key: "day",
    heading: "Day",
    isRowHeading: true,
    cell: (row) => dayInWords(row.judgedOn, { withYear: true }),
  },
  { key: "view", heading: "Seen from", cell: (row) => viewWord(row.view) },
  { key: "score", heading: "Judged", cell: (row) => JUDGEMENT_WORDS[row.score] ?? row.score },
  { key: "coach", heading: "By", cell: (row) => row.coachName },
];

function JudgementTable({ checkpoint }: { checkpoint: JudgedCheckpoint }) {
  return (
    <Table
      caption={`${checkpoint.name}, every judgement`}
      isCaptionHidden
      columns={COLUMNS}
      rows={checkpoint.judgements.toReversed()}
      rowKey={(row) => row.id}
    />
  );
}

function viewWord(view: CameraView | null): string {
  return view === null ? "In person" : CAMERA_VIEW_WORDS[view];
}
