"use client";
import { ZoneField } from "@/components/people/zone-field";
import { Button } from "@/components/ui/button";
import { Dialog, DialogActions } from "@/components/ui/dialog";
import { Form } from "@/components/ui/form";
import { TextField } from "@/components/ui/text-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import type { Site } from "./site";

interface SiteDetails {
  name: string;
  zone: string;
  address: string;
}

/** Adds a site, or changes the name, zone and address of one. */
export function SiteDialog({ site, onClose }: { site?: Site; onClose: () => void }) {
  const save = useCommand(async (api, input: SiteDetails & { siteId?: string }, once) => {
    const { siteId, ...details } = input;
    if (siteId === undefined) await api.sites.add.mutate(details, once);
    else await api.sites.edit.mutate({ siteId, ...details }, once);
    return true;
  });
  async function submit(data: FormData) {
    const details = {
      name: textOf(data, "name"),
      zone: textOf(data, "zone"),
      address: textOf(data, "address"),
    };
    if (await save.run(site ? { ...details, siteId: site.siteId } : details)) onClose();
  }
  return (
    <Dialog
      title={site ? `Change ${site.name}` : "Add a site"}
      isOpen
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
    >
      <CommandProblem problem={save.problem} isBesideFields />
      <Form onSubmit={(data) => void submit(data)} errors={save.problem?.fields ?? {}} aria-label="Site">
        <TextField
          label="Name"
          name="name"
          defaultValue={site?.name ?? ""}
          maxLength={60}
          isRequired
          autoFocus
        />
        <ZoneField name="zone" {...(site ? { defaultValue: site.zone } : {})} />
        <TextField
          label="Address"
          name="address"
          defaultValue={site?.address ?? ""}
          maxLength={200}
          isOptional
        />
        <DialogActions>
          <Button type="submit" variant="primary" isPending={save.pending}>
            {site ? "Save the site" : "Add the site"}
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </DialogActions>
      </Form>
    </Dialog>
  );
}
