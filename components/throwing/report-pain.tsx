"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import { RadioChoice } from "@/components/ui/radio-choice";
import { TextArea } from "@/components/ui/text-area";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { PAIN_KINDS, type PainKind } from "@/server/domain/throwing/pain";
import { PAIN_KIND_WORDS } from "@/server/domain/throwing/throw-words";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

const KINDS = PAIN_KINDS.map((kind) => ({ value: kind, label: PAIN_KIND_WORDS[kind] }));

interface Report {
  athleteId: string;
  kind: PainKind;
  feltOn: CalendarDay;
  note: string;
}

/** Reports pain or unusual fatigue: stops all throwing at once. */
export function ReportPain({
  athleteId,
  givenName,
  today,
}: {
  athleteId: string;
  givenName: string;
  today: CalendarDay;
}) {
  const [isOpen, setOpen] = useState(false);
  const [kind, setKind] = useState<PainKind>("pain");
  const [feltOn, setFeltOn] = useState<CalendarDay | null>(today);
  const report = useCommand((api, input: Report, once) => api.throwing.reportPain.mutate(input, once));

  async function submit(data: FormData) {
    if (feltOn === null) return;
    if (await report.run({ athleteId, kind, feltOn, note: String(data.get("note") ?? "") })) setOpen(false);
  }

  return (
    <>
      <Button variant="danger" onPress={() => setOpen(true)}>
        Report pain
      </Button>
      <Dialog title={`Does ${givenName}'s arm hurt?`} isOpen={isOpen} onOpenChange={setOpen}>
        <Form onSubmit={(data) => void submit(data)} errors={report.problem?.fields} aria-label="Report pain">
          <p>
            This stops all throwing at once, tells the guardians and the coach, and names every booked session
            with throws. Only the guardian (an athlete of 18 for themselves) can clear it.
          </p>
          <CommandProblem problem={report.problem} />
          <RadioChoice
            label="What is it"
            options={KINDS}
            value={kind}
            onChange={(value) => setKind(value as PainKind)}
          />
          <DateField label="Felt on" value={feltOn} onChange={setFeltOn} max={today} isRequired />
          <TextArea label="Where, and when in the throw" name="note" rows={2} maxLength={1000} isOptional />
          <DialogActions>
            <Button type="submit" variant="danger" isPending={report.pending}>
              Stop all throwing
            </Button>
            <Button onPress={() => setOpen(false)}>Leave it</Button>
          </DialogActions>
        </Form>
      </Dialog>
    </>
  );
}
