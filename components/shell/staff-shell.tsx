import { Shell, type ShellProps } from "./shell";

/** Around every screen of coaches and admins: wide, navigation in the head, a scrolling row of it on a phone. */
export function StaffShell(props: ShellProps) {
  return <Shell kind="staff" {...props} />;
}
