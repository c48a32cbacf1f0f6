import Link from "next/link";
import type { ComponentProps } from "react";
import { type ButtonLook, buttonClasses } from "./button-look";

/** What a {@link LinkButton} takes: a look, and everything a link takes. */
export type LinkButtonProps = ButtonLook & ComponentProps<typeof Link>;

/** A link to another page that stands where an action would stand. */
export function LinkButton({ variant, isSmall, isWide, className, ...rest }: LinkButtonProps) {
  return <Link {...rest} className={buttonClasses({ variant, isSmall, isWide, className })} />;
}
