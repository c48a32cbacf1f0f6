import { Shell, type ShellProps } from "./shell";

/** Around every screen of athletes and guardians: one column, navigation at the thumb on a phone. */
export function FamilyShell(props: ShellProps) {
  return <Shell kind="family" {...props} />;
}
