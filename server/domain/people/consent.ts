/** What a family agrees to. Video covers sending, keeping and showing clips to the academy's coaches. */
export const CONSENT_PURPOSES = ["video"] as const;
export type ConsentPurpose = (typeof CONSENT_PURPOSES)[number];

/** Consent is a record of rows; the latest one holds. */
export const CONSENT_KINDS = ["given", "withdrawn"] as const;
export type ConsentKind = (typeof CONSENT_KINDS)[number];

/** The text in force; a changed text gets a new version, and consent is asked again. */
export const VIDEO_CONSENT = {
  version: "video-1",
  lines: [
    "Clips are seen by the academy's coaches and admins, by the athlete and by the athlete's guardians, and by nobody else.",
    "Place, device and other hidden data are taken out of every clip before it is kept.",
    "Clips are deleted after the academy's retention time. What was written about them stays.",
    "Consent can be withdrawn at any time on this page. From then on no clip can be sent or opened.",
  ],
} as const;

/** One row of the consent record. */
export interface ConsentRow {
  purpose: ConsentPurpose;
  kind: ConsentKind;
  textVersion: string;
  atMs: number;
}

/**
 * Whether consent is live: the latest row of the purpose says given, for the text now in force.
 * @param rows in any order; of two rows at one instant a withdrawal holds
 */
export function hasConsent(rows: readonly ConsentRow[], purpose: ConsentPurpose): boolean {
  const own = rows.filter((row) => row.purpose === purpose);
  const latestMs = Math.max(...own.map((row) => row.atMs), Number.NEGATIVE_INFINITY);
  const latest = own.filter((row) => row.atMs === latestMs);
  return (
    latest.length > 0 &&
    latest.every((row) => row.kind === "given" && row.textVersion === VIDEO_CONSENT.version)
  );
}
