import type { ReactNode } from "react";
import { chosenTheme } from "@/components/shell/chosen-theme";
import { PlainShell } from "@/components/shell/plain-shell";

export default async function OpenLayout({ children }: { children: ReactNode }) {
  return (
    <PlainShell homeHref="/" theme={await chosenTheme()}>
      {children}
    </PlainShell>
  );
}
