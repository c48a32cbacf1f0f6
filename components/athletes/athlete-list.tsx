"use client";
import Link from "next/link";
import { useState } from "react";
import { ArmMarks } from "@/components/throwing/arm-marks";
import { PageHeading } from "@/components/ui/page-heading";
import { SearchField } from "@/components/ui/search-field";
import { SelectField } from "@/components/ui/select-field";
import { Legend } from "@/components/ui/state-mark";
import { type Column, Table } from "@/components/ui/table";
import type { ArmMark } from "@/server/domain/throwing/arm-marks";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./athlete-list.module.css";

/** An athlete as the list shows them. */
export interface ListedAthlete {
  athleteId: string;
  name: string;
  ageYears: number;
  throws: "right" | "left";
  coachPersonId: string | null;
  coachName: string | null;
  openCorrections: number;
  arm: { words: string; marks: readonly ArmMark[] };
  lastClipOn: CalendarDay | null;
}

const ALL = "all";

const COLUMNS: readonly Column<ListedAthlete>[] = [
  {
    key: "name",
    heading: "Athlete",
    isRowHeading: true,
    cell: (row) => <Link href={`/athletes/${row.athleteId}`}>{row.name}</Link>,
  },
  { key: "age", heading: "Age", align: "number", isFit: true, cell: (row) => row.ageYears },
  { key: "hand", heading: "Throws", isFit: true, cell: (row) => row.throws },
  { key: "coach", heading: "Coach", cell: (row) => row.coachName ?? "none" },
  { key: "open", heading: "Working on", align: "number", isFit: true, cell: (row) => row.openCorrections },
  { key: "arm", heading: "Arm today", cell: (row) => <ArmMarks marks={row.arm.marks} isInLine /> },
  {
    key: "clip",
    heading: "Last clip",
    isFit: true,
    cell: (row) => (row.lastClipOn ? dayInWords(row.lastClipOn) : "none"),
  },
];

/** Every athlete and how the arm stands today; a coach begins with their own. */
export function AthleteList({
  athletes,
  myPersonId,
}: {
  athletes: readonly ListedAthlete[];
  myPersonId: string;
}) {
  const coaches = coachOptions(athletes, myPersonId);
  const [coach, setCoach] = useState(coaches.some(({ value }) => value === myPersonId) ? myPersonId : ALL);
  const [text, setText] = useState("");
  const words = text.trim().toLowerCase();
  const shown = athletes.filter(
    (row) =>
      (coach === ALL || row.coachPersonId === coach) &&
      (words === "" || row.name.toLowerCase().includes(words)),
  );
  return (
    <>
      <PageHeading question="How does every arm stand?" detail={<Legend />} />
      <div className={styles.filters}>
        <SearchField label="Search athletes" value={text} onChange={setText} className={styles.search} />
        <SelectField
          label="Coach"
          options={coaches}
          value={coach}
          onChange={(value) => setCoach(value ?? ALL)}
        />
        <p className={styles.count} aria-live="polite">
          {shown.length} of {athletes.length}
        </p>
      </div>
      <Table
        caption="Athletes"
        isCaptionHidden
        columns={COLUMNS}
        rows={shown}
        rowKey={(row) => row.athleteId}
        empty="No athlete fits. Another coach may have them: choose all coaches."
      />
    </>
  );
}

function coachOptions(athletes: readonly ListedAthlete[], myPersonId: string) {
  const names = new Map(
    athletes.flatMap((row) =>
      row.coachPersonId && row.coachName ? [[row.coachPersonId, row.coachName]] : [],
    ),
  );
  const byName = [...names].sort((a, b) => a[1].localeCompare(b[1]));
  return [
    { value: ALL, label: "All coaches" },
    ...byName.map(([value, label]) => ({ value, label: value === myPersonId ? `${label} (you)` : label })),
  ];
}
