import { DefinitionList } from "@/components/ui/definition-list";
import { spanInClock, WEEKDAY_WORDS } from "@/server/domain/time/week-problem";

interface Span {
  weekday: number;
  startsMin: number;
  endsMin: number;
  /** Where, when it is not the same for all. */
  siteName?: string | undefined;
}

/** A week in words, day by day. */
export function WeekLines({ week, emptyWord }: { week: readonly Span[]; emptyWord: string }) {
  const items = WEEKDAY_WORDS.map((term, index) => {
    const own = week.filter((span) => span.weekday === index + 1);
    const words = own.map((span) => spanInClock(span) + (span.siteName ? `, ${span.siteName}` : ""));
    return { term, detail: words.join("; ") || emptyWord };
  });
  return <DefinitionList items={items} />;
}
