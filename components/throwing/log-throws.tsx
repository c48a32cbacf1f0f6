"use client";
import { useRouter } from "next/navigation";
import { useState } from "react";
import { PainFields } from "@/components/sessions/pain-fields";
import { Button } from "@/components/ui/button";
import { Disclosure } from "@/components/ui/disclosure";
import { Form, FormActions, FormPart } from "@/components/ui/form";
import { Notice } from "@/components/ui/notice";
import { RadioChoice } from "@/components/ui/radio-choice";
import { showToast } from "@/components/ui/toast";
import { THROW_KINDS, type ThrowKind } from "@/server/domain/throwing/throw-entry";
import { THROW_KIND_WORDS } from "@/server/domain/throwing/throw-words";
import { hasGameDetails } from "@/server/domain/throwing/validate-game";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import grid from "./choice-grid.module.css";
import { DayChoice } from "./day-choice";
import { GameFields, type TeamChoice } from "./game-fields";
import { loggedInWords } from "./logged-in-words";
import { NumberChoice } from "./number-choice";
import { useThrowDesk } from "./throw-desk";
import { firstThrowDraft, painOf, type ThrowDraft, throwsOf, whatInWords } from "./throw-draft";
import { YesOrNo } from "./yes-or-no";

const KINDS = THROW_KINDS.map((kind) => ({ value: kind, label: THROW_KIND_WORDS[kind] }));
/* So that a lesson is two taps, whatever was logged last. */
const QUICK_KINDS = ["lesson", "bullpen"] as const;
const NO_NUMBER = "Choose a number; None says that nothing was thrown.";

/** What a {@link LogThrows} takes. */
export interface LogThrowsProps {
  athlete: { athleteId: string; givenName: string };
  today: CalendarDay;
  /** What was logged last: the likeliest kind. */
  usualKind: ThrowKind;
  teams: readonly TeamChoice[];
}

/** Throws into the log: the number, then the button, which says all that will be written; the rest is set already. */
export function LogThrows({ athlete, today, usualKind, teams }: LogThrowsProps) {
  const [draft, setDraft] = useState(() => firstThrowDraft(today, usualKind));
  const [logged, setLogged] = useState(0);
  const [isMissing, setMissing] = useState(false);
  const [isPending, setPending] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const desk = useThrowDesk();
  const router = useRouter();
  const change = (part: Partial<ThrowDraft>) => setDraft({ ...draft, ...part });
  const pain = painOf(draft);

  async function submit(kind: ThrowKind) {
    const told = { ...draft, kind };
    const throws = throwsOf(told, athlete.athleteId);
    setMissing(draft.pitches === null);
    if (!throws) return;
    setPending(true);
    const outcome = await desk.log(athlete.givenName, throws);
    setPending(false);
    const { isDone, text } = loggedInWords(outcome, whatInWords(told, today) ?? "");
    setProblem(isDone ? null : text);
    if (!isDone) return;
    showToast({ text });
    setDraft(firstThrowDraft(today, draft.kind));
    setLogged(logged + 1);
    if (outcome.kind === "sent") router.refresh();
  }

  return (
    <Form onSubmit={() => void submit(draft.kind)} aria-label="Log throws">
      <NumberChoice
        key={`number ${logged}`}
        onChange={(pitches) => change({ pitches })}
        error={isMissing && draft.pitches === null ? NO_NUMBER : undefined}
      />
      <RadioChoice
        label="What"
        options={KINDS}
        className={grid.four ?? ""}
        value={draft.kind}
        onChange={(value) => change({ kind: value as ThrowKind })}
      />
      <DayChoice
        key={`day ${logged}`}
        today={today}
        day={draft.thrownOn}
        onChange={(thrownOn) => change({ thrownOn })}
      />
      <GamePart draft={draft} today={today} teams={teams} onChange={change} />
      {problem ? <Notice kind="refusal">{problem}</Notice> : null}
      <FormActions>
        <Button
          type="submit"
          variant={pain ? "danger" : "primary"}
          isPending={isPending}
          pendingText="Logging…"
        >
          {submitWords(draft, today)}
        </Button>
        {QUICK_KINDS.filter((quick) => quick !== draft.kind && !pain).map((quick) => (
          <Button key={quick} isDisabled={isPending} onPress={() => void submit(quick)}>
            {`As a ${THROW_KIND_WORDS[quick].toLowerCase()}`}
          </Button>
        ))}
      </FormActions>
    </Form>
  );
}

/** What is asked of a game: what it says beside its pitches, and whether anything hurts. */
function GamePart(props: {
  draft: ThrowDraft;
  today: CalendarDay;
  teams: readonly TeamChoice[];
  onChange: (part: Partial<ThrowDraft>) => void;
}) {
  const { draft, today, teams, onChange } = props;
  if (!hasGameDetails(draft.kind)) return null;
  return (
    <>
      <Disclosure summary="Innings, last batter, catching, walks, team">
        <FormPart>
          <GameFields game={draft.game} teams={teams} onChange={(game) => onChange({ game })} />
        </FormPart>
      </Disclosure>
      <YesOrNo question="Does anything hurt?" value={draft.hurts} onChange={(hurts) => onChange({ hurts })} />
      {draft.hurts ? (
        <PainFields pain={draft.pain} today={today} onChange={(pain) => onChange({ pain })} />
      ) : null}
    </>
  );
}

function submitWords(draft: ThrowDraft, today: CalendarDay): string {
  const what = whatInWords(draft, today);
  if (what === null) return "Log throws";
  return painOf(draft) ? `Log ${what}, and stop all throwing` : `Log ${what}`;
}
