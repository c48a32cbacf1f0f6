"use client";
import { useState } from "react";
import { AccountMenu } from "@/components/shell/account-menu";
import { throwKeeper } from "@/components/throwing/throw-desk";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import type { MenuEntry } from "@/components/ui/menu";
import { leaveDevice } from "./leave-device";

/** What an {@link OwnMenu} takes. */
export interface OwnMenuProps {
  personId: string;
  name: string;
  /** As whom they act on this screen. */
  role?: string;
  /** Ways to elsewhere, before the account and the way out. */
  ways: readonly { label: string; href: string }[];
}

/** Who is signed in; ways to their other screens; their sign-ins; the way out, which asks when something is not sent. */
export function OwnMenu({ personId, name, role, ways }: OwnMenuProps) {
  const [unsent, setUnsent] = useState(0);
  function askOrLeave() {
    const waiting = throwKeeper().of(personId).length;
    if (waiting > 0) setUnsent(waiting);
    else void leaveDevice();
  }
  const entries: MenuEntry[] = [
    ...ways.map((way) => ({ key: way.href, ...way })),
    { key: "account", label: "Where you are signed in", href: "/account" },
    { key: "out", label: "Sign out", onAction: askOrLeave },
  ];
  return (
    <>
      <AccountMenu name={name} {...(role === undefined ? {} : { role })} entries={entries} />
      <ConfirmDialog
        title={`Sign out with ${unsent === 1 ? "1 entry" : `${unsent} entries`} not sent?`}
        confirmText="Sign out, they stay on this phone"
        cancelText="Stay signed in"
        isOpen={unsent > 0}
        onConfirm={() => void leaveDevice()}
        onCancel={() => setUnsent(0)}
      >
        Throws that you logged here are not on the log yet. They are sent when you sign in again on this
        phone, and nobody else who signs in here sees them.
      </ConfirmDialog>
    </>
  );
}
