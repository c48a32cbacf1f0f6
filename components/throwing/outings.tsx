"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { DateField } from "@/components/ui/date-field";
import { Form, FormActions, FormRow } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { SelectField } from "@/components/ui/select-field";
import { StateMark } from "@/components/ui/state-mark";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { OUTING_HORIZON_DAYS } from "@/server/domain/throwing/planned-outing";
import { PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import type { ThrowingAnswer } from "./arm-answer";
import type { TeamChoice } from "./game-fields";
import styles from "./throwing-page.module.css";

/** The games and showcases that are coming, so that the days before them keep room. */
export function Outings({
  athleteId,
  today,
  outings,
  teams,
}: {
  athleteId: string;
  today: CalendarDay;
  outings: ThrowingAnswer["outings"];
  teams: readonly TeamChoice[];
}) {
  return (
    <>
      {outings.length > 0 ? (
        <ul className={styles.rows}>
          {outings.map((outing) => (
            <li key={outing.id}>
              <StateMark
                kind="outing"
                label={`${dayInWords(outing.plannedOn)}, ${outing.pitches} pitches planned${outing.teamName ? `, ${outing.teamName}` : ""}`}
              />
              <CancelOuting outing={outing} />
            </li>
          ))}
        </ul>
      ) : null}
      <PlanOuting athleteId={athleteId} today={today} teams={teams.filter((team) => !team.hasEnded)} />
    </>
  );
}

function CancelOuting({ outing }: { outing: ThrowingAnswer["outings"][number] }) {
  const [isAsking, setAsking] = useState(false);
  const cancel = useCommand((api, input: { outingId: string }, once) =>
    api.throwing.cancelOuting.mutate(input, once),
  );
  const day = dayInWords(outing.plannedOn);
  return (
    <>
      <Button variant="link" isSmall aria-label={`Call off ${day}`} onPress={() => setAsking(true)}>
        Call off
      </Button>
      <ConfirmDialog
        title={`Call off the outing on ${day}?`}
        confirmText="Call it off"
        isOpen={isAsking}
        isPending={cancel.pending}
        onConfirm={() => void cancel.run({ outingId: outing.id }).then(() => setAsking(false))}
        onCancel={() => setAsking(false)}
      >
        The days before it no longer keep room for it.
      </ConfirmDialog>
    </>
  );
}

interface Plan {
  athleteId: string;
  plannedOn: CalendarDay;
  pitches: number;
  teamId: string | null;
}

const NO_TEAM = { value: "", label: "No team" };

function PlanOuting(props: { athleteId: string; today: CalendarDay; teams: readonly TeamChoice[] }) {
  const { athleteId, today, teams } = props;
  const [teamId, setTeamId] = useState<string | null>(null);
  const [plannedOn, setPlannedOn] = useState<CalendarDay | null>(null);
  const [pitches, setPitches] = useState<number | null>(null);
  const [errors, setErrors] = useState<Record<string, string>>({});
  const plan = useCommand((api, input: Plan, once) => api.throwing.planOuting.mutate(input, once));

  async function submit() {
    const missing = {
      ...(plannedOn === null ? { plannedOn: "Say on which day." } : {}),
      ...(pitches === null ? { pitches: "Say how many pitches are planned." } : {}),
    };
    setErrors(missing);
    if (plannedOn === null || pitches === null) return;
    if (!(await plan.run({ athleteId, plannedOn, pitches, teamId }))) return;
    setPlannedOn(null);
    setPitches(null);
  }

  return (
    <Form onSubmit={() => void submit()} errors={errors} aria-label="Plan an outing">
      <CommandProblem problem={plan.problem} />
      <FormRow>
        <DateField
          label="Game or showcase on"
          name="plannedOn"
          value={plannedOn}
          onChange={setPlannedOn}
          min={today}
          max={addDays(today, OUTING_HORIZON_DAYS)}
        />
        <NumberField
          label="Pitches planned"
          name="pitches"
          value={pitches}
          onChange={setPitches}
          min={1}
          max={PLAUSIBLE_MAX_PITCHES}
        />
        {teams.length > 0 ? (
          <SelectField
            label="For the team"
            options={[NO_TEAM, ...teams.map((team) => ({ value: team.id, label: team.name }))]}
            isOptional
            value={teamId ?? NO_TEAM.value}
            onChange={(chosen) => setTeamId(chosen || null)}
          />
        ) : null}
      </FormRow>
      <FormActions>
        <Button type="submit" isPending={plan.pending}>
          Plan the outing
        </Button>
      </FormActions>
    </Form>
  );
}
