"use client";
import { FormRow } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { RadioChoice } from "@/components/ui/radio-choice";
import { TextArea } from "@/components/ui/text-area";
import type { Answers } from "@/components/wire/answers";
import {
  SPEED_BOUNDS,
  SPEED_UNIT_WORDS,
  SPEED_UNITS,
  type SpeedUnit,
} from "@/server/domain/calendar/radar-speed";
import { MAX_SESSION_MIN, type SessionKind, throwsOnMound } from "@/server/domain/calendar/session-kind";
import type { Attendance, WorkOutcome } from "@/server/domain/calendar/session-state";
import { MAX_EFFORT } from "@/server/domain/throwing/load-effort";
import type { LineDraft } from "./log-draft";
import styles from "./sessions.module.css";

type Athlete = Answers["sessions"]["forStaff"]["athletes"][number];

/** What a {@link LogLineFields} takes. */
export interface LogLineFieldsProps {
  athlete: Athlete;
  kind: SessionKind;
  isOneOfSeveral: boolean;
  draft: LineDraft;
  missing: Readonly<Record<string, string>>;
  onChange: (part: Partial<LineDraft>) => void;
}

const ATTENDANCE = [
  { value: "came", label: "Came" },
  { value: "no_show", label: "Did not come" },
];
const WORK = [
  { value: "none", label: "Not today" },
  { value: "worked_on", label: "Worked on" },
  { value: "confirmed", label: "Holds now" },
];

const UNITS = SPEED_UNITS.map((unit) => ({ value: unit, label: SPEED_UNIT_WORDS[unit] }));

/** One athlete's part of the log: minutes, pitches and what was counted of them, what was worked on and what holds now, a note. */
export function LogLineFields(props: LogLineFieldsProps) {
  const { athlete, kind, isOneOfSeveral, draft, missing, onChange } = props;
  const { athleteId, givenName, corrections } = athlete;
  return (
    <fieldset className={styles.line}>
      {isOneOfSeveral ? <legend>{athlete.name}</legend> : null}
      {isOneOfSeveral ? (
        <RadioChoice
          label={`Did ${givenName} come?`}
          options={ATTENDANCE}
          value={draft.attendance}
          onChange={(attendance) => onChange({ attendance: attendance as Attendance })}
        />
      ) : null}
      {draft.attendance === "came" ? (
        <>
          <FormRow>
            {throwsOnMound(kind) ? (
              <NumberField
                label="Pitches thrown"
                name={`pitches-${athleteId}`}
                hint={`${athlete.plannedPitches} were planned`}
                min={0}
                max={400}
                value={draft.pitches}
                onChange={(pitches) => onChange({ pitches })}
                error={missing[`pitches-${athleteId}`]}
              />
            ) : null}
            <NumberField
              label="Minutes"
              name={`minutes-${athleteId}`}
              hint="As booked unless changed"
              min={0}
              max={MAX_SESSION_MIN}
              value={draft.minutes}
              onChange={(minutes) => onChange({ minutes })}
              error={missing[`minutes-${athleteId}`]}
            />
            <NumberField
              label="Effort"
              name={`effort-${athleteId}`}
              hint={`In ${givenName}'s own word: 0 no effort at all, ${MAX_EFFORT} as hard as can be`}
              min={0}
              max={MAX_EFFORT}
              isOptional
              value={draft.effort}
              onChange={(effort) => onChange({ effort })}
            />
          </FormRow>
          {throwsOnMound(kind) ? <Counts {...props} /> : null}
          {corrections.map((correction) => (
            <RadioChoice
              key={correction.correctionId}
              label={correction.checkpointName}
              hint={correction.drill ? `${correction.cue}. Drill: ${correction.drill}` : correction.cue}
              options={WORK}
              value={draft.work[correction.correctionId] ?? "none"}
              onChange={(outcome) =>
                onChange({ work: withOutcome(draft.work, correction.correctionId, outcome) })
              }
            />
          ))}
        </>
      ) : null}
      <TextArea
        label="Note for the family"
        rows={2}
        maxLength={1000}
        isOptional
        value={draft.note}
        onChange={(note) => onChange({ note })}
      />
    </fieldset>
  );
}

/** What was counted beside the pitches, if anybody did: context for a season, no limit goes by it. */
function Counts({ athlete: { athleteId }, draft, missing, onChange }: LogLineFieldsProps) {
  const [least, most] = SPEED_BOUNDS[draft.speedUnit];
  return (
    <FormRow>
      <NumberField
        label="Strikes"
        name={`strikes-${athleteId}`}
        hint="Of the pitches thrown, if somebody counted"
        min={0}
        max={400}
        isOptional
        value={draft.strikes}
        onChange={(strikes) => onChange({ strikes })}
        error={missing[`strikes-${athleteId}`]}
      />
      <NumberField
        label="Fastest by radar"
        name={`speed-${athleteId}`}
        hint={`${least} to ${most} ${SPEED_UNIT_WORDS[draft.speedUnit]}`}
        min={0}
        step={0.1}
        isOptional
        value={draft.topSpeed}
        onChange={(topSpeed) => onChange({ topSpeed })}
        error={missing[`speed-${athleteId}`]}
      />
      <RadioChoice
        label="Radar read in"
        options={UNITS}
        value={draft.speedUnit}
        onChange={(unit) => onChange({ speedUnit: unit as SpeedUnit, topSpeed: null })}
      />
    </FormRow>
  );
}

function withOutcome(work: LineDraft["work"], correctionId: string, outcome: string): LineDraft["work"] {
  const { [correctionId]: _, ...others } = work;
  return outcome === "none" ? others : { ...others, [correctionId]: outcome as WorkOutcome };
}
