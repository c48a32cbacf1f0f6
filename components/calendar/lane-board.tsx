"use client";
import Link from "next/link";
import { type CSSProperties, useState } from "react";
import { asPercent } from "@/components/charts/time-axis";
import { joinClasses } from "@/components/ui/join-classes";
import type { Answers } from "@/components/wire/answers";
import { type BoardSession, boardSentence, standingWord, whoInShort } from "./board-words";
import styles from "./lane-board.module.css";

type Board = Answers["calendar"]["day"]["boards"][number];

/** A day at one site: lanes down, hours across. A list of lanes, each a list of sessions, every one a link. */
export function LaneBoard({ board }: { board: Board }) {
  const [active, setActive] = useState<BoardSession | null>(null);
  const hours = Array.from(
    { length: board.toHour - board.fromHour + 1 },
    (_, index) => board.fromHour + index,
  );
  const at = (hour: number) => asPercent((hour - board.fromHour) / (board.toHour - board.fromHour));
  return (
    <div className={styles.board}>
      <div className={styles.hours} aria-hidden="true">
        {hours.map((hour) => (
          <span key={hour} className={styles.hour} style={{ left: at(hour) }}>
            {hour}
          </span>
        ))}
        {board.nowHour === null ? null : (
          <span className={styles.nowWord} style={{ left: at(board.nowHour) }}>
            now
          </span>
        )}
      </div>
      <ul className={styles.lanes}>
        {board.lanes.map((lane) => (
          <li key={lane.id} className={styles.lane}>
            <h3 className={styles.name}>
              {lane.name}
              {lane.kind === "flat" ? <small>flat ground</small> : null}
            </h3>
            <div className={styles.track}>
              {hours.map((hour) => (
                <span key={hour} className={styles.rule} style={{ left: at(hour) }} aria-hidden="true" />
              ))}
              {board.nowHour === null ? null : (
                <span className={styles.now} style={{ left: at(board.nowHour) }} aria-hidden="true" />
              )}
              <ol className={styles.sessions} aria-label={`Sessions on ${lane.name}`}>
                {lane.sessions.map((session) => (
                  <Block
                    key={session.id}
                    session={session}
                    style={{ left: at(session.fromHour), right: `calc(100% - ${at(session.toHour)})` }}
                    onLook={setActive}
                  />
                ))}
              </ol>
            </div>
          </li>
        ))}
      </ul>
      <NeedsALook sessions={board.lanes.flatMap((lane) => lane.sessions)} />
      <p className={styles.readout} aria-hidden="true">
        {active
          ? boardSentence(active)
          : "Point at a session, or move to it with Tab, to read all of it here."}
      </p>
    </div>
  );
}

/** What a narrow block has no room to say: sessions that lost their room, or are over and were not logged. */
function NeedsALook({ sessions }: { sessions: readonly BoardSession[] }) {
  const lines = sessions.filter((session) => session.withoutRoom.length > 0 || session.isUnlogged);
  if (lines.length === 0) return null;
  return (
    <ul className={styles.looks}>
      {lines.map((session) => (
        <li key={session.id}>
          <Link href={`/calendar/${session.id}`}>
            {session.timeWords.split(" ")[0]} {whoInShort(session.names)}
          </Link>
          :{" "}
          {[...session.withoutRoom, session.isUnlogged ? "not logged" : ""]
            .filter((word) => word !== "")
            .join("; ")}
        </li>
      ))}
    </ul>
  );
}

function Block(props: {
  session: BoardSession;
  style: CSSProperties;
  onLook: (session: BoardSession | null) => void;
}) {
  const { session, style, onLook } = props;
  const word = session.withoutRoom.length > 0 ? "no room by the book" : standingWord(session);
  return (
    <li className={styles.place} style={style}>
      <Link
        href={`/calendar/${session.id}`}
        className={joinClasses(styles.session, session.withoutRoom.length > 0 && styles.without)}
        data-state={session.isUnlogged ? "unlogged" : session.state}
        aria-label={boardSentence(session)}
        onFocus={() => onLook(session)}
        onBlur={() => onLook(null)}
        onPointerEnter={() => onLook(session)}
        onPointerLeave={() => onLook(null)}
      >
        <b>{whoInShort(session.names)}</b>
        <span>{word || session.coachName}</span>
      </Link>
    </li>
  );
}
