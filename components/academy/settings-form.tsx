"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { Form, FormActions, FormPart, FormRow } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { PageHeading } from "@/components/ui/page-heading";
import { RadioChoice } from "@/components/ui/radio-choice";
import { Section } from "@/components/ui/section";
import { TextField } from "@/components/ui/text-field";
import { showToast } from "@/components/ui/toast";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { AcademySettings } from "@/server/domain/people/academy-settings";
import { AcademyPage } from "./academy-page";
import { AcademyPlace } from "./academy-place";

/** Changes what holds for the whole academy, over the version it was read at. */
export function SettingsForm({ kept }: { kept: Answers["academy"]["settings"] }) {
  const [settings, setSettings] = useState(kept.settings);
  const save = useCommand((api, input: { settings: AcademySettings; version: number }, once) =>
    api.academy.saveSettings.mutate(input, once),
  );
  const set = (change: Partial<AcademySettings>) => setSettings((before) => ({ ...before, ...change }));
  const number = (name: NumberSetting) => ({
    name: `settings.${name}`,
    value: settings[name],
    onChange: (value: number | null) => set({ [name]: value ?? 0 }),
  });
  async function submit() {
    if (await save.run({ settings, version: kept.version })) showToast({ text: "Settings saved" });
  }
  return (
    <AcademyPage>
      <PageHeading
        question="What holds for the whole academy?"
        place={<AcademyPlace />}
        detail="The figures a new academy starts with are common practice, no more. A change holds from now on: what was promised or charged before stays."
      />
      <CommandProblem problem={save.problem} isBesideFields />
      <Form onSubmit={() => void submit()} errors={save.problem?.fields ?? {}} aria-label="Settings">
        <NameAndMoney settings={settings} set={set} isCurrencyInUse={kept.isCurrencyInUse} />
        <Section title="Reviews">
          <FormPart>
            <RadioChoice
              label="A review is promised within"
              name="settings.promiseKind"
              value={settings.promiseKind}
              onChange={(kind) =>
                set({ promiseKind: kind === "working_hours" ? "working_hours" : "working_days" })
              }
              options={[
                { value: "working_days", label: "Working days" },
                { value: "working_hours", label: "Working hours" },
              ]}
              hint="Days the site is open. One working day means the close of the next such day."
            />
            <FormRow>
              <NumberField
                label="How many"
                min={1}
                max={240}
                unit={settings.promiseKind === "working_days" ? "days" : "hours"}
                {...number("promiseAmount")}
              />
              <NumberField
                label="Corrections open at a time, at most"
                min={1}
                max={10}
                {...number("maxOpenCorrections")}
              />
            </FormRow>
            <FormRow>
              <NumberField
                label="A round lapses after"
                hint="Without a reply from the family."
                min={1}
                max={120}
                unit="days"
                {...number("replySpanDays")}
              />
              <NumberField
                label="Confirm in person within"
                hint="Counted from when a round is settled."
                min={1}
                max={120}
                unit="days"
                {...number("followUpDays")}
              />
            </FormRow>
            <NumberField
              label="Clips are deleted after"
              hint="What was written about them stays."
              min={7}
              max={3650}
              unit="days"
              {...number("clipRetentionDays")}
            />
          </FormPart>
        </Section>
        <Section title="Booking">
          <FormRow>
            <NumberField
              label="Families book at least"
              hint="Before the session begins."
              min={0}
              max={20160}
              unit="min ahead"
              {...number("bookingNoticeMin")}
            />
            <NumberField
              label="And at most"
              hint="From today."
              min={1}
              max={400}
              unit="days ahead"
              {...number("bookingHorizonDays")}
            />
          </FormRow>
        </Section>
        <FormActions>
          <Button type="submit" variant="primary" isPending={save.pending}>
            Save the settings
          </Button>
        </FormActions>
      </Form>
    </AcademyPage>
  );
}

type NumberSetting = {
  [Name in keyof AcademySettings]: AcademySettings[Name] extends number ? Name : never;
}[keyof AcademySettings];

interface NameAndMoneyProps {
  settings: AcademySettings;
  set: (change: Partial<AcademySettings>) => void;
  isCurrencyInUse: boolean;
}

function NameAndMoney({ settings, set, isCurrencyInUse }: NameAndMoneyProps) {
  return (
    <Section title="Name and money">
      <FormRow>
        <TextField
          label="Name of the academy"
          name="settings.name"
          value={settings.name}
          onChange={(name) => set({ name })}
          maxLength={80}
          isRequired
        />
        <TextField
          label="Currency"
          name="settings.currency"
          value={settings.currency}
          onChange={(currency) => set({ currency: currency.toUpperCase() })}
          maxLength={3}
          isDisabled={isCurrencyInUse}
          {...(isCurrencyInUse ? { hint: "Fixed: there are prices in it." } : {})}
          isRequired
        />
      </FormRow>
    </Section>
  );
}
