import type { StaffRole, ThrowingHand } from "@/server/domain/people/person";

/** Every name, place and address here is invented. */
export const ACADEMY_NAME = "Brindle Hollow Pitching";

/** The one zone of the demo academy's sites. */
export const ACADEMY_ZONE = "America/New_York";

/** The domain is reserved for examples (RFC 2606), so no mail can ever reach anybody. */
const MAIL_DOMAIN = "slabside.example";

/** The sites by key. */
export const SITES = {
  mill: { name: "Mill Street", address: "14 Mill Street, Brindle Hollow" },
  yard: { name: "North Yard", address: "2 Tannery Road, Brindle Hollow" },
} as const;
export type SiteKey = keyof typeof SITES;

/** One member of staff. */
export interface StaffMember {
  given: string;
  family: string;
  roles: readonly StaffRole[];
  /** The local part of the address; left out, given and family name. */
  mailbox?: string;
}

/** The staff by key. */
export const STAFF = {
  tamar: { given: "Tamar", family: "Whitlock", roles: ["coach"], mailbox: "coach" },
  dell: { given: "Dell", family: "Ransome", roles: ["admin", "coach"] },
  ruben: { given: "Ruben", family: "Achterberg", roles: ["coach"] },
  ines: { given: "Ines", family: "Caldera", roles: ["coach"] },
  priya: { given: "Priya", family: "Lanford", roles: ["admin"], mailbox: "admin" },
} as const satisfies Record<string, StaffMember>;
export type StaffKey = keyof typeof STAFF;
export type CoachKey = Exclude<StaffKey, "priya">;

/** What an athlete's record is made to show today. */
export const STORY_PARTS = [
  "received_now",
  "received_due_today",
  "received_late",
  "taken",
  "taken_draft",
  "answered_due_today",
  "answered",
  "retake",
  "sent",
  "settled_lately",
  "lapsed",
  "withdrawn",
  "pain_stopped",
  "pain_cleared",
  "silent",
  "no_consent",
  "late_game",
] as const;
export type StoryPart = (typeof STORY_PARTS)[number];

/** One athlete of the cast. `age` is in completed years on the day the academy is built for. */
export interface CastAthlete {
  given: string;
  age: number;
  hand: ThrowingHand;
  site: SiteKey;
  coach: CoachKey;
  part?: StoryPart;
  mailbox?: string;
  /** How many years of rounds they have behind them; left out, the season alone. */
  years?: number;
}

/** A family: adults who stand for all of its athletes. A staff key is an adult who is on the staff as well. */
export interface CastFamily {
  name: string;
  adults: readonly { given: string; mailbox?: string; staff?: StaffKey }[];
  athletes: readonly CastAthlete[];
}

/** The address of a person: the mailbox that is named, else given and family name. */
export function addressOf(given: string, family: string, mailbox?: string): string {
  const own = `${given}.${family}`.toLowerCase().replaceAll(/[^a-z.]/g, "");
  return `${mailbox ?? own}@${MAIL_DOMAIN}`;
}
