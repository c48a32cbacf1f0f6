"use client";
import { useRouter } from "next/navigation";
import { Button } from "@/components/ui/button";
import { Checkbox } from "@/components/ui/checkbox";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import { CommandProblem } from "@/components/wire/command-problem";
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
    <Dialog
      title="Add a coach or admin"
      isOpen
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
    >
      <CommandProblem problem={add.problem} isBesideFields />
      <Form
        onSubmit={(data) => void submit(data)}
        errors={add.problem?.fields ?? {}}
        aria-label="Coach or admin"
      >
        <PersonFields isEmailRequired />
        <Checkbox label="Coach: reviews, books and runs sessions" name="coach" defaultSelected />
        <Checkbox label="Admin: sets hours, prices and people, and exports the month" name="admin" />
        <DialogActions>
          <Button type="submit" variant="primary" isPending={add.pending}>
            Add this person
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </DialogActions>
      </Form>
    </Dialog>
  );
}
