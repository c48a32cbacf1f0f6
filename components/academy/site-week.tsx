"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Notice } from "@/components/ui/notice";
import { showToast } from "@/components/ui/toast";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { Site } from "./site";
import styles from "./site-part.module.css";
import { type DraftSpan, draftOf, WeekEditor, weekOfDraft } from "./week-editor";
import { WeekLines } from "./week-lines";

type Week = Site["week"];
const asSpans = (week: Week) =>
  week.map(({ weekday, opensMin, closesMin }) => ({ weekday, startsMin: opensMin, endsMin: closesMin }));

/** The weekly opening hours of a site, read or being changed. */
export function SiteWeek({ site, isAdmin }: { site: Site; isAdmin: boolean }) {
  const [draft, setDraft] = useState<DraftSpan[] | null>(null);
  const [isUnfinished, setIsUnfinished] = useState(false);
  const save = useCommand((api, input: { siteId: string; week: Week }, once) =>
    api.sites.setWeek.mutate(input, once),
  );
  async function submit(spans: readonly DraftSpan[]) {
    const week = weekOfDraft(spans);
    setIsUnfinished(week === null);
    if (week === null) return;
    const opened = week.map(({ weekday, startsMin, endsMin }) => ({
      weekday,
      opensMin: startsMin,
      closesMin: endsMin,
    }));
    if (!(await save.run({ siteId: site.siteId, week: opened }))) return;
    setDraft(null);
    showToast({ text: `Hours of ${site.name} saved` });
  }
  return (
    <div>
      <div className={styles.head}>
        <h3>Open</h3>
        {isAdmin && draft === null ? (
          <Button isSmall onPress={() => setDraft(draftOf(asSpans(site.week)))}>
            Change the hours
          </Button>
        ) : null}
      </div>
      <CommandProblem problem={save.problem} />
      {isUnfinished ? <Notice kind="refusal">Enter both times of each span, or take it out.</Notice> : null}
      {draft === null ? (
        <WeekLines week={asSpans(site.week)} emptyWord="closed" />
      ) : (
        <>
          <WeekEditor spans={draft} onChange={setDraft} emptyWord="closed" />
          <div className={styles.actions}>
            <Button variant="primary" isPending={save.pending} onPress={() => void submit(draft)}>
              Save the hours
            </Button>
            <Button onPress={() => setDraft(null)}>Leave them</Button>
          </div>
        </>
      )}
    </div>
  );
}
