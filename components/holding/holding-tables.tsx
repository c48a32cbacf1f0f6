import Link from "next/link";
import { type Column, Table } from "@/components/ui/table";
import type { HoldingLedgerView } from "@/server/api/evidence/holding-shape";
import { intervalInWords, medianInWords, percentInWords, retiredOf } from "./holding-words";

type Group = HoldingLedgerView["byCoach"][number];
type Drill = HoldingLedgerView["drills"][number];
type Step = HoldingLedgerView["steps"][number];

/** What a {@link GroupTable} takes. */
export interface GroupTableProps {
  caption: string;
  /** What the groups are, e.g. "Checkpoint". */
  heading: string;
  groups: readonly Group[];
  /** The ledger of one group alone. */
  hrefOf: (key: string) => string;
}

/** How long corrections take to hold, group by group. */
export function GroupTable({ caption, heading, groups, hrefOf }: GroupTableProps) {
  const columns: readonly Column<Group>[] = [
    {
      ...{ key: "name", heading, isRowHeading: true },
      cell: ({ key, name }) => <Link href={hrefOf(key)}>{name}</Link>,
    },
    { key: "median", heading: "Half held within", cell: medianInWords },
    { key: "interval", heading: "Interval, 95 %", cell: intervalInWords },
    { key: "watched", heading: "Given", align: "number", cell: ({ watched }) => watched },
    { key: "held", heading: "Held", align: "number", cell: ({ held }) => held },
    { key: "open", heading: "Open", align: "number", cell: ({ open }) => open },
    { key: "retired", heading: "Retired", align: "number", cell: retiredOf },
    { key: "back", heading: "Came back", align: "number", cell: ({ cameBack }) => cameBack },
  ];
  return (
    <Table
      {...{ caption, columns }}
      isCaptionHidden
      rows={groups}
      rowKey={({ key }) => key}
      onPhone="scroll"
    />
  );
}

const DRILL_COLUMNS: readonly Column<Drill>[] = [
  { key: "drill", heading: "Drill", isRowHeading: true, cell: ({ drill }) => drill },
  { key: "checkpoint", heading: "Checkpoint", cell: ({ checkpointName }) => checkpointName },
  { key: "with", heading: "With it", cell: ({ withIt }) => sideInWords(withIt) },
  { key: "without", heading: "Without it", cell: ({ withoutIt }) => sideInWords(withoutIt) },
  {
    key: "faster",
    heading: "Half held",
    cell: ({ isFaster }) => (isFaster ? "sooner with it" : "not sooner with it"),
  },
];

/** Drills beside the other corrections of their checkpoint. */
export function DrillTable({ drills }: Pick<HoldingLedgerView, "drills">) {
  return (
    <Table
      caption="Drills beside holding"
      isCaptionHidden
      columns={DRILL_COLUMNS}
      rows={drills}
      rowKey={({ checkpointId, drill }) => `${checkpointId} ${drill}`}
    />
  );
}

const STEP_COLUMNS: readonly Column<Step>[] = [
  { key: "days", heading: "Days since given", align: "number", isRowHeading: true, cell: ({ days }) => days },
  { key: "risk", heading: "Watched until then", align: "number", cell: ({ atRisk }) => atRisk },
  { key: "then", heading: "Held on it", align: "number", cell: ({ heldThen }) => heldThen },
  { key: "share", heading: "Share held", align: "number", cell: ({ share }) => percentInWords(share) },
  { key: "interval", heading: "Interval, 95 %", align: "number", cell: stepInterval },
];

/** The steps of the curve. */
export function StepTable({ steps }: Pick<HoldingLedgerView, "steps">) {
  return (
    <Table
      caption="Share that held, by days since given"
      isCaptionHidden
      columns={STEP_COLUMNS}
      rows={steps}
      rowKey={({ days }) => String(days)}
    />
  );
}

function stepInterval({ lower, upper }: Step): string {
  return lower === null || upper === null ? "–" : `${percentInWords(lower)} to ${percentInWords(upper)}`;
}

function sideInWords(times: Drill["withIt"]): string {
  const interval = times.medianDays === null ? "" : ` (${intervalInWords(times)})`;
  return `${medianInWords(times)}${interval}, of ${times.watched}`;
}
