"use client";
import { RadioChoice } from "@/components/ui/radio-choice";
import type { Answers } from "@/components/wire/answers";
import { FormDialog } from "@/components/wire/form-dialog";
import { numberOrNull } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import { LINK_DAYS, type LinkDays } from "@/server/domain/season-reports/report-link";
import { type SeasonSpan, spanInWords } from "@/server/domain/season-reports/season-span";

/** A link that was just made: the one time that its address is told. */
export type NewLink = Answers["seasonReports"]["makeLink"];

/** What a {@link MakeLink} takes. */
export interface MakeLinkProps {
  athlete: { athleteId: string; givenName: string };
  span: SeasonSpan;
  onMade: (link: NewLink) => void;
  onClose: () => void;
}

/** Asks for how long, and makes the link. */
export function MakeLink({ athlete, span, onMade, onClose }: MakeLinkProps) {
  const make = useCommand((api, input: SeasonSpan & { athleteId: string; days: LinkDays }, once) =>
    api.seasonReports.makeLink.mutate(input, once),
  );
  async function submit(data: FormData) {
    const days = LINK_DAYS.find((each) => each === numberOrNull(data, "days")) ?? LINK_DAYS[0];
    const link = await make.run({ athleteId: athlete.athleteId, ...span, days });
    if (link) onMade(link);
  }
  return (
    <FormDialog
      title={`Show ${athlete.givenName}’s report to others?`}
      label="A link to the report"
      submitText="Make the link"
      command={make}
      onSubmit={submit}
      onClose={onClose}
    >
      <p>
        Whoever has the link reads the report of {spanInWords(span)} without signing in, as it stands on the
        day they open it. They can pass the link on.
      </p>
      <RadioChoice
        name="days"
        label="For how long"
        defaultValue={String(LINK_DAYS[0])}
        options={LINK_DAYS.map((days) => ({ value: String(days), label: `${days} days` }))}
      />
    </FormDialog>
  );
}
