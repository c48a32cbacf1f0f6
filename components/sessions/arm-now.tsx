"use client";
import { Button } from "@/components/ui/button";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import styles from "./sessions.module.css";

type View = Answers["sessions"]["forStaff"];
type Now = NonNullable<View["athletes"][number]["now"]>;

/** What the session asks of an arm and what the book leaves it now: in one line, or as a notice when it is too much. */
export function ArmNow({
  now,
  givenName,
  children,
}: {
  now: Now;
  givenName: string;
  children?: React.ReactNode;
}) {
  const words = `${givenName} ${now.words}.`;
  if (now.hasRoom) return <p className={styles.armLine}>{words}</p>;
  return (
    <Notice kind="attention" title={words} actions={children} isStatic>
      {now.why.join(" ")}
    </Notice>
  );
}

/** Ways out of a booked session without room: another time, or the same time without mound throws. */
export function WaysOut({ view }: { view: View }) {
  const { head, athletes } = view;
  const { id: sessionId, version, startsAtMs, endsAtMs, siteId, laneId, coachPersonId } = head;
  const replan = useCommand((api, _: null, once) =>
    api.sessions.move.mutate(
      {
        ...{ sessionId, version, startsAtMs, siteId, laneId, coachPersonId, kind: "dry_work" },
        durationMin: Math.round((endsAtMs - startsAtMs) / 60_000),
        athletes: athletes.map(({ athleteId }) => ({ athleteId, plannedPitches: 0 })),
        secondAdult: head.secondAdult
          ? { kind: head.secondAdult.kind, personId: head.secondAdult.personId }
          : null,
      },
      once,
    ),
  );
  return (
    <>
      <Button isPending={replan.pending} onPress={() => void replan.run(null)}>
        Hold it without mound throws
      </Button>
      <LinkButton href={`/calendar/find?move=${sessionId}`}>Find another time</LinkButton>
      <CommandProblem problem={replan.problem} />
    </>
  );
}
