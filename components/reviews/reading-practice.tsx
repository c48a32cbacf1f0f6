"use client";
import { useOptimistic, useTransition } from "react";
import { ToggleButton } from "react-aria-components/ToggleButton";
import { Icon } from "@/components/ui/icons";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { practiceInWords } from "./correction-words";
import styles from "./reading.module.css";

/** What {@link ReadingPractice} takes. */
export interface ReadingPracticeProps {
  correctionId: string;
  /** The correction in a few words; read out with each day. */
  name: string;
  days: readonly CalendarDay[];
  practisedOn: readonly CalendarDay[];
  today: CalendarDay;
  mayTick: boolean;
}

/** The days of the last two weeks on which the drill was done, each ticked with one press. */
export function ReadingPractice(props: ReadingPracticeProps) {
  const { correctionId, name, days, practisedOn, today, mayTick } = props;
  const [, startTransition] = useTransition();
  const [ticked, flip] = useOptimistic(practisedOn, (now: readonly CalendarDay[], day: CalendarDay) =>
    now.includes(day) ? now.filter((each) => each !== day) : [...now, day].sort(),
  );
  const tick = useCommand(
    (api, input: { correctionId: string; day: CalendarDay; isTicked: boolean }, once) => {
      const { isTicked, ...day } = input;
      return isTicked ? api.practice.tick.mutate(day, once) : api.practice.untick.mutate(day, once);
    },
  );
  if (days.length === 0) return null;

  const change = (day: CalendarDay, isTicked: boolean) =>
    startTransition(async () => {
      flip(day);
      await tick.run({ correctionId, day, isTicked });
    });

  return (
    <div className={styles.ticks}>
      <p className={styles.ticksLabel}>
        {mayTick ? "Tick the days you practised it" : "Days practised"}
        {ticked.length > 0 ? `: ${practiceInWords(ticked)}` : ""}
      </p>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would be announced as part of a form */}
      <div className={styles.days} role="group" aria-label={`Practice of ${name}`}>
        {days.map((day) => {
          const [weekday = "", date = ""] = dayInWords(day).split(" ");
          return (
            <ToggleButton
              key={day}
              className={styles.day}
              isSelected={ticked.includes(day)}
              isDisabled={!mayTick}
              onChange={(isTicked) => change(day, isTicked)}
              data-today={day === today ? "" : undefined}
              aria-label={`Practised ${dayInWords(day)}`}
            >
              <span>{weekday}</span>
              <b>{date}</b>
              <span className={styles.tick}>{ticked.includes(day) ? <Icon name="tick" /> : null}</span>
            </ToggleButton>
          );
        })}
      </div>
      <CommandProblem problem={tick.problem} />
    </div>
  );
}
