"use client";

import type { ReactNode } from "react";
import { Button as AriaButton, type ButtonProps as AriaButtonProps } from "react-aria-components/Button";
import { type ButtonLook, buttonClasses } from "./button-look";
import { SpinnerMark } from "./spinner-mark";

/** What a {@link Button} takes besides its look; the rest is passed on to the button itself. */
export interface ButtonProps extends ButtonLook, Omit<AriaButtonProps, "className" | "children" | "style"> {
  children: ReactNode;
  /** The act is under way: the button keeps its focus, ignores presses and says `pendingText`. */
  isPending?: boolean;
  /** Said and shown while pending, e.g. "Sending…". Default: the button's own words. */
  pendingText?: string;
}

/** An action in words. Use `onPress`, or `type="submit"` within a form. */
export function Button({ variant, isSmall, isWide, className, pendingText, children, ...rest }: ButtonProps) {
  return (
    <AriaButton {...rest} className={buttonClasses({ variant, isSmall, isWide, className })}>
      {rest.isPending ? (
        <>
          <SpinnerMark />
          {pendingText ?? children}
        </>
      ) : (
        children
      )}
    </AriaButton>
  );
}
