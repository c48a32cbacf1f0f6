"use client";
import { signOut } from "next-auth/react";
import { AccountMenu } from "@/components/shell/account-menu";
import type { MenuEntry } from "@/components/ui/menu";

/** What an {@link OwnMenu} takes. */
export interface OwnMenuProps {
  name: string;
  /** As whom they act on this screen. */
  role?: string;
  /** Ways to elsewhere, before the account and the way out. */
  ways: readonly { label: string; href: string }[];
}

/** Who is signed in; ways to their other screens; their sign-ins; the way out. */
export function OwnMenu({ name, role, ways }: OwnMenuProps) {
  const entries: MenuEntry[] = [
    ...ways.map((way) => ({ key: way.href, ...way })),
    { key: "account", label: "Where you are signed in", href: "/account" },
    { key: "out", label: "Sign out", onAction: () => void signOut({ callbackUrl: "/sign-in" }) },
  ];
  return <AccountMenu name={name} {...(role === undefined ? {} : { role })} entries={entries} />;
}
