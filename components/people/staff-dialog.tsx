"use client";
import { useRouter } from "next/navigation";
import { Checkbox } from "@/components/ui/checkbox";
import { FormDialog } from "@/components/wire/form-dialog";
import { useCommand } from "@/components/wire/use-command";
import type { StaffRole } from "@/server/domain/people/person";
import type { PersonDetails } from "@/server/domain/people/person-details";
import { PersonFields, personOf } from "./person-fields";

/** Adds a coach or an admin; their page, where they are invited, opens next. */
export function StaffDialog({ onClose }: { onClose: () => void }) {
  const router = useRouter();
  const add = useCommand(
    (api, input: PersonDetails & { email: string; roles: StaffRole[] }, once) =>
      api.people.addStaff.mutate(input, once),
    { refresh: false },
  );
  async function submit(data: FormData) {
    const person = personOf(data);
    const roles = (["coach", "admin"] as const).filter((role) => data.get(role) !== null);
    const answer = await add.run({ ...person, email: person.email ?? "", roles });
    if (answer) router.push(`/academy/people/${answer.personId}`);
  }
  return (
    <FormDialog
      title="Add a coach or admin"
      label="Coach or admin"
      submitText="Add this person"
      command={add}
      onSubmit={submit}
      onClose={onClose}
    >
      <PersonFields isEmailRequired />
      <Checkbox label="Coach: reviews, books and runs sessions" name="coach" defaultSelected />
      <Checkbox label="Admin: sets hours, prices and people, and exports the month" name="admin" />
    </FormDialog>
  );
}
