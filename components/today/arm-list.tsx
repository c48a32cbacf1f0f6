import Link from "next/link";
import { ArmMarks } from "@/components/throwing/arm-marks";
import type { ArmMark } from "@/server/domain/throwing/arm-marks";
import { timeInWords } from "@/server/domain/time/words";
import styles from "./arm-list.module.css";

/** The arm of somebody who comes today. */
export interface ComingArm {
  athleteId: string;
  name: string;
  startsAtMs: number;
  zone: string;
  isMine: boolean;
  arm: { words: string; why: readonly string[]; marks: readonly ArmMark[] };
  /** What a session of today asks for that the book leaves no room for; empty when all fit. */
  withoutRoom: readonly string[];
}

/** How the arms of those who come today stand, before today's sessions, by when they come. */
export function ArmList({ arms }: { arms: readonly ComingArm[] }) {
  return (
    <ul className={styles.list}>
      {arms.map((coming) => (
        <li key={coming.athleteId} className={styles.row}>
          <span className={styles.time}>{timeInWords(coming.startsAtMs, coming.zone)}</span>
          <Link href={`/athletes/${coming.athleteId}`}>{coming.name}</Link>
          <div className={styles.marks}>
            <ArmMarks marks={coming.arm.marks} isInLine />
            {coming.withoutRoom.map((words) => (
              <span key={words} className={styles.without}>
                Today's session {words}
              </span>
            ))}
          </div>
        </li>
      ))}
    </ul>
  );
}
