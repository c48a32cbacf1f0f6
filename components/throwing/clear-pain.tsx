"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import { TextField } from "@/components/ui/text-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

interface Clearance {
  athleteId: string;
  symptomFreeSince: CalendarDay;
  examinedBy: string;
}

/** What a {@link ClearPain} takes. */
export interface ClearPainProps {
  athleteId: string;
  givenName: string;
  today: CalendarDay;
  /** The last day it was felt: no day without symptoms is before it. */
  lastFeltOn: CalendarDay;
}

/** Ends the stop: since when there have been no symptoms, and who examined the arm. */
export function ClearPain({ athleteId, givenName, today, lastFeltOn }: ClearPainProps) {
  const [isOpen, setOpen] = useState(false);
  const [since, setSince] = useState<CalendarDay | null>(null);
  const [errors, setErrors] = useState<Record<string, string>>({});
  const clear = useCommand((api, input: Clearance, once) => api.throwing.clearPain.mutate(input, once));

  async function submit(data: FormData) {
    const examinedBy = String(data.get("examinedBy") ?? "").trim();
    setErrors({
      ...(since === null ? { symptomFreeSince: "Say since which day there have been no symptoms." } : {}),
      ...(examinedBy === "" ? { examinedBy: "Say who examined the arm." } : {}),
    });
    if (since === null || examinedBy === "") return;
    if (await clear.run({ athleteId, symptomFreeSince: since, examinedBy })) setOpen(false);
  }

  return (
    <>
      <Button onPress={() => setOpen(true)}>Clear it</Button>
      <Dialog title={`Is ${givenName}'s arm well again?`} isOpen={isOpen} onOpenChange={setOpen}>
        <Form onSubmit={(data) => void submit(data)} errors={errors} aria-label="Clear the arm">
          <p>
            The athlete's physician and athletic trainer come first. Your word and your name are kept on
            record, and the coach is told.
          </p>
          <CommandProblem problem={clear.problem} />
          <DateField
            label="No symptoms since"
            name="symptomFreeSince"
            value={since}
            onChange={setSince}
            min={lastFeltOn}
            max={today}
          />
          <TextField label="Who examined the arm" name="examinedBy" maxLength={200} />
          <DialogActions>
            <Button type="submit" variant="primary" isPending={clear.pending}>
              Clear the arm
            </Button>
            <Button onPress={() => setOpen(false)}>Not yet</Button>
          </DialogActions>
        </Form>
      </Dialog>
    </>
  );
}
