import type { Answers } from "@/components/wire/answers";

/** What the consent screen and its parts take. */
export interface ConsentScreenProps {
  athleteId: string;
  state: Answers["consent"]["state"];
}
