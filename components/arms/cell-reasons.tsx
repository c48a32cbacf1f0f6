"use client";
import { useQuery } from "@tanstack/react-query";
import Link from "next/link";
import { useMemo } from "react";
import { Dialog } from "react-aria-components/Dialog";
import { Heading } from "react-aria-components/Heading";
import { Popover } from "react-aria-components/Popover";
import { ArmMarks } from "@/components/throwing/arm-marks";
import { Notice } from "@/components/ui/notice";
import popover from "@/components/ui/popover.module.css";
import { Spinner } from "@/components/ui/spinner";
import { useApi } from "@/components/wire/api-provider";
import { problemOf } from "@/components/wire/problem";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./arm-grid.module.css";

/** A cell somebody asked about, with the element the answer hangs on. */
export interface AskedCell {
  athleteId: string;
  name: string;
  day: CalendarDay;
  element: HTMLElement;
}

/** Why a cell says what it says, asked for when it is opened; Escape goes back to the cell. */
export function CellReasons({ asked, onClose }: { asked: AskedCell; onClose: () => void }) {
  const anchor = useMemo(() => ({ current: asked.element }), [asked.element]);
  return (
    <Popover
      className={popover.popover}
      triggerRef={anchor}
      placement="bottom"
      offset={4}
      isOpen
      onOpenChange={(isOpen) => isOpen || onClose()}
    >
      <Dialog className={styles.reasons}>
        <Heading slot="title" className={styles.title}>
          {asked.name}, {dayInWords(asked.day)}
        </Heading>
        <Reasons athleteId={asked.athleteId} day={asked.day} />
        <p>
          <Link href={`/athletes/${asked.athleteId}/throws`}>All of {asked.name}’s throwing</Link>
        </p>
      </Dialog>
    </Popover>
  );
}

function Reasons({ athleteId, day }: Pick<AskedCell, "athleteId" | "day">) {
  const api = useApi();
  const answer = useQuery(api.arms.cell.queryOptions({ athleteId, day }));
  if (answer.error) return <Notice kind="refusal">{problemOf(answer.error).sentence}</Notice>;
  if (!answer.data) return <Spinner text="Asking the book…" />;
  const { marks, why } = answer.data;
  return (
    <>
      <ArmMarks marks={marks} />
      <ul className={styles.why} aria-label="Why">
        {why.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}
