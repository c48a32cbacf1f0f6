import type { Answers } from "@/components/wire/answers";

/** Everything on record of a person. */
export type PersonRecord = Answers["people"]["person"];

/** The athlete a person is. */
export type AthletePart = NonNullable<PersonRecord["athlete"]>;
