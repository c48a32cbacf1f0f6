import Link from "next/link";
import { onFrame } from "@/components/remeasure/remeasure-words";
import { roomAddress } from "@/components/reviews/room-address";
import { Section } from "@/components/ui/section";
import { Table } from "@/components/ui/table";
import type { KindView } from "@/server/api/agreement/shapes";
import { amountInWords } from "@/server/domain/mechanics/amount-in-words";
import { offsetInWords } from "@/server/domain/mechanics/coach-differences";
import { capitalised } from "@/server/domain/text/capitalised";
import styles from "./agreement.module.css";
import { kindInWords, methodInWords, namesInWords, saidInWords } from "./agreement-words";
import { DrawnRows, FigureDrawn, OffsetDrawn } from "./drawn-rows";

/** What the parts of {@link KindResults} take. */
export interface KindResultsProps {
  results: KindView;
  nameOf: (personId: string) => string;
  checkpointName: (checkpointId: string) => string;
}

/** How far coaches agree on one kind, who differs from the others, at which checkpoints and on which frames. */
export function KindResults(props: KindResultsProps) {
  const { results } = props;
  const { kind, tooFew, unseen } = results;
  return (
    <Section title={kindInWords(kind)} count={results.items === 1 ? "1 frame" : `${results.items} frames`}>
      {tooFew ? <p>{capitalised(tooFew)}.</p> : <Figures {...props} />}
      <p className={styles.method}>{methodInWords(kind)}</p>
      {unseen > 0 ? (
        <p className={styles.method}>
          {unseen === 1 ? "Once a coach" : `${unseen} times a coach`} could not see what was asked for; that
          frame counts in no figure of theirs.
        </p>
      ) : null}
      {results.byCheckpoint.length === 0 ? null : <Offsets {...props} />}
      <FramesApart {...props} />
    </Section>
  );
}

function Figures({ results: { measures, pairs, coaches }, nameOf }: KindResultsProps) {
  const rows = measures ? [{ ...measures, coaches }] : (pairs ?? []);
  return (
    <DrawnRows
      label="How far coaches agree"
      rows={rows.map(({ coaches: of, figure, lower, upper, words }) => ({
        key: of.join(" "),
        name: namesInWords(of.map(nameOf)),
        drawing: <FigureDrawn {...{ figure, lower, upper }} />,
        words: /[.!]$/.test(words) ? words : `${capitalised(words)}.`,
      }))}
    />
  );
}

function Offsets({ results: { kind, byCoach, byCheckpoint }, nameOf, checkpointName }: KindResultsProps) {
  const reach = Math.max(...byCoach.map(({ offset }) => Math.abs(offset)));
  return (
    <>
      <Section level={3} title="Who lies where">
        <p className={styles.method}>
          On average over the frames that all of them have seen. It says who differs, never who is right.
        </p>
        <DrawnRows
          label="How far each coach lies from the others"
          rows={byCoach.map(({ coachId, offset }) => ({
            key: coachId,
            name: nameOf(coachId),
            drawing: <OffsetDrawn offset={offset} reach={reach} />,
            words: offsetInWords(kind, offset),
          }))}
        />
      </Section>
      <Section level={3} title="At which checkpoints">
        <Table
          caption="How far coaches lie apart at each checkpoint, the farthest first"
          isCaptionHidden
          rows={byCheckpoint}
          rowKey={(row) => row.checkpointId}
          columns={[
            {
              key: "checkpoint",
              heading: "Checkpoint",
              isRowHeading: true,
              cell: (row) => checkpointName(row.checkpointId),
            },
            { key: "items", heading: "Frames", align: "number", cell: (row) => row.items },
            {
              key: "apart",
              heading: "Apart on average",
              align: "number",
              cell: (row) => amountInWords(kind, row.apart),
            },
            {
              key: "who",
              heading: "Who",
              cell: (row) =>
                row.byCoach
                  .map(({ coachId, offset }) => `${nameOf(coachId)} ${offsetInWords(kind, offset)}`)
                  .join("; "),
            },
          ]}
        />
      </Section>
    </>
  );
}

function FramesApart({ results: { kind, itemsApart }, nameOf, checkpointName }: KindResultsProps) {
  return (
    <Section level={3} title="Frames to look at together" count={itemsApart.length}>
      <Table
        caption="Frames on which coaches differ, the farthest apart first"
        isCaptionHidden
        rows={itemsApart}
        rowKey={(row) => row.itemId}
        empty="There is no frame on which two of them differ."
        columns={[
          {
            key: "frame",
            heading: "Frame",
            isRowHeading: true,
            cell: ({ position, view, frame, at }) => {
              const words = `${position + 1} of the set: ${onFrame({ view, frame })}`;
              return at ? (
                <Link href={roomAddress({ ...at, frame })}>{words}</Link>
              ) : (
                `${words} (its film is gone)`
              );
            },
          },
          { key: "checkpoint", heading: "Checkpoint", cell: (row) => checkpointName(row.checkpointId) },
          {
            key: "apart",
            heading: "Apart",
            align: "number",
            cell: (row) => amountInWords(kind, row.apart),
          },
          {
            key: "said",
            heading: "What each said",
            cell: ({ said }) =>
              said.map(({ coachId, value }) => `${nameOf(coachId)}: ${saidInWords(kind, value)}`).join("; "),
          },
        ]}
      />
    </Section>
  );
}
