"use client";
import { useEffect, useState } from "react";
import { FormPart } from "@/components/ui/form";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { RadioChoice } from "@/components/ui/radio-choice";
import { Section } from "@/components/ui/section";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayOnDevice } from "./day-on-device";
import { type DeviceMemory, rememberedFamily } from "./device-memory";
import { deviceStore } from "./device-store";
import { LogThrows } from "./log-throws";
import { ThrowDeskPart } from "./throw-desk";

interface Device {
  family: DeviceMemory | null;
  today: CalendarDay;
}

/** Logs throws onto this device for the family that is signed in on it; they are sent once there is signal. */
export function LogWithoutSignal() {
  const [device, setDevice] = useState<Device | null>(null);
  useEffect(() => setDevice({ family: rememberedFamily(deviceStore), today: dayOnDevice() }), []);
  if (device === null) return null;
  const { family, today } = device;
  const [first] = family?.athletes ?? [];
  if (!family || !first) {
    return (
      <Notice
        kind="attention"
        title="There is no signal, or nobody is signed in on this phone."
        actions={<BackButton />}
        isStatic
      >
        Sign in once where there is signal, open the throws, and this page can log without it.
      </Notice>
    );
  }
  return (
    <ThrowDeskPart personId={family.personId}>
      <Notice kind="info" title="The academy cannot be reached." actions={<BackButton />} isStatic>
        What you log here is kept on this phone and sent by itself when there is signal. How much the book
        leaves is not known here.
      </Notice>
      <Section title="Log throws">
        <LogFor athletes={family.athletes} first={first} today={today} />
      </Section>
    </ThrowDeskPart>
  );
}

type Athlete = DeviceMemory["athletes"][number];

function LogFor(props: { athletes: readonly Athlete[]; first: Athlete; today: CalendarDay }) {
  const { athletes, first, today } = props;
  const [chosenId, setChosenId] = useState(first.athleteId);
  const chosen = athletes.find((each) => each.athleteId === chosenId) ?? first;
  return (
    <FormPart>
      {athletes.length > 1 ? (
        <RadioChoice
          label="Who threw"
          options={athletes.map((each) => ({ value: each.athleteId, label: each.givenName }))}
          value={chosen.athleteId}
          onChange={setChosenId}
        />
      ) : null}
      <LogThrows key={chosen.athleteId} athlete={chosen} today={today} usualKind="game" teams={[]} />
    </FormPart>
  );
}

function BackButton() {
  return (
    <LinkButton href="/" prefetch={false} isSmall>
      Try the academy again
    </LinkButton>
  );
}
