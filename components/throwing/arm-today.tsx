import { capitalised } from "@/server/domain/text/capitalised";
import type { ArmAnswer } from "./arm-answer";
import { ArmMarks } from "./arm-marks";
import styles from "./arm-today.module.css";

/** The book's answer for today, large, with what it rests on and why. Never worded as a permission. */
export function ArmToday({ arm }: { arm: ArmAnswer }) {
  const [first] = arm.marks;
  const silence = arm.marks.filter((mark) => mark.kind === "unreported");
  const hasNumber = first?.kind === "allowed" && first.count !== null;
  return (
    <div className={styles.answer}>
      <div className={styles.words}>
        {first ? <ArmMarks marks={[{ ...first, words: capitalised(arm.words) }]} /> : capitalised(arm.words)}
      </div>
      {hasNumber ? <p className={styles.unless}>if nothing is missing here</p> : null}
      {arm.why.length > 0 ? (
        <ul className={styles.why} aria-label="Why">
          {arm.why.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : null}
      {silence.length > 0 ? <ArmMarks marks={silence} /> : null}
    </div>
  );
}
