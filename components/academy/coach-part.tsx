"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Notice } from "@/components/ui/notice";
import { Section } from "@/components/ui/section";
import { showToast } from "@/components/ui/toast";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import { fullName } from "@/server/domain/people/person";
import { AbsencesPart } from "./absences-part";
import type { CoachWeek, HoursScreenProps } from "./coach-week";
import styles from "./site-part.module.css";
import { type DraftSpan, draftOf, WeekEditor, weekOfDraft } from "./week-editor";
import { WeekLines } from "./week-lines";

type CoachPartProps = Omit<HoursScreenProps, "coaches"> & { coach: CoachWeek };

/** One coach: their week, and when they are away. */
export function CoachPart({ coach, sites, today, isAdmin }: CoachPartProps) {
  const [draft, setDraft] = useState<DraftSpan[] | null>(null);
  const canEdit = isAdmin && sites.length > 0;
  return (
    <Section title={fullName(coach)}>
      <div className={styles.parts}>
        <div>
          <div className={styles.head}>
            <h3>Works</h3>
            {canEdit && draft === null ? (
              <Button
                isSmall
                onPress={() => setDraft(draftOf(coach.week))}
                aria-label={`Change the hours of ${fullName(coach)}`}
              >
                Change the hours
              </Button>
            ) : null}
          </div>
          {draft === null ? (
            <WeekLines week={namedWeek(coach, sites)} emptyWord="does not work" />
          ) : (
            <CoachWeekForm coach={coach} sites={sites} draft={draft} setDraft={setDraft} />
          )}
        </div>
        <AbsencesPart coach={coach} sites={sites} today={today} isAdmin={canEdit} />
      </div>
    </Section>
  );
}

function namedWeek(coach: CoachWeek, sites: CoachPartProps["sites"]) {
  const nameOf = (siteId: string) => sites.find((site) => site.siteId === siteId)?.name;
  return coach.week.map((span) => ({
    ...span,
    siteName: sites.length > 1 ? nameOf(span.siteId) : undefined,
  }));
}

interface CoachWeekFormProps {
  coach: CoachWeek;
  sites: CoachPartProps["sites"];
  draft: readonly DraftSpan[];
  setDraft: (draft: DraftSpan[] | null) => void;
}

function CoachWeekForm({ coach, sites, draft, setDraft }: CoachWeekFormProps) {
  const [isUnfinished, setIsUnfinished] = useState(false);
  const save = useCommand((api, input: { coachPersonId: string; week: CoachWeek["week"] }, once) =>
    api.hours.setWeek.mutate(input, once),
  );
  async function submit() {
    const week = weekOfDraft(draft);
    setIsUnfinished(week === null);
    if (week === null) return;
    if (!(await save.run({ coachPersonId: coach.personId, week }))) return;
    setDraft(null);
    showToast({ text: `Hours of ${coach.givenName} saved` });
  }
  return (
    <div>
      <CommandProblem problem={save.problem} />
      {isUnfinished ? <Notice kind="refusal">Enter both times of each span, or take it out.</Notice> : null}
      <WeekEditor spans={draft} onChange={setDraft} emptyWord="does not work" sites={sites} />
      <div className={styles.actions}>
        <Button variant="primary" isPending={save.pending} onPress={() => void submit()}>
          Save the hours
        </Button>
        <Button onPress={() => setDraft(null)}>Leave them</Button>
      </div>
    </div>
  );
}
