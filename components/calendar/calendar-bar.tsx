"use client";
import { useRouter } from "next/navigation";
import { DateField } from "@/components/ui/date-field";
import { LinkButton } from "@/components/ui/link-button";
import { SelectField } from "@/components/ui/select-field";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import styles from "./calendar.module.css";
import { type CalendarPlace, calendarHref, stepped } from "./calendar-address";

/** What a {@link CalendarBar} takes. */
export interface CalendarBarProps {
  place: CalendarPlace;
  today: CalendarDay;
  sites: readonly { id: string; name: string }[];
}

const VIEWS = [
  { view: "day", label: "Day by lane" },
  { view: "week", label: "Week by coach" },
] as const;

/** The way through the calendar: back, today, on; any day; one site or all; by lane or by coach. */
export function CalendarBar({ place, today, sites }: CalendarBarProps) {
  const router = useRouter();
  const go = (to: CalendarPlace) => router.push(calendarHref(to));
  const span = place.view === "week" ? "week" : "day";
  return (
    <div className={styles.bar} data-print="no">
      <nav aria-label="Days" className={styles.steps}>
        <LinkButton isSmall href={calendarHref(stepped(place, -1))} aria-label={`The ${span} before`}>
          Before
        </LinkButton>
        <LinkButton isSmall href={calendarHref({ ...place, day: today })}>
          {place.view === "week" ? "This week" : "Today"}
        </LinkButton>
        <LinkButton isSmall href={calendarHref(stepped(place, 1))} aria-label={`The ${span} after`}>
          After
        </LinkButton>
      </nav>
      <DateField
        key={place.day}
        label="Go to"
        className={styles.inline ?? ""}
        defaultValue={place.day}
        onChange={(day) => {
          if (day && day > "2000-01-01") go({ ...place, day });
        }}
      />
      {sites.length > 1 ? (
        <SelectField
          label="Site"
          className={styles.inline ?? ""}
          value={place.siteId ?? "all"}
          options={[
            { value: "all", label: "All sites" },
            ...sites.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          onChange={(siteId) => go({ ...place, siteId: siteId === "all" ? null : siteId })}
        />
      ) : null}
      <nav aria-label="Ways to look" className={styles.views}>
        {VIEWS.map(({ view, label }) => (
          <LinkButton
            key={view}
            isSmall
            variant={view === place.view ? "quiet" : "link"}
            href={calendarHref({ ...place, view })}
            aria-current={view === place.view ? "true" : undefined}
          >
            {label}
          </LinkButton>
        ))}
      </nav>
    </div>
  );
}
