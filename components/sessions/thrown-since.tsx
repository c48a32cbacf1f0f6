"use client";
import { Fragment } from "react";
import { type GameDraft, NO_DRAFT } from "@/components/throwing/game-draft";
import { GameFields, type TeamChoice } from "@/components/throwing/game-fields";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { Disclosure } from "@/components/ui/disclosure";
import { FormRow } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { SelectField } from "@/components/ui/select-field";
import { THROW_KINDS, type ThrowKind } from "@/server/domain/throwing/throw-entry";
import { THROW_KIND_WORDS } from "@/server/domain/throwing/throw-words";
import { hasGameDetails } from "@/server/domain/throwing/validate-game";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import styles from "./sessions.module.css";

/** Throws as they are being told; `pitches` null while the number is missing. */
export interface AskedThrows {
  key: number;
  thrownOn: CalendarDay;
  kind: ThrowKind;
  pitches: number | null;
  /** What a game says; left aside for other kinds. */
  game: GameDraft;
}

const KINDS = THROW_KINDS.map((kind) => ({ value: kind, label: THROW_KIND_WORDS[kind] }));
const MOST_ENTRIES = 10;

/** What is told of several days: the day, what it was, and how many. */
export function ThrownSince(props: {
  throws: readonly AskedThrows[];
  today: CalendarDay;
  teams: readonly TeamChoice[];
  onChange: (throws: AskedThrows[]) => void;
}) {
  const { throws, today, teams, onChange } = props;
  const nextKey = Math.max(0, ...throws.map((one) => one.key)) + 1;
  return (
    <div className={styles.thrown}>
      {throws.map((one) => {
        const change = (part: Partial<AskedThrows>) =>
          onChange(throws.map((each) => (each.key === one.key ? { ...each, ...part } : each)));
        return (
          <Fragment key={one.key}>
            <FormRow>
              <DateField
                label="On"
                value={one.thrownOn}
                max={today}
                onChange={(day) => day && change({ thrownOn: day })}
              />
              <SelectField
                label="What"
                options={KINDS}
                value={one.kind}
                onChange={(kind) => kind && change({ kind: kind as ThrowKind })}
              />
              <NumberField
                label="How many"
                min={1}
                max={400}
                value={one.pitches}
                onChange={(pitches) => change({ pitches })}
              />
              {throws.length > 1 ? (
                <Button isSmall onPress={() => onChange(throws.filter((each) => each.key !== one.key))}>
                  Take out
                </Button>
              ) : null}
            </FormRow>
            {hasGameDetails(one.kind) ? (
              <Disclosure summary="More about the game">
                <GameFields game={one.game} teams={teams} onChange={(game) => change({ game })} />
              </Disclosure>
            ) : null}
          </Fragment>
        );
      })}
      {throws.length < MOST_ENTRIES ? (
        <div>
          <Button
            isSmall
            onPress={() =>
              onChange([
                ...throws,
                { key: nextKey, thrownOn: today, kind: "game", pitches: null, game: NO_DRAFT },
              ])
            }
          >
            Another day
          </Button>
        </div>
      ) : null}
    </div>
  );
}
