"use client";
import { useRouter } from "next/navigation";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Checkbox } from "@/components/ui/checkbox";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { showToast } from "@/components/ui/toast";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { SecondAdult } from "@/server/domain/calendar/second-adult";
import { SESSION_KIND } from "@/server/domain/calendar/session-kind";
import { SecondAdultChoice } from "./second-adult-choice";
import styles from "./sessions.module.css";
import type { TimeSearch } from "./time-search";

type Planning = Answers["sessions"]["planning"];
type Time = Answers["sessions"]["findTimes"]["times"][number];

/** What a {@link BookDialog} takes. */
export interface BookDialogProps {
  time: Time;
  search: TimeSearch;
  planning: Pick<Planning, "athletes" | "staff">;
  /** The version of the session that is being moved, and who watches it; null for a new one. */
  moved: { version: number; secondAdult: SecondAdult | null } | null;
  /** Who books: the guardian who is likely to watch. */
  ownPersonId: string;
  /** Where a session is looked at, up to its id. */
  sessionHref: string;
  onClose: () => void;
}

interface Booking {
  plannedPitches: Readonly<Record<string, number>>;
  secondAdult: SecondAdult | null;
  correctionIds: readonly string[];
}

/** The last look before a time is taken: pitches for each arm, what to confirm, and who can see it. */
export function BookDialog(props: BookDialogProps) {
  const { time, search, planning, moved, sessionHref, onClose } = props;
  const router = useRouter();
  const { athletes, staff } = planning;
  const [booking, setBooking] = useState<Booking>(() => firstBooking(props));
  const take = useTaking();
  const isThrowing = SESSION_KIND[search.kind].throwsOnMound;
  const only = athletes.length === 1 ? athletes[0] : undefined;
  const corrections = moved ? [] : athletes.flatMap((one) => one.corrections);

  async function submit() {
    const sessionId = await take.run({ props, booking });
    if (!sessionId) return;
    showToast({ text: `${moved ? "Moved" : "Booked"}. ${time.sentence}` });
    router.push(`${sessionHref}/${sessionId}`);
  }

  return (
    <Dialog title={moved ? "Move it here?" : "Take this time?"} isOpen onOpenChange={onClose}>
      <Form onSubmit={() => void submit()} aria-label="Take this time">
        <p>
          <strong>{SESSION_KIND[search.kind].label}</strong>, {search.durationMin} min. {time.sentence}
        </p>
        <CommandProblem problem={take.problem} />
        {isThrowing
          ? athletes.map((one) => (
              <NumberField
                key={one.athleteId}
                label={only ? "Pitches planned" : `Pitches planned for ${one.givenName}`}
                hint={
                  time.atMost === null ? undefined : `At most ${time.atMost} by the book; never a permission.`
                }
                min={0}
                max={400}
                value={booking.plannedPitches[one.athleteId] ?? 0}
                onChange={(pitches) =>
                  setBooking({
                    ...booking,
                    plannedPitches: { ...booking.plannedPitches, [one.athleteId]: pitches ?? 0 },
                  })
                }
              />
            ))
          : null}
        {only?.isMinor ? (
          <SecondAdultChoice
            guardians={only.guardians}
            staff={staff.filter(({ personId }) => personId !== time.coachPersonId)}
            value={booking.secondAdult}
            onChange={(secondAdult) => setBooking({ ...booking, secondAdult })}
          />
        ) : null}
        {corrections.length > 0 ? (
          <details className={styles.fold}>
            <summary>To confirm in person: {booking.correctionIds.length}</summary>
            <fieldset className={styles.choices} aria-label="To confirm in person">
              {corrections.map(({ correctionId, checkpointName, cue }) => (
                <Checkbox
                  key={correctionId}
                  label={checkpointName}
                  hint={cue}
                  isSelected={booking.correctionIds.includes(correctionId)}
                  onChange={(isOn) =>
                    setBooking({
                      ...booking,
                      correctionIds: toggled(booking.correctionIds, correctionId, isOn),
                    })
                  }
                />
              ))}
            </fieldset>
          </details>
        ) : null}
        <DialogActions>
          <Button type="submit" variant="primary" isPending={take.pending} pendingText="Taking it…">
            {moved ? "Move the session" : "Book it"}
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </DialogActions>
      </Form>
    </Dialog>
  );
}

/** Books the time, or moves the session there; resolves to the session's id, or to nothing when it was refused. */
function useTaking() {
  return useCommand(
    async (api, input: { props: BookDialogProps; booking: Booking }, once) => {
      const { time, search, moved } = input.props;
      const { plannedPitches, secondAdult, correctionIds } = input.booking;
      const { startsAtMs, siteId, laneId, coachPersonId } = time;
      const athletes = search.athleteIds.map((athleteId) => ({
        athleteId,
        plannedPitches: plannedPitches[athleteId] ?? 0,
      }));
      const { kind, durationMin, moveSessionId, roundId } = search;
      const place = { kind, durationMin, startsAtMs, siteId, laneId, coachPersonId, athletes, secondAdult };
      if (moved && moveSessionId) {
        await api.sessions.move.mutate({ ...place, sessionId: moveSessionId, version: moved.version }, once);
        return moveSessionId;
      }
      const whole = { ...place, roundId, correctionIds: [...correctionIds] };
      return (await api.sessions.book.mutate(whole, once)).sessionId;
    },
    { refresh: false },
  );
}

function firstBooking({ time, search, planning, moved, ownPersonId }: BookDialogProps): Booking {
  const [first, ...others] = planning.athletes;
  const fitting = time.atMost === null ? search.plannedPitches : Math.min(search.plannedPitches, time.atMost);
  const own = first?.guardians.find(({ personId }) => personId === ownPersonId) ?? first?.guardians[0];
  const watching = own ? { kind: "guardian" as const, personId: own.personId } : null;
  const isAlone = others.length === 0 && first?.isMinor === true;
  return {
    plannedPitches: Object.fromEntries(search.athleteIds.map((id) => [id, fitting])),
    secondAdult: isAlone ? (named(moved?.secondAdult) ?? watching) : null,
    correctionIds: planning.athletes.flatMap((one) => one.corrections.map((each) => each.correctionId)),
  };
}

/** A second adult as a command takes one: without the name that a screen was given with it. */
function named(adult: SecondAdult | null | undefined): SecondAdult | null {
  return adult ? { kind: adult.kind, personId: adult.personId } : null;
}

function toggled(ids: readonly string[], id: string, isOn: boolean): string[] {
  return isOn ? [...ids, id] : ids.filter((each) => each !== id);
}
