"use client";
import { useState } from "react";
import { gameOf, inningsProblem, NO_DRAFT } from "@/components/throwing/game-draft";
import type { ThrowsToLog } from "@/components/throwing/kept-throws";
import { YesOrNo } from "@/components/throwing/yes-or-no";
import { Button } from "@/components/ui/button";
import { Form, FormActions } from "@/components/ui/form";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { PainFields, type ToldPain } from "./pain-fields";
import { type AskedThrows, ThrownSince } from "./thrown-since";

type Athlete = Answers["sessions"]["forStaff"]["athletes"][number];

/** What a {@link CheckInForm} takes. */
export interface CheckInFormProps {
  sessionId: string;
  athlete: Pick<Athlete, "athleteId" | "givenName" | "today" | "unreportedSince" | "teams">;
}

interface CheckIn {
  sessionId: string;
  athleteId: string;
  throws: { thrownOn: CalendarDay; kind: AskedThrows["kind"]; pitches: number; game: ThrowsToLog["game"] }[];
  pain: ToldPain | null;
}

/** Asked before mound work and recorded: thrown since the last entry? Any pain? Pain stops all throwing at once. */
export function CheckInForm({ sessionId, athlete }: CheckInFormProps) {
  const { athleteId, givenName, today, unreportedSince } = athlete;
  const [thrown, setThrown] = useState<AskedThrows[] | null>(null);
  const [hurts, setHurts] = useState<boolean | null>(null);
  const [pain, setPain] = useState<ToldPain>({ kind: "pain", feltOn: today, note: "" });
  const record = useCommand((api, input: CheckIn, once) => api.sessions.checkIn.mutate(input, once));
  const throws = counted(thrown ?? []);
  const isAnswered = thrown !== null && hurts !== null && throws.length === thrown.length;
  const since = unreportedSince ? dayInWords(unreportedSince) : "the last entry";

  return (
    <Form
      onSubmit={() => void record.run({ sessionId, athleteId, throws, pain: hurts ? pain : null })}
      aria-label={`Check in ${givenName}`}
    >
      <CommandProblem problem={record.problem} />
      <YesOrNo
        question={`Thrown since ${since}?`}
        value={thrown && thrown.length > 0}
        onChange={(isYes) =>
          setThrown(isYes ? [{ key: 1, thrownOn: today, kind: "game", pitches: null, game: NO_DRAFT }] : [])
        }
      />
      {thrown && thrown.length > 0 ? (
        <ThrownSince throws={thrown} today={today} teams={athlete.teams} onChange={setThrown} />
      ) : null}
      <YesOrNo question="Does anything hurt?" value={hurts} onChange={setHurts} />
      {hurts ? <PainFields pain={pain} today={today} onChange={setPain} /> : null}
      <FormActions>
        <Button
          type="submit"
          variant={hurts ? "danger" : "primary"}
          isDisabled={!isAnswered}
          isPending={record.pending}
        >
          {hurts ? "Record it and stop all throwing" : "Record the check-in"}
        </Button>
      </FormActions>
    </Form>
  );
}

/** The throws that have a number, and innings that can be read. */
function counted(throws: readonly AskedThrows[]): CheckIn["throws"] {
  return throws.flatMap(({ thrownOn, kind, pitches, game }) =>
    pitches === null || inningsProblem(game.innings)
      ? []
      : [{ thrownOn, kind, pitches, game: gameOf(kind, game) }],
  );
}
