"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Form, FormActions } from "@/components/ui/form";
import { showToast } from "@/components/ui/toast";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { firstDraft, type LineDraft, linesOf, missingIn } from "./log-draft";
import { LogLineFields } from "./log-line-fields";

type Log = { sessionId: string; version: number; lines: ReturnType<typeof linesOf> };

/** What was done, a part for each athlete; sent as one, with the throws and the charges. */
export function LogForm({ view }: { view: Answers["sessions"]["forStaff"] }) {
  const { head, athletes } = view;
  const [drafts, setDrafts] = useState<Record<string, LineDraft>>(() => firstDraft(view));
  const [missing, setMissing] = useState<Record<string, string>>({});
  const log = useCommand((api, input: Log, once) => api.sessions.log.mutate(input, once));

  async function submit() {
    const nowMissing = missingIn(drafts, athletes);
    setMissing(nowMissing);
    if (Object.keys(nowMissing).length > 0) return;
    const done = await log.run({ sessionId: head.id, version: head.version, lines: linesOf(drafts) });
    if (done) showToast({ text: "Logged: throws and charges are written down." });
  }

  return (
    <Form onSubmit={() => void submit()} errors={missing} aria-label="Log the session">
      <CommandProblem problem={log.problem} />
      {athletes.map((athlete) => {
        const draft = drafts[athlete.athleteId];
        if (!draft) return null;
        return (
          <LogLineFields
            key={athlete.athleteId}
            athlete={athlete}
            kind={head.kind}
            isOneOfSeveral={athletes.length > 1}
            draft={draft}
            missing={missing}
            onChange={(part) => setDrafts({ ...drafts, [athlete.athleteId]: { ...draft, ...part } })}
          />
        );
      })}
      <FormActions>
        <Button type="submit" variant="primary" isPending={log.pending} pendingText="Logging…">
          Log the session
        </Button>
      </FormActions>
    </Form>
  );
}
