import { dayInWords } from "../time/words";
import type { RefusalDetail, RefusalFacts, RefusalReason } from "./reasons";

type Sentences = { [Reason in RefusalReason]: (facts: RefusalFacts[Reason]) => string };

const minutesInWords = (ms: number) => `${Math.max(1, Math.ceil(ms / 60_000))} min`;
const STATE_WORDS: Record<string, string> = { retake: "waiting for a new clip" };
const stateWord = (state: string) => STATE_WORDS[state] ?? state.replaceAll("_", " ");

const PASSWORD_WORDS = {
  too_short:
    "That password is too short. Nothing was changed. Choose at least 15 characters, such as four unrelated words.",
  too_long: "That password is longer than 200 characters. Nothing was changed. Choose a shorter one.",
  common:
    "That password is on the list of the most common ones. Nothing was changed. Choose another, such as four unrelated words.",
} as const;

const TAKEN_WORDS = {
  coach: "The coach is already booked at that time.",
  lane: "The lane is already booked at that time.",
  athlete: "The athlete already has a session at that time.",
  second_adult: "The second adult is already booked at that time.",
} as const;

/** What keeps an athlete from leaving, each with what to do about it. */
function stillOpen({ booked, moreBooked, rounds }: RefusalFacts["athlete_not_free"]): string[] {
  const more = moreBooked > 0 ? ` and ${moreBooked} more` : "";
  const owed = rounds === 1 ? "1 round is owed a review" : `${rounds} rounds are owed a review`;
  return [
    ...(booked.length > 0 ? [`booked for ${booked.join(", ")}${more}, to be cancelled first`] : []),
    ...(rounds > 0 ? [`${owed}, to be sent, settled or withdrawn first`] : []),
  ];
}

