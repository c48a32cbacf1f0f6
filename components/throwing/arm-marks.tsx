import { StateMark } from "@/components/ui/state-mark";
import type { ArmMark } from "@/server/domain/throwing/arm-marks";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./arm-marks.module.css";

/** How an arm stands: each state as its shape and in words, what decides first. */
export function ArmMarks({ marks, isInLine }: { marks: readonly ArmMark[]; isInLine?: boolean }) {
  return (
    <ul className={isInLine ? styles.inLine : styles.marks}>
      {marks.map((mark) => (
        <li key={mark.kind}>
          <StateMark
            kind={mark.kind}
            label={mark.words}
            {...(mark.count === null ? {} : { count: mark.count })}
            {...(mark.freeOn === null ? {} : { freeOn: dayInWords(mark.freeOn).slice(0, 3) })}
          />
        </li>
      ))}
    </ul>
  );
}
