import type { TestAcademy } from "./academy";
import type { AthleteRecord } from "./athlete-record";

/** An input that a procedure takes, about the athlete of a record of the busy academy. */
export type ExampleInput = (record: AthleteRecord, academy: TestAcademy) => unknown;
