import { z } from "zod";

/** How a promise is counted: whole working days to the close, or working hours. */
export const PROMISE_KINDS = ["working_days", "working_hours"] as const;

/** The academy's own settings, each with the bounds a form must keep. */
export const academySettings = z.strictObject({
  name: z.string().trim().min(1).max(80),
  /** ISO 4217 alphabetic code. */
  currency: z.string().regex(/^[A-Z]{3}$/, "Enter a currency as three letters, such as USD."),
  promiseKind: z.enum(PROMISE_KINDS),
  promiseAmount: z.int().min(1).max(240),
  /** At most five at a time is common practice, no source. */
  maxOpenCorrections: z.int().min(1).max(10),
  /** Days a family has to answer before a round lapses. */
  replySpanDays: z.int().min(1).max(120),
  /** Days within which a settled round should be confirmed in person. */
  followUpDays: z.int().min(1).max(120),
  clipRetentionDays: z.int().min(7).max(3650),
  bookingNoticeMin: z.int().min(0).max(20_160),
  bookingHorizonDays: z.int().min(1).max(400),
});
export type AcademySettings = z.output<typeof academySettings>;

/** What a new academy starts with; every figure is common practice without a source, and editable. */
export const STARTING_SETTINGS: AcademySettings = {
  name: "New academy",
  currency: "USD",
  promiseKind: "working_days",
  promiseAmount: 2,
  maxOpenCorrections: 5,
  replySpanDays: 21,
  followUpDays: 14,
  clipRetentionDays: 180,
  bookingNoticeMin: 120,
  bookingHorizonDays: 60,
};

/**
 * The promise in words.
 * @example promiseInWords({ promiseKind: "working_days", promiseAmount: 1 }) // "1 working day"
 */
export function promiseInWords(settings: Pick<AcademySettings, "promiseKind" | "promiseAmount">): string {
  const unit = settings.promiseKind === "working_days" ? "working day" : "working hour";
  return `${settings.promiseAmount} ${unit}${settings.promiseAmount === 1 ? "" : "s"}`;
}
