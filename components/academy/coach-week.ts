import type { Answers } from "@/components/wire/answers";
import type { Site } from "./site";

/** A coach as the screen of hours shows them. */
export type CoachWeek = Answers["hours"]["list"][number];

/** What a {@link HoursScreen} takes. */
export interface HoursScreenProps {
  coaches: readonly CoachWeek[];
  sites: readonly Site[];
  today: string;
  isAdmin: boolean;
}
