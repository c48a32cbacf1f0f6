"use client";
import { TextArea } from "@/components/ui/text-area";
import type { Answers } from "@/components/wire/answers";
import { FormDialog } from "@/components/wire/form-dialog";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import { FOCUS_LENGTH } from "@/server/domain/season-reports/report-in-words";

/** Writes what the next season is for; what was written before stays on record. */
export function WriteFocus({
  view,
  onClose,
}: {
  view: Answers["seasonReports"]["view"];
  onClose: () => void;
}) {
  const { athlete, report, writtenId } = view;
  const write = useCommand(
    (
      api,
      input: { athleteId: string; fromOn: string; toOn: string; focus: string; afterId: string | null },
      once,
    ) => api.seasonReports.write.mutate(input, once),
  );
  async function submit(data: FormData) {
    const { fromOn, toOn } = report;
    const focus = textOf(data, "focus");
    if (await write.run({ athleteId: athlete.athleteId, fromOn, toOn, focus, afterId: writtenId })) onClose();
  }
  return (
    <FormDialog
      title="What is the next season for?"
      label="The next season’s focus"
      submitText="Write it into the report"
      command={write}
      onSubmit={submit}
      onClose={onClose}
    >
      <TextArea
        name="focus"
        label="In plain words"
        hint={`At most ${FOCUS_LENGTH} characters. The family reads it, and so does whoever they give a link to: no full names, nothing about health.`}
        defaultValue={report.focus?.text ?? ""}
        maxLength={FOCUS_LENGTH}
        rows={6}
      />
    </FormDialog>
  );
}
