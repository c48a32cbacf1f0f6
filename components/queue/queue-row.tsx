"use client";

import Link from "next/link";
import { Fragment, type KeyboardEvent } from "react";
import { Button } from "@/components/ui/button";
import { LinkButton } from "@/components/ui/link-button";
import { Menu } from "@/components/ui/menu";
import { TimeText } from "@/components/ui/time-text";
import type { OwedRow } from "@/server/api/read-queue";
import { CAMERA_VIEW_WORDS } from "@/server/domain/mechanics/delivery";
import { momentInWords, spanInWords } from "@/server/domain/time/words";
import styles from "./queue.module.css";
import type { QueueAxis } from "./queue-axis";
import { QueueTrack } from "./queue-track";
import { actsOn, firstActOf, ROUND_ACT_WORDS, type RoundAct, type Viewer } from "./round-acts";

/** What a {@link QueueRow} takes. */
export interface QueueRowProps {
  row: OwedRow;
  place: number;
  axis: QueueAxis;
  viewer: Viewer;
  isTaking: boolean;
  /** More than one site: then each due says which. */
  isSiteShown: boolean;
  onTake: (roundId: string) => void;
  onAct: (act: RoundAct, row: OwedRow) => void;
}

/** One round that is owed: whose, what is to be done, by when, and the way in. */
export function QueueRow(props: QueueRowProps) {
  const { row, place, axis, viewer, onAct } = props;
  function onKeyDownCapture(event: KeyboardEvent) {
    if (event.key !== "Enter" || !event.shiftKey) return;
    event.preventDefault();
    event.stopPropagation();
    onAct("hand_over", row);
  }
  return (
    <li className={styles.row} onKeyDownCapture={onKeyDownCapture}>
      <span className={styles.place} aria-hidden="true">
        {place}
      </span>
      <div className={styles.who}>
        <Link href={`/athletes/${row.athleteId}`} className={styles.name}>
          {row.athleteName}
        </Link>
        <span className={styles.age}>{row.ageYears}</span>
        <p className={styles.what}>{whatInWords(row, viewer)}</p>
        {row.openCorrections.length > 0 ? (
          <p className={styles.what}>
            {row.openCorrections.length} open:{" "}
            {row.openCorrections.map(({ correctionId, checkpointId, name }, at) => (
              <Fragment key={correctionId}>
                {at === 0 ? "" : ", "}
                <Link href={`/athletes/${row.athleteId}/checkpoints/${checkpointId}`}>{name}</Link>
              </Fragment>
            ))}
          </p>
        ) : null}
      </div>
      <QueueTrack
        axis={axis}
        dueAtMs={row.dueAtMs}
        estimateMin={row.estimateMin}
        isFree={row.coachPersonId === null}
      />
      <Due row={row} nowMs={axis.nowMs} isSiteShown={props.isSiteShown} />
      <div className={styles.acts}>
        <FirstAct {...props} />
        <Menu
          label="More"
          accessibleLabel={`More for ${row.athleteName}`}
          isSmall
          entries={[
            ...(firstActOf(row, viewer) === "take"
              ? [{ key: "open", label: "Look without taking", href: `/reviews/${row.roundId}` }]
              : []),
            ...actsOn(row, viewer).map((act) => ({
              key: act,
              label: ROUND_ACT_WORDS[act],
              onAction: () => onAct(act, row),
            })),
          ]}
        />
      </div>
    </li>
  );
}

function FirstAct({ row, viewer, isTaking, onTake }: QueueRowProps) {
  const act = firstActOf(row, viewer);
  const control = { "data-row-control": "", isSmall: true };
  if (act === "take") {
    return (
      <Button {...control} isPending={isTaking} onPress={() => onTake(row.roundId)}>
        Take
      </Button>
    );
  }
  return (
    <LinkButton {...control} href={`/reviews/${row.roundId}`}>
      {act === "look" ? "Look" : row.kind === "reply" ? "Check" : "Go on"}
    </LinkButton>
  );
}

function Due({ row, nowMs, isSiteShown }: { row: OwedRow; nowMs: number; isSiteShown: boolean }) {
  const { lateness, dueAtMs, zone, estimateMin } = row;
  const isLate = lateness.kind === "late";
  const latestStartMs = dueAtMs - estimateMin * 60_000;
  return (
    <div className={styles.dueWords}>
      <p className={isLate ? styles.lateWords : styles.leftWords}>
        {isLate ? `Late by ${spanInWords(lateness.lateByMs)}` : `${spanInWords(lateness.leftMs)} left`}
      </p>
      <p className={styles.what}>
        due <TimeText dateTime={dueAtMs}>{momentInWords(dueAtMs, zone)}</TimeText>
        {isSiteShown ? `, ${row.siteName}` : ""}
      </p>
      <p className={styles.what}>
        about {estimateMin} min
        {latestStartMs > nowMs
          ? `, start by ${momentInWords(latestStartMs, zone).split(" ").at(-1)}`
          : ", start now"}
      </p>
    </div>
  );
}

function whatInWords(row: OwedRow, viewer: Viewer): string {
  const views = row.views.map((view) => CAMERA_VIEW_WORDS[view].toLowerCase());
  const what = row.kind === "reply" ? "Reply to check" : "First clip";
  const whose =
    row.coachPersonId === null
      ? "nobody has it yet"
      : row.coachPersonId === viewer.personId
        ? "yours"
        : `with ${row.coachName ?? "another coach"}`;
  return [what, ...views, whose].join(", ");
}
