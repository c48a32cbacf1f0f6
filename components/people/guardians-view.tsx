"use client";
import { Section } from "@/components/ui/section";
import { SwitchField } from "@/components/ui/switch-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { ConsentScreenProps } from "./consent-state";

/** Who of the guardians sees the athlete's record, and, for an athlete of age, whether they still may. */
export function GuardiansView({ athleteId, state }: ConsentScreenProps) {
  const grant = useCommand((api, input: { athleteId: string; grants: boolean }, once) =>
    api.consent.grantGuardians.mutate(input, once),
  );
  const names = new Intl.ListFormat("en-GB").format(state.guardianNames);
  if (!state.isOfAge) {
    return (
      <Section title="Who else can see">
        <p>
          {names || "Nobody"} {state.guardianNames.length === 1 ? "stands" : "stand"} for {state.givenName}:
          they see everything of {state.givenName} and are told whatever {state.givenName} is told. That ends
          at 18, unless {state.givenName} then allows it.
        </p>
      </Section>
    );
  }
  if (!state.mayGrant || state.guardianNames.length === 0) return null;
  return (
    <Section title="Who else can see">
      <CommandProblem problem={grant.problem} />
      <p>You are of age. {names} can see your record only while you allow it.</p>
      <SwitchField
        label="Guardians may see my record"
        isSelected={state.grantsGuardians}
        isDisabled={grant.pending}
        onChange={(grants) => void grant.run({ athleteId, grants })}
        words={{ on: "allowed", off: "not allowed" }}
      />
    </Section>
  );
}