const SENTENCES: Sentences = {
  not_found: () => "There is nothing here by that address, or it is not yours to see. Nothing was changed.",
  not_signed_in: () =>
    "You are not signed in any more. What you entered is still on this page. Sign in again and repeat the last step.",
  sign_in_failed: () => "That e-mail and password do not go together. Check both, or ask for a reset link.",
  too_many_tries: (facts) =>
    `Too many tries. Nothing was changed. Wait ${minutesInWords(facts.retryAfterMs)} and try again.`,
  link_spent: () => "This link was used already or has expired. Nothing was changed. Ask for a new one.",
  password_weak: (facts) => PASSWORD_WORDS[facts.why],
  academy_exists: () => "This academy already has its first admin. Nothing was changed. Sign in instead.",
  email_taken: () => "Somebody already signs in with that e-mail. Nothing was saved. Use another address.",
  too_young_to_sign_in: (facts) =>
    `At ${facts.ageYears} there is no sign-in of one's own: a guardian acts. Nothing was sent.`,
  last_admin: () =>
    "The academy needs one admin at least. Nothing was changed. Make somebody else an admin first.",
  guardian_missing: (facts) =>
    `${facts.athleteGivenName} is under 18 and would have no guardian on record. Nothing was changed. Add another guardian first.`,
  email_missing: () =>
    "There is no e-mail for this person. Nothing was sent. Add an address, then invite again.",
  already_joined: () =>
    "This person has joined already. Nothing was sent. They can ask for a reset link on the sign-in page.",
  coach_has_work: (facts) =>
    `This coach has ${facts.sessions} booked sessions ahead and ${facts.rounds} rounds in hand. Nothing was changed. Hand them over first.`,
  athlete_not_free: (facts) =>
    `${facts.athleteGivenName} cannot leave yet: ${stillOpen(facts).join("; ")}. Nothing was changed.`,
  athlete_left: (facts) =>
    `From ${dayInWords(facts.leftOn, { withYear: true })} on ${facts.athleteGivenName} is no longer with the academy, so nothing new is sent or booked. Nothing was changed. An admin can say on the person's record that they are back.`,
  settings_invalid: (facts) => `${facts.why} Nothing was saved.`,
  changed_meanwhile: () =>
    "Somebody changed this while you had it open. Your entry was not saved over theirs. Look at the new state and enter it again.",
  repeated_with_other_content: () =>
    "The same request came twice with different content. Only the first was kept. Reload and try again.",
  disk_full: () =>
    "The academy's disk is full. This was not saved; everything from before is safe. Tell the academy, and try again once there is room.",

  consent_missing: (facts) =>
    `There is no live consent to video of ${facts.athleteGivenName}. Nothing was sent. A guardian, or an athlete of 18, can give it on the consent page.`,
  upload_missing: () => "The upload is not here any more. Nothing was sent. Choose the clip again.",
  too_many_waiting: (facts) =>
    `${facts.max} clips are uploaded and not yet sent, and that is the most. Nothing was uploaded. Send them, or take one back first.`,
  clip_not_kept: () =>
    "This clip was deleted when its retention time ended. What was written about it is kept.",
  clips_of_two_days: () =>
    "The clips of one round must be of one day. Nothing was sent. Send the other day's clips as a round of their own.",
  round_state: (facts) =>
    `This round is ${stateWord(facts.state)}, so it cannot be ${facts.action}. Nothing was changed. Reload to see where it stands.`,
  round_taken_by: (facts) =>
    `${facts.coachName} took this round a moment ago. Nothing was changed. Take the next one.`,
  hours_missing: (facts) =>
    `${facts.siteName} has no opening hours, so no promise can be counted. Nothing was saved. An admin can set them under Academy.`,
  corrections_full: (facts) =>
    `${facts.open} corrections are open and ${facts.max} is the most at a time. The review is still a draft. Hold or retire one first, or leave one out.`,
  draft_incomplete: (facts) => `Not sent yet: ${facts.missing.join("; ")}. The draft is kept.`,
  measure_invalid: (facts) => `${facts.why} Nothing was saved.`,
  too_few_frames: (facts) =>
    `${facts.asked} frames were asked for and ${facts.there} are there to draw from. No set was drawn. Ask for fewer, from 5 on, or choose more checkpoints.`,
  blind_set_closed: () =>
    "This set is closed: nobody rates in it any more. Nothing was changed; what was rated before counts. Its figures stand under Academy, Coach agreement.",
  rated_before: () =>
    "You have rated this frame already, and a second look is not blind to the first. Nothing was changed: the first answer counts. Go on to the next frame.",
  practice_day_invalid: (facts) => `${facts.why} Nothing was changed.`,
  frame_outside_clip: (facts) =>
    `Frame ${facts.frame} is not in this clip of ${facts.frameCount} frames. Nothing was saved. Mark it again.`,

  outside_coach_hours: () =>
    "The coach does not work at that time. Nothing was booked. Choose another time or coach.",
  site_closed: (facts) =>
    `The site is closed then (${dayInWords(facts.day)}). Nothing was booked. Choose another time.`,
  no_lane: () => "No lane that fits is free at that time. Nothing was booked. Choose another time.",
  time_taken: (facts) => `${TAKEN_WORDS[facts.what]} Nothing was booked. Choose another time.`,
  arm_resting: (facts) =>
    `${facts.why} Nothing was booked. ${facts.firstFreeDay ? `First day free by the book: ${dayInWords(facts.firstFreeDay)}.` : "The book gives no free day soon."}${facts.dryWorkFits ? " A session without mound throws fits this day." : ""}`,
  too_many_pitches: (facts) => `${facts.why} Nothing was booked. Plan at most ${facts.atMost} by the book.`,
  pain_stop: (facts) =>
    `Pain was reported on ${dayInWords(facts.since)}: no throwing until the guardian clears it (an athlete of 18 for themselves). Nothing was booked. A session without throws is possible.`,
  too_soon: (facts) =>
    facts.noticeMin === 0
      ? "That time has passed. Nothing was booked. Choose a later one."
      : `That is less than ${facts.noticeMin} min ahead. Nothing was booked. Choose a later time, or call the desk.`,
  too_far_ahead: (facts) =>
    `Bookings open ${facts.horizonDays} days ahead. Nothing was booked. Choose an earlier time.`,
  second_adult_missing: () =>
    "A one-to-one session with a minor names a second adult who can see it. Nothing was booked. Name a watching guardian or another member of staff.",
  session_state: (facts) =>
    `This session is ${stateWord(facts.state)}, so it cannot be ${facts.action}. Nothing was changed.`,
  session_not_started: () =>
    "This session has not started yet. Nothing was logged. Log it once it has begun.",
  check_in_missing: () =>
    "Ask before mound work first: thrown since, any pain? Nothing was logged. Record the check-in, then log.",
  not_a_guardian: () => "That person is not a guardian of this athlete. Nothing was saved.",

  throw_entry_invalid: (facts) => `${facts.why} Nothing was logged.`,
  already_corrected: () => "This entry was corrected already. Nothing was changed. Correct the latest one.",
  pain_clearance_invalid: (facts) => `${facts.why} The stop stays. Nothing was changed.`,
  book_not_offered: (facts) =>
    `${facts.bookName} cannot be chosen. ${facts.why} Nothing was saved. Choose another rule book.`,
  rule_book_invalid: (facts) => `${facts.why} Nothing was saved.`,
  override_invalid: (facts) => `${facts.why} Nothing was overridden.`,
  nothing_overrides_pain: (facts) =>
    `Nothing overrides pain: it was reported on ${dayInWords(facts.since)}. No limit was overridden. The guardian clears it first (an athlete of 18 for themselves).`,
  no_rate: (facts) =>
    `There is no rate for ${stateWord(facts.kind)} on ${dayInWords(facts.day)}. Nothing was logged. An admin can set one under Academy.`,
  rates_overlap: () =>
    "Two rates for the same kind would hold on one day. Nothing was saved. Change the days.",
  in_use: (facts) => `${facts.what} is still in use. Nothing was removed.`,
  hours_invalid: (facts) => `${facts.why} Nothing was saved.`,
  report_invalid: (facts) => `${facts.why} Nothing was changed.`,
};

/** The sentence a person reads: what happened, what was kept, what to do. */
export function refusalSentence(detail: RefusalDetail): string {
  const sentence = SENTENCES[detail.reason] as (facts: RefusalDetail) => string;
  return sentence(detail);
}
