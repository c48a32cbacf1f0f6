"use client";
import { ZoneField } from "@/components/people/zone-field";
import { TextField } from "@/components/ui/text-field";
import { FormDialog } from "@/components/wire/form-dialog";
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
    <FormDialog
      title={site ? `Change ${site.name}` : "Add a site"}
      label="Site"
      submitText={site ? "Save the site" : "Add the site"}
      command={save}
      onSubmit={submit}
      onClose={onClose}
    >
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
    </FormDialog>
  );
}
