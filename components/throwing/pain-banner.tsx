import { Notice } from "@/components/ui/notice";
import { PAIN_KIND_WORDS } from "@/server/domain/throwing/throw-words";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import type { PainAnswer } from "./arm-answer";
import { ClearPain } from "./clear-pain";

/** What a {@link PainBanner} takes. */
export interface PainBannerProps {
  athlete: { athleteId: string; givenName: string };
  pain: PainAnswer;
  today: CalendarDay;
}

/** While pain stands: that all throwing has stopped, what was said, and how it ends. Nothing when there is none. */
export function PainBanner({ athlete, pain, today }: PainBannerProps) {
  const { stop } = pain;
  if (!stop) return null;
  const latest = pain.reports[0];
  return (
    <Notice
      kind="attention"
      word="Stop"
      title={`No throwing: ${PAIN_KIND_WORDS[stop.kind].toLowerCase()} was reported.`}
      isStatic
      actions={
        pain.mayClear ? <ClearPain {...athlete} today={today} lastFeltOn={stop.lastFeltOn} /> : undefined
      }
    >
      {latest ? (
        <p>
          {latest.byName}, {dayInWords(latest.feltOn)}
          {latest.note ? `: “${latest.note}”` : ""}
        </p>
      ) : null}
      <p>
        {pain.mayClear
          ? "You clear it, once there are no symptoms and somebody examined the arm."
          : `Only the ${pain.clearedBy} clears it, saying since when there have been no symptoms and who examined the arm.`}{" "}
        A session without throws is possible.
      </p>
    </Notice>
  );
}
