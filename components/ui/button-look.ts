import styles from "./button.module.css";
import { joinClasses } from "./join-classes";

/**
 * How an action looks. `primary` is clay and stands once on a screen; `danger` cannot be taken back and says so in
 * its own words; `link` sits in a line of text.
 */
export type ButtonVariant = "primary" | "quiet" | "danger" | "link";

/** The look shared by buttons and by links that look like buttons. */
export interface ButtonLook {
  /** Default `quiet`. */
  variant?: ButtonVariant;
  /** For rows of tables and other tight places. */
  isSmall?: boolean;
  /** As wide as its container. */
  isWide?: boolean;
  className?: string;
}

/** The class names for a look. */
export function buttonClasses({ variant = "quiet", isSmall, isWide, className }: ButtonLook): string {
  return joinClasses(
    styles.button,
    styles[variant],
    isSmall && styles.small,
    isWide && styles.wide,
    className,
  );
}
