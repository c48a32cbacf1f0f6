"use client";
import { Button } from "@/components/ui/button";
import { SelectField } from "@/components/ui/select-field";
import { TimeField } from "@/components/ui/time-field";
import { WEEKDAY_WORDS, weekdayInWords } from "@/server/domain/time/week-problem";
import styles from "./week-editor.module.css";

/** One span being edited; a time that is not entered yet is null. An end at 00:00 is midnight, minute 1440. */
export interface DraftSpan {
  key: number;
  weekday: number;
  startsMin: number | null;
  endsMin: number | null;
  siteId: string;
}

/** What a {@link WeekEditor} takes. */
export interface WeekEditorProps {
  spans: readonly DraftSpan[];
  onChange: (spans: DraftSpan[]) => void;
  /** What a day without hours is called: "closed", "does not work". */
  emptyWord: string;
  /** Given where each span names its site; more than one. */
  sites?: readonly { siteId: string; name: string }[];
}

/** A week by its days: each with none, one or several spans of time. */
export function WeekEditor({ spans, onChange, emptyWord, sites }: WeekEditorProps) {
  const nextKey = Math.max(0, ...spans.map((span) => span.key)) + 1;
  const change = (key: number, changed: Partial<DraftSpan>) =>
    onChange(spans.map((span) => (span.key === key ? { ...span, ...changed } : span)));
  const add = (weekday: number) => {
    const like = spans.findLast((span) => span.weekday < weekday) ?? spans[0];
    const { startsMin, endsMin, siteId } = like ?? {
      startsMin: 900,
      endsMin: 1260,
      siteId: sites?.[0]?.siteId ?? "",
    };
    const isFirst = !spans.some((span) => span.weekday === weekday);
    const times = isFirst ? { startsMin, endsMin } : { startsMin: null, endsMin: null };
    onChange([...spans, { key: nextKey, weekday, siteId, ...times }]);
  };
  return (
    <div className={styles.week}>
      {WEEKDAY_WORDS.map((word, index) => {
        const weekday = index + 1;
        const own = spans.filter((span) => span.weekday === weekday);
        return (
          <fieldset key={word} className={styles.day}>
            <legend className={styles.name}>{word}</legend>
            <div className={styles.spans}>
              {own.length === 0 ? <span className={styles.empty}>{emptyWord}</span> : null}
              {own.map((span) => (
                <SpanFields
                  key={span.key}
                  span={span}
                  sites={sites}
                  onChange={(changed) => change(span.key, changed)}
                  onRemove={() => onChange(spans.filter((each) => each.key !== span.key))}
                />
              ))}
            </div>
            <Button
              isSmall
              variant="link"
              onPress={() => add(weekday)}
              aria-label={`Add hours on ${weekdayInWords(weekday)}`}
            >
              Add hours
            </Button>
          </fieldset>
        );
      })}
    </div>
  );
}

interface SpanFieldsProps {
  span: DraftSpan;
  sites: WeekEditorProps["sites"];
  onChange: (changed: Partial<DraftSpan>) => void;
  onRemove: () => void;
}

function SpanFields({ span, sites, onChange, onRemove }: SpanFieldsProps) {
  const day = weekdayInWords(span.weekday);
  return (
    <div className={styles.span}>
      <TimeField label="From" value={span.startsMin} onChange={(startsMin) => onChange({ startsMin })} />
      <TimeField
        label="To"
        value={span.endsMin === 1440 ? 0 : span.endsMin}
        onChange={(minute) => onChange({ endsMin: minute === 0 ? 1440 : minute })}
      />
      {sites && sites.length > 1 ? (
        <SelectField
          label="At"
          value={span.siteId}
          onChange={(siteId) => onChange({ siteId: siteId ?? "" })}
          options={sites.map((site) => ({ value: site.siteId, label: site.name }))}
        />
      ) : null}
      <Button isSmall variant="link" onPress={onRemove} aria-label={`Take these hours out of ${day}`}>
        Take out
      </Button>
    </div>
  );
}

/** The spans of a week as they are edited. */
export function draftOf(
  week: readonly { weekday: number; startsMin: number; endsMin: number; siteId?: string }[],
): DraftSpan[] {
  return week.map((span, key) => ({ siteId: "", ...span, key }));
}

/** The edited spans as they are saved, Monday first; null while a time is missing. */
export function weekOfDraft(spans: readonly DraftSpan[]) {
  const whole = spans.flatMap(({ weekday, startsMin, endsMin, siteId }) =>
    startsMin === null || endsMin === null ? [] : [{ weekday, startsMin, endsMin, siteId }],
  );
  if (whole.length < spans.length) return null;
  return whole.sort((a, b) => a.weekday - b.weekday || a.startsMin - b.startsMin);
}
