import { DefinitionList } from "@/components/ui/definition-list";
import { PageHeading } from "@/components/ui/page-heading";
import type { Answers } from "@/components/wire/answers";
import { promiseInWords } from "@/server/domain/people/academy-settings";
import { AcademyPage } from "./academy-page";
import { AcademyPlace } from "./academy-place";

/** What holds for the whole academy, for those who work by it and do not set it. */
export function SettingsLines({ settings }: Pick<Answers["academy"]["settings"], "settings">) {
  return (
    <AcademyPage>
      <PageHeading
        question="What holds for the whole academy?"
        place={<AcademyPlace />}
        detail="Admins change these settings."
      />
      <DefinitionList
        items={[
          { term: "Name", detail: settings.name },
          { term: "Currency", detail: settings.currency },
          { term: "A review is promised within", detail: promiseInWords(settings) },
          { term: "Corrections open at a time", detail: `at most ${settings.maxOpenCorrections}` },
          { term: "A round lapses after", detail: `${settings.replySpanDays} days without a reply` },
          { term: "Confirm in person within", detail: `${settings.followUpDays} days of a settled round` },
          { term: "Clips are deleted after", detail: `${settings.clipRetentionDays} days` },
          { term: "Families book at least", detail: `${settings.bookingNoticeMin} min ahead` },
          { term: "And at most", detail: `${settings.bookingHorizonDays} days ahead` },
        ]}
      />
    </AcademyPage>
  );
}
