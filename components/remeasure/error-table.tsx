import { Disclosure } from "@/components/ui/disclosure";
import { Section } from "@/components/ui/section";
import { Table } from "@/components/ui/table";
import type { AgainView } from "@/server/api/measurements/shapes";
import { CAMERA_VIEW_WORDS, CAMERA_VIEWS } from "@/server/domain/mechanics/delivery";
import { ENOUGH_FREEDOM, FEWEST_DELIVERIES } from "@/server/domain/mechanics/measure-error";
import { MEASURE_KINDS, MEASURES } from "@/server/domain/mechanics/measure-kind";
import styles from "./remeasure.module.css";
import { figureInWords } from "./remeasure-words";

/** How sure each kind of measure is from each view of which there are repeats. */
export function ErrorTable({ errors }: { errors: AgainView["measureErrors"] }) {
  const rows = [...errors].sort(
    (a, b) =>
      MEASURE_KINDS.indexOf(a.kind) - MEASURE_KINDS.indexOf(b.kind) ||
      CAMERA_VIEWS.indexOf(a.view) - CAMERA_VIEWS.indexOf(b.view),
  );
  return (
    <Section title="How sure each measure is">
      <Table
        caption="The error of each measure by its two sources"
        isCaptionHidden
        rows={rows}
        rowKey={(row) => `${row.kind} ${row.view}`}
        empty="Nothing was measured twice yet, so no error is known."
        columns={[
          { key: "kind", heading: "Measure", isRowHeading: true, cell: (row) => MEASURES[row.kind].words },
          { key: "view", heading: "From", cell: (row) => CAMERA_VIEW_WORDS[row.view].toLowerCase() },
          { key: "frame", heading: "One frame again", cell: (row) => figureInWords(row.kind, row.sameFrame) },
          {
            key: "day",
            heading: "One day, several deliveries",
            cell: (row) => figureInWords(row.kind, row.sameDay),
          },
        ]}
      />
      <Disclosure summary="Where these figures come from">
        <p className={styles.words}>
          95 of 100 measures lie within the error of the true value: 1.96 within-subject standard deviations
          of repeats (Bland and Altman 1996). One frame measured again tells how surely points are placed.{" "}
          {FEWEST_DELIVERIES} or more deliveries of one athlete on one day, each measured once at the same
          moment, tell that and how much one delivery differs from the next; that figure stands beside a
          measure. A figure is told from {ENOUGH_FREEDOM} repeats on: below that it would itself be too
          unsure.
        </p>
      </Disclosure>
    </Section>
  );
}
