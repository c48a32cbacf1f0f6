"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { SelectField } from "@/components/ui/select-field";
import { TextField } from "@/components/ui/text-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { THROW_KINDS, type ThrowKind } from "@/server/domain/throwing/throw-entry";
import { THROW_KIND_WORDS, throwsInWords } from "@/server/domain/throwing/throw-words";
import { PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import { hasGameDetails } from "@/server/domain/throwing/validate-game";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import type { LogRow } from "./arm-answer";
import { draftOf, type GameDraft, gameOf, inningsProblem } from "./game-draft";
import { GameFields, type TeamChoice } from "./game-fields";
import type { ThrowsToLog } from "./kept-throws";

const KINDS = THROW_KINDS.map((kind) => ({ value: kind, label: THROW_KIND_WORDS[kind] }));

interface Correction {
  entryId: string;
  thrownOn: CalendarDay;
  kind: ThrowKind;
  pitches: number;
  game: ThrowsToLog["game"];
  note?: string;
}

/** Corrects a row of the log by a new one; the old one stays on record. */
export function CorrectEntry(props: { row: LogRow; teams: readonly TeamChoice[]; today: CalendarDay }) {
  const { row, teams, today } = props;
  const [isOpen, setOpen] = useState(false);
  const [kind, setKind] = useState<ThrowKind>(row.kind);
  const [thrownOn, setThrownOn] = useState<CalendarDay | null>(row.thrownOn);
  const [pitches, setPitches] = useState<number | null>(row.pitches);
  const [game, setGame] = useState<GameDraft>(() => draftOf(row));
  const correct = useCommand((api, input: Correction, once) => api.throwing.correct.mutate(input, once));

  async function submit(data: FormData) {
    const isGame = hasGameDetails(kind);
    if (thrownOn === null || pitches === null || (isGame && inningsProblem(game.innings))) return;
    const note = String(data.get("note") ?? "");
    const told = { thrownOn, kind, pitches, game: gameOf(kind, game), note };
    if (await correct.run({ entryId: row.id, ...told })) setOpen(false);
  }

  const words = `${throwsInWords(row.kind, row.pitches)}, ${dayInWords(row.thrownOn)}`;
  return (
    <>
      <Button variant="link" isSmall aria-label={`Correct ${words}`} onPress={() => setOpen(true)}>
        Correct
      </Button>
      <Dialog title={`Correct: ${words}`} isOpen={isOpen} onOpenChange={setOpen}>
        <Form
          onSubmit={(data) => void submit(data)}
          errors={correct.problem?.fields}
          aria-label="Correct the entry"
        >
          <CommandProblem problem={correct.problem} />
          <NumberField
            label="How many"
            hint="0 says that nothing was thrown."
            value={pitches}
            onChange={setPitches}
            min={0}
            max={PLAUSIBLE_MAX_PITCHES}
            isRequired
            autoFocus
          />
          <SelectField
            label="What"
            options={KINDS}
            value={kind}
            onChange={(value) => setKind((value ?? row.kind) as ThrowKind)}
          />
          <DateField label="When" value={thrownOn} onChange={setThrownOn} max={today} isRequired />
          {hasGameDetails(kind) ? <GameFields game={game} teams={teams} onChange={setGame} /> : null}
          <TextField label="Note" name="note" defaultValue={row.note} isOptional />
          <DialogActions>
            <Button type="submit" variant="primary" isPending={correct.pending}>
              Keep the correction
            </Button>
            <Button onPress={() => setOpen(false)}>Leave it</Button>
          </DialogActions>
        </Form>
      </Dialog>
    </>
  );
}
